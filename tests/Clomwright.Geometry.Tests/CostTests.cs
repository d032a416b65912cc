using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>Typed prices times ordered quantities. Expected values are arithmetic done here on the order itself; 1e-9 relative is rounding.</summary>
public class CostTests
{
    private static readonly HouseGeometry Geometry = FromBuilding.Of(Houses.HeronPoint);
    private static readonly HouseQuantities Quantities = Clomwright.Geometry.Quantities.Of(Geometry);

    // Independent: whole truckloads of 8 yd3 (0.764554857984 m3 each) and whole bales of 16 kg; a short ton is 2000 lb of 0.45359237 kg.
    [Fact]
    public void Lines_InLoadsAndBales_AreWhole()
    {
        var costs = Costs.Of(Houses.HeronPoint, Quantities);
        double Order(string key) => Quantities.Orders.Single(o => o.Key == key).Order!.Value.Si;
        var sand = Line(costs, "sand");
        Assert.Equal(Math.Ceiling(Order("sand") / (8 * 0.764554857984)), sand.Quantity!.Value, 1e-9);
        Assert.Equal(280 * sand.Quantity.Value, sand.Low!.Value, 1e-9);
        Assert.Equal(360 * sand.Quantity.Value, sand.High!.Value, 1e-9);
        Assert.Equal(Math.Ceiling(Order("straw") / 16), Line(costs, "straw").Quantity!.Value, 1e-9);
        Assert.Equal(4 * 40.0, costs.Lines.Single(l => l.Line is null).Low!.Value, 1e-9);
        Assert.Equal(4 * 120.0, costs.Lines.Single(l => l.Line is null).High!.Value, 1e-9);
    }

    // Gravel is ordered by volume and was priced by the ton: nothing converts one into the other, so it is said and not guessed.
    [Fact]
    public void ALine_InAnotherMeasure_IsNotChecked()
    {
        var gravel = Line(Costs.Of(Houses.HeronPoint, Quantities), "trench-gravel");
        Assert.Null(gravel.Quantity);
        Assert.Null(gravel.Low);
        Assert.Equal("geometry.cost.unit", gravel.NotChecked!.Key);
    }

    [Fact]
    public void Sums_AreThoseOfPricedLinesOnly()
    {
        var costs = Costs.Of(Houses.HeronPoint, Quantities);
        Assert.Equal(3, costs.Priced);
        Assert.Equal(costs.Lines.Where(l => l.Low is not null).Sum(l => l.Price!.Low * l.Quantity!.Value), costs.Low, 1e-9);
        var none = Costs.Of(Houses.HeronPoint with { Prices = [] }, Quantities);
        Assert.Equal(0, none.Priced);
        Assert.Equal(Quantities.Orders.Count, none.Lines.Count);
    }

    [Theory]
    [InlineData(PriceUnit.M3, 1)]
    [InlineData(PriceUnit.Yd3, 0.764554857984)]
    [InlineData(PriceUnit.Ft3, 0.028316846592)]
    [InlineData(PriceUnit.Gal, 0.003785411784)]
    [InlineData(PriceUnit.L, 0.001)]
    public void Volumes_AreTurnedIntoTheUnitOfThePrice(PriceUnit unit, double cubicMetres)
    {
        // Published: NIST SP 811 appendix B.8 (ft3, yd3, gallon).
        var line = Line(Costs.Of(Houses.HeronPoint with { Prices = [new Price("sand", unit, 1)] }, Quantities), "sand");
        Assert.Equal(line.Line!.Order!.Value.Si / cubicMetres, line.Quantity!.Value, 1e-9 * line.Quantity.Value);
    }

    private static CostLine Line(Costs costs, string key) => costs.Lines.Single(l => l.Line?.Key == key);
}
