using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Loads;

/// <summary>ASCE 7 chapters 26 and 27, directional procedure, K_zt = 1.</summary>
public static class WindAsce
{
    private const double Gust = 0.85;
    private const double Direction = 0.85;
    private const double Inside = 0.18;
    private const double Soffit = 0.8;

    internal static Known<WindLoad> Of(BasicWind speed, string? exposure, WindShape shape)
    {
        if (ExposureCoefficient(speed.Edition, exposure, shape.MeanHeight) is not { } kh)
        {
            return Message.Of("analysis.loads.exposure-unknown", ("exposure", exposure ?? "-"), ("known", "B, C, D"));
        }

        var velocity = VelocityPressure(speed, kh, shape.Elevation);
        return Of(speed.Edition, velocity, shape);
    }

    /// <summary>K_z = 2.01 (max(z, 15 ft)/z_g)^(2/alpha) in 7-16, 2.41 in 7-22; null for an exposure that is not B, C or D.</summary>
    public static double? ExposureCoefficient(LoadEdition edition, string? exposure, double height)
    {
        var newer = edition == LoadEdition.Asce722;
        (double Alpha, double Zg)? terrain = (exposure, newer) switch
        {
            ("B", false) => (7.0, 1200), ("C", false) => (9.5, 900), ("D", false) => (11.5, 700),
            ("B", true) => (7.5, 3280), ("C", true) => (9.8, 2460), ("D", true) => (11.5, 1935),
            _ => null,
        };
        return terrain is { } t ? (newer ? 2.41 : 2.01) * Math.Pow(Math.Max(height / UsUnits.Foot, 15) / t.Zg, 2 / t.Alpha) : null;
    }

    /// <summary>q_h = 0.00256 K_z K_zt K_d K_e V^2 in psf and mph, with K_zt 1 and K_d 0.85, in Pa.</summary>
    /// <param name="speed">V.</param>
    /// <param name="exposureCoefficient">K_z.</param>
    /// <param name="elevation">Of the ground above sea level, m.</param>
    public static Calculated<double> VelocityPressure(BasicWind speed, double exposureCoefficient, double elevation)
    {
        var newer = speed.Edition == LoadEdition.Asce722;
        var seen = Sources.Get("asce7-16-wind");
        var memory = Sources.Get(newer ? "asce7-22-memory" : "asce7-16-memory");
        var sheet = new Worksheet("wind-velocity");
        var v = Worksheet.Given("V", "wind-speed", speed.MetresPerSecond, Dimension.Speed);
        var kz = Worksheet.Code("K_z", "wind-exposure-coefficient", exposureCoefficient, Dimension.Number, memory);
        var kd = Worksheet.Code("K_d", "wind-direction", Direction, Dimension.Number, seen);
        var z = Worksheet.Given("z_e", "ground-elevation", elevation, Dimension.Length);
        var keValue = Math.Exp(-0.000119 * elevation);
        var ke = sheet.Step("wind-elevation", "K_e", "exp(-0.000119*z_e)", keValue, Dimension.Number, memory, z);
        var mph = speed.MetresPerSecond / UsUnits.Mph;
        var q = 0.00256 * exposureCoefficient * Direction * keValue * mph * mph * UsUnits.Psf;
        sheet.Step("velocity-pressure", "q_h", "0.00256*K_z*K_d*K_e*(V/mph)^2*psf", q, Dimension.AreaLoad, newer ? memory : seen, kz, kd, ke, v, UsUnits.MphSymbol, UsUnits.PsfSymbol);
        return new(q, sheet.Done);
    }

