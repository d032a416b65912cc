using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Papers.Views;

/// <summary>Tips of poles that meet over a post: each is cut to a point by the lines halfway to its two neighbours, so that all share the post's top, as its load is reckoned.</summary>
internal static class PostTips
{
    /// <summary>Angles in plan between a pole's line and the two cuts of its tip, seen from the eave, radians.</summary>
    /// <param name="poles">Clockwise.</param>
    /// <param name="index">Which of them.</param>
    public static (double Left, double Right) Cuts(Sequence<PoleGeometry> poles, int index) => (poles[index].CrossingAngle / 2, poles[(index + poles.Count - 1) % poles.Count].CrossingAngle / 2);

    /// <summary>A pole's edge in plan from its eave end to the point of its tip, in its own thickness and taper.</summary>
    public static PlanPoint[] Outline(Sequence<PoleGeometry> poles, int index)
    {
        var pole = poles[index];
        var aside = new PlanPoint(-pole.Along.North, pole.Along.East);
        var (left, right) = Cuts(poles, index);
        return [Edge(-pole.EaveReach, 1), Shoulder(left, 1), pole.Foot + pole.Far * pole.Along, Shoulder(right, -1), Edge(-pole.EaveReach, -1)];

        PlanPoint Edge(double along, double side) => pole.Foot + along * pole.Along + side * pole.DiameterAt(along) / 2 * aside;

        // Where a cut leaves the pole's side; one that stands square to it or past that takes nothing of the side.
        PlanPoint Shoulder(double angle, double side) => Edge(pole.Far - (angle < Math.PI / 2 ? Math.Min(pole.Far, pole.DiameterAt(pole.Far) / 2 / Math.Tan(angle)) : 0), side);
    }
}
