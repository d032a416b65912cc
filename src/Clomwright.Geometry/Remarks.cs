using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>Diagnostics gathered while a house is placed.</summary>
internal sealed class Remarks
{
    private readonly List<(Diagnostic What, bool Parts)> found = [];

    /// <summary>How many there are.</summary>
    public int Count => found.Count;

    /// <summary>Takes over what others found.</summary>
    public void Take(Remarks others) => found.AddRange(others.found);

    public void Error(string path, Message what) => found.Add((new Diagnostic(path, what), false));

    public void Warn(string path, Message what) => found.Add((new Diagnostic(path, what, Severity.Warning), false));

    /// <summary>An error of a thing whose parts (its sizes, its place) are unsound.</summary>
    public void ErrorOfParts(string path, Message what) => found.Add((new Diagnostic(path, what), true));

    /// <summary>What was found, without what the description's own checks already say of the same place or, for unsound parts, of one of them.</summary>
    public Sequence<Diagnostic> BesidesThoseOf(House house)
    {
        if (found.Count == 0)
        {
            return [];
        }

        var said = HouseDiagnostics.Of(house).Select(d => d.Path).ToArray();
        return found.Where(f => !Array.Exists(said, path => path == f.What.Path || f.Parts && path.StartsWith(f.What.Path + ".", StringComparison.Ordinal)))
            .Select(f => f.What).ToSequence();
    }
}
