using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Solids;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>Bodies as lines of a parallel projection, held against closed forms.</summary>
public sealed class SeenBodiesTests
{
    /// <summary>0.01 mm, m: drawings and geometry agree to no less.</summary>
    private const double Hundredth = 1e-5;

    private static readonly PlanPoint Zero = new(0, 0);

    // Analytic: over the corner of a cube with arctan(1/sqrt 2) all three axes are shortened by sqrt(2/3) and drawn 120 degrees apart. From the south-east, north runs up to the right.
    [Fact]
    public void AxesOfACube_AreShortenedAlike()
    {
        var from = Projection.From(3 * Math.PI / 4, Projection.Isometric, Zero);
        var shortened = Math.Sqrt(2.0 / 3);
        foreach (var (axis, across, height) in ((SpacePoint, double, double)[])[(new(1, 0, 0), Math.Sqrt(0.5), -0.5 * shortened), (new(0, 1, 0), Math.Sqrt(0.5), 0.5 * shortened), (new(0, 0, 1), 0, shortened)])
        {
            var drawn = from.Project(axis);
            Assert.Equal(across, drawn.Across, 1e-12);
            Assert.Equal(height, drawn.Height, 1e-12);
        }

        // Analytic: the line of sight itself is drawn as a point, and nearer is nearer.
        var sight = new SpacePoint(1, -1, 1);
        Assert.Equal((0, 0), (from.Project(sight).Across, from.Project(sight).Height), (a, b) => Math.Abs(a.Item1 - b.Item1) + Math.Abs(a.Item2 - b.Item2) < 1e-12);
        Assert.Equal(Math.Sqrt(3), from.Nearness(sight), 1e-12);
    }

    // Analytic: of a bare ring seen from a height one sees the upper rims, but of the inner one below the top nothing that the near wall covers: the line over the hollow at the foot, a drop of
    // (thickness over tan of the rise) behind the near wall's rim. A line behind the wall is drawn up to where it passes over the rim, and not below.
    [Fact]
    public void AnUprightLineBehindAWall_IsSeenOnlyAboveItsTop()
    {
        const double r = 2, thick = 0.4, top = 2.5, rise = Math.PI / 6;
        var geometry = FromBuilding.Of(Houses.Round(Length.Nearest(2 * r)) with { Wall = new Wall(Length.Nearest(top), Length.Nearest(thick)), Openings = [], BondBeam = null });
        var walls = HouseSolids.Of(geometry).Where(s => s.Part is SolidPart.Wall or SolidPart.Stem).ToArray();
        var from = Projection.From(Math.PI, rise, geometry.Curve.Centre);

        // Two posts on the line of sight through the middle: one a metre north of the far wall, 6 m tall, and one in the hollow, 1 m north of the near inner face.
        double[] norths = [r + thick + 1, -r + 1];
        var seen = SeenBodies.Of(walls, [.. norths.Select((n, i) => new SpaceLine($"post {i}", [SpacePoint.Of(geometry.Curve.Centre + new PlanPoint(0, n), 0), SpacePoint.Of(geometry.Curve.Centre + new PlanPoint(0, n), 6)]))], from);
        double Drawn(double north, double up) => up * Math.Cos(rise) + north * Math.Sin(rise);

        // Behind the far wall the post comes out over the outer rim of its top; in the hollow over the inner rim of the near wall.
        double[] rims = [Drawn(r + thick, top), Drawn(-r, top)];
        for (var i = 0; i < 2; i++)
        {
            var line = Assert.Single(seen, l => l.Of == $"post {i}");
            Assert.Equal(rims[i], line.Points.Min(p => p.Height), Hundredth);
            Assert.Equal(Drawn(norths[i], 6), line.Points.Max(p => p.Height), 1e-12);
        }

        // The outline of the outside face stands at its radius, to what a chord of the 192 lines leaves.
        var wall = seen.Where(l => l.Of == "wall").SelectMany(l => l.Points).ToArray();
        Assert.Equal(r + thick, wall.Max(p => p.Across), (r + thick) * (1 - Math.Cos(Math.PI / 192)));
        Assert.Equal(Drawn(r + thick, top), wall.Max(p => p.Height), Hundredth);
        Assert.DoesNotContain(wall, p => Math.Abs(p.Across) < 0.5 && p.Height < Drawn(-r - thick, geometry.Wall.Base.Metres) - Hundredth);
    }

    // Property: level from the south a window in the north is seen through an open one in the south, and not past its glass; one that stands where cob is before it is not seen.
    [Fact]
    public void ABackWindow_IsSeenThroughAnOpenOneOnly()
    {
        (double Bearing, double Width)[] windows = [(180, 0.8), (0, 0.6), (40, 0.6)];
        var geometry = FromBuilding.Of(Houses.Round(Length.FromFeet(16, 0)) with
        {
            Openings = [.. windows.Select(w => new Opening { Name = $"at {w.Bearing}", Kind = OpeningKind.Fixed, Along = Along.At(new Angle(w.Bearing)), Width = Length.Nearest(w.Width), Height = Length.Nearest(w.Width), Sill = Length.Nearest(1.5 - w.Width / 2) })],
        });
        var bodies = HouseSolids.Of(geometry).Where(s => s.Part is SolidPart.Wall or SolidPart.Stem or SolidPart.Glass).ToArray();
        var south = Projection.From(Math.PI, 0, geometry.Curve.Centre);
        var open = SeenBodies.Of([.. bodies.Where(b => b.Name != "glass at 180")], [], south);
        var far = open.Where(l => l.Of == "glass at 0").SelectMany(l => l.Points).ToArray();
        Assert.Equal((-0.3, 0.3), (far.Min(p => p.Across), far.Max(p => p.Across)), (a, b) => Math.Abs(a.Item1 - b.Item1) + Math.Abs(a.Item2 - b.Item2) < Hundredth);
        Assert.DoesNotContain(open, l => l.Of == "glass at 40");
        var glazed = SeenBodies.Of(bodies, [], south);
        Assert.DoesNotContain(glazed, l => l.Of is "glass at 0" or "glass at 40");
        Assert.Contains(glazed, l => l.Of == "glass at 180");
    }
}
