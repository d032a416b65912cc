using Clomwright.Evidence;
using Clomwright.Files.Json;

namespace Clomwright.Files.Forms;

/// <summary>An object of the file with its keys.</summary>
/// <param name="name">Name of the object in the words of its keys, kebab case.</param>
/// <param name="keys">In the order in which they are written.</param>
/// <param name="make">Makes the value from those of its keys.</param>
/// <param name="exactlyOne">Pairs of keys of which exactly one is given.</param>
internal sealed class Thing<T>(string name, IReadOnlyList<Key<T>> keys, Func<Values, T> make, params (Key<T> One, Key<T> Other)[] exactlyOne) : Form<T>
{
    private readonly Dictionary<string, Key<T>> byName = keys.ToDictionary(k => k.Name);

    public override Kind Kind => Described();

    public Kind.Thing Described() =>
        new(name, keys.Select(k => k.Kind).ToSequence(), exactlyOne.Select(p => (p.One.Name, p.Other.Name)).ToSequence());

    public override bool TryRead(Node node, KeyPath path, Reading reading, out T value) => TryRead(node, path, reading, [], out value);

    /// <summary>Reads the object, passing over keys that whoever calls has already read.</summary>
    public bool TryRead(Node node, KeyPath path, Reading reading, ReadOnlySpan<string> alreadyRead, out T value)
    {
        value = default!;
        if (node is not ObjectNode read)
        {
            return reading.NotOfKind(path, node, "files.kind.thing");
        }

        var (whole, values, seen) = (true, new Values(), new HashSet<string>());
        foreach (var member in read.Members)
        {
            if (reading.Full)
            {
                return false;
            }

            if (!seen.Add(member.Name))
            {
                reading.Problem(path[member.Name], Message.Of("files.key-twice", ("key", member.Name)));
            }
            else if (byName.TryGetValue(member.Name, out var key))
            {
                whole &= key.TryRead(member.Value, path[key.Name], reading, values) || key.LeavesOut;
            }
            else if (!alreadyRead.Contains(member.Name))
            {
                reading.Problem(path[member.Name], Message.Of("files.key-unknown", ("key", member.Name), ("nearest", Nearest.To(member.Name, byName.Keys))));
            }
        }

        foreach (var key in keys.Where(k => k.Required && !seen.Contains(k.Name)))
        {
            whole = false;
            reading.Problem(path[key.Name], Message.Of("files.key-missing", ("expected", Expected(key.Kind.Kind))));
        }

        foreach (var (one, other) in exactlyOne)
        {
            whole &= seen.Contains(one.Name) != seen.Contains(other.Name)
                || NotExactlyOne(path, reading, seen.Contains(one.Name) ? "files.both-keys" : "files.neither-key", one.Name, other.Name);
        }

        if (whole)
        {
            value = make(values);
        }

        return whole;
    }

    public override Piece Write(T value, UnitSystem units) => Write(value, units, []);

    /// <summary>The object with other members before its own.</summary>
    public Piece.Members Write(T value, UnitSystem units, IEnumerable<(string Name, Piece Value)> before) =>
        new(before.Concat(keys.Select(k => (k.Name, Value: k.Write(value, units))).Where(m => m.Value is not null).Select(m => (m.Name, m.Value!))).ToSequence());

    private static bool NotExactlyOne(KeyPath path, Reading reading, string key, string one, string other)
    {
        reading.Problem(path, Message.Of(key, ("one", one), ("other", other)));
        return false;
    }

    private static Message Expected(Kind kind) => kind switch
    {
        Kind.Quantity quantity => new Message($"files.kind.{Quantities.Word(quantity.Dimension)}"),
        Kind.Word word => Message.Of("files.kind.word", ("words", new Argument.List(word.Words.Select(w => (Argument)w).ToSequence()))),
        Kind.Either either => Expected(either.One),
        Kind.Format format => Message.Of("files.kind.format", ("newest", format.Newest)),
        Kind.Union => new Message("files.kind.thing"),
        _ => new Message($"files.kind.{kind.GetType().Name.ToLowerInvariant()}"),
    };
}

/// <summary>An object whose keys depend on a word in one of them.</summary>
internal sealed class Union<T>(string name, string key, IReadOnlyList<Union<T>.Case> cases) : Form<T>
{
    /// <summary>The object that goes with one word.</summary>
    internal abstract class Case(string word)
    {
        public string Word { get; } = word;

        public abstract Kind.Thing Described { get; }

        public abstract bool Is(T value);

        public abstract bool TryRead(ObjectNode node, KeyPath path, Reading reading, string key, out T value);

        public abstract Piece Write(T value, UnitSystem units, string key);
    }

    /// <summary>The object that goes with one word, with its type.</summary>
    internal sealed class CaseOf<U>(string word, Thing<U> thing) : Case(word) where U : T
    {
        public override Kind.Thing Described => thing.Described();

        public override bool Is(T value) => value is U;

        public override bool TryRead(ObjectNode node, KeyPath path, Reading reading, string key, out T value)
        {
            var read = thing.TryRead(node, path, reading, [key], out var one);
            value = one;
            return read;
        }

        public override Piece Write(T value, UnitSystem units, string key) => thing.Write((U)value!, units, [(key, Piece.Of(Word))]);
    }

    private readonly Sequence<string> words = cases.Select(c => c.Word).ToSequence();

    public override Kind Kind => new Kind.Union(name, key, cases.Select(c => (c.Word, c.Described)).ToSequence());

    public override bool TryRead(Node node, KeyPath path, Reading reading, out T value)
    {
        value = default!;
        if (node is not ObjectNode read)
        {
            return reading.NotOfKind(path, node, "files.kind.thing");
        }

        if (read.Find(key) is not { } member)
        {
            reading.Problem(path[key], Message.Of("files.key-missing", ("expected", Message.Of("files.kind.word", ("words", new Argument.List(words.Select(w => (Argument)w).ToSequence()))))));
            return false;
        }

        return AmongWords.TryRead(member.Value, words, path[key], reading, out var index) && cases[index].TryRead(read, path, reading, key, out value);
    }

    public override Piece Write(T value, UnitSystem units) => cases.First(c => c.Is(value)).Write(value, units, key);
}
