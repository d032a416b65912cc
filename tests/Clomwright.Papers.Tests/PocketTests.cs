using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Sheets;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

public sealed class PocketTests
{
    private static readonly PocketNumbers Numbers = new(
        Length.FromFeet(42), Length.FromFeet(6), Length.FromInches(32), Length.FromInches(44), Length.FromInches(18), Length.FromInches(17),
        3, Length.FromFeet(10), Length.FromInches(10), 8);

    // Analytic: a plumb round wall of inside radius r and thickness t holds pi ((r + t)^2 - r^2) h; ten numbers must give the same. 1e-12 relative is rounding.
    [Fact]
    public void Count_OfARoundPlumbWall_IsTheRingOfPi()
    {
        const double R = 2.5, T = 0.4;
        var ring = Length.Nearest(2 * Math.PI * R);
        var count = PocketCount.Of(new(ring, Length.Zero, Length.Zero, Length.FromMillimetres(300), Length.FromMillimetres(400), Length.FromMillimetres(400), 3, Length.FromFeet(10), Length.FromInches(10), 8));
        var r = ring.Metres / (2 * Math.PI);
        Assert.Equal(1, count.Volume / (Math.PI * ((r + T) * (r + T) - r * r) * 0.3), 1e-12);
    }

    // Independent: the same wall by the house's own geometry and quantities, which know nothing of the ten numbers. 1 %: the trial's ring is taken straight here.
    [Fact]
    public void Count_OfALift_AgreesWithTheHouse()
    {
        var house = Houses.Round(Length.FromFeet(14));
        var geometry = FromBuilding.Of(house);
        var lift = geometry.Lifts[2];
        var thickness = house.Wall.ThicknessAtTop;
        var count = PocketCount.Of(new(Length.Nearest(geometry.Curve.Length), Length.Zero, lift.Bottom, lift.Top, thickness, thickness, 3, Length.FromFeet(10), Length.FromInches(10), 8));
        Assert.Equal(1, count.Volume / lift.NetVolume, 1e-9);
        Assert.Equal(count.Rise, count.RisePerBatch!.Value * count.Batches!.Value, 1e-12);
    }

    [Fact]
    public void Count_WithoutATrial_SaysNothingOfBatches()
    {
        var count = PocketCount.Of(Numbers with { TrialBatches = 0 });
        Assert.Null(count.Batches);
        Assert.Null(count.RisePerBatch);
        Assert.Null(count.BatchesEach);
        Assert.Contains(PocketCard.FromNumbers(Numbers with { TrialBatches = 0 }, new PaperOptions(Papers.Date)).Texts(), t => t.Words.StartsWith("NOT CHECKED", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(PaperSize.A4, UnitSystem.Imperial)]
    [InlineData(PaperSize.Letter, UnitSystem.Metric)]
    public void Cards_TypedAndBlank_KeepTextApartAndInside(PaperSize paper, UnitSystem units)
    {
        var options = new PaperOptions(Papers.Date) { Paper = paper, Units = units };
        var (typed, blank) = (PocketCard.FromNumbers(Numbers, options), PocketCard.Blank(options));
        Assert.Empty(NothingTouchesTests.Faults([typed, blank, PocketCard.TwoUp(typed, blank)]));
    }
}
