using System.Collections.Frozen;
using System.Text.Json;
using Clomwright.Analysis.Loads;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Drying;

/// <summary>Which way what is uncertain is taken.</summary>
public enum DryingCase
{
    /// <summary>As likely as not.</summary>
    Middle,

    /// <summary>Everything that makes it dry faster.</summary>
    Fast,

    /// <summary>Everything that makes it dry slower.</summary>
    Slow,
}

/// <summary>What nobody measured about drying cob, from <c>data/materials/drying.json</c>, as far as the house file does not say otherwise.</summary>
public sealed class DryingNumbers
{
    private static readonly FrozenDictionary<string, Entry> Known = Load();
    private readonly FrozenDictionary<string, double> said;
    private readonly FrozenDictionary<string, KnownNumber> tested;
    private readonly DryingCase way;
    private readonly double share;

    private DryingNumbers(FrozenDictionary<string, double> said, FrozenDictionary<string, KnownNumber> tested, DryingCase way, double share) =>
        (this.said, this.tested, this.way, this.share) = (said, tested, way, share);

    /// <summary>The numbers of a house in one case. What the house file says holds in every case.</summary>
    /// <param name="assumed">Numbers the author changed, by the key of the assumption.</param>
    /// <param name="way">Which case.</param>
    /// <param name="known">Numbers that tests and recipe of this house tell; what the author changed comes before them.</param>
    public static DryingNumbers Of(Sequence<AssumedNumber> assumed, DryingCase way = DryingCase.Middle, Sequence<KnownNumber> known = default) => new(
        assumed.GroupBy(a => a.Key, StringComparer.Ordinal).ToFrozenDictionary(g => g.Key, g => g.Last().Value, StringComparer.Ordinal),
        known.ToFrozenDictionary(k => k.Key, StringComparer.Ordinal), way, 1);

    /// <summary>How far each number goes towards its end when all of them go together: it is not to be expected that all lie at their worst ends at once.</summary>
    /// <remarks>
    /// The likeliest point at which n independent numbers of like weight together reach what one alone would reach lies 1/sqrt(n) of the way out on each (Hasofer and Lind 1974, the point of
    /// design); 0.4 is for six. Walls with every number drawn by itself lie between the two runs nine times of ten (<c>CaseTests</c>).
    /// </remarks>
    public const double Joint = 0.4;

    /// <summary>The same numbers for a run in which all that is uncertain acts together.</summary>
    public DryingNumbers Together => new(said, tested, way, Joint);

    /// <summary>The case.</summary>
    public DryingCase Case => way;

    /// <summary>The number of a key, SI.</summary>
    public double this[string key] => said.TryGetValue(key, out var value) ? value
        : tested.TryGetValue(key, out var told) ? Towards(told.Middle, told.In(way)) : Towards(Known[key].Middle, Known[key].In(way));

    /// <summary>Part of the way, by equal factors where there are factors.</summary>
    private double Towards(double middle, double end) =>
        share == 1 || middle == end ? end : middle > 0 && end > 0 ? middle * Math.Pow(end / middle, share) : middle + share * (end - middle);

    /// <summary>Every number that nobody gave, as an assumption; with the range where it has one.</summary>
    public Sequence<Assumption> Assumptions => Known.Values.Where(e => !said.ContainsKey(e.Key)).OrderBy(e => e.Key, StringComparer.Ordinal)
        .Select(e => tested.TryGetValue(e.Key, out var told) ? told.Assumption : new Assumption(e.Key, new Message($"analysis.assumed.{e.Key}"), new Amount(e.Middle, e.Dimension), e.Source))
        .OfType<Assumption>().ToSequence();

    /// <summary>A number as calculations print it, with what told it.</summary>
    internal Symbol Symbol(string name, string key)
    {
        var (amount, what) = (new Amount(this[key], Known[key].Dimension), What(key));
        return said.ContainsKey(key) ? new(name, what, amount, Tag.Given)
            : tested.TryGetValue(key, out var told) ? new(name, what, amount, told.Tag, told.Assumption?.Source)
            : new(name, what, amount, Tag.Assumed, Known[key].Source);
    }

    /// <summary>What a number is; and, where it stands at an end of its range, which end that is and what is as likely as not.</summary>
    private Message What(string key)
    {
        var (what, middle) = (new Message($"analysis.assumed.{key}"), tested.TryGetValue(key, out var told) ? told.Middle : Known[key].Middle);
        return way == DryingCase.Middle || said.ContainsKey(key) || this[key] == middle ? what
            : Message.Of(way == DryingCase.Slow ? "analysis.symbol.slow-end" : "analysis.symbol.fast-end", ("what", what), ("likely", new Amount(middle, Known[key].Dimension)));
    }

    /// <summary>What a number of a key is measured in.</summary>
    public static Dimension DimensionOf(string key) => Known[key].Dimension;

    /// <summary>The same of the keys that begin with a word, in the middle case.</summary>
    /// <param name="start">How the keys begin.</param>
    public Sequence<Assumption> AssumptionsOf(string start) => Assumptions.Where(a => a.Key.StartsWith(start, StringComparison.Ordinal)).ToSequence();

    /// <summary>Whose number a key's is, and where nobody gave it.</summary>
    internal static Source SourceOf(string key) => Known[key].Source;

    /// <summary>Every key.</summary>
    public static Sequence<string> Keys => Known.Keys.Order(StringComparer.Ordinal).ToSequence();

    private static FrozenDictionary<string, Entry> Load()
    {
        using var document = MaterialFiles.Open("drying.json");
        return document.RootElement.GetProperty("numbers").EnumerateArray().Select(Entry.Read).ToFrozenDictionary(e => e.Key, StringComparer.Ordinal);
    }

    private sealed record Entry(string Key, Dimension Dimension, double Middle, double Fast, double Slow, Source Source)
    {
        public double In(DryingCase way) => way switch { DryingCase.Fast => Fast, DryingCase.Slow => Slow, _ => Middle };

        public static Entry Read(JsonElement e)
        {
            var middle = e.GetProperty("value").GetDouble();
            double Or(string name) => e.TryGetProperty(name, out var value) ? value.GetDouble() : middle;
            return new(
                e.GetProperty("key").GetString()!, Enum.Parse<Dimension>(e.GetProperty("dimension").GetString()!), middle, Or("fast"), Or("slow"),
                Sources.Get(e.GetProperty("source").GetString()!));
        }
    }
}
