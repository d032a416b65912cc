using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>Headers under the cob above them, their share of the bond beam and the poles that land over them.</summary>
/// <remarks>
/// All of the cob above the header is counted over the whole thickness: no arching while the wall is green. With arching only a triangle as high as half
/// the span would be left; it is stated beside. A pole's force spreads at 45 degrees from the bond beam down to the header.
/// </remarks>
internal sealed partial class HeaderChecks(HouseGeometry geometry, CombinedStates combined, double cobWeight, Cited<double> cobBearing)
{
    /// <summary>A pole's seat along the wall, m.</summary>
    private const double Seat = 0.2;

    public IEnumerable<CheckedMember> Of(OpeningPlace opening)
    {
        var header = opening.Header!;
        var subject = $"{opening.Opening.Name}/header";
        var made = opening.Opening.Header!;
        string[] keys = ["header-bending", "header-shear", "header-bearing", "header-sag"];
        if (Timber.Piece(made.Material, made.Width.Metres, made.Depth.Metres) is not { } timber)
        {
            return keys.Select(k => new CheckedMember(k, subject, Message.Of("analysis.roof.species-unknown", ("species", new Argument.Material(made.Material)))));
        }

        if (combined.States.Count == 0)
        {
            return keys.Select(k => new CheckedMember(k, subject, combined.Missing.Count > 0 ? combined.Missing[0] : new Message("analysis.roof.none")));
        }

        if ((timber.System == TimberSystem.En) != (combined.States[0].Combination.Form == LoadForm.Strength))
        {
            return keys.Select(k => new CheckedMember(k, subject, new Message("analysis.members.systems")));
        }

        return Checks(opening, header, made, timber, subject);
    }

    private IEnumerable<CheckedMember> Checks(OpeningPlace opening, HeaderPlace header, Building.Header made, Timber timber, string subject)
    {
        var beam = new RectangularBeam(header.TotalWidth, made.Depth.Metres);
        var span = opening.Opening.Width.Metres + made.Bearing.Metres;
        var solved = combined.States.Where(s => !s.Combination.DeadIsLeast).Select(s => (State: s, Forces: Load(opening, header, span, s).Solve())).ToArray();

        var (state, forces) = solved.MaxBy(x => x.Forces.Moment / BendingFactor(x.State));
        var sheet = new Worksheet("header-bending");
        Symbol cob = Cob(sheet, header), l = Worksheet.Computed("L", "header-span", span, Dimension.Length);
        var cf = Nds.Size(timber.Form, made.Depth.Metres);
        var allowed = timber.System == TimberSystem.En
            ? Strength.Adjusted(sheet, timber, state.Combination, timber.Bending, "bending-strength", "f_m")
            : sheet.Step(
                "bending-allowed", "F_b1", "F_b*C_D*C_F", BendingFactor(state), Dimension.Stress, Sources.Get("nds-memory"), Worksheet.Cited("F_b", "bending-strength", timber.Bending, Dimension.Stress),
                Worksheet.Code("C_D", "duration-factor", Nds.Duration(state.Combination), Dimension.Number, Sources.Get("nds-duration")),
                Worksheet.Code("C_F", "size-factor", cf, Dimension.Number, Sources.Get("nds-memory")));
        var mechanics = Sources.Get("mechanics");
        var dead = state.Combination.Factor(LoadKind.Dead);
        var gamma = Worksheet.Code("k_D", "dead-factor", dead, Dimension.Number, state.Combination.Source);
        var ofCob = sheet.Step("header-moment-cob", "M_c", "k_D*w_c*L^2/8", dead * cob.Value.Si * span * span / 8, Dimension.Moment, mechanics, gamma, cob, l);
        var rest = Worksheet.Computed("M_r", "header-moment-roof", forces.Moment - ofCob.Value.Si, Dimension.Moment);
        var s = sheet.Step("header-modulus", "S", "b*d^2/6", beam.SectionModulus, Dimension.Volume, mechanics, Worksheet.Given("b", "header-width", header.TotalWidth, Dimension.Length), Worksheet.Given("d", "header-depth", made.Depth.Metres, Dimension.Length));
        var stress = forces.Moment / beam.SectionModulus;
        sheet.Step("bending-stress", "f_b", "(M_c + M_r)/S", stress, Dimension.Stress, mechanics, ofCob, rest, s);
        Arched(sheet, header, span, dead, rest, s);
        yield return Made("header-bending", subject, state, new Amount(stress, Dimension.Stress), allowed.Value, sheet, Amount.Metres(made.Depth.Metres * Math.Sqrt(stress / allowed.Value.Si)));

        (state, forces) = solved.MaxBy(x => Math.Max(x.Forces.First, x.Forces.Second) / Strength.Factor(timber, x.State.Combination));
        sheet = new Worksheet("header-shear");
        var fv = Strength.Adjusted(sheet, timber, state.Combination, timber.Shear, "shear-strength", "F_v");
        var v = Worksheet.Computed("V", "header-reaction", Math.Max(forces.First, forces.Second), Dimension.Force);
        var area = Worksheet.Computed("A", "header-area", beam.Area, Dimension.Area);
        var cracked = timber.System == TimberSystem.En;
        var shear = v.Value.Si * 1.5 / (beam.Area * (cracked ? Ec5.ShearCracks : 1));
        _ = cracked
            ? sheet.Step("shear-stress", "f_v", "3*V/(2*A*k_cr)", shear, Dimension.Stress, mechanics, v, area, Worksheet.Code("k_cr", "shear-cracks", Ec5.ShearCracks, Dimension.Number, Sources.Get("en-1995-memory")))
            : sheet.Step("shear-stress", "f_v", "3*V/(2*A)", shear, Dimension.Stress, mechanics, v, area);
        yield return Made("header-shear", subject, state, new Amount(shear, Dimension.Stress), fv.Value, sheet, Amount.Metres(made.Depth.Metres * shear / fv.Value.Si));

        yield return Bearing(subject, header, made, Ends(opening));

        yield return Sag(subject, header, made, timber, beam, span, solved);

        double BendingFactor(CombinedState x) => timber.Bending.Value * Strength.Factor(timber, x.Combination) * (timber.System == TimberSystem.Nds ? Nds.Size(timber.Form, made.Depth.Metres) : 1);
    }

