using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>Diagnostics gathered while a house is placed.</summary>
internal sealed class Remarks
{
    private readonly List<Diagnostic> found = [];

    /// <summary>What was found, without what the description's own checks already say of the same place.</summary>
    public Sequence<Diagnostic> BesidesThoseOf(House house)
    {
        if (found.Count == 0)
        {
            return [];
        }

        var said = HouseDiagnostics.Of(house).Select(d => d.Path).ToArray();
        return found.Where(d => !Array.Exists(said, path => path == d.Path || path.StartsWith(d.Path + ".", StringComparison.Ordinal))).ToSequence();
    }

    public void Error(string path, Message what) => found.Add(new Diagnostic(path, what));

    public void Warn(string path, Message what) => found.Add(new Diagnostic(path, what, Severity.Warning));
}
