using Clomwright.Numerics.Factorisation;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.RigidBlocks;

namespace Clomwright.Numerics.Tests.RigidBlocks;

/// <summary>Assemblies of blocks with known or independently found limits.</summary>
internal static class Stacks
{
    public const double Density = 1750;
    public const double Gravity = 9.80665;

    /// <summary>A free wall on the ground, cut into blocks, pushed by a share of its weight square to its face.</summary>
    public static BlockSheet Wall(double length, double height, double thickness, int along, int up, JointStrength strength, Vector3 push)
    {
        var shape = new SheetShape(along, up, closed: false);
        var (dx, dz) = (length / along, height / up);
        return Build(shape, (i, k) => true, (i, k) => new Vector3(i * dx, 0, k * dz), (i, k) => new Vector3(dx, thickness, dz), strength, push);
    }

    /// <summary>A ring of blocks with openings, cut from it radially; joints are plane and lie between neighbours, their strength stated course by course.</summary>
    public static BlockSheet Ring(double radius, double height, double thickness, int around, int up, Func<int, int, bool> isThere, Func<int, JointStrength> strength, Vector3 push)
    {
        var shape = new SheetShape(around, up, closed: true);
        var (da, dz) = (2 * Math.PI / around, height / up);
        var blocks = new RigidBlock?[shape.Columns];
        var joints = new List<BlockJoint>();
        Vector3 At(double angle, double r, double z) => new(r * Math.Cos(angle), r * Math.Sin(angle), z);
        var (inner, outer) = (radius - thickness / 2, radius + thickness / 2);
        for (var i = 0; i < around; i++)
        {
            for (var k = 0; k < up; k++)
            {
                if (isThere(i, k))
                {
                    var weight = Density * Gravity * da * radius * thickness * dz;
                    blocks[shape.Column(i, k)] = new RigidBlock(At((i + 0.5) * da, radius, (k + 0.5) * dz), Wrench.Through(new Vector3(0, 0, -weight)), Wrench.Through(weight * push));
                }
            }
        }

        for (var i = 0; i < around; i++)
        {
            for (var k = 0; k < up; k++)
            {
                if (!isThere(i, k))
                {
                    continue;
                }

                if (k == 0 || isThere(i, k - 1))
                {
                    Vector3[] corners = [At(i * da, inner, k * dz), At(i * da, outer, k * dz), At((i + 1) * da, inner, k * dz), At((i + 1) * da, outer, k * dz)];
                    joints.Add(new BlockJoint(shape.Column(i, k), k == 0 ? null : shape.Column(i, k - 1), new Vector3(0, 0, 1), corners, da * radius * thickness, strength(k)));
                }

                var next = (i + 1) % around;
                if (isThere(next, k))
                {
                    var angle = (i + 1) * da;
                    Vector3[] corners = [At(angle, inner, k * dz), At(angle, outer, k * dz), At(angle, inner, (k + 1) * dz), At(angle, outer, (k + 1) * dz)];
                    joints.Add(new BlockJoint(shape.Column(next, k), shape.Column(i, k), new Vector3(-Math.Sin(angle), Math.Cos(angle), 0), corners, thickness * dz, strength(k)));
                }
            }
        }

        return new BlockSheet(shape, blocks, joints);
    }

