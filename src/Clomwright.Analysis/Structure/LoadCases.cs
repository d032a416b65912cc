using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Structure;

/// <summary>One case in which a wall is looked at.</summary>
/// <param name="Combination">Its combination as engineers write it; empty for a stage.</param>
/// <param name="Sense">Pattern of the roof, or <c>stage/soilWet</c>, or <c>stage/bareWall</c>.</param>
/// <param name="From">Bearing that wind comes from or the shaking acts along, radians; null where neither acts.</param>
/// <param name="Twist">Sense of the accidental twist with it: -1, 0, 1.</param>
public sealed record WallCase(string Combination, string Sense, double? From, int Twist)
{
    /// <summary>Whether it is an earthquake; wind otherwise where there is a direction.</summary>
    public bool Shakes { get; init; }

    /// <summary>Bearing of the side on which ground presses on the wall, radians; null where none does.</summary>
    public double? Soil { get; init; }

    /// <summary>How much of every unit load acts in it.</summary>
    internal double[] Coefficients { get; init; } = [];

    /// <summary>The same without what its direction brings: cases that differ only in that share it.</summary>
    internal double[] Resting { get; init; } = [];

    /// <summary>A case is the same as another by its name; how it is summed follows from that.</summary>
    public bool Equals(WallCase? other) => other is not null && (Combination, Sense, From, Twist, Shakes, Soil) == (other.Combination, other.Sense, other.From, other.Twist, other.Shakes, other.Soil);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Combination, Sense, From, Twist, Shakes, Soil);
}

/// <summary>Every stage and combination of a house as sums of the unit loads.</summary>
internal sealed class LoadCases
{
    /// <summary>Directions of shaking: at most 1 % of the worst is lost between two of them (1 - cos 7.5 degrees).</summary>
    private const int ShakeDirections = 24;

    private readonly WallBody body;
    private readonly BasisLoads basis;
    private readonly HouseGeometry geometry;
    private readonly RoofResult roof;
    private readonly double[] raised;
    private readonly List<WallCase> cases = [];
    private readonly List<Message> missing = [];
    private readonly List<Assumption> assumptions = [];

    private readonly double roofFactor;

    private LoadCases(WallBody body, BasisLoads basis, RoofResult roof, double roofFactor)
    {
        this.roofFactor = roofFactor;
        (this.body, this.basis, this.roof, geometry) = (body, basis, roof, body.Geometry);
        raised = Raised();
    }

    /// <summary>All cases, what is missing in them, and what was assumed.</summary>
    public static (WallCase[] Cases, Message[] Missing, Assumption[] Assumptions) Of(WallBody body, BasisLoads basis, RoofResult roof, double roofFactor = 1)
    {
        var all = new LoadCases(body, basis, roof, roofFactor);
        all.Build();
        return ([.. all.cases], [.. all.missing.Distinct()], [.. all.assumptions.Distinct()]);
    }

    private void Build()
    {
        if (SoilPressure.Missing(geometry.House.Site) is { } unknown)
        {
            missing.Add(unknown);
        }

        Add(new WallCase("", StageStates.Prefix + "bareWall", null, 0) { Coefficients = Weights(1, dry: false, plaster: false) });
        if (geometry.House.Roof is null)
        {
            missing.Add(new Message("analysis.roof.none"));
            return;
        }

        missing.AddRange(roof.Everyday.Missing);
        foreach (var (key, forces) in Stages())
        {
            Add(new WallCase("", StageStates.Prefix + key, null, 0) { Coefficients = Resting(1, forces, dry: false) });
        }

        foreach (var state in roof.Everyday.States.Where(s => s.Combination.Form == LoadForm.AllowableStress && s.Forces.PlateReaction.Count == basis.Press.Length))
        {
            var combination = state.Combination;
            var resting = Resting(RoofCombinations.DeadFactor(combination, geometry.House.Site.SeismicSds ?? 0), state.Forces, combination.DeadIsLeast);
            var (key, sense) = (combination.Key, state.Sense);
            if (combination.Factor(LoadKind.Wind) is > 0 and var blow)
            {
                cases.AddRange(Blown(key, sense, resting, blow).SelectMany(c => WithSoil(c, c.From!.Value)));
            }
            else if (combination.Factor(LoadKind.Earthquake) is > 0 and var shake)
            {
                cases.AddRange(Shaken(state, resting, shake).SelectMany(c => WithSoil(c, c.From!.Value + Math.PI)));
            }
            else
            {
                Add(new WallCase(key, sense, null, 0) { Coefficients = resting });
            }
        }
    }

