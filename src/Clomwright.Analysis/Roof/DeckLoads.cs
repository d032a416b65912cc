using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>A combination as it presses on the deck.</summary>
/// <param name="Combination">The combination.</param>
/// <param name="Sense">The pattern of snow that presses most.</param>
/// <param name="Pressure">Pa on plan.</param>
internal sealed record DeckState(Combination Combination, string Sense, double Pressure);

/// <summary>What presses on a square metre of plan of deck, at its most, Pa.</summary>
internal sealed record DeckLoads
{
    private const double Water = 9806.65;

    /// <summary>All combinations that could be summed; never empty.</summary>
    public required Sequence<DeckState> Combined { get; init; }

    /// <summary>Which system of timber they belong to.</summary>
    public required TimberSystem System { get; init; }

    /// <summary>Deck and wet layers.</summary>
    public required double Wet { get; init; }

    /// <summary>The deck alone.</summary>
    public required double Bare { get; init; }

    /// <summary>Snow at its everyday level; null when it is not known.</summary>
    public required double? Snow { get; init; }

    /// <summary>Most net suction on the bare dry deck in any combination that lifts it, on plan; 0 where none does, null where wind is not known.</summary>
    public required double? Uplift { get; init; }

    /// <summary>The combination that lifts it most; that of weight alone where wind is not known.</summary>
    public required Combination Lifting { get; init; }

    /// <summary>A person on the bare deck, as long as building takes.</summary>
    public Combination Person => new("D + Lr", System == TimberSystem.En ? LoadForm.Strength : LoadForm.AllowableStress, false, [new(LoadKind.Dead, 1), new(LoadKind.RoofLive, 1)], Sources.Get("mechanics"));

    /// <summary>Loads of a roof as described, or why they are not known.</summary>
    public static Known<DeckLoads> Of(RoofWeights weights, double slope, LoadEdition? edition, SnowLoad? snow, WindLoad? wind, double roofLive, double? shaking, double? edgeBoard)
    {
        if (weights.LayersWet.Value is not { } layers)
        {
            return weights.LayersWet.NotChecked!;
        }

        var system = weights.Poles.Value?.System ?? TimberSystem.Nds;
        var bare = weights.Deck / Math.Cos(slope);
        var wet = bare + layers.Value / Math.Cos(slope);
        var pond = Water * Math.Max(0, (edgeBoard ?? 0) - weights.Depth);
        var form = system == TimberSystem.En ? LoadForm.Strength : LoadForm.AllowableStress;
        var combinations = edition is { } known && (system == TimberSystem.Nds || edition == LoadEdition.En1990)
            ? Combinations.Of(known, form)
            : [new Combination("D", LoadForm.AllowableStress, false, [new CombinationTerm(LoadKind.Dead, 1)], Sources.Get("mechanics"))];
        var states = new List<DeckState>();
        foreach (var c in combinations.Where(c => !c.DeadIsLeast))
        {
            if ((c.Factor(LoadKind.Snow) != 0 && snow is null) || (c.Factor(LoadKind.Wind) != 0 && wind is null) || (c.Factor(LoadKind.Earthquake) != 0 && shaking is null))
            {
                continue;
            }

            var down = wind is null ? 0 : Math.Max(0, Math.Max(wind.WindwardDown, wind.LeewardDown));
            var rest = (c.Factor(LoadKind.Dead) + 0.2 * (shaking ?? 0) * c.Factor(LoadKind.Earthquake)) * wet + c.Factor(LoadKind.RoofLive) * roofLive + c.Factor(LoadKind.Rain) * pond + c.Factor(LoadKind.Wind) * down;
            var (sense, most) = snow is null || c.Factor(LoadKind.Snow) == 0 ? ("even", 0)
                : new[] { ("even", snow.Balanced), ("one-sided", snow.OneSided), ("drift", Math.Max(snow.DriftAtCrown, snow.DriftAtEave)) }.MaxBy(x => x.Item2);
            states.Add(new DeckState(c, sense, rest + c.Factor(LoadKind.Snow) * most));
        }

        var lifting = wind is null ? null : combinations.Where(c => c.DeadIsLeast).MaxBy(c => Lifted(c, bare, wind, shaking ?? 0));
        return new DeckLoads
        {
            Combined = states.ToSequence(), System = system, Uplift = wind is null ? null : lifting is null ? 0 : Math.Max(0, Lifted(lifting, bare, wind, shaking ?? 0)), Lifting = lifting ?? states[0].Combination, Wet = wet, Bare = bare,
            Snow = snow is null ? null : Math.Max(snow.Balanced, Math.Max(snow.OneSided, Math.Max(snow.DriftAtCrown, snow.DriftAtEave))) * snow.ServiceFactor,
        };
    }

