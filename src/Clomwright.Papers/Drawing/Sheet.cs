using Clomwright.Evidence;
using Clomwright.Papers.Revisions;

namespace Clomwright.Papers.Drawing;

/// <summary>One side of paper, finished.</summary>
/// <param name="Key">Permanent key: <c>pocket-card</c>, <c>lift-1</c>, <c>opening-door</c>; continuation sheets add <c>-2</c> and on.</param>
/// <param name="Title">As printed and as the bookmark says.</param>
/// <param name="Width">Of the paper, mm.</param>
/// <param name="Height">Of the paper, mm.</param>
/// <param name="Marks">The display list, millimetres from the top left corner.</param>
public sealed record Sheet(string Key, string Title, double Width, double Height, Sequence<Mark> Marks)
{
    /// <summary>Its number as printed: a page of the site folder, <c>7</c>, or a sheet of the office set, <c>A-101</c>.</summary>
    public string Number { get; init; } = "";

    /// <summary>What it is beside the set that was handed out last; null where no letters were asked for.</summary>
    public SheetRevision? Revision { get; init; }

    /// <summary>Language of its words, as in BCP 47.</summary>
    public string Language { get; init; } = "en";
}
