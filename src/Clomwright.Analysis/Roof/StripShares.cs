using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>Parallel rafters, each with a strip as wide as their spacing.</summary>
internal sealed class StripShares : IShares
{
    private const double Root = 0.28867513459481287;
    private const int Pieces = 12;

    private readonly Sequence<double>[] stations;
    private readonly PlanPoint centre;
    private readonly double spacing;
    private readonly double fall;

    public StripShares(Sequence<PoleGeometry> poles, PlanPoint centre, double spacing, double fall)
    {
        Poles = poles;
        this.centre = centre;
        this.spacing = spacing;
        this.fall = fall;
        stations = [.. poles.Select(StationsOf)];
    }

    public Sequence<PoleGeometry> Poles { get; }

    public IReadOnlyList<Sequence<double>> Stations => stations;

    public double RingArea => 0;

    public IReadOnlyList<PlanPoint> Ways => [.. Enumerable.Range(0, Poles.Count).Select(k => Math.SinCos(fall + 2 * Math.PI * k / Poles.Count)).Select(w => new PlanPoint(w.Sin, w.Cos))];

    public PoleLoad[] Pressure(Func<RoofPoint, double> onPlan) => [.. Poles.Select((pole, i) =>
    {
        var x = stations[i];
        var force = new double[x.Count - 1];
        var moment = new double[force.Length];
        var whole = pole.EaveReach + pole.TangentDistance;
        for (var j = 0; j < force.Length; j++)
        {
            var h = x[j + 1] - x[j];
            var outside = x[j] < 0 || x[j] >= pole.Far;
            var band = outside ? Tributary.InsideBands : Math.Clamp((int)(Tributary.InsideBands * (1 - (x[j] + h / 2) / pole.Far)), 0, Tributary.InsideBands - 1);
            for (var g = -1; g <= 1; g += 2)
            {
                var arm = (0.5 + g * Root) * h;
                var at = x[j] + arm;
                var place = pole.Foot + at * pole.Along - centre;
                var f = spacing * h / 2 * onPlan(new RoofPoint(
                    place, outside, band, 1 / pole.PitchCosine, (pole.EaveReach + at) / whole, pole.Slope * (pole.EaveReach + at)));
                force[j] += f;
                moment[j] += f * arm;
            }
        }

        return PoleLoad.Pieces(x, force, moment);
    })];

    public PoleLoad[] Along(Func<PoleGeometry, double, double> perMetre) => [.. Poles.Select((pole, i) => PoleLoad.Line(stations[i], x => perMetre(pole, x)))];

    public PoleLoad[] AtEave(double perMetre) => [.. Poles.Select((_, i) => PoleLoad.None(stations[i]).WithPoint(0, perMetre * spacing))];

    public PoleLoad[] AtRing(double force) => [.. stations.Select(s => PoleLoad.None(s))];

    public PoleLoad[] OnOne(int pole, double distance, double force)
    {
        var loads = stations.Select(s => PoleLoad.None(s)).ToArray();
        loads[pole] = loads[pole].WithPoint(Enumerable.Range(0, stations[pole].Count).MinBy(j => Math.Abs(stations[pole][j] - distance)), force);
        return loads;
    }

    private static Sequence<double> StationsOf(PoleGeometry pole)
    {
        var held = new List<double> { -pole.EaveReach, 0, pole.Near, pole.Far, pole.Far + pole.Tail };
        for (var k = 1; k < Pieces; k++)
        {
            var x = pole.Far * k / Pieces;
            if (held.All(v => Math.Abs(v - x) > pole.Far / 200))
            {
                held.Add(x);
            }
        }

        return [.. held.Distinct().Order()];
    }
}
