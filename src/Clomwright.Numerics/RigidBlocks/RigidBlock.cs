using Clomwright.Numerics.Frames;

namespace Clomwright.Numerics.RigidBlocks;

/// <summary>A body that neither bends nor breaks.</summary>
/// <param name="Centre">The point about which its moments are taken, m.</param>
/// <param name="Dead">What always acts on it.</param>
/// <param name="Live">What acts on it times the load factor.</param>
public sealed record RigidBlock(Vector3 Centre, Wrench Dead, Wrench Live);
