using Clomwright.Evidence;

namespace Clomwright.Geometry.TakeOff;

/// <summary>Shares added for waste. None of them is published; all are common practice and meant to be changed by who knows better.</summary>
internal static class Wastes
{
    /// <summary>Cob trimmed or dropped that does not go back into the wall.</summary>
    public static Assumption Cob { get; } = new("waste-cob", new Message("geometry.assumed.waste-cob"), Amount.Fraction(0.05), Practice);

    /// <summary>Soil, clay and sand left on the ground where the heap was.</summary>
    public static Assumption Heap { get; } = new("waste-heap", new Message("geometry.assumed.waste-heap"), Amount.Fraction(0.10), Practice);

    /// <summary>Straw lost, wet or mouldy.</summary>
    public static Assumption Straw { get; } = new("waste-straw", new Message("geometry.assumed.waste-straw"), Amount.Fraction(0.10), Practice);

    /// <summary>Stone broken or unfit.</summary>
    public static Assumption Stone { get; } = new("waste-stone", new Message("geometry.assumed.waste-stone"), Amount.Fraction(0.10), Practice);

    /// <summary>Trench stone that goes down when tamped.</summary>
    public static Assumption Gravel { get; } = new("waste-gravel", new Message("geometry.assumed.waste-gravel"), Amount.Fraction(0.10), Practice);

    /// <summary>Pipe cut off, fabric lapped, concrete left in the mixer.</summary>
    public static Assumption Drain { get; } = new("waste-drain", new Message("geometry.assumed.waste-drain"), Amount.Fraction(0.10), Practice);

    /// <summary>Timber cut off at ends and joints.</summary>
    public static Assumption Timber { get; } = new("waste-timber", new Message("geometry.assumed.waste-timber"), Amount.Fraction(0.10), Practice);

    /// <summary>Bottles broken.</summary>
    public static Assumption Bottles { get; } = new("waste-bottles", new Message("geometry.assumed.waste-bottles"), Amount.Fraction(0.10), Practice);

    private static Source Practice => Sources.Get("common-practice");

    /// <summary>The share of an assumption about waste.</summary>
    public static double Share(this Assumption waste) => ((Argument.Quantity)waste.Value).Value.Si;
}
