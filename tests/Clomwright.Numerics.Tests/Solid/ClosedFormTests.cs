using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Numerics.Tests.Solid;

/// <summary>Bodies with an answer in closed form. The tolerances are the discretisation errors of the stated grids, a little rounded up.</summary>
public sealed class ClosedFormTests
{
    private const double E = Bodies.Modulus;
    private const double Nu = Bodies.Poisson;

    // Rank: analytic. Lame's thick cylinder under internal pressure (Timoshenko and Goodier, Theory of Elasticity, section 28), free ends.
    [Theory]
    [InlineData(2.45, 2.75, 160, 1, 0.0025, 0.029)]
    [InlineData(2.45, 2.75, 160, 2, 0.0008, 0.014)]
    [InlineData(2.45, 2.75, 160, 3, 0.0004, 0.010)]
    [InlineData(1, 2, 96, 1, 0.091, 0.5)]
    [InlineData(1, 2, 96, 4, 0.009, 0.2)]
    public void Thick_cylinder_swells_as_Lame_says(double a, double b, int ns, int nt, double displacementError, double stressError)
    {
        var (radial, inside, outside) = Cylinder(a, b, ns, nt);
        Assert.Equal(1, radial / LameDisplacement(a, b, a), displacementError);
        Assert.Equal(1, inside / LameHoop(a, b, a), stressError);
        Assert.Equal(1, outside / LameHoop(a, b, b), stressError);
    }

    // Rank: analytic. Displacements of a linear element converge with the square of the cell size.
    [Fact]
    public void Thick_cylinder_converges_with_the_square_of_the_cell()
    {
        double Error(int n) => Math.Abs(Cylinder(1, 2, 24 * n, n).Radial / LameDisplacement(1, 2, 1) - 1);
        // Orders seen: 2.0 and 2.2; two or three tenths either way are the higher terms on grids as coarse as these.
        Assert.InRange(Math.Log2(Error(2) / Error(4)), 1.8, 2.3);
        Assert.InRange(Math.Log2(Error(4) / Error(8)), 1.8, 2.3);
    }

    // Rank: analytic. Stress rho g (h - z), settlement rho g h^2 / 2E.
    [Fact]
    public void Column_settles_under_its_own_weight()
    {
        const double h = 2.4;
        var grid = Bodies.Box(0.3, h, 0.3, 3, 24, 3);
        var held = Bodies.NodesWhere(grid, p => p.Z < 1e-9).Select(node => new HeldNode(node, 2)).ToList();
        held.AddRange([new HeldNode(grid.Node(0, 0, 0), 0), new HeldNode(grid.Node(0, 0, 0), 1), new HeldNode(grid.Node(3, 0, 0), 1)]);
        var model = Bodies.Solid(grid, Bodies.Held(held));
        using var body = new ElasticBody(model);
        var answer = body.Solve(Loading.Weight(model, Bodies.Gravity));
        var gamma = Bodies.Density * 9.80665;
        Assert.Equal(1, -answer.Displacement.At(grid, 0.15, h, 0.15).Z / (gamma * h * h / (2 * E)), 4e-4);
        Assert.Equal(1, -body.StressAt(answer, 0.15, 0.05, 0.15).Z / (gamma * (h - 0.05)), 5e-3);
        Assert.Equal(1, -body.Average(answer, new GridBox(0, 0.3, 0, 0.1, 0, 0.3))!.Value.Stress.Z / (gamma * (h - 0.05)), 1e-9);

        // The mean over a box, whatever cells it cuts, is the stress at its middle.
        var mean = body.Average(answer, new GridBox(0.05, 0.27, 1.03, 1.27, 0, 0.3));
        Assert.Equal(1, -mean!.Value.Stress.Z / (gamma * (h - 1.15)), 1e-3);
        Assert.Equal(0.22 * 0.24 * 0.3, mean.Value.Volume, 1e-12);

        // Whatever is above a level weighs on it.
        var across = body.Across(answer, 0, 3, 10, new Vector3(0.15, 0.15, 1));
        Assert.Equal(gamma * 0.09 * 1.4, across.Force.Z, 1e-6);
        Assert.Equal(0, across.Moment.Norm, 1e-6);
    }

