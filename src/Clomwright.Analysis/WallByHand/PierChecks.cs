using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>Each pier as a column: mean pressure in level cuts against what the cob is allowed less bending and slenderness, and pressure at the edge against what it is allowed.</summary>
/// <remarks>At the edge pressure grows evenly across the thickness; along the wall it is even over the length centred under the load.</remarks>
internal sealed class PierChecks(HouseGeometry geometry, PierLoads loads, IReadOnlyList<WallState> states, WallNumbers numbers, Cited<double> allowed)
{
    private static readonly string[] Places = ["head", "middle", "sill", "foot"];

    private static readonly Source Mechanics = Sources.Get("mechanics"), Annex = Sources.Get("en-1996-annex-g");

    private bool Held => geometry.House.BondBeam is not null;

    private string HeightKey => Held ? "wall-held-height" : "wall-free-height";

    private double Effective => numbers[HeightKey] * (geometry.Wall.Top - geometry.Wall.Base).Metres;

    /// <summary>A pier in every state: its cuts at their hardest, its sill in every stage, and both checks.</summary>
    public PierByHand Of(Stretch stretch)
    {
        var all = states.Select(s => (State: s, Cuts: Cuts(stretch, s).ToArray())).ToArray();
        var cuts = all.SelectMany(x => x.Cuts.Select(c => (x.State, Cut: c))).ToArray();
        var mean = cuts.MaxBy(c => c.Cut.Told.Use);
        var edge = cuts.MaxBy(c => c.Cut.Told.Edge);
        return new PierByHand
        {
            Address = stretch.Address,
            Cuts = cuts.GroupBy(c => c.Cut.Told.Where, StringComparer.Ordinal).Select(g => g.MaxBy(c => c.Cut.Told.Use).Cut.Told).ToSequence(),
            States = all.Select(x => new PierState(x.State.Combination.Key, x.State.Sense, x.Cuts.First(c => c.Told.Where == "sill").Told.Load, x.Cuts.First(c => c.Told.Where == "sill").Told.Mean, x.Cuts.Max(c => c.Told.Use))).ToSequence(),
            Mean = new CheckedMember("pier-load", stretch.Address, MeanCheck(mean.Cut, mean.State)),
            Edge = new CheckedMember("pier-edge", stretch.Address, EdgeCheck(edge.Cut, edge.State)),
        };
    }

    /// <summary>A level cut with what comes down on it, for others that hold it against something else.</summary>
    public LoadedCut At(Stretch stretch, string where, WallState state) => Loaded(stretch.Cut(where), loads.On(stretch, stretch.Cut(where), state), state);

    private IEnumerable<LoadedCut> Cuts(Stretch stretch, WallState state)
    {
        foreach (var where in Places)
        {
            yield return At(stretch, where, state);
        }

        for (var pole = 0; pole < loads.Poles; pole++)
        {
            if (loads.Under(pole, stretch, state) is { } under)
            {
                yield return Loaded(under.Cut, under.Load, state);
            }
        }
    }

    private LoadedCut Loaded(LevelCut cut, PierLoad load, WallState state)
    {
        var pressed = Math.Max(0, load.Total);
        var (across, along) = (load.Line - cut.Centre, load.Along);
        var share = Across(across, cut.Thickness);
        var reduction = (cut.Where == "middle" ? Buckling.Middle(Effective / cut.Thickness, share, numbers["wall-stiffness"]) : Buckling.End(share)) * Buckling.End(Math.Abs(along) / cut.Width);
        var mean = pressed / cut.Area;
        var strength = Math.Max(1e-3, reduction * allowed.Value);
        var edge = mean * Buckling.Edge(Math.Abs(across) / cut.Thickness) / Centred(along, cut.Width);
        return new(cut, load, new CutStress(
            cut.Where, cut.Height, cut.Width, cut.Thickness, cut.Area, state.Combination.Key, state.Sense, pressed, mean, edge, across, along, reduction, strength));
    }

    /// <summary>Share of the width that is centred under the load.</summary>
    private static double Centred(double along, double width) => 1 - 2 * Math.Min(Math.Abs(along) / width, Buckling.Farthest);

    private double Across(double across, double thickness) => Math.Max(Math.Abs(across) + Effective / Buckling.Initial, Buckling.Least * thickness) / thickness;

