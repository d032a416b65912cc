namespace Clomwright.Numerics.Frames;

/// <summary>A force with a moment (N, N m), or a displacement with a turn (m, radians).</summary>
public readonly record struct Wrench(Vector3 Force, Vector3 Moment)
{
    /// <summary>A force through the point itself.</summary>
    public static Wrench Through(Vector3 force) => new(force, Vector3.Zero);

    /// <summary>A force that acts at a point some way (m) from the point of the moment.</summary>
    public static Wrench At(Vector3 arm, Vector3 force) => new(force, arm.Cross(force));

    /// <summary>Sum, about the same point.</summary>
    public static Wrench operator +(Wrench a, Wrench b) => new(a.Force + b.Force, a.Moment + b.Moment);

    /// <summary>A multiple.</summary>
    public static Wrench operator *(double k, Wrench a) => new(k * a.Force, k * a.Moment);
}
