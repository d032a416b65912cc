using Clomwright.Evidence;
using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Templates;

/// <summary>Something cut or marked by laying paper on it: a drawing at full size, in mm from the top left corner of its own box.</summary>
/// <param name="Key">Permanent key: <c>taper-outside</c>, <c>curve-inside-1</c>, <c>form-west-arch</c>, <c>mitre-1</c>, <c>storey-pole</c>, <c>radius-strip</c>.</param>
/// <param name="Title">Its name.</param>
/// <param name="Uses">What to do with it, sentence by sentence.</param>
/// <param name="Width">Of its box, mm.</param>
/// <param name="Height">Of its box, mm.</param>
/// <param name="Edge">What is cut along or marked from; drawn heavy, and in the small map of the tiles.</param>
internal sealed record Template(string Key, string Title, Sequence<string> Uses, double Width, double Height, Outline Edge)
{
    /// <summary>Free paper round what is drawn, mm.</summary>
    public const double Margin = 7;

    /// <summary>Everything drawn but the edge and the text.</summary>
    public Sequence<Mark> Lines { get; init; }

    /// <summary>Text, each written on the first tile that holds all of it.</summary>
    public Sequence<Text> Labels { get; init; }

    /// <summary>How many to make of it; 0 where one serves.</summary>
    public int Pieces { get; init; }
}
