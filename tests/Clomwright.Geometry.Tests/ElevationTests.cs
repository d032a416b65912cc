using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>Elevations and sections against closed forms of a round house, and against the plan curve's own feet on an oval one.</summary>
public sealed class ElevationTests
{
    /// <summary>0.01 mm, m: drawings and geometry agree to no less.</summary>
    private const double Hundredth = 1e-5;

    private const double R = 2.4384;
    private const double Thick = 0.3048;
    private const double Half = 0.4572;
    private const double Sill = 0.9144;
    private const double Tall = 1.2192;

    private static HouseGeometry Round(Angle bearing, double outsideTaper = 0) => FromBuilding.Of(Houses.Round(Length.Nearest(2 * R)) with
    {
        Wall = new Wall(Length.FromFeet(8, 2), Length.Nearest(Thick)) { OutsideTaper = new Slope(outsideTaper) },
        Openings = [new Opening { Name = "window", Kind = OpeningKind.Fixed, Along = Along.At(bearing), Width = Length.Nearest(2 * Half), Height = Length.Nearest(Tall), Sill = Length.Nearest(Sill) }],
    });

    // Analytic: seen square on, a jamb is an upright line half the width from the middle, whatever the wall's thickness and curve.
    [Fact]
    public void AWindowSeenSquareOn_HasUprightJambsAtItsWidth()
    {
        var seen = Elevations.Of(Round(new Angle(180)), Math.PI);
        var rim = seen.Lines.Where(l => l.Part == SeenPart.Rim).SelectMany(l => l.Points).ToArray();
        Assert.Equal(-Half, rim.Min(p => p.Across), Hundredth);
        Assert.Equal(Half, rim.Max(p => p.Across), Hundredth);
        Assert.Equal((Sill, Sill + Tall), (rim.Min(p => p.Height), rim.Max(p => p.Height)), (a, b) => Math.Abs(a.Item1 - b.Item1) < Hundredth && Math.Abs(a.Item2 - b.Item2) < Hundredth);
    }

    // Analytic: a corner of the rim lies where the jamb, half a width from the middle, meets the circle of the outside face: w = sqrt(Ro^2 - h^2). The sides stand at Ro.
    [Theory]
    [InlineData(150)]
    [InlineData(200)]
    [InlineData(180)]
    public void CornersOfARoundHouse_LieWhereTheirClosedFormSays(double viewer)
    {
        const double taper = 0.05;
        var geometry = Round(new Angle(180), taper);
        var (sin, cos) = Math.SinCos(viewer * Math.PI / 180);
        var seen = Elevations.Of(geometry, viewer * Math.PI / 180);
        var points = seen.Lines.Where(l => l.Of == "window").SelectMany(l => l.Points).ToArray();
        foreach (var height in (double[])[Sill, Sill + Tall])
        {
            var outer = R + Thick + taper * (geometry.Wall.Top.Metres - height);
            foreach (var u in (double[])[-Half, Half])
            {
                // East and north of the corner: the window looks south.
                var (east, north) = (u, -Math.Sqrt(outer * outer - u * u));
                var across = east * -cos + north * sin;
                Assert.Contains(points, p => Math.Abs(p.Across - across) < Hundredth && Math.Abs(p.Height - height) < Hundredth);
            }
        }

        var top = R + Thick;
        Assert.Equal(top, seen.Silhouette.Where(p => p.Height == geometry.Wall.Top.Metres).Max(p => p.Across), Hundredth);
        var foot = top + taper * (geometry.Wall.Top - geometry.Wall.Base).Metres;
        Assert.Contains(seen.Silhouette, p => p.Height == geometry.Wall.Base.Metres && Math.Abs(p.Across + foot) < Hundredth);
        Assert.Contains(seen.Silhouette, p => p.Height == geometry.Wall.Base.Metres && Math.Abs(p.Across - foot) < Hundredth);
    }