    /// <summary>Sag in time under everyday loads: all of it as if it stayed, against a 240th of the span (common for what stands under glass or plaster).</summary>
    private static CheckedMember Sag(
        string subject, HeaderPlace header, Building.Header made, Timber timber, RectangularBeam beam, double span, (CombinedState State, (double First, double Second, double Moment) Forces)[] solved)
    {
        // Strength combinations are factored: brought back by the factor on weight, which leaves snow a little too high.
        var (state, forces) = solved.MaxBy(x => x.Forces.Moment / Math.Max(1, x.State.Combination.Factor(LoadKind.Dead)));
        var moment = forces.Moment / Math.Max(1, state.Combination.Factor(LoadKind.Dead));
        var sheet = new Worksheet("header-sag");
        Symbol m = Worksheet.Computed("M", "header-moment", moment, Dimension.Moment), l = Worksheet.Computed("L", "header-span", span, Dimension.Length);
        Symbol b = Worksheet.Given("b", "header-width", header.TotalWidth, Dimension.Length), d = Worksheet.Given("d", "header-depth", made.Depth.Metres, Dimension.Length);
        var creep = timber.System == TimberSystem.Nds ? Nds.Creep(green: false) : 1 + Ec5.Creep(2, green: false);
        var k = Worksheet.Code("K_cr", "creep-factor", creep, Dimension.Number, Sources.Get(timber.System == TimberSystem.Nds ? "nds-memory" : "en-1995-memory"));
        var e = Worksheet.Cited("E", "timber-modulus", timber.Modulus, Dimension.Stress);
        var sag = creep * 5 * moment * span * span / (48 * timber.Modulus.Value * beam.SecondMoment);
        sheet.Step("header-sag", "y", "K_cr*5*M*L^2*12/(48*E*b*d^3)", sag, Dimension.Length, Sources.Get("mechanics"), k, m, l, e, b, d);
        var limit = sheet.Step("header-sag-limit", "y_a", "L/240", span / 240, Dimension.Length, Sources.Get("common-practice"), l);
        return Made("header-sag", subject, state, Amount.Metres(sag), limit.Value, sheet, Amount.Metres(made.Depth.Metres * Math.Cbrt(sag / limit.Value.Si)));
    }

