using System.Collections.Frozen;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis;

/// <summary>What nobody measured about walls that stand, from <c>data/materials/wall.json</c>, as far as the house file does not say otherwise: the hand, the model and the blocks read the same numbers.</summary>
public sealed class WallNumbers : NumberTable
{
    private static readonly FrozenDictionary<string, Entry> Table = Load("wall.json");

    private WallNumbers(Sequence<AssumedNumber> assumed) : base(Table, assumed)
    {
    }

    /// <summary>Every key.</summary>
    public static Sequence<string> Keys => Table.Keys.Order(StringComparer.Ordinal).ToSequence();

    /// <summary>The numbers of a house.</summary>
    /// <param name="assumed">Numbers the author changed, by the key of the assumption.</param>
    public static WallNumbers Of(Sequence<AssumedNumber> assumed) => new(assumed);
}
