using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.WallTop;

/// <summary>Pull of the bond beam, and the bolts of its laps, in timber of an EN 338 class (EN 1995-1-1).</summary>
/// <remarks>The pull is that of every stage as it stands, weight and snow together: all of it is raised by 1.5, the larger of both factors, and held against strengths for loads that stay (k_mod 0.6).</remarks>
internal static class LapsEn
{
    private const double LoadFactor = 1.5, Permanent = 0.6;

    private static readonly Source Mechanics = Sources.Get("mechanics"), Memory = Sources.Get("en-1995-memory");

    public static IEnumerable<CheckedMember> Of(BondBeam beam, double pull, string sense)
    {
        var timber = Timber.Piece(beam.Material, beam.Width.Metres, beam.Depth.Metres)!;
        var (width, half, bolt, n) = (beam.Width.Metres, beam.Depth.Metres / 2, beam.Bolt!.Value.Metres, beam.Bolts);
        Symbol b = Worksheet.Given("b", "beam-width", width, Dimension.Length), d = Worksheet.Given("d", "beam-depth", 2 * half, Dimension.Length);
        Symbol dia = Worksheet.Given("D", "bolt-diameter", bolt, Dimension.Length), count = Worksheet.Given("n", "bolts-in-lap", n, Dimension.Count);
        Symbol mod = Worksheet.Code("k_mod", "duration-en", Permanent, Dimension.Number, Memory), gamma = Worksheet.Code("gamma_M", "partial-factor", Ec5.PartialFactor, Dimension.Number, Sources.Get("en-1995-examples"));

        var sheet = new Worksheet("bond-beam-tension");
        var t = Raised(sheet);
        var area = sheet.Step("beam-net-area", "A_n", "(b - D)*d/2", (width - bolt) * half, Dimension.Area, Mechanics, b, dia, d);
        var stress = sheet.Step("beam-tension", "f_t", "T_d/A_n", t.Value.Si / area.Value.Si, Dimension.Stress, Mechanics, t, area);
        var allowed = sheet.Step(
            "tension-strength-allowed", "f_td", "k_mod*f_tk/gamma_M", Ec5.Design(timber.Tension!.Value, Permanent), Dimension.Stress, Memory, mod,
            Worksheet.Cited("f_tk", "tension-strength", timber.Tension, Dimension.Stress), gamma);
        yield return Made("bond-beam-tension", stress.Value, allowed.Value, sheet, Amount.Metres(width * stress.Value.Si / allowed.Value.Si));

        sheet = new Worksheet("bond-beam-bolts");
        t = Raised(sheet);
        var one = DowelEn.Steps(sheet, bolt, half, null, DowelEn.Density(timber));
        var spaced = Worksheet.Code("k_s", "bolt-spacing", DowelEn.Spacing, Dimension.Number, Memory);
        var counted = sheet.Step("bolts-effective", "n_ef", "min(n, n^0.9*(k_s/13)^0.25)", DowelEn.Effective(n, DowelEn.Spacing), Dimension.Number, Memory, count, spaced);
        var held = sheet.Step("bolts-held", "F_d", "k_mod*n_ef*F_v/gamma_M", Ec5.Design(counted.Value.Si * one.Value.Si, Permanent), Dimension.Force, Memory, mod, counted, one, gamma);
        yield return Made("bond-beam-bolts", t.Value, held.Value, sheet, Amount.Count(Enough(t.Value.Si, Ec5.Design(one.Value.Si, Permanent))));

        sheet = new Worksheet("bond-beam-lap");
        var least = 2 * Math.Max(DowelEn.EndInTension * bolt, DowelEn.EndLeast) + (n - 1) * DowelEn.Spacing * bolt;
        var needed = sheet.Step(
            "lap-needed", "l", "2*max(k_e*D, a_3) + (n - 1)*k_s*D", least, Dimension.Length, Memory, Worksheet.Code("k_e", "bolt-end", DowelEn.EndInTension, Dimension.Number, Memory), dia,
            Worksheet.Code("a_3", "bolt-end-least", DowelEn.EndLeast, Dimension.Length, Memory), count, spaced);
        yield return Made("bond-beam-lap", needed.Value, Amount.Metres(beam.Lap!.Value.Metres), sheet, needed.Value);

        Symbol Raised(Worksheet on) => on.Step(
            "beam-pull-raised", "T_d", "k_F*T", LoadFactor * pull, Dimension.Force, Sources.Get("en-1990-memory"), Worksheet.Code("k_F", "load-factor", LoadFactor, Dimension.Number, Sources.Get("en-1990-memory")),
            Worksheet.Computed("T", "beam-pull", pull, Dimension.Force));

        CheckedMember Made(string key, Amount demand, Amount capacity, Worksheet steps, Amount need) => new(key, BeamChecks.Subject, new MemberCheck("", sense, demand, capacity, steps.Done, need));
    }

    /// <summary>Bolts that would do, for one of them.</summary>
    private static long Enough(double pull, double one)
    {
        var n = 1;
        while (n < 1000 && DowelEn.Effective(n, DowelEn.Spacing) * one < pull)
        {
            n++;
        }

        return n;
    }
}