    /// <summary>What would be left if the cob above arched: a triangle half as high as the span. Stated beside; nothing relies on it while the wall is green.</summary>
    private void Arched(Worksheet sheet, HeaderPlace header, double span, double dead, Symbol rest, Symbol modulus)
    {
        if (Height(header) < span / 2)
        {
            return;
        }

        var thickness = ThicknessOver(header);
        var mechanics = Sources.Get("mechanics");
        var moment = dead * cobWeight * thickness * span / 2 * span * span / 12;
        var arched = sheet.Step(
            "header-moment-arched", "M_a", "k_D*rho*g*t*L^3/24", moment, Dimension.Moment, mechanics, Worksheet.Computed("k_D", "dead-factor", dead, Dimension.Number),
            Worksheet.Assumed("rho", "cob-density-wet", cobWeight / UsUnits.Gravity, Dimension.Density, Sources.Get("cob-density-memory")), UsUnits.GravitySymbol,
            Worksheet.Computed("t", "wall-thickness-above", thickness, Dimension.Length), Worksheet.Computed("L", "header-span", span, Dimension.Length));
        sheet.Step("bending-stress-arched", "f_a", "(M_a + M_r)/S", (moment + rest.Value.Si) / modulus.Value.Si, Dimension.Stress, mechanics, arched, rest, modulus);
    }

    private SpanLoad Load(OpeningPlace opening, HeaderPlace header, double span, CombinedState state)
    {
        var load = new SpanLoad(span).Even(state.Combination.Factor(LoadKind.Dead) * CobPerMetre(header));
        foreach (var (force, middle, width) in Patches(opening, header, span, state))
        {
            load.Patch(force, middle, width);
        }

        return load;
    }

    /// <summary>What each pole presses at the height of the header: its force, the middle of its spread from the span's first end, and how wide that is, N and m.</summary>
    private IEnumerable<(double Force, double Middle, double Width)> Patches(OpeningPlace opening, HeaderPlace header, double span, CombinedState state) =>
        geometry.Landings.Where(l => !l.Secondary).Select((landing, number) =>
        {
            var away = landing.Station - opening.Station;
            away -= geometry.Curve.Length * Math.Round(away / geometry.Curve.Length);
            return (Math.Max(0, state.Forces.PlateReaction[number]), span / 2 + away, Seat + 2 * Height(header));
        });

    private double Height(HeaderPlace header) => Math.Max(0, geometry.Wall.Top.Metres - header.Top);

    private double ThicknessOver(HeaderPlace header) => geometry.Wall.ThicknessAt(header.Top + Height(header) / 2);

    private double CobPerMetre(HeaderPlace header) => cobWeight * Height(header) * ThicknessOver(header) + BeamPerMetre;

    private double BeamPerMetre => geometry.House.BondBeam is { } beam ? beam.Width.Metres * beam.Depth.Metres * 5500 : 0;

    private Symbol Cob(Worksheet sheet, HeaderPlace header) =>
        sheet.Step(
            "header-cob", "w_c", "rho*g*t*h + w_b", CobPerMetre(header), Dimension.LineLoad, Sources.Get("mechanics"),
            Worksheet.Assumed("rho", "cob-density-wet", cobWeight / UsUnits.Gravity, Dimension.Density, Sources.Get("cob-density-memory")), UsUnits.GravitySymbol,
            Worksheet.Computed("t", "wall-thickness-above", ThicknessOver(header), Dimension.Length),
            Worksheet.Computed("h", "cob-height-above", Height(header), Dimension.Length), Worksheet.Computed("w_b", "beam-weight", BeamPerMetre, Dimension.LineLoad));

    private static CheckedMember Made(string key, string subject, CombinedState state, Amount demand, Amount capacity, Worksheet sheet, Amount needed) =>
        new(key, subject, new MemberCheck(state.Combination.Key, state.Sense, demand, capacity, sheet.Done, needed));
}
