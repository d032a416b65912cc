using Clomwright.Building;
using Clomwright.Geometry;

namespace Clomwright.Rules;

/// <summary>The corners of a plan that has any: a rounded rectangle has four.</summary>
internal static class Corners
{
    /// <summary>Stations of the middles of the corners; none for a plan without corners.</summary>
    public static IReadOnlyList<double> Of(HouseGeometry house)
    {
        if (house.House.Plan is not Plan.RoundedRectangle plan)
        {
            return [];
        }

        var (halfLength, halfWidth, radius) = (plan.InsideLength.Metres / 2, plan.InsideWidth.Metres / 2, plan.CornerRadius.Metres);
        var reach = radius * (1 - Math.Sqrt(0.5));
        var axis = plan.Bearing.Radians;
        var along = new PlanPoint(Math.Sin(axis), Math.Cos(axis));
        var across = new PlanPoint(along.North, -along.East);
        var middle = 0.5 * (house.Curve.At(0) + house.Curve.At(house.Curve.Length / 2));
        return
        [
            .. from a in new[] { 1.0, -1.0 }
               from b in new[] { 1.0, -1.0 }
               select Nearest(house.Curve, middle + a * (halfLength - reach) * along + b * (halfWidth - reach) * across),
        ];
    }

    private static double Nearest(PlanCurve curve, PlanPoint point) =>
        curve.StationsAt(curve.BearingOf(point)).MinBy(station => (curve.At(station) - point).Norm);
}
