using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>Finds how the poles of a reciprocal frame lie in space.</summary>
/// <remarks>
/// In plan each axis is a tangent of one circle, so its crossings lie r_t tan(omega/2) before and after the point where it touches.
/// Heights follow from closure, one equation a pole: <c>z_far(i) - z_near(i+1) = e_i</c>, where the vertical gap e_i of two axes that pass at
/// the least distance delta_i is <c>delta sqrt(sin2(omega) + t1^2 + t2^2 - 2 t1 t2 cos(omega)) / sin(omega)</c> with t the slopes.
/// e is convex in the slopes, so Newton's method from level poles climbs to the lowest solution. For equal poles on a circle it is the closed
/// form of <see cref="UniformReciprocal"/>. No circle is assumed for the plate, nor equal poles.
/// </remarks>
public static class ReciprocalFrame
{
    private const int MostIterations = 200;

    /// <summary>The frame in space, or why there is none.</summary>
    public static ReciprocalShape Of(ReciprocalPlan plan)
    {
        if (Refusal(plan) is { } because)
        {
            return new ReciprocalShape.Impossible(because);
        }

        var n = plan.Poles.Count;
        var clockwise = plan.Turn == Turn.Clockwise;
        var turn = clockwise ? 1.0 : -1.0;
        var r = plan.RingRadius;
        var given = new PoleOnPlan[n];
        var numbers = new int[n];
        var touch = new double[n];
        for (var k = 0; k < n; k++)
        {
            var i = clockwise ? k : n - 1 - k;
            numbers[k] = i + 1;
            given[k] = plan.Poles[i];
            var v = given[k].Foot - plan.Centre;
            touch[k] = Math.Atan2(v.East, v.North) + turn * Math.Acos(r / v.Norm);
        }

        var crossing = new double[n];
        for (var k = 0; k < n; k++)
        {
            var ahead = turn * (touch[(k + 1) % n] - touch[k]);
            crossing[k] = ahead - 2 * Math.PI * Math.Floor(ahead / (2 * Math.PI));
            if (crossing[k] is < 1e-6 or >= Math.PI)
            {
                return Impossible("analysis.reciprocal.order", ("pole", numbers[k]), ("next", numbers[(k + 1) % n]));
            }
        }

        if (Math.Abs(crossing.Sum() - 2 * Math.PI) > 1e-6)
        {
            return Impossible("analysis.reciprocal.winding");
        }

        var poles = new PoleGeometry[n];
        for (var k = 0; k < n; k++)
        {
            var distance = Math.Sqrt(Square((given[k].Foot - plan.Centre).Norm) - r * r);
            var before = crossing[(k + n - 1) % n];
            poles[k] = new PoleGeometry
            {
                Number = numbers[k],
                Foot = given[k].Foot,
                Along = new PlanPoint(turn * Math.Cos(touch[k]), -turn * Math.Sin(touch[k])),
                PlateRadius = (given[k].Foot - plan.Centre).Norm,
                FootHeight = given[k].FootHeight,
                TangentDistance = distance,
                Near = distance - r * Math.Tan(before / 2),
                Far = distance + r * Math.Tan(crossing[k] / 2),
                EaveReach = given[k].EaveReach,
                Tail = given[k].Tail,
                Butt = given[k].Butt,
                Tip = given[k].Tip,
                Notch = given[k].Notch,
                CrossingAngle = crossing[k],
                Slope = 0,
                Separation = 0,
                Rise = 0,
            };
            if (poles[k].Near <= 0)
            {
                return Impossible("analysis.reciprocal.crossing-outside", ("pole", numbers[k]), ("ring", Amount.Metres(r)));
            }
        }

        return Raise(plan, poles);
    }

    private static ReciprocalShape Raise(ReciprocalPlan plan, PoleGeometry[] poles)
    {
        var n = poles.Length;
        var delta = new double[n];
        for (var i = 0; i < n; i++)
        {
            var next = poles[(i + 1) % n];
            delta[i] = (poles[i].DiameterAt(poles[i].Far) + next.DiameterAt(next.Near)) / 2 - poles[i].Notch - next.Notch;
            if (delta[i] <= 0)
            {
                return Impossible("analysis.reciprocal.notch", ("pole", poles[i].Number), ("next", next.Number));
            }
        }

        var slopes = CrossingHeights.Solve(poles, delta, MostIterations);
        if (slopes is null)
        {
            var least = Enumerable.Range(0, n).Max(i => delta[i] / (2 * Math.Sin(poles[i].CrossingAngle / 2)));
            return Impossible(
                "analysis.reciprocal.too-tight", ("ring", Amount.Metres(plan.RingRadius)), ("poles", n), ("separation", Amount.Metres(delta.Max())), ("least", Amount.Metres(least)));
        }

        for (var i = 0; i < n; i++)
        {
            if (slopes[i] <= 0)
            {
                return Impossible("analysis.reciprocal.falls-inward", ("pole", poles[i].Number));
            }
        }

        return new ReciprocalShape.Frame(new ReciprocalGeometry(plan.Centre, plan.RingRadius, plan.Turn, poles.Select((p, i) => p with
        {
            Slope = slopes[i],
            Separation = delta[i],
            Rise = CrossingHeights.Rise(delta[i], slopes[i], slopes[(i + 1) % n], p.CrossingAngle),
        }).ToSequence()));
    }

    private static Message? Refusal(ReciprocalPlan plan)
    {
        if (plan.Poles.Count < 3)
        {
            return Message.Of("analysis.reciprocal.too-few", ("poles", plan.Poles.Count));
        }

        if (!(plan.RingRadius > 0) || !double.IsFinite(plan.RingRadius))
        {
            return new Message("analysis.reciprocal.no-ring");
        }

        for (var i = 0; i < plan.Poles.Count; i++)
        {
            var p = plan.Poles[i];
            var plate = (p.Foot - plan.Centre).Norm;
            if (!double.IsFinite(plate) || plate <= plan.RingRadius)
            {
                return Message.Of("analysis.reciprocal.ring-past-plate", ("pole", i + 1), ("ring", Amount.Metres(plan.RingRadius)), ("plate", Amount.Metres(plate)));
            }

            if (!(p.Butt > 0 && p.Tip > 0 && p.Notch >= 0 && p.EaveReach >= 0 && p.Tail >= 0 && double.IsFinite(p.Butt + p.Tip + p.Notch + p.EaveReach + p.Tail + p.FootHeight)))
            {
                return Message.Of("analysis.reciprocal.bad-pole", ("pole", i + 1));
            }
        }

        return null;
    }

    private static ReciprocalShape.Impossible Impossible(string key, params ReadOnlySpan<(string, Argument)> arguments) => new(Message.Of(key, arguments));

    private static double Square(double x) => x * x;
}
