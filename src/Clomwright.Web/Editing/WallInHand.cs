using Clomwright.Analysis;
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

    /// <summary>Takes an opening in hand; or why it cannot be followed.</summary>
    /// <param name="study">The house as it is.</param>
    /// <param name="rested">What its wall carried when it was solved last.</param>
    /// <param name="opening">Name of the opening.</param>
    public static Known<WallInHand> Take(HouseStudy study, StructureResult rested, string opening)
    {
        var known = LiveWall.Grab(study.Geometry, study.Mix.Strength, rested, opening);
        return known.Value is { } live ? new WallInHand(live, rested) : known.NotChecked!;
    }

    /// <summary>What the wall carries as the house is now, or why it cannot be followed there.</summary>
    public LiveAnswer Now(HouseStudy study, long revision, Face face)
    {
        var pen = new Pen(Words.Book, study.House.Units);
        var moved = live.Move(study.Geometry, study.Seats.Select(s => s.OffCentre).ToSequence(), study.Roof);
        return moved.Value is { } stress
            ? new LiveAnswer(revision, StressPictureOf.OnTheWay(study, rested, stress, face, pen), null)
            : NotTaken(study, revision, moved.NotChecked!);
    }

    /// <summary>Says why there is no picture of a house.</summary>
    public static LiveAnswer NotTaken(HouseStudy study, long revision, Message why) =>
        new(revision, null, new Pen(Words.Book, study.House.Units).Say("web.stress.not-followed", ("why", why)));

    /// <inheritdoc/>
    public void Dispose() => live.Dispose();
}
