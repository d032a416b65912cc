using Clomwright.Analysis.Loads;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>The loads of one roof, apart, along its poles. Unit patterns are found once and scaled.</summary>
internal sealed class RoofCases
{
    private const double Water = 9806.65;
    private const int MostDirections = 12;

    private readonly IShares shares;
    private readonly RoofWeights weights;
    private readonly Building.Roof roof;
    private readonly Building.Eye eye;
    private readonly int count;
    private readonly PoleLoad[][] surface;
    private readonly PoleLoad[] plan;

    public RoofCases(IShares shares, RoofWeights weights, Building.Roof roof, Building.Eye eye)
    {
        count = shares.Poles.Count;
        this.eye = eye;
        this.shares = shares;
        this.weights = weights;
        this.roof = roof;
        surface = [.. Enumerable.Range(0, Tributary.InsideBands + 1).Select(band => shares.Pressure(p => p.Band == band ? p.SurfacePerPlan : 0))];
        plan = shares.Pressure(_ => 1);
        None = [.. shares.Stations.Select(PoleLoad.None)];
        var brim = Brim(roof) - weights.Depth;
        Ponded = brim > 0 ? shares.Pressure(p => Water * Math.Max(0, brim - p.RiseFromEave)) : None;
    }

    /// <summary>Area of the ring on plan, m2.</summary>
    public double RingArea => shares.RingArea;

    public PoleLoad[] None { get; }

    /// <summary>Area on plan of the roof outside the ring that each pole carries, m2.</summary>
    public IReadOnlyList<double> Areas => [.. plan.Select(l => l.Total)];

    /// <summary>Poles and secondaries. A secondary lies between two poles and gives half to each.</summary>
    public PoleLoad[] Timber(double unitWeight)
    {
        var poles = shares.Along((pole, x) => roof.SideBySide * unitWeight * Math.PI / 4 * Square(pole.DiameterAt(x)) / pole.PitchCosine);
        if (roof.Secondaries is not { PerBay: > 0 } s)
        {
            return poles;
        }

        var area = Math.PI / 4 * Square(s.Diameter.Metres) * s.PerBay;
        return Add(poles, 1, shares.Along((pole, x) => x <= pole.Near ? unitWeight * area / pole.PitchCosine : 0));
    }

    /// <summary>Deck, what closes the ring, and edge board.</summary>
    public PoleLoad[] Deck(bool edgeBoard)
    {
        var closed = eye == Building.Eye.Closed ? weights.Deck : weights.Eye;
        var load = Add(Everywhere(weights.Deck), 1, shares.AtRing(closed * RingArea / count));
        return edgeBoard ? Add(load, 1, shares.AtEave(weights.EdgeBoard)) : load;
    }

    /// <summary>Layers on some bands, Pa on the roof's own surface; a ring that is decked over is laid with the innermost band.</summary>
    public PoleLoad[] Layers(double onSurface, Func<int, bool> band)
    {
        var load = None;
        for (var b = 0; b < surface.Length; b++)
        {
            load = band(b) ? Add(load, onSurface, surface[b]) : load;
        }

        return band(0) && eye == Building.Eye.Closed ? Add(load, 1, shares.AtRing(onSurface * RingArea / count)) : load;
    }

    /// <summary>Layers on the half of the roof that looks one way.</summary>
    public IReadOnlyList<PoleLoad[]> LayersOnHalf(double onSurface) => Toward(way => shares.Pressure(p => Faces(p, way) ? onSurface * p.SurfacePerPlan : 0));

    /// <summary>Snow or other pressure evenly on plan, on the ring too.</summary>
    public PoleLoad[] Even(double onPlan) => Add(Scale(onPlan, plan), 1, shares.AtRing(onPlan * RingArea / count));

    /// <summary>Pressure on one half on plan, and on half of the ring.</summary>
    public IReadOnlyList<PoleLoad[]> Half(double onPlan) => Toward(way =>
        Add(shares.Pressure(p => Faces(p, way) ? onPlan : 0), 1, shares.AtRing(onPlan * RingArea / count / 2)));

    /// <summary>Drift in a sector of 90 degrees, fading to nothing over 22.5 degrees on both sides.</summary>
    public IReadOnlyList<PoleLoad[]> Drift(double atRing, double atEave) => Toward(way => shares.Pressure(p =>
    {
        if (!Faces(p, way))
        {
            return 0;
        }

        var off = Math.Abs(Math.Atan2(way.Cross(p.Place), way.Dot(p.Place))) * 180 / Math.PI;
        return Math.Clamp((67.5 - off) / 22.5, 0, 1) * (atEave + (atRing - atEave) * p.Inward);
    }));

    /// <summary>Height over the deck to which water can stand: the overflow, or the top of the edge board, m.</summary>
    public static double Brim(Building.Roof roof) => Math.Min(roof.EdgeBoard?.Metres ?? 0, roof.Overflow?.Metres ?? double.PositiveInfinity);

    /// <summary>Water that stands level behind the edge board while the drain is blocked, above the soil.</summary>
    public PoleLoad[] Ponded { get; }

    /// <summary>Wind; down is positive.</summary>
    public IReadOnlyList<PoleLoad[]> Wind(WindLoad wind, bool up) => Toward(way => shares.Pressure(p =>
    {
        var windward = Faces(p, way);
        return up
            ? windward ? p.Outside ? Math.Min(wind.EaveUp, wind.WindwardUp) : wind.WindwardUp : wind.LeewardUp
            : windward ? wind.WindwardDown : wind.LeewardDown;
    }));

    /// <summary>One person, barrow or heap on one pole at a plan distance from the plate.</summary>
    public PoleLoad[] OnOne(int pole, double distance, double force) => shares.OnOne(pole, distance, force);

    public static PoleLoad[] Add(PoleLoad[] a, double factor, PoleLoad[] b) => [.. a.Select((l, i) => l.Plus(factor, b[i]))];

    public static PoleLoad[] Scale(double factor, PoleLoad[] loads) => [.. loads.Select(l => factor * l)];

    private PoleLoad[] Everywhere(double onSurface)
    {
        var load = None;
        foreach (var band in surface)
        {
            load = Add(load, onSurface, band);
        }

        return load;
    }

    private static bool Faces(RoofPoint p, PlanPoint way) => way.Dot(p.Place) > 0;

    /// <summary>A pattern turned toward every pole, up to twelve of them.</summary>
    private PoleLoad[][] Toward(Func<PlanPoint, PoleLoad[]> pattern)
    {
        var tried = Math.Min(count, MostDirections);
        var list = new PoleLoad[tried][];
        var ways = shares.Ways;
        for (var k = 0; k < tried; k++)
        {
            list[k] = pattern(ways[k * count / tried]);
        }

        return list;
    }

    private static double Square(double x) => x * x;
}
