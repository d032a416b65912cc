using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>The ends of secondary poles: the flat seat on the bond beam across the grain, and the one bolt at each end: at the inner end it carries the pole in shear, at the outer it holds down what wind lifts.</summary>
internal static class SecondaryEnds
{
    private const string Key = "secondary-ends";

    /// <summary>The checks; none without secondaries.</summary>
    public static IEnumerable<CheckedMember> Of(DeckSpans spans, Known<DeckLoads> known, Building.Roof roof, Known<Timber> poles, BondBeam? beam)
    {
        if (roof.Secondaries is not { PerBay: > 0, Diameter.Metres: > 0 and var d } made)
        {
            return [];
        }

        if (known.Value is not { } loads || poles.Value is not { } timber)
        {
            return [new(Key, "secondaries", known.NotChecked ?? poles.NotChecked!)];
        }

        var (plate, inner) = spans.Reactions();
        var seat = Seat(plate, d, loads, timber, roof.Seat, beam);
        var pressed = loads.Combined.Max(s => s.Pressure) * inner;
        if (made.Bolt is not { } bolt)
        {
            return [seat, new(Key, "secondaries, fastened", Message.Of("analysis.secondary.no-bolt", ("inner", new Amount(pressed, Dimension.Force)), ("lift", new Amount((loads.Uplift ?? 0) * plate, Dimension.Force))))];
        }

        return bolt.Metres < Dowel.DiameterMin
            ? [seat, new(Key, "secondaries, fastened", new Message("analysis.walltop.bolt-thin"))]
            : [seat, Inner(inner, d, bolt.Metres, loads, timber), Outer(plate, bolt.Metres, loads, timber)];
    }

    private static CheckedMember Seat(double plate, double d, DeckLoads loads, Timber timber, SeatMade? made, BondBeam? beam)
    {
        const string Subject = "secondaries, on their seats";
        if (beam is null)
        {
            return new(Key, Subject, new Message("analysis.members.no-beam"));
        }

        if (Timber.Piece(beam.Material, beam.Width.Metres, beam.Depth.Metres) is not { } under || under.System != timber.System)
        {
            return new(Key, Subject, Message.Of("analysis.roof.species-unknown", ("species", new Argument.Material(beam.Material))));
        }

        var weaker = under.AcrossGrain.Value < timber.AcrossGrain.Value ? under : timber;
        var hardest = loads.Combined.MaxBy(s => s.Pressure / (timber.System == TimberSystem.Nds ? 1 : Strength.Factor(timber, s.Combination)))!;
        var (sheet, mechanics) = (new Worksheet("secondary-seat"), Sources.Get("mechanics"));
        var force = Reaction(sheet, hardest, plate);
        var c = SeatCheck.Depth(made);
        var area = sheet.Step("seat-area", "A", "2*sqrt(d*c - c^2)*w", SeatCheck.Flat(d, LevelSeat.DepthOf(made)) * beam.Width.Metres, Dimension.Area, mechanics, Worksheet.Given("d", "secondary-diameter", d, Dimension.Length), c,
            Worksheet.Given("w", "beam-width", beam.Width.Metres, Dimension.Length));
        var across = Strength.Across(sheet, weaker, hardest.Combination);
        var held = sheet.Step("seat-capacity", "R_s", $"A*{across.Name}", area.Value.Si * across.Value.Si, Dimension.Force, mechanics, area, across);
        return new(Key, Subject, new MemberCheck(hardest.Combination.Key, hardest.Sense, force.Value, held.Value, sheet.Done));
    }