    private MemberCheck MeanCheck(LoadedCut loaded, WallState state)
    {
        var (cut, told) = (loaded.Cut, loaded.Told);
        var sheet = new Worksheet("pier-load");
        var (n, area, mean) = Down(sheet, loaded, state);
        var (t, e) = OffCentre(sheet, loaded);
        var b = Worksheet.Computed("b", "pier-width", cut.Width, Dimension.Length);
        var a = Worksheet.Computed("e_b", "pier-along", Math.Abs(told.Along), Dimension.Length);
        var height = sheet.Step("effective-height", "h_ef", "rho_n*H", Effective, Dimension.Length, Sources.Get("en-1996-memory"), numbers.Symbol("rho_n", HeightKey), Worksheet.Computed("H", "wall-height", (geometry.Wall.Top - geometry.Wall.Base).Metres, Dimension.Length));
        var share = sheet.Step("pier-share", "k_e", "max(abs(e) + h_ef/450, 0.05*t)/t", Across(told.Across, cut.Thickness), Dimension.Number, Annex, e, height, t);
        Symbol across;
        if (cut.Where == "middle")
        {
            var ke = numbers.Symbol("K_E", "wall-stiffness");
            var bend = Buckling.Bend(Effective / cut.Thickness, share.Value.Si, numbers["wall-stiffness"]);
            var u = sheet.Step("pier-bend", "u", "max(0, (h_ef/t*sqrt(1/K_E) - 0.063)/(0.73 - 1.17*k_e))", bend, Dimension.Number, Annex, height, t, ke, share);
            across = sheet.Step("pier-reduction-middle", "Phi_m", "max(0, 1 - 2*k_e)*exp(-u^2/2)", Buckling.End(share.Value.Si) * Math.Exp(-bend * bend / 2), Dimension.Number, Annex, share, u);
        }
        else
        {
            across = sheet.Step("pier-reduction", "Phi_i", "max(0, 1 - 2*k_e)", Buckling.End(share.Value.Si), Dimension.Number, Annex, share);
        }

        var along = sheet.Step("pier-reduction-along", "Phi_b", "max(0, 1 - 2*e_b/b)", Buckling.End(Math.Abs(told.Along) / cut.Width), Dimension.Number, Mechanics, a, b);
        var strength = sheet.Step("pier-allowed", "f_p", $"max(0.001*Pa, {across.Name}*Phi_b*f_a)", told.Allowed, Dimension.Stress, Mechanics, across, along, Allowed, Pascal);
        _ = (n, area);
        return new MemberCheck(state.Combination.Key, state.Sense, mean.Value, strength.Value, sheet.Done, Amount.Metres(Math.Min(99, cut.Width * told.Use)));
    }

    private MemberCheck EdgeCheck(LoadedCut loaded, WallState state)
    {
        var (cut, told) = (loaded.Cut, loaded.Told);
        var sheet = new Worksheet("pier-edge");
        var (_, _, mean) = Down(sheet, loaded, state);
        var (t, e) = OffCentre(sheet, loaded);
        var share = Math.Abs(told.Across) / cut.Thickness;
        var across = share <= 1.0 / 6
            ? sheet.Step("edge-across", "k_t", "1 + 6*abs(e)/t", Buckling.Edge(share), Dimension.Number, Mechanics, e, t)
            : sheet.Step("edge-across", "k_t", "2/(3*(0.5 - min(abs(e)/t, 0.49)))", Buckling.Edge(share), Dimension.Number, Mechanics, e, t);
        var along = sheet.Step(
            "edge-along", "k_b", "1 - 2*min(e_b/b, 0.49)", Centred(told.Along, cut.Width), Dimension.Number, Mechanics, Worksheet.Computed("e_b", "pier-along", Math.Abs(told.Along), Dimension.Length),
            Worksheet.Computed("b", "pier-width", cut.Width, Dimension.Length));
        var edge = sheet.Step("pier-edge", "s_e", "s*k_t/k_b", told.Edge, Dimension.Stress, Mechanics, mean, across, along);
        return new MemberCheck(state.Combination.Key, state.Sense, edge.Value, Allowed.Value, sheet.Done);
    }

    private static (Symbol N, Symbol Area, Symbol Mean) Down(Worksheet sheet, LoadedCut loaded, WallState state)
    {
        var load = loaded.Load;
        var n = sheet.Step(
            "pier-down", "N", "max(0, k_D*(G_c + G_p + G_b) + R)", Math.Max(0, load.Total), Dimension.Force, Mechanics, Worksheet.Computed("k_D", "dead-factor", state.Dead, Dimension.Number),
            Worksheet.Computed("G_c", "pier-cob", load.Cob, Dimension.Force), Worksheet.Computed("G_p", "pier-plaster", load.Plaster, Dimension.Force),
            Worksheet.Computed("G_b", "pier-beam", load.Beam, Dimension.Force), Worksheet.Computed("R", "pier-roof", load.Roof, Dimension.Force));
        var area = Worksheet.Computed("A", "pier-area", loaded.Cut.Area, Dimension.Area);
        return (n, area, sheet.Step("pier-mean", "s", "N/A", loaded.Told.Mean, Dimension.Stress, Mechanics, n, area));
    }

    private static (Symbol Thickness, Symbol Off) OffCentre(Worksheet sheet, LoadedCut loaded)
    {
        var t = Worksheet.Computed("t", "pier-thickness", loaded.Cut.Thickness, Dimension.Length);
        var e = sheet.Step(
            "pier-across", "e", "x_N - x_c", loaded.Told.Across, Dimension.Length, Mechanics, Worksheet.Computed("x_N", "pier-line", loaded.Load.Line, Dimension.Length),
            Worksheet.Computed("x_c", "pier-centre", loaded.Cut.Centre, Dimension.Length));
        return (t, e);
    }

    private Symbol Allowed => Worksheet.Cited("f_a", "cob-allowed", allowed, Dimension.Stress);

    private static Symbol Pascal => Worksheet.Code("Pa", "pascal", 1, Dimension.Stress, Sources.Get("mechanics"));
}

/// <summary>A level cut with its load.</summary>
internal readonly record struct LoadedCut(LevelCut Cut, PierLoad Load, CutStress Told);
