using Clomwright.Analysis.Mix;
using Clomwright.Building;
using Clomwright.Evidence;
using static Clomwright.Analysis.Tests.Mix.SoilTestsTests;

namespace Clomwright.Analysis.Tests.Mix;

/// <summary>Blends and batches against a worked balance, and the search for the next test.</summary>
public class RecipeTests
{
    private const double Bucket = 0.02;

    // Analytic: 18 325 kg of minerals, soil of 38 % clay at 15 % water, sand of 1 % at 5 %, 18 % asked: 8 420 kg of dry soil and 9 905 of sand, 275 kg of straw, 2 640 l of water
    // before the straw drinks, worked by hand; here for a batch as large as that, with buckets of soil of 1 150 and of sand of 1 190.48 kg/m3 dry (1 250 damp). To the last kg printed.
    [Fact]
    public void Blend_BalancesClayStrawAndWater()
    {
        const double soilBucket = 1150 * Bucket * 1.15, sandBucket = 1250 * Bucket;
        var buckets = 8420 / (1150 * Bucket) + 9905 / (1250 / 1.05 * Bucket);
        var mix = new Building.Mix
        {
            SoilTests = new SoilTests { Moisture = new Share(0.15), SandMoisture = new Share(0.05) },
            Measures = new Measures { SoilBucket = new Mass(soilBucket), SandBucket = new Mass(sandBucket), Armful = new Mass(0.5) },
            Target = new MixTarget { Clay = new Share(0.18), Straw = new Share(0.015), Water = new Share(0.24) },
        };
        var parts = new Batches(mix, Bucket, 0.38).Blend(buckets);
        Assert.Equal(8420, parts.Soil * 1150 * Bucket, 1.0);
        Assert.Equal(9905, parts.Sand * 1250 / 1.05 * Bucket, 1.0);
        Assert.Equal(18325, parts.Minerals, 1.0);
        Assert.Equal(275, parts.Straw!.Value, 0.5);
        Assert.Equal(550, parts.Armfuls!.Value, 1.0);
        Assert.Equal(0.18, parts.ClayShare, 1e-4);
        Assert.Equal(2640, parts.Water!.Value * 1000 * Bucket - parts.StrawWater!.Value, 1.0);
        Assert.Equal(2.05 * 274.9, parts.StrawWater.Value, 0.5); // Kabore 2024: 205 % of the straw
    }

    // Analytic: soil of 10 % clay cannot reach 18 % with sand; clay of 60 % is added: 18 = 10 x + 60 (1 - x), x = 0.84.
    [Fact]
    public void Blend_OfALeanSoil_AddsClayInstead()
    {
        var parts = new Batches(new Building.Mix { Target = new MixTarget { Clay = new Share(0.18) } }, Bucket, 0.10).Blend(6);
        Assert.Equal(0, parts.Sand);
        Assert.Equal(0.18, parts.ClayShare, 1e-12);
        var (soil, clay) = (parts.Soil * 1150 * Bucket, parts.Clay * 1000 * Bucket);
        Assert.Equal(0.84, soil / (soil + clay), 1e-12);
    }

    // Property: a soil at the target needs nothing.
    [Fact]
    public void Blend_OfASoilAtTheTarget_IsTheSoil() => Assert.Equal(6, new Batches(new Building.Mix { Target = new MixTarget { Clay = new Share(0.18) } }, Bucket, 0.18).Blend(6).Soil, 1e-12);

    // Analytic: 3 buckets of soil (23 kg dry each) and 3 of sand (25): 144 kg; water 15 l + 15 % of 69 + 5 % of 75 - 2.05 of 2 kg of straw, over 144.
    [Fact]
    public void Recipe_SaysHowWetItIs()
    {
        var mix = new Building.Mix { Recipe = new Recipe { Soil = 3, Sand = 3, Water = 0.75, Straw = new Mass(2) } };
        var (parts, water) = new Batches(mix, Bucket, 0.30).Written()!.Value;
        Assert.Equal(144, parts.Minerals, 1e-9);
        Assert.Equal((15 + 0.15 * 69 + 0.05 * 75 - 2.05 * 2) / 144, water!.Value, 1e-12);
        Assert.Equal((0.30 * 69 + 0.01 * 75) / 144, parts.ClayShare, 1e-12);
        Assert.Null(parts.Armfuls); // nobody weighed one
    }

