using System.Collections.Immutable;

namespace Clomwright.Numerics.Frames;

/// <summary>Directions in which a node or a member's end may move: along and about three axes.</summary>
[Flags]
public enum Freedom
{
    /// <summary>None.</summary>
    None = 0,

    /// <summary>Along X.</summary>
    X = 1,

    /// <summary>Along Y.</summary>
    Y = 2,

    /// <summary>Along Z.</summary>
    Z = 4,

    /// <summary>About X.</summary>
    AboutX = 8,

    /// <summary>About Y.</summary>
    AboutY = 16,

    /// <summary>About Z.</summary>
    AboutZ = 32,

    /// <summary>All three displacements.</summary>
    Displacements = X | Y | Z,

    /// <summary>All three rotations.</summary>
    Rotations = AboutX | AboutY | AboutZ,

    /// <summary>Everything.</summary>
    All = Displacements | Rotations,
}

/// <summary>A joint of a frame.</summary>
/// <param name="Position">In space, m.</param>
/// <param name="Held">Directions, along the global axes, in which a support holds it.</param>
public readonly record struct FrameNode(Vector3 Position, Freedom Held = Freedom.None);

/// <summary>Section of a member, in its own axes: x along it, z on the side of its <see cref="FrameMember.Up"/>, y square to both.</summary>
/// <param name="Area">m2.</param>
/// <param name="SecondMomentY">About y, m4: bending in the plane of x and z.</param>
/// <param name="SecondMomentZ">About z, m4: bending in the plane of x and y.</param>
/// <param name="Torsion">St Venant torsion constant, m4.</param>
/// <param name="ShearAreaY">Against shear along y, m2; infinite leaves shear deformation out.</param>
/// <param name="ShearAreaZ">Against shear along z, m2; infinite leaves shear deformation out.</param>
public readonly record struct FrameSection(
    double Area, double SecondMomentY, double SecondMomentZ, double Torsion,
    double ShearAreaY = double.PositiveInfinity, double ShearAreaZ = double.PositiveInfinity)
{
    /// <summary>A full round: I = pi d^4/64, J = 2 I, shear area 9/10 of the area when it is counted.</summary>
    public static FrameSection Round(double diameter, bool shear = false)
    {
        var area = Math.PI * diameter * diameter / 4;
        var second = Math.PI * Math.Pow(diameter, 4) / 64;
        var shearArea = shear ? 0.9 * area : double.PositiveInfinity;
        return new(area, second, second, 2 * second, shearArea, shearArea);
    }
}

/// <summary>Young's modulus and shear modulus, Pa.</summary>
public readonly record struct Elasticity(double Young, double Shear);

/// <summary>A straight member of one section between two nodes.</summary>
/// <param name="Start">Index of its first node.</param>
/// <param name="End">Index of its second node.</param>
/// <param name="Section">Its section.</param>
/// <param name="Elasticity">Its material.</param>
public sealed record FrameMember(int Start, int End, FrameSection Section, Elasticity Elasticity)
{
    /// <summary>A direction on the side of its z axis; global Z unless the member itself is upright, then global X.</summary>
    public Vector3? Up { get; init; }

    /// <summary>What its first end does not pass on to the node, in the member's own axes.</summary>
    public Freedom StartReleased { get; init; }

    /// <summary>What its second end does not pass on to the node, in the member's own axes.</summary>
    public Freedom EndReleased { get; init; }

    /// <summary>A rigid arm from the first node to the member's first end, global, m.</summary>
    public Vector3 StartArm { get; init; }

    /// <summary>A rigid arm from the second node to the member's second end, global, m.</summary>
    public Vector3 EndArm { get; init; }
}

/// <summary>A load on a frame, along the global axes.</summary>
public abstract record FrameLoad
{
    private FrameLoad()
    {
    }

    /// <summary>On a node: N and N m.</summary>
    public sealed record OnNode(int Node, Vector3 Force, Vector3 Moment = default) : FrameLoad;

    /// <summary>Spread along a part of a member, varying evenly, N for each metre of its length. The part is given as shares of its length.</summary>
    public sealed record Spread(int Member, Vector3 AtFrom, Vector3 AtTo, double From = 0, double To = 1) : FrameLoad;

    /// <summary>At one place of a member, as a share of its length, N.</summary>
    public sealed record Point(int Member, double At, Vector3 Force) : FrameLoad;
}

/// <summary>A frame: nodes and members, before any load.</summary>
public sealed record Frame(ImmutableArray<FrameNode> Nodes, ImmutableArray<FrameMember> Members);

/// <summary>Either a factorised frame, or the first direction found in which it can move without resistance.</summary>
public abstract record FrameOutcome
{
    private FrameOutcome()
    {
    }

    /// <summary>Ready for any load.</summary>
    public sealed record Stiff(FrameStiffness Stiffness) : FrameOutcome;

    /// <summary>A mechanism: this node can move in this direction.</summary>
    public sealed record Mechanism(int Node, Freedom Direction) : FrameOutcome;

    /// <summary>A member without length, or a number that is not finite.</summary>
    public sealed record BadMember(int Member) : FrameOutcome;
}
