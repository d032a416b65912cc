using Clomwright.Numerics;

namespace Clomwright.Geometry.Curves;

/// <summary>A short stretch of a parametric loop.</summary>
/// <param name="Piece">The analytic piece it lies in.</param>
/// <param name="From">Parameter at its start.</param>
/// <param name="To">Parameter at its end.</param>
/// <param name="Start">Arc length at its start.</param>
/// <param name="Length">Its arc length.</param>
/// <param name="SpeedFrom">Length of the derivative at its start.</param>
/// <param name="SpeedTo">Length of the derivative at its end.</param>
/// <param name="Tangent">Unit tangent at its start.</param>
/// <param name="Heading">Angle turned from the start of the loop to its start.</param>
internal readonly record struct Panel(int Piece, double From, double To, double Start, double Length, double SpeedFrom, double SpeedTo, PlanPoint Tangent, double Heading)
{
    /// <summary>The parameter at an arc length within the panel.</summary>
    public double ParameterAt(ParametricLoop loop, double arc)
    {
        var wanted = arc - Start;
        var parameter = Guess(wanted / Length);
        for (var round = 0; round < 20; round++)
        {
            var miss = wanted - ArcTo(loop, parameter);
            if (Math.Abs(miss) <= 1e-15 * (Start + Length))
            {
                break;
            }

            var step = miss / loop.Speed(Piece, parameter);
            parameter = Math.Clamp(parameter + step, From, To);
            if (Math.Abs(step) <= 1e-8 * (To - From))
            {
                // Newton's step has squared this already small error away.
                break;
            }
        }

        return parameter;
    }

    private double ArcTo(ParametricLoop loop, double parameter)
    {
        var rule = GaussRule.Eight;
        var half = (parameter - From) / 2;
        var sum = 0.0;
        for (var k = 0; k < 8; k++)
        {
            sum += rule.Weights[k] * loop.Speed(Piece, From + half * (1 + rule.Nodes[k]));
        }

        return half * sum;
    }

    /// <summary>Cubic through both ends with the slopes of parameter over arc there.</summary>
    private double Guess(double share)
    {
        var x = Math.Clamp(share, 0, 1);
        var width = To - From;
        var slopeFrom = Length / SpeedFrom;
        var slopeTo = Length / SpeedTo;
        var back = 1 - x;
        var value = width * x * x * (3 - 2 * x) + slopeFrom * x * back * back - slopeTo * x * x * back;
        return double.IsFinite(value) ? Math.Clamp(From + value, From, To) : From + x * width;
    }
}
