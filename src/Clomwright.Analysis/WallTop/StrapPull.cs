using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.WallTop;

/// <summary>The pull in a strap that holds down, against its steel where its section is described and against what its maker allows for it with its fixings where that is given.</summary>
internal static class StrapPull
{
    public const string Key = "strap-pull";

    /// <summary>Allowed tension over yield: 1/1.67.</summary>
    private const double SteelShare = 0.6;

    /// <summary>Holes for nails leave this much of a strap.</summary>
    private const double NailHoles = 0.75;

    /// <summary>One strap.</summary>
    /// <param name="strap">As it is described.</param>
    /// <param name="subject">Its address.</param>
    /// <param name="pull">Everyday pull that comes to it, N.</param>
    /// <param name="state">The combination that lifts it most.</param>
    public static CheckedMember Of(Embed strap, string subject, double pull, CombinedState state)
    {
        var anchor = strap.Anchor!;
        var steel = Steel(strap, anchor);
        if (steel is null && anchor.Pull is null)
        {
            return new(Key, subject, new Message("analysis.walltop.strap-section"));
        }

        var sheet = new Worksheet(Key);
        List<double> there = [];
        if (steel is { } metal)
        {
            var memory = Sources.Get("steel-memory");
            Symbol fy = Worksheet.Cited("F_y", "metal-yield", metal.Yield, Dimension.Stress), share = Worksheet.Code("k_s", "steel-share", SteelShare, Dimension.Number, memory);
            Symbol holes = Worksheet.Assumed("k_n", "nail-holes", NailHoles, Dimension.Number, Sources.Get("common-practice"));
            Symbol w = Worksheet.Given("w", "strap-width", strap.Width!.Value.Metres, Dimension.Length), t = Worksheet.Given("t", "strap-thickness", anchor.Thickness!.Value.Metres, Dimension.Length);
            var capacity = SteelShare * metal.Yield.Value * NailHoles * w.Value.Si * t.Value.Si;
            sheet.Step("strap-capacity", "T_c", "k_s*F_y*k_n*w*t", capacity, Dimension.Force, memory, share, fy, holes, w, t);
            there.Add(capacity);
        }

        if (anchor.Pull is { } allowed)
        {
            sheet.Step("strap-held", "T_m", "1*T_g", allowed.Newtons, Dimension.Force, Sources.Get("house-file"), Worksheet.Given("T_g", "strap-maker", allowed.Newtons, Dimension.Force));
            there.Add(allowed.Newtons);
        }

        return new(Key, subject, new MemberCheck(state.Combination.Key, state.Sense, new Amount(pull, Dimension.Force), new Amount(there.Min(), Dimension.Force), sheet.Done));
    }

    private static Metal? Steel(Embed strap, StrapAnchor anchor) => strap.Width is null || anchor.Thickness is null ? null : Metal.Find("steel-strap");
}
