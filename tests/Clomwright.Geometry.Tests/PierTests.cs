using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

public sealed class PierTests
{
    private const double R = 2;
    private const double Thick = 14 * 0.0254;

    private static readonly House Room = Houses.Round(Length.FromMillimetres(4000));

    private static Opening Window(string name, double bearing, double splay = 0) => new()
    {
        Name = name, Kind = OpeningKind.Fixed, Along = Along.At(new Angle(bearing)), Width = Length.FromMillimetres(800), Height = Length.FromMillimetres(1000),
        Sill = Length.FromMillimetres(900), Splay = new Splay(new Angle(splay), default),
    };

    private static HouseGeometry Of(params Opening[] openings) => FromBuilding.Of(Room with { Openings = openings.ToSequence() });

    [Fact]
    public void Pier_BetweenStraightJambsInARoundWall_HasTheArcsOfTheClosedForm()
    {
        // Analytic: a jamb parallel to the ray at distance 0.4 meets the circle of radius r at asin(0.4 / r) from it.
        var pier = Of(Window("a", 0), Window("b", 60)).Piers[0];
        double Arc(double r) => r * (Math.PI / 3 - 2 * Math.Asin(0.4 / r));
        Assert.Equal("pier a|b", pier.Address);
        Assert.Equal(Arc(R), pier.WidthInside, 1e-12);
        Assert.Equal(Arc(R + Thick / 2), pier.WidthMiddle, 1e-12);
        Assert.Equal(Arc(R + Thick), pier.WidthOutside, 1e-12);
        Assert.Equal(pier.WidthInside, pier.Span.Width, 1e-12);
        Assert.Equal(2 * R * Math.Sin(Arc(R) / R / 2), pier.Narrowest, 1e-12);
        Assert.Equal(new Span(0.9, 1.9), pier.Heights);
    }

    [Fact]
    public void Piers_RunClockwiseFromTheFirstOpening()
    {
        var g = Of(Window("c", 200), Window("a", 20), Window("b", 110));
        Assert.Equal(["a", "b", "c"], g.Openings.Select(o => o.Opening.Name));
        Assert.Equal(["pier a|b", "pier b|c", "pier c|a"], g.Piers.Select(p => p.Address));
        Assert.Equal(g.Curve.Length, g.Piers.Sum(p => p.Span.Width) + g.Openings.Sum(o => o.Inside.Width), 1e-12);
    }

    [Fact]
    public void OneOpening_HasOnePierRoundToItself_MeasuredAlongTheArc()
    {
        var g = Of(Window("a", 20));
        var pier = Assert.Single(g.Piers);
        Assert.Equal("pier a|a", pier.Address);
        Assert.Equal(2 * Math.PI * R - 2 * R * Math.Asin(0.4 / R), pier.Narrowest, 1e-12);
        Assert.Empty(Of().Piers);
    }

    [Fact]
    public void InsideSplay_NarrowsThePierAtTheInsideFace()
    {
        // Independent: the corner where the splayed jamb u = 0.4 + tan(20 deg) (Thick/2 - w) meets the circle, by halving; the pier is the chord between two such corners.
        var tan = Math.Tan(20 * Math.PI / 180);
        double low = 0, high = 0.6;
        for (var i = 0; i < 60; i++)
        {
            var u = (low + high) / 2;
            var w = Math.Sqrt(R * R - u * u) - R;
            (low, high) = u < 0.4 + tan * (Thick / 2 - w) ? (u, high) : (low, u);
        }

        var pier = Of(Window("a", 0, 20), Window("b", 60, 20)).Piers[0];
        var angle = Math.PI / 3 - 2 * Math.Asin(low / R);
        Assert.Equal(R * angle, pier.WidthInside, 1e-11);
        Assert.Equal(2 * R * Math.Sin(angle / 2), pier.Narrowest, 1e-11);
    }

