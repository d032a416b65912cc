using Clomwright.Geometry.Solids;

namespace Clomwright.Geometry;

/// <summary>A parallel projection: the viewer stands far off at a bearing and looks level or down, square to the sheet.</summary>
/// <param name="Toward">Unit vector in plan from the house to the viewer.</param>
/// <param name="Rise">How far above level the viewer stands, radians: 0 is an elevation; arctan(1/√2) from a corner draws equal lengths east, north and up equal (the isometric of ISO 5456-3).</param>
/// <param name="Origin">Where the drawing has its zero, on the finished floor.</param>
public readonly record struct Projection(PlanPoint Toward, double Rise, PlanPoint Origin)
{
    /// <summary>Rise at which the three axes of a cube, seen over its corner, are shortened alike: arctan(1/√2), about 35.3 degrees.</summary>
    public static double Isometric { get; } = Math.Atan(1 / Math.Sqrt(2));

    /// <summary>From a bearing of the viewer, radians clockwise from north.</summary>
    public static Projection From(double bearing, double rise, PlanPoint origin) => new(new PlanPoint(Math.Sin(bearing), Math.Cos(bearing)), rise, origin);

    /// <summary>Unit vector in plan to the viewer's right.</summary>
    public PlanPoint Right => new(-Toward.North, Toward.East);

    /// <summary>A point in space as it is drawn, m; level with the viewer the height is that over the finished floor.</summary>
    public SeenPoint Project(SpacePoint point)
    {
        var away = point.Plan - Origin;
        return new(away.Dot(Right), point.Up * Math.Cos(Rise) - away.Dot(Toward) * Math.Sin(Rise));
    }

    /// <summary>How near a point is to the viewer, m along the line of sight from the origin.</summary>
    public double Nearness(SpacePoint point) => (point.Plan - Origin).Dot(Toward) * Math.Cos(Rise) + point.Up * Math.Sin(Rise);
}
