using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>What holds the deck down where wind lifts it bare, and what carries sideways forces through it to the wall: its nails, or crossed straps in every bay.</summary>
/// <remarks>
/// All that wind lifts between two supports comes to the nails of one board at one support. In its plane a deck of straight boards holds by couples: a board of width b between supports l apart carries v b l by the nails of one end,
/// which turn about their middle, so v = c Z a/(l b), with a the width of the row, whose outer nails stand an inch and at least five diameters from the edges, and c = n (n + 1)/(6 (n - 1)) for n nails in a row (1 for two or three). Friction of board on board and the boards' own bending are not counted. With two 8d nails in a 1x6 over
/// 16 in it gives the 70 lb/ft under wind that tables of straight sheathing print (recalled). A strap holds F = v d with d its length: the pull whose part along the wall is what flows into its bay. Boards and straps are not added.
/// </remarks>
internal sealed class DeckFixing
{
    /// <summary>Width of a board nobody gave: 5.5 in.</summary>
    public const double Board = 0.1397;

    /// <summary>Least from a nail to the edge of its board, m, and in diameters.</summary>
    private const double EdgeLeast = 0.0254, EdgeDiameters = 5;

    /// <summary>F_e of thin steel under a nail (NDS 12.3.3 with F_u 45 000 psi: 1.375 F_u), Pa.</summary>
    private const double SteelBearing = 61_850 * UsUnits.Psi;

    private readonly Building.Roof roof;
    private readonly DeckSpans spans;
    private readonly Timber poles;
    private readonly Timber boards;
    private readonly double thickness;

    private DeckFixing(Building.Roof roof, DeckSpans spans, Timber poles, Timber boards)
    {
        (this.roof, this.spans, this.poles, this.boards) = (roof, spans, poles, boards);
        thickness = roof.Deck!.Value.Metres;
    }

    private bool European => poles.System == TimberSystem.En;

    /// <summary><c>deck-uplift</c> and <c>roof-diaphragm</c>.</summary>
    public static Sequence<CheckedMember> Of(DeckSpans spans, Sequence<PoleGeometry> places, Known<DeckLoads> loads, Known<RoofPush> sideways, Building.Roof roof, Known<Timber> poles)
    {
        if (Why(roof, poles, out var boards) is { } why)
        {
            return [new("deck-uplift", "deck", why), new("roof-diaphragm", "deck", why)];
        }

        var fixing = new DeckFixing(roof, spans, poles.Value!, boards!);
        return [loads.Value is { } known ? fixing.Uplift(known) : new("deck-uplift", "deck", loads.NotChecked!), fixing.InPlane(sideways, places)];
    }

    /// <summary>Values nobody gave.</summary>
    public static IEnumerable<Assumption> Assumed(Building.Roof roof)
    {
        if (roof.DeckNails is null)
        {
            yield break;
        }

        if (roof.DeckNails.Board is null)
        {
            yield return new Assumption("deck-board", new Message("analysis.assumed.deck-board"), Amount.Metres(Board), Sources.Get("common-practice"));
        }

        yield return new Assumption("nail-edge", new Message("analysis.assumed.nail-edge"), Amount.Metres(EdgeLeast), Sources.Get("common-practice"));
        yield return new Assumption("nail-head", new Message("analysis.assumed.nail-head"), Amount.Number(Nail.Head), Sources.Get("nds-memory"));
        yield return new Assumption("nails-in-green", new Message("analysis.assumed.nails-in-green"), Amount.Number(Nail.GreenPull), Sources.Get("nds-memory"));
    }

    private static Message? Why(Building.Roof roof, Known<Timber> poles, out Timber? boards)
    {
        boards = null;
        if (poles.Value is not { } wood)
        {
            return poles.NotChecked;
        }

        if (roof.Deck is not { Metres: > 0 } thick)
        {
            return new Message("analysis.deck.none");
        }

        boards = Timber.Piece(roof.DeckMaterial, thick.Metres, roof.DeckNails?.Board?.Metres ?? Board);
        return boards is null ? Message.Of("analysis.roof.species-unknown", ("species", new Argument.Material(roof.DeckMaterial))) : boards.System != wood.System ? new Message("analysis.members.systems") : null;
    }

