using System.Collections.Frozen;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.FreeZone;

/// <summary>How deep and how far from what carries a crew may improvise, from <c>data/materials/free-zone.json</c>, as far as the house file does not say otherwise.</summary>
public sealed class FreeZoneNumbers : NumberTable
{
    private static readonly FrozenDictionary<string, Entry> Table = Load("free-zone.json");

    private FreeZoneNumbers(Sequence<AssumedNumber> assumed) : base(Table, assumed)
    {
    }

    /// <summary>Every key.</summary>
    public static Sequence<string> Keys => Table.Keys.Order(StringComparer.Ordinal).ToSequence();

    /// <summary>The numbers of a house.</summary>
    /// <param name="assumed">Numbers the author changed, by the key of the assumption.</param>
    public static FreeZoneNumbers Of(Sequence<AssumedNumber> assumed) => new(assumed);
}
