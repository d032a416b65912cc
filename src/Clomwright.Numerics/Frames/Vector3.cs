namespace Clomwright.Numerics.Frames;

/// <summary>A point, vector, force or moment in space in double precision: X east, Y north, Z up.</summary>
public readonly record struct Vector3(double X, double Y, double Z)
{
    /// <summary>No length.</summary>
    public static Vector3 Zero => default;

    /// <summary>Sum.</summary>
    public static Vector3 operator +(Vector3 a, Vector3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    public static Vector3 operator -(Vector3 a, Vector3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Opposite.</summary>
    public static Vector3 operator -(Vector3 a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>A multiple.</summary>
    public static Vector3 operator *(double k, Vector3 a) => new(k * a.X, k * a.Y, k * a.Z);

    /// <summary>Length.</summary>
    public double Norm => Math.Sqrt(Dot(this));

    /// <summary>The vector of length one in the same direction.</summary>
    public Vector3 Unit() => 1 / Norm * this;

    /// <summary>Scalar product.</summary>
    public double Dot(Vector3 b) => X * b.X + Y * b.Y + Z * b.Z;

    /// <summary>Vector product.</summary>
    public Vector3 Cross(Vector3 b) => new(Y * b.Z - Z * b.Y, Z * b.X - X * b.Z, X * b.Y - Y * b.X);
}
