using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Anchorage;

/// <summary>What a tee buried in the top of a cob wall can hold down: the weight of the cob above its bar, and nothing else.</summary>
/// <remarks>
/// The bar lies along the wall and no tension of the cob is counted; no test of cob against pull-out was found. Between the sides rising from the
/// bar at an angle theta lies V = t D (B + D tan theta). theta 0 is the prism straight above the bar; 30 degrees is usual in soil. The wedge ends half-way to the next tee.
/// </remarks>
public static class TeeAnchor
{
    /// <summary>The uplift allowed every day, N: 0.6 of the cob's weight.</summary>
    /// <param name="unitWeight">gamma of the cob, N/m3, as dry as it may be.</param>
    /// <param name="thickness">t of the wall, m.</param>
    /// <param name="depth">D from the wall top to the underside of the bar, m.</param>
    /// <param name="bar">B: length of the bar along the wall, m.</param>
    /// <param name="spread">theta, radians; 0 is the safe prism.</param>
    /// <param name="spacing">Between tees, m: what one tee may call its own.</param>
    public static Calculated<double> Allowable(double unitWeight, double thickness, double depth, double bar, double spread, double spacing)
    {
        var derived = Sources.Get("tee-anchor-derived");
        var sheet = new Worksheet("tee");
        var rho = Worksheet.Computed("rho", "cob-density", unitWeight / UsUnits.Gravity, Dimension.Density);
        var t = Worksheet.Computed("t", "wall-thickness-top", thickness, Dimension.Length);
        var d = Worksheet.Given("D", "tee-depth", depth, Dimension.Length);
        var b = Worksheet.Given("B", "tee-bar", bar, Dimension.Length);
        var theta = Worksheet.Code("theta", "tee-spread", spread, Dimension.Angle, derived);
        var s = Worksheet.Given("s", "tee-spacing", spacing, Dimension.Length);
        var volume = Volume(thickness, depth, bar, spread, spacing);
        var top = bar + 2 * depth * Math.Tan(spread);
        Symbol v;
        if (bar >= spacing)
        {
            v = sheet.Step("tee-cob", "V", "t*D*s", volume, Dimension.Volume, derived, t, d, s);
        }
        else if (top <= spacing)
        {
            v = sheet.Step("tee-cob", "V", "t*D*(B + D*tan(theta))", volume, Dimension.Volume, derived, t, d, b, theta);
        }
        else
        {
            v = sheet.Step("tee-cob", "V", "t*(D*s - (s - B)^2/(4*tan(theta)))", volume, Dimension.Volume, derived, t, d, s, b, theta);
        }

        var weight = sheet.Step("tee-weight", "G", "rho*g*V", unitWeight * volume, Dimension.Force, Sources.Get("mechanics"), rho, UsUnits.GravitySymbol, v);
        sheet.Step("tee-allowable", "T", "0.6*G", 0.6 * unitWeight * volume, Dimension.Force, Sources.Get("asce7-16-combinations"), weight);
        return new(0.6 * unitWeight * volume, sheet.Done);
    }

    /// <summary>Cob above the bar, m3, cut off half-way to the next tee.</summary>
    public static double Volume(double thickness, double depth, double bar, double spread, double spacing)
    {
        if (bar >= spacing)
        {
            return thickness * depth * spacing;
        }

        var widening = Math.Tan(spread);
        var top = bar + 2 * depth * widening;
        return top <= spacing
            ? thickness * depth * (bar + depth * widening)
            : thickness * (depth * spacing - (spacing - bar) * (spacing - bar) / (4 * widening));
    }

    /// <summary>A square plate of side B buried in deep soil (Meyerhof and Adams 1968): Q = W + gamma D^2 2 s B K_u tan(phi), s = 1 + m D/B, N. For comparison; a thin wall is no half-space.</summary>
    /// <param name="unitWeight">gamma, N/m3.</param>
    /// <param name="side">B, m.</param>
    /// <param name="depth">D, m.</param>
    /// <param name="pressure">K_u tan(phi).</param>
    /// <param name="shape">s.</param>
    public static double BuriedPlate(double unitWeight, double side, double depth, double pressure, double shape) =>
        unitWeight * side * side * depth + unitWeight * depth * depth * 2 * shape * side * pressure;
}
