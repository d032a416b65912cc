using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files.Forms;
using Clomwright.Files.Json;
using Clomwright.Files.Shape;
using Clomwright.Files.Typing;

namespace Clomwright.Files;

/// <summary>
/// Every place of one house where something is or may be written, from the table of keys that reader, writer and schema use. A form on a screen or a phone asks
/// for places by their paths and writes texts in them; no second table says what a house has.
/// </summary>
public sealed class HousePlaces
{
    private readonly House house;
    private readonly Piece.Members root;

    private HousePlaces(House house) => (this.house, root) = (house, HouseWriter.PieceOf(house));

    /// <summary>The places of a house.</summary>
    public static HousePlaces Of(House house) => new(house);

    /// <summary>The place at a path; null where there is none, or where a part, not a text, stands.</summary>
    public HousePlace? At(string path) => Found(path) is { } found && found.Owner is { } owner && PlaceText.KindOf(found.Kind) is { } kind
        ? new HousePlace(path, owner.Name, Kebab(found.Key!.Name), kind, PlaceText.DimensionOf(found.Kind), PlaceText.WordsOf(found.Kind), PlaceText.Of(found, house.Units), found.Key.Required)
        : null;

    /// <summary>The part at a path; null where there can be none.</summary>
    public HousePart? Part(string path) => Found(path) switch
    {
        { Kind: Kind.Thing thing } found => new HousePart(path, thing.Name, null, found.Piece is not null, found.InList || found.Key is { Required: false }),
        { Kind: Kind.Union union } found => new HousePart(path, union.Name, Word(union, found.Piece), found.Piece is not null, found.InList || found.Key is { Required: false }),
        _ => null,
    };

    /// <summary>How many there are in the list at a path; null where there is no list.</summary>
    public int? Count(string path) => Found(path) is { Kind: Kind.List } found ? (found.Piece as Piece.Items)?.List.Count ?? 0 : null;

    /// <summary>The house with a text written in a place.</summary>
    /// <param name="path">Which place.</param>
    /// <param name="text">As typed; a bare number takes the unit that the house's tape has. Nothing empties a place that may be empty.</param>
    /// <returns>The house, or what is wrong with the text and what would be right.</returns>
    public (House? House, Message? Problem) Write(string path, string text)
    {
        if (Found(path) is not { Owner: { } owner, Key: { } key } found || PlaceText.KindOf(found.Kind) is null)
        {
            return (null, new Message("files.place-gone"));
        }

        if (string.IsNullOrWhiteSpace(text))
        {
            return key.Required || found.Step.Key is null ? (null, Message.Of("files.place-needed", ("expected", PlaceText.Expected(found.Kind)))) : Read(PieceTree.Without(root, Steps(path)), path);
        }

        var (piece, problem) = PlaceText.Read(found.Kind, text, house.Units);
        if (piece is null)
        {
            return (null, problem);
        }

        var others = owner.ExactlyOne.Where(pair => pair.One == key.Name || pair.Other == key.Name).Select(pair => pair.One == key.Name ? pair.Other : pair.One);
        var cleared = others.Aggregate(root, (tree, other) => PieceTree.Without(tree, [.. Steps(path).SkipLast(1), new PathStep(other, 0)]));
        return Read(PieceTree.With(cleared, Steps(path), piece, HouseShape.House.Kind), path);
    }

