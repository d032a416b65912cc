namespace Clomwright.Numerics;

/// <summary>Zeros of a function of one variable.</summary>
public static class Roots
{
    /// <summary>A zero between two places where the function has opposite signs, by Newton's method kept inside the bracket by halving.</summary>
    /// <param name="function">Returns the value and the slope.</param>
    /// <param name="from">One end of the bracket.</param>
    /// <param name="to">The other end.</param>
    /// <param name="start">Where to begin; brought into the bracket.</param>
    /// <param name="tolerance">Absolute, on the place.</param>
    /// <returns>The place, or NaN when the ends do not have opposite signs or a value is not a number.</returns>
    public static double Newton(Func<double, (double Value, double Slope)> function, double from, double to, double start, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(function);
        var (low, high) = from <= to ? (from, to) : (to, from);
        var atLow = function(low).Value;
        var atHigh = function(high).Value;
        if (atLow == 0)
        {
            return low;
        }

        if (atHigh == 0)
        {
            return high;
        }

        if (!(atLow < 0 != atHigh < 0) || double.IsNaN(atLow) || double.IsNaN(atHigh))
        {
            return double.NaN;
        }

        var rising = atHigh > 0;
        var x = Math.Clamp(start, low, high);
        for (var round = 0; round < 200; round++)
        {
            var (value, slope) = function(x);
            if (value == 0)
            {
                return x;
            }

            if (value > 0 == rising)
            {
                high = x;
            }
            else
            {
                low = x;
            }

            var next = x - value / slope;
            if (!(next > low && next < high))
            {
                next = low + (high - low) / 2;
            }

            if (Math.Abs(next - x) <= tolerance || high - low <= tolerance)
            {
                return next;
            }

            x = next;
        }

        return x;
    }

    /// <summary>A zero between two places where the function has opposite signs, by inverse quadratic steps kept inside the bracket by halving.</summary>
    /// <remarks>R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4 (from memory).</remarks>
    /// <returns>The place, or NaN when the ends do not have opposite signs or a value is not a number.</returns>
    public static double Bracketed(Func<double, double> function, double from, double to, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(function);
        double a = from, b = to, fa = function(a), fb = function(b);
        if (fa == 0)
        {
            return a;
        }

        if (fb == 0)
        {
            return b;
        }

        if (!(fa < 0 != fb < 0) || double.IsNaN(fa) || double.IsNaN(fb))
        {
            return double.NaN;
        }

        double c = a, fc = fa, step = b - a, last = step;
        for (var round = 0; round < 200; round++)
        {
            if (fb > 0 == fc > 0)
            {
                (c, fc) = (a, fa);
                step = last = b - a;
            }

            if (Math.Abs(fc) < Math.Abs(fb))
            {
                (a, b, c) = (b, c, b);
                (fa, fb, fc) = (fb, fc, fb);
            }

            var within = 2 * double.Epsilon + 2.2e-16 * Math.Abs(b) + tolerance / 2;
            var half = (c - b) / 2;
            if (Math.Abs(half) <= within || fb == 0)
            {
                return b;
            }

            (step, last) = Step(a, b, c, fa, fb, fc, half, within, step, last);
            (a, fa) = (b, fb);
            b += Math.Abs(step) > within ? step : Math.CopySign(within, half);
            fb = function(b);
        }

        return b;
    }

    private static (double Step, double Last) Step(double a, double b, double c, double fa, double fb, double fc, double half, double within, double step, double last)
    {
        if (Math.Abs(last) < within || Math.Abs(fa) <= Math.Abs(fb))
        {
            return (half, half);
        }

        double p, q;
        var s = fb / fa;
        if (a == c)
        {
            p = 2 * half * s;
            q = 1 - s;
        }
        else
        {
            var r = fb / fc;
            q = fa / fc;
            p = s * (2 * half * q * (q - r) - (b - a) * (r - 1));
            q = (q - 1) * (r - 1) * (s - 1);
        }

        q = p > 0 ? -q : q;
        p = Math.Abs(p);
        return 2 * p < Math.Min(3 * half * q - Math.Abs(within * q), Math.Abs(last * q)) ? (p / q, step) : (half, half);
    }
}
