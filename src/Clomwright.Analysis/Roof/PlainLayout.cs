using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>How the poles of a plain roof stand on the wall.</summary>
internal enum PlainKind
{
    /// <summary>To a post under the centre.</summary>
    Post,

    /// <summary>To a ring that only the poles hold.</summary>
    Ring,

    /// <summary>From wall to wall in one plane.</summary>
    Shed,

    /// <summary>In pairs that lean on each other at the ridge.</summary>
    Gable,
}

/// <summary>Rafters of a plain roof. Each lies as a pole: its foot on the bond-beam line, its far crossing the inner support.</summary>
/// <param name="Kind">How they stand.</param>
/// <param name="Poles">The rafters.</param>
/// <param name="Feet">Landing, among the main ones, that each stands on.</param>
/// <param name="Ends">Landing of its upper end on the wall; -1 where it has none.</param>
/// <param name="Partners">Rafter that it leans against; -1 where there is none.</param>
/// <param name="Shares">What each carries.</param>
/// <param name="Landings">How many main landings there are.</param>
internal sealed record PlainLayout(PlainKind Kind, Sequence<PoleGeometry> Poles, int[] Feet, int[] Ends, int[] Partners, IShares Shares, int Landings)
{
    /// <summary>The layout of a radial, shed or gable roof, or why there is none.</summary>
    public static Known<PlainLayout> Of(HouseGeometry geometry, Building.Roof roof)
    {
        var landings = geometry.Landings.Where(l => !l.Secondary).ToArray();
        return roof switch
        {
            Building.Roof.Radial radial when landings.Length >= 3 => Radial(geometry, radial, landings),
            Building.Roof.Shed shed => Strips(geometry, shed, landings, shed.Pole, shed.Spacing, shed.Pitch, gable: false),
            Building.Roof.Gable gable => Strips(geometry, gable, landings, gable.Pole, gable.Spacing, gable.Pitch, gable: true),
            _ => new Message("analysis.roof.no-landings"),
        };
    }

    private static Known<PlainLayout> Radial(HouseGeometry geometry, Building.Roof.Radial roof, Landing[] landings)
    {
        var centre = geometry.Curve.Centre;
        var ring = roof.CentrePost ? 0 : roof.RingRadius.Metres;
        var eave = EaveOffset(geometry, roof);
        var plate = PlateOffset(geometry, landings[0]);
        if (TangentRays.Of(geometry.Curve, centre, 0, 1, plate, eave) is not { } rays || !(roof.Pitch.RiseOverRun > 0))
        {
            return new Message("analysis.roof.no-pitch");
        }

        var n = landings.Length;
        var bearings = landings.Select(l => l.Point - centre).Select(v => Math.Atan2(v.East, v.North)).ToArray();
        var poles = new PoleGeometry[n];
        for (var i = 0; i < n; i++)
        {
            var distance = (landings[i].Point - centre).Norm;
            if (distance <= ring)
            {
                return Message.Of("analysis.reciprocal.ring-past-plate", ("pole", i + 1), ("ring", Amount.Metres(ring)), ("plate", Amount.Metres(distance)));
            }

            var ahead = bearings[(i + 1) % n] - bearings[i];
            poles[i] = Rafter(i, landings[i].Point, 1 / distance * (centre - landings[i].Point), distance, distance - ring, rays.ToEave(bearings[i] + Math.PI / 2) - distance, 0, roof.Pole, roof.Pitch) with
            {
                CrossingAngle = ahead - 2 * Math.PI * Math.Floor(ahead / (2 * Math.PI)),
            };
            poles[i] = LevelSeat.On(geometry, poles[i]);
        }

        var frame = new ReciprocalGeometry(centre, 0, Turn.Clockwise, Sequence.Create<PoleGeometry>(poles));
        int[] alone = [.. Enumerable.Repeat(-1, n)];
        int[] facing = [.. Enumerable.Range(0, n).Select(i => (i + n / 2) % n)];
        return new PlainLayout(roof.CentrePost ? PlainKind.Post : PlainKind.Ring, frame.Poles, [.. Enumerable.Range(0, n)], alone, roof.CentrePost ? alone : facing, new Tributary(frame, rays), n);
    }

