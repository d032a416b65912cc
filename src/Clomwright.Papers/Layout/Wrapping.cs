using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Layout;

/// <summary>Breaks words into lines that fit a width, and shortens what must stay on one line.</summary>
internal static class Wrapping
{
    /// <summary>Lines no wider than the width. Breaks at spaces, after hyphens and bars, and inside a word only when it alone is too wide.</summary>
    public static IReadOnlyList<string> Lines(string words, Lettering lettering, double width)
    {
        var typeface = Typeface.Of(lettering.Cut);
        List<string> lines = [];
        foreach (var paragraph in words.Split('\n'))
        {
            // The line is what stands from start to end, and reached is how wide that is at size 1, spaces at its end too: no letter is measured twice.
            var (start, end, reached) = (0, 0, 0.0);
            foreach (var stop in Stops(paragraph))
            {
                var piece = paragraph.AsSpan(end, stop - end);
                var visible = piece.TrimEnd();
                var wide = visible.IsEmpty ? lettering.WidthOf(paragraph.AsSpan(start, stop - start).TrimEnd()) : typeface.Advance(visible, reached) * lettering.Size;
                if (wide <= width)
                {
                    (end, reached) = (stop, typeface.Advance(piece, reached));
                    continue;
                }

                if (end > start)
                {
                    lines.Add(paragraph[start..end].TrimEnd());
                }

                start = end;
                while (lettering.WidthOf(paragraph.AsSpan(start, stop - start).TrimEnd()) > width && stop - start > 1)
                {
                    var fits = FittingLength(paragraph.AsSpan(start, stop - start), lettering, width);
                    lines.Add(paragraph.Substring(start, fits));
                    start += fits;
                }

                (end, reached) = (stop, typeface.Advance(paragraph.AsSpan(start, stop - start)));
            }

            lines.Add(paragraph[start..end].TrimEnd());
        }

        return lines;
    }

    /// <summary>The words, or as many letters of them as fit the width with an ellipsis.</summary>
    public static string Shortened(string words, Lettering lettering, double width)
    {
        if (lettering.WidthOf(words) <= width)
        {
            return words;
        }

        var room = width - lettering.WidthOf("…");
        return room <= 0 ? "" : words[..FittingLength(words, lettering, room)].TrimEnd() + "…";
    }

    /// <summary>Where a line may end, the end of the words last.</summary>
    private static IEnumerable<int> Stops(string words)
    {
        var start = 0;
        for (var i = 0; i < words.Length; i++)
        {
            var breaks = words[i] == ' ' || (words[i] is '-' or '|' or '/' && i > start && i + 1 < words.Length && char.IsLetter(words[i + 1]) && char.IsLetter(words[i - 1]));
            if (breaks)
            {
                yield return start = i + 1;
            }
        }

        if (start < words.Length)
        {
            yield return words.Length;
        }
    }

    private static int FittingLength(ReadOnlySpan<char> words, Lettering lettering, double width)
    {
        var (low, high) = (1, words.Length);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = lettering.WidthOf(words[..middle]) <= width ? (middle, high) : (low, middle - 1);
        }

        return low < words.Length && char.IsHighSurrogate(words[low - 1]) && low > 1 ? low - 1 : low;
    }
}
