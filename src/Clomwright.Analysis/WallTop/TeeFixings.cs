using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.WallTop;

/// <summary>A tee as timber: its leg goes up through the bond beam and a bolt crosses both; at its foot a bolt crosses leg and bar, side by side.</summary>
/// <remarks>The bar presses up evenly against the cob on both sides of the leg. Leg and bar lose the width of the bolt hole. A bolt closer than four diameters to the edge that it pulls toward is not checked.</remarks>
internal static class TeeFixings
{
    private static readonly string[] Keys = ["tee-leg", "tee-bar", "tee-bolt"];

    /// <summary>Pull in the leg, bending of the bar and the weaker of both bolts, for one uplift.</summary>
    /// <param name="house">The house, for its bond beam.</param>
    /// <param name="made">How tees are made.</param>
    /// <param name="subject">Which one.</param>
    /// <param name="uplift">T in the combination, N.</param>
    /// <param name="state">The combination that lifts it most.</param>
    public static IEnumerable<CheckedMember> Of(House house, Tees made, string subject, double uplift, CombinedState state)
    {
        if (Why(house, made, state) is { } why)
        {
            return Keys.Select(key => new CheckedMember(key, subject, why));
        }

        var (side, bolt) = (made.Timber!.Value.Metres, made.Bolt!.Value.Metres);
        var timber = Timber.Piece(made.Material, side, side)!;
        return Checks(house.BondBeam!, made, timber, side, bolt, subject, uplift, state);
    }

    private static IEnumerable<CheckedMember> Checks(BondBeam beam, Tees made, Timber timber, double side, double bolt, string subject, double uplift, CombinedState state)
    {
        var mechanics = Sources.Get("mechanics");
        Symbol pull = Worksheet.Computed("T", "tee-pull", uplift, Dimension.Force), a = Worksheet.Given("a", "tee-timber", side, Dimension.Length), d = Worksheet.Given("D", "bolt-diameter", bolt, Dimension.Length);

        var sheet = new Worksheet("tee-leg");
        var ft = Strength.Adjusted(sheet, timber, state.Combination, timber.Tension!, "tension-strength", "F_t");
        var area = sheet.Step("tee-net-area", "A_n", "a*(a - D)", side * (side - bolt), Dimension.Area, mechanics, a, d);
        var stress = sheet.Step("tee-tension", "f_t", "T/A_n", uplift / area.Value.Si, Dimension.Stress, mechanics, pull, area);
        yield return Made("tee-leg", stress.Value, ft.Value, sheet);

        sheet = new Worksheet("tee-bar");
        var fb = Strength.Adjusted(sheet, timber, state.Combination, timber.Bending, "bending-strength", timber.System == TimberSystem.Nds ? "F_b" : "f_m");
        var moment = sheet.Step("tee-bar-moment", "M", "T*B/8", uplift * made.Bar.Metres / 8, Dimension.Moment, mechanics, pull, Worksheet.Given("B", "tee-bar", made.Bar.Metres, Dimension.Length));
        var modulus = sheet.Step("tee-bar-modulus", "S", "(a - D)*a^2/6", (side - bolt) * side * side / 6, Dimension.Volume, mechanics, a, d);
        var bending = sheet.Step("bending-stress", "f_b", "M/S", moment.Value.Si / modulus.Value.Si, Dimension.Stress, mechanics, moment, modulus);
        yield return Made("tee-bar", bending.Value, fb.Value, sheet);

        if (timber.System == TimberSystem.En)
        {
            sheet = new Worksheet("tee-bolt");
            yield return Made("tee-bolt", pull.Value, BoltEn(sheet, beam, timber, side, bolt, state).Value, sheet);
            yield break;
        }

        // Across the grain of beam and bar, along that of the leg.
        var g = timber.SpecificGravity!.Value;
        var along = Dowel.BearingAlong(g);
        var through = Dowel.Modes(bolt, new(side, along), new((beam.Width.Metres - side) / 2, BeamBearing(beam, bolt)), Dowel.Yield.Value, Math.PI / 2).DoubleShear;
        var foot = Dowel.Modes(bolt, new(side, along), new(side, Dowel.BearingAcross(g, bolt)), Dowel.Yield.Value, Math.PI / 2).SingleShear;
        sheet = new Worksheet("tee-bolt");
        var z = through <= foot
            ? Dowel.Steps(sheet, bolt, new(side, along), new((beam.Width.Metres - side) / 2, BeamBearing(beam, bolt)), Math.PI / 2, 2)
            : Dowel.Steps(sheet, bolt, new(side, along), new(side, Dowel.BearingAcross(g, bolt)), Math.PI / 2, 1);
        var cd = Worksheet.Code("C_D", "duration-factor", Nds.Duration(state.Combination), Dimension.Number, Sources.Get("nds-duration"));
        var held = sheet.Step("bolt-held", "Z_1", "Z*C_D", z.Value.Si * cd.Value.Si, Dimension.Force, Sources.Get("nds-memory"), z, cd);
        yield return Made("tee-bolt", pull.Value, held.Value, sheet);

        CheckedMember Made(string key, Amount demand, Amount capacity, Worksheet steps) => new(key, subject, new MemberCheck(state.Combination.Key, state.Sense, demand, capacity, steps.Done));
    }

