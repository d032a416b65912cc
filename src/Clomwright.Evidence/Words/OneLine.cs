using System.Globalization;
using System.Text;

namespace Clomwright.Evidence;

/// <summary>Keeps what somebody typed on one line, so that a sentence that quotes it stays one sentence.</summary>
public static class OneLine
{
    /// <summary>The text with every control character and line break written as JSON writes it, <c>\u000a</c>.</summary>
    public static string Of(string text)
    {
        if (!text.Any(Breaks))
        {
            return text;
        }

        var shown = new StringBuilder(text.Length);
        foreach (var c in text)
        {
            _ = Breaks(c) ? shown.Append("\\u").Append(((int)c).ToString("x4", CultureInfo.InvariantCulture)) : shown.Append(c);
        }

        return shown.ToString();
    }

    private static bool Breaks(char c) => char.IsControl(c) || c is '\u2028' or '\u2029';
}