    // Property: halving. A search over a made-up soil whose bars shrink 5 % with no sand and less with more ends within half a bucket of where it shrinks 1 %.
    [Theory]
    [InlineData(0.62)]
    [InlineData(0.41)]
    [InlineData(0.18)]
    public void Search_EndsAtTheLeastSandThatDoesNotShrink(double turn)
    {
        List<NextTests.Point> points = [Bar(0.1), Bar(0.78)];
        for (var i = 0; i < 12 && NextTests.Search(points, 12) is { SandShare: { } share }; i++)
        {
            points.Add(Bar(share));
        }

        Assert.Null(NextTests.Search(points, 12));
        Assert.InRange(points.Where(p => p.Shrinkage <= 0.01).Min(p => p.Sand), turn, turn + 0.5 / 12 + 1e-9);

        NextTests.Point Bar(double sand) => new(sand, 0.05 * Math.Exp(Math.Log(0.2) * sand / turn) - (sand >= turn ? 1e-6 : 0), false, null);
    }

    [Theory]
    [InlineData(0.5, 0.02, false, null, "more-sand")]
    [InlineData(0.5, 0.005, true, null, "more-sand")]
    [InlineData(0.8, 0.02, false, null, "other-soil")]
    [InlineData(0.5, 0.005, false, 200_000.0, "less-sand")]
    [InlineData(0.5, 0.005, false, 600_000.0, null)]
    [InlineData(0.5, 0.01, false, null, null)] // exactly what builds well
    public void Search_OfOneMix_SaysWhichWay(double sand, double shrinkage, bool cracked, double? strength, string? key) =>
        Assert.Equal(key, NextTests.Search([new NextTests.Point(sand, shrinkage, cracked, strength)], 6)?.Key);

    [Fact]
    public void Next_WithoutAnything_IsAJar()
    {
        var next = Read(new Building.Mix()).Next;
        Assert.Equal("jar", next.Key);
        Assert.Contains(next.Because.Key, Phrasebook.English.Keys);
        Assert.Equal("first-bars", Read(Soil(60, 30, 30)).Next.Key);
    }

    // Analytic: 7.92 m3 of damp sand in trucks of 5 m3 are two; 276 kg of straw in bales of 15 kg are nineteen.
    [Fact]
    public void Deliveries_AreWholeTrucksAndBales()
    {
        var mix = Testing.Houses.HeronPoint.Mix with { Measures = new Measures { Truck = new Volume(5), Bale = new Mass(15), SandBucket = new Mass(27) } };
        var result = Read(mix);
        var orders = Geometry.Quantities.Of(Geometry.FromBuilding.Of(Testing.Houses.HeronPoint with { Mix = mix })).Orders;
        var sand = result.Deliveries.Single(d => d.Key == "sand");
        var ordered = orders.Single(o => o.Key == "sand").Order!.Value.Si;
        Assert.Equal((int)Math.Ceiling(ordered / 5), sand.Loads);
        Assert.Equal((ordered / mix.Batch!.BucketVolume.CubicMetres * 27, Tag.Measured), (sand.Mass!.Value, sand.MassTag), new ByParts());
        var straw = result.Deliveries.Single(d => d.Key == "straw");
        Assert.Equal((int)Math.Ceiling(orders.Single(o => o.Key == "straw").Order!.Value.Si / 15), straw.Loads);
    }

    private sealed class ByParts : IEqualityComparer<(double Mass, Tag Tag)>
    {
        public bool Equals((double Mass, Tag Tag) x, (double Mass, Tag Tag) y) => Math.Abs(x.Mass - y.Mass) <= 1e-9 * Math.Abs(x.Mass) && x.Tag == y.Tag;

        public int GetHashCode((double Mass, Tag Tag) obj) => obj.Tag.GetHashCode();
    }
}