    private static CheckedMember Inner(double inner, double d, double bolt, DeckLoads loads, Timber timber)
    {
        var hardest = loads.Combined.MaxBy(s => s.Pressure / Strength.Factor(timber, s.Combination))!;
        var sheet = new Worksheet("secondary-bolt");
        var force = Reaction(sheet, hardest, inner);
        Symbol held;
        if (timber.System == TimberSystem.En)
        {
            var memory = Sources.Get("en-1995-memory");
            var f = NailEn.Steps(sheet, "bolt-diameter", bolt, d, d, DowelEn.Bearing(DowelEn.Density(timber), bolt), DowelEn.YieldMoment(bolt, DowelEn.Ultimate));
            var mod = Worksheet.Code("k_mod", "duration-en", Ec5.Duration(hardest.Combination), Dimension.Number, memory);
            var gamma = Worksheet.Code("gamma_M", "partial-factor", Ec5.PartialFactor, Dimension.Number, Sources.Get("en-1995-examples"));
            held = sheet.Step("bolt-held", "F_d", "k_mod*F_v/gamma_M", Ec5.Design(f.Value.Si, mod.Value.Si), Dimension.Force, memory, mod, f, gamma);
        }
        else
        {
            var member = new DowelMember(d, Dowel.BearingAcross(timber.SpecificGravity!.Value, bolt));
            var z = Dowel.Steps(sheet, bolt, member, member, Math.PI / 2, 1);
            var cd = Worksheet.Code("C_D", "duration-factor", Nds.Duration(hardest.Combination), Dimension.Number, Sources.Get("nds-duration"));
            held = sheet.Step("bolt-held", "Z_1", "Z*C_D", z.Value.Si * cd.Value.Si, Dimension.Force, Sources.Get("nds-memory"), z, cd);
        }

        return new(Key, "secondaries, inner bolt", new MemberCheck(hardest.Combination.Key, hardest.Sense, force.Value, held.Value, sheet.Done, Amount.Metres(bolt * Math.Sqrt(force.Value.Si / held.Value.Si))));
    }

    private static CheckedMember Outer(double plate, double bolt, DeckLoads loads, Timber timber)
    {
        const string Subject = "secondaries, outer bolt";
        if (loads.Uplift is not { } up)
        {
            return new(Key, Subject, new Message("analysis.loads.no-wind"));
        }

        var (sheet, steel) = (new Worksheet("secondary-lift"), Sources.Get("steel-memory"));
        var pull = sheet.Step("secondary-lifts", "T", "u*r", up * plate, Dimension.Force, Sources.Get("mechanics"), Worksheet.Computed("u", "deck-lifts", up, Dimension.AreaLoad), Worksheet.Computed("r", "secondary-share", plate, Dimension.Area));
        var european = timber.System == TimberSystem.En;
        var metal = Metal.Find("steel-bolt")!;
        double share = european ? PinChecks.BoltShareEn : PinChecks.BoltShare, wide = SeatFixing.WasherWidth * bolt;
        var d = Worksheet.Given("D", "bolt-diameter", bolt, Dimension.Length);
        var ts = sheet.Step("pin-steel", "T_s", "k_b*k_n*F_u*pi*D^2/4", share * PinChecks.Threads * metal.Breaks(timber.System).Value * Math.PI / 4 * bolt * bolt, Dimension.Force, steel,
            Worksheet.Code("k_b", "bolt-share", share, Dimension.Number, steel), Worksheet.Code("k_n", "bolt-threads", PinChecks.Threads, Dimension.Number, steel), Worksheet.Cited("F_u", "metal-ultimate", metal.Breaks(timber.System), Dimension.Stress), d);
        var across = Strength.Across(sheet, timber, loads.Lifting);
        var tw = sheet.Step("washer-capacity", "T_w", $"{across.Name}*pi*(d_w^2 - D^2)/4", across.Value.Si * Math.PI / 4 * (wide * wide - bolt * bolt), Dimension.Force, Sources.Get("mechanics"), across,
            Worksheet.Assumed("d_w", "washer-diameter", wide, Dimension.Length, Sources.Get("common-practice")), d);
        var held = sheet.Step("bolt-pulled", "R", "min(T_s, T_w)", Math.Min(ts.Value.Si, tw.Value.Si), Dimension.Force, steel, ts, tw);
        return new(Key, Subject, new MemberCheck(loads.Lifting.Key, "up", pull.Value, held.Value, sheet.Done));
    }

    private static Symbol Reaction(Worksheet sheet, DeckState state, double share) => sheet.Step(
        "secondary-force", "F", "p*r", state.Pressure * share, Dimension.Force, Sources.Get("mechanics"), Worksheet.Computed("p", "deck-pressure", state.Pressure, Dimension.AreaLoad),
        Worksheet.Computed("r", "secondary-share", share, Dimension.Area));
}
