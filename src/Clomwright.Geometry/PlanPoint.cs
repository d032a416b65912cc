namespace Clomwright.Geometry;

/// <summary>A point or vector on the ground: metres east and north of the drawing origin.</summary>
public readonly record struct PlanPoint(double East, double North)
{
    /// <summary>Points round a circle, clockwise from north, evenly apart.</summary>
    /// <param name="centre">Its centre.</param>
    /// <param name="radius">m.</param>
    /// <param name="count">How many.</param>
    public static IEnumerable<PlanPoint> Circle(PlanPoint centre, double radius, int count) =>
        Enumerable.Range(0, count).Select(i => Math.SinCos(2 * Math.PI * i / count)).Select(a => centre + radius * new PlanPoint(a.Sin, a.Cos));

    /// <summary>Sum.</summary>
    public static PlanPoint operator +(PlanPoint a, PlanPoint b) => new(a.East + b.East, a.North + b.North);

    /// <summary>Difference.</summary>
    public static PlanPoint operator -(PlanPoint a, PlanPoint b) => new(a.East - b.East, a.North - b.North);

    /// <summary>A multiple.</summary>
    public static PlanPoint operator *(double k, PlanPoint a) => new(k * a.East, k * a.North);

    /// <summary>Scalar product.</summary>
    public double Dot(PlanPoint other) => East * other.East + North * other.North;

    /// <summary>Component of the vector product that points up; positive when <paramref name="other"/> is anticlockwise of this.</summary>
    public double Cross(PlanPoint other) => East * other.North - North * other.East;

    /// <summary>Length of the vector, m.</summary>
    public double Norm => Math.Sqrt(East * East + North * North);
}

/// <summary>A place on the unrolled wall: metres along the inside face at the wall base from the zero mark, clockwise, and metres above the finished floor.</summary>
public readonly record struct WallPoint(double Along, double Up);

/// <summary>A stretch of wall between two stations, clockwise, m. <see cref="To"/> may exceed the ring's length where it passes the zero mark.</summary>
public readonly record struct Span(double From, double To)
{
    /// <summary>Length along the inside face at the base, m.</summary>
    public double Width => To - From;

    /// <summary>Station of the middle, m; may exceed the ring's length.</summary>
    public double Middle => (From + To) / 2;
}
