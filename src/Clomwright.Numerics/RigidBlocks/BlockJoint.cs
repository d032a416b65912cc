using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.RigidBlocks;

/// <summary>What a joint bears besides pressing.</summary>
/// <param name="Friction">Coefficient of friction, above 0.</param>
/// <param name="TensionPa">Tension before it opens, Pa, 0 or more; it shifts the cone of friction, so that the joint also has the cohesion Friction x TensionPa.</param>
public readonly record struct JointStrength(double Friction, double TensionPa);

/// <summary>A plane joint between two blocks, or between a block and the ground, that touches at points (its corners).</summary>
/// <remarks>
/// At each point the force on the first block is a sum of multiples, none negative, of the four edges n +- mu u, n +- mu v of a pyramid inside the cone of friction,
/// less the tension that the point's share of the area bears. A joint slips by its associated rule: sliding opens it by mu times the slip, which makes the load
/// factor no smaller than with plain (Coulomb) slip; where no point slides the two agree (Drucker 1954).
/// </remarks>
/// <param name="First">The block on which the normal acts.</param>
/// <param name="Second">The block on the other side, or null for the ground.</param>
/// <param name="Normal">Unit vector out of the second block into the first.</param>
/// <param name="Points">Where it touches, m.</param>
/// <param name="Area">Its area, m2; each point has an equal share.</param>
/// <param name="Strength">What it bears.</param>
public sealed record BlockJoint(int First, int? Second, Vector3 Normal, IReadOnlyList<Vector3> Points, double Area, JointStrength Strength)
{
    /// <summary>A unit vector in the joint: level, unless the joint itself is.</summary>
    public Vector3 AcrossU => Math.Abs(Normal.Z) > 0.99 ? new Vector3(0, Normal.Z, -Normal.Y).Unit() : new Vector3(-Normal.Y, Normal.X, 0).Unit();

    /// <summary>The unit vector in the joint square to <see cref="AcrossU"/>.</summary>
    public Vector3 AcrossV => Normal.Cross(AcrossU);
}