    // Rank: analytic. Timoshenko's beam: P L^3 / 3EI + 6 P L / 5GA (Poisson's ratio zero, so that the held end disturbs nothing).
    [Theory]
    [InlineData(1, true, 0.0014)]
    [InlineData(2, true, 0.0013)]
    [InlineData(3, true, 0.0009)]
    public void Cantilever_bends_as_a_Timoshenko_beam(int nt, bool withModes, double error) =>
        Assert.Equal(1, Cantilever(nt, withModes), error);

    // Rank: analytic. The reason for the modes: without them a beam of the same cells is several per cent too stiff however many lie side by side.
    [Fact]
    public void Cantilever_without_modes_is_too_stiff() => Assert.InRange(Cantilever(3, false), 0.93, 0.96);

    // Rank: analytic. Kirsch's plate with a hole (Timoshenko and Goodier, section 35), its own tractions on the outer edge.
    [Fact]
    public void Plate_with_a_hole_concentrates_stress_threefold()
    {
        var factors = new[] { 8, 16, 24 }.Select(Kirsch).ToArray();
        Assert.Equal(2.93, factors[0], 0.03);
        Assert.Equal(3, factors[1], 0.035);
        Assert.Equal(3, factors[2], 0.035);
    }

    // Rank: published (Roark's Formulas for Stress and Strain, 7th ed., table 9.2 case 1, thick ring; formulas from memory, confirmed by
    // Castigliano's theorem with the strain energy of Winkler's curved bar).
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Ring_between_two_loads_flattens_as_Roark_says(int nt)
    {
        const double a = 2.45, b = 2.75, width = 0.3, load = 1000;
        var grid = Bodies.Ring(a, b, width, 192, 2, nt);
        var half = grid.Around / 2;
        var held = new List<HeldNode>();
        foreach (var quarter in new[] { 0, 1, 2, 3 })
        {
            // On the axes of symmetry nothing moves sideways; the plane z = 0 stays plane.
            for (var j = 0; j <= nt; j++)
            {
                for (var k = 0; k <= 2; k++)
                {
                    held.Add(new HeldNode(grid.Node(quarter * half / 2, k, j), quarter % 2));
                }
            }
        }

        held.AddRange(Bodies.NodesWhere(grid, p => p.Z < 1e-9).Select(node => new HeldNode(node, 2)));
        var model = Bodies.Solid(grid, Bodies.Held(held));
        using var body = new ElasticBody(model);
        var forces = Loading.Point(model, 0, width / 2, (b - a) / 2, new Vector3(0, -load, 0))
            + Loading.Point(model, Math.PI * a, width / 2, (b - a) / 2, new Vector3(0, load, 0));
        var answer = body.Solve(forces);
        double Along(double s, Vector3 axis) => answer.Displacement.At(grid, s, width / 2, (b - a) / 2).Dot(axis);
        var vertical = Along(0, new Vector3(0, 1, 0)) - Along(Math.PI * a, new Vector3(0, 1, 0));
        var horizontal = Along(Math.PI * a / 2, new Vector3(1, 0, 0)) - Along(1.5 * Math.PI * a, new Vector3(1, 0, 0));

        var r = (a + b) / 2;
        var eccentricity = r - (b - a) / Math.Log(b / a);
        var alpha = eccentricity / r;
        var beta = 2 * 1.2 * (1 + Nu) * eccentricity / r;
        var (k1, k2) = (1 - alpha + beta, 1 - alpha);
        var unit = load * r * r / (E * width * (b - a) * eccentricity);
        Assert.Equal(1, vertical / (-unit * (Math.PI * k1 / 4 - 2 * k2 * k2 / Math.PI)), 0.006);
        Assert.Equal(1, horizontal / (unit * (k1 / 2 - k2 + 2 * k2 * k2 / Math.PI)), 0.009);
    }

    private static double LameDisplacement(double a, double b, double r) => a * a / (E * (b * b - a * a)) * ((1 - Nu) * r + (1 + Nu) * b * b / r);

    private static double LameHoop(double a, double b, double r) => a * a / (b * b - a * a) * (1 + b * b / (r * r));

