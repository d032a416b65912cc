using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>Finds places for tees: one for each pole, as near under its landing as whole cob allows, and more between until none stand further apart than is written, where the wall has room.</summary>
/// <remarks>
/// A leg stands clear by <see cref="Packed"/> of what goes through the wall. A bar lies in whole cob when no opening, header with what it rests on, or niche that reaches above the bar comes within <see cref="Packed"/> of its length. Without poles tees stand evenly along the
/// bond beam from the zero mark, each moved to the nearest whole cob. A wall with no such place at all keeps them evenly; each then says that it is not in whole cob.
/// </remarks>
internal static class TeePlaces
{
    private const int CountMax = 500;

    /// <summary>A leg that nobody described, m: 4 in.</summary>
    private const double UsualLeg = 0.1016;

    /// <summary>Cob to be packed round the ends of a bar, m: 2 in.</summary>
    private const double Packed = 0.0508;

    public static Sequence<TeePlace> Of(WallFrame frame, Sequence<OpeningPlace> openings, IEnumerable<NichePlace> niches, IEnumerable<EmbedPlace> embeds, Sequence<Landing> landings, Remarks remarks)
    {
        if (frame.House.Tees is not { } tees)
        {
            return [];
        }

        var beam = BeamLine.Of(frame.House, frame.Wall);
        var ring = frame.Curve.OffsetLength(beam);
        var count = Math.Ceiling(ring / tees.Spacing.Metres - 1e-9);
        if (!(tees.Spacing.Metres > 0) || !(count is >= 1 and <= CountMax))
        {
            remarks.Error("tees.spacing", Message.Of("geometry.tee-spacing", ("spacing", tees.Spacing)));
            return [];
        }

        var bar = frame.Top - tees.Depth.Metres;
        if (bar < frame.Base || tees.Depth.Metres < 0)
        {
            remarks.Error("tees.depth", Message.Of("geometry.tee-depth", ("depth", tees.Depth)));
        }

        var apart = Math.Max(0, tees.Bar.Metres) + 2 * Packed;
        var solid = new SolidStretches(frame.Curve);
        foreach (var span in Cut(openings, niches, bar))
        {
            solid.Block(span.From - apart / 2, span.To + apart / 2);
        }

        var leg = tees.Timber?.Metres ?? UsualLeg;
        foreach (var (station, half) in InTheWay(embeds, bar))
        {
            solid.Block(station - half - leg / 2 - Packed, station + half + leg / 2 + Packed);
        }

        var poles = landings.Where(l => !l.Secondary).ToArray();
        var whole = solid.Nearest(0) is not null;
        List<(double Station, string? Pole)> placed = [];
        foreach (var landing in whole ? poles : [])
        {
            if (solid.Nearest(landing.Station) is { } station && solid.Between(station, landing.Station) <= tees.Spacing.Metres / 2)
            {
                Add(station, landing.Name);
            }
        }

        if (placed.Count == 0)
        {
            for (var i = 0; i < (int)count; i++)
            {
                var even = StationAlong(frame.Curve, beam, i * ring / count);
                if (!whole)
                {
                    placed.Add((even, null));
                }
                else if (solid.Nearest(even) is { } station)
                {
                    Add(station, null);
                }
            }
        }

        Fill();
        return Told();

        void Add(double station, string? pole)
        {
            placed.Add((station, pole));
            if (apart > 2 * Packed && apart < frame.Curve.Length)
            {
                solid.Block(station - apart, station + apart);
            }
        }

        // Each gap that is too wide gets evenly what it lacks, as near as the wall allows; what was put in may leave narrower gaps that still want one.
        void Fill()
        {
            for (var round = 0; whole && round < 3; round++)
            {
                var order = placed.Select(p => p.Station).Order().ToArray();
                foreach (var (i, from) in order.Index())
                {
                    var to = i + 1 < order.Length ? order[i + 1] : order[0] + frame.Curve.Length;
                    var gap = frame.Curve.OffsetArc(from, to, beam);
                    var lacking = (int)Math.Ceiling(gap / tees.Spacing.Metres - 1e-6) - 1;
                    for (var k = 1; k <= lacking && placed.Count < CountMax; k++)
                    {
                        if (solid.Nearest(frame.Curve.Wrap(from + (to - from) * k / (lacking + 1))) is { } station && frame.Curve.Wrap(station - from) < to - from)
                        {
                            Add(station, null);
                        }
                    }
                }
            }
        }

        Sequence<TeePlace> Told()
        {
            var order = placed.OrderBy(p => p.Station).ToArray();
            return order.Select((p, i) =>
            {
                var next = i + 1 < order.Length ? order[i + 1].Station : order[0].Station + frame.Curve.Length;
                return new TeePlace(i + 1, p.Station, bar, frame.LiftAt(bar)) { Pole = p.Pole, ToNext = frame.Curve.OffsetArc(p.Station, next, beam), InSolidCob = whole };
            }).ToSequence();
        }
    }

    /// <summary>What cuts the cob above the bars, or is pressed by a header's ends.</summary>
    private static IEnumerable<Span> Cut(Sequence<OpeningPlace> openings, IEnumerable<NichePlace> niches, double bar) =>
    [
        .. openings.Where(o => o.Head > bar).Select(o => o.Widest),
        .. openings.Select(o => o.Header).OfType<HeaderPlace>().Where(h => h.Top > bar).Select(h => h.Span),
        .. niches.Where(n => n.Top > bar).Select(n => n.Span),
    ];

    /// <summary>What goes through the wall beside a leg, with half its width: a thimble, a sleeve, a bottle.</summary>
    private static IEnumerable<(double Station, double Half)> InTheWay(IEnumerable<EmbedPlace> embeds, double bar)
    {
        foreach (var place in embeds.Where(e => e.Embed.Through))
        {
            var half = (place.Embed.Width ?? place.Embed.Size ?? Length.Zero).Metres / 2;
            if (place.Height + half > bar)
            {
                yield return (place.Station, half);
            }
        }
    }

    /// <summary>The station whose arc along the curve of an offset is given.</summary>
    internal static double StationAlong(PlanCurve curve, double offset, double arc)
    {
        if (arc == 0)
        {
            return 0;
        }

        var station = Numerics.Roots.Newton(
            s =>
            {
                var frame = curve.FrameAt(s);
                return (s + offset * frame.Heading - arc, 1 + offset * frame.Curvature);
            },
            0, curve.Length, arc * curve.Length / curve.OffsetLength(offset), 1e-14 * curve.Length);
        return double.IsNaN(station) ? arc * curve.Length / curve.OffsetLength(offset) : station;
    }
}
