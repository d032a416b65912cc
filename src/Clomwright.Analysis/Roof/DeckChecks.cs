using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>Secondary poles and deck boards under wet soil and snow in every combination, and the bare deck under one person.</summary>
/// <remarks>
/// Boards run across the poles and are counted as simple spans between the middles of what they lie on, which is longest at the eave. A secondary is a simple span from the bond beam to where it meets the poles it lies between, with
/// the eave beyond; what it carries narrows with the bay. A person of 300 lb stands on 2.5 ft square (ASCE 7), at mid-span, on the deck alone.
/// </remarks>
internal sealed class DeckChecks
{
    private const double PersonSide = 0.762;
    private const double SagLimit = 180;
    private const double BoardWidth = 0.14;

    private readonly DeckSpans spans;
    private readonly DeckLoads loads;
    private readonly Building.Roof roof;

    private DeckChecks(DeckSpans spans, DeckLoads loads, Building.Roof roof)
    {
        this.spans = spans;
        this.loads = loads;
        this.roof = roof;
    }

    /// <summary>Checks of the deck, and of the secondaries where there are any.</summary>
    public static Sequence<CheckedMember> Of(DeckSpans spans, Known<DeckLoads> loads, Building.Roof roof, Known<Timber> poles)
    {
        if (loads.Value is not { } known || poles.Value is not { } wood)
        {
            return Unknown(roof, loads.NotChecked ?? poles.NotChecked!);
        }

        var checks = new DeckChecks(spans, known, roof);
        return [.. checks.Deck(), .. checks.Secondaries(wood)];
    }

    private static Sequence<CheckedMember> Unknown(Building.Roof roof, Message because) => roof.Secondaries is null
        ? [new("deck", "deck", because)]
        : [new("deck", "deck", because), new("secondary", "secondaries", because)];

    private IEnumerable<CheckedMember> Deck()
    {
        if (roof.Deck is not { Metres: > 0 } thick)
        {
            return [new("deck", "deck", new Message("analysis.deck.none"))];
        }

        if (Timber.Piece(roof.DeckMaterial, thick.Metres, BoardWidth) is not { } boards)
        {
            return [new("deck", "deck", Message.Of("analysis.roof.species-unknown", ("species", new Argument.Material(roof.DeckMaterial))))];
        }

        if (boards.System != loads.System)
        {
            return [new("deck", "deck", new Message("analysis.members.systems"))];
        }

        return [DeckBending(boards, thick.Metres), DeckShear(boards, thick.Metres), DeckUnderPerson(boards, thick.Metres), DeckSag(boards, thick.Metres)];
    }

    private CheckedMember DeckBending(Timber boards, double t)
    {
        var hardest = loads.Combined.MaxBy(c => c.Pressure / Strength.Factor(boards, c.Combination))!;
        var (sheet, mechanics) = (new Worksheet("deck-bending"), Sources.Get("mechanics"));
        var p = Pressure(sheet, hardest);
        var span = Span();
        var thick = Worksheet.Given("t", "deck-thickness", t, Dimension.Length);
        var stress = hardest.Pressure * spans.Deck * spans.Deck / 8 / (t * t / 6);
        var f = sheet.Step("bending-stress", "f_b", "p*L^2/8/(t^2/6)", stress, Dimension.Stress, mechanics, p, span, thick);
        var allowed = Strength.Adjusted(sheet, boards, hardest.Combination, boards.Bending, "bending-strength", "F_b");
        return Checked("deck", "deck, bending", hardest, f.Value, allowed.Value, sheet, t * Math.Sqrt(stress / allowed.Value.Si));
    }

