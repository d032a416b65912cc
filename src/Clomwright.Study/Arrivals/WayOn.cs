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
/// <param name="Study">Of the house as it would be.</param>
/// <param name="Breaks">What falls short, or has no answer any more, that did not before.</param>
/// <param name="Wrong">What would be wrong in the description itself; null where nothing is.</param>
public sealed record WayOn(WayKind Kind, Edit? Edit, Message What, HouseStudy Study, Sequence<Finding> Breaks, Message? Wrong)
{
    /// <summary>The house as it would be.</summary>
    public House After => Study.House;

    /// <summary>Beside what breaks: what a rule says otherwise than of the house as it is drawn, each with what it said there; null there where it said nothing.</summary>
    public Sequence<ChangedFinding> Changed { get; init; }

    /// <summary>Whether nothing is worse than it was. It says nothing of what fell short before.</summary>
    public bool BreaksNothing => Breaks.Count == 0 && Wrong is null;
}

/// <summary>What a rule says of one thing, and what it said of it before.</summary>
/// <param name="Now">Of the house as it would be.</param>
/// <param name="Before">Of the house as it is drawn; null where it said nothing of that thing.</param>
public sealed record ChangedFinding(Finding Now, Finding? Before);

/// <summary>A frame that came, beside the one that was drawn.</summary>
/// <param name="Drawn">The opening as it is described.</param>
/// <param name="Width">Rough width that what came asks for.</param>
/// <param name="Height">Rough height of it.</param>
/// <param name="Ways">What can be done: in the place that was drawn first, to send it back last.</param>
public sealed record Arrival(Opening Drawn, Length Width, Length Height, Sequence<WayOn> Ways);
