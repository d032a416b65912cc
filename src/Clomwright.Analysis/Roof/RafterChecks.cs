using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>The rafters of a plain roof held against their timber in every combination, or in every stage: each check at its hardest.</summary>
/// <remarks>
/// Bending is the largest anywhere along a rafter, sagging between its supports or hogging over the bond beam, and shear likewise. Along its length a rafter carries A sin(beta) + H cos(beta) at its foot,
/// taken over its whole span: NDS 3.9.2, or EN 1995 6.3.2 with the column at its thinner end. Reactions at a landing are those of all that stands there.
/// </remarks>
internal sealed class RafterChecks
{
    private readonly PlainLayout layout;
    private readonly Timber timber;
    private readonly Sequence<CombinedState> states;
    private readonly bool inStages;

    private RafterChecks(PlainLayout layout, Timber timber, Sequence<CombinedState> states)
    {
        this.layout = layout;
        this.timber = timber;
        this.states = states;
        inStages = states.All(s => StageStates.Is(s.Sense));
    }

    /// <summary>All checks of the rafters and their seats.</summary>
    public static Sequence<CheckedMember> Of(PlainLayout layout, Known<Timber> known, CombinedStates combined, Sequence<RoofStage> stages, Building.BondBeam? beam, Building.SeatMade? seat)
    {
        string[] keys = ["rafter-bending", "rafter-shear", "rafter-combined", "pole-seat", "rafter-sag"];
        if (known.Value is not { } timber || combined.States.Count == 0)
        {
            var because = known.NotChecked ?? combined.Missing[0];
            return keys.Select(k => new CheckedMember(k, "rafters", because)).ToSequence();
        }

        var checks = new RafterChecks(layout, timber, combined.States);
        var thickest = layout.Poles.Max(p => p.Butt);
        return
        [
            checks.Stressed("rafter-bending", f => f.BendingStress, "bending-stress", "f_b", (sheet, c) => Strength.RoundBending(sheet, timber, c, thickest), Math.Cbrt),
            checks.Stressed("rafter-shear", f => f.ShearStress, "shear-stress", "f_v", (sheet, c) => Strength.Shear(sheet, timber, c), Math.Sqrt),
            checks.Combined(),
            SeatCheck.Of([.. Seats(layout)], timber, combined.States, beam, seat),
            checks.inStages ? checks.SagInStages(stages) : checks.Sag(stages),
        ];
    }

    private CheckedMember Stressed(string key, Func<RoofForces, Sequence<double>> stresses, string word, string symbol, Func<Worksheet, Combination, Symbol> allowed, Func<double, double> grow)
    {
        var state = states.MaxBy(s => stresses(s.Forces).Max() / Strength.Factor(timber, s.Combination))!;
        var sheet = new Worksheet(key);
        var limit = allowed(sheet, state.Combination);
        var stress = Worksheet.Computed(symbol, word, stresses(state.Forces).Max(), Dimension.Stress);
        sheet.Step("rafter-use", "use", $"{symbol}/{limit.Name}", stress.Value.Si / limit.Value.Si, Dimension.Number, Sources.Get("mechanics"), stress, limit);
        var needed = layout.Poles.Max(p => p.Butt) * grow(stress.Value.Si / limit.Value.Si);
        return new CheckedMember(key, "rafters", new MemberCheck(state.Combination.Key, state.Sense, stress.Value, limit.Value, sheet.Done, Amount.Metres(needed)));
    }

    /// <summary>Bent and pressed along its length at once.</summary>
    private CheckedMember Combined()
    {
        if (layout.Poles.FirstOrDefault(p => Column.Slenderness(p.LengthToFar, Thin(p)) > Column.MostSlender) is { } slender)
        {
            return new("rafter-combined", $"rafter {slender.Number}", Message.Of(
                "analysis.loss.slender", ("length", Amount.Metres(slender.LengthToFar)), ("least", Amount.Metres(slender.LengthToFar / Column.MostSlender / Column.SquareShare))));
        }

        var (state, index) = Hardest.Of(states, [.. Enumerable.Range(0, layout.Poles.Count)], Use);
        var (pole, at) = (layout.Poles[index], layout.Feet[index]);
        var (sheet, mechanics) = (new Worksheet("rafter-combined"), Sources.Get("mechanics"));
        var bending = Strength.RoundBending(sheet, timber, state.Combination, pole.DiameterAt(0));
        var column = Column.Capacity(sheet, timber, state.Combination, Thin(pole), pole.LengthToFar);
        var fb = Worksheet.Computed("f_b", "bending-stress", state.Forces.BendingStress[at], Dimension.Stress);
        var a = Worksheet.Computed("A_p", "plate-reaction", Math.Abs(state.Forces.PlateReaction[at]), Dimension.Force);
        var h = Worksheet.Computed("H", "rafter-thrust", Math.Abs(state.Forces.PlateSidewaysInSpace[at]), Dimension.Force);
        var beta = Worksheet.Computed("beta", "pole-pitch", pole.Pitch, Dimension.Angle);
        var along = Along(state, index);
        var n = sheet.Step("rafter-axial", "N", "A_p*sin(beta) + H*cos(beta)", along, Dimension.Force, mechanics, a, h, beta);
        var use = Use(state, index);
        if (timber.System == TimberSystem.En || along >= Buckles(pole))
        {
            sheet.Step("rafter-combined-use", "use", $"N/N_c + f_b/{bending.Name}", use, Dimension.Number, Sources.Get(timber.System == TimberSystem.En ? "en-1995-memory" : "nds-memory"), n, column, fb, bending);
        }
        else
        {
            var euler = Worksheet.Computed("N_E", "column-buckles", Buckles(pole), Dimension.Force);
            sheet.Step("rafter-combined-use", "use", $"(N/N_c)^2 + f_b/({bending.Name}*(1 - N/N_E))", use, Dimension.Number, Sources.Get("nds-memory"), n, column, fb, bending, euler);
        }

        return new("rafter-combined", $"rafter {pole.Number}", new MemberCheck(state.Combination.Key, state.Sense, Amount.Number(use), Amount.Number(1), sheet.Done, Amount.Metres(pole.DiameterAt(0) * Math.Cbrt(use))));
    }

