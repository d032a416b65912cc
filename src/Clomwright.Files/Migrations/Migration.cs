using Clomwright.Files.Json;
using Clomwright.Files.Typing;

namespace Clomwright.Files.Migrations;

/// <summary>The step from one format of the house file to the next, as changes of the author's own text.</summary>
/// <param name="From">The format that it begins with; the next one is <c>From + 1</c>.</param>
/// <param name="Changes">
/// What changes in a text of that format, apart from the number itself. Nothing else in the text moves: a step that renames <c>bar</c> to
/// <c>crossBar</c> in <c>tees</c> returns one change, of that key's <see cref="Member.NameSpan"/>.
/// </param>
internal sealed record Migration(int From, Func<ObjectNode, IEnumerable<TextChange>> Changes);

/// <summary>Brings older house files up to date, one step after the other.</summary>
/// <remarks>
/// A new format is made only when an old file would be read wrongly; optional new keys never make one. Whoever makes one adds its step to
/// <see cref="All"/>, raises <c>HouseShape.Format</c> and keeps a sample of the old format among the tests' kept files for ever.
/// </remarks>
internal static class MigrationSteps
{
    /// <summary>Every step, from the oldest. There is one format so far, and so no step.</summary>
    public static IReadOnlyList<Migration> All { get; } = [];

    /// <summary>The text brought to the newest format by the steps that it needs; the same text when it needs none.</summary>
    public static string Raise(string text, IReadOnlyList<Migration> steps)
    {
        foreach (var step in steps)
        {
            if (new JsonParser(text).Parse() is ObjectNode root && root.Find("format")?.Value is NumberNode format && format.Value == step.From)
            {
                var number = new TextChange(format.Span.Start, format.Span.End, $"{step.From + 1}");
                text = TextChange.Apply(text, step.Changes(root).Append(number));
            }
        }

        return text;
    }
}
