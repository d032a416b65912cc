using Clomwright.Analysis.FreeZone;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;
using FromBuilding = Clomwright.Geometry.FromBuilding;

namespace Clomwright.Analysis.Tests;

/// <summary>Where a crew may improvise, at every border. Rank: by hand, from the numbers of the data file; a place 1 mm inside of a border is free, 1 mm outside is not.</summary>
public sealed class FreeZoneTests
{
    private const double Foot = 0.0254 * 12, Beside = Foot, Landing = Foot, UnderLanding = 0.0254 * 24, UnderHeader = UnderLanding, Near = 0.0254 * 6, Step = 0.001;

    /// <summary>A ring of 5 m without roof and openings: nothing carries but the wall itself.</summary>
    private static readonly House Bare = Houses.Round(Length.FromMillimetres(5000)) with { Roof = null, Openings = [], Niches = [], Embeds = [], Tees = null };

    private static (HouseGeometry Geometry, FreeZoneResult Zone) Of(House house)
    {
        var geometry = FromBuilding.Of(house);
        return (geometry, FromGeometry.Of(geometry));
    }

    private static void Border(HouseGeometry g, FreeZoneResult zone, double station, double height, double along, double up)
    {
        Assert.True(zone.Holds(g.Curve.Wrap(station + along * Step), height + up * Step, g.Curve.Length), $"free at {station}, {height}");
        Assert.False(zone.Holds(g.Curve.Wrap(station - along * Step), height - up * Step, g.Curve.Length), $"taken at {station}, {height}");
    }

    [Fact]
    public void ABareWall_IsFreeFromItsFootUp()
    {
        var (g, zone) = Of(Bare);
        var (bottom, top) = (g.Wall.Base.Metres, g.Wall.Top.Metres);
        Border(g, zone, 1, bottom + Foot, 0, 1);
        Assert.Equal(1 - Foot / (top - bottom), zone.Share, 1e-9);
        Assert.Equal(0.0254 * 4, zone.Depth, 1e-12);
        Assert.Equal(FreeZoneNumbers.Keys.Count, zone.Assumptions.Count);
    }

    [Fact]
    public void Openings_Headers_Niches_Embeds_KeepTheirDistance()
    {
        var window = new Opening
        {
            Name = "window", Kind = OpeningKind.Fixed, Along = Along.At(Length.FromMillimetres(4000)), Width = Length.FromMillimetres(600), Height = Length.FromMillimetres(500), Sill = Length.FromMillimetres(1000),
            Header = new Header(2, Length.FromMillimetres(100), Length.FromMillimetres(100), Length.FromMillimetres(200)),
        };
        var niche = new Niche
        {
            Name = "n", Along = Along.At(Length.FromMillimetres(8000)), Width = Length.FromMillimetres(400), Height = Length.FromMillimetres(400), Depth = Length.FromMillimetres(80), Sill = Length.FromMillimetres(1200), Head = NicheHead.Flat,
        };
        var box = new Embed { Name = "e", Kind = EmbedKind.Box, Along = Along.At(Length.FromMillimetres(11000)), Height = Length.FromMillimetres(1300), Width = Length.FromMillimetres(100), Depth = Length.FromMillimetres(50) };
        var plain = window with { Name = "plain", Along = Along.At(Length.FromMillimetres(13500)), Header = null };
        var (g, zone) = Of(Bare with { Openings = [window, plain], Niches = [niche], Embeds = [box] });
        var header = g.Openings[0].Header!;
        Border(g, zone, g.Openings[1].Widest.From - Beside, 1.2, -1, 0);
        Border(g, zone, g.Openings[1].Widest.To + Beside, 1.2, 1, 0);
        Border(g, zone, g.Openings[1].Widest.Middle, 1.5 + Beside, 0, 1);
        Border(g, zone, header.Span.From - Beside, header.Bottom, -1, 0);
        Border(g, zone, header.Span.To + Beside, header.Bottom, 1, 0);
        Border(g, zone, header.Span.To + 0.2, header.Bottom - UnderHeader, 0, -1);
        Border(g, zone, header.Span.Middle, header.Top + Beside, 0, 1);
        Border(g, zone, g.Niches[0].Span.From - Beside, 1.3, -1, 0);
        Border(g, zone, g.Niches[0].Station, 1.6 + Beside, 0, 1);
        Border(g, zone, 11 + 0.05 + Near, 1.3, 1, 0);
        Border(g, zone, 11, 1.3 - 0.05 - Near, 0, -1);
    }

