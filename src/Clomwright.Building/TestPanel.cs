using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Cracks in a dry panel.</summary>
public enum PanelCracks
{
    /// <summary>None.</summary>
    None,

    /// <summary>Fine ones that the next coat or a sponge closes.</summary>
    Hair,

    /// <summary>Open ones.</summary>
    Open,
}

/// <summary>What a hand rubbed over a dry panel takes off.</summary>
public enum PanelDust
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A little.</summary>
    Some,

    /// <summary>It keeps coming off.</summary>
    Much,
}

/// <summary>How a dry panel holds on the wall.</summary>
public enum PanelBond
{
    /// <summary>It holds and sounds full.</summary>
    Holds,

    /// <summary>It sounds hollow.</summary>
    Hollow,

    /// <summary>It fell off, or comes off whole.</summary>
    Fell,
}

/// <summary>A patch of plaster tried on the wall.</summary>
/// <param name="Name">What coats call it: <c>A</c>.</param>
/// <param name="Face">Which face it is on.</param>
/// <param name="Material">Key of a finish.</param>
/// <param name="Parts">Its mix.</param>
/// <param name="Cracks">Cracks when dry.</param>
/// <param name="Dust">What rubs off.</param>
/// <param name="Bond">How it holds.</param>
public sealed record TestPanel(string Name, Face Face, string Material, PlasterParts Parts, PanelCracks Cracks, PanelDust Dust, PanelBond Bond)
{
    /// <summary>Which coat it tries.</summary>
    public CoatRole Role { get; init; } = CoatRole.Finish;

    /// <summary>How thick it was laid.</summary>
    public Length? Depth { get; init; }

    /// <summary>When it was read, dry.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Who read it.</summary>
    public string? Tester { get; init; }

    /// <summary>A remark.</summary>
    public string? Note { get; init; }

    /// <summary>Whether a wall may be plastered as it is: it holds, nothing keeps coming off, and no crack stays open.</summary>
    public bool IsSound => Bond == PanelBond.Holds && Cracks != PanelCracks.Open && Dust != PanelDust.Much;
}