    private static Known<PlainLayout> Strips(HouseGeometry geometry, Building.Roof roof, Landing[] landings, PoleSize size, Length spacing, Slope pitch, bool gable)
    {
        if (!(pitch.RiseOverRun > 0) || !(spacing.Metres > 0))
        {
            return new Message("analysis.roof.no-pitch");
        }

        var centre = geometry.Curve.Centre;
        var (sin, cos) = Math.SinCos(roof.FirstBearing.Radians);
        var fall = new PlanPoint(sin, cos);
        var eave = EaveOffset(geometry, roof);
        var poles = new List<PoleGeometry>();
        var (feet, ends, partners) = (new List<int>(), new List<int>(), new List<int>());
        var lines = Enumerable.Range(0, landings.Length).GroupBy(i => (int)Math.Round(-fall.Cross(landings[i].Point - centre) / spacing.Metres)).OrderBy(g => g.Key);
        foreach (var line in lines.Where(g => g.Count() == 2))
        {
            var low = line.MaxBy(i => fall.Dot(landings[i].Point - centre));
            var high = line.MinBy(i => fall.Dot(landings[i].Point - centre));
            double down = fall.Dot(landings[low].Point - centre), up = fall.Dot(landings[high].Point - centre), sideways = fall.Cross(landings[low].Point - centre);
            var (first, last) = Reach(geometry, centre, fall, sideways, eave);
            var (below, above) = (Math.Max(0, last - down), Math.Max(0, up - first));
            if (!gable)
            {
                feet.Add(low);
                ends.Add(high);
                partners.Add(-1);
                var rafter = LevelSeat.On(geometry, Rafter(poles.Count, landings[low].Point, -1 * fall, down - up + above, down - up, below, above, size, pitch));
                poles.Add(rafter with { UpperSeat = LevelSeat.Of(geometry, landings[high].Point, rafter) });
            }
            else if (down > 0 && up < 0)
            {
                feet.AddRange([low, high]);
                ends.AddRange([-1, -1]);
                partners.AddRange([poles.Count + 1, poles.Count]);
                poles.Add(LevelSeat.On(geometry, Rafter(poles.Count, landings[low].Point, -1 * fall, down, down, below, 0, size, pitch)));
                poles.Add(LevelSeat.On(geometry, Rafter(poles.Count, landings[high].Point, fall, -up, -up, above, 0, size, pitch)));
            }
        }

        if (poles.Count == 0)
        {
            return new Message("analysis.roof.no-landings");
        }

        var list = poles.ToSequence();
        return new PlainLayout(gable ? PlainKind.Gable : PlainKind.Shed, list, [.. feet], [.. ends], [.. partners], new StripShares(list, centre, spacing.Metres, roof.FirstBearing.Radians), landings.Length);
    }

    private static PoleGeometry Rafter(int index, PlanPoint foot, PlanPoint along, double inner, double span, double reach, double beyond, PoleSize size, Slope pitch) => new()
    {
        Number = index + 1, Foot = foot, Along = along, PlateRadius = inner, FootHeight = 0, TangentDistance = inner, Near = span / 2, Far = span, EaveReach = Math.Max(0, reach), Tail = beyond,
        Butt = size.Butt.Metres, Tip = size.Tip.Metres, Notch = 0, Slope = pitch.RiseOverRun, Separation = 0, Rise = 0, CrossingAngle = 0,
    };

    private static double EaveOffset(HouseGeometry geometry, Building.Roof roof) => geometry.Wall.OutsideOffset(geometry.Wall.Top.Metres) + roof.Eave.Metres;

    private static double PlateOffset(HouseGeometry geometry, Landing landing) =>
        (landing.Point - geometry.Curve.At(landing.Station)).Dot(geometry.Curve.Normal(landing.Station));

    /// <summary>Where a line along the fall leaves the eave curve at both ends, from the centre along the fall, m.</summary>
    private static (double First, double Last) Reach(HouseGeometry geometry, PlanPoint centre, PlanPoint fall, double sideways, double offset)
    {
        const int samples = 720;
        double first = 0, last = 0;
        var before = geometry.Curve.At(0, offset) - centre;
        for (var k = 1; k <= samples; k++)
        {
            var after = geometry.Curve.At(k * geometry.Curve.Length / samples, offset) - centre;
            double a = fall.Cross(before) - sideways, b = fall.Cross(after) - sideways;
            if (a * b <= 0 && a != b)
            {
                var at = fall.Dot(before + a / (a - b) * (after - before));
                (first, last) = (Math.Min(first, at), Math.Max(last, at));
            }

            before = after;
        }

        return (first, last);
    }
}
