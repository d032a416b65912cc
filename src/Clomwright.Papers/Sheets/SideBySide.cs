using Clomwright.Evidence;

namespace Clomwright.Papers.Sheets;

/// <summary>Sheets that know nothing of one another, drawn on as many processors as there are.</summary>
internal static class SideBySide
{
    /// <summary>Each with its sheets, in the order asked for.</summary>
    public static (T Of, Draft[] Drafts)[] Drawn<T>(Scene scene, IReadOnlyList<T> kinds, Func<T, Func<Scene, IEnumerable<Draft>>> sheets) =>
        kinds.EachBesideOthers(kind => (kind, sheets(kind)(scene).Select(d => d.Drawn(scene.Say)).ToArray()));
}
