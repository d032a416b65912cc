using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Sheets;

/// <summary>What of the author's own stands in a drawing, for the words that tell it.</summary>
internal static class FigureNames
{
    /// <summary>More than these would be a list, not a sentence.</summary>
    private const int Most = 12;

    private static readonly string[] Kinds = ["opening-", "niche-", "embed-"];

    /// <summary>Names of openings, niches and embeds in order of drawing; empty where there is none.</summary>
    public static string In(IEnumerable<Mark> marks)
    {
        string[] names = [.. Ids(marks).Select(Name).Where(n => n.Length > 0).Distinct(StringComparer.Ordinal)];
        return string.Join(", ", names.Take(Most)) + (names.Length > Most ? ", …" : "");
    }

    private static IEnumerable<string> Ids(IEnumerable<Mark> marks) =>
        marks.SelectMany(m => m switch { Group g => Ids(g.Marks).Prepend(g.Id), Told t => Ids(t.Marks), _ => [] });

    private static string Name(string id)
    {
        var plain = id.StartsWith("plan-", StringComparison.Ordinal) ? id[5..] : id;
        return Kinds.Where(k => plain.StartsWith(k, StringComparison.Ordinal)).Select(k => plain[k.Length..].Split('#')[0].Replace('-', ' ')).FirstOrDefault() ?? "";
    }
}
