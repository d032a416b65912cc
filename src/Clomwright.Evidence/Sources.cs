using System.Collections.Frozen;
using System.Text.Json;

namespace Clomwright.Evidence;

/// <summary>The register of sources, <c>data/sources.json</c>: an array of key, title, surety, whether it is of a code and, where there is one, public address.</summary>
/// <remarks>Surety in the file is seen, second-hand, memory, practice, derived or missing; what a user enters is never in the register.</remarks>
public static class Sources
{
    private static readonly FrozenDictionary<string, Source> Register = Load();

    /// <summary>Every source, by key.</summary>
    public static Sequence<Source> All => Register.Values.OrderBy(s => s.Key, StringComparer.Ordinal).ToSequence();

    /// <summary>The source of a key.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The register has no such key; a test reads every key in the code.</exception>
    public static Source Get(string key) => Register.TryGetValue(key, out var source) ? source
        : throw new ArgumentOutOfRangeException(nameof(key), key, "There is no such source in data/sources.json.");

    private static FrozenDictionary<string, Source> Load()
    {
        using var stream = typeof(Sources).Assembly.GetManifestResourceStream("sources.json")!;
        using var document = JsonDocument.Parse(stream);
        return document.RootElement.EnumerateArray().Select(Read).ToFrozenDictionary(s => s.Key, StringComparer.Ordinal);
    }

    private static Source Read(JsonElement entry)
    {
        var key = Text(entry, "key") ?? "";
        var surety = Text(entry, "surety") switch
        {
            "seen" => Surety.Seen,
            "second-hand" => Surety.SecondHand,
            "memory" => Surety.Memory,
            "practice" => Surety.Practice,
            "derived" => Surety.Derived,
            "missing" => Surety.Missing,
            var other => throw new FormatException($"Source {key}: {other} is no surety."),
        };
        return new Source(key, Text(entry, "title") ?? "", surety, Text(entry, "address")) { IsCode = entry.TryGetProperty("code", out var code) && code.GetBoolean() };
    }

    private static string? Text(JsonElement entry, string name) => entry.TryGetProperty(name, out var value) ? value.GetString() : null;
}
