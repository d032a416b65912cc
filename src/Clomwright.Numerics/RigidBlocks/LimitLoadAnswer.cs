namespace Clomwright.Numerics.RigidBlocks;

/// <summary>How a search for a limit load ended.</summary>
public enum LimitLoadEnd
{
    /// <summary>The load factor is known within the stated gap.</summary>
    Found,

    /// <summary>No joint forces balance the dead load with any factor of the live load, however small.</summary>
    NoEquilibrium,

    /// <summary>The live load may grow without end.</summary>
    NoLimit,

    /// <summary>The search stood still before the gap was small.</summary>
    NotConverged,
}

/// <summary>The largest factor of the live load that an assembly of rigid blocks can bear, with the forces that bear it and the way it fails.</summary>
/// <param name="End">How the search ended; the numbers count only when it is <see cref="LimitLoadEnd.Found"/>.</param>
/// <param name="StaticFactor">The factor that the forces found balance: no more than the limit, but for <paramref name="Unbalanced"/>.</param>
/// <param name="KinematicFactor">The factor at which the mechanism found does no work: no less than the limit, but for <paramref name="Incompatible"/>.</param>
/// <param name="Unbalanced">Size of the forces left over, as a share of the size of all loads.</param>
/// <param name="Incompatible">Size by which edges of joints press into each other in the mechanism, as a share of its size.</param>
/// <param name="Steps">Steps taken to it.</param>
/// <param name="Rates">The mechanism: six numbers for each place on the sheet, velocity of the block's centre and its rate of turning, such that the live load does unit work (in N m).</param>
/// <param name="JointForces">The force on the first block at each point of each joint, N, joint after joint.</param>
public sealed record LimitLoadAnswer(
    LimitLoadEnd End, double StaticFactor, double KinematicFactor, double Unbalanced, double Incompatible, int Steps,
    IReadOnlyList<double> Rates, IReadOnlyList<Frames.Vector3> JointForces);
