namespace Clomwright.Numerics.Diffusion;

/// <summary>Two potentials of a state u that together drive it: flux = -(a grad A(u) + b grad B(u)), with scales a and b that may change in time.</summary>
/// <remarks>
/// Both are given by their slopes, which must not be negative, on an even grid; a slope is taken as straight between grid points and its potential is the exact
/// integral of that, so value and slope belong together to the last bit. Outside the grid slopes stay as at its ends.
/// B also is what the surroundings feel of a surface (<see cref="Exchange"/>).
/// </remarks>
public sealed class Medium
{
    private const int Stride = 6;
    private readonly double from;
    private readonly double spacing;
    private readonly double perSpacing;
    private readonly int intervals;
    private readonly double[] table;

    /// <summary>A medium of two slopes.</summary>
    /// <param name="slopeA">dA/du; not negative.</param>
    /// <param name="slopeB">dB/du; not negative.</param>
    /// <param name="from">Start of the grid of u; both potentials are zero there, B plus <paramref name="valueB"/>.</param>
    /// <param name="to">End of the grid.</param>
    /// <param name="intervals">Intervals of the grid.</param>
    /// <param name="valueB">B at the start.</param>
    public Medium(Func<double, double> slopeA, Func<double, double> slopeB, double from, double to, int intervals, double valueB = 0)
    {
        ArgumentNullException.ThrowIfNull(slopeA);
        ArgumentNullException.ThrowIfNull(slopeB);
        ArgumentOutOfRangeException.ThrowIfLessThan(intervals, 1);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(to, from);
        (this.from, this.intervals) = (from, intervals);
        spacing = (to - from) / intervals;
        perSpacing = 1 / spacing;
        table = new double[(intervals + 1) * Stride];
        double a = 0, b = valueB;
        var (sa, sb) = (slopeA(from), slopeB(from));
        for (var i = 0; i <= intervals; i++)
        {
            var u = from + (i + 1) * spacing;
            var (na, nb) = i < intervals ? (slopeA(u), slopeB(u)) : (sa, sb);
            if (!(sa >= 0 && sb >= 0 && na >= 0 && nb >= 0))
            {
                throw new ArgumentOutOfRangeException(nameof(slopeA), "A slope is negative or no number: such a medium has no steady state.");
            }

            var row = table.AsSpan(i * Stride, Stride);
            (row[0], row[1], row[2], row[3], row[4], row[5]) = (a, sa, (na - sa) * perSpacing, b, sb, (nb - sb) * perSpacing);
            a += (sa + na) / 2 * spacing;
            b += (sb + nb) / 2 * spacing;
            (sa, sb) = (na, nb);
        }
    }

    /// <summary>For each grid point A, its slope, the slope's slope, and the same of B.</summary>
    internal ReadOnlySpan<double> Table => table;

    /// <summary>A linear medium: A = D u, B = u.</summary>
    public static Medium Linear(double diffusivity) => new(_ => diffusivity, _ => 1, 0, 1, 1);

    /// <summary>At a state: the potential aA + bB and its slope, and B with its slope.</summary>
    public void Evaluate(double u, double scaleA, double scaleB, out double potential, out double slope, out double b, out double slopeB)
    {
        var place = (u - from) * perSpacing;
        var i = place <= 0 ? 0 : place >= intervals ? intervals : (int)place;
        var d = u - (from + i * spacing);
        var row = table.AsSpan(i * Stride, Stride);
        // Below the grid the slope stays as at its start.
        var (ca, cb) = d < 0 ? (0, 0) : (row[2], row[5]);
        b = row[3] + d * (row[4] + d * cb / 2);
        slopeB = row[4] + d * cb;
        potential = scaleA * (row[0] + d * (row[1] + d * ca / 2)) + scaleB * b;
        slope = scaleA * (row[1] + d * ca) + scaleB * slopeB;
    }

    /// <summary>B at a state.</summary>
    public double B(double u)
    {
        Evaluate(u, 0, 1, out _, out _, out var b, out _);
        return b;
    }

    /// <summary>A at a state.</summary>
    public double A(double u)
    {
        Evaluate(u, 1, 0, out var a, out _, out _, out _);
        return a;
    }
}
