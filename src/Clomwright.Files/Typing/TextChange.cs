using System.Text;

namespace Clomwright.Files.Typing;

/// <summary>A stretch of a text with what takes its place.</summary>
internal readonly record struct TextChange(int Start, int End, string With)
{
    /// <summary>The text with every change made. Changes do not overlap; of two at one place, an insertion comes first.</summary>
    public static string Apply(string text, IEnumerable<TextChange> changes)
    {
        var changed = new StringBuilder(text.Length);
        var at = 0;
        foreach (var change in changes.OrderBy(c => c.Start).ThenBy(c => c.End))
        {
            changed.Append(text, at, change.Start - at).Append(change.With);
            at = change.End;
        }

        return changed.Append(text, at, text.Length - at).ToString();
    }
}
