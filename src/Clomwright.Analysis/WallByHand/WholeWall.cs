using Clomwright.Analysis.Anchorage;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>The ring as a whole: sliding on each joint between lifts, and turning over the outer edge of its foot.</summary>
/// <remarks>
/// Every joint between lifts counts as dry: friction, or the legs of tees that go through it, and nothing sticks. Above the bars of tees what poles lift does not ease a joint, because the bars hold it below. The stem and what breaks the damp on it belong to the way sideways (<see cref="WallTopResult.Lateral"/>).
/// </remarks>
internal sealed class WholeWall(HouseGeometry geometry, Sideways sideways, WallNumbers numbers, double dryCob)
{
    private static readonly Source Mechanics = Sources.Get("mechanics");

    private readonly Stretch[] stretches = Stretch.Of(geometry);

    /// <summary>One check a joint, the lowest first.</summary>
    public IEnumerable<CheckedMember> Joints(IReadOnlyList<WallState> states, Message? missing) => geometry.Lifts.SkipLast(1).Select(lift =>
    {
        var subject = $"on lift {lift.Number}";
        if ((missing ?? (states.Count == 0 ? new Message("analysis.roof.none") : null)) is { } why)
        {
            return new CheckedMember("lift-joint", subject, why);
        }

        var checks = states.Select(s => Joint(s, lift.Top.Metres)).ToArray();
        return new CheckedMember("lift-joint", subject, checks.FirstOrDefault(c => !c.Is) is { NotChecked: not null } unknown ? unknown : checks.MaxBy(c => c.Value!.Use));
    });

    /// <summary>The whole house in the hardest state and direction.</summary>
    public CheckedMember Overturning(IReadOnlyList<WallState> states, Message? missing)
    {
        const string Key = "house-overturning";
        if ((missing ?? (states.Count == 0 ? new Message("analysis.roof.none") : null)) is { } why)
        {
            return new CheckedMember(Key, "house", why);
        }

        var lever = Lever();
        var checks = states.Select(s => Over(s, lever)).ToArray();
        return new CheckedMember(Key, "house", checks.FirstOrDefault(c => !c.Is) is { NotChecked: not null } unknown ? unknown : checks.MaxBy(c => c.Value!.Use));
    }

    private Known<MemberCheck> Joint(WallState state, double height)
    {
        var all = sideways.Force(state.Combination, state.Sense, SidewaysPart.House);
        if (all.Value is not { } whole)
        {
            return all.NotChecked!;
        }

        var sheet = new Worksheet("lift-joint");
        var last = whole.How.Steps[^1];
        var force = sheet.Step(last.Key, last.Result.Name, last.Equation, whole.Value, Dimension.Force, last.Source, [.. last.Symbols]);
        if (state.Combination.Factor(LoadKind.Wind) > 0)
        {
            var tall = last.Symbols.First(s => s.Name == "h_w");
            var below = Worksheet.Computed("z_j", "joint-over-base", height - geometry.Wall.Base.Metres, Dimension.Length);
            force = sheet.Step("joint-wind", "H_j", "H*(h_w - z_j)/h_w", whole.Value * (tall.Value.Si - below.Value.Si) / tall.Value.Si, Dimension.Force, Mechanics, force, tall, below);
        }
        else
        {
            force = Shaken(sheet, force, sideways.Weights(state.Sense), height - geometry.Wall.Base.Metres);
        }

        var roof = state.Reactions.Sum();
        var lifted = geometry.Tees.Count > 0 && geometry.Tees.All(t => t.BarHeight <= height) ? Math.Max(0, roof) : roof;
        var cob = dryCob * stretches.Sum(s => s.CobAbove(height));
        var n = sheet.Step(
            "joint-presses", "N", "max(0, k_D*G + N_r)", Math.Max(0, state.Dead * cob + lifted), Dimension.Force, Mechanics, Worksheet.Computed("k_D", "dead-factor", state.Dead, Dimension.Number),
            Worksheet.Computed("G", "cob-over-joint", cob, Dimension.Force), Worksheet.Computed("N_r", "roof-presses", lifted, Dimension.Force));
        var held = sheet.Step("joint-friction", "R_f", "max(0.001*Nw, mu*N)", Math.Max(1e-3, numbers["wall-joint-friction"] * n.Value.Si), Dimension.Force, Mechanics, numbers.Symbol("mu", "wall-joint-friction"), n, Newton);
        if (Legs(height) is { } leg)
        {
            held = sheet.Step("joint-held", "R", "max(R_f, n_t*Z)", Math.Max(held.Value.Si, geometry.Tees.Count * leg.Shear.Value), Dimension.Force, Mechanics, held,
                Worksheet.Computed("n_t", "tees-count", geometry.Tees.Count, Dimension.Count), Worksheet.Cited("Z", "earth-dowel", leg.Shear, Dimension.Force));
        }

        return new MemberCheck(state.Combination.Key, state.Sense, force.Value, held.Value, sheet.Done);
    }

