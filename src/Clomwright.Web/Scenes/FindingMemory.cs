using Clomwright.Evidence;

namespace Clomwright.Web.Scenes;

/// <summary>Findings as they were put into words last: one that says the same again keeps its very line, which is neither written nor sent anew.</summary>
internal sealed class FindingMemory
{
    private readonly Dictionary<string, (Finding Finding, FindingLine Line)> known = new(StringComparer.Ordinal);
    private UnitSystem units;

    /// <summary>Forgets every line: they are in another language now.</summary>
    public void Forget() => known.Clear();

    /// <summary>The line of a finding.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="id">Its id.</param>
    /// <param name="number">Its number on the drawing.</param>
    /// <param name="inUnits">Which units come first.</param>
    /// <param name="write">Puts it into words.</param>
    public FindingLine LineOf(Finding finding, string id, int? number, UnitSystem inUnits, Func<FindingLine> write)
    {
        if (inUnits != units)
        {
            known.Clear();
            units = inUnits;
        }

        var same = known.TryGetValue(id, out var before) && before.Finding == finding;
        var line = same ? before.Line.Number == number ? before.Line : before.Line with { Number = number } : write();
        known[id] = (finding, line);
        return line;
    }
}

/// <summary>The lines of findings that a page already has, so that only others are sent.</summary>
internal sealed class SentFindings
{
    private const int Kept = 6;

    private readonly Queue<(long Edition, IReadOnlyList<FindingLine> Lines)> sent = new();
    private long editions;

    /// <summary>Forgets what was sent.</summary>
    public void Forget() => sent.Clear();

    /// <summary>The scene with only those findings that what was sent under a number did not have; all of them where that is not remembered.</summary>
    /// <param name="scene">The whole scene.</param>
    /// <param name="since">The number of the findings that the page has; null where it has none.</param>
    public Scene Only(Scene scene, long? since)
    {
        var before = sent.LastOrDefault(s => s.Edition == since).Lines;
        if (sent.LastOrDefault(s => ReferenceEquals(s.Lines, scene.Findings)) is not { Lines: not null } edition)
        {
            edition = (++editions, scene.Findings);
            sent.Enqueue(edition);
        }

        while (sent.Count > Kept)
        {
            sent.Dequeue();
        }

        scene = scene with { Edition = edition.Edition };
        if (before is null)
        {
            return scene;
        }

        var places = new Dictionary<FindingLine, int>(ReferenceEqualityComparer.Instance);
        for (var i = 0; i < before.Count; i++)
        {
            places[before[i]] = i;
        }

        var fresh = new List<FindingLine>();
        var order = new int[scene.Findings.Count];
        for (var i = 0; i < order.Length; i++)
        {
            if (!places.TryGetValue(scene.Findings[i], out order[i]))
            {
                fresh.Add(scene.Findings[i]);
                order[i] = -fresh.Count;
            }
        }

        return scene with { Findings = fresh, Since = since, Order = order };
    }
}
