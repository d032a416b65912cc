using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The inside face of the wall at its base, seen from above.</summary>
public abstract record Plan
{
    private Plan()
    {
    }

    /// <summary>Direction of the long axis.</summary>
    public Angle Bearing { get; init; }

    /// <summary>Where the zero mark is: the bearing from the centre at which stations begin.</summary>
    public Angle ZeroBearing { get; init; }

    /// <summary>The peg that bearings are sighted from, east and north of the drawing origin; null takes the centroid of the area.</summary>
    public PlanPosition? Centre { get; init; }

    /// <summary>A circle.</summary>
    public sealed record Round(Length InsideDiameter) : Plan;

    /// <summary>An ellipse with its long axis along <see cref="Bearing"/>.</summary>
    public sealed record Oval(Length InsideLength, Length InsideWidth) : Plan;

    /// <summary>A rectangle with circular corners.</summary>
    public sealed record RoundedRectangle(Length InsideLength, Length InsideWidth, Length CornerRadius) : Plan;

    /// <summary>A smooth closed curve through points: the periodic C2 cubic spline over chord length, clockwise.</summary>
    public sealed record Path(Sequence<PlanPosition> Points) : Plan;
}

/// <summary>A place on the ground, east and north of the drawing origin.</summary>
public readonly record struct PlanPosition(Length East, Length North);
