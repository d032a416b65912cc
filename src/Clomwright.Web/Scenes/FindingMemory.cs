using Clomwright.Evidence;

namespace Clomwright.Web.Scenes;

/// <summary>Findings as they were put into words last: one that says the same again keeps its very line, which is neither written nor sent anew.</summary>
internal sealed class FindingMemory
{
    private readonly Dictionary<string, (Finding Finding, FindingLine Line)> known = new(StringComparer.Ordinal);

    /// <summary>Forgets every line: they are in another language or in other units now.</summary>
    public void Forget() => known.Clear();

    /// <summary>The line of a finding.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="id">Its id.</param>
    /// <param name="number">Its number on the drawing.</param>
    /// <param name="write">Puts it into words.</param>
    public FindingLine LineOf(Finding finding, string id, int? number, Func<FindingLine> write)
    {
        var same = known.TryGetValue(id, out var before) && before.Finding == finding;
        var line = same ? before.Line.Number == number ? before.Line : before.Line with { Number = number } : write();
        known[id] = (finding, line);
        return line;
    }
}
