using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Loads;

/// <summary>Live load on a roof that only its keepers walk on.</summary>
public static class RoofLiveLoad
{
    /// <summary>ASCE 7 section 4.8: L_r = L_o R_1 R_2, L_o 20 psf, never under 12 psf.</summary>
    /// <param name="tributaryArea">A_t carried by the member, m2 on plan.</param>
    /// <param name="slope">Rise over run of the roof.</param>
    public static Calculated<double> Asce(double tributaryArea, double slope)
    {
        var source = Sources.Get("asce7-16-roof-live");
        var sheet = new Worksheet("roof-live");
        var area = Worksheet.Computed("A_t", "tributary-area", tributaryArea, Dimension.Area);
        var pitch = Worksheet.Computed("m", "roof-rise-over-run", slope, Dimension.Slope);
        var lo = Worksheet.Code("L_o", "roof-live-basic", 20 * UsUnits.Psf, Dimension.AreaLoad, source);
        var r1 = Math.Clamp(1.2 - 0.001 * tributaryArea / UsUnits.SquareFoot, 0.6, 1);
        var r2 = Math.Clamp(1.2 - 0.05 * 12 * slope, 0.6, 1);
        var one = sheet.Step("roof-live-area", "R_1", "max(0.6, min(1, 1.2 - 0.001*A_t/ft2))", r1, Dimension.Number, source, area, UsUnits.SquareFootSymbol);
        var two = sheet.Step("roof-live-slope", "R_2", "max(0.6, min(1, 1.2 - 0.05*12*m))", r2, Dimension.Number, source, pitch);
        var value = Math.Max(20 * UsUnits.Psf * r1 * r2, 12 * UsUnits.Psf);
        sheet.Step("roof-live", "L_r", "max(L_o*R_1*R_2, 12*psf)", value, Dimension.AreaLoad, source, lo, one, two, UsUnits.PsfSymbol);
        return new(value, sheet.Done);
    }

    /// <summary>EN 1991-1-1 category H: 0.4 kN/m2, with a point load of 1.0 kN beside it; nations choose.</summary>
    public static Calculated<double> En()
    {
        var source = Sources.Get("en-1991-memory");
        var sheet = new Worksheet("roof-live");
        sheet.Step("roof-live", "q_k", "q_H", 400, Dimension.AreaLoad, source, Worksheet.Code("q_H", "roof-live-category-h", 400, Dimension.AreaLoad, source));
        return new(400, sheet.Done);
    }
}
