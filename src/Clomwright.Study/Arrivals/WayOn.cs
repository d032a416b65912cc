using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study.Arrivals;

/// <summary>What can be done with a frame that came in another size.</summary>
public enum WayKind
{
    /// <summary>In the place that was drawn.</summary>
    AsItCame,

    /// <summary>Moved along the wall, as little as it takes.</summary>
    Shift,

    /// <summary>Its sill higher or lower, as little as it takes.</summary>
    Sill,

    /// <summary>Sent back: the drawing stays.</summary>
    Refuse,
}

/// <summary>One way to go on, tried by a study of its own.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Edit">The change of the description; null where there is none.</param>
/// <param name="What">In words.</param>
/// <param name="After">The house as it would be.</param>
/// <param name="Breaks">What falls short, or has no answer any more, that did not before.</param>
/// <param name="Wrong">What would be wrong in the description itself; null where nothing is.</param>
public sealed record WayOn(WayKind Kind, Edit? Edit, Message What, House After, Sequence<Finding> Breaks, Message? Wrong)
{
    /// <summary>Whether nothing is worse than it was. It says nothing of what fell short before.</summary>
    public bool BreaksNothing => Breaks.Count == 0 && Wrong is null;
}

/// <summary>A frame that came, beside the one that was drawn.</summary>
/// <param name="Drawn">The opening as it is described.</param>
/// <param name="Width">Rough width that what came asks for.</param>
/// <param name="Height">Rough height of it.</param>
/// <param name="Ways">What can be done: in the place that was drawn first, to send it back last.</param>
public sealed record Arrival(Opening Drawn, Length Width, Length Height, Sequence<WayOn> Ways);
