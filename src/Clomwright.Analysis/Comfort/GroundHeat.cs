using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Comfort;

/// <summary>A floor on the ground: ISO 13370, slab on ground (its symbols), from memory.</summary>
/// <param name="Area">Of the floor, m2.</param>
/// <param name="Perimeter">Exposed, m.</param>
/// <param name="Wall">Thickness of the wall at the ground, w, m.</param>
/// <param name="Ground">Conductivity of the ground, W/(m K).</param>
/// <param name="Floor">Resistance of what lies on the ground, R_f, m2 K/W.</param>
/// <param name="Inside">Film inside, R_si, m2 K/W.</param>
/// <param name="Outside">Film outside, R_se, m2 K/W.</param>
public sealed record GroundHeat(double Area, double Perimeter, double Wall, double Ground, double Floor, double Inside, double Outside)
{
    /// <summary>Depth to which the year's swing reaches, delta, m: 2.2 in clay, 3.2 in sand and gravel, 4.2 in rock.</summary>
    public double YearDepth => Ground <= 1.5 ? 2.2 : Ground <= 2.0 ? 3.2 : 4.2;

    /// <summary>Insulation let down along the edge: resistance that it adds, m2 K/W; 0 for none.</summary>
    public double EdgeResistance { get; init; }

    /// <summary>How far down it goes, D, m.</summary>
    public double EdgeDepth { get; init; }

    /// <summary>Characteristic dimension B', m.</summary>
    public double Dimension => Area / (Perimeter / 2);

    /// <summary>Total equivalent thickness d_t, m.</summary>
    public double Thickness => Wall + Ground * (Inside + Floor + Outside);

    /// <summary>U of the floor without its edge insulation, W/(m2 K).</summary>
    public double Bare => Thickness < Dimension
        ? 2 * Ground / (Math.PI * Dimension + Thickness) * Math.Log(Math.PI * Dimension / Thickness + 1)
        : Ground / (0.457 * Dimension + Thickness);

    /// <summary>What the edge insulation takes off along the perimeter, W/(m K); 0 or less.</summary>
    public double Edge
    {
        get
        {
            var more = Ground * EdgeResistance;
            return EdgeResistance > 0 && EdgeDepth > 0 ? -Ground / Math.PI * (Math.Log(2 * EdgeDepth / Thickness + 1) - Math.Log(2 * EdgeDepth / (Thickness + more) + 1)) : 0;
        }
    }

    /// <summary>U of the floor with its edge, W/(m2 K).</summary>
    public double Transmittance => Bare + Edge * Perimeter / Area;

    /// <summary>Heat for each kelvin of the year's swing outside, H_pe, W/K.</summary>
    public double Swing
    {
        get
        {
            var plain = Math.Log(YearDepth / Thickness + 1);
            if (EdgeResistance > 0 && EdgeDepth > 0)
            {
                var kept = Math.Exp(-EdgeDepth / YearDepth);
                plain = (1 - kept) * Math.Log(YearDepth / (Thickness + Ground * EdgeResistance) + 1) + kept * plain;
            }

            return 0.37 * Perimeter * Ground * plain;
        }
    }

    /// <summary>Step by step.</summary>
    internal Calculation Worked()
    {
        var sheet = new Worksheet("floor-heat");
        var source = Sources.Get("iso-13370-memory");
        var area = Worksheet.Computed("A", "floor-area", Area, Evidence.Dimension.Area);
        var perimeter = Worksheet.Computed("P", "perimeter", Perimeter, Evidence.Dimension.Length);
        var width = sheet.Step("ground-dimension", "B", "A/(P/2)", Dimension, Evidence.Dimension.Length, source, area, perimeter);
        var ground = new Symbol("k_g", new Message("analysis.symbol.ground-conductivity"), new Amount(Ground, Evidence.Dimension.Conductivity), Tag.Computed);
        var thick = sheet.Step("ground-thickness", "d_t", "w+k_g*(R_i+R_f+R_e)", Thickness, Evidence.Dimension.Length, source,
            Worksheet.Computed("w", "wall-at-ground", Wall, Evidence.Dimension.Length), ground, Worksheet.Computed("R_i", "film-inside", Inside, Evidence.Dimension.Resistance),
            Worksheet.Computed("R_f", "floor-resistance", Floor, Evidence.Dimension.Resistance), Worksheet.Computed("R_e", "film-outside", Outside, Evidence.Dimension.Resistance));
        var bare = sheet.Step("floor-transmittance", "U_0", Thickness < Dimension ? "2*k_g/(pi*B+d_t)*ln(pi*B/d_t+1)" : "k_g/(0.457*B+d_t)", Bare, Evidence.Dimension.Transmittance, source, ground, width, thick);
        if (Edge < 0)
        {
            var edge = sheet.Step("floor-edge", "e", "-k_g/pi*(ln(2*D/d_t+1)-ln(2*D/(d_t+k_g*R_n)+1))", Edge, Evidence.Dimension.Conductivity, source,
                ground, Worksheet.Given("D", "edge-depth", EdgeDepth, Evidence.Dimension.Length), thick, Worksheet.Computed("R_n", "edge-resistance", EdgeResistance, Evidence.Dimension.Resistance));
            sheet.Step("floor-with-edge", "U", "U_0+e*P/A", Transmittance, Evidence.Dimension.Transmittance, source, bare, edge, perimeter, area);
        }

        return sheet.Done;
    }
}
