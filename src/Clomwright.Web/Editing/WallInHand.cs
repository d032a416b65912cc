using Clomwright.Analysis.Structure;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Study;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Editing;

/// <summary>The wall of an open house while an opening of it is in hand on the sheet of stress. A house has one at a time; what it holds is given back when the opening is let go.</summary>
internal sealed class WallInHand : IDisposable
{
    private readonly LiveWall live;
    private readonly StructureResult rested;

    private WallInHand(LiveWall live, StructureResult rested) => (this.live, this.rested) = (live, rested);

    /// <summary>Takes an opening in hand; null where it cannot be followed.</summary>
    /// <param name="study">The house as it is.</param>
    /// <param name="rested">What its wall carried when it was solved last.</param>
    /// <param name="opening">Name of the opening.</param>
    public static WallInHand? Take(HouseStudy study, StructureResult rested, string opening) =>
        LiveWall.Grab(study.Geometry, study.Mix.Strength, rested, opening) is { } live ? new WallInHand(live, rested) : null;

    /// <summary>What the wall carries as the house is now; null where it can no longer be followed.</summary>
    public LiveAnswer? Now(HouseStudy study, long revision, Face face) =>
        live.Move(study.Geometry, study.WallTop.Seats.Select(s => s.OffCentre).ToSequence(), study.Roof) is { } stress
            ? new LiveAnswer(revision, StressPictureOf.OnTheWay(study, rested, stress, face, new Pen(Words.Book, study.House.Units)))
            : null;

    /// <inheritdoc/>
    public void Dispose() => live.Dispose();
}
