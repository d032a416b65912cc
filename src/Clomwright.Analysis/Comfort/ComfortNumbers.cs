using System.Collections.Frozen;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Comfort;

/// <summary>What nobody measured about heat, air and damp in a house, from <c>data/materials/comfort.json</c>, as far as the house file does not say otherwise.</summary>
public sealed class ComfortNumbers : NumberTable
{
    private static readonly FrozenDictionary<string, Entry> Table = Load("comfort.json");

    private ComfortNumbers(Sequence<AssumedNumber> assumed) : base(Table, assumed)
    {
    }

    /// <summary>Every key, that of the cob's conductivity with them: nobody's where the cob's density tells it.</summary>
    public static Sequence<string> Keys => [.. Table.Keys.Order(StringComparer.Ordinal), Cob];

    /// <summary>Key under which the author writes the conductivity of this cob, W/(m K).</summary>
    public const string Cob = "comfort-cob";

    /// <summary>The numbers of a house.</summary>
    /// <param name="assumed">Numbers the author changed, by the key of the assumption.</param>
    public static ComfortNumbers Of(Sequence<AssumedNumber> assumed) => new(assumed);
}
