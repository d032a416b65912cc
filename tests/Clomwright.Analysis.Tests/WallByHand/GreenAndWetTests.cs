using Clomwright.Analysis.Drying;
using Clomwright.Analysis.WallByHand;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;
using Placing = Clomwright.Geometry.FromBuilding;

namespace Clomwright.Analysis.Tests.WallByHand;

/// <summary>The wall while it is built, and with its foot soaked.</summary>
public sealed class GreenAndWetTests
{
    // Rank analytic: a plumb metre of wall tips under p = gamma t^2/h (moment p h^2/2 against weight at half the thickness), at the gust sqrt(2 p/(rho C)); with strong cob nothing is crushed (1e-6: f is 1e12).
    [Fact]
    public void FreeWall_TipsAtGammaTSquaredOverH()
    {
        var wall = Placing.Of(Houses.Round(Length.FromFeet(18))).Wall;
        double t = 14 * 0.0254, h = 1.5;
        var standing = new FreeStanding(wall, h, 14_000, 1e12);
        Near.Relative(14_000 * t * t / h, standing.Tips, 1e-6);
        Near.Relative(Math.Sqrt(2 * 14_000 * t * t / h / (1.25 * 1.45)), standing.Gust(1.45, 1.25), 1e-6);
        Near.Relative(h / 2, standing.Rise, 1e-12);
        // Rank analytic: soft cob takes N/(2 0.85 f) off the arm.
        Near.Relative(t / 2 - 14_000 * t * h / (2 * 0.85 * 60_000), new FreeStanding(wall, h, 14_000, 60_000).Arm, 1e-9);
    }

    // Rank published (from memory): EN 1991-1-4 table 7.9, zone A without a return corner, at its printed lengths over height; evenly between.
    [Theory]
    [InlineData(2, 2.3)]
    [InlineData(3, 2.3)]
    [InlineData(4, 2.6)]
    [InlineData(5, 2.9)]
    [InlineData(10, 3.4)]
    [InlineData(30, 3.4)]
    public void FreeEnd_IsTheTable(double ratio, double coefficient) => Assert.Equal(coefficient, GreenWalls.EndCoefficient(ratio), 1e-12);

    // Rank analytic: a plumb ring without openings presses its foot with gamma h at every lift, and asks 1.3 of that where cob is tossed.
    [Fact]
    public void GreenFoot_IsGammaH()
    {
        var hand = PierTests.Of(Houses.Round(Length.FromFeet(18))).Hand;
        Assert.All(hand.Green.Lifts, l =>
        {
            Near.Relative(19_000 * l.Height, l.Pressure, 1e-9);
            Near.Relative(1.3 * l.Pressure, l.Strength, 1e-9);
            Assert.Null(l.TipsEnd);
        });
    }

    // Rank published: people leave the lee of a masonry wall that is being built at 20 mph on its first day and 35 mph after it (Standard Practice for Bracing Masonry Walls, 2012): never later here, and sooner where the wall tips sooner.
    [Fact]
    public void PeopleLeave_NoLaterThanThePractice()
    {
        var lifts = PierTests.Of(Houses.HeronPoint).Hand.Green.Lifts;
        Assert.All(lifts, l => Assert.True(l.Leave is null or <= 35 * 0.44704 + 1e-9 && l.LeaveFresh is null or <= 20 * 0.44704 + 1e-9));
        Assert.Null(lifts[0].Leave);
        Assert.NotNull(lifts[^1].Leave);
        var thin = PierTests.Of(Houses.HeronPoint with { Wall = Houses.HeronPoint.Wall with { ThicknessAtTop = Length.FromInches(5), OutsideTaper = default } }).Hand.Green.Lifts[^1];
        Assert.True(thin.Leave < 20 * 0.44704);
    }

