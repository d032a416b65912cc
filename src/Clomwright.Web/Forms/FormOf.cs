using System.Collections.Frozen;
using System.Globalization;
using System.Text.RegularExpressions;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Web.Editing;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Forms;

/// <summary>
/// Lays the places of a house out as sentences. The words of a thing, <c>web.form.{thing}</c>, name its keys in braces: that is the whole layout. What the table of keys has
/// and no sentence names would be out of reach; a test holds the two together.
/// </summary>
internal sealed partial class FormOf(House house, IReadOnlyList<Diagnostic> said, Pen pen)
{
    private static readonly FrozenSet<string> Known = Phrasebook.English.Keys.ToFrozenSet(StringComparer.Ordinal);

    private readonly HousePlaces places = HousePlaces.Of(house);

    /// <summary>The parts at some paths; what is no part is left out. <c>title</c> is the head of the house.</summary>
    public IReadOnlyList<FormPart> Parts(IEnumerable<string> paths) => [.. paths.Select(path => path == "title" ? Head() : path.StartsWith('+') ? OnlyAdds(path[1..]) : Part(path)).OfType<FormPart>()];

    /// <summary>What may be added to a list, without what is in it.</summary>
    private FormPart? OnlyAdds(string path) => places.ThingOfList(path) is { } item ? new FormPart($"+{path}", Title(item), [], [], [.. Adds(path, item)], false, false, []) : null;

    private FormPart Head() => new("", pen.Say("web.part.house"), Lines("", "house", pen.Say("web.part.house")), [], [], false, false, []);

    private FormPart? Part(string path)
    {
        if (places.Count(path) is not null)
        {
            return places.ThingOfList(path) is { } item ? List(path, item) : Points(path);
        }

        return places.Part(path) is not { } part ? null : Part(part, path.EndsWith(']') ? Named(path, int.Parse(path[(path.LastIndexOf('[') + 1)..^1], CultureInfo.InvariantCulture)) : Title(part.Thing), ordered: false);
    }

    private FormPart Part(HousePart part, string title, bool ordered)
    {
        var words = part.Case is { } word ? $"{part.Thing}-{word}" : part.Thing;
        var asked = Asked(words);
        var lines = part.IsThere || (!HasWord($"web.add.{part.Thing}") && asked.All(key => places.KeyAs(part.Path, key) is { } k && places.At($"{part.Path}.{k}") is { Needed: false })) ? Lines(part.Path, words, title) : [];
        var there = lines.Count > 0 || part.IsThere;
        return new FormPart(
            part.Path, title, lines, there ? [.. places.Inner(part.Path).Select(inner => Part(inner.Path)).OfType<FormPart>().Concat(Pole(part))] : [],
            there ? [] : [.. Adds(part.Path, part.Thing)], part.IsThere && part.CanGo && (HasWord($"web.add.{part.Thing}") || FreshParts.WaysToAdd(part.Path).Count > 0), ordered,
            [.. said.Where(d => d.Path == part.Path && part.Path.Length > 0).Select(d => pen.Say(d.What))]);
    }

    /// <summary>The two ends of a pole, which the table has as one value or as two.</summary>
    private IEnumerable<FormPart> Pole(HousePart part) => part.Thing != "roof" || !part.IsThere ? []
        : [new FormPart($"{part.Path}.poleDiameter", Title("pole"), Lines($"{part.Path}.poleDiameter", "pole", Title("pole")), [], [], false, false, [])];

    private FormPart List(string path, string item)
    {
        var items = Enumerable.Range(0, places.Count(path)!.Value).Select(i => places.Part($"{path}[{i}]")!)
            .Select((one, i) => Part(one, Named(one.Path, i), ordered: item is "layer" or "floor-layer" or "coat" or "finish" or "site-month"));
        return new FormPart(path, Title(item), [], [.. items], HasWord($"web.add.{item}") || FreshParts.WaysToAdd(path).Count > 0 ? [.. Adds(path, item)] : [], false, false, []);
    }

    /// <summary>The points of a drawn plan, each one blank.</summary>
    private FormPart? Points(string path) => path != "plan.points" ? null
        : new FormPart(path, pen.Say("web.ground.points"), [.. Enumerable.Range(0, places.Count(path)!.Value).Select(i =>
            {
                var title = pen.Say("web.ground.point", ("n", (i + 1).ToString(CultureInfo.InvariantCulture)));
                return (IReadOnlyList<FormPiece>)[new(title, null), new(null, Blank(places.At($"{path}[{i}]")!, title))];
            })], [], [], false, false, []);

