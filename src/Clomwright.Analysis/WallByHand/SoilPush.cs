using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>Ground that lies higher than the wall's foot on one side: a metre of wall by itself, free at its top, against turning over its inside edge and against sliding on the stem.</summary>
/// <remarks>At rest (<see cref="SoilPressure"/>). The lightest dry wall, no roof on it; the earth has no tension and its edge is crushed. Nothing pushes back from inside.</remarks>
internal static class SoilPush
{
    private static readonly Source Mechanics = Sources.Get("mechanics");

    /// <summary>Turning and sliding; none where the ground is no higher than the wall's foot, and why not where nobody gave its height.</summary>
    public static IEnumerable<CheckedMember> Of(HouseGeometry geometry, WallNumbers numbers, double dryCob, Cited<double> allowed)
    {
        if (SoilPressure.Missing(geometry.House.Site) is { } missing)
        {
            return [new CheckedMember("wall-soil", "turning", missing)];
        }

        return SoilPressure.Of(geometry.House.Site, geometry.Wall.Base.Metres) is { } soil ? [Turning(geometry, soil, dryCob, allowed), Sliding(geometry, soil, numbers, dryCob)] : [];
    }

    private static Symbol Metre => Worksheet.Code("m", "one-metre", 1, Dimension.Length, Sources.Get("mechanics"));

    private static (Symbol Push, Symbol Weight) Forces(Worksheet sheet, HouseGeometry geometry, SoilPressure soil, double dryCob)
    {
        var wall = geometry.Wall;
        var (height, mean) = ((wall.Top - wall.Base).Metres, wall.ThicknessAt((wall.Top.Metres + wall.Base.Metres) / 2));
        var high = Worksheet.Computed("h_g", "soil-over-foot", soil.Height, Dimension.Length);
        var push = sheet.Step(
            "soil-push", "P", "(1 - sin(phi))*rho_g*g*h_g^2/2*m", soil.Force(soil.Foot, soil.Grade), Dimension.Force, Sources.Get("earth-pressure-memory"),
            [.. soil.Symbols, UsUnits.GravitySymbol, high, Metre]);
        var weight = sheet.Step(
            "wall-metre-weight", "W", "rho*g*t_m*H*m", dryCob * mean * height, Dimension.Force, Mechanics,
            Worksheet.Assumed("rho", "cob-density-dry", dryCob / UsUnits.Gravity, Dimension.Density, Sources.Get("cob-density-memory")), UsUnits.GravitySymbol,
            Worksheet.Computed("t_m", "wall-thickness-mean", mean, Dimension.Length), Worksheet.Computed("H", "wall-height", height, Dimension.Length), Metre);
        return (push, weight);
    }

    private static CheckedMember Turning(HouseGeometry geometry, SoilPressure soil, double dryCob, Cited<double> allowed)
    {
        var wall = geometry.Wall;
        var sheet = new Worksheet("wall-soil-turning");
        var (push, weight) = Forces(sheet, geometry, soil, dryCob);
        double low = wall.Base.Metres, top = wall.Top.Metres;

        // Middle of the section from the inside edge of the foot; both faces straight.
        double Moment(double z) => (wall.OutsideOffset(z) * wall.OutsideOffset(z) - wall.InsideOffset(z) * wall.InsideOffset(z)) / 2;
        var area = wall.ThicknessAt(low) + 4 * wall.ThicknessAt((low + top) / 2) + wall.ThicknessAt(top);
        var lever = (Moment(low) + 4 * Moment((low + top) / 2) + Moment(top)) / area - wall.InsideOffset(low);
        var f = Worksheet.Cited("f_a", "cob-allowed", allowed, Dimension.Stress);
        var crushed = sheet.Step(
            "edge-crushed", "c", "W/(2*0.85*f_a*m)", Rocking.Crushed(weight.Value.Si, allowed.Value, 1), Dimension.Length, Mechanics, weight, f, Metre);
        var turns = sheet.Step(
            "soil-turns", "M", "P*h_g/3", push.Value.Si * soil.Height / 3, Dimension.Moment, Mechanics, push, Worksheet.Computed("h_g", "soil-over-foot", soil.Height, Dimension.Length));
        var holds = sheet.Step(
            "soil-holds", "M_R", "W*max(0, x_W - c)", weight.Value.Si * Math.Max(0, lever - crushed.Value.Si), Dimension.Moment, Mechanics, weight,
            Worksheet.Computed("x_W", "weight-from-inside-edge", lever, Dimension.Length), crushed);
        return new CheckedMember("wall-soil", "turning", new MemberCheck("", "soil", turns.Value, holds.Value, sheet.Done));
    }

    private static CheckedMember Sliding(HouseGeometry geometry, SoilPressure soil, WallNumbers numbers, double dryCob)
    {
        var sheet = new Worksheet("wall-soil-sliding");
        var (push, weight) = Forces(sheet, geometry, soil, dryCob);
        var holds = sheet.Step(
            "soil-friction-force", "R", "mu*W", numbers["wall-joint-friction"] * weight.Value.Si, Dimension.Force, Mechanics, numbers.Symbol("mu", "wall-joint-friction"), weight);
        return new CheckedMember("wall-soil", "sliding", new MemberCheck("", "soil", push.Value, holds.Value, sheet.Done));
    }
}
