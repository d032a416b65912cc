using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>What is left of the wall when everything is cut from it, whole and lift by lift.</summary>
internal sealed record Cutting(
    WallFrame Frame, IReadOnlyList<PlacedOpening> Openings, IReadOnlyList<HeaderPlaces.Placed> Headers, IReadOnlyList<NichePlaces.Placed> Niches, IReadOnlyList<EmbedPlaces.Placed> Embeds)
{
    public WallMeasures Measures()
    {
        var (curve, wall, lifts) = (Frame.Curve, Frame.Wall, Frame.Lifts);
        var whole = WallBands.Trimmed(wall, Frame.Base, Frame.Top);
        var gross = whole.Volume(curve);
        var openings = Openings.Sum(o => o.Volumes.Sum());
        var headers = Headers.Sum(h => h.Volumes.Sum());
        var niches = Niches.Sum(n => n.Volumes.Sum());
        var embeds = Embeds.Sum(e => e.Volumes.Sum());
        return new WallMeasures(
            gross, gross - openings - headers - niches - embeds, openings, headers, niches, embeds,
            curve.Area, curve.OffsetArea(wall.OutsideOffset(Frame.Base)),
            Face(whole.InsideBottom, whole.InsideTop) - Enumerable.Range(0, lifts.Length).Sum(i => Openings.Sum(o => o.InsideFaces[i])),
            Face(whole.OutsideBottom, whole.OutsideTop) - Enumerable.Range(0, lifts.Length).Sum(i => Openings.Sum(o => o.OutsideFaces[i])),
            Openings.Sum(o => 2 * o.HalfWidth) / curve.Length);

        // A face that leans evenly has the length of its offset at mid height times its sloping height.
        double Face(double bottom, double top) =>
            curve.OffsetLength((bottom + top) / 2) * Math.Sqrt(whole.Height * whole.Height + (top - bottom) * (top - bottom));
    }

    public Sequence<LiftSlice> Lifts()
    {
        var slices = new LiftSlice[Frame.Lifts.Length];
        for (var i = 0; i < slices.Length; i++)
        {
            var gross = Frame.Lifts[i].Volume(Frame.Curve);
            var rest = Headers.Sum(h => h.Volumes[i]) + Niches.Sum(n => n.Volumes[i]) + Embeds.Sum(e => e.Volumes[i]);
            var net = gross - Openings.Sum(o => o.Volumes[i]) - rest;
            var laid = i == 0 && Frame.FirstAsLaid.Length > 0
                ? Frame.FirstAsLaid.Select((band, j) => band.Volume(Frame.Curve) - Openings.Sum(o => o.AsLaid[j])).Sum() - rest
                : net;
            slices[i] = new LiftSlice(i, Frame.Heights[i], Frame.Heights[i + 1], gross, net, laid);
        }

        return slices.ToSequence();
    }
}
