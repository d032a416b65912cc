using Clomwright.Geometry;

namespace Clomwright.Web.Scenes;

/// <summary>The plan as a small key.</summary>
internal static class PlanKeys
{
    private const int Around = 180;
    private const int Across = 6;

    /// <param name="geometry">Of the house.</param>
    /// <param name="made">Parts as they were made last; null where nothing is remembered.</param>
    public static PlanKey Of(HouseGeometry geometry, SceneMemory? made = null)
    {
        made ??= new SceneMemory();
        var (curve, wall) = (geometry.Curve, geometry.Wall);
        var outside = wall.OutsideOffset(wall.Base.Metres);
        return new PlanKey
        {
            Inside = made.Keep(null, "ring-inside", curve, () => Ring(curve, 0)),
            Outside = made.Keep(null, "ring-outside", (curve, wall), () => Ring(curve, outside)),
            Zero = made.Keep<double[][]>(null, "zero", (curve, wall), () => [Point(curve.At(0, -0.12)), Point(curve.At(0, outside + 0.12))]),
            Openings = [.. geometry.Openings.Select(o => made.Keep(null, "gap", (curve, wall, o), () => new PlanOpening(o.Opening.Name, Gap(curve, o, outside)), o.Opening.Name))],
            Landings = made.Keep<IReadOnlyList<PlanLanding>>(null, "landings", geometry.Landings, () => [.. geometry.Landings.Select(landing => new PlanLanding(Point(landing.Point), landing.Secondary))]),
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
