using System.Collections.Frozen;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>How a crew is shared out, from <c>data/materials/rota.json</c>, as far as the house file does not say otherwise.</summary>
public sealed class RotaNumbers : NumberTable
{
    private static readonly FrozenDictionary<string, Entry> Table = Load("rota.json");

    private RotaNumbers(Sequence<AssumedNumber> assumed) : base(Table, assumed)
    {
    }

    /// <summary>Every key.</summary>
    public static Sequence<string> Keys => Table.Keys.Order(StringComparer.Ordinal).ToSequence();

    /// <summary>Every number that nobody gave.</summary>
    public Sequence<Assumption> Assumptions => Assumed(Keys);

    /// <summary>The numbers of a house.</summary>
    /// <param name="assumed">Numbers the author changed, by the key of the assumption.</param>
    public static RotaNumbers Of(Sequence<AssumedNumber> assumed) => new(assumed);
}
