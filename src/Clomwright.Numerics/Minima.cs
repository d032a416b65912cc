namespace Clomwright.Numerics;

/// <summary>Least values of a function of one variable.</summary>
public static class Minima
{
    /// <summary>The place of the least value of a function with one valley between two places, by golden section.</summary>
    /// <param name="function">The function.</param>
    /// <param name="from">Lower end.</param>
    /// <param name="to">Upper end.</param>
    /// <param name="tolerance">Absolute, on the place.</param>
    public static double Golden(Func<double, double> function, double from, double to, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(function);
        var ratio = (Math.Sqrt(5) - 1) / 2;
        var left = to - ratio * (to - from);
        var right = from + ratio * (to - from);
        var (atLeft, atRight) = (function(left), function(right));
        while (to - from > tolerance)
        {
            if (atLeft <= atRight)
            {
                (to, right, atRight) = (right, left, atLeft);
                left = to - ratio * (to - from);
                atLeft = function(left);
            }
            else
            {
                (from, left, atLeft) = (left, right, atRight);
                right = from + ratio * (to - from);
                atRight = function(right);
            }
        }

        return (from + to) / 2;
    }
}
