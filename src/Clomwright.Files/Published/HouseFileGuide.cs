using System.Text;
using Clomwright.Evidence;
using Clomwright.Files.Forms;
using Clomwright.Files.Shape;

namespace Clomwright.Files;

/// <summary>The tables of <c>docs/house-file.md</c>: every key of the house file, from the table of keys that the reader uses.</summary>
public static class HouseFileGuide
{
    /// <summary>One section for each object of the file, in Markdown.</summary>
    public static string Tables(Phrasebook words)
    {
        var text = new StringBuilder();
        var seen = new HashSet<string>();
        var waiting = new Queue<Kind>([HouseShape.House.Kind]);
        while (waiting.TryDequeue(out var kind))
        {
            var (name, rows) = kind switch
            {
                Kind.Union union => (union.Name, RowsOf(union)),
                Kind.Thing thing => (thing.Name, thing.Keys.Select(key => new Row(key, [], ExactlyOne(thing, key.Name)))),
                _ => ("", []),
            };
            if (name.Length > 0 && seen.Add(name))
            {
                Section(text, words, name, kind, rows.ToList());
            }

            foreach (var inner in Inner(kind))
            {
                waiting.Enqueue(inner);
            }
        }

        return text.ToString();
    }

    /// <summary>A key with the cases of a union that have it (none: all), and the key that may stand in its place.</summary>
    private sealed record Row(KeyKind Key, IReadOnlyList<string> Cases, string? InPlaceOf);

    private static IEnumerable<Row> RowsOf(Kind.Union union)
    {
        yield return new Row(new KeyKind(union.Key, new Kind.Word(union.Cases.Select(c => c.Word).ToSequence()), true, null), [], null);
        var rows = union.Cases.SelectMany(c => c.Thing.Keys).DistinctBy(k => k.Name)
            .Select(key => (Key: key, Cases: union.Cases.Where(c => c.Thing.Keys.Any(k => k.Name == key.Name)).Select(c => c.Word).ToList()));
        foreach (var (key, cases) in rows.OrderBy(row => row.Cases.Count == union.Cases.Count))
        {
            yield return new Row(key, cases.Count == union.Cases.Count ? [] : cases, null);
        }
    }

    private static string? ExactlyOne(Kind.Thing thing, string key) =>
        thing.ExactlyOne.Where(p => p.One == key).Select(p => p.Other).Concat(thing.ExactlyOne.Where(p => p.Other == key).Select(p => p.One)).FirstOrDefault();

    private static void Section(StringBuilder text, Phrasebook words, string name, Kind kind, List<Row> rows)
    {
        text.Append($"### {Say(words, $"files.thing.{name}")}\n\n| Key | Value | If not given | Meaning |\n|---|---|---|---|\n");
        foreach (var row in rows)
        {
            var absent = row.Key.Required ? "needed" : row.InPlaceOf is { } other ? $"`{other}`" : row.Key.Default is { } token ? $"`{token}`" : "–";
            var meaning = words.Say(Meaning.Of(name, row.Key.Name), UnitSystem.Imperial) + (row.Cases.Count == 0 ? "" : $" ({string.Join(", ", row.Cases)})");
            text.Append($"| `{row.Key.Name}` | {Value(words, row.Key.Kind)} | {absent} | {meaning} |\n");
        }

        text.Append('\n');
    }

    private static string Value(Phrasebook words, Kind kind) => kind switch
    {
        Kind.List { Item: Kind.Thing thing } => $"list of [objects]({Anchor(words, thing.Name)})",
        Kind.List list => "list, each " + Value(words, list.Item),
        Kind.Thing thing => $"[object]({Anchor(words, thing.Name)})",
        Kind.Union union => $"[object]({Anchor(words, union.Name)})",
        Kind.Either either => $"{Value(words, either.One)}, or {Value(words, either.Other)}",
        Kind.Word word => string.Join(" · ", word.Words.Select(w => $"`\"{w}\"`")),
        Kind.Quantity quantity => Say(words, $"files.kind.{Quantities.Word(quantity.Dimension)}"),
        Kind.Format format => $"`{format.Newest}`",
        _ => Say(words, $"files.kind.{kind.GetType().Name.ToLowerInvariant()}"),
    };

    private static IEnumerable<Kind> Inner(Kind kind) => kind switch
    {
        Kind.Thing thing => thing.Keys.Select(k => k.Kind),
        Kind.Union union => union.Cases.Select(c => (Kind)c.Thing),
        Kind.List list => [list.Item],
        Kind.Either either => [either.One, either.Other],
        _ => [],
    };

    private static string Anchor(Phrasebook words, string name) =>
        "#" + string.Concat(Say(words, $"files.thing.{name}").ToLowerInvariant().Where(c => char.IsLetterOrDigit(c) || c is ' ' or '-')).Replace(' ', '-');

    private static string Say(Phrasebook words, string key) => words.Say(new Message(key), UnitSystem.Imperial);
}
