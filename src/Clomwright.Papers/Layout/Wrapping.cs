using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Layout;

/// <summary>Breaks words into lines that fit a width, and shortens what must stay on one line.</summary>
internal static class Wrapping
{
    /// <summary>Lines no wider than the width. Breaks at spaces, after hyphens and bars, and inside a word only when it alone is too wide.</summary>
    public static IReadOnlyList<string> Lines(string words, Lettering lettering, double width)
    {
        List<string> lines = [];
        foreach (var paragraph in words.Split('\n'))
        {
            var line = "";
            foreach (var piece in Pieces(paragraph))
            {
                if (lettering.WidthOf((line + piece).TrimEnd()) <= width)
                {
                    line += piece;
                    continue;
                }

                if (line.Length > 0)
                {
                    lines.Add(line.TrimEnd());
                }

                line = piece;
                while (lettering.WidthOf(line.TrimEnd()) > width && line.Length > 1)
                {
                    var fits = FittingLength(line, lettering, width);
                    lines.Add(line[..fits]);
                    line = line[fits..];
                }
            }

            lines.Add(line.TrimEnd());
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

    private static IEnumerable<string> Pieces(string words)
    {
        var start = 0;
        for (var i = 0; i < words.Length; i++)
        {
            var breaks = words[i] == ' ' || (words[i] is '-' or '|' or '/' && i > start && i + 1 < words.Length && char.IsLetter(words[i + 1]) && char.IsLetter(words[i - 1]));
            if (breaks)
            {
                yield return words[start..(i + 1)];
                start = i + 1;
            }
        }

        if (start < words.Length)
        {
            yield return words[start..];
        }
    }

    private static int FittingLength(string words, Lettering lettering, double width)
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
