using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

public sealed class UnrolledTests
{
    private static double Area(Sequence<WallPoint> outline) =>
        Math.Abs(outline.Index().Sum(p => p.Item.Along * outline[(p.Index + 1) % outline.Count].Up - outline[(p.Index + 1) % outline.Count].Along * p.Item.Up) / 2);

    [Fact]
    public void Outline_OfAWindowInAPlumbRoundWall_IsARectangleOfItsArc()
    {
        // Analytic: jambs at asin(w / 2r) on either side, on the inside circle and at the feet of the outside one.
        var g = FromBuilding.Of(Houses.Round(Length.FromMillimetres(4000)) with { Openings = [Houses.Window("w", 90, Length.FromMillimetres(800), Length.FromMillimetres(1000))] });
        var inside = Unrolled.Outline(g, g.Openings[0], Face.Inside);
        var outside = Unrolled.Outline(g, g.Openings[0], Face.Outside);
        var (near, far) = (2 * Math.Asin(0.4 / 2), 2 * Math.Asin(0.4 / 2.3556));
        Assert.Equal(4, inside.Count);
        Assert.Equal(Math.PI - near, inside[0].Along, 1e-12);
        Assert.Equal(0.9144, inside[0].Up, 1e-12);
        Assert.Equal(Math.PI - near, inside[1].Along, 1e-12);
        Assert.Equal(1.9144, inside[1].Up, 1e-12);
        Assert.Equal(Math.PI + near, inside[2].Along, 1e-12);
        Assert.Equal(Math.PI + far, outside[2].Along, 1e-12);
    }

    [Theory]
    [InlineData(OpeningShape.Arched)]
    [InlineData(OpeningShape.Round)]
    public void Outline_OfACurvedHead_EnclosesTheAreaTakenFromThePlumbFace(OpeningShape shape)
    {
        // Independent: an inscribed polygon against the integral used for face areas; 48 corners of an ellipse lack (2 pi / 48)^2 / 6, 0.29 %.
        var window = Houses.Window("w", 3, Length.FromMillimetres(800), Length.FromMillimetres(1000)) with { Shape = shape, Rise = shape == OpeningShape.Arched ? Length.FromMillimetres(300) : null, Header = null };
        var house = Houses.Round(Length.FromMillimetres(4000));
        var g = FromBuilding.Of(house with { Openings = [window] });
        var whole = FromBuilding.Of(house).Measures.InsideFaceArea;
        var outline = Unrolled.Outline(g, g.Openings[0], Face.Inside);
        Assert.Equal(1, Area(outline) / (whole - g.Measures.InsideFaceArea), 3e-3);
        Assert.All(outline, p => Assert.InRange(p.Along, 0, 2 * Math.PI * 2 + 1));
    }

    [Fact]
    public void Niche_Outline_SpansItsFace()
    {
        var niche = new Niche { Name = "n", Along = Along.At(new Angle(45)), Width = Length.FromMillimetres(400), Height = Length.FromMillimetres(500), Depth = Length.FromMillimetres(100), Sill = Length.FromMillimetres(1200) };
        var g = FromBuilding.Of(Houses.Round(Length.FromMillimetres(4000)) with { Niches = [niche] });
        var outline = Unrolled.Outline(g, g.Niches[0]);
        Assert.Equal(g.Niches[0].Span.From, outline.Min(p => p.Along), 1e-9);
        Assert.Equal(g.Niches[0].Span.To, outline.Max(p => p.Along), 1e-9);
        Assert.Equal(1.7, outline.Max(p => p.Up), 1e-12);
    }

    [Fact]
    public void StationOfOutside_IsTheInverseOfAlongOutside() =>
        Gen.Select(Houses.Plausible, Gen.Double[-1, 2]).ForAll((house, share) =>
        {
            var g = FromBuilding.Of(house);
            var station = share * g.Curve.Length;
            Assert.Equal(station, Unrolled.StationOfOutside(g, Unrolled.AlongOutside(g, station)), 1e-10);
        }, iter: Counts.Of(30, 1000));
}