    // Rank property: above the height that is told the wall falls short in the wind of the site, below it stands; a higher wall stands less wind.
    [Fact]
    public void BraceHeight_IsWhereItJustStands()
    {
        var hand = PierTests.Of(Houses.HeronPoint).Hand;
        var end = hand.Green.Free.Single(f => f.Subject == "at a free end").Check.Value!;
        Assert.True(end.Use > 1);
        Assert.InRange(hand.Green.BraceEnd!.Value, 0.5, 2.2);
        foreach (var (low, high) in hand.Green.Lifts.Zip(hand.Green.Lifts.Skip(1)))
        {
            Assert.True(high.TipsMiddle < low.TipsMiddle);
            Assert.True(high.Water <= low.Water);
        }

        var calm = PierTests.Of(Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { WindSpeed = new Speed(20) } }).Hand;
        Assert.Null(calm.Green.BraceEnd);
        Assert.True(calm.Green.Free.All(f => f.Check.Value!.Use < 1));
        var unknown = PierTests.Of(Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { WindSpeed = null } }).Hand;
        Assert.All(unknown.Green.Free, f => Assert.NotNull(f.Check.NotChecked));
    }

    // Rank analytic: the blow worked from the calculation's own mass: half the pole from 0.3 m, stuck to a wall that turns about its foot.
    [Fact]
    public void PoleDrop_IsAPlasticBlow()
    {
        var (geometry, roof, _, hand) = PierTests.Of(Houses.HeronPoint);
        var check = hand.Green.PoleDrop.Check.Value!;
        var half = roof.Reciprocal.Value!.Poles.Max(p => p.Mass!.Value) / 2;
        var h = (geometry.Wall.Top - geometry.Wall.Base).Metres;
        var mean = (geometry.Wall.ThicknessAt(geometry.Wall.Base.Metres) + geometry.Wall.ThicknessAt(geometry.Wall.Top.Metres)) / 2;
        var wall = 14_000 * mean * h * (h + 8 * 0.0254) / 9.80665 / 3;
        Near.Relative(half * 9.80665 * 0.3 * half / (half + wall), check.Demand.Si, 1e-9);
        Assert.True(check.Use < 1);
    }

    // Rank analytic: at the water content told nothing is left: strength by water equals what presses; at the safe one 1.5 is left. The skin told leaves N = f_k b_e (t - d - 2 (|e| + d/2)).
    [Fact]
    public void WetFoot_EndsWhereItSays()
    {
        var (_, _, _, hand) = PierTests.Of(Houses.HeronPoint);
        var wet = hand.Wet;
        Assert.Equal(hand.Piers.Select(p => p.Address), wet.Piers.Select(p => p.Address));
        Assert.All(wet.Piers, p =>
        {
            Assert.True(p.WaterSafe < p.WaterGone && p.SkinSafe < p.SkinGone && p.SkinSafe < p.SkinSafeOther);
            Assert.True(p.Lost > 1);
        });
        Assert.Equal(wet.Curve.Select(c => c.Margin).OrderDescending(), wet.Curve.Select(c => c.Margin));
        var worst = wet.Piers.Single(p => p.Address == wet.Worst);
        var earth = DryingNumbers.Of([]);
        var strength = new Strength(0.32, 0.18, wet.Curve[0].Strength, wet.Rest);
        Near.Relative(worst.Pressure, strength.Compressive(worst.WaterGone), 1e-9);
        Near.Relative(1.5 * worst.Pressure, strength.Compressive(worst.WaterSafe), 1e-9);
        Assert.Equal(0.32, earth["drying-liquid-limit"]);
        var check = wet.Checks.Single(c => c.Subject == wet.Worst).Check.Value!;
        var skin = check.How.Steps.Single(s => s.Key == "wet-skin");
        double Of(string name) => skin.Symbols.Single(s => s.Name == name).Value.Si;
        var (d, e) = (skin.Result.Value.Si, Math.Abs(Of("e")));
        Near.Relative(1.5 * Of("N"), Of("f_k") * Of("b_e") * (Of("t") - d - 2 * (e + d / 2)), 1e-9);
    }

    // Rank property: a stronger mix stands more water.
    [Fact]
    public void StrongerMix_StandsMoreWater()
    {
        House With(double newtons) => Houses.HeronPoint with { Mix = Houses.HeronPoint.Mix with { Prisms = Houses.HeronPoint.Mix.Prisms.Select(p => p with { FailureLoad = new Force(p.FailureLoad.Newtons * newtons) }).ToSequence() } };
        Assert.True(PierTests.Of(With(1.5)).Hand.Wet.Piers[0].WaterSafe > PierTests.Of(With(1)).Hand.Wet.Piers[0].WaterSafe);
    }
}
