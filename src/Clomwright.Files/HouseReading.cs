using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Files;

/// <summary>What came of reading a house file.</summary>
/// <param name="Document">The file with its author's own text; null when it is no house file at all.</param>
/// <param name="House">The house, less the parts that could not be read; null when too little could.</param>
/// <param name="Diagnostics">
/// What is wrong in the file, and in the description by itself (<see cref="HouseDiagnostics"/>), with paths as in the file. Geometry has its own.
/// </param>
public sealed record HouseReading(HouseDocument? Document, House? House, Sequence<Diagnostic> Diagnostics)
{
    internal static HouseReading Refused(Message problem) => new(null, null, [new Diagnostic("", problem)]);
}

/// <summary>Where something stands in a house file; both count from 1.</summary>
/// <param name="Line">Line.</param>
/// <param name="Column">Character on the line.</param>
public readonly record struct FilePosition(int Line, int Column);
