using Clomwright.Numerics.Factorisation;

namespace Clomwright.Numerics.RigidBlocks;

/// <summary>Blocks that lie on a sheet, one for each of its columns or none there, and the joints between neighbours.</summary>
public sealed record BlockSheet
{
    /// <summary>Blocks and joints.</summary>
    /// <exception cref="ArgumentException">A joint names no block, or two that are not corners of one patch; or its normal has not length one.</exception>
    public BlockSheet(SheetShape shape, IReadOnlyList<RigidBlock?> blocks, IReadOnlyList<BlockJoint> joints)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(blocks.Count, shape.Columns);
        (Shape, Blocks, Joints) = (shape, blocks, joints);
        PatchOf = [.. joints.Select(PatchFor)];
    }

    /// <summary>How the blocks lie.</summary>
    public SheetShape Shape { get; }

    /// <summary>The blocks by column; null where there is none.</summary>
    public IReadOnlyList<RigidBlock?> Blocks { get; }

    /// <summary>The joints.</summary>
    public IReadOnlyList<BlockJoint> Joints { get; }

    /// <summary>For each joint a patch that has its blocks at two corners, which are given too.</summary>
    internal IReadOnlyList<(int Patch, int FirstCorner, int SecondCorner)> PatchOf { get; }

    private (int Patch, int FirstCorner, int SecondCorner) PatchFor(BlockJoint joint, int number)
    {
        if (Blocks[joint.First] is null || (joint.Second is { } other && Blocks[other] is null))
        {
            throw new ArgumentException($"Joint {number} touches a block that is not there.");
        }

        if (Math.Abs(joint.Normal.Norm - 1) > 1e-9)
        {
            throw new ArgumentException($"The normal of joint {number} has length {joint.Normal.Norm:R} instead of 1.");
        }

        Span<int> around = stackalloc int[4];
        foreach (var patch in around[..Shape.PatchesAt(joint.First, around)])
        {
            var (first, second) = (-1, -1);
            for (var corner = 0; corner < 4; corner++)
            {
                var column = Shape.Corner(patch, corner);
                first = column == joint.First ? corner : first;
                second = column == joint.Second ? corner : second;
            }

            if (joint.Second is null || second >= 0)
            {
                return (patch, first, second);
            }
        }

        throw new ArgumentException($"Joint {number} joins blocks {joint.First} and {joint.Second}, which are not neighbours.");
    }
}