    /// <summary>Roof, eaves, walls and free wall under a velocity pressure.</summary>
    internal static WindLoad Of(LoadEdition edition, Calculated<double> velocity, WindShape shape)
    {
        var (up, down, lee) = RoofCoefficients(shape.Slope, shape.MeanHeight / shape.Width);
        var seen = Sources.Get("asce7-16-wind");
        var memory = Sources.Get(edition == LoadEdition.Asce722 ? "asce7-22-memory" : "asce7-16-memory");
        var sheet = new Worksheet("wind-roof");
        var q = Worksheet.Computed("q_h", "velocity-pressure", velocity.Value, Dimension.AreaLoad);
        var g = Worksheet.Code("G", "wind-gust", Gust, Dimension.Number, seen);
        var inside = Worksheet.Code("GC_pi", "wind-inside", Inside, Dimension.Number, seen);
        var load = new WindLoad
        {
            Edition = edition,
            Velocity = velocity.Value,
            WindwardUp = Net("wind-windward-up", "p_1", up, -1),
            LeewardUp = Net("wind-leeward-up", "p_2", lee, -1),
            WindwardDown = Net("wind-windward-down", "p_3", down, 1),
            LeewardDown = Net("wind-leeward-down", "p_4", lee, 1),
            WallIn = Net("wind-wall-in", "p_5", 0.8, 1),
            WallOut = Net("wind-wall-out", "p_6", -0.7, -1),
            EaveUp = sheet.Step(
                "wind-eave-up", "p_7", "q_h*G*(C_up - C_soffit)", velocity.Value * Gust * (up - Soffit), Dimension.AreaLoad, memory, q, g,
                Worksheet.Code("C_up", "wind-coefficient", up, Dimension.Number, seen), Worksheet.Code("C_soffit", "wind-soffit", Soffit, Dimension.Number, memory)).Value.Si,
            FreeWall = sheet.Step(
                "wind-free-wall", "p_8", "q_h*G*C_f", velocity.Value * Gust * 1.45, Dimension.AreaLoad, memory, q, g,
                Worksheet.Code("C_f", "wind-free-wall-coefficient", 1.45, Dimension.Number, memory)).Value.Si,
            WallsAcross = sheet.Step(
                "wind-walls-across", "p_9", "q_h*G*(C_w - C_l)", velocity.Value * Gust * (0.8 + 0.5), Dimension.AreaLoad, seen, q, g,
                Worksheet.Code("C_w", "wind-windward", 0.8, Dimension.Number, seen), Worksheet.Code("C_l", "wind-leeward", -0.5, Dimension.Number, seen)).Value.Si,
            How = [velocity.How, sheet.Done],
            Assumptions =
            [
                new("wind-enclosed", new Message("analysis.assumed.wind-enclosed"), Amount.Number(Inside), seen),
                new("wind-as-hip", new Message("analysis.assumed.wind-as-hip"), Amount.Number(Gust), memory),
                new("wind-flat-ground", new Message("analysis.assumed.wind-flat-ground"), Amount.Number(1), seen),
            ],
        };
        return load;

        double Net(string step, string symbol, double coefficient, int insideSign) => sheet.Step(
            step, symbol, insideSign < 0 ? "q_h*(G*C_p - GC_pi)" : "q_h*(G*C_p + GC_pi)", velocity.Value * (Gust * coefficient + insideSign * Inside), Dimension.AreaLoad, seen,
            q, g, Worksheet.Code("C_p", "wind-coefficient", coefficient, Dimension.Number, seen), inside).Value.Si;
    }

    /// <summary>C_p on the roof: windward least and greatest, leeward (fig. 27.3-1), evenly between the printed slopes and heights.</summary>
    /// <param name="slope">Radians.</param>
    /// <param name="heightToLength">h/L.</param>
    public static (double WindwardLeast, double WindwardMost, double Leeward) RoofCoefficients(double slope, double heightToLength)
    {
        var degrees = slope * 180 / Math.PI;
        double[] ratios = [0.25, 0.5, 1];
        var r = Math.Clamp(heightToLength, 0.25, 1);
        var k = r < 0.5 ? 0 : 1;
        var share = (r - ratios[k]) / (ratios[k + 1] - ratios[k]);
        return (Between(Least, 0.0), Between(Most, 0.01 * degrees), Between(Lee, -0.6));

        double Between(double[][] table, double beyond) =>
            (1 - share) * At(table[k], degrees, beyond) + share * At(table[k + 1], degrees, beyond);
    }

    // Slopes of the columns; under 10 degrees the edge strip of a flat roof counts for the windward half, beyond 60 C_p = 0.01 theta.
    private static readonly double[] Slopes = [0, 10, 15, 20, 25, 30, 35, 45, 60];

    private static readonly double[][] Least =
    [
        [-0.9, -0.7, -0.5, -0.3, -0.2, -0.2, 0.0, 0.0, 0.0],
        [-0.9, -0.9, -0.7, -0.4, -0.3, -0.2, -0.2, 0.0, 0.0],
        [-1.3, -1.3, -1.0, -0.7, -0.5, -0.3, -0.2, 0.0, 0.0],
    ];

    private static readonly double[][] Most =
    [
        [-0.18, -0.18, 0.0, 0.2, 0.3, 0.3, 0.4, 0.4, 0.6],
        [-0.18, -0.18, -0.18, 0.0, 0.2, 0.2, 0.3, 0.4, 0.6],
        [-0.18, -0.18, -0.18, -0.18, 0.0, 0.2, 0.2, 0.3, 0.6],
    ];

    private static readonly double[][] Lee =
    [
        [-0.5, -0.3, -0.5, -0.6, -0.6, -0.6, -0.6, -0.6, -0.6],
        [-0.5, -0.5, -0.5, -0.6, -0.6, -0.6, -0.6, -0.6, -0.6],
        [-0.7, -0.7, -0.6, -0.6, -0.6, -0.6, -0.6, -0.6, -0.6],
    ];

    private static double At(double[] row, double degrees, double beyond)
    {
        if (degrees >= 60)
        {
            return beyond;
        }

        var d = Math.Max(degrees, 0);
        var j = 0;
        while (Slopes[j + 1] <= d)
        {
            j++;
        }

        // Flat-roof strips do not shade into the pitched values: up to 10 degrees the first column holds.
        return j == 0 ? row[0] : row[j] + (row[j + 1] - row[j]) * (d - Slopes[j]) / (Slopes[j + 1] - Slopes[j]);
    }
}
