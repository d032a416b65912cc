using System.Diagnostics;
using System.Text.Json;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;
using Clomwright.Testing;

namespace Clomwright.Numerics.Tests.Solid;

/// <summary>
/// The same bodies assembled and solved by a SciPy script that shares no formula with the library (tests/oracles/solid_oracle.py; SciPy from
/// Debian's python3-scipy). Skipped where that is not installed.
/// </summary>
public sealed class SciPyOracleTests
{
    private const string Python = "/usr/bin/python3";

    private static readonly Lazy<bool> HasSciPy = new(() => File.Exists(Python) && Run("-c \"import scipy.sparse.linalg\"", "") is not null);

    /// <summary>A circular, an oval and a rounded square house, each with a door, three windows, headers of wood and a niche; with and without modes.</summary>
    [Theory]
    [InlineData(0, true)]
    [InlineData(0, false)]
    [InlineData(1, true)]
    [InlineData(1, false)]
    [InlineData(2, true)]
    [InlineData(2, false)]
    public void Houses_move_as_SciPy_says(int shape, bool withModes)
    {
        Assert.SkipUnless(HasSciPy.Value, "SciPy is not installed for /usr/bin/python3 (Debian: python3-scipy).");
        var grid = Plan(shape);
        var model = Bodies.House(grid);
        using var body = new ElasticBody(model, withModes: withModes);
        NodalLoad[] loads = [Loading.Weight(model, Bodies.Gravity), Loading.Weight(model, new Vector3(1, 0.4, 0))];
        var expected = JsonSerializer.Deserialize<double[][]>(Run(Path.Combine(Counts.Root, "tests", "oracles", "solid_oracle.py"), Problem(model, loads, withModes))!)!;
        var answers = body.Solve(loads);
        for (var load = 0; load < loads.Length; load++)
        {
            // The stated aim is 1e-8; two direct solvers of one matrix agree to its condition (about 1e5) times rounding.
            var scale = expected[load].Max(Math.Abs);
            for (var i = 0; i < expected[load].Length; i++)
            {
                Assert.Equal(expected[load][i], answers[load].Displacement.Values[i], 1e-9 * scale);
            }
        }
    }

    private static SolidGrid Plan(int shape)
    {
        const int ns = 48;
        var length = 2 * Math.PI * 2.45;
        var s = GridLines.Fitted(GridLines.Even(0, length, ns), [4.1, 5.0], 4, isClosed: true);
        return SolidGrid.Map(s, GridLines.Even(0, 2.4, 8), GridLines.Even(0, 0.3, 2), true, (arc, z, t) =>
        {
            var angle = 2 * Math.PI * arc / length;
            var inner = shape switch { 0 => Bodies.OnCircle(2.45, angle, z), 1 => Oval(angle, z), _ => Square(angle, z) };

            // Outward from the centre, the outside face leaning in by 4 %.
            var outward = new Vector3(inner.X, inner.Y, 0).Unit();
            return inner + t * (1 + 0.04 * (2.4 - z) / 0.3) * outward;
        });
    }

    private static Vector3 Oval(double angle, double z) => new(3.1 * Math.Sin(angle), 2.2 * Math.Cos(angle), z);

    private static Vector3 Square(double angle, double z)
    {
        var (x, y) = (Math.Sin(angle), Math.Cos(angle));
        var radius = 2.4 / Math.Pow(Math.Pow(Math.Abs(x), 4) + Math.Pow(Math.Abs(y), 4), 0.25);
        return new Vector3(radius * x, radius * y, z);
    }

    private static string Problem(SolidModel model, NodalLoad[] loads, bool withModes)
    {
        var grid = model.Grid;
        return JsonSerializer.Serialize(new
        {
            points = Enumerable.Range(0, grid.Nodes).Select(node => new[] { grid.Point(node).X, grid.Point(node).Y, grid.Point(node).Z }),
            cells = Enumerable.Range(0, grid.Cells).Where(cell => model.Cells[cell].IsSolid).Select(cell => new
            {
                nodes = Enumerable.Range(0, 8).Select(corner => grid.CornerNode(cell, corner)),
                material = model.Cells[cell].Material,
                stiffness = model.Cells[cell].Stiffness,
                weights = model.Cells[cell].Cut?.Weights.ToArray(),
            }),
            materials = model.Materials.Select(material => new { local = material.Stiffness.ToArray(), isotropic = material.IsIsotropic }),
            springs = model.Supports.Springs.Select(spring => new[] { spring.Node, spring.Axis, spring.Stiffness }),
            loads = loads.Select(load => load.Forces.ToArray()),
            modes = withModes,
        });
    }

    /// <summary>What the script writes, or null when it fails.</summary>
    private static string? Run(string arguments, string input)
    {
        using var process = Process.Start(new ProcessStartInfo(Python, arguments)
        {
            RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false,
        })!;
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output : null;
    }
}
