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
