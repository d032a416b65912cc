using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>A pole that slips and drops with one end on the wall before the bond beam holds it.</summary>
/// <remarks>
/// A bound, not a forecast: all that the fall brings is taken to strike the top of the wall sideways and to stick there; what is left after the blow (m/(m + W/(3 g)), the wall turning about its foot) must be less than what lifts the
/// wall over its edge. As much wall answers as lies within 1 out for 2 down of the pole. The dent is what a blow straight down leaves: its energy over the bearing of cob as laid, (2 + pi) s_u (Prandtl), under half the pole.
/// </remarks>
internal sealed class PoleDrops(HouseGeometry geometry, RoofResult roof, WallNumbers numbers, double dryCob)
{
    private static readonly Source Mechanics = Sources.Get("mechanics");

    /// <summary>The heaviest pole on the wall at its full height.</summary>
    /// <param name="green">Strength at the foot, Pa.</param>
    /// <param name="fresh">Undrained strength of cob as laid, Pa.</param>
    public CheckedMember Of(double green, double fresh)
    {
        const string Key = "pole-drop";
        double?[] masses = [.. roof.Reciprocal.Value?.Poles.Select(p => p.Mass) ?? [], .. roof.Plain.Value?.Rafters.Select(r => r.Mass) ?? []];
        if (masses.Length == 0 || masses.Any(m => m is not > 0))
        {
            return new CheckedMember(Key, "wall", roof.Reciprocal.Is || roof.Plain.Is ? new Message("analysis.roof.no-timber") : new Message("analysis.roof.none"));
        }

        var full = (geometry.Wall.Top - geometry.Wall.Base).Metres;
        var standing = new FreeStanding(geometry.Wall, full, dryCob, green);
        var (mass, diameter) = (masses.Max()!.Value, Diameter());
        var sheet = new Worksheet("pole-drop");
        var struck = sheet.Step(
            "pole-end", "m_e", "k_m*m", numbers["wall-drop-share"] * mass, Dimension.Mass, Mechanics, numbers.Symbol("k_m", "wall-drop-share"), Worksheet.Computed("m", "pole-mass", mass, Dimension.Mass));
        var energy = sheet.Step(
            "pole-energy", "E", "m_e*g*h_d", struck.Value.Si * UsUnits.Gravity * numbers["wall-drop-height"], Dimension.Moment, Mechanics, struck, UsUnits.GravitySymbol, numbers.Symbol("h_d", "wall-drop-height"));
        var d = Worksheet.Computed("D", "pole-across", diameter, Dimension.Length);
        var h = Worksheet.Computed("h", "wall-height", full, Dimension.Length);
        var length = sheet.Step("wall-answers", "l", "D + h", diameter + full, Dimension.Length, Sources.Get("tms-402-memory"), d, h);
        var weight = sheet.Step("wall-answers-weight", "W", "w*l", standing.Weight * length.Value.Si, Dimension.Force, Mechanics, Worksheet.Computed("w", "free-wall-weight", standing.Weight, Dimension.LineLoad), length);
        var left = sheet.Step(
            "blow-left", "E_1", "E*m_e/(m_e + W/(3*g))", energy.Value.Si * struck.Value.Si / (struck.Value.Si + weight.Value.Si / (3 * UsUnits.Gravity)), Dimension.Moment, Mechanics, energy, struck, weight, UsUnits.GravitySymbol);
        Symbol a = Worksheet.Computed("a", "free-wall-arm", standing.Arm, Dimension.Length), z = Worksheet.Computed("z", "free-wall-middle", standing.Rise, Dimension.Length);
        var lifts = Math.Sqrt(standing.Arm * standing.Arm + standing.Rise * standing.Rise) - standing.Rise;
        var tips = sheet.Step("blow-tips", "E_t", "W*(sqrt(a^2 + z^2) - z)", weight.Value.Si * lifts, Dimension.Moment, Mechanics, weight, a, z);
        var allowed = sheet.Step(
            "blow-allowed", "E_a", "max(0.001*Nm, E_t/F)", Math.Max(1e-3, tips.Value.Si / numbers["wall-drop-safety"]), Dimension.Moment, Mechanics, tips, numbers.Symbol("F", "wall-drop-safety"),
            Worksheet.Code("Nm", "newton-metre", 1, Dimension.Moment, Sources.Get("mechanics")));
        var thickness = geometry.Wall.ThicknessAt(geometry.Wall.Top.Metres);
        sheet.Step(
            "pole-dent", "y", "E/(5.1416*s_u*t*D/2)", energy.Value.Si / (5.1416 * fresh * thickness * diameter / 2), Dimension.Length, Sources.Get("terzaghi-bearing"), energy,
            Worksheet.Computed("s_u", "undrained-strength", fresh, Dimension.Stress), Worksheet.Computed("t", "wall-thickness-top", thickness, Dimension.Length), d);
        return new CheckedMember(Key, "wall", new MemberCheck("", "blow", left.Value, allowed.Value, sheet.Done));
    }

    private double Diameter() => geometry.House.Roof switch
    {
        Building.Roof.Reciprocal r => r.Pole.Butt.Metres,
        Building.Roof.Radial r => r.Pole.Butt.Metres,
        Building.Roof.Shed r => r.Pole.Butt.Metres,
        Building.Roof.Gable r => r.Pole.Butt.Metres,
        _ => 0.2,
    };
}
