using Clomwright.Geometry;

namespace Clomwright.Web.Scenes;

/// <summary>The plan as a small key.</summary>
internal static class PlanKeys
{
    private const int Around = 180;
    private const int Across = 6;

    public static PlanKey Of(HouseGeometry geometry)
    {
        var (curve, wall) = (geometry.Curve, geometry.Wall);
        var outside = wall.OutsideOffset(wall.Base.Metres);
        return new PlanKey
        {
            Inside = Ring(curve, 0),
            Outside = Ring(curve, outside),
            Zero = [Point(curve.At(0, -0.12)), Point(curve.At(0, outside + 0.12))],
            Openings = [.. geometry.Openings.Select(opening => new PlanOpening(opening.Opening.Name, Gap(curve, opening, outside)))],
            Landings = [.. geometry.Landings.Select(landing => new PlanLanding(Point(landing.Point), landing.Secondary))],
        };
    }

    private static double[][] Ring(PlanCurve curve, double offset) =>
        [.. Enumerable.Range(0, Around).Select(i => Point(curve.At(curve.Length * i / Around, offset)))];

    private static double[][] Gap(PlanCurve curve, OpeningPlace opening, double outside) =>
    [
        .. Enumerable.Range(0, Across + 1).Select(i => Point(curve.At(Between(opening.Inside, i)))),
        .. Enumerable.Range(0, Across + 1).Select(i => Point(curve.At(Between(opening.Outside, Across - i), outside))),
    ];

    private static double Between(Span span, int i) => span.From + (span.To - span.From) * i / Across;

    private static double[] Point(PlanPoint point) => Pen.Point(point.East, point.North);
}
