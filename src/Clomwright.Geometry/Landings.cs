using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Curves;

namespace Clomwright.Geometry;

/// <summary>Where poles land on the bond beam. Poles of a ring land at equal bearings from their first one, or at the bearings listed; secondaries at equal bearings between neighbours.</summary>
internal static class Landings
{
    private const int CountMax = 400;
    private const double LineMost = 1e6;

    public static Sequence<Landing> Of(WallFrame frame, Remarks remarks)
    {
        var beam = BeamLine.Of(frame.House, frame.Wall);
        var marks = frame.House.Roof switch
        {
            Roof.Reciprocal roof => Ring(roof, roof.Poles, remarks),
            Roof.Radial roof => Ring(roof, roof.Poles, remarks),
            Roof.Shed roof => Across(frame, roof.FirstBearing, roof.Spacing, beam, remarks),
            Roof.Gable roof => Across(frame, roof.FirstBearing, roof.Spacing, beam, remarks),
            _ => [],
        };
        var placed = new List<Landing>();
        foreach (var mark in marks)
        {
            if (StationOf(frame.Curve, mark, beam, remarks) is { } station)
            {
                var point = frame.Curve.At(station, beam);
                placed.Add(new Landing(mark.Name, mark.Secondary, frame.Curve.BearingOf(point), station, frame.Curve.OffsetArc(0, station, beam), 0, 0, point));
            }
        }

        return Ordered(frame.Curve, placed, beam);
    }

    private static List<Mark> Ring(Roof roof, int poles, Remarks remarks)
    {
        if (poles is < 1 or > CountMax / 10 || roof.Secondaries?.PerBay is < 0 or > 9)
        {
            remarks.Error("roof.poles", Message.Of("geometry.poles-out-of-range", ("most", CountMax / 10)));
            return [];
        }

        var bearings = Bearings(roof, poles, remarks);
        var marks = new List<Mark>();
        var between = roof.Secondaries?.PerBay ?? 0;
        for (var i = 0; i < bearings.Length; i++)
        {
            marks.Add(new Mark($"pole {i + 1}", false, bearings[i], null));
            var bay = bearings[(i + 1) % bearings.Length] - bearings[i];
            bay -= 2 * Math.PI * Math.Floor(bay / (2 * Math.PI));
            bay = bay == 0 ? 2 * Math.PI : bay;
            for (var k = 1; k <= between; k++)
            {
                marks.Add(new Mark($"secondary {i * between + k}", true, bearings[i] + bay * k / (between + 1), null));
            }
        }

        return marks;
    }

    private static double[] Bearings(Roof roof, int poles, Remarks remarks)
    {
        var first = roof.FirstBearing.Radians;
        if (!double.IsFinite(first) || roof.Landings.Any(l => !double.IsFinite(l.Degrees)))
        {
            remarks.Error(double.IsFinite(first) ? "roof.landings" : "roof.firstBearing", new Message("geometry.not-a-number"));
            return [];
        }

        if (roof.Landings.Count == 0)
        {
            return [.. Enumerable.Range(0, poles).Select(i => Math.IEEERemainder(first, 2 * Math.PI) + 2 * Math.PI * i / poles)];
        }

        if (roof.Landings.Count != poles)
        {
            remarks.Error("roof.landings", Message.Of("geometry.landings-not-poles", ("landings", roof.Landings.Count), ("poles", poles)));
        }

        var listed = roof.Landings.Take(CountMax / 10).Select(l => Math.IEEERemainder(l.Radians, 2 * Math.PI)).ToArray();
        var start = listed[0];
        return [.. listed.OrderBy(b => b - start - 2 * Math.PI * Math.Floor((b - start) / (2 * Math.PI)))];
    }