    /// <summary>A case in which nothing acts sideways but the ground, where it is high: once with it on each side.</summary>
    private void Add(WallCase one)
    {
        cases.Add(one);
        for (var d = 0; d < basis.Soil.Length; d++)
        {
            var c = (double[])one.Coefficients.Clone();
            c[basis.Soil[d]] = 1;
            cases.Add(one with { Soil = 2 * Math.PI * d / basis.Soil.Length, Coefficients = c, Resting = one.Coefficients });
        }
    }

    /// <summary>The ground on the side from which a push comes, once more beside the case without it.</summary>
    private IEnumerable<WallCase> WithSoil(WallCase one, double side)
    {
        yield return one;
        if (basis.Soil.Length > 0)
        {
            var d = (int)Math.Round(side / (2 * Math.PI) * basis.Soil.Length) % basis.Soil.Length;
            var c = (double[])one.Coefficients.Clone();
            c[basis.Soil[d]] = 1;
            yield return one with { Soil = 2 * Math.PI * d / basis.Soil.Length, Coefficients = c };
        }
    }

    private IEnumerable<(string Key, RoofForces Forces)> Stages()
    {
        var stages = roof.Reciprocal.Value?.Stages ?? roof.Plain.Value?.Stages ?? [];
        foreach (var stage in stages)
        {
            if (stage.Forces.Value is { } forces && forces.PlateReaction.Count == basis.Press.Length)
            {
                yield return (stage.Key, forces);
            }
        }

        foreach (var (order, laid) in new[] { ("fromRing", roof.Reciprocal.Value?.FromRing.Value), ("fromEave", roof.Reciprocal.Value?.FromEave.Value) })
        {
            var steps = laid?.Steps ?? [];
            for (var i = 0; i < steps.Count; i++)
            {
                yield return (FormattableString.Invariant($"{order}/{i + 1}/{steps.Count}"), steps[i].Forces);
            }
        }
    }

    private double[] Weights(double factor, bool dry, bool plaster)
    {
        var c = new double[basis.All.Count];
        c[basis.Cob] = factor * (dry ? FromRoof.DryCob / (TakeDown.CobDensity * Steps.UsUnits.Gravity) : 1);
        c[basis.Timber] = factor;
        c[basis.Plaster] = plaster && !dry ? factor : 0;
        return c;
    }

    private double[] Resting(double factor, RoofForces forces, bool dry)
    {
        var c = Weights(factor, dry, plaster: true);
        for (var i = 0; i < basis.Press.Length; i++)
        {
            var force = roofFactor * forces.PlateReaction[i];
            c[basis.Press[i]] = Math.Max(0, force) + factor * raised[i];
            c[basis.Pull[i]] = Math.Max(0, -force);
            if (basis.Thrust.Length > 0)
            {
                c[basis.Thrust[i]] = roofFactor * forces.PlateSidewaysInSpace[i];
            }
        }

        return c;
    }

    private IEnumerable<WallCase> Blown(string key, string sense, double[] resting, double factor)
    {
        var wind = roof.Wind.Value!;
        var across = wind.WallsAcross * geometry.EvenWidth * Sideways.HeightOf(roof);
        for (var d = 0; d < basis.Wind.Length; d++)
        {
            var from = 2 * Math.PI * d / basis.Wind.Length;
            var c = (double[])resting.Clone();
            c[basis.Wind[d]] = factor;
            (c[basis.RoofX], c[basis.RoofY]) = (-factor * across * Math.Sin(from), -factor * across * Math.Cos(from));
            yield return new WallCase(key, sense, from, 0) { Coefficients = c, Resting = resting };
        }
    }

