using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>A reciprocal frame as it is laid out: where each pole lands and the circle its centreline touches in plan.</summary>
/// <param name="Centre">Of the circle.</param>
/// <param name="RingRadius">r_t: of the circle that the pole centrelines touch in plan, m.</param>
/// <param name="Turn">Clockwise when each pole rests on its clockwise neighbour.</param>
/// <param name="Poles">Clockwise seen from above; at least three.</param>
public sealed record ReciprocalPlan(PlanPoint Centre, double RingRadius, Turn Turn, Sequence<PoleOnPlan> Poles)
{
    /// <summary>Equal poles on a circle, the first due north: the case of the closed forms.</summary>
    /// <param name="count">n.</param>
    /// <param name="plateRadius">R_w, m.</param>
    /// <param name="eaveRadius">R_e, m.</param>
    /// <param name="ringRadius">r_t, m.</param>
    /// <param name="diameter">Of the poles, m.</param>
    /// <param name="notch">Depth cut from each pole at each crossing, m.</param>
    /// <param name="turn">Which neighbour each pole rests on.</param>
    public static ReciprocalPlan Uniform(
        int count, double plateRadius, double eaveRadius, double ringRadius, double diameter, double notch = 0, Turn turn = Turn.Clockwise)
    {
        var reach = Math.Sqrt(eaveRadius * eaveRadius - ringRadius * ringRadius) - Math.Sqrt(plateRadius * plateRadius - ringRadius * ringRadius);
        var poles = new PoleOnPlan[Math.Max(count, 0)];
        for (var i = 0; i < poles.Length; i++)
        {
            var bearing = 2 * Math.PI * i / count;
            var foot = new PlanPoint(plateRadius * Math.Sin(bearing), plateRadius * Math.Cos(bearing));
            poles[i] = new PoleOnPlan(foot, reach, diameter, diameter, notch);
        }

        return new ReciprocalPlan(default, ringRadius, turn, Sequence.Create<PoleOnPlan>(poles));
    }
}

/// <summary>One pole as it is laid out. Lengths in m, in plan.</summary>
/// <param name="Foot">Where its axis crosses the bearing line on the wall plate.</param>
/// <param name="EaveReach">From the foot outward along the pole to its eave end.</param>
/// <param name="Butt">Diameter at the eave end.</param>
/// <param name="Tip">Diameter at the inner end.</param>
/// <param name="Notch">Depth cut from it at each of its two crossings.</param>
/// <param name="FootHeight">Height of its axis over the foot, against the common level of the plate axis.</param>
/// <param name="Tail">Past the far crossing to its inner end.</param>
public sealed record PoleOnPlan(PlanPoint Foot, double EaveReach, double Butt, double Tip, double Notch = 0, double FootHeight = 0, double Tail = 0);
