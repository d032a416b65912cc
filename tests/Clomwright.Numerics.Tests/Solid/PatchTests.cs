using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;
using Clomwright.Testing;

namespace Clomwright.Numerics.Tests.Solid;

/// <summary>The patch test (Irons 1965; Taylor, Beresford and Wilson 1976): a distorted patch takes up any constant strain exactly.</summary>
public sealed class PatchTests
{
    /// <summary>Relative to the largest displacement. Rounding of a solve with a condition number of about a hundred; the stated aim.</summary>
    private const double Tolerance = 1e-12;

    private static readonly Gen<(double[] Strain, double Shake, int Seed, bool WithModes, bool Wooden)> Patches =
        from strain in Gen.Double[-1, 1].Array[9]
        from shake in Gen.Double[0, 0.2]
        from seed in Gen.Int[0, 1 << 30]
        from withModes in Gen.Bool
        from wooden in Gen.Bool
        select (strain, shake, seed, withModes, wooden);

    // Rank: analytic.
    [Fact]
    public void A_distorted_patch_takes_up_constant_strain_exactly() =>
        Patches.ForAll(
            c =>
            {
                var random = new Random(c.Seed);
                double Shaken(double at) => at is > 0.01 and < 2.99 ? at + c.Shake * (2 * random.NextDouble() - 1) : at;
                var grid = Bodies.Box(3, 3, 3, 3, 3, 3).Moved(p => new Vector3(Shaken(p.X), Shaken(p.Y), Shaken(p.Z)));
                Vector3 Field(Vector3 p) => new(
                    c.Strain[0] * p.X + c.Strain[1] * p.Y + c.Strain[2] * p.Z,
                    c.Strain[3] * p.X + c.Strain[4] * p.Y + c.Strain[5] * p.Z,
                    c.Strain[6] * p.X + c.Strain[7] * p.Y + c.Strain[8] * p.Z);
                var edge = Bodies.NodesWhere(grid, p => IsEnd(p.X) || IsEnd(p.Y) || IsEnd(p.Z));
                var held = edge.SelectMany(node =>
                {
                    var u = Field(grid.Point(node));
                    return new[] { new HeldNode(node, 0, u.X), new HeldNode(node, 1, u.Y), new HeldNode(node, 2, u.Z) };
                });

                // A constant strain gives the same stress in every cell only when the axes of the material do not turn with the cells.
                var model = Bodies.Solid(grid, Bodies.Held(held), c.Wooden && c.Shake == 0 ? Bodies.Wood : Bodies.Earth);
                using var body = new ElasticBody(model, 1, c.WithModes);
                var answer = body.Solve(Loading.None(grid));
                var largest = Enumerable.Range(0, grid.Nodes).Max(node => Field(grid.Point(node)).Norm);
                for (var node = 0; node < grid.Nodes; node++)
                {
                    Assert.True((answer.Displacement.At(node) - Field(grid.Point(node))).Norm < Tolerance * largest);
                }

                // The sum of the normal stresses does not turn with the axes: 3 K times the change of volume in an isotropic body.
                var somewhere = body.StressAt(answer, 0.5, 0.5, 0.5);
                var expected = ReferenceEquals(model.Materials[0], Bodies.Earth)
                    ? Bodies.Modulus / (1 - 2 * Bodies.Poisson) * (c.Strain[0] + c.Strain[4] + c.Strain[8])
                    : somewhere.S + somewhere.Z + somewhere.T;
                var stiffest = c.Wooden ? 1e10 : Bodies.Modulus;
                for (var cell = 0; cell < grid.Cells; cell++)
                {
                    var (i, k, j) = grid.Position(cell);
                    foreach (var (s, z, t) in new[] { (0.5, 0.5, 0.5), (0.1, 0.8, 0.3) })
                    {
                        var stress = body.StressAt(answer, i + s, k + z, j + t);
                        // Strains are differences of displacements up to nine times as large.
                        Assert.True(Math.Abs(stress.S + stress.Z + stress.T - expected) < 30 * Tolerance * stiffest);
                    }
                }
            },
            iter: Counts.Of(30, 300));

    // Rank: analytic. Hooke's law for one state of stress.
    [Fact]
    public void Constant_stress_follows_Hookes_law()
    {
        var grid = Bodies.Box(1, 1, 1, 2, 2, 2);
        var held = Bodies.NodesWhere(grid, p => true).SelectMany(node =>
        {
            var p = grid.Point(node);
            return new[] { new HeldNode(node, 0, 1e-3 * p.X), new HeldNode(node, 1, 5e-4 * p.Z), new HeldNode(node, 2, 0) };
        });
        var model = Bodies.Solid(grid, Bodies.Held(held));
        using var body = new ElasticBody(model);
        var stress = body.StressAt(body.Solve(Loading.None(grid)), 0.3, 0.4, 0.6);
        var (e, nu) = (Bodies.Modulus, Bodies.Poisson);
        var lame = e * nu / ((1 + nu) * (1 - 2 * nu));
        var shear = e / (2 * (1 + nu));
        Assert.Equal((lame + 2 * shear) * 1e-3, stress.S, 1e-9 * e);
        Assert.Equal(lame * 1e-3, stress.Z, 1e-9 * e);
        Assert.Equal(lame * 1e-3, stress.T, 1e-9 * e);
        Assert.Equal(shear * 5e-4, stress.ZT, 1e-9 * e);
        Assert.Equal(0, stress.SZ, 1e-9 * e);
        Assert.Equal(0, stress.TS, 1e-9 * e);
    }

    // Rank: analytic. A bar of wood along a slanting s axis: E in the fibre's direction.
    [Fact]
    public void Wood_is_stretched_along_its_fibre_by_its_own_modulus()
    {
        var (c, s) = (Math.Cos(0.4), Math.Sin(0.4));
        var grid = Bodies.Box(8, 0.2, 0.1, 16, 2, 2).Moved(p => new Vector3(c * p.X - s * p.Y, s * p.X + c * p.Y, p.Z));
        var start = Bodies.NodesWhere(grid, p => Math.Abs(c * p.X + s * p.Y) < 1e-9).ToList();
        var model = Bodies.Solid(
            grid,
            new SolidSupports(start.SelectMany(node => new[] { new GroundSpring(node, 0, 1e14), new GroundSpring(node, 1, 1e14), new GroundSpring(node, 2, 1e14) }), []),
            Bodies.Wood);
        using var body = new ElasticBody(model);
        var pull = Loading.Traction(model, CellSide.End, cell => grid.Position(cell).I == 15 ? (_, normal) => 1e6 * normal : null);
        var answer = body.Solve(pull);
        var (near, far) = (answer.Displacement.At(grid, 5, 0.1, 0.05), answer.Displacement.At(grid, 6, 0.1, 0.05));
        var stretch = c * (far.X - near.X) + s * (far.Y - near.Y);

        // The held end disturbs the stress over several depths, as E/G is large; half a per mille is left.
        Assert.Equal(1e6 / 10e9, stretch, 5e-4 * 1e6 / 10e9);
        Assert.Equal(1e6, body.StressAt(answer, 5.6, 0.1, 0.05).S, 1e3);
    }

    private static bool IsEnd(double at) => at is < 0.01 or > 2.99;
}
