using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Comfort;

/// <summary>A window or door as heat and sun see it: ISO 10077, the mean of glass, frame and the edge of the glass, from memory.</summary>
/// <param name="Opening">Its name.</param>
/// <param name="Area">Of frame and glass, m2.</param>
/// <param name="Glass">Of glass, m2; 0 of a door of boards.</param>
/// <param name="Transmittance">U_w, W/(m2 K).</param>
/// <param name="Sun">Share of the sun that comes in through the glass, the slant of the year counted.</param>
/// <param name="How">Step by step; null of a door of boards, which is one number.</param>
public sealed record WindowHeat(string Opening, double Area, double Glass, double Transmittance, double Sun, Calculation? How)
{
    internal static WindowHeat Of(Opening opening, double area, Glazing glazing, ComfortNumbers numbers)
    {
        if (opening.Kind == OpeningKind.Door && opening.Glazing is null)
        {
            return new(opening.Name, area, 0, numbers["comfort-door"], 0, null);
        }

        var (width, height) = (opening.Width.Metres, opening.Height.Metres);
        var shape = area / (width * height);
        var (glass, edge) = opening switch
        {
            { Kind: OpeningKind.Glass } => (area, 0.0),
            { Frame: { } f } => Inner(f.Width.Metres - 2 * f.Stock.Metres, f.Height.Metres - 2 * f.Stock.Metres),
            _ => Inner(width * Math.Sqrt(1 - numbers["comfort-frame-share"]), height * Math.Sqrt(1 - numbers["comfort-frame-share"])),
        };
        (double, double) Inner(double w, double h) => (Math.Clamp(w * h * shape, 0, area), 2 * (Math.Max(0, w) + Math.Max(0, h)));

        var sheet = new Worksheet("window-heat");
        var a = Worksheet.Computed("A", "window-area", area, Dimension.Area);
        var g = Worksheet.Computed("A_g", "glass-area", glass, Dimension.Area);
        var u = sheet.Step("window-transmittance", "U_w", "(A_g*U_g+(A-A_g)*U_f+l*psi)/A",
            (glass * glazing.Transmittance.Value + (area - glass) * numbers["comfort-frame"] + edge * numbers["comfort-glass-edge"]) / area, Dimension.Transmittance, Sources.Get("iso-10077-memory"),
            g, Worksheet.Cited("U_g", "glass-transmittance", glazing.Transmittance, Dimension.Transmittance), a, numbers.Symbol("U_f", "comfort-frame"),
            Worksheet.Computed("l", "glass-edge", edge, Dimension.Length), numbers.Symbol("psi", "comfort-glass-edge"));
        return new(opening.Name, area, glass, u.Value.Si, glazing.Sun.Value * numbers["comfort-glass-angle"], sheet.Done with { Place = opening.Name });
    }
}
