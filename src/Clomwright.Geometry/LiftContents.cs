using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Joinery;

namespace Clomwright.Geometry;

/// <summary>What is built in while one lift is laid, for every list of it: on paper, on a phone, in the register.</summary>
/// <param name="Embeds">What stands on the wall comes with the last; what lies in the stem is in <see cref="StemContents"/>.</param>
/// <param name="Niches">Those that begin in it.</param>
/// <param name="Tees">Those whose bar lies in it.</param>
/// <param name="Deadmen">Heights of the deadmen along each frame, one in either jamb, m.</param>
public sealed record LiftContents(Sequence<EmbedPlace> Embeds, Sequence<NichePlace> Niches, Sequence<TeePlace> Tees, Sequence<(OpeningPlace Opening, double Height)> Deadmen)
{
    /// <summary>How many things are set in from the list of the house: embeds, niches and tees.</summary>
    public int Listed => Embeds.Count + Niches.Count + Tees.Count;

    /// <summary>The contents of a lift.</summary>
    public static LiftContents Of(HouseGeometry geometry, LiftSlice lift)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(lift);
        return new(
            geometry.Embeds.Where(e => Math.Min(e.Lift, geometry.Lifts.Count - 1) == lift.Index).ToSequence(),
            geometry.Niches.Where(n => lift.Takes(n.Bottom)).ToSequence(),
            geometry.Tees.Where(t => t.Lift == lift.Index).ToSequence(),
            StemContents.DeadmenAt(geometry, h => lift.Takes(h) && !StemContents.Holds(geometry, h)));
    }
}

/// <summary>What is built into the stem, under the cob: masons set it, before any lift.</summary>
/// <param name="Embeds">Sleeves, pipes and whatever else is told to lie there.</param>
/// <param name="Deadmen">Heights of fixing blocks along a frame that lie in the stem, one in either jamb, m.</param>
public sealed record StemContents(Sequence<EmbedPlace> Embeds, Sequence<(OpeningPlace Opening, double Height)> Deadmen)
{
    /// <summary>How many things are set in from the list of the house.</summary>
    public int Listed => Embeds.Count;

    /// <summary>The contents of the stem.</summary>
    public static StemContents Of(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        return new(geometry.Embeds.Where(e => e.Lift < 0).ToSequence(), DeadmenAt(geometry, h => Holds(geometry, h)));
    }

    /// <summary>Fixing blocks along frames at some of their heights.</summary>
    internal static Sequence<(OpeningPlace Opening, double Height)> DeadmenAt(HouseGeometry geometry, Func<double, bool> at) => geometry.Openings
        .Where(o => o.Opening.Frame is not null && o.Opening.Shape == OpeningShape.Rectangular).SelectMany(o => OpeningPieces.DeadmanHeights(o).Where(at).Select(h => (o, h))).ToSequence();

    /// <summary>Whether a height, m, is below the cob.</summary>
    internal static bool Holds(HouseGeometry geometry, double height) => height < geometry.Wall.Base.Metres;
}
