using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>Tees stand in whole cob, one for each pole where the wall has room.</summary>
public sealed class TeePlaceTests
{
    // Rank property: no bar comes within 2 in of an opening, header or niche that reaches above it; bars do not touch. 1e-6 m: sums round the ring.
    [Fact]
    public void Bars_OfAnyPlausibleHouse_LieInWholeCob() => Houses.Plausible.ForAll(
        house =>
        {
            var g = FromBuilding.Of(house);
            if (house.Tees is not { } made)
            {
                return;
            }

            Span[] cuts =
            [
                .. g.Openings.Where(o => o.Head > Bar(g)).Select(o => o.Widest), .. g.Openings.Select(o => o.Header).OfType<HeaderPlace>().Where(h => h.Top > Bar(g)).Select(h => h.Span),
                .. g.Niches.Where(n => n.Top > Bar(g)).Select(n => n.Span),
            ];
            var leg = made.Timber?.Metres ?? 0.1016;
            foreach (var tee in g.Tees.Where(t => t.InSolidCob))
            {
                Assert.All(g.Embeds.Where(e => e.Embed.Through && e.Height + Half(e.Embed) > Bar(g)), e => Assert.True(Between(g, e.Station, tee.Station) >= Half(e.Embed) + leg / 2 + 0.0508 - 1e-6, $"tee {tee.Number} and {e.Address}"));
                Assert.All(cuts, cut => Assert.True(Clear(g, cut, tee.Station) >= made.Bar.Metres / 2 + 0.0508 - 1e-6, $"tee {tee.Number}"));
            }

            var whole = g.Tees.Where(t => t.InSolidCob).ToArray();
            Assert.All(whole, a => Assert.All(whole.Where(b => b != a), b => Assert.True(Between(g, a.Station, b.Station) >= made.Bar.Metres - 1e-6)));
        },
        iter: Counts.Of(60, 2000));

    private static double Half(Embed embed) => (embed.Width ?? embed.Size ?? Length.Zero).Metres / 2;

    // Rank analytic: a thimble of 8 in under a pole, high in the wall: the leg of 4 in stands 2 in clear of it, 8 in from its middle. 1e-6 m: stations are found by root.
    [Fact]
    public void ALeg_StandsClearOfAThimble()
    {
        var bare = Houses.HeronPoint with { Openings = [], Niches = [], Embeds = [], Tees = Houses.HeronPoint.Tees! with { Timber = Length.FromInches(4) } };
        var landing = FromBuilding.Of(bare).Landings.First(l => !l.Secondary);
        Embed thimble = new() { Name = "thimble", Kind = EmbedKind.Sleeve, Along = Along.At(Length.Nearest(landing.Station)), Height = bare.Wall.Top - Length.FromInches(10), Width = Length.FromInches(8), Through = true };
        double Away(House house) => FromBuilding.Of(house) is var g ? g.Tees.Min(t => Between(g, t.Station, landing.Station)) : 0;
        Assert.Equal(0, Away(bare), 1e-6);
        Assert.Equal(Length.FromInches(8).Metres, Away(bare with { Embeds = [thimble] }), 1e-6);
    }

    // Rank analytic: on a round wall without openings each pole has its tee under it, and none stand further apart than is written.
    [Theory]
    [InlineData(8, 48)]
    [InlineData(5, 30)]
    [InlineData(12, 60)]
    public void RoundWall_WithoutOpenings_HasATeeUnderEachPole(int poles, int inches)
    {
        var house = Houses.Round(Length.FromFeet(18)) with
        {
            Tees = new Tees(Length.FromInches(inches), Length.FromInches(24), Length.FromInches(12)),
            Roof = new Roof.Reciprocal(poles, Length.FromInches(33), PoleSize.Even(Length.FromInches(8))) { Eave = Length.FromInches(24), FirstBearing = new Angle(10) },
        };
        var g = FromBuilding.Of(house);
        Assert.Equal(poles, g.Tees.Count(t => t.Pole is not null));
        Assert.All(g.Landings, l => Assert.Contains(g.Tees, t => t.Pole == l.Name && Between(g, t.Station, l.Station) < 1e-9));
        // 1e-6: the gap is divided evenly, so it may stand exactly at the spacing.
        Assert.All(g.Tees, t => Assert.True(t.ToNext <= inches * 0.0254 + 1e-6));
    }

    // Rank property: the ways from tee to tee add up to the bond beam once round.
    [Fact]
    public void Ways_AddUpToTheRing()
    {
        var g = FromBuilding.Of(Houses.HeronPoint);
        var top = g.Wall.Top.Metres;
        Assert.Equal(g.Curve.OffsetLength((g.Wall.InsideOffset(top) + g.Wall.OutsideOffset(top)) / 2), g.Tees.Sum(t => t.ToNext), 1e-9);
        Assert.All(g.Tees, t => Assert.True(t.InSolidCob));
    }

    private static double Bar(HouseGeometry g) => g.Tees.Count > 0 ? g.Tees[0].BarHeight : double.PositiveInfinity;

    private static double Between(HouseGeometry g, double a, double b)
    {
        var d = g.Curve.Wrap(a - b);
        return Math.Min(d, g.Curve.Length - d);
    }

    /// <summary>Distance of a station from a stretch; negative inside.</summary>
    private static double Clear(HouseGeometry g, Span cut, double station)
    {
        var inside = g.Curve.Wrap(station - cut.From);
        return inside <= cut.Width ? -Math.Min(inside, cut.Width - inside) : Math.Min(inside - cut.Width, g.Curve.Length - inside);
    }
}