    private static (double Radial, double Inside, double Outside) Cylinder(double a, double b, int ns, int nt)
    {
        var grid = Bodies.Ring(a, b, 0.2, ns, 1, nt);
        var held = Bodies.NodesWhere(grid, p => p.Z < 1e-9).Select(node => new HeldNode(node, 2)).ToList();
        held.AddRange([new HeldNode(grid.Node(0, 0, 0), 0), new HeldNode(grid.Node(ns / 2, 0, 0), 0), new HeldNode(grid.Node(ns / 4, 0, 0), 1)]);
        var model = Bodies.Solid(grid, Bodies.Held(held));
        using var body = new ElasticBody(model);
        var answer = body.Solve(Loading.Pressure(model, CellSide.Inside, cell => grid.Position(cell).J == 0 ? 1 : null));
        var stress = body.SurfaceStress(answer);
        return (answer.Displacement.At(grid.Node(0, 0, 0)).Y, stress.Inside(0, 0)!.Value.S, stress.Outside(0, 0)!.Value.S);
    }

    private static double Cantilever(int nt, bool withModes)
    {
        const double l = 3, h = 0.3, p = 100;
        var grid = Bodies.Box(0.3, l, h, 3, 30, nt);
        var held = Bodies.NodesWhere(grid, point => point.Z < 1e-9)
            .SelectMany(node => new[] { new HeldNode(node, 0), new HeldNode(node, 1), new HeldNode(node, 2) });
        var model = Bodies.Solid(grid, Bodies.Held(held), ElasticMaterial.Isotropic(E, 0, 0));
        using var body = new ElasticBody(model, withModes: withModes);

        // The shear force as a beam carries it: a parabola over the depth.
        var answer = body.Solve(Loading.Traction(
            model,
            CellSide.Top,
            cell => grid.Position(cell).K == 29 ? (point, _) => new Vector3(0, 6 * p / (h * h * h) * point.Y * (h - point.Y) / 0.3, 0) : null));
        var (inertia, area) = (0.3 * h * h * h / 12, 0.3 * h);
        var total = answer.Load.Resultant.Y;
        return answer.Displacement.At(grid, 0.15, l, h / 2).Y / (total * l * l * l / (3 * E * inertia) + 6 * total * l / (5 * E / 2 * area));
    }

    private static double Kirsch(int n)
    {
        const double radius = 1, far = 5, depth = 0.1;

        // A quarter: the angle along s, the radius along z with cells that grow outward, the thickness along t.
        var rings = Enumerable.Range(0, n + 1).Select(i => radius * Math.Pow(far / radius, (double)i / n)).ToArray();
        var grid = SolidGrid.Map(
            GridLines.Even(0, Math.PI / 2, n), rings, GridLines.Even(0, depth, 1), false, (s, z, t) => new Vector3(z * Math.Cos(s), z * Math.Sin(s), t));
        var held = Bodies.NodesWhere(grid, p => Math.Abs(p.Y) < 1e-9).Select(node => new HeldNode(node, 1))
            .Concat(Bodies.NodesWhere(grid, p => Math.Abs(p.X) < 1e-9).Select(node => new HeldNode(node, 0)))
            .Concat(Bodies.NodesWhere(grid, p => Math.Abs(p.Z) < 1e-9).Select(node => new HeldNode(node, 2)));
        var model = Bodies.Solid(grid, Bodies.Held(held));
        using var body = new ElasticBody(model);
        var answer = body.Solve(Loading.Traction(model, CellSide.Top, cell => grid.Position(cell).K == n - 1 ? (p, _) => KirschTraction(p, radius) : null));
        return body.StressAt(answer, Math.PI / 2 * (1 - 0.5 / n), radius, depth / 2).S;
    }

    /// <summary>Traction on a circle of the plate stretched by a unit stress along x.</summary>
    private static Vector3 KirschTraction(Vector3 p, double a)
    {
        var (r, angle) = (Math.Sqrt(p.X * p.X + p.Y * p.Y), Math.Atan2(p.Y, p.X));
        var q = a * a / (r * r);
        var radial = (1 - q) / 2 + (1 - 4 * q + 3 * q * q) / 2 * Math.Cos(2 * angle);
        var shear = -(1 + 2 * q - 3 * q * q) / 2 * Math.Sin(2 * angle);
        var (c, s) = (Math.Cos(angle), Math.Sin(angle));
        return new Vector3(radial * c - shear * s, radial * s + shear * c, 0);
    }
}
