using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Roof;

/// <summary>Whether wet soil slides on the sheet under it, and how far apart battens across the slope may lie.</summary>
/// <remarks>
/// Soil on a slope beta stays by friction alone while tan(beta) is at most tan(delta)/F. Steeper, each metre of batten holds what slides between it and the next, s w (sin(beta) - cos(beta) tan(delta)/F), by the soil that it
/// stands in: Rankine's passive pressure over its height at the bottom of the layers, K_p (w/D) (D^2 - (D - h)^2)/2 over F. What battens hold pulls on their hangers: they hang over the ring or ridge and never on nails through the membrane.
/// </remarks>
internal static class SoilSlip
{
    /// <summary>F: factor of safety.</summary>
    public const double Safety = 1.5;

    /// <summary>delta: soil on a rubber sheet, radians.</summary>
    public static Cited<double> Interface { get; } = new(20 * Math.PI / 180, Sources.Get("koerner-interface-memory"), Tag.Code);

    /// <summary>phi of loose wet soil, radians.</summary>
    private const double Friction = Math.PI / 6;

    /// <summary>The check; nothing where no soil lies on the roof.</summary>
    /// <param name="roof">As described.</param>
    /// <param name="slope">Mean slope, radians.</param>
    /// <param name="layers">All layers wet, Pa.</param>
    public static CheckedMember? Of(Building.Roof roof, double slope, Known<Calculated<double>> layers)
    {
        const string Key = "soil-slip";
        var depth = roof.Layers.Sum(l => (RoofMaterial.Find(l.Material) ?? (l.Material is null ? RoofMaterial.Named(l.Name) : null)) is { IsSheet: true } ? 0 : l.Depth.Metres);
        if (!(depth > 0))
        {
            return null;
        }

        if (layers.Value is not { } wet)
        {
            return new(Key, "soil", layers.NotChecked!);
        }

        var (sheet, mechanics, practice) = (new Worksheet(Key), Sources.Get("mechanics"), Sources.Get("common-practice"));
        var beta = Worksheet.Computed("beta", "roof-slope", slope, Dimension.Angle);
        var delta = Worksheet.Cited("delta", "soil-on-sheet", Interface, Dimension.Angle);
        var safe = Worksheet.Assumed("F", "slip-safety", Safety, Dimension.Number, practice);
        var tan = Math.Tan(Interface.Value) / Safety;
        if (roof.Battens is not { } battens || Math.Tan(slope) <= tan)
        {
            var runs = sheet.Step("slope-runs", "t", "tan(beta)", Math.Tan(slope), Dimension.Number, mechanics, beta);
            var held = sheet.Step("slope-held", "t_a", "tan(delta)/F", tan, Dimension.Number, mechanics, delta, safe);
            return new(Key, "soil", new MemberCheck("", "slope", runs.Value, held.Value, sheet.Done));
        }

        double s = battens.Spacing.Metres, h = Math.Min(battens.Height.Metres, depth), kp = (1 + Math.Sin(Friction)) / (1 - Math.Sin(Friction));
        var w = Worksheet.Computed("w", "pressure-layers-wet", wet.Value, Dimension.AreaLoad);
        var slides = sheet.Step("slip-force", "q", "s*w*(sin(beta) - cos(beta)*tan(delta)/F)", s * wet.Value * (Math.Sin(slope) - Math.Cos(slope) * tan), Dimension.LineLoad, mechanics,
            Worksheet.Given("s", "batten-spacing", s, Dimension.Length), w, beta, delta, safe);
        var depthSymbol = Worksheet.Given("D", "soil-depth", depth, Dimension.Length);
        var passive = sheet.Step("passive-factor", "K_p", "(1 + sin(phi))/(1 - sin(phi))", kp, Dimension.Number, Sources.Get("terzaghi-bearing"), Worksheet.Assumed("phi", "soil-friction-loose", Friction, Dimension.Angle, Sources.Get("soil-memory")));
        var high = Worksheet.Given("h", "batten-height", battens.Height.Metres, Dimension.Length);
        var stays = sheet.Step("batten-held", "q_a", "K_p*w/D*(D^2 - (D - min(h, D))^2)/2/F", kp * wet.Value / depth * (depth * depth - (depth - h) * (depth - h)) / 2 / Safety, Dimension.LineLoad, mechanics, passive, w, depthSymbol, high, safe);
        return new(Key, "battens", new MemberCheck("", "slope", slides.Value, stays.Value, sheet.Done, Amount.Metres(s * stays.Value.Si / slides.Value.Si)));
    }

    /// <summary>Values nobody gave.</summary>
    public static IEnumerable<Assumption> Assumed(Building.Roof roof) => roof.Layers.Count == 0 ? [] :
    [
        new Assumption("soil-on-sheet", new Message("analysis.assumed.soil-on-sheet"), new Amount(Interface.Value, Dimension.Angle), Interface.Source),
        new Assumption("slip-safety", new Message("analysis.assumed.slip-safety"), Amount.Number(Safety), Sources.Get("common-practice")),
    ];
}
