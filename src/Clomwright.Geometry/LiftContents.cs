using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Joinery;

namespace Clomwright.Geometry;

/// <summary>What is built in while one lift is laid, for every list of it: on paper, on a phone, in the register.</summary>
/// <param name="Embeds">What lies in the stem comes with the first lift, what stands on the wall with the last.</param>
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
            geometry.Embeds.Where(e => Math.Clamp(e.Lift, 0, geometry.Lifts.Count - 1) == lift.Index).ToSequence(),
            geometry.Niches.Where(n => lift.Takes(n.Bottom)).ToSequence(),
            geometry.Tees.Where(t => t.Lift == lift.Index).ToSequence(),
            geometry.Openings.Where(o => o.Opening.Frame is not null && o.Opening.Shape == OpeningShape.Rectangular)
                .SelectMany(o => OpeningPieces.DeadmanHeights(o).Where(lift.Takes).Select(h => (o, h))).ToSequence());
    }
}