    private IEnumerable<FormAdd> Adds(string path, string thing)
    {
        // A leaf belongs to a door, an anchor to a strap.
        var of = path.Contains('.', StringComparison.Ordinal) ? places.At($"{path[..path.LastIndexOf('.')]}.kind")?.Text : null;
        if ((thing == "door-leaf" && of != "door") || (thing == "strap-anchor" && of != "strap"))
        {
            return [];
        }

        var ways = FreshParts.WaysToAdd(path);
        if (ways.Count > 0)
        {
            return ways.Select(way => new FormAdd(path, way, Word(thing, thing is "way-out" ? "way" : "kind", way), []));
        }

        return [new FormAdd(path, "", pen.Say($"web.add.{thing}"), FreshParts.Known(path) ? [] : [.. Asks(thing)])];
    }

    /// <summary>The blanks of a part that is not there: what has to be known of it first.</summary>
    private IEnumerable<FormBlank> Asks(string thing) => HousePlaces.Asked(thing)
        .Select(place => new FormBlank(place.Key, pen.Say(new Message($"files.key.{thing}.{HousePlaces.Kebab(place.Key)}")), "",
            place.Words.Count == 0 ? [] : [new KnobChoice("", pen.Say("web.form.unsaid")), .. place.Words.Select(word => new KnobChoice(word, Word(thing, HousePlaces.Kebab(place.Key), word)))],
            Suggestions.For(thing, HousePlaces.Kebab(place.Key)), null));

    private IReadOnlyList<IReadOnlyList<FormPiece>> Lines(string path, string words, string title)
    {
        if (!HasWord($"web.form.{words}"))
        {
            return [];
        }

        return [.. pen.Say($"web.form.{words}").Split('\n').Select(line => (IReadOnlyList<FormPiece>)[.. Place().Split(line).Select((piece, i) =>
            i % 2 == 0 ? new FormPiece(piece, null)
            : places.KeyAs(path, piece) is { } key && places.At(path.Length == 0 ? key : $"{path}.{key}") is { } place ? new FormPiece(null, Blank(place, title)) : new FormPiece("", null))
            .Where(piece => piece.Words is not "")])];
    }

    private FormBlank Blank(HousePlace place, string title) => new(
        EditOfPlaces.Prefix + place.Path, pen.Say("web.form.of", ("part", title), ("what", pen.Say(place.Meaning))), place.Text,
        place.Words.Count == 0 ? [] : [.. place.Needed || place.Text.Length > 0 ? [] : (KnobChoice[])[new("", pen.Say("web.form.unsaid"))], .. place.Words.Select(word => new KnobChoice(word, Word(place.Thing, place.Key, word)))],
        place.Kind == PlaceKind.Text ? Suggestions.For(place.Thing, place.Key) : [],
        said.Where(d => d.Path == place.Path).Select(d => pen.Say(d.What)).FirstOrDefault() ?? Unknown(place));

    /// <summary>Something else than what is known may stand there; that nobody knows it is said.</summary>
    private string? Unknown(HousePlace place)
    {
        var known = place.Kind == PlaceKind.Text ? Suggestions.For(place.Thing, place.Key) : [];
        return known.Count == 0 || place.Text.Length == 0 || known.Contains(place.Text) ? null
            : pen.Say("web.form.unknown", ("text", OneLine.Of(place.Text)), ("nearest", Nearest.To(place.Text, known)));
    }

    private string Word(string thing, string key, string word) => pen.NameOf($"web.word.{thing}-{key}-{word}", pen.NameOf($"web.word.{word}", word));

    private string Title(string thing) => pen.Say($"web.part.{thing}");

    private string Named(string path, int index) => places.At($"{path}.name")?.Text is { Length: > 0 } name ? name
        : pen.Say("web.form.numbered", ("part", Title(places.Part(path)!.Thing)), ("n", (index + 1).ToString(CultureInfo.InvariantCulture)));

    private static bool HasWord(string key) => Known.Contains(key);

    private static Sequence<string> Asked(string words) => Phrasebook.English.Arguments($"web.form.{words}");

    [GeneratedRegex(@"\{([a-z0-9-]+)\}")]
    private static partial Regex Place();
}
