using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>A point of the roof as a load pattern sees it.</summary>
/// <param name="Place">In plan from the ring's centre, m.</param>
/// <param name="Outside">Beyond the plate, on the eave.</param>
/// <param name="Band">0 next to the ring, <see cref="Tributary.InsideBands"/> on the eave.</param>
/// <param name="SurfacePerPlan">Area of the roof's own surface over its area on plan.</param>
/// <param name="Inward">0 at the eave, 1 at the touching point, by distance along the tangent.</param>
/// <param name="RiseFromEave">Height of the roof here over its eave on the same tangent, m.</param>
internal readonly record struct RoofPoint(PlanPoint Place, bool Outside, int Band, double SurfacePerPlan, double Inward, double RiseFromEave);

/// <summary>Shares the roof out to the poles of a reciprocal frame, whatever the plan.</summary>
/// <remarks>
/// A pole carries the tangents from half-way to its neighbour on one side to half-way on the other. What lies on such a tangent at a share of the way
/// to the plate goes to its pole at the same share, and what lies beyond the plate to the pole's eave likewise; so no load changes sides of the plate. For equal
/// poles on a circle this is exact: the width carried grows evenly from nothing at the touching point.
/// </remarks>
internal sealed class Tributary : IShares
{
    /// <summary>Bands between ring and plate in which soil goes on.</summary>
    public const int InsideBands = 4;

    private const int PiecesPerBand = 3;

    private readonly ReciprocalGeometry frame;
    private readonly TangentRays rays;
    private readonly Sequence<double>[] stations;
    private readonly double[] touch;
    private readonly Sample[][] samples;

    public Tributary(ReciprocalGeometry frame, TangentRays rays)
    {
        this.frame = frame;
        this.rays = rays;
        stations = [.. frame.Poles.Select(StationsOf)];
        touch = [.. frame.Poles.Select(p => Math.Atan2(Sign * -p.Along.North, Sign * p.Along.East))];
        samples = [.. Enumerable.Range(0, frame.Count).Select(i => SamplesOf(i).ToArray())];
    }

    private double Sign => frame.Turn == Turn.Clockwise ? 1 : -1;

    /// <summary>Stations of each pole, in the order of carrying.</summary>
    public IReadOnlyList<Sequence<double>> Stations => stations;

    public Sequence<PoleGeometry> Poles => frame.Poles;

    public double RingArea => Math.PI * frame.RingRadius * frame.RingRadius;

    public IReadOnlyList<PlanPoint> Ways => [.. frame.Poles.Select(p => p.Foot - frame.Centre).Select(v => 1 / v.Norm * v)];

    /// <summary>Loads of a pressure on plan, Pa downward, in the order of carrying.</summary>
    public PoleLoad[] Pressure(Func<RoofPoint, double> onPlan)
    {
        var loads = new PoleLoad[frame.Count];
        for (var i = 0; i < loads.Length; i++)
        {
            var force = new double[stations[i].Count - 1];
            var moment = new double[force.Length];
            foreach (var sample in samples[i])
            {
                var f = sample.Area * onPlan(sample.Point);
                force[sample.Piece] += f;
                moment[sample.Piece] += f * sample.Arm;
            }

            loads[i] = PoleLoad.Pieces(stations[i], force, moment);
        }

        return loads;
    }

    /// <summary>Loads along the poles themselves, N for each metre of plan length.</summary>
    public PoleLoad[] Along(Func<PoleGeometry, double, double> perMetre) =>
        [.. frame.Poles.Select((pole, i) => PoleLoad.Line(stations[i], x => perMetre(pole, x)))];

    /// <summary>What stands along the eave, N for each metre of it, at the outer ends of the poles.</summary>
    public PoleLoad[] AtEave(double perMetre) => [.. frame.Poles.Select((pole, i) =>
    {
        var u = rays.ToEave(touch[i]);
        var share = (pole.CrossingAngle + frame.Poles[(i + frame.Count - 1) % frame.Count].CrossingAngle) / 2;
        return PoleLoad.None(stations[i]).WithPoint(0, perMetre * share * Math.Sqrt(u * u + frame.RingRadius * frame.RingRadius));
    })];