    /// <summary>The house with a part added where there is none, or at the end of a list.</summary>
    /// <param name="path">Which part or list.</param>
    /// <param name="texts">What is written in its places, by key; a place that is not named, or named with nothing, is left out.</param>
    public (House? House, Message? Problem) Add(string path, IReadOnlyDictionary<string, string> texts)
    {
        if (Found(path) is not { } found || (found.Kind as Kind.List)?.Item is var item && Thing(item ?? found.Kind, texts) is not ({ } thing, var word))
        {
            return (null, new Message("files.place-gone"));
        }

        var members = new List<(string, Piece)>(word is { } known ? [known] : []);
        foreach (var key in thing.Keys.Where(key => !string.IsNullOrWhiteSpace(texts.GetValueOrDefault(key.Name))))
        {
            var (piece, problem) = PlaceText.Read(key.Kind, texts[key.Name], house.Units);
            if (piece is null)
            {
                return (null, Message.Of("files.in-place", ("place", Meaning.Of(thing.Name, key.Name)), ("problem", problem!)));
            }

            members.Add((key.Name, piece));
        }

        // A part of which nothing has to be known is begun empty.
        members.AddRange(thing.Keys.Where(key => key is { Required: true, Kind: Kind.Thing inner } && inner.Keys.All(k => !k.Required)).Select(key => (key.Name, (Piece)new Piece.Members([]))));
        if (thing.Keys.FirstOrDefault(key => key.Required && members.All(m => m.Item1 != key.Name)) is { } missing)
        {
            return (null, Message.Of("files.in-place", ("place", Meaning.Of(thing.Name, missing.Name)), ("problem", Message.Of("files.place-needed", ("expected", PlaceText.Expected(missing.Kind))))));
        }

        var part = new Piece.Members(members.ToSequence());
        Piece put = item is null ? part : new Piece.Items([.. (found.Piece as Piece.Items)?.List ?? [], part]);
        return Read(PieceTree.With(root, Steps(path), put, HouseShape.House.Kind), item is null ? path : $"{path}[{((Piece.Items)put).List.Count - 1}]", thing.Name);
    }

    /// <summary>The house without a part, or without one of a list.</summary>
    public (House? House, Message? Problem) Without(string path) =>
        Found(path) is { Piece: not null } found && (found.InList || found.Key is { Required: false })
            ? Read(PieceTree.Without(root, Steps(path)), path)
            : (null, new Message("files.place-gone"));

    /// <summary>The house with one of a list moved to another place in it.</summary>
    /// <param name="path">Which: <c>roof.layers[1]</c>.</param>
    /// <param name="by">How many places; what would go past an end stays there.</param>
    public (House? House, Message? Problem) Move(string path, int by)
    {
        var steps = Steps(path);
        if (steps is not [.. var list, { Key: null } last] || Found(path) is not { InList: true, Piece: { } moved } || PieceTree.Find(root, list) is not Piece.Items items)
        {
            return (null, new Message("files.place-gone"));
        }

        var rest = items.List.Without(last.Index).ToList();
        rest.Insert(Math.Clamp(last.Index + by, 0, rest.Count), moved);
        return Read(PieceTree.With(root, list, new Piece.Items(rest.ToSequence()), HouseShape.House.Kind), path);
    }

    /// <summary>The parts and lists of parts that hang on the part at a path, in the order of the table.</summary>
    public IEnumerable<(string Path, bool IsList)> Inner(string path) => Found(path) is not { } found ? []
        : (found.Kind is Kind.Union union ? found.Case(union) : found.Kind as Kind.Thing)?.Keys
            .Where(key => key.Kind is Kind.Thing or Kind.Union or Kind.List { Item: Kind.Thing or Kind.Union })
            .Select(key => (path.Length == 0 ? key.Name : $"{path}.{key.Name}", key.Kind is Kind.List)) ?? [];

    /// <summary>What one of the list at a path is called, kebab case; null where there is no list of parts.</summary>
    public string? ThingOfList(string path) => Found(path)?.Kind is Kind.List { Item: Kind.Thing thing } ? thing.Name : null;

    /// <summary>The key of a place as the file spells it, from the words' spelling; null where the part has no such place.</summary>
    public string? KeyAs(string path, string kebab) => Found(path) is not { } found ? null
        : found.Kind is Kind.Union union && Kebab(union.Key) == kebab ? union.Key
        : (found.Kind is Kind.Union of ? found.Case(of) : found.Kind as Kind.Thing ?? (found.Kind as Kind.Either)?.Other as Kind.Thing)?.Keys.FirstOrDefault(key => Kebab(key.Name) == kebab)?.Name;

    /// <summary>The places of a thing that is not in a house yet: what has to be written to add one, and what may be.</summary>
    /// <param name="thing">Kebab case.</param>
    public static IReadOnlyList<(string Key, PlaceKind Kind, Sequence<string> Words, bool Needed)> Asked(string thing) =>
        Kinds().FirstOrDefault(found => found.Thing.Name == thing) is ({ } kind, _)
            ? [.. kind.Keys.Where(key => PlaceText.KindOf(key.Kind) is not null).Select(key => (key.Name, PlaceText.KindOf(key.Kind)!.Value, PlaceText.WordsOf(key.Kind), key.Required))]
            : [];

