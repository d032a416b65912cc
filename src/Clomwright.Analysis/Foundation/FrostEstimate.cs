using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Foundation;

/// <summary>Depth of frost as estimated.</summary>
/// <param name="Stefan">Without the heat of the soil itself: too deep, m.</param>
/// <param name="Berggren">Modified Berggren, m.</param>
/// <param name="How">How.</param>
public sealed record FrostEstimate(double Stefan, double Berggren, Calculation How);

/// <summary>The estimate from a freezing index and a typical ground.</summary>
internal static class FrostEstimates
{
    private const double LatentHeat = 144 * Btu;                    // J/kg of water, 144 BTU/lb as the equation is printed
    private const double Btu = 2326;                                // J/kg for 1 BTU/lb
    private const double BtuPerFoot = 1.730734666;                  // W/(m K) for 1 BTU/(h ft F)
    private const double PoundPerCubicFoot = 16.018463374;          // kg/m3
    private const double HeatOfWater = 4186.8;                      // J/(kg K) for 1 BTU/(lb F)

    public static Known<FrostEstimate> Of(Freezing? freezing)
    {
        if (freezing is not { DegreeDays: > 0, Days: > 0 })
        {
            return new Message("analysis.foundation.no-freezing");
        }

        if (!(freezing.MeanTemperature.Celsius > 0))
        {
            return new Message("analysis.foundation.always-frozen");
        }

        using var file = MaterialFiles.Open("ground.json");
        var ground = file.RootElement.GetProperty("frozen").EnumerateArray().FirstOrDefault(e => e.GetProperty("key").GetString() == freezing.Ground);
        var surface = file.RootElement.GetProperty("surfaces").EnumerateArray().FirstOrDefault(e => e.GetProperty("key").GetString() == freezing.Surface);
        if (ground.ValueKind == System.Text.Json.JsonValueKind.Undefined || surface.ValueKind == System.Text.Json.JsonValueKind.Undefined)
        {
            return Message.Of("analysis.foundation.frost-ground", ("ground", freezing.Ground), ("surface", freezing.Surface));
        }

        var source = Sources.Get("aldrich-berggren");
        var (conductivity, density, water, factor) = (MaterialFiles.Cited(ground, "conductivity"), MaterialFiles.Cited(ground, "density"), MaterialFiles.Cited(ground, "water"), MaterialFiles.Cited(surface, "factor"));
        var sheet = new Worksheet("frost-estimate");
        var k = Worksheet.Cited("k", "frozen-conductivity", conductivity with { Value = conductivity.Value * BtuPerFoot }, Dimension.Number);
        var rho = Worksheet.Cited("rho_d", "dry-density", density with { Value = density.Value * PoundPerCubicFoot }, Dimension.Density);
        var w = Worksheet.Cited("w", "soil-water", water, Dimension.Fraction);
        var n = Worksheet.Cited("n", "surface-factor", factor, Dimension.Number);
        var index = Worksheet.Given("FI", "freezing-index", freezing.DegreeDays, Dimension.Number);
        var days = Worksheet.Given("t", "freezing-days", freezing.Days, Dimension.Number);
        var mean = Worksheet.Given("T_m", "mean-temperature", freezing.MeanTemperature.Celsius, Dimension.Number);
        var l = sheet.Step("latent-heat", "L", "334944*rho_d*w", LatentHeat * rho.Value.Si * w.Value.Si, Dimension.Number, source, rho, w);
        var c = sheet.Step("heat-capacity", "C", "4186.8*rho_d*(0.17 + 0.75*w)", HeatOfWater * rho.Value.Si * (0.17 + 0.75 * w.Value.Si), Dimension.Number, source, rho, w);
        var x = Frost.Stefan(k.Value.Si, n.Value.Si, freezing.DegreeDays, l.Value.Si);
        var stefan = sheet.Step("frost-stefan", "x_S", "sqrt(2*86400*k*n*FI/L)", x, Dimension.Length, source, k, n, index, l);
        var fusion = sheet.Step("fusion-parameter", "mu", "n*FI/t*C/L", Frost.FusionParameter(n.Value.Si, freezing.DegreeDays, freezing.Days, c.Value.Si, l.Value.Si), Dimension.Number, source, n, index, days, c, l);
        var ratio = sheet.Step("thermal-ratio", "alpha", "T_m/(n*FI/t)", Frost.ThermalRatio(freezing.MeanTemperature.Celsius, n.Value.Si, freezing.DegreeDays, freezing.Days), Dimension.Number, source, mean, n, index, days);
        var correction = sheet.Step("berggren-correction", "lambda", "1/sqrt(1 + mu*(alpha + 0.5))", Frost.Correction(fusion.Value.Si, ratio.Value.Si), Dimension.Number, source, fusion, ratio);
        var berggren = sheet.Step("frost-berggren", "x_B", "lambda*x_S", correction.Value.Si * x, Dimension.Length, source, correction, stefan);
        return new FrostEstimate(x, berggren.Value.Si, sheet.Done);
    }
}
