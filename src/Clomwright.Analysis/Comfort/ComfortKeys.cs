using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Comfort;

/// <summary>What is wrong with the materials, glazings and woods that a house names for its warmth.</summary>
public static class ComfortKeys
{
    /// <summary>Keys that the data do not know, with the nearest that they do.</summary>
    public static Sequence<Diagnostic> Remarks(House house)
    {
        ArgumentNullException.ThrowIfNull(house);
        var comfort = house.Comfort;
        IEnumerable<Diagnostic?> all =
        [
            Of("comfort.glazing", comfort.Glazing, ThermalMaterial.GlazingKeys),
            Of("comfort.wood", comfort.Wood, ThermalMaterial.WoodKeys),
            Of("comfort.floorEdge.material", comfort.FloorEdge?.Material, ThermalMaterial.Keys),
            .. comfort.Linings.Select((l, i) => Of($"comfort.linings[{i}].material", l.Material, ThermalMaterial.Keys)),
            .. house.Openings.Select((o, i) => Of($"openings[{i}].glazing", o.Glazing, ThermalMaterial.GlazingKeys)),
        ];
        return all.OfType<Diagnostic>().ToSequence();
    }

    private static Diagnostic? Of(string path, string? key, Sequence<string> known) =>
        string.IsNullOrWhiteSpace(key) || known.Contains(key) ? null : new Diagnostic(path, Message.Of("analysis.comfort.unknown-key", ("key", key), ("nearest", Nearest.To(key, known))));
}