    private CheckedMember DeckShear(Timber boards, double t)
    {
        var hardest = loads.Combined.MaxBy(c => c.Pressure / Strength.Factor(boards, c.Combination))!;
        var (sheet, mechanics) = (new Worksheet("deck-shear"), Sources.Get("mechanics"));
        var p = Pressure(sheet, hardest);
        var thick = Worksheet.Given("t", "deck-thickness", t, Dimension.Length);
        var stress = 1.5 * hardest.Pressure * spans.Deck / 2 / t;
        var f = sheet.Step("shear-stress", "f_v", "1.5*p*L/2/t", stress, Dimension.Stress, mechanics, p, Span(), thick);
        var allowed = Strength.Shear(sheet, boards, hardest.Combination);
        return Checked("deck", "deck, shear", hardest, f.Value, allowed.Value, sheet, t * stress / allowed.Value.Si);
    }

    private CheckedMember DeckUnderPerson(Timber boards, double t)
    {
        var person = loads.Person;
        var factor = loads.System == TimberSystem.En ? 1.5 : 1;
        var (sheet, mechanics) = (new Worksheet("deck-person"), Sources.Get("mechanics"));
        var force = Worksheet.Assumed("F", "one-person", factor * RoofStages.Worker, Dimension.Force, Sources.Get("asce7-16-memory"));
        var side = Worksheet.Code("c", "person-side", PersonSide, Dimension.Length, Sources.Get("asce7-16-memory"));
        var under = Worksheet.Computed("p", "deck-pressure-bare", factor * loads.Bare, Dimension.AreaLoad);
        var span = Span();
        var thick = Worksheet.Given("t", "deck-thickness", t, Dimension.Length);
        var reach = Math.Min(spans.Deck, PersonSide);
        var moment = factor * (loads.Bare * spans.Deck * spans.Deck / 8 + RoofStages.Worker / PersonSide * (spans.Deck / 4 - reach / 8));
        var stress = moment / (t * t / 6);
        var f = sheet.Step("bending-stress", "f_b", "(p*L^2/8 + F/c*(L/4 - min(L, c)/8))/(t^2/6)", stress, Dimension.Stress, mechanics, under, span, force, side, thick);
        var allowed = Strength.Adjusted(sheet, boards, person, boards.Bending, "bending-strength", "F_b");
        return new("deck", "deck, one person", new MemberCheck(person.Key, StageStates.Prefix + "decked", f.Value, allowed.Value, sheet.Done, Amount.Metres(t * Math.Sqrt(stress / allowed.Value.Si))));
    }

    private CheckedMember DeckSag(Timber boards, double t)
    {
        if (loads.Snow is not { } snow)
        {
            return new("deck", "deck, sag", new Message("analysis.loads.no-snow"));
        }

        var creep = boards.System == TimberSystem.Nds ? Nds.Creep(green: false) : 1 + Ec5.Creep(2, green: false);
        var (sheet, source) = (new Worksheet("deck-sag"), Sources.Get(boards.System == TimberSystem.Nds ? "nds-memory" : "en-1995-memory"));
        var k = Worksheet.Code("K", "creep-dry", creep, Dimension.Number, source);
        var wet = Worksheet.Computed("p_w", "pressure-wet", loads.Wet, Dimension.AreaLoad);
        var s = Worksheet.Computed("p_s", "pressure-snow", snow, Dimension.AreaLoad);
        var span = Span();
        var e = Worksheet.Cited("E", "modulus", boards.Modulus, Dimension.Stress);
        var thick = Worksheet.Given("t", "deck-thickness", t, Dimension.Length);
        var sag = 5 * (creep * loads.Wet + snow) * Math.Pow(spans.Deck, 4) / (384 * boards.Modulus.Value * Math.Pow(t, 3) / 12);
        var v = sheet.Step("deck-sag", "v", "5*(K*p_w + p_s)*L^4/(384*E*t^3/12)", sag, Dimension.Length, Sources.Get("mechanics"), k, wet, s, span, e, thick);
        return new("deck", "deck, sag", new MemberCheck("D + S", "even", v.Value, Amount.Metres(spans.Deck / SagLimit), sheet.Done, Amount.Metres(t * Math.Cbrt(sag / (spans.Deck / SagLimit)))));
    }

