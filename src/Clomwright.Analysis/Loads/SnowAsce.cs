using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Loads;

/// <summary>ASCE 7 chapter 7. A planted roof is not slippery. ASCE 7-22 leaves I_s out and reads ground snow from maps at strength level.</summary>
internal static class SnowAsce
{
    private const double Flat = 15 * Math.PI / 180;
    private const double Bare = 70 * Math.PI / 180;

    public static SnowLoad Of(GroundSnow ground, double slope, SnowFactors factors)
    {
        var newer = ground.Edition == LoadEdition.Asce722;
        var seen = Sources.Get("asce7-16-snow");
        var memory = Sources.Get(newer ? "asce7-22-memory" : "asce7-16-memory");
        var sheet = new Worksheet("snow");
        var pg = Worksheet.Given("p_g", "ground-snow", ground.Pascals, Dimension.AreaLoad);
        var ce = Worksheet.Cited("C_e", "snow-exposure", factors.Exposure, Dimension.Number);
        var ct = Worksheet.Cited("C_t", "snow-thermal", factors.Thermal, Dimension.Number);
        var importance = Worksheet.Cited("I_s", "snow-importance", factors.Importance, Dimension.Number);
        var i = newer ? 1 : factors.Importance.Value;
        var flatValue = 0.7 * factors.Exposure.Value * factors.Thermal.Value * i * ground.Pascals;
        var pf = newer
            ? sheet.Step("flat-roof-snow", "p_f", "0.7*C_e*C_t*p_g", flatValue, Dimension.AreaLoad, memory, ce, ct, pg)
            : sheet.Step("flat-roof-snow", "p_f", "0.7*C_e*C_t*I_s*p_g", flatValue, Dimension.AreaLoad, seen, ce, ct, importance, pg);

        var start = SlopeStart(factors.Thermal.Value);
        var alpha = Worksheet.Computed("theta", "roof-slope", slope, Dimension.Angle);
        var bound = Worksheet.Code("theta_0", "snow-slope-start", start, Dimension.Angle, memory);
        var end = Worksheet.Code("theta_1", "snow-slope-end", Bare, Dimension.Angle, memory);
        var csValue = SlopeFactor(slope, factors.Thermal.Value);
        var cs = sheet.Step("snow-slope-factor", "C_s", "max(0, min(1, (theta_1 - theta)/(theta_1 - theta_0)))", csValue, Dimension.Number, memory, alpha, bound, end);
        var slopedValue = csValue * flatValue;
        var ps = sheet.Step("sloped-roof-snow", "p_s", "C_s*p_f", slopedValue, Dimension.AreaLoad, seen, cs, pf);
        var balanced = slopedValue;
        if (slope < Flat)
        {
            var least = Math.Min(ground.Pascals, 20 * UsUnits.Psf) * i;
            var pm = newer
                ? sheet.Step("least-snow", "p_m", "min(p_g, 20*psf)", least, Dimension.AreaLoad, memory, pg, UsUnits.PsfSymbol)
                : sheet.Step("least-snow", "p_m", "I_s*min(p_g, 20*psf)", least, Dimension.AreaLoad, seen, importance, pg, UsUnits.PsfSymbol);
            balanced = Math.Max(slopedValue, least);
            sheet.Step("balanced-snow", "p", "max(p_s, p_m)", balanced, Dimension.AreaLoad, seen, ps, pm);
        }

        var one = i * ground.Pascals;
        _ = newer
            ? sheet.Step("one-sided-snow", "p_one", "p_g", one, Dimension.AreaLoad, memory, pg)
            : sheet.Step("one-sided-snow", "p_one", "I_s*p_g", one, Dimension.AreaLoad, memory, importance, pg);
        var crown = 0.5 * flatValue;
        var eave = 2 * flatValue * csValue / factors.Exposure.Value;
        sheet.Step("drift-at-crown", "p_crown", "0.5*p_f", crown, Dimension.AreaLoad, memory, pf);
        sheet.Step("drift-at-eave", "p_eave", "2*p_f*C_s/C_e", eave, Dimension.AreaLoad, memory, pf, cs, ce);
        return new SnowLoad
        {
            Edition = ground.Edition, Flat = flatValue, Balanced = balanced, OneSided = one, DriftAtCrown = crown, DriftAtEave = eave,
            ServiceFactor = newer ? 0.7 : 1, How = sheet.Done, Assumptions = [],
        };
    }

    /// <summary>C_s for a surface that is not slippery.</summary>
    public static double SlopeFactor(double slope, double thermal) => Math.Clamp((Bare - slope) / (Bare - SlopeStart(thermal)), 0, 1);

    private static double SlopeStart(double thermal) => Math.PI / 180 * (thermal <= 1.0 ? 30 : thermal < 1.2 ? 37.5 : 45);
}
