using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

public sealed class QuantitiesTests
{
    private const double Foot = 0.3048;

    [Fact]
    public void ThreeBatchesThatRaisedTenFeetOfRing_MakeWhatTheyRaised()
    {
        // Analytic: 10 ft of inside length x (thickness + thickness^2 / (2 R)) x 10 in, above the first lift of a wall without taper, over 3.
        var house = Houses.Round(Length.FromFeet(12)) with { Mix = new Mix { Batch = new Batch(6, new Volume(0.019), 3, Length.FromFeet(10), Length.FromInches(10), Length.FromInches(30)) } };
        var quantities = Quantities.Of(FromBuilding.Of(house));
        var thick = 14.0 / 12;
        var expected = 10 * (thick + thick * thick / 12) * 10 / 12 / 3 * Foot * Foot * Foot;
        Assert.Equal(1, quantities.VolumePerBatch!.Value / expected, 1e-12);

        // Analytic: every lift above the first takes the ring's volume with 5 % trimmed or dropped.
        var ring = Math.PI * (Math.Pow(6 + thick, 2) - 36) * Foot * Foot * Foot;
        Assert.Equal(1, quantities.Lifts[3].Batches!.Value / (ring * 1.05 / expected), 1e-12);
        Assert.Equal(1, quantities.Lifts[3].RisePerBatch!.Value / (Foot / (ring * 1.05 / expected)), 1e-12);
        Assert.Equal(1, quantities.Lifts[3].BatchesPerRun!.Value * 12 * Math.PI * Foot / quantities.Lifts[3].Batches!.Value, 1e-12);
        Assert.Equal(quantities.Batches!.Value, quantities.Lifts.Sum(l => l.Batches!.Value), 1e-9);
    }

    [Fact]
    public void TrialOnTheStem_CountsTheStemsWidth()
    {
        // Analytic: the first lift is laid 20 in wide on the stem, centred under 14 in of wall.
        var house = Houses.Round(Length.FromFeet(12)) with { Mix = new Mix { Batch = new Batch(6, new Volume(0.019), 2, Length.FromFeet(6), Length.FromInches(6), Length.FromInches(8)) } };
        var (inner, outer) = (6 - 0.25, 6 + 14.0 / 12 + 0.25);
        var expected = 6 / (12 * Math.PI) * Math.PI * (outer * outer - inner * inner) / 2 / 2 * Foot * Foot * Foot;
        Assert.Equal(1, Quantities.Of(FromBuilding.Of(house)).VolumePerBatch!.Value / expected, 1e-12);
    }

    [Fact]
    public void WithoutATrial_NothingIsGuessed()
    {
        var house = Houses.HeronPoint;
        var quantities = Quantities.Of(FromBuilding.Of(house with { Mix = house.Mix with { Batch = null } }));
        Assert.Null(quantities.VolumePerBatch);
        Assert.Null(quantities.Batches);
        Assert.All(quantities.Lifts, l => Assert.True(l.Batches is null && l.RisePerBatch is null && l.BatchesPerRun is null));
        Assert.All(quantities.Orders.Where(o => o.Key is "soil" or "sand" or "water" or "straw"), o =>
        {
            Assert.Null(o.Order);
            Assert.Equal("geometry.basis.batch-missing", o.Basis.Key);
        });
    }

    [Fact]
    public void Orders_FollowFromRecipeAndBatches()
    {
        // Analytic: buckets x batches x bucket, 10 % more for the heap; straw by weight.
        var quantities = Quantities.Of(FromBuilding.Of(Houses.HeronPoint));
        var mix = Houses.HeronPoint.Mix;
        var sand = quantities.Orders.Single(o => o.Key == "sand");
        Assert.Equal(quantities.Batches!.Value * 3 * mix.Batch!.BucketVolume.CubicMetres, sand.Net!.Value.Si, 1e-12);
        Assert.Equal(1.1, sand.Order!.Value.Si / sand.Net.Value.Si, 1e-12);
        Assert.Equal(quantities.Batches.Value * 2, quantities.Orders.Single(o => o.Key == "straw").Net!.Value.Si, 1e-9);
        // Five through the wall, each of two.
        Assert.Equal(10, quantities.Orders.Single(o => o.Key == "bottles").Net!.Value.Si);
        Assert.Equal(11, quantities.Orders.Single(o => o.Key == "bottles").Order!.Value.Si);
        Assert.Contains(quantities.Assumptions, a => a.Key == "waste-cob");
        Assert.Contains(quantities.Assumptions, a => a.Key == "waste-bottles");
    }

    [Fact]
    public void StemAndTrench_OfARoundHouse_HaveTheVolumesOfTheirRings()
    {
        // Analytic: rings of the stem's and the trench's width; the door takes 3 ft of the stem out above the floor.
        var house = Houses.Round(Length.FromFeet(12)) with
        {
            Site = new Site { Grade = Length.FromInches(-12) }, Trench = new Trench(Length.FromInches(24), Length.FromInches(18)),
        };
        var quantities = Quantities.Of(FromBuilding.Of(house));
        var (inner, outer) = (6 - 0.25, 6 + 14.0 / 12 + 0.25);
        var stem = Math.PI * (outer * outer - inner * inner) * 20 / 12 * Foot * Foot * Foot;
        Assert.Equal(1, quantities.Orders.Single(o => o.Key == "stem-stone").Net!.Value.Si / stem, 1e-12);
        Assert.Equal(1, quantities.Orders.Single(o => o.Key == "trench-gravel").Net!.Value.Si / (2 * Math.PI * (6 + 7.0 / 12) * 2 * 1.5 * Foot * Foot * Foot), 1e-12);

        double Under(double r) => 1.5 * Math.Sqrt(r * r - 2.25) + r * r * Math.Asin(1.5 / r);
        var cut = Quantities.Of(FromBuilding.Of(house with { Openings = [Houses.Door("door", 30)] })).Orders.Single(o => o.Key == "stem-stone").Net!.Value.Si;
        Assert.Equal(stem - (Under(outer) - Under(inner)) * 8 / 12 * Foot * Foot * Foot, cut, 1e-9);
        Assert.Null(Quantities.Of(FromBuilding.Of(house with { Site = new Site() })).Orders.Single(o => o.Key == "stem-stone").Order);
    }

    [Fact]
    public void Timber_IsTakenOffByLength()
    {
        var orders = Quantities.Of(FromBuilding.Of(Houses.HeronPoint)).Orders;
        var headers = FromBuilding.Of(Houses.HeronPoint).Openings.Where(o => o.Header is not null).Sum(o => o.Opening.Header!.Pieces * (o.Opening.Width.Metres + 2 * o.Opening.Header.Bearing.Metres));
        Assert.Equal(headers, orders.Where(o => o.Key == "header-timber").Sum(o => o.Net!.Value.Si), 1e-12);
        Assert.Equal(Dimension.Length, orders.Single(o => o.Key == "bond-beam").Net!.Value.Dimension);
    }

    [Fact]
    public void EveryCalculation_OfAnyPlausibleHouse_IsBorneOutByItsOwnSymbols() =>
        Houses.Plausible.ForAll(
            house => Assert.All(Quantities.Of(FromBuilding.Of(house)).Calculations, c => Assert.Empty(CalculationCheck.Mismatches(c))), iter: Counts.Of(30, 2000));
}