    private CheckedMember Uplift(DeckLoads loads)
    {
        const string Key = "deck-uplift";
        if (loads.Uplift is not { } up)
        {
            return new(Key, "deck", new Message("analysis.loads.no-wind"));
        }

        if (roof.DeckNails is not { } nails)
        {
            return new(Key, "deck", up > 0
                ? Message.Of("analysis.deck.uplift", ("pull", new Amount(up, Dimension.AreaLoad)), ("metre", new Amount(up * spans.Deck, Dimension.LineLoad)))
                : new Message("analysis.deck.nails-unknown"));
        }

        if (Reaches(nails) is { } why)
        {
            return new(Key, "deck", why);
        }

        var wind = loads.Lifting;
        var (sheet, mechanics) = (new Worksheet(Key), Sources.Get("mechanics"));
        var pull = up * spans.Deck * Wide(nails) / nails.Count;
        var t = sheet.Step("nail-pulled", "T", "u*L*b/n", pull, Dimension.Force, mechanics, Worksheet.Computed("u", "deck-lifts", up, Dimension.AreaLoad), Worksheet.Computed("L", "deck-span", spans.Deck, Dimension.Length),
            BoardSymbol(nails), Worksheet.Given("n", "nails-in-board", nails.Count, Dimension.Count));
        var held = European ? PullEn(sheet, nails, wind) : PullNds(sheet, nails, wind);
        return new(Key, "deck", new MemberCheck(wind.Key, "up", t.Value, held.Value, sheet.Done));
    }

    private Symbol PullNds(Worksheet sheet, DeckNails nails, Combination wind)
    {
        var memory = Sources.Get("nds-memory");
        double d = nails.Diameter.Metres, reach = Reach(nails), g = poles.SpecificGravity!.Value;
        var dia = Worksheet.Given("D", "nail-diameter", d, Dimension.Length);
        var gravity = Worksheet.Cited("G", "gravity-pole", poles.SpecificGravity!, Dimension.Number);
        var cd = Worksheet.Code("C_D", "duration-factor", Nds.Duration(wind), Dimension.Number, Sources.Get("nds-duration"));
        var p = Worksheet.Computed("p", "nail-reach", reach, Dimension.Length);
        Symbol point;
        if (nails.Kind == DeckFastener.Screw)
        {
            var thread = Math.Min(reach, Nail.Thread * nails.Length.Metres);
            var pt = sheet.Step("screw-thread", "p_t", "min(p, 2/3*l)", thread, Dimension.Length, memory, p, Worksheet.Given("l", "nail-length", nails.Length.Metres, Dimension.Length));
            point = sheet.Step("nail-point", "W_p", "2850*G^2*(D/inch)*(p_t/inch)*lb*C_D", Nail.PullOfScrew(d, thread, g) * cd.Value.Si, Dimension.Force, memory, gravity, dia, pt, Inch, UsUnits.PoundSymbol, cd);
        }
        else
        {
            var cm = Worksheet.Code("C_M", "nail-green", Nail.GreenPull, Dimension.Number, memory);
            point = sheet.Step("nail-point", "W_p", "1380*G^(5/2)*(D/inch)*(p/inch)*lb*C_D*C_M", Nail.Pull(d, reach, g) * cd.Value.Si * cm.Value.Si, Dimension.Force, memory, gravity, dia, p, Inch, UsUnits.PoundSymbol, cd, cm);
        }

        var head = Worksheet.Assumed("d_h", "nail-head", Nail.Head * d, Dimension.Length, memory);
        var through = sheet.Step(
            "nail-head-through", "W_h", "690*pi*(d_h/inch)*G_b^2*(min(t, 2.5*d_h)/inch)*lb*C_D", Nail.PullThrough(Nail.Head * d, thickness, boards.SpecificGravity!.Value) * cd.Value.Si, Dimension.Force, memory, head,
            Worksheet.Cited("G_b", "gravity-board", boards.SpecificGravity, Dimension.Number), Thick, Inch, UsUnits.PoundSymbol, cd);
        return sheet.Step("nail-held", "R", "min(W_p, W_h)", Math.Min(point.Value.Si, through.Value.Si), Dimension.Force, memory, point, through);
    }