    // Property: what looks away is not drawn; a frame deep in the wall is drawn only as far as the jamb before it lets it be seen.
    [Fact]
    public void WhatLooksAway_IsLeftOut()
    {
        var geometry = Round(new Angle(180));
        Assert.DoesNotContain(Elevations.Of(geometry, 0).Lines, l => l.Of == "window");
        var slanting = Elevations.Of(geometry, 120 * Math.PI / 180).Lines.Where(l => l is { Of: "window", Part: SeenPart.Frame }).SelectMany(l => l.Points).ToArray();
        var whole = Elevations.Of(geometry, Math.PI).Lines.Where(l => l is { Of: "window", Part: SeenPart.Frame }).SelectMany(l => l.Points).ToArray();
        Assert.Equal(2 * Half, whole.Max(p => p.Across) - whole.Min(p => p.Across), Hundredth);
        Assert.True(slanting.Max(p => p.Across) - slanting.Min(p => p.Across) < 2 * Half * Math.Cos(Math.PI / 3) - 0.05);
    }

    // Independent of the way the drawing takes: along each jamb the place at which the foot of the normal on the plan curve is the wall's thickness away, found by halving.
    [Fact]
    public void CornersOfTheOvalHouse_AreAsFarFromThePlanCurveAsTheWallIsThick()
    {
        var geometry = FromBuilding.Of(Houses.HeronPoint);
        var told = new[] { 0, Math.PI / 2, Math.PI, 3 * Math.PI / 2 }.Sum(viewer => Corners(geometry, Elevations.Of(geometry, viewer)));
        Assert.True(told >= 6, $"{told} corners told");
    }

    private static int Corners(HouseGeometry geometry, Elevation seen)
    {
        var told = 0;
        foreach (var place in geometry.Openings.Where(o => o.Opening.Shape == OpeningShape.Rectangular && o.Normal.Dot(seen.Toward) > 0.5 && o.Sill > geometry.Wall.Base.Metres && o.Opening.Splay == default))
        {
            var along = new PlanPoint(place.Normal.North, -place.Normal.East);
            foreach (var side in (double[])[-0.5, 0.5])
            {
                var offset = geometry.Wall.OutsideOffset(place.Sill);
                double low = 0, high = 2;
                for (var i = 0; i < 60; i++)
                {
                    var middle = (low + high) / 2;
                    var point = place.Middle + side * place.Opening.Width.Metres * along + middle * place.Normal;
                    var foot = geometry.Curve.FootOf(point, place.Station);
                    (low, high) = (point - geometry.Curve.At(foot)).Dot(geometry.Curve.Normal(foot)) < offset ? (middle, high) : (low, middle);
                }

                var corner = seen.Project(place.Middle + side * place.Opening.Width.Metres * along + low * place.Normal, place.Sill);
                Assert.Contains(seen.Lines.Where(l => l.Of == place.Opening.Name).SelectMany(l => l.Points), p => Math.Abs(p.Across - corner.Across) < Hundredth && Math.Abs(p.Height - corner.Height) < Hundredth);
                told++;
            }
        }

        return told;
    }

    // Analytic: a cut through the middle of a round wall without taper is two strips as wide as the wall is thick, less the height of a window that the plane meets square.
    [Fact]
    public void ASectionOfARoundHouse_CutsWhatItsClosedFormSays()
    {
        var geometry = Round(new Angle(90));
        var cut = CrossSections.Of(geometry, Math.PI);
        var area = cut.Cob.Sum(c => Math.Abs(c.Select((p, i) => p.Across * c[(i + 1) % c.Count].Height - c[(i + 1) % c.Count].Across * p.Height).Sum()) / 2);
        Assert.Equal(Thick * (2 * (geometry.Wall.Top - geometry.Wall.Base).Metres - Tall), area, 1e-5);
        Assert.Equal([-R - Thick, -R, R, R + Thick], cut.Cob.SelectMany(c => c).Select(p => Math.Round(p.Across, 6)).Distinct().Order(), (a, b) => Math.Abs(a - b) < Hundredth);
        Assert.Contains(cut.Edges, e => Math.Abs(e.From.Height - Sill) < Hundredth && Math.Abs(e.To.Height - Sill) < Hundredth && e.From.Across > 0);
        var other = CrossSections.Of(geometry, Math.PI / 2 + Math.PI);
        Assert.Contains(other.Beyond, l => l.Of == "window");
    }
}