    /// <summary>The weaker of both bolts by EN 1995: through beam and leg in two planes, through leg and bar in one.</summary>
    private static Symbol BoltEn(Worksheet sheet, BondBeam beam, Timber timber, double side, double bolt, CombinedState state)
    {
        var density = Math.Min(DowelEn.Density(timber), DowelEn.Density(Timber.Piece(beam.Material, beam.Width.Metres, beam.Depth.Metres)!));
        var bearing = DowelEn.Bearing(density, bolt);
        var outer = (beam.Width.Metres - side) / 2;
        var foot = DowelEn.SingleShear(bolt, side, bearing, DowelEn.Ultimate) <= 2 * DowelEn.DoubleShear(bolt, outer, side, bearing, DowelEn.Ultimate);
        var memory = Sources.Get("en-1995-memory");
        var f = DowelEn.Steps(sheet, bolt, foot ? side : outer, foot ? null : side, density);
        var mod = Worksheet.Code("k_mod", "duration-en", Ec5.Duration(state.Combination), Dimension.Number, memory);
        var gamma = Worksheet.Code("gamma_M", "partial-factor", Ec5.PartialFactor, Dimension.Number, Sources.Get("en-1995-examples"));
        return sheet.Step("bolt-held", "F_d", "k_mod*F_v/gamma_M", Ec5.Design(f.Value.Si, mod.Value.Si), Dimension.Force, memory, mod, f, gamma);
    }

    private static double BeamBearing(BondBeam beam, double bolt) =>
        Dowel.BearingAcross(Timber.Piece(beam.Material, beam.Width.Metres, beam.Depth.Metres)!.SpecificGravity!.Value, bolt);

    private static Message? Why(House house, Tees made, CombinedState state)
    {
        if (house.BondBeam is not { } beam)
        {
            return new Message("analysis.members.no-beam");
        }

        if (made.Timber is not { } size || made.Bolt is not { } bolt)
        {
            return new Message("analysis.walltop.tee-not-described");
        }

        if (Timber.Piece(made.Material, size.Metres, size.Metres) is not { } timber || timber.Tension is null)
        {
            return Message.Of("analysis.roof.species-unknown", ("species", new Argument.Material(made.Material)));
        }

        if (Timber.Piece(beam.Material, beam.Width.Metres, beam.Depth.Metres) is not { } under)
        {
            return Message.Of("analysis.roof.species-unknown", ("species", new Argument.Material(beam.Material)));
        }

        var european = state.Combination.Form == Loads.LoadForm.Strength;
        if ((timber.System == TimberSystem.En) != european || (under.System == TimberSystem.En) != european)
        {
            return new Message("analysis.members.systems");
        }

        return bolt.Metres < Dowel.DiameterMin ? new Message("analysis.walltop.bolt-thin")
            : beam.Width <= size ? Message.Of("analysis.walltop.leg-wide", ("leg", size), ("beam", beam.Width))
            : Math.Min(beam.Depth.Metres, size.Metres) / 2 < Dowel.LoadedEdgeAcross * bolt.Metres - 1e-9
                ? Message.Of("analysis.walltop.bolt-edge", ("bolt", bolt), ("least", Amount.Metres(2 * Dowel.LoadedEdgeAcross * bolt.Metres)))
            : null;
    }
}