    private Symbol PullEn(Worksheet sheet, DeckNails nails, Combination wind)
    {
        var memory = Sources.Get("en-1995-memory");
        double d = nails.Diameter.Metres, reach = Reach(nails), density = Density, head = Nail.Head * d;
        var dia = Worksheet.Given("D", "nail-diameter", d, Dimension.Length);
        var p = Worksheet.Computed("p", "nail-reach", reach, Dimension.Length);
        var f = Worksheet.Code("f_ax", "nail-point-strength", NailEn.PointPull(density), Dimension.Stress, memory);
        var fh = Worksheet.Code("f_hd", "nail-head-strength", NailEn.HeadPull(density), Dimension.Stress, memory);
        var held = sheet.Step(
            "nail-pull-en", "F_ax", "min(f_ax*D*p*min(1, p/(4*D) - 2), f_ax*D*t + f_hd*d_h^2)", NailEn.Pull(d, reach, thickness, head, density), Dimension.Force, memory, f, dia, p, Thick, fh,
            Worksheet.Assumed("d_h", "nail-head", head, Dimension.Length, memory));
        var mod = Worksheet.Code("k_mod", "duration-en", Ec5.Duration(wind), Dimension.Number, memory);
        var gamma = Worksheet.Code("gamma_M", "partial-factor", Ec5.PartialFactor, Dimension.Number, Sources.Get("en-1995-examples"));
        var green = Worksheet.Code("k_g", "nail-green", NailEn.GreenPull, Dimension.Number, memory);
        return sheet.Step("nail-held", "R", "k_g*k_mod*F_ax/gamma_M", NailEn.GreenPull * Ec5.Design(held.Value.Si, mod.Value.Si), Dimension.Force, memory, green, mod, held, gamma);
    }

    private CheckedMember InPlane(Known<RoofPush> sideways, Sequence<PoleGeometry> places)
    {
        const string Key = "roof-diaphragm";
        if (sideways.Value is not { } push)
        {
            return new(Key, "deck", sideways.NotChecked!);
        }

        var hardest = push.Hardest;
        var flow = new Amount(push.Flow(hardest), Dimension.LineLoad);
        var straps = roof.Braces is { } made ? Straps(made, push, hardest, places) : (CheckedMember?)null;
        if (straps is { Check.Is: true })
        {
            return straps;
        }

        if (roof.DeckNails is not { } nails)
        {
            return straps ?? new(Key, "deck", Message.Of("analysis.deck.plane-unknown", ("force", new Amount(push.Force(hardest), Dimension.Force)), ("flow", flow)));
        }

        return Reaches(nails) is { } why ? new(Key, "deck", why) : nails.Count < 2 ? new(Key, "deck", new Message("analysis.deck.one-nail")) : Couples(nails, push, hardest);
    }

    private CheckedMember Couples(DeckNails nails, RoofPush push, Combination hardest)
    {
        var (sheet, mechanics) = (new Worksheet("roof-diaphragm"), Sources.Get("mechanics"));
        var v = push.FlowSteps(sheet, hardest);
        var z = Across(sheet, nails.Diameter.Metres, nails.Kind == DeckFastener.Screw, Reach(nails), hardest);
        double b = Wide(nails), arm = Arm(nails);
        var board = BoardSymbol(nails);
        var a = ArmSymbol(sheet, nails);
        var n = Worksheet.Given("n", "nails-in-board", nails.Count, Dimension.Count);
        double row = nails.Count * (nails.Count + 1.0) / (6 * (nails.Count - 1.0)), held = row * z.Value.Si * arm / (spans.AtPlate * b);
        var r = sheet.Step("deck-couples", "v_a", "n*(n + 1)/(6*(n - 1))*Z_1*a/(l*b)", held, Dimension.LineLoad, mechanics, n, z, a, Worksheet.Computed("l", "deck-span-plate", spans.AtPlate, Dimension.Length), board);
        return new("roof-diaphragm", "deck", new MemberCheck(hardest.Key, "sideways", v.Value, r.Value, sheet.Done));
    }