    /// <summary>A half-circle arch of unit mean radius on two springings, thickness over radius as stated, made of equal voussoirs with radial joints.</summary>
    public static BlockSheet Arch(double ratio, int voussoirs, double width, double push)
    {
        var shape = new SheetShape(voussoirs, 2, closed: false);
        var strength = new JointStrength(2, 0);
        var (inner, outer, da) = (1 - ratio / 2, 1 + ratio / 2, Math.PI / voussoirs);
        Vector3 At(double angle, double r, double y) => new(-r * Math.Cos(angle), y, r * Math.Sin(angle));
        var blocks = new RigidBlock?[shape.Columns];
        var joints = new List<BlockJoint>();
        for (var i = 0; i < voussoirs; i++)
        {
            // Centroid of a sector of a ring: (2/3) (R^3 - r^3)/(R^2 - r^2) sin(a/2)/(a/2).
            var centroid = 2.0 / 3 * (Math.Pow(outer, 3) - Math.Pow(inner, 3)) / (outer * outer - inner * inner) * Math.Sin(da / 2) / (da / 2);
            var weight = da / 2 * (outer * outer - inner * inner) * width;
            blocks[shape.Column(i, 0)] = new RigidBlock(At((i + 0.5) * da, centroid, 0), Wrench.Through(new Vector3(0, 0, -weight)), Wrench.Through(new Vector3(push * weight, 0, 0)));
        }

        for (var i = 0; i <= voussoirs; i++)
        {
            var angle = i * da;
            var along = new Vector3(Math.Sin(angle), 0, Math.Cos(angle));
            Vector3[] corners = [At(angle, inner, -width / 2), At(angle, outer, -width / 2), At(angle, inner, width / 2), At(angle, outer, width / 2)];
            joints.Add(i < voussoirs
                ? new BlockJoint(shape.Column(i, 0), i == 0 ? null : shape.Column(i - 1, 0), along, corners, ratio * width, strength)
                : new BlockJoint(shape.Column(i - 1, 0), null, -along, corners, ratio * width, strength));
        }

        return new BlockSheet(shape, blocks, joints);
    }

    /// <summary>A round house 2.4 m high with a door and two windows, pushed sideways by its weight; with a header its top course bears tension.</summary>
    public static BlockSheet House(int around, int up, JointStrength strength, bool withHeader, int quarters = 0) => Ring(
        2.6, 2.4, 0.3, around, up,
        (i, k) => !(IsIn(i, around, quarters, 0.02, 0.10) && k < up * 5 / 6) && !(IsIn(i, around, quarters, 0.3, 0.38) && k >= up / 3 && k < up * 5 / 6) && !(IsIn(i, around, quarters, 0.6, 0.7) && k >= up / 3 && k < up * 5 / 6),
        k => withHeader && k == up - 1 ? new JointStrength(0.6, 1e6) : strength, quarters == 0 ? new Vector3(1, 0, 0) : new Vector3(0, 1, 0));

    private static bool IsIn(int i, int around, int quarters, double from, double to) => Math.IEEERemainder((i + 0.5) / around - quarters / 4.0 - 0.5, 1) + 0.5 is var at && at > from && at < to;

    private static BlockSheet Build(
        SheetShape shape, Func<int, int, bool> isThere, Func<int, int, Vector3> corner, Func<int, int, Vector3> size, JointStrength strength, Vector3 push)
    {
        var blocks = new RigidBlock?[shape.Columns];
        var joints = new List<BlockJoint>();
        for (var i = 0; i < shape.Around; i++)
        {
            for (var k = 0; k < shape.Up; k++)
            {
                if (!isThere(i, k))
                {
                    continue;
                }

                var (at, by) = (corner(i, k), size(i, k));
                var weight = Density * Gravity * by.X * by.Y * by.Z;
                blocks[shape.Column(i, k)] = new RigidBlock(at + 0.5 * by, Wrench.Through(new Vector3(0, 0, -weight)), Wrench.Through(weight * push));
                if (k == 0 || isThere(i, k - 1))
                {
                    Vector3[] foot = [at, at + new Vector3(by.X, 0, 0), at + new Vector3(0, by.Y, 0), at + new Vector3(by.X, by.Y, 0)];
                    joints.Add(new BlockJoint(shape.Column(i, k), k == 0 ? null : shape.Column(i, k - 1), new Vector3(0, 0, 1), foot, by.X * by.Y, strength));
                }

                if (i > 0 && isThere(i - 1, k))
                {
                    Vector3[] side = [at, at + new Vector3(0, by.Y, 0), at + new Vector3(0, 0, by.Z), at + new Vector3(0, by.Y, by.Z)];
                    joints.Add(new BlockJoint(shape.Column(i, k), shape.Column(i - 1, k), new Vector3(1, 0, 0), side, by.Y * by.Z, strength));
                }
            }
        }

        return new BlockSheet(shape, blocks, joints);
    }
}
