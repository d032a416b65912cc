using Clomwright.Analysis.Weather;
using Clomwright.Evidence;
using Clomwright.Numerics.Diffusion;

namespace Clomwright.Analysis.Drying;

/// <summary>A test block weighed while it dries by its two large faces, the others sealed.</summary>
/// <param name="Thickness">Between the open faces, m.</param>
/// <param name="FaceArea">Of one open face, m2.</param>
/// <param name="DryMass">Once dry, kg.</param>
/// <param name="AirTemperature">C.</param>
/// <param name="AirHumidity">0 to 1.</param>
/// <param name="Weighings">Days since the first one and mass, kg; the first on day 0.</param>
/// <param name="ScaleError">Standard error of one weighing, kg.</param>
public sealed record TestBlock(double Thickness, double FaceArea, double DryMass, double AirTemperature, double AirHumidity, Sequence<(double Day, double Mass)> Weighings, double ScaleError);

/// <summary>What a block tells: the earth's own diffusivity and how fast its air takes vapour, each with its standard error.</summary>
/// <param name="Diffusivity">D_full, m2/s.</param>
/// <param name="DiffusivityError">Standard error of its natural logarithm: the value is known within a factor exp of it.</param>
/// <param name="Convection">h_c at the block, W/(m2 K).</param>
/// <param name="ConvectionError">Standard error of its natural logarithm.</param>
/// <param name="Residual">Root mean square of what is left unexplained, kg.</param>
public sealed record BlockFit(double Diffusivity, double DiffusivityError, double Convection, double ConvectionError, double Residual)
{
    /// <summary>How far off the diffusivity may be, as a share: exp of its error, less 1.</summary>
    public double DiffusivitySpread => Math.Exp(DiffusivityError) - 1;

    /// <summary>In 1e-8 m2/s, as papers and pages print it.</summary>
    public double DiffusivityPrinted => 1e8 * Diffusivity;

    /// <summary>Put in place of the assumption.</summary>
    public Building.AssumedNumber Known => new("drying-diffusivity", Diffusivity);
}

/// <summary>Finds diffusivity and convection by least squares on the masses: Gauss and Newton in the logarithms, held back by Marquardt's term.</summary>
public static class BlockCalibration
{
    private const double Day = 86_400;
    private const double Radiative = 4.9;
    private const double Nudge = 0.02;
    private const int RoundsMost = 40;

    /// <summary>The fit; or why there is none.</summary>
    /// <param name="block">The block.</param>
    /// <param name="earth">Everything else about the earth; its density is taken from the block.</param>
    public static Known<BlockFit> Of(TestBlock block, Earth earth)
    {
        ArgumentNullException.ThrowIfNull(block);
        ArgumentNullException.ThrowIfNull(earth);
        if (block.Weighings.Count < 4)
        {
            return new Message("analysis.drying.block-few");
        }

        var own = earth with { DryDensity = block.DryMass / (block.Thickness * block.FaceArea) };
        var start = (block.Weighings[0].Mass - block.DryMass) / block.DryMass;
        if (!(own.DryDensity is > 600 and < 2400) || !(start > own.AtRest(block.AirHumidity)) || start > own.Full)
        {
            return new Message("analysis.drying.block-odd");
        }

        double[] x = [Math.Log(own.DiffusivityFull), Math.Log(6)];
        var residuals = Residuals(block, own, start, x);
        var (sum, damping) = (Square(residuals), 1e-3);
        double[] normal = [];
        for (var round = 0; round < RoundsMost && damping < 1e8; round++)
        {
            var (a, b) = (Difference(block, own, start, x, 0, residuals), Difference(block, own, start, x, 1, residuals));
            normal = [Dot(a, a), Dot(a, b), Dot(b, b)];
            var (right0, right1) = (-Dot(a, residuals), -Dot(b, residuals));
            var (n0, n2) = (normal[0] * (1 + damping), normal[2] * (1 + damping));
            var determinant = n0 * n2 - normal[1] * normal[1];
            double[] next =
            [
                Math.Clamp(x[0] + (right0 * n2 - right1 * normal[1]) / determinant, Math.Log(1e-11), Math.Log(1e-5)),
                Math.Clamp(x[1] + (right1 * n0 - right0 * normal[1]) / determinant, Math.Log(0.2), Math.Log(100)),
            ];
            var tried = Residuals(block, own, start, next);
            if (Square(tried) < sum)
            {
                var gain = sum - Square(tried);
                (x, residuals, sum, damping) = (next, tried, Square(tried), damping / 5);
                if (gain < 1e-9 * sum + 1e-12)
                {
                    break;
                }
            }
            else
            {
                damping *= 5;
            }
        }

        // Residuals are in standard errors of the scale; a misfit larger than the scale's own widens the errors.
        var scatter = Math.Max(1, sum / (residuals.Length - 2));
        var det = normal[0] * normal[2] - normal[1] * normal[1];
        return det <= 1e-9 * normal[0] * normal[2]
            ? new Message("analysis.drying.block-blind")
            : new BlockFit(
                Math.Exp(x[0]), Math.Sqrt(scatter * normal[2] / det), Math.Exp(x[1]), Math.Sqrt(scatter * normal[0] / det), Math.Sqrt(sum / residuals.Length) * block.ScaleError);
    }

    /// <summary>Mass of the block at each weighing after the first, kg.</summary>
    public static double[] Masses(TestBlock block, Earth earth, double startWater, double convection)
    {
        ArgumentNullException.ThrowIfNull(block);
        ArgumentNullException.ThrowIfNull(earth);
        var strip = new DiffusionStrip(earth.Medium(), StripGrid.Slab(StripGrid.Graded(24, 1.5), block.Thickness)) { Tolerance = 0.02 };
        strip.Place(1, startWater * earth.DryDensity);
        var air = WetSurface.Surface(block.AirTemperature, block.AirHumidity * Psychrometrics.Saturation(block.AirTemperature), convection, 0, Radiative);
        var room = new Steady(new Condition(
            Earth.Fluidity(block.AirTemperature), earth.VapourPermeability(block.AirTemperature) * Psychrometrics.Saturation(block.AirTemperature), air, air));
        var masses = new double[block.Weighings.Count - 1];
        for (var i = 0; i < masses.Length; i++)
        {
            strip.Advance(block.Weighings[i].Day * Day, block.Weighings[i + 1].Day * Day, room);
            masses[i] = block.DryMass + strip.Held * block.FaceArea;
        }

        return masses;
    }

    private static double[] Residuals(TestBlock block, Earth earth, double start, double[] x)
    {
        var masses = Masses(block, earth with { DiffusivityFull = Math.Exp(x[0]) }, start, Math.Exp(x[1]));
        for (var i = 0; i < masses.Length; i++)
        {
            masses[i] = (masses[i] - block.Weighings[i + 1].Mass) / block.ScaleError;
        }

        return masses;
    }

    private static double[] Difference(TestBlock block, Earth earth, double start, double[] x, int which, double[] at)
    {
        double[] moved = [.. x];
        moved[which] += Nudge;
        var there = Residuals(block, earth, start, moved);
        return [.. there.Zip(at, (a, b) => (a - b) / Nudge)];
    }

    private static double Dot(double[] a, double[] b) => a.Zip(b, (x, y) => x * y).Sum();

    private static double Square(double[] a) => Dot(a, a);
}
