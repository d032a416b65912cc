using Clomwright.Analysis.Loads;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>Everything about one roof that its states and combinations are made of.</summary>
internal sealed class RoofStages
{
    private readonly Sequence<PoleGeometry> poles;
    private readonly double ringRadius;
    private readonly IStatics statics;
    private readonly RoofWeights weights;
    private readonly Known<SnowLoad> snow;
    private readonly bool edgeBoard;
    private readonly Message noTimber;

    public RoofStages(IShares shares, IStatics statics, RoofCases cases, RoofWeights weights, Building.Roof roof, Known<SnowLoad> snow)
    {
        poles = shares.Poles;
        ringRadius = Math.Sqrt(shares.RingArea / Math.PI);
        this.statics = statics;
        this.weights = weights;
        this.snow = snow;
        Cases = cases;
        OneSidedSnow = snow.Value is { } s ? cases.Half(s.OneSided) : null;
        DriftedSnow = snow.Value is { } d ? cases.Drift(d.DriftAtCrown, d.DriftAtEave) : null;
        edgeBoard = roof.EdgeBoard is not null;
        noTimber = weights.Poles.NotChecked ?? new Message("analysis.roof.no-timber");
        var unit = weights.Poles.Value?.Weight.Value;
        Bare = unit is { } green ? cases.Timber(green * weights.Green) : null;
        BareDry = unit is { } dry ? cases.Timber(dry) : null;
        Decked = Bare is null ? null : RoofCases.Add(Bare, 1, cases.Deck(edgeBoard: false));
        Boarded = Bare is null ? null : RoofCases.Add(Bare, 1, cases.Deck(edgeBoard));
        DeckedDry = BareDry is null ? null : RoofCases.Add(BareDry, 1, cases.Deck(edgeBoard: false));
        SoilWet = Laid(weights.LayersWet, _ => true);
        SoilDry = Laid(weights.LayersDry, _ => true);
    }

    public RoofCases Cases { get; }

    /// <summary>Snow on one half, toward every direction; null when snow is not known.</summary>
    public IReadOnlyList<PoleLoad[]>? OneSidedSnow { get; }

    /// <summary>Snow drifted into a sector, toward every direction; null when snow is not known.</summary>
    public IReadOnlyList<PoleLoad[]>? DriftedSnow { get; }

    /// <summary>Green poles and secondaries.</summary>
    public PoleLoad[]? Bare { get; }

    /// <summary>The same when dry.</summary>
    public PoleLoad[]? BareDry { get; }

    /// <summary>With the deck and what closes the ring.</summary>
    public PoleLoad[]? Decked { get; }

    /// <summary>With the edge board too.</summary>
    public PoleLoad[]? Boarded { get; }

    /// <summary>The least that may be there while wind blows: dry timber and deck, soil not yet on.</summary>
    public PoleLoad[]? DeckedDry { get; }

    /// <summary>With all layers saturated; or why not known.</summary>
    public (PoleLoad[]? Loads, Message? Why) SoilWet { get; }

    /// <summary>With all layers dry; or why not known.</summary>
    public (PoleLoad[]? Loads, Message? Why) SoilDry { get; }

    /// <summary>All states in their order.</summary>
    public Sequence<RoofStage> All()
    {
        var wet = SoilWet;
        return
        [
            Stage("bare", (Bare, noTimber)),
            Stage("decked", (Decked, noTimber)),
            Stage("eaveOnly", Laid(weights.LayersWet, band => band == Tributary.InsideBands)),
            Stage("insideOnly", Laid(weights.LayersWet, band => band < Tributary.InsideBands)),
            Stage("soilDry", SoilDry),
            Stage("soilWet", wet),
            Stage("soilWetSnow", OnSoil(wet, s => Cases.Even(s.Balanced * s.ServiceFactor))),
            Stage("oneSided", OnSoil(wet, s => Worst(wet.Loads!, s.ServiceFactor, OneSidedSnow!))),
            Stage("ponded", wet.Loads is { } w ? (RoofCases.Add(w, 1, Cases.Ponded), null) : wet),
            Stage("drift", OnSoil(wet, s => Worst(wet.Loads!, s.ServiceFactor, DriftedSnow!))),
            Stage("halfSoil", HalfSoil()),
            Stage("workerEave", OnePlace(Decked, Worker, at: p => -p.EaveReach, least: true)),
            Stage("workerRing", OnePlace(Decked, Worker, at: p => p.TangentDistance, least: false)),
            Stage("heapEave", OnePlace(Boarded, Heap, at: p => -p.EaveReach / 2, least: true)),
        ];
    }

    /// <summary>One person with tools on one pole, N: 300 lb.</summary>
    public const double Worker = 300 * 4.4482216152605;

