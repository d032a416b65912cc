using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>An opening as a shaft for light: u along the wall (clockwise), w outward along the normal at its middle, both from the inside curve, m.</summary>
public sealed record LightShaft
{
    private readonly Shaft shaft;
    private readonly Outline outline;

    private LightShaft(Shaft shaft, Outline outline) => (this.shaft, this.outline) = (shaft, outline);

    /// <summary>The glass: the middle of the frame, w.</summary>
    public required double Glass { get; init; }

    /// <summary>The inside face at the middle of its height, w.</summary>
    public required double Inside { get; init; }

    /// <summary>The outside face there, w.</summary>
    public required double Outside { get; init; }

    /// <summary>Azimuth that it faces, rad clockwise from north.</summary>
    public required double Facing { get; init; }

    /// <summary>Rough sill, m.</summary>
    public double Sill => outline.Sill;

    /// <summary>Rough head at the crown, m.</summary>
    public double Head => outline.Head;

    /// <summary>Half of its width at a depth w.</summary>
    public double HalfWidth(double w) => shaft.HalfWidthAt(w);

    /// <summary>Heights between which it is open at a share of its half width, -1 to 1; equal ones where it is not.</summary>
    public (double Low, double High) HeightsAt(double share) => Math.Abs(share) > 1 ? (Sill, Sill) : outline.HeightsAt(Math.Abs(share));

    /// <summary>Area of the hole square on at a depth w, m2.</summary>
    public double Area(double w)
    {
        const int steps = 64;
        var sum = 0.0;
        for (var i = 0; i < steps; i++)
        {
            var (low, high) = HeightsAt((i + 0.5) / steps);
            sum += high - low;
        }

        return 2 * HalfWidth(w) * sum / steps;
    }

    /// <summary>A point in plan.</summary>
    public PlanPoint Plan(double u, double w) => shaft.Plan(u, w);

    /// <summary>The shaft of an opening in its place.</summary>
    public static LightShaft Of(HouseGeometry geometry, OpeningPlace place)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(place);
        var remarks = new Remarks();
        var outline = OpeningPlaces.OutlineOf(place.Opening, "", remarks);
        var frame = new WallFrame(geometry.House, geometry.Curve, geometry.Wall, [geometry.Wall.Base]);
        var shaft = OpeningPlaces.ShaftOf(frame, place.Opening, outline, place.Station, "", remarks);
        var middle = (outline.Sill + outline.Head) / 2;
        var facing = Math.Atan2(place.Normal.East, place.Normal.North);
        return new LightShaft(shaft, outline)
        {
            Glass = (shaft.FrameInside + shaft.FrameOutside) / 2, Inside = geometry.Wall.InsideOffset(middle), Outside = geometry.Wall.OutsideOffset(middle),
            Facing = facing < 0 ? facing + 2 * Math.PI : facing,
        };
    }
}