    private CheckedMember Straps(RoofBraces made, RoofPush push, Combination hardest, Sequence<PoleGeometry> places)
    {
        const string Subject = "straps";
        var (sheet, mechanics) = (new Worksheet("roof-straps"), Sources.Get("mechanics"));
        if (Reaches(made) is { } why)
        {
            return new("roof-diaphragm", Subject, why);
        }

        var pole = places.MaxBy(p => p.LengthToFar)!;
        var (inner, bay) = (Inner(pole, roof), Bay(spans, roof));
        var v = push.FlowSteps(sheet, hardest);
        var reachSymbol = Worksheet.Computed("b_i", "strap-run", inner, Dimension.Length);
        var length = StrapLength(spans, places, roof);
        var l = sheet.Step("strap-length", "d", "sqrt(w^2 + b_i^2*(1 + s^2))", length, Dimension.Length, mechanics, Worksheet.Computed("w", "bay-at-plate", bay, Dimension.Length), reachSymbol,
            Worksheet.Computed("s", "pole-slope", pole.Slope, Dimension.Number));
        var f = sheet.Step("strap-pull", "F", "v*d", v.Value.Si * length, Dimension.Force, mechanics, v, l);
        var held = StrapHeld(sheet, made, hardest);
        return new("roof-diaphragm", Subject, new MemberCheck(hardest.Key, "sideways", f.Value, held.Value, sheet.Done));
    }

    /// <summary>The least of band and nails of one strap, N.</summary>
    private Symbol StrapHeld(Worksheet sheet, RoofBraces made, Combination combination)
    {
        var (mechanics, steel) = (Sources.Get("mechanics"), Sources.Get("steel-memory"));
        var metal = Metal.Find("steel-strap")!;
        double d = made.Diameter.Metres, reach = (made.Length - made.Thickness).Metres, w = made.Width.Metres, t = made.Thickness.Metres;
        var band = sheet.Step("strap-capacity", "T_c", "k_s*F_y*k_n*w_s*t", LossChecks.SteelShare * metal.Yield.Value * LossChecks.NailHoles * w * t, Dimension.Force, steel, Worksheet.Code("k_s", "steel-share", LossChecks.SteelShare, Dimension.Number, steel),
            Worksheet.Cited("F_y", "metal-yield", metal.Yield, Dimension.Stress), Worksheet.Assumed("k_n", "nail-holes", LossChecks.NailHoles, Dimension.Number, Sources.Get("common-practice")),
            Worksheet.Given("w_s", "strap-width", w, Dimension.Length), Worksheet.Given("t", "strap-thickness", t, Dimension.Length));
        var one = European ? ThinSteelEn(sheet, d, reach, combination) : SteelNds(sheet, d, reach, t, combination);
        return sheet.Step("straps-held", "R", "min(T_c, n*Z_1)", Math.Min(band.Value.Si, made.Nails * one.Value.Si), Dimension.Force, mechanics, band, Worksheet.Given("n", "nails-in-strap", made.Nails, Dimension.Count), one);
    }

    /// <summary>Why the nails of these straps hold nothing that can be reckoned; null where they do.</summary>
    private Message? Reaches(RoofBraces made)
    {
        var (reach, least) = ((made.Length - made.Thickness).Metres, (European ? NailEn.ReachLeast : Nail.ReachLeast) * made.Diameter.Metres);
        return reach < least ? Message.Of("analysis.deck.nail-short", ("reach", Amount.Metres(Math.Max(0, reach))), ("least", Amount.Metres(least))) : null;
    }

