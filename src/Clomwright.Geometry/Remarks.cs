using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>Diagnostics gathered while a house is placed.</summary>
internal sealed class Remarks
{
    private readonly List<Diagnostic> found = [];

    public Sequence<Diagnostic> All => found.ToSequence();

    public void Error(string path, string key, params ReadOnlySpan<(string Name, Argument Value)> arguments) =>
        found.Add(new Diagnostic(path, Message.Of("geometry." + key, arguments)));

    public void Warn(string path, string key, params ReadOnlySpan<(string Name, Argument Value)> arguments) =>
        found.Add(new Diagnostic(path, Message.Of("geometry." + key, arguments), Severity.Warning));
}