    private IEnumerable<WallCase> Shaken(CombinedState state, double[] resting, double factor)
    {
        var low = geometry.Wall.Base.Metres;
        var height = (geometry.Wall.Top - geometry.Wall.Base).Metres;
        var roofWeight = roofFactor * RoofWeight(state.Sense) + Seismic.SnowWeight(roof.Snow.Value, geometry.EvenWidth);
        SeismicLevel[] levels = [.. basis.RowWeights.Select((w, k) => new SeismicLevel(w, body.Grid.Z[k] - low)), new SeismicLevel(roofWeight, height)];
        var known = Seismic.Of(geometry.House.Site, levels.ToSequence(), height + Sideways.HeightOf(roof) / 2);
        if (known.Value is not { } load)
        {
            missing.Add(known.NotChecked!);
            yield break;
        }

        assumptions.AddRange(load.Assumptions);
        var onRoof = load.LevelForces[^1];
        var onWall = load.BaseShear - onRoof;
        var turning = basis.RowWeights.Select((w, k) => w * (body.Grid.Z[k] - low)).Sum();
        var acceleration = turning > 0 ? Steps.UsUnits.Gravity * onWall / turning : 0;
        for (var d = 0; d < ShakeDirections; d++)
        {
            var along = 2 * Math.PI * d / ShakeDirections;
            var (sin, cos) = Math.SinCos(along);
            var torsion = load.AccidentalTorsion(Extent(along + Math.PI / 2));
            foreach (var twist in (int[])[-1, 1])
            {
                var c = (double[])resting.Clone();
                (c[basis.WallX], c[basis.WallY]) = (factor * acceleration * sin, factor * acceleration * cos);
                (c[basis.RoofX], c[basis.RoofY]) = (factor * onRoof * sin, factor * onRoof * cos);
                c[basis.WallTwist] = twist * factor * torsion * onWall / load.BaseShear / basis.TwistMoment;
                c[basis.RoofTwist] = twist * factor * torsion * onRoof / load.BaseShear;
                yield return new WallCase(state.Combination.Key, state.Sense, along, twist) { Shakes = true, Coefficients = c, Resting = resting };
            }
        }
    }

    /// <summary>What of the roof shakes: wet where its weight presses, as it stands in the combination where it holds down.</summary>
    private double RoofWeight(string sense) => RoofWeight(roof, sense);

    /// <summary>What of a roof shakes in a pattern, N.</summary>
    public static double RoofWeight(RoofResult roof, string sense)
    {
        string[] stages = sense switch { "up" => ["decked"], "up-dry" => ["soilDry", "decked"], _ => ["soilWet", "decked"] };
        return stages.Select(s => (roof.Reciprocal.Value?.Stage(s) ?? roof.Plain.Value?.Stage(s))?.Value?.TotalLoad).FirstOrDefault(w => w is not null) ?? 0;
    }

    /// <summary>How wide the outside of the wall is at its base, seen along a bearing's normal, m.</summary>
    private double Extent(double bearing)
    {
        var (sin, cos) = Math.SinCos(bearing);
        var outside = geometry.Wall.OutsideOffset(geometry.Wall.Base.Metres);
        var reach = Enumerable.Range(0, body.Grid.Around).Select(i => geometry.Curve.At(body.Grid.S[i], outside)).Select(p => p.East * sin + p.North * cos).ToArray();
        return reach.Max() - reach.Min();
    }

    /// <summary>The directions in which the rafters of a plain roof that lean on each other push their landings; empty for other roofs.</summary>
    public static Sequence<PlanPoint> Thrusts(HouseGeometry geometry, RoofResult roof)
    {
        if (roof.Plain.Value is not { Thrust: > 0 } plain)
        {
            return [];
        }

        var directions = new PlanPoint[geometry.Landings.Count(l => !l.Secondary)];
        for (var i = 0; i < plain.Feet.Count; i++)
        {
            directions[plain.Feet[i]] = 1 / plain.Places[i].Along.Norm * (-1 * plain.Places[i].Along);
        }

        return directions.ToSequence();
    }

    /// <summary>Weight of the wall raised under a shed's upper rafters, N at each landing, over the stretch half-way to both neighbours.</summary>
    private double[] Raised()
    {
        var landings = geometry.Landings.Where(l => !l.Secondary).ToArray();
        var high = UnderRoof.Raised(geometry, roof.Plain.Value);
        return [.. landings.Select((l, i) =>
        {
            var (before, after) = (landings[(i + landings.Length - 1) % landings.Length], landings[(i + 1) % landings.Length]);
            var own = landings.Length < 2 ? geometry.Curve.Length : (geometry.Curve.Wrap(l.Station - before.Station) + geometry.Curve.Wrap(after.Station - l.Station)) / 2;
            return (high?[i] ?? 0) * own * geometry.Wall.ThicknessAtTop.Metres * TakeDown.CobDensity * Steps.UsUnits.Gravity;
        })];
    }
}
