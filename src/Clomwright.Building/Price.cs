using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>What a price is for. Those of the orders are measured from the drawing, others are counted.</summary>
public enum PriceUnit
{
    /// <summary>One piece, or all of it.</summary>
    Each,

    /// <summary>A truckload, as large as <see cref="Measures.Truck"/>.</summary>
    Load,

    /// <summary>A bale, as heavy as <see cref="Measures.Bale"/>.</summary>
    Bale,

    /// <summary>A metre.</summary>
    M,

    /// <summary>A foot.</summary>
    Ft,

    /// <summary>A square metre.</summary>
    M2,

    /// <summary>A square foot.</summary>
    Ft2,

    /// <summary>A cubic metre.</summary>
    M3,

    /// <summary>A cubic yard.</summary>
    Yd3,

    /// <summary>A cubic foot.</summary>
    Ft3,

    /// <summary>A litre.</summary>
    L,

    /// <summary>A gallon of the United States.</summary>
    Gal,

    /// <summary>A kilogram.</summary>
    Kg,

    /// <summary>A pound.</summary>
    Lb,

    /// <summary>A tonne of 1000 kg.</summary>
    T,

    /// <summary>A short ton of 2000 lb.</summary>
    Ton,
}

/// <summary>A price that somebody was told.</summary>
/// <param name="Of">Key of a line of the orders, <c>sand</c>, or what else is paid for.</param>
/// <param name="Per">For how much of it.</param>
/// <param name="Low">The least it is thought to cost, in the house's currency.</param>
public sealed record Price(string Of, PriceUnit Per, double Low)
{
    /// <summary>The most it is thought to cost; null where there is one price.</summary>
    public double? High { get; init; }

    /// <summary>How many or how much, for what no order measures; null for a line of the orders.</summary>
    public double? Quantity { get; init; }

    /// <summary>Who said so.</summary>
    public string? From { get; init; }

    /// <summary>When they said so.</summary>
    public DateOnly? On { get; init; }
}