    [Fact]
    public void Niche_InAPier_IsTakenFromItAtItsHeight()
    {
        // Analytic: at the inside face the chord from jamb to jamb less the niche's width, which is full up to its springing.
        var niche = new Niche { Name = "lamp", Along = Along.At(new Angle(30)), Width = Length.FromMillimetres(300), Height = Length.FromMillimetres(400), Depth = Length.FromMillimetres(100), Sill = Length.FromMillimetres(1200) };
        var g = FromBuilding.Of(Room with { Openings = [Window("a", 0), Window("b", 60)], Niches = [niche] });
        var chord = 2 * R * Math.Sin((Math.PI / 3 - 2 * Math.Asin(0.4 / R)) / 2);
        Assert.Equal(chord - 0.3, g.Piers[0].Narrowest, 1e-12);
        Assert.InRange(g.Piers[0].NarrowestAt, 1.2, 1.45);
        Assert.Equal(["lamp"], g.Piers[0].Niches);
        Assert.Equal("pier a|b", g.Niches[0].Pier);
        Assert.Equal(Thick - 0.1 - (R + Thick - Math.Sqrt(Math.Pow(R + Thick, 2) - 0.0225)), g.Niches[0].LeftBehind, 1e-12);
    }

    [Fact]
    public void RoundWindows_AreNarrowestApartAtTheirMiddles()
    {
        var g = Of(Window("a", 0) with { Shape = OpeningShape.Round }, Window("b", 60) with { Shape = OpeningShape.Round });
        Assert.Equal(2 * R * Math.Sin((Math.PI / 3 - 2 * Math.Asin(0.4 / R)) / 2), g.Piers[0].Narrowest, 1e-9);
        Assert.Equal(1.4, g.Piers[0].NarrowestAt, 1e-6);
    }

    [Fact]
    public void WindowAboveADoor_StandsInOneGroupWithIt()
    {
        var light = Window("light", 0) with { Sill = Length.FromMillimetres(2100), Height = Length.FromMillimetres(200) };
        var door = Window("door", 2) with { Sill = Length.Zero, Height = Length.FromMillimetres(1900) };
        var g = Of(light, door, Window("b", 60));
        Assert.Empty(g.Diagnostics);
        Assert.Equal(["pier door|b", "pier b|light"], g.Piers.Select(p => p.Address));
    }

    [Fact]
    public void OpeningsThatShareNoHeight_HaveAPierFromTheLowerHeadToTheHigherSill()
    {
        var g = Of(Window("low", 0) with { Height = Length.FromMillimetres(300) }, Window("high", 60) with { Sill = Length.FromMillimetres(1700), Height = Length.FromMillimetres(400) });
        Assert.Equal(1.2, g.Piers[0].Heights.From, 1e-12);
        Assert.Equal(1.7, g.Piers[0].Heights.To, 1e-12);
        Assert.True(g.Piers[0].Narrowest > 0);
    }

    [Fact]
    public void MovingTheNextOpeningAway_NeverMakesThePierNarrower() =>
        // Property: a wider pier never fails a rule that a narrower one met.
        Gen.Select(Gen.Double[40, 80], Gen.Double[0.01, 60], Gen.Double[0, 25]).ForAll((bearing, more, splay) =>
        {
            var near = Of(Window("a", 0, splay), Window("b", bearing, splay)).Piers[0];
            var far = Of(Window("a", 0, splay), Window("b", bearing + more, splay)).Piers[0];
            Assert.True(far.Narrowest >= near.Narrowest && far.WidthInside >= near.WidthInside);
        }, iter: Counts.Of(40, 2000));

    [Fact]
    public void Narrowest_OfAnyPlausibleHouse_IsNeverMoreThanItsArcs() =>
        Houses.Plausible.ForAll(house => Assert.All(FromBuilding.Of(house).Piers, pier =>
        {
            Assert.InRange(pier.Narrowest, 0, Math.Min(pier.WidthInside, pier.WidthOutside) + 1e-9);
            Assert.InRange(pier.NarrowestAt, pier.Heights.From, pier.Heights.To);
        }), iter: Counts.Of(30, 2000));
}