    /// <summary>Of an earthquake what comes from above a joint: shares grow evenly with height (ASCE 7, 12.8.3 with k 1), the wall as heavy at every height.</summary>
    private Symbol Shaken(Worksheet sheet, Symbol force, (double Roof, double Wall) weights, double above)
    {
        var h = sideways.Height;
        Symbol tall = Worksheet.Computed("h", "wall-height", h, Dimension.Length), below = Worksheet.Computed("z_j", "joint-over-base", above, Dimension.Length);
        Symbol roof = Worksheet.Computed("W_r", "roof-weight", weights.Roof, Dimension.Force), wall = Worksheet.Computed("W_w", "wall-weight", weights.Wall, Dimension.Force);
        return sheet.Step(
            "joint-earthquake", "H_j", "H*(W_r*h + W_w*(h^2 - z_j^2)/(2*h))/(W_r*h + W_w*h/2)",
            force.Value.Si * (weights.Roof * h + weights.Wall * (h * h - above * above) / (2 * h)) / (weights.Roof * h + weights.Wall * h / 2), Dimension.Force, Sources.Get("asce7-16-memory"), force, roof, tall, wall, below);
    }

    /// <summary>Legs of tees through a joint, as steel dowels no thicker and no deeper than they go on below it; none where a bar lies above it or the table does not reach.</summary>
    private EarthDowel? Legs(double height) => geometry.House.Tees is { Timber: { } timber } && geometry.Tees.Count > 0 && geometry.Tees.Max(t => t.BarHeight) is var bar && bar < height
        ? EarthDowel.Within(timber.Metres, height - bar)
        : null;

    private Known<MemberCheck> Over(WallState state, double lever)
    {
        var turning = sideways.Turning(state.Combination, state.Sense);
        if (turning.Value is not { } turns)
        {
            return turning.NotChecked!;
        }

        var sheet = new Worksheet("house-overturning");
        var last = turns.How.Steps[^1];
        var moment = sheet.Step(last.Key, last.Result.Name, last.Equation, turns.Value, Dimension.Moment, last.Source, [.. last.Symbols]);
        var (cob, roof) = (dryCob * stretches.Sum(s => s.CobAbove(geometry.Wall.Base.Metres)), state.Reactions.Sum());
        var holds = Math.Max(1e-3, (state.Dead * cob + roof) * lever);
        var held = sheet.Step(
            "house-holds", "M_R", "max(0.001*Nm, (k_D*G + N_r)*a)", holds, Dimension.Moment, Mechanics, Worksheet.Code("Nm", "newton-metre", 1, Dimension.Moment, Sources.Get("mechanics")),
            Worksheet.Computed("k_D", "dead-factor", state.Dead, Dimension.Number), Worksheet.Computed("G", "wall-weight-dry", cob, Dimension.Force), Worksheet.Computed("N_r", "roof-presses", roof, Dimension.Force),
            Worksheet.Computed("a", "house-lever", lever, Dimension.Length));
        return new MemberCheck(state.Combination.Key, state.Sense, moment.Value, held.Value, sheet.Done);
    }

    /// <summary>From the middle of the plan to the line that the house would turn over, the nearest of every direction, m.</summary>
    private double Lever()
    {
        var middle = PlanMiddle.Of(geometry).Middle;
        var outside = PlanMiddle.Outside(geometry);
        return Enumerable.Range(0, 72).Select(k => Math.SinCos(Math.PI * k / 36)).Min(d => outside.Max(p => (p - middle).Dot(new PlanPoint(d.Sin, d.Cos))));
    }

    private static Symbol Newton => Worksheet.Code("Nw", "newton", 1, Dimension.Force, Sources.Get("mechanics"));
}
