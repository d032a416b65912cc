using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>One line of what the house costs.</summary>
/// <param name="Line">The order that is paid for; null for what no order measures.</param>
/// <param name="Price">What was told of it; null where nobody was asked, and nothing is guessed.</param>
/// <param name="Quantity">How many of the price's units; null where that is not known.</param>
public sealed record CostLine(OrderLine? Line, Price? Price, double? Quantity)
{
    /// <summary>The least it comes to, in the house's currency.</summary>
    public double? Low => Price is { } price && Quantity is { } quantity ? price.Low * quantity : null;

    /// <summary>The most it comes to; as much as the least where one price was told.</summary>
    public double? High => Price is { } price && Quantity is { } quantity ? (price.High ?? price.Low) * quantity : null;

    /// <summary>Why nothing comes of a price that was told.</summary>
    public Message? NotChecked { get; init; }
}

/// <summary>What the house costs, as far as prices were told: quantities of the orders times prices of the house file.</summary>
/// <param name="Lines">A line for each order, then one for each price that no order has.</param>
public sealed record Costs(Sequence<CostLine> Lines)
{
    /// <summary>Lines that come to something.</summary>
    public int Priced => Lines.Count(l => l.Low is not null);

    /// <summary>The least that the priced lines come to.</summary>
    public double Low => Lines.Sum(l => l.Low ?? 0);

    /// <summary>The most that the priced lines come to.</summary>
    public double High => Lines.Sum(l => l.High ?? 0);

    /// <summary>Orders and prices of a house brought together.</summary>
    public static Costs Of(House house, HouseQuantities quantities)
    {
        ArgumentNullException.ThrowIfNull(house);
        ArgumentNullException.ThrowIfNull(quantities);
        var orders = quantities.Orders.Select(line => Ordered(house, line, house.Prices.FirstOrDefault(p => p.Of == line.Key)));
        var others = house.Prices.Where(p => quantities.Orders.All(l => l.Key != p.Of)).Select(p => p.Quantity is { } quantity
            ? new CostLine(null, p, quantity)
            : new CostLine(null, p, null) { NotChecked = new Message("geometry.cost.quantity") });
        return new Costs(orders.Concat(others).ToSequence());
    }

    private static CostLine Ordered(House house, OrderLine line, Price? price)
    {
        if (price is null)
        {
            return new CostLine(line, null, null);
        }

        if (price.Quantity is { } typed)
        {
            return new CostLine(line, price, typed);
        }

        return line.Order is not { } order ? new CostLine(line, price, null) { NotChecked = new Message("geometry.cost.order") }
            : InUnits(house, order, price.Per) is { } quantity ? new CostLine(line, price, quantity)
            : new CostLine(line, price, null) { NotChecked = new Message(price.Per is PriceUnit.Bale or PriceUnit.Load ? "geometry.cost.measure" : "geometry.cost.unit") };
    }

    /// <summary>An order in the units of a price; whole bales and loads. Null where the two do not measure the same.</summary>
    private static double? InUnits(House house, Amount order, PriceUnit unit) => (unit, order.Dimension) switch
    {
        (PriceUnit.Load, Dimension.Volume) => house.Mix.Measures.Truck is { CubicMetres: > 0 } truck ? Whole(order.Si / truck.CubicMetres) : null,
        (PriceUnit.Bale, Dimension.Mass) => house.Mix.Measures.Bale is { Kilograms: > 0 } bale ? Whole(order.Si / bale.Kilograms) : null,
        (PriceUnit.Each, _) => order.Dimension is Dimension.Count ? order.Si : null,
        (PriceUnit.Load or PriceUnit.Bale, _) => null,
        (PriceUnit.Ton, Dimension.Mass) => order.Si / (2000 * Units.Find(Dimension.Mass, "lb")!.ToSi(1)),
        _ => Units.Find(order.Dimension, Written(unit)) is { } found ? order.Si / found.ToSi(1) : null,
    };

    private static double Whole(double count) => Math.Ceiling(count - 1e-9);

    private static string Written(PriceUnit unit) => unit switch
    {
        PriceUnit.L => "L",
        _ => unit.ToString().ToLowerInvariant(),
    };
}
