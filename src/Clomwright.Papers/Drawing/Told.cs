using Clomwright.Evidence;

namespace Clomwright.Papers.Drawing;

/// <summary>What a reader that speaks takes some marks for.</summary>
public enum Telling
{
    /// <summary>The title of a sheet.</summary>
    Title,

    /// <summary>A heading within a sheet.</summary>
    Heading,

    /// <summary>Running text, or a few words that belong together.</summary>
    Paragraph,

    /// <summary>A drawing; it is told in words, its marks are not.</summary>
    Figure,

    /// <summary>A table, of rows.</summary>
    Table,

    /// <summary>A row of a table, of heads or cells.</summary>
    Row,

    /// <summary>The head of a column.</summary>
    Head,

    /// <summary>A cell of a row.</summary>
    Cell,
}

/// <summary>Marks that are told as one thing to somebody who cannot see them. It is drawn as its marks are; marks that nothing tells are ornament.</summary>
/// <param name="As">What they are.</param>
/// <param name="Marks">What is drawn, and told parts of it.</param>
/// <param name="Words">What a figure is told as; empty for all else, whose own text is read.</param>
public sealed record Told(Telling As, Sequence<Mark> Marks, string Words = "") : Composite
{
    /// <inheritdoc/>
    public override Sequence<Mark> Parts => Marks;
}