    /// <summary>A quarter of a cubic metre of wet earth dropped in one place, N.</summary>
    public const double Heap = 0.25 * 18_850;

    /// <summary>Wet soil laid all round band by band.</summary>
    public Known<LoadingOrder> Order(bool fromRing)
    {
        if (Boarded is null || weights.LayersWet.Value is not { } layers)
        {
            return weights.LayersWet.NotChecked ?? noTimber;
        }

        var steps = new List<LoadingStep>();
        var load = Boarded;
        for (var k = 0; k <= Tributary.InsideBands; k++)
        {
            var band = fromRing ? k : Tributary.InsideBands - k;
            var added = Cases.Layers(layers.Value, b => b == band);
            load = RoofCases.Add(load, 1, added);
            var (inner, outer) = Radii(band);
            steps.Add(new LoadingStep(band, inner, outer, added.Sum(l => l.Total), Forces(load)));
        }

        return new LoadingOrder(steps.ToSequence());
    }

    /// <summary>A multiple of the pattern, of several, that makes the largest crossing force on top of a load.</summary>
    public PoleLoad[] Worst(PoleLoad[] under, double factor, IReadOnlyList<PoleLoad[]> patterns) =>
        RoofCases.Scale(factor, patterns.MaxBy(loads => Plan(under, factor, loads).Max())!);

    /// <summary>A multiple of the pattern, of several, that makes the least crossing force on top of a load.</summary>
    public PoleLoad[] Lightest(PoleLoad[] under, double factor, IReadOnlyList<PoleLoad[]> patterns) =>
        RoofCases.Scale(factor, patterns.MinBy(loads => Plan(under, factor, loads).Min())!);

    /// <summary>What a load does, sinking included.</summary>
    public RoofForces Forces(PoleLoad[] loads) => statics.Of(loads, weights.Poles.Value?.Modulus.Value);

    /// <summary>What a load does, without how far the ring sinks.</summary>
    public RoofForces ForcesOnly(PoleLoad[] loads) => statics.Of(loads, null);

    private double[] Plan(PoleLoad[] under, double factor, PoleLoad[] loads)
    {
        var moment = new double[loads.Length];
        for (var i = 0; i < moment.Length; i++)
        {
            moment[i] = under[i].PlateMoment + factor * loads[i].PlateMoment;
        }

        return statics.Inner(moment);
    }

    private RoofStage Stage(string key, (PoleLoad[]? Loads, Message? Why) state) => new(key, state.Loads is { } loads ? Forces(loads) : state.Why!);

    private (PoleLoad[]? Loads, Message? Why) Laid(Known<Calculated<double>> layers, Func<int, bool> band) =>
        Boarded is null ? (null, noTimber)
        : layers.Value is not { } weight ? (null, layers.NotChecked)
        : (RoofCases.Add(Boarded, 1, Cases.Layers(weight.Value, band)), null);

    private (PoleLoad[]? Loads, Message? Why) OnSoil((PoleLoad[]? Loads, Message? Why) wet, Func<SnowLoad, PoleLoad[]> fallen) =>
        wet.Loads is null ? wet : snow.Value is not { } s ? (null, snow.NotChecked) : (RoofCases.Add(wet.Loads, 1, fallen(s)), null);

    private (PoleLoad[]? Loads, Message? Why) HalfSoil() =>
        Boarded is null ? (null, noTimber)
        : weights.LayersWet.Value is not { } weight ? (null, weights.LayersWet.NotChecked)
        : (RoofCases.Add(Boarded, 1, Worst(Boarded, 1, Cases.LayersOnHalf(weight.Value))), null);

    private (PoleLoad[]? Loads, Message? Why) OnePlace(PoleLoad[]? under, double force, Func<PoleGeometry, double> at, bool least)
    {
        if (under is null)
        {
            return (null, noTimber);
        }

        PoleLoad[][] places = [.. poles.Select((p, i) => Cases.OnOne(i, at(p), force))];
        return (RoofCases.Add(under, 1, least ? Lightest(under, 1, places) : Worst(under, 1, places)), null);
    }

    private (double Inner, double Outer) Radii(int band)
    {
        double inner = 0, outer = 0;
        foreach (var pole in poles)
        {
            inner += Radius(pole.TangentDistance * band / Tributary.InsideBands);
            outer += band == Tributary.InsideBands ? Radius(pole.TangentDistance + pole.EaveReach) : Radius(pole.TangentDistance * (band + 1) / Tributary.InsideBands);
        }

        return (inner / poles.Count, outer / poles.Count);

        double Radius(double u) => Math.Sqrt(u * u + ringRadius * ringRadius);
    }
}
