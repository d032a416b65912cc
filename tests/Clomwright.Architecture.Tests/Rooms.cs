using System.Xml.Linq;
using Clomwright.Testing;

namespace Clomwright.Architecture.Tests;

/// <summary>The rooms as the project files declare them.</summary>
internal static class Rooms
{
    /// <summary>The table of ARCHITECTURE.md: who may reference whom. Both ways: nothing more, nothing less.</summary>
    public static readonly IReadOnlyDictionary<string, string[]> Table = new Dictionary<string, string[]>
    {
        ["Evidence"] = [],
        ["Numerics"] = [],
        ["Building"] = ["Evidence"],
        ["Geometry"] = ["Evidence", "Numerics", "Building"],
        ["Analysis"] = ["Evidence", "Numerics", "Building", "Geometry"],
        ["Rules"] = ["Evidence", "Building", "Geometry", "Analysis"],
        ["Study"] = ["Evidence", "Numerics", "Building", "Geometry", "Analysis", "Rules"],
        ["Papers"] = ["Evidence", "Numerics", "Building", "Geometry", "Analysis", "Rules", "Study"],
        ["Rota"] = ["Evidence", "Building", "Analysis"],
        ["Files"] = ["Evidence", "Building"],
        ["Record"] = ["Evidence", "Building"],
    };

    /// <summary>Shells: they may reference anything, and nothing may reference them but another shell.</summary>
    public static readonly string[] Shells = ["Cli", "Web"];

    /// <summary>Rooms that know no clock, disk, console, network or unseeded random numbers.</summary>
    public static readonly string[] Pure = ["Evidence", "Numerics", "Building", "Geometry", "Analysis", "Rules", "Study", "Papers", "Rota"];

    public static string Source { get; } = Path.Combine(Counts.Root, "src");

    public static IEnumerable<string> Declared() =>
        Directory.GetDirectories(Source).Select(folder => Path.GetFileName(folder)["Clomwright.".Length..]).Order(StringComparer.Ordinal);

    public static XDocument Project(string room) =>
        XDocument.Load(Path.Combine(Source, $"Clomwright.{room}", $"Clomwright.{room}.csproj"));

    public static IEnumerable<string> References(string room) =>
        Project(room).Descendants("ProjectReference")
            .Select(reference => Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value)["Clomwright.".Length..]);

    public static IEnumerable<string> CodeFiles(string room) =>
        Directory.EnumerateFiles(Path.Combine(Source, $"Clomwright.{room}"), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}node_modules{Path.DirectorySeparatorChar}", StringComparison.Ordinal));
}
