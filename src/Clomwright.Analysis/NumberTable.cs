using System.Collections.Frozen;
using System.Text.Json;
using Clomwright.Analysis.Loads;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis;

/// <summary>Numbers that nobody measured, each with its source, from a file of <c>data/materials/</c>; the house file changes any of them under <c>assumed</c>.</summary>
public abstract class NumberTable
{
    private readonly FrozenDictionary<string, Entry> known;
    private readonly FrozenDictionary<string, double> said;

    /// <summary>The numbers of a house.</summary>
    /// <param name="known">The file's, from <see cref="Load"/>.</param>
    /// <param name="assumed">Numbers the author changed, by the key of the assumption.</param>
    private protected NumberTable(FrozenDictionary<string, Entry> known, Sequence<AssumedNumber> assumed) =>
        (this.known, said) = (known, assumed.GroupBy(a => a.Key, StringComparer.Ordinal).ToFrozenDictionary(g => g.Key, g => g.Last().Value, StringComparer.Ordinal));

    /// <summary>The number of a key, SI.</summary>
    public double this[string key] => said.TryGetValue(key, out var value) ? value : known[key].Value;

    /// <summary>The numbers of some keys that nobody gave, as assumptions.</summary>
    /// <param name="keys">The keys.</param>
    public Sequence<Assumption> Assumed(IEnumerable<string> keys) => keys.Where(key => !said.ContainsKey(key)).Order(StringComparer.Ordinal)
        .Select(key => new Assumption(key, new Message($"analysis.assumed.{key}"), new Amount(known[key].Value, known[key].Dimension), known[key].Source)).ToSequence();

    /// <summary>A number as calculations print it, with what told it.</summary>
    internal Symbol Symbol(string name, string key) => said.ContainsKey(key)
        ? new(name, new Message($"analysis.assumed.{key}"), new Amount(this[key], known[key].Dimension), Tag.Given)
        : new(name, new Message($"analysis.assumed.{key}"), new Amount(this[key], known[key].Dimension), Tag.Assumed, known[key].Source);

    private protected static FrozenDictionary<string, Entry> Load(string file)
    {
        using var document = MaterialFiles.Open(file);
        return document.RootElement.GetProperty("numbers").EnumerateArray().Select(Entry.Read).ToFrozenDictionary(e => e.Key, StringComparer.Ordinal);
    }

    private protected sealed record Entry(string Key, Dimension Dimension, double Value, Source Source)
    {
        public static Entry Read(JsonElement e) => new(
            e.GetProperty("key").GetString()!, Enum.Parse<Dimension>(e.GetProperty("dimension").GetString()!), e.GetProperty("value").GetDouble(), Sources.Get(e.GetProperty("source").GetString()!));
    }
}
