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

        var sheet = new Worksheet("window-heat");
        var a = Worksheet.Computed("A", "window-area", area, Dimension.Area);
        var (g, edge) = Pane(opening, a, numbers, sheet);
        var glass = g.Value.Si;
        var u = sheet.Step("window-transmittance", "U_w", "(A_g*U_g+(A-A_g)*U_f+l*psi)/A",
            (glass * glazing.Transmittance.Value + (area - glass) * numbers["comfort-frame"] + edge * numbers["comfort-glass-edge"]) / area, Dimension.Transmittance, Sources.Get("iso-10077-memory"),
            g, Worksheet.Cited("U_g", "glass-transmittance", glazing.Transmittance, Dimension.Transmittance), a, numbers.Symbol("U_f", "comfort-frame"),
            Worksheet.Computed("l", "glass-edge", edge, Dimension.Length), numbers.Symbol("psi", "comfort-glass-edge"));
        return new(opening.Name, area, glass, u.Value.Si, glazing.Sun.Value * numbers["comfort-glass-angle"], sheet.Done with { Place = opening.Name });
    }

    /// <summary>How much of it is glass, and how long the edge of the glass is, m: as the house file says; else a fixed pane fills the light of its frame, what opens has a sash in it, and where no frame is described it is a share.</summary>
    private static (Symbol Glass, double Edge) Pane(Opening opening, Symbol a, ComfortNumbers numbers, Worksheet sheet)
    {
        var (area, practice) = (a.Value.Si, Sources.Get("common-practice"));
        if (opening.Kind == OpeningKind.Glass)
        {
            return (Worksheet.Computed("A_g", "glass-area", area, Dimension.Area), 0);
        }

        if (opening.Glazed is { OfOne: var share })
        {
            return (sheet.Step("glass-area", "A_g", "F*A", share * area, Dimension.Area, practice, Worksheet.Given("F", "glass-share", share, Dimension.Fraction), a), Around(share));
        }

        if (opening.FrameLight() is not { } light)
        {
            var frame = numbers["comfort-frame-share"];
            return (sheet.Step("glass-area", "A_g", "(1-f)*A", (1 - frame) * area, Dimension.Area, practice, numbers.Symbol("f", "comfort-frame-share"), a), Around(1 - frame));
        }

        var (width, height) = (light.Width.Metres, light.Height.Metres);
        var outline = area / (opening.Width.Metres * opening.Height.Metres);
        var b = Worksheet.Computed("b", "frame-light-width", width, Dimension.Length);
        var h = Worksheet.Computed("h", "frame-light-height", height, Dimension.Length);
        var k = Worksheet.Computed("k", "outline-share", outline, Dimension.Number);
        if (opening.Kind == OpeningKind.Fixed)
        {
            return (sheet.Step("glass-area", "A_g", "b*h*k", width * height * outline, Dimension.Area, practice, b, h, k), 2 * (width + height));
        }

        var sash = opening.Kind == OpeningKind.Door ? "comfort-door-stile" : "comfort-sash";
        var (w, high) = (Math.Max(0, width - 2 * numbers[sash]), Math.Max(0, height - 2 * numbers[sash]));
        return (sheet.Step("glass-area", "A_g", "max(0,b-2*r)*max(0,h-2*r)*k", w * high * outline, Dimension.Area, practice, b, h, numbers.Symbol("r", sash), k), 2 * (w + high));

        double Around(double of) => 2 * Math.Sqrt(of) * (opening.Width.Metres + opening.Height.Metres);
    }
}
