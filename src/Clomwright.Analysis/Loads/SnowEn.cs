using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Loads;

/// <summary>EN 1991-1-3 with recommended values: s = mu C_e C_t s_k; one side of a pitched roof may have half.</summary>
internal static class SnowEn
{
    public static SnowLoad Of(GroundSnow ground, double slope, SnowFactors factors)
    {
        var seen = Sources.Get("en-1991-1-3");
        var memory = Sources.Get("en-1991-memory");
        var sheet = new Worksheet("snow");
        var sk = Worksheet.Given("s_k", "ground-snow", ground.Pascals, Dimension.AreaLoad);
        var ce = Worksheet.Cited("C_e", "snow-exposure", factors.Exposure, Dimension.Number);
        var ct = Worksheet.Cited("C_t", "snow-thermal", factors.Thermal, Dimension.Number);
        var alpha = Worksheet.Computed("alpha", "roof-slope", slope, Dimension.Angle);
        var free = Shape(slope, retained: false);
        var mu = sheet.Step("snow-shape", "mu_1", "max(0, min(0.8, 0.8*(60 - alpha*180/pi)/30))", free, Dimension.Number, seen, alpha);
        var value = Shape(slope, factors.Retained);
        if (factors.Retained)
        {
            mu = sheet.Step("snow-shape-retained", "mu", "max(mu_1, 0.8)", value, Dimension.Number, memory, mu);
        }

        var product = factors.Exposure.Value * factors.Thermal.Value * ground.Pascals;
        var balanced = value * product;
        sheet.Step("balanced-snow", "s", $"{mu.Name}*C_e*C_t*s_k", balanced, Dimension.AreaLoad, seen, mu, ce, ct, sk);
        var drift = sheet.Step("one-sided-snow", "s_d", $"{mu.Name}*C_e*C_t*s_k", balanced, Dimension.AreaLoad, memory, mu, ce, ct, sk);
        return new SnowLoad
        {
            Edition = ground.Edition, Flat = 0.8 * product, Balanced = balanced, OneSided = drift.Value.Si, DriftAtCrown = balanced, DriftAtEave = balanced,
            ServiceFactor = 1, How = sheet.Done, Assumptions = [],
        };
    }

    /// <summary>mu_1 of table 5.2; kept at 0.8 where something stops sliding (5.3.2).</summary>
    public static double Shape(double slope, bool retained) => retained ? 0.8 : Math.Clamp(0.8 * (60 - slope * 180 / Math.PI) / 30, 0, 0.8);
}