    /// <summary>What one bay holds along itself in shear, N: its crossed straps, of which one pulls, or else the couples of its boards, one row of them from support to support in every part of the bay.</summary>
    public static Known<Symbol> Bay(Worksheet sheet, DeckSpans spans, Sequence<PoleGeometry> places, Building.Roof roof, Known<Timber> poles, Combination combination)
    {
        if (Why(roof, poles, out var boards) is { } why)
        {
            return why;
        }

        var (fixing, mechanics) = (new DeckFixing(roof, spans, poles.Value!, boards!), Sources.Get("mechanics"));
        if (roof.Braces is { } made && fixing.Reaches(made) is null)
        {
            var held = fixing.StrapHeld(sheet, made, combination);
            double w = Bay(spans, roof), d = StrapLength(spans, places, roof);
            return sheet.Step("bay-held-straps", "C_h", "R*w/d", held.Value.Si * w / d, Dimension.Force, mechanics, held, Worksheet.Computed("w", "bay-at-plate", w, Dimension.Length), Worksheet.Computed("d", "strap-length", d, Dimension.Length));
        }

        if (roof.DeckNails is not { } nails)
        {
            return new Message("analysis.loss.nails-unknown");
        }

        if (fixing.Reaches(nails) is { } shortNails)
        {
            return shortNails;
        }

        if (nails.Count < 2)
        {
            return new Message("analysis.deck.one-nail");
        }

        var (z, arm, b) = (fixing.Across(sheet, nails.Diameter.Metres, nails.Kind == DeckFastener.Screw, fixing.Reach(nails), combination), Arm(nails), Wide(nails));
        double row = nails.Count * (nails.Count + 1.0) / (6 * (nails.Count - 1.0)), parts = 1 + (roof.Secondaries?.PerBay ?? 0);
        return sheet.Step("bay-held-deck", "C_h", "m*n*(n + 1)/(6*(n - 1))*Z_1*a/b", parts * row * z.Value.Si * arm / b, Dimension.Force, mechanics, Worksheet.Computed("m", "bay-parts", parts, Dimension.Count),
            Worksheet.Given("n", "nails-in-board", nails.Count, Dimension.Count), z, ArmSymbol(sheet, nails), BoardSymbol(nails));
    }

    private static double Arm(DeckNails nails) => Math.Max(0, Wide(nails) - 2 * Math.Max(EdgeLeast, EdgeDiameters * nails.Diameter.Metres));

    private static Symbol ArmSymbol(Worksheet sheet, DeckNails nails) => sheet.Step("nail-arm", "a", "max(0, b - 2*max(c_e, 5*D))", Arm(nails), Dimension.Length, Sources.Get("common-practice"), BoardSymbol(nails),
        Worksheet.Assumed("c_e", "nail-edge", EdgeLeast, Dimension.Length, Sources.Get("common-practice")), Worksheet.Given("D", "nail-diameter", nails.Diameter.Metres, Dimension.Length));

    /// <summary>How many nails or screws the boards take on supports of a length, m: boards end on every support, so each row of boards is nailed twice over on it.</summary>
    internal static double Nailed(double supports, DeckNails nails) => 2 * nails.Count * supports / Wide(nails);

    /// <summary>Width of the widest bay over the bond beam, m.</summary>
    private static double Bay(DeckSpans spans, Building.Roof roof) => spans.AtPlate * (1 + (roof.Secondaries?.PerBay ?? 0));

    /// <summary>The longest strap: from a pole's seat to the inner end of the next, on the slope, m.</summary>
    internal static double StrapLength(DeckSpans spans, Sequence<PoleGeometry> places, Building.Roof roof)
    {
        var pole = places.MaxBy(p => p.LengthToFar)!;
        return Math.Sqrt(Math.Pow(Bay(spans, roof), 2) + Math.Pow(Inner(pole, roof), 2) * (1 + pole.Slope * pole.Slope));
    }

    private static double Inner(PoleGeometry pole, Building.Roof roof) => roof is Building.Roof.Reciprocal ? pole.Near : pole.Far;

    /// <summary>One nail of the deck across itself, N.</summary>
    private Symbol Across(Worksheet sheet, double diameter, bool screw, double reach, Combination combination)
    {
        if (European)
        {
            var f = NailEn.Steps(sheet, "nail-diameter", diameter, thickness, reach, NailEn.Bearing(Density, diameter), NailEn.Moment(diameter));
            return DesignEn(sheet, f, combination);
        }

        var d = screw ? Nail.Root * diameter : diameter;
        var side = new DowelMember(thickness, Nail.InWood(boards.SpecificGravity!.Value, d));
        return Factored(sheet, Nail.Steps(sheet, d, reach, poles.SpecificGravity!.Value, side), combination);
    }