    private IEnumerable<CheckedMember> Secondaries(Timber wood)
    {
        if (roof.Secondaries is not { PerBay: > 0, Diameter.Metres: > 0 and var d })
        {
            return [];
        }

        var unit = spans.Diagram(d, 1);
        var stress = PoleStress.Of(unit);
        var bending = Stressed("bending", stress.Bending, c => wood.Bending.Value * Strength.Factor(wood, c), (sheet, c) => Strength.RoundBending(sheet, wood, c, d), Math.Cbrt, "secondary-bending-unit");
        var shear = Stressed("shear", stress.Shear, c => wood.Shear.Value * Strength.Factor(wood, c), (sheet, c) => Strength.Shear(sheet, wood, c), Math.Sqrt, "secondary-shear-unit");
        return [bending, shear, SecondarySag(wood, unit, d)];

        CheckedMember Stressed(string what, double perPascal, Func<Combination, double> strength, Func<Worksheet, Combination, Symbol> allowed, Func<double, double> grow, string word)
        {
            var hardest = loads.Combined.MaxBy(c => c.Pressure / strength(c.Combination))!;
            var sheet = new Worksheet($"secondary-{what}");
            var p = Pressure(sheet, hardest);
            var u = Worksheet.Computed("u", word, perPascal, Dimension.Number);
            var f = sheet.Step(what == "bending" ? "bending-stress" : "shear-stress", what == "bending" ? "f_b" : "f_v", "p*u", hardest.Pressure * perPascal, Dimension.Stress, Sources.Get("mechanics"), p, u);
            var limit = allowed(sheet, hardest.Combination);
            return Checked("secondary", $"secondaries, {what}", hardest, f.Value, limit.Value, sheet, d * grow(f.Value.Si / limit.Value.Si));
        }
    }

    private CheckedMember SecondarySag(Timber wood, PoleDiagram unit, double d)
    {
        if (loads.Snow is not { } snow)
        {
            return new("secondary", "secondaries, sag", new Message("analysis.loads.no-snow"));
        }

        var creep = wood.System == TimberSystem.Nds ? Nds.Creep(green: true) : 1 + Ec5.Creep(2, green: true);
        var perPascal = unit.SinkAtNear(_ => wood.Modulus.Value * Math.PI / 64 * Math.Pow(d, 4));
        var sheet = new Worksheet("secondary-sag");
        var k = Worksheet.Code("K", "creep-factor", creep, Dimension.Number, Sources.Get("nds-memory"));
        var wet = Worksheet.Computed("p_w", "pressure-wet", loads.Wet, Dimension.AreaLoad);
        var s = Worksheet.Computed("p_s", "pressure-snow", snow, Dimension.AreaLoad);
        var mm = Worksheet.Computed("u", "secondary-sag-unit", perPascal, Dimension.Number);
        var sag = (creep * loads.Wet + snow) * perPascal;
        var v = sheet.Step("secondary-sag", "v", "(K*p_w + p_s)*u", sag, Dimension.Length, Sources.Get("mechanics"), k, wet, s, mm);
        var limit = spans.SecondarySpan / SagLimit;
        return new("secondary", "secondaries, sag", new MemberCheck("D + S", "even", v.Value, Amount.Metres(limit), sheet.Done, Amount.Metres(d * Math.Pow(sag / limit, 0.25))));
    }

    private Symbol Span() => Worksheet.Computed("L", "deck-span", spans.Deck, Dimension.Length);

    private static Symbol Pressure(Worksheet sheet, DeckState state)
    {
        _ = sheet;
        return Worksheet.Computed("p", "deck-pressure", state.Pressure, Dimension.AreaLoad);
    }

    private static CheckedMember Checked(string key, string subject, DeckState state, Amount demand, Amount capacity, Worksheet sheet, double needed) =>
        new(key, subject, new MemberCheck(state.Combination.Key, state.Sense, demand, capacity, sheet.Done, Amount.Metres(needed)));
}
