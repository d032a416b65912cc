using System.Collections.Frozen;
using System.Text.Json;
using Clomwright.Analysis.Loads;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis;

/// <summary>What nobody measured about walls that stand, from <c>data/materials/wall.json</c>, as far as the house file does not say otherwise: the hand, the model and the blocks read the same numbers.</summary>
public sealed class WallNumbers
{
    private static readonly FrozenDictionary<string, Entry> Known = Load();
    private readonly FrozenDictionary<string, double> said;

    private WallNumbers(FrozenDictionary<string, double> said) => this.said = said;

    /// <summary>The numbers of a house.</summary>
    /// <param name="assumed">Numbers the author changed, by the key of the assumption.</param>
    public static WallNumbers Of(Sequence<AssumedNumber> assumed) =>
        new(assumed.GroupBy(a => a.Key, StringComparer.Ordinal).ToFrozenDictionary(g => g.Key, g => g.Last().Value, StringComparer.Ordinal));

    /// <summary>The number of a key, SI.</summary>
    public double this[string key] => said.TryGetValue(key, out var value) ? value : Known[key].Value;

    /// <summary>The numbers of some keys that nobody gave, as assumptions.</summary>
    /// <param name="keys">The keys.</param>
    public Sequence<Assumption> Assumed(IEnumerable<string> keys) => keys.Where(key => !said.ContainsKey(key)).Order(StringComparer.Ordinal)
        .Select(key => new Assumption(key, new Message($"analysis.assumed.{key}"), new Amount(Known[key].Value, Known[key].Dimension), Known[key].Source)).ToSequence();

    /// <summary>Every key.</summary>
    public static Sequence<string> Keys => Known.Keys.Order(StringComparer.Ordinal).ToSequence();

    /// <summary>A number as calculations print it, with what told it.</summary>
    internal Symbol Symbol(string name, string key) => said.ContainsKey(key)
        ? new(name, new Message($"analysis.assumed.{key}"), new Amount(this[key], Known[key].Dimension), Tag.Given)
        : new(name, new Message($"analysis.assumed.{key}"), new Amount(this[key], Known[key].Dimension), Tag.Assumed, Known[key].Source);

    private static FrozenDictionary<string, Entry> Load()
    {
        using var document = MaterialFiles.Open("wall.json");
        return document.RootElement.GetProperty("numbers").EnumerateArray().Select(Entry.Read).ToFrozenDictionary(e => e.Key, StringComparer.Ordinal);
    }

    private sealed record Entry(string Key, Dimension Dimension, double Value, Source Source)
    {
        public static Entry Read(JsonElement e) => new(
            e.GetProperty("key").GetString()!, Enum.Parse<Dimension>(e.GetProperty("dimension").GetString()!), e.GetProperty("value").GetDouble(), Sources.Get(e.GetProperty("source").GetString()!));
    }
}