    private Symbol SteelNds(Worksheet sheet, double diameter, double reach, double thick, Combination combination) =>
        Factored(sheet, Nail.Steps(sheet, diameter, reach, poles.SpecificGravity!.Value, new(thick, SteelBearing)), combination);

    private Symbol ThinSteelEn(Worksheet sheet, double diameter, double reach, Combination combination)
    {
        var memory = Sources.Get("en-1995-memory");
        double bearing = NailEn.Bearing(DowelEn.Density(poles), diameter), moment = NailEn.Moment(diameter);
        Symbol d = Worksheet.Given("D", "nail-diameter", diameter, Dimension.Length), fh = Worksheet.Code("f_h", "dowel-en-bearing", bearing, Dimension.Stress, memory);
        var f = sheet.Step(
            "nail-thin-steel", "F_v", "min(0.4*f_h*p*D, 1.15*sqrt(2*M_y*f_h*D))", Math.Min(0.4 * bearing * reach * diameter, 1.15 * Math.Sqrt(2 * moment * bearing * diameter)), Dimension.Force, memory, fh,
            Worksheet.Computed("p", "nail-reach", reach, Dimension.Length), d, Worksheet.Code("M_y", "dowel-en-moment", moment, Dimension.Moment, memory));
        return DesignEn(sheet, f, combination);
    }

    private static Symbol DesignEn(Worksheet sheet, Symbol characteristic, Combination combination)
    {
        var memory = Sources.Get("en-1995-memory");
        var mod = Worksheet.Code("k_mod", "duration-en", Ec5.Duration(combination), Dimension.Number, memory);
        var gamma = Worksheet.Code("gamma_M", "partial-factor", Ec5.PartialFactor, Dimension.Number, Sources.Get("en-1995-examples"));
        return sheet.Step("nail-held-across", "Z_1", "k_mod*F_v/gamma_M", Ec5.Design(characteristic.Value.Si, mod.Value.Si), Dimension.Force, memory, mod, characteristic, gamma);
    }

    private static Symbol Factored(Worksheet sheet, Symbol z, Combination combination)
    {
        var memory = Sources.Get("nds-memory");
        var cd = Worksheet.Code("C_D", "duration-factor", Nds.Duration(combination), Dimension.Number, Sources.Get("nds-duration"));
        var cm = Worksheet.Code("C_M", "nail-green-across", Nail.GreenAcross, Dimension.Number, memory);
        return sheet.Step("nail-held-across", "Z_1", "Z_p*C_D*C_M", z.Value.Si * cd.Value.Si * cm.Value.Si, Dimension.Force, memory, z, cd, cm);
    }

    private static Symbol Inch => UsUnits.InchSymbol;

    private Symbol Thick => Worksheet.Given("t", "deck-thickness", thickness, Dimension.Length);

    private double Density => Math.Min(DowelEn.Density(poles), DowelEn.Density(boards));

    private double Reach(DeckNails nails) => nails.Length.Metres - thickness;

    private static double Wide(DeckNails nails) => nails.Board?.Metres ?? Board;

    private static Symbol BoardSymbol(DeckNails nails) => nails.Board is { } given
        ? Worksheet.Given("b", "deck-board", given.Metres, Dimension.Length)
        : Worksheet.Assumed("b", "deck-board", Board, Dimension.Length, Sources.Get("common-practice"));

    /// <summary>Why these fasteners hold nothing that can be reckoned; null where they do.</summary>
    private Message? Reaches(DeckNails nails)
    {
        if (European && nails.Kind == DeckFastener.Screw)
        {
            return new Message("analysis.deck.screw-en");
        }

        var least = (European ? NailEn.ReachLeast : Nail.ReachLeast) * nails.Diameter.Metres;
        return Reach(nails) < least - 1e-9 ? Message.Of("analysis.deck.nail-short", ("reach", Amount.Metres(Math.Max(0, Reach(nails)))), ("least", Amount.Metres(least))) : null;
    }
}
