using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>Niches, embeds and what they take from the wall.</summary>
public sealed class RecessTests
{
    private static readonly House Room = Houses.Round(Length.FromMillimetres(4000)) is var house ? house with { Wall = house.Wall with { InsideTaper = new Slope(0.02), OutsideTaper = new Slope(0.06) } } : null!;

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);

    private static Niche Lamp => new() { Name = "lamp", Along = Along.At(new Angle(30)), Width = Mm(400), Height = Mm(500), Depth = Mm(150), Sill = Mm(1200) };

    /// <summary>Midpoint rule over the face of the niche, 800 x 800, of the depth from a leaning circle to the back plane.</summary>
    private static double Independent(Func<double, double> radius, Func<double, double> top, double back, int sign)
    {
        const int N = 800;
        var sum = 0.0;
        for (var i = 0; i < N; i++)
        {
            var u = -0.2 + 0.4 * (i + 0.5) / N;
            var high = top(u);
            for (var j = 0; j < N; j++)
            {
                var z = 1.2 + (high - 1.2) * (j + 0.5) / N;
                sum += sign * (back - Math.Sqrt(radius(z) * radius(z) - u * u)) * 0.4 / N * (high - 1.2) / N;
            }
        }

        return sum;
    }

    [Fact]
    public void ArchedNicheInside_DisplacesTheIndependentVolume()
    {
        // Independent; the midpoint rule across the semicircle's square-root ends leaves about 1e-5.
        var g = FromBuilding.Of(Room with { Niches = [Lamp] });
        double Radius(double z) => 2 + g.Wall.InsideOffset(z);
        var expected = Independent(Radius, u => 1.5 + Math.Sqrt(0.04 - u * u), Radius(1.2) + 0.15, 1);
        Assert.Equal(1, g.Measures.NicheVolume / expected, 3e-5);
        Assert.Equal(g.Measures.GrossVolume - g.Measures.NicheVolume, g.Measures.NetVolume, 1e-12);
    }

    [Fact]
    public void FlatNicheOutside_DisplacesTheIndependentVolume()
    {
        // Independent; smooth, so the midpoint rule is good to 1e-6.
        var g = FromBuilding.Of(Room with { Niches = [Lamp with { Face = Face.Outside, Head = NicheHead.Flat }] });
        double Radius(double z) => 2 + g.Wall.OutsideOffset(z);
        var expected = Independent(Radius, _ => 1.7, Radius(1.2) - 0.15, -1);
        Assert.Equal(1, g.Measures.NicheVolume / expected, 1e-6);
    }

    [Fact]
    public void Bottles_ThroughTheWall_DisplaceCylindersLiftByLift()
    {
        // Analytic: discs of 80 mm times the thickness at their height; a bottle whose middle stands on a lift line is half in each.
        var bottles = new Embed { Name = "bottles", Kind = EmbedKind.Bottle, Along = Along.At(new Angle(0)), Height = Length.FromInches(44), Count = 5, Spacing = Mm(150), Width = Mm(80), Through = true };
        var g = FromBuilding.Of(Room with { Embeds = [bottles] });
        var each = Math.PI * 0.0016 * g.Wall.ThicknessAt(44 * 0.0254);
        Assert.Equal(5 * each, g.Measures.EmbedVolume, 1e-12);
        Assert.Equal(["bottles", "bottles#2", "bottles#3", "bottles#4", "bottles#5"], g.Embeds.Select(e => e.Address));
        Assert.Equal(0.6, g.Embeds[4].Station, 1e-12);
        Assert.Equal(3, g.Embeds[0].Lift);
        Assert.Equal(2.5 * each, g.Lifts[2].GrossVolume - g.Lifts[2].NetVolume, 1e-12);
        Assert.Equal(2.5 * each, g.Lifts[3].GrossVolume - g.Lifts[3].NetVolume, 1e-12);
    }

    [Fact]
    public void Embed_InTheStemOrWithoutASize_DisplacesNoCob()
    {
        var drain = new Embed { Name = "drain", Kind = EmbedKind.Sleeve, Along = Along.At(new Angle(0)), Height = Length.FromInches(2), Width = Mm(80), Through = true };
        var wire = new Embed { Name = "wire", Kind = EmbedKind.Wire, Along = Along.At(new Angle(20)), Height = Mm(900) };
        var g = FromBuilding.Of(Room with { Embeds = [drain, wire] });
        Assert.Equal(0, g.Measures.EmbedVolume);
        Assert.Equal([-1, 2], g.Embeds.Select(e => e.Lift));
    }

    [Fact]
    public void Box_AcrossALiftLine_IsSharedByHeight()
    {
        var box = new Embed { Name = "box", Kind = EmbedKind.Box, Along = Along.At(new Angle(0)), Height = Length.FromInches(45), Width = Mm(100), Size = Length.FromInches(4), Depth = Mm(75) };
        var g = FromBuilding.Of(Room with { Embeds = [box] });
        Assert.Equal(0.1 * 0.1016 * 0.075, g.Measures.EmbedVolume, 1e-14);
        Assert.Equal(0.25, (g.Lifts[2].GrossVolume - g.Lifts[2].NetVolume) / g.Measures.EmbedVolume, 1e-10);
    }
}
