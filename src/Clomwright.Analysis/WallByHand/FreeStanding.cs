using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>A metre of wall that stands by itself up to a height, nothing on it: what holds it, whichever way it is pushed.</summary>
internal sealed class FreeStanding
{
    private static readonly Source Mechanics = Sources.Get("mechanics");

    private readonly double edge, line;

    /// <summary>A metre of wall.</summary>
    /// <param name="wall">The wall.</param>
    /// <param name="height">Over its base, m.</param>
    /// <param name="unitWeight">Of the cob, with the factor that it counts by, N/m3.</param>
    /// <param name="strength">Of the cob at its foot, Pa.</param>
    public FreeStanding(WallSolid wall, double height, double unitWeight, double strength)
    {
        var (low, top) = (wall.Base.Metres, wall.Base.Metres + height);
        var middle = (low + top) / 2;
        var area = height / 6 * (wall.ThicknessAt(low) + 4 * wall.ThicknessAt(middle) + wall.ThicknessAt(top));
        var first = height / 6 * (Square(low) + 4 * Square(middle) + Square(top)) / 2;
        (Height, Weight, Strength) = (height, unitWeight * area, strength);
        Crushed = Rocking.Crushed(Weight, strength, 1);
        Rise = height / 6 * (4 * wall.ThicknessAt(middle) * height / 2 + wall.ThicknessAt(top) * height) / area;
        var centre = first / area;
        (edge, line) = wall.OutsideOffset(low) - centre < centre - wall.InsideOffset(low) ? (wall.OutsideOffset(low), centre) : (-wall.InsideOffset(low), -centre);

        double Square(double z) => wall.OutsideOffset(z) * wall.OutsideOffset(z) - wall.InsideOffset(z) * wall.InsideOffset(z);
    }

    /// <summary>m.</summary>
    public double Height { get; }

    /// <summary>W, N/m.</summary>
    public double Weight { get; }

    /// <summary>f, Pa.</summary>
    public double Strength { get; }

    /// <summary>c: how far inside its face it turns, m.</summary>
    public double Crushed { get; }

    /// <summary>Its middle over its base, m.</summary>
    public double Rise { get; }

    /// <summary>From the line of its weight to the edge that it turns about, m; nothing where the cob cannot carry it so.</summary>
    public double Arm => Math.Max(0, edge - Crushed - line);

    /// <summary>Moment that holds it, N m for each metre.</summary>
    public double Holds => Weight * Arm;

    /// <summary>Even pressure over its face that tips it, Pa.</summary>
    public double Tips => 2 * Holds / (Height * Height);

    /// <summary>Gust that presses so: sqrt(2 p/(rho C)), m/s.</summary>
    public double Gust(double coefficient, double air, double safety = 1) => Math.Sqrt(2 * Tips / safety / (air * coefficient));

    /// <summary>Puts what holds it down.</summary>
    public Symbol Put(Worksheet sheet)
    {
        var w = Worksheet.Computed("W", "free-wall-weight", Weight, Dimension.LineLoad);
        var c = sheet.Step(
            "edge-crushed", "c", "W/(2*0.85*f_g)", Crushed, Dimension.Length, Sources.Get("magenes-calvi-memory"), w, Worksheet.Computed("f_g", "green-strength", Strength, Dimension.Stress));
        var arm = sheet.Step(
            "free-wall-arm", "a", "max(0, y_b - c - y_W)", Arm, Dimension.Length, Mechanics, Worksheet.Computed("y_b", "line-edge", edge, Dimension.Length), c, Worksheet.Computed("y_W", "line-weight", line, Dimension.Length));
        return sheet.Step("free-wall-holds", "M_R", "max(0.001*N_1, W*a)", Math.Max(1e-3, Holds), Dimension.Force, Mechanics, w, arm, Worksheet.Code("N_1", "newton", 1, Dimension.Force, Sources.Get("mechanics")));
    }
}
