using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.WallTop;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;
using Placing = Clomwright.Geometry.FromBuilding;
using RoofOf = Clomwright.Analysis.Roof.FromGeometry;

namespace Clomwright.Analysis.Tests.WallTop;

/// <summary>Straps that hold down beside tees.</summary>
public sealed class StrapTests
{
    private static readonly StrapAnchor Anchor = new(Length.FromInches(24), Length.FromInches(24)) { Thickness = Length.FromMillimetres(1), Pull = new Force(3000) };

    private static (HouseGeometry Geometry, RoofResult Roof, WallTopResult Top) Of(House house)
    {
        var geometry = Placing.Of(house);
        var roof = RoofOf.Of(geometry);
        return (geometry, roof, FromRoof.Of(geometry, roof));
    }

    /// <summary>A light roof in a storm lifts. Poles land at every 45 degrees from 0.</summary>
    private static House Storm(params Embed[] straps) => Houses.Round(Length.FromFeet(18)) with
    {
        Site = new Site { Loads = "asce7-16", GroundSnow = new Stress(1000), WindSpeed = new Speed(85), Exposure = "D", SeismicSds = 0 },
        BondBeam = new BondBeam(Length.FromInches(10), Length.FromInches(4), Length.Zero), Openings = [], Niches = [], Tees = null, Embeds = straps.ToSequence(),
        Roof = new Building.Roof.Reciprocal(8, Length.FromInches(33), PoleSize.Even(Length.FromInches(8))) { Eave = Length.FromInches(24), Deck = Length.FromInches(1) },
    };

    private static Embed Strap(double bearing, StrapAnchor? anchor) => new()
    {
        Name = $"strap {bearing}", Kind = EmbedKind.Strap, Along = Along.At(new Angle(bearing)), Height = Length.FromFeet(6), Width = Length.FromMillimetres(30), Anchor = anchor,
    };

    private static MemberCheck Check(WallTopResult top, string key, string subject) => top.Straps.Single(c => c.Key == key && c.Subject == subject).Check.Value!;

    // Rank analytic: a strap under every pole takes what that pole lifts; its cob is 0.6 x 14 kN/m3 x t D B; its steel 0.6 x 0.75 x 33 ksi x 30 mm x 1 mm, its maker's 3 kN the less.
    [Fact]
    public void StrapUnderEveryPole_TakesItsLift_AgainstItsCobAndItsSteel()
    {
        var (geometry, roof, top) = Of(Storm([.. Enumerable.Range(0, 8).Select(i => Strap(45 * i, Anchor))]));
        var lifted = roof.Combined.States.Where(s => s.Combination.DeadIsLeast).Select(s => s.Forces.PlateReaction.Select(a => Math.Max(0, -a)).ToArray()).ToArray();
        Assert.True(lifted.Max(s => s.Max()) > 0);
        for (var i = 0; i < 8; i++)
        {
            var subject = $"strap {45 * i}";
            // 1e-6: bearings of poles and straps meet the beam and the wall's foot a hair apart.
            Assert.Equal(lifted.Max(s => s[i]), Check(top, "strap-uplift", subject).Demand.Si, 1e-6 * lifted.Max(s => s.Max()));
            Near.Relative(0.6 * 14_000 * geometry.Wall.ThicknessAt(geometry.Wall.Top.Metres) * 0.6096 * 0.6096, Check(top, "strap-uplift", subject).Capacity.Si, 1e-9);
            Near.Relative(Math.Min(3000, 0.6 * 0.75 * 33_000 * 6894.757293168361 * 0.03 * 0.001), Check(top, "strap-pull", subject).Capacity.Si, 1e-9);
            Assert.Equal(Check(top, "strap-uplift", subject).Demand.Si, Check(top, "strap-pull", subject).Demand.Si);
        }

        Printed.Holds(top.Calculations);
    }

    // Rank property: sum of what tees and straps take is what the poles lift in each state's own worst; a strap between two tees takes from both.
    [Fact]
    public void AStrapBetweenTees_TakesFromThem()
    {
        var tees = new Tees(Length.FromFeet(8), Length.FromInches(24), Length.FromInches(12));
        var without = Of(Storm() with { Tees = tees }).Top;
        var with = Of(Storm(Strap(22.5, Anchor)) with { Tees = tees }).Top;
        double Most(WallTopResult top, string subject) => top.Tees.Single(t => t.Key == "tee-uplift" && t.Subject == subject).Check.Value!.Demand.Si;
        Assert.All(without.Tees.Where(t => t.Key == "tee-uplift"), t => Assert.True(Most(with, t.Subject) <= Most(without, t.Subject) + 1e-9));
        Assert.Equal(without.HoldDowns.Count + 1, with.HoldDowns.Count);
    }

    // Rank property: nothing is counted on a strap whose anchor is not described, lies in a tee's cob, under an opening, or below the wall.
    [Theory]
    [InlineData("analysis.walltop.strap-not-described", 22.5, null)]
    [InlineData("analysis.walltop.strap-same-cob", 0.0, 24.0)]
    [InlineData("analysis.walltop.strap-in-opening", 101.0, 24.0)]
    [InlineData("analysis.walltop.strap-below-cob", 22.5, 200.0)]
    public void AStrapThatHoldsNothingOfItsOwn_IsNotChecked(string why, double bearing, double? depth)
    {
        var house = Storm(Strap(bearing, depth is { } d ? Anchor with { Depth = Length.FromInches((long)d) } : null)) with
        {
            Openings = [Houses.Door("door", 90)], Tees = new Tees(Length.FromFeet(4), Length.FromInches(24), Length.FromInches(12)),
        };
        var top = Of(house).Top;
        Assert.Equal(["strap-uplift", "strap-pull"], top.Straps.Select(s => s.Key));
        Assert.All(top.Straps, s => Assert.Equal(why, s.Check.NotChecked!.Key));
        Assert.DoesNotContain(top.HoldDowns, h => h.Strap is not null);
    }

    // Rank property: with neither section nor maker's sheet its pull is not checked; its cob is.
    [Fact]
    public void AStrapWithoutASection_HasNoPull()
    {
        var top = Of(Storm(Strap(0, new StrapAnchor(Length.FromInches(24), Length.FromInches(24))))).Top;
        Assert.True(top.Straps.Single(s => s.Key == "strap-uplift").Check.Is);
        Assert.Equal("analysis.walltop.strap-section", top.Straps.Single(s => s.Key == "strap-pull").Check.NotChecked!.Key);
    }
}