    private double Use(CombinedState state, int index)
    {
        var pole = layout.Poles[index];
        var bent = state.Forces.BendingStress[layout.Feet[index]] / (timber.Bending.Value * Strength.Factor(timber, state.Combination) * (timber.System == TimberSystem.Nds ? Nds.RoundSize(pole.DiameterAt(0)) : 1));
        var along = Along(state, index);
        var pressed = along / Column.Force(timber, state.Combination, Thin(pole), pole.LengthToFar);
        return timber.System == TimberSystem.En || along >= Buckles(pole) ? pressed + bent : pressed * pressed + bent / (1 - along / Buckles(pole));
    }

    private double Along(CombinedState state, int index)
    {
        var (sin, cos) = Math.SinCos(layout.Poles[index].Pitch);
        var at = layout.Feet[index];
        return Math.Abs(state.Forces.PlateReaction[at]) * sin + Math.Abs(state.Forces.PlateSidewaysInSpace[at]) * cos;
    }

    private double Buckles(PoleGeometry pole) => Column.Euler(timber, Thin(pole), pole.LengthToFar) * Math.PI / 4 * Thin(pole) * Thin(pole);

    private static double Thin(PoleGeometry pole) => Math.Min(pole.DiameterAt(0), pole.DiameterAt(pole.Far));

    /// <summary>Every end of a rafter that sits on the bond beam.</summary>
    public static IEnumerable<SeatCheck.Place> Seats(PlainLayout layout)
    {
        for (var i = 0; i < layout.Poles.Count; i++)
        {
            var pole = layout.Poles[i];
            yield return new($"rafter {pole.Number}", layout.Feet[i], pole.DiameterAt(0), pole.Seat);
            if (layout.Ends[i] >= 0)
            {
                yield return new($"rafter {pole.Number}, upper end", layout.Ends[i], pole.DiameterAt(pole.Far), pole.UpperSeat);
            }
        }
    }

    private CheckedMember SagInStages(Sequence<RoofStage> stages) => RingSag.InStages(
        "rafter-sag", stages.First(s => s.Key == "soilWet").Forces, StageStates.Of(stages, TimberSystem.Nds),
        [.. layout.Poles.Select((p, i) => new RingSag.Span($"rafter {p.Number}", layout.Feet[i], p.LengthToFar))], timber);

    private CheckedMember Sag(Sequence<RoofStage> stages)
    {
        Known<RoofForces> wet = stages.First(s => s.Key == "soilWet").Forces, snow = stages.First(s => s.Key == "soilWetSnow").Forces;
        if (wet.Value is not { } still || snow.Value is not { } more)
        {
            return new CheckedMember("rafter-sag", "rafters", wet.NotChecked ?? snow.NotChecked!);
        }

        var creep = timber.System == TimberSystem.Nds ? Nds.Creep(green: true) : 1 + Ec5.Creep(2, green: true);
        var source = Sources.Get(timber.System == TimberSystem.Nds ? "nds-memory" : "en-1995-memory");
        var length = layout.Poles.Max(p => p.LengthToFar);
        var sheet = new Worksheet("rafter-sag");
        var k = Worksheet.Code("K", "creep-factor", creep, Dimension.Number, source);
        var d = Worksheet.Computed("v_d", "drop-wet", still.Drop.Max(), Dimension.Length);
        var s = Worksheet.Computed("v_s", "drop-snow", more.Drop.Max() - still.Drop.Max(), Dimension.Length);
        var sag = creep * d.Value.Si + s.Value.Si;
        sheet.Step("rafter-sag", "v", "K*v_d + v_s", sag, Dimension.Length, source, k, d, s);
        return new CheckedMember("rafter-sag", "rafters", new MemberCheck("D + S", "even", Amount.Metres(sag), Amount.Metres(length / PoleChecks.SagLimit), sheet.Done));
    }
}