    [Fact]
    public void UnderAPole_IsLeftAlone_AndUnderASecondaryNot()
    {
        var roof = new Building.Roof.Radial(6, PoleSize.Even(Length.FromMillimetres(150)), new Slope(0.2)) { Eave = Length.FromMillimetres(600), Secondaries = new Secondaries(1, Length.FromMillimetres(80)) };
        var (g, zone) = Of(Bare with { Roof = roof });
        var top = g.Wall.Top.Metres;
        foreach (var pole in g.Landings.Where(l => !l.Secondary))
        {
            Border(g, zone, pole.Station + Landing, top - 0.05, 1, 0);
            Border(g, zone, pole.Station - Landing, top - 0.05, -1, 0);
            Border(g, zone, pole.Station, top - UnderLanding, 0, -1);
        }

        Assert.All(g.Landings.Where(l => l.Secondary), l => Assert.True(zone.Holds(l.Station, top - 0.05, g.Curve.Length)));
    }

    [Theory]
    [InlineData(914.4, true)]
    [InlineData(914.3, false)]
    public void APier_OfJustThreeFeet_IsNotNarrow(double narrowest, bool free)
    {
        // The narrowest section of a pier between plain windows is the straight distance of its jambs on the inside curve: the second window is moved until that is what is asked.
        Opening Window(string name, double station) => new()
        {
            Name = name, Kind = OpeningKind.Fixed, Along = Along.At(new Length((long)(station * 1e9))), Width = Length.FromMillimetres(600), Height = Length.FromMillimetres(500), Sill = Length.FromMillimetres(1800),
        };
        double low = 4.8, high = 6.5;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = FromBuilding.Of(Bare with { Openings = [Window("a", 4), Window("b", middle)] }).Piers[0].Narrowest < narrowest / 1000 ? (middle, high) : (low, middle);
        }

        var (g, zone) = Of(Bare with { Openings = [Window("a", 4), Window("b", high)] });
        Assert.Equal(narrowest / 1000, g.Piers[0].Narrowest, 1e-7);
        Assert.Equal(free, zone.Holds(g.Piers[0].Span.Middle, g.Wall.Base.Metres + Foot + 0.3, g.Curve.Length));
    }

    [Fact]
    public void AThinWall_HasNoFreeZone_AndTheAuthorMayChangeTheNumbers()
    {
        Assert.Empty(Of(Bare with { Wall = Bare.Wall with { ThicknessAtTop = new Length(Length.PerInch * 119 / 10) } }).Zone.Boxes);
        Assert.NotEmpty(Of(Bare with { Wall = Bare.Wall with { ThicknessAtTop = Length.FromInches(12) } }).Zone.Boxes);
        var (g, zone) = Of(Bare with { Assumed = [new AssumedNumber("free-zone-foot", 0.5)] });
        Border(g, zone, 1, g.Wall.Base.Metres + 0.5, 0, 1);
        Assert.Equal(FreeZoneNumbers.Keys.Count - 1, zone.Assumptions.Count);
    }

    [Fact]
    public void AnyHouse_BoxesDoNotOverlap_AndKeepClearOfOpenings() => Houses.Plausible.ForAll(
        house =>
        {
            var (g, zone) = Of(house);
            var boxes = zone.Boxes;
            for (var i = 0; i < boxes.Count; i++)
            {
                for (var j = i + 1; j < boxes.Count; j++)
                {
                    var shift = Math.Round((boxes[i].Stations.Middle - boxes[j].Stations.Middle) / g.Curve.Length) * g.Curve.Length;
                    var wide = Math.Min(boxes[i].Stations.To, boxes[j].Stations.To + shift) - Math.Max(boxes[i].Stations.From, boxes[j].Stations.From + shift);
                    Assert.False(wide > 1e-6 && Math.Min(boxes[i].Top, boxes[j].Top) - Math.Max(boxes[i].Bottom, boxes[j].Bottom) > 1e-6);
                }
            }

            Assert.All(g.Openings, o => Assert.False(zone.Holds(g.Curve.Wrap(o.Widest.Middle), Math.Max(o.Sill, g.Wall.Base.Metres), g.Curve.Length)));
            Assert.InRange(zone.Share, 0, 1);
        },
        iter: Counts.Of(60, 2000));
}
