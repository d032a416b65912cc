using System.Numerics;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Comfort;

/// <summary>How a part passes on a swing of temperature of one period: ISO 13786 (its symbols), from memory. Complex numbers hold size and shift.</summary>
public sealed record DailyHeat
{
    /// <summary>A day, s.</summary>
    public const double Day = 86400;

    private DailyHeat(Complex z11, Complex z12, Complex z21, Complex z22, double unwrapped, double period, double transmittance) =>
        (Z11, Z12, Z21, Z22, Unwrapped, Period, this.transmittance) = (z11, z12, z21, z22, unwrapped, period, transmittance);

    private readonly double transmittance;

    /// <summary>First row of the matrix from inside to outside, films and all.</summary>
    public Complex Z11 { get; }

    /// <inheritdoc cref="Z11"/>
    public Complex Z12 { get; }

    /// <summary>Second row.</summary>
    public Complex Z21 { get; }

    /// <inheritdoc cref="Z21"/>
    public Complex Z22 { get; }

    /// <summary>Period, s.</summary>
    public double Period { get; }

    /// <summary>Angle by which the heat that comes through stays behind, rad, whole turns counted.</summary>
    public double Unwrapped { get; }

    /// <summary>Periodic transmittance: the swing of heat into the room for each kelvin of swing outside, W/(m2 K).</summary>
    public double Transmittance => Complex.Abs(1 / Z12);

    /// <summary>Decrement factor: that over the steady transmittance.</summary>
    public double Decrement => Transmittance / transmittance;

    /// <summary>Hours by which the room feels it later.</summary>
    public double LagHours => Unwrapped / (2 * Math.PI) * Period / 3600;

    /// <summary>Admittance of the inside face, W/(m2 K).</summary>
    public Complex InsideAdmittance => -Z11 / Z12;

    /// <summary>Admittance of the outside face, W/(m2 K).</summary>
    public Complex OutsideAdmittance => -Z22 / Z12;

    /// <summary>Heat that a square metre of the inside face takes up and gives back for each kelvin of swing in the room, J/(m2 K).</summary>
    public double InsideCapacity => Period / (2 * Math.PI) * Complex.Abs((Z11 - 1) / Z12);

    /// <summary>The same of the outside face, J/(m2 K).</summary>
    public double OutsideCapacity => Period / (2 * Math.PI) * Complex.Abs((Z22 - 1) / Z12);

    /// <summary>Of a build-up.</summary>
    /// <param name="part">Its layers.</param>
    /// <param name="period">s.</param>
    public static DailyHeat Of(BuildUp part, double period = Day)
    {
        ArgumentNullException.ThrowIfNull(part);
        var (a, b, c, d) = (Complex.One, -(Complex)part.Inside, Complex.Zero, Complex.One);
        var unwrapped = 0.0;
        foreach (var layer in part.Layers)
        {
            var depth = Math.Sqrt(layer.Conductivity * period / (Math.PI * layer.Density * layer.Capacity));
            var xi = layer.Depth / depth;
            unwrapped += xi;
            var (sin, cos) = Math.SinCos(xi);
            var (sinh, cosh) = (Math.Sinh(xi), Math.Cosh(xi));
            var same = new Complex(cosh * cos, sinh * sin);
            var cross = -depth / (2 * layer.Conductivity) * new Complex(sinh * cos + cosh * sin, cosh * sin - sinh * cos);
            var back = -layer.Conductivity / depth * new Complex(sinh * cos - cosh * sin, sinh * cos + cosh * sin);
            (a, b, c, d) = (same * a + cross * c, same * b + cross * d, back * a + same * c, back * b + same * d);
        }

        (a, b) = (a - part.Outside * c, b - part.Outside * d);
        // The angle of 1/Z12 is known up to whole turns: each layer turns it by about its own depth over the depth of the swing.
        var angle = (-1 / b).Phase;
        var lag = -angle;
        lag += 2 * Math.PI * Math.Round((unwrapped - lag) / (2 * Math.PI));
        return new(a, b, c, d, lag, period, part.Transmittance);
    }
}