    /// <summary>The same force on every pole at its touching point: what the ring carries.</summary>
    public PoleLoad[] AtRing(double force) =>
        [.. frame.Poles.Select((pole, i) => PoleLoad.None(stations[i]).WithPoint(stations[i].AsSpan().IndexOf(pole.TangentDistance), force))];

    /// <summary>A force on one pole at the station nearest to a plan distance.</summary>
    public PoleLoad[] OnOne(int pole, double distance, double force)
    {
        var loads = stations.Select(s => PoleLoad.None(s)).ToArray();
        var nearest = Enumerable.Range(0, stations[pole].Count).MinBy(j => Math.Abs(stations[pole][j] - distance));
        loads[pole] = loads[pole].WithPoint(nearest, force);
        return loads;
    }

    private const double Root = 0.28867513459481287;

    private List<Sample> SamplesOf(int index)
    {
        var list = new List<Sample>();
        var forward = frame.Poles[index].CrossingAngle / 2;
        var back = frame.Poles[(index + frame.Count - 1) % frame.Count].CrossingAngle / 2;
        for (var g = 0; g < 4; g++)
        {
            // Two Gauss points on each side of the pole.
            var (side, width) = g < 2 ? (-1, back) : (1, forward);
            Sweep(index, touch[index] + Sign * side * width * (0.5 + (g % 2 == 0 ? -1 : 1) * Root), width / 2, list);
        }

        return list;
    }

    private void Sweep(int index, double tau, double weight, List<Sample> list)
    {
        var pole = frame.Poles[index];
        var x = stations[index];
        double plate = rays.ToPlate(tau), eave = rays.ToEave(tau), r = frame.RingRadius, t = pole.Slope;
        var (sin, cos) = Math.SinCos(tau);
        for (var j = 0; j + 1 < x.Count && x[j + 1] <= pole.TangentDistance; j++)
        {
            var h = x[j + 1] - x[j];
            var outside = x[j] < 0;
            var stretch = outside ? (eave - plate) / pole.EaveReach : plate / pole.TangentDistance;
            var band = outside ? InsideBands : Math.Clamp((int)(InsideBands * (1 - (x[j] + h / 2) / pole.TangentDistance)), 0, InsideBands - 1);
            for (var g = -1; g <= 1; g += 2)
            {
                var arm = (0.5 + g * Root) * h;
                var u = plate - (x[j] + arm) * stretch;
                var place = new PlanPoint(r * sin - Sign * u * cos, r * cos + Sign * u * sin);
                var surface = Math.Sqrt(u * u * (1 + t * t) + t * t * r * r) / u;
                var point = new RoofPoint(place, outside, band, surface, 1 - u / eave, t * (eave - u));
                list.Add(new Sample(j, weight * u * stretch * h / 2, arm, point));
            }
        }
    }

    private static Sequence<double> StationsOf(PoleGeometry pole)
    {
        var held = new List<double> { -pole.EaveReach, 0, pole.Near, pole.TangentDistance, pole.Far, pole.Far + pole.Tail };
        var wanted = new List<double> { -0.75 * pole.EaveReach, -0.5 * pole.EaveReach, -0.25 * pole.EaveReach };
        for (var k = 1; k < InsideBands * PiecesPerBand; k++)
        {
            wanted.Add(pole.TangentDistance * k / (InsideBands * PiecesPerBand));
        }

        var least = pole.TangentDistance / 200;
        held.AddRange(wanted.Where(w => held.All(v => Math.Abs(v - w) > least)).ToList());
        return [.. held.Distinct().Order()];
    }

    /// <param name="Piece">Of the pole.</param>
    /// <param name="Area">Plan area that it stands for, m2.</param>
    /// <param name="Arm">From the piece's outer end, along the pole in plan, m.</param>
    /// <param name="Point">As patterns see it.</param>
    private readonly record struct Sample(int Piece, double Area, double Arm, RoofPoint Point);
}
