using Clomwright.Analysis.Comfort;
using Clomwright.Analysis.Days;
using Clomwright.Analysis.Drying;
using Clomwright.Analysis.WallByHand;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis;

/// <summary>What is wrong with numbers that a house file puts in place of assumptions.</summary>
public static class AssumedKeys
{
    /// <summary>Every key that an assumption has, room by room.</summary>
    public static Sequence<string> Known { get; } = [.. DryingNumbers.Keys, .. WallNumbers.Keys, .. WorkNumbers.Keys, .. RotaNumbers.Keys, .. ComfortNumbers.Keys, .. FreeZone.FreeZoneNumbers.Keys];

    /// <summary>Keys that no assumption has, with the nearest that one has; keys written twice.</summary>
    public static Sequence<Diagnostic> Remarks(House house)
    {
        ArgumentNullException.ThrowIfNull(house);
        return house.Assumed.Select((a, i) => (a.Key, Path: $"assumed[{i}].key", Twice: house.Assumed.Take(i).Any(b => b.Key == a.Key)))
            .Where(a => !string.IsNullOrWhiteSpace(a.Key))
            .Select(a => !Known.Contains(a.Key)
                    ? new Diagnostic(a.Path, Message.Of("analysis.assumed-unknown", ("key", a.Key), ("nearest", Nearest.To(a.Key, Known))))
                : a.Twice ? new Diagnostic(a.Path, Message.Of("analysis.assumed-twice", ("key", a.Key)))
                : null)
            .OfType<Diagnostic>().ToSequence();
    }
}
