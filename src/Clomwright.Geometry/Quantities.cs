using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>What the house takes, in the builder's units. What cannot be known without the crew's own batch is missing, never guessed.</summary>
public sealed record HouseQuantities
{
    /// <summary>Placed cob from one batch, m3, from the crew's calibration; null until the crew has measured it.</summary>
    public double? VolumePerBatch { get; init; }

    /// <summary>Batches for the whole wall, as laid with trimming and waste; null without a calibration.</summary>
    public double? Batches { get; init; }

    /// <summary>Lift by lift, bottom up.</summary>
    public required Sequence<LiftQuantities> Lifts { get; init; }

    /// <summary>What to order.</summary>
    public required Sequence<OrderLine> Orders { get; init; }

    /// <summary>Values nobody gave, used here.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>How the numbers were made.</summary>
    public required Sequence<Calculation> Calculations { get; init; }
}

/// <summary>One lift in batches.</summary>
/// <param name="Lift">Index of the lift.</param>
/// <param name="Batches">To lay it, trimming and waste included; null without a calibration.</param>
/// <param name="RisePerBatch">How much the whole ring rises for one batch, m ("inches of ring"); null without a calibration.</param>
/// <param name="BatchesPerRun">Batches for one metre of ring of this lift; null without a calibration.</param>
public sealed record LiftQuantities(int Lift, double? Batches, double? RisePerBatch, double? BatchesPerRun);

/// <summary>One line of an order.</summary>
/// <param name="Key">Permanent key: <c>sand</c>, <c>straw</c>, <c>stem-stone</c>, <c>trench-gravel</c>.</param>
/// <param name="What">Material, in words.</param>
/// <param name="Supplier">Which order sheet it is on: <c>earth</c>, <c>stone</c>, <c>timber</c>, <c>straw</c>.</param>
/// <param name="Net">As placed or used; null when it cannot be known.</param>
/// <param name="Waste">Share added for waste and trimming.</param>
/// <param name="Order">To order; null when it cannot be known.</param>
/// <param name="Tag">The tag of the number.</param>
/// <param name="Basis">How it was found, or why it is not known.</param>
public sealed record OrderLine(string Key, Message What, string Supplier, Amount? Net, double Waste, Amount? Order, Tag Tag, Message Basis)
{
    /// <summary>A computed line: so much with a share more; what is counted comes whole.</summary>
    public static OrderLine Of(string key, Message what, string supplier, Amount net, double waste, Message basis)
    {
        var order = net.Si * (1 + waste);
        return new OrderLine(key, what, supplier, net, waste, net with { Si = net.Dimension == Dimension.Count ? Math.Ceiling(order - 1e-9) : order }, Tag.Computed, basis);
    }

    /// <summary>A line of which nobody knows how much; the share is what would be added.</summary>
    public static OrderLine Unknown(string key, Message what, string supplier, Message why, double waste = 0) => new(key, what, supplier, null, waste, null, Tag.Computed, why);
}