    /// <summary>Rafters side by side along a bearing, the middle one over the centre peg: each crosses the beam on both sides.</summary>
    private static List<Mark> Across(WallFrame frame, Angle bearing, Length spacing, double beam, Remarks remarks)
    {
        if (!double.IsFinite(bearing.Degrees))
        {
            remarks.Error("roof.firstBearing", new Message("geometry.not-a-number"));
            return [];
        }

        var (sin, cos) = Math.SinCos(Math.IEEERemainder(bearing.Radians, 2 * Math.PI));
        var fall = new PlanPoint(sin, cos);
        var crossings = new List<(int Line, double Along, double Station)>();
        var curve = frame.Curve;
        var samples = curve.Samples;
        // A beam set off beyond the middle of its curve has a short arc and is wide all the same; a peg far away counts its lines from there.
        var count = samples.Length;
        var sideways = Enumerable.Range(0, count).Select(i => Sideways(i * curve.Length / count)).ToArray();
        var across = Math.Max(curve.OffsetLength(beam), 2 * (sideways.Max() - sideways.Min()));
        if (!(spacing.Metres > 0) || !(across / spacing.Metres <= CountMax) || !(Math.Max(sideways.Max(), -sideways.Min()) / spacing.Metres < LineMost))
        {
            remarks.Error("roof.spacing", Message.Of("geometry.rafter-spacing", ("spacing", spacing)));
            return [];
        }

        for (var i = 0; i < samples.Length; i++)
        {
            var (from, to) = (i * curve.Length / samples.Length, (i + 1) * curve.Length / samples.Length);
            var (a, b) = (Sideways(from), Sideways(to));
            for (var line = (int)Math.Ceiling(Math.Min(a, b) / spacing.Metres); line * spacing.Metres < Math.Max(a, b); line++)
            {
                var station = Numerics.Roots.Bracketed(s => Sideways(s) - line * spacing.Metres, from, to, 1e-14 * curve.Length);
                if (!double.IsNaN(station))
                {
                    crossings.Add((line, fall.Dot(curve.At(station, beam) - curve.Centre), station));
                }
            }
        }

        return Named(crossings);

        double Sideways(double station) => -fall.Cross(curve.At(station, beam) - curve.Centre);
    }

    /// <summary>Lines numbered from the left as seen looking down the fall; the outermost crossing on each side carries the rafter.</summary>
    private static List<Mark> Named(List<(int Line, double Along, double Station)> crossings)
    {
        var marks = new List<Mark>();
        var number = 0;
        foreach (var line in crossings.GroupBy(c => c.Line).OrderBy(g => g.Key))
        {
            number++;
            var (low, high) = (line.MaxBy(c => c.Along), line.MinBy(c => c.Along));
            marks.Add(new Mark($"pole {number} low", false, 0, low.Station));
            if (high != low)
            {
                marks.Add(new Mark($"pole {number} high", false, 0, high.Station));
            }
        }

        return marks;
    }

    private static double? StationOf(PlanCurve curve, Mark mark, double beam, Remarks remarks)
    {
        if (mark.Station is { } station)
        {
            return station;
        }

        var meets = curve.StationsAt(mark.Bearing, beam);
        if (meets.Count == 1)
        {
            return meets[0];
        }

        remarks.Error("roof", Message.Of("geometry.landing-bearing", ("name", mark.Name), ("times", meets.Count)));
        return meets.Count == 0 ? null : meets.MaxBy(s => (curve.At(s, beam) - curve.Centre).Norm);
    }

    /// <summary>Clockwise from the first landing made, with the way to the next one.</summary>
    private static Sequence<Landing> Ordered(PlanCurve curve, List<Landing> placed, double beam)
    {
        if (placed.Count == 0)
        {
            return [];
        }

        var start = placed[0].Station;
        var order = placed.OrderBy(l => curve.Wrap(l.Station - start)).ToArray();
        var ring = curve.OffsetLength(beam);
        return order.Select((landing, i) =>
        {
            var next = order[(i + 1) % order.Length];
            var arc = next.BeamStation - landing.BeamStation;
            return landing with
            {
                ArcToNext = order.Length == 1 ? ring : arc < 0 ? arc + ring : arc,
                ChordToNext = (next.Point - landing.Point).Norm,
            };
        }).ToSequence();
    }

    private readonly record struct Mark(string Name, bool Secondary, double Bearing, double? Station);
}