    /// <summary>Every kind of object that a house may hold, with the keys that are written as texts: what a form has to ask for. Independent of any house.</summary>
    /// <returns>Name of the object, the case of a union or null, and its keys, kebab case.</returns>
    public static IEnumerable<(string Thing, string? Case, IReadOnlyList<string> Keys)> Everything() => Kinds()
        .Select(found => (found.Thing.Name, found.Case?.Word,
            (IReadOnlyList<string>)[.. (found.Case is var (key, _) ? [key] : (string[])[]).Concat(found.Thing.Keys.Where(k => PlaceText.KindOf(k.Kind) is not null).Select(k => k.Name)).Select(Kebab)]));

    private static IEnumerable<(Kind.Thing Thing, (string Key, string Word)? Case)> Kinds()
    {
        var seen = new HashSet<(string, string?)>();
        var waiting = new Queue<(Kind Kind, (string Key, string Word)? Case)>([(HouseShape.House.Kind, null)]);
        while (waiting.TryDequeue(out var next))
        {
            switch (next.Kind)
            {
                case Kind.Thing thing when seen.Add((thing.Name, next.Case?.Word)):
                    yield return (thing, next.Case);
                    foreach (var key in thing.Keys)
                    {
                        waiting.Enqueue((key.Kind, null));
                    }

                    break;
                case Kind.Union union:
                    foreach (var (word, thing) in union.Cases)
                    {
                        waiting.Enqueue((thing, (union.Key, word)));
                    }

                    break;
                case Kind.List list:
                    waiting.Enqueue((list.Item, null));
                    break;
                case Kind.Either either:
                    waiting.Enqueue((either.Other, null));
                    break;
            }
        }
    }

    /// <summary>A key as words of it are called.</summary>
    public static string Kebab(string key) => string.Concat(key.Select(c => char.IsAsciiLetterUpper(c) ? $"-{char.ToLowerInvariant(c)}" : c.ToString()));

    /// <summary>The house as changed, or what is wrong at the place or in what it is in; of a part that is added, by its thing, also what is wrong in it.</summary>
    private (House? House, Message? Problem) Read(Piece.Members changed, string path, string? added = null)
    {
        var text = new Layout("\n").File(changed);
        var reading = new Reading(text);
        if (!HouseShape.House.TryRead(new JsonParser(text).Parse(), KeyPath.Root, reading, out var read) || reading.Diagnostics.Count > 0)
        {
            return (null, reading.Diagnostics.Count > 0 ? reading.Diagnostics[0].What : new Message("files.place-gone"));
        }

        var was = HouseDiagnostics.Of(house);
        var wrong = HouseDiagnostics.Of(read).FirstOrDefault(said => said.Severity == Severity.Error && (Concerns(said.Path, path) || (added is not null && said.Path.StartsWith(path + ".", StringComparison.Ordinal))) && was.All(before => before.What != said.What || before.Path != said.Path));
        return wrong is null ? (read, null)
            : (null, added is not null && wrong.Path.Length > path.Length && wrong.Path[(path.Length + 1)..] is var key && key.All(char.IsAsciiLetter) ? Message.Of("files.in-place", ("place", Meaning.Of(added, key)), ("problem", wrong.What)) : wrong.What);
    }

    /// <summary>What is said of a part concerns a place where it is said of the place itself or of what the place is in; what it breaks elsewhere is said there.</summary>
    private static bool Concerns(string said, string path) => said == path || path.StartsWith(said + ".", StringComparison.Ordinal) || path.StartsWith(said + "[", StringComparison.Ordinal);

    private static (Kind.Thing?, (string, Piece)?) Thing(Kind kind, IReadOnlyDictionary<string, string> texts) => kind switch
    {
        Kind.Thing thing => (thing, null),
        Kind.Union union when texts.TryGetValue(union.Key, out var word) => (union.Cases.FirstOrDefault(c => c.Word == word).Thing, (union.Key, Piece.Of(word))),
        _ => (null, null),
    };

    private static PathStep[] Steps(string path) => [.. PathStep.Of(path)];

    private PlaceFound? Found(string path) => PlaceFound.In(root, Steps(path));

    private static string? Word(Kind.Union union, Piece? piece) => (piece as Piece.Members)?.Find(union.Key) is Piece.Token token ? PieceTree.Unquoted(token) : null;
}