    private static double Lifted(Combination c, double bare, WindLoad wind, double shaking)
    {
        var up = -Math.Min(0, Math.Min(wind.EaveUp, Math.Min(wind.WindwardUp, wind.LeewardUp)));
        return c.Factor(LoadKind.Wind) * up - (c.Factor(LoadKind.Dead) - 0.2 * shaking * c.Factor(LoadKind.Earthquake)) * bare;
    }
}

/// <summary>How far deck boards and secondary poles span, m in plan.</summary>
/// <param name="Deck">Between the middles of what boards lie on, at its widest.</param>
/// <param name="AtEave">What one secondary carries at the eave, wide.</param>
/// <param name="AtPlate">Over the bond beam.</param>
/// <param name="AtInner">At its inner end.</param>
/// <param name="SecondarySpan">From the bond beam to where a secondary meets its poles.</param>
/// <param name="Reach">From the bond beam to the eave.</param>
/// <param name="Slope">Mean rise over run.</param>
/// <param name="Count">How many secondaries there are.</param>
public sealed record DeckSpans(double Deck, double AtEave, double AtPlate, double AtInner, double SecondarySpan, double Reach, double Slope, int Count)
{
    /// <summary>To cut, from the eave to the inner end, m along it.</summary>
    public double SecondaryLength => (Reach + SecondarySpan) * Math.Sqrt(1 + Slope * Slope);

    /// <summary>Spans between poles that lie round a centre.</summary>
    internal static DeckSpans Round(Sequence<PoleGeometry> poles, Building.Roof roof)
    {
        var order = poles.OrderBy(p => p.Number).ToArray();
        double eave = 0, plate = 0, inner = 0;
        for (var i = 0; i < order.Length; i++)
        {
            var (a, b) = (order[i], order[(i + 1) % order.Length]);
            eave = Math.Max(eave, Apart(a, b, p => -p.EaveReach));
            plate = Math.Max(plate, Apart(a, b, _ => 0));
            inner = Math.Max(inner, Apart(a, b, p => Math.Max(0, p.Near)));
        }

        var share = 1 + (roof.Secondaries?.PerBay ?? 0);
        return new DeckSpans(
            eave / share, eave / share, plate / share, Math.Min(inner, plate) / share, poles.Max(p => roof is Building.Roof.Reciprocal ? p.Near : p.Far), poles.Max(p => p.EaveReach), poles.Average(p => p.Slope),
            order.Length * (share - 1));
    }

    /// <summary>Spans between rafters side by side.</summary>
    internal static DeckSpans Strips(Sequence<PoleGeometry> poles, double spacing, Building.Roof roof)
    {
        var share = 1 + (roof.Secondaries?.PerBay ?? 0);
        var apart = spacing / share;
        return new DeckSpans(apart, apart, apart, apart, poles.Max(p => p.Far), poles.Max(p => p.EaveReach), poles.Average(p => p.Slope), Math.Max(0, poles.Count - 1) * (share - 1));
    }

    /// <summary>Force on its two supports, at the bond beam and at the inner end, for each pascal on plan, N/Pa.</summary>
    internal (double Plate, double Inner) Reactions()
    {
        var load = Load(1);
        var inner = load.PlateMoment / SecondarySpan;
        return (load.Total - inner, inner);
    }

    /// <summary>A secondary under a pressure on plan.</summary>
    internal PoleDiagram Diagram(double diameter, double pressure)
    {
        var pole = new PoleGeometry
        {
            Number = 1, Foot = default, Along = new PlanPoint(0, 1), PlateRadius = SecondarySpan, FootHeight = 0, TangentDistance = SecondarySpan, Near = SecondarySpan / 2, Far = SecondarySpan, EaveReach = Reach, Tail = 0,
            Butt = diameter, Tip = diameter, Notch = 0, Slope = Slope, Separation = 0, Rise = 0, CrossingAngle = 0,
        };
        var load = Load(pressure);
        var inner = load.PlateMoment / SecondarySpan;
        return PoleDiagram.Of(pole, load, load.Total - inner, 0, inner);
    }

    private PoleLoad Load(double pressure)
    {
        Sequence<double> stations = Reach > 0
            ? [-Reach, 0, SecondarySpan / 4, 3 * SecondarySpan / 8, SecondarySpan / 2, 5 * SecondarySpan / 8, 3 * SecondarySpan / 4, SecondarySpan]
            : [0, SecondarySpan / 4, 3 * SecondarySpan / 8, SecondarySpan / 2, 5 * SecondarySpan / 8, 3 * SecondarySpan / 4, SecondarySpan];
        return PoleLoad.Line(stations, x => pressure * (x < 0 ? AtPlate + (AtEave - AtPlate) * -x / Reach : AtPlate + (AtInner - AtPlate) * x / SecondarySpan));
    }

    private static double Apart(PoleGeometry a, PoleGeometry b, Func<PoleGeometry, double> at) => (a.Foot + at(a) * a.Along - (b.Foot + at(b) * b.Along)).Norm;
}
