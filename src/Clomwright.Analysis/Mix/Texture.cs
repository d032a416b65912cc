using Clomwright.Evidence;

namespace Clomwright.Analysis.Mix;

/// <summary>The twelve texture classes of the USDA triangle. Shares of the mass finer than 2 mm: sand 2 to 0.05 mm, silt to 0.002 mm, clay below.</summary>
public static class Texture
{
    private static readonly (string Key, Func<double, double, double, bool> Is)[] Rules =
    [
        ("sand", (_, silt, clay) => silt + 1.5 * clay < 15),
        ("loamy-sand", (_, silt, clay) => silt + 1.5 * clay >= 15 && silt + 2 * clay < 30),
        ("sandy-loam", (sand, silt, clay) => (clay is >= 7 and < 20 && sand > 52 && silt + 2 * clay >= 30) || (clay < 7 && silt < 50 && silt + 2 * clay >= 30)),
        ("loam", (sand, silt, clay) => clay is >= 7 and < 27 && silt is >= 28 and < 50 && sand <= 52),
        ("silt-loam", (_, silt, clay) => (silt >= 50 && clay is >= 12 and < 27) || (silt is >= 50 and < 80 && clay < 12)),
        ("silt", (_, silt, clay) => silt >= 80 && clay < 12),
        ("sandy-clay-loam", (sand, silt, clay) => clay is >= 20 and < 35 && silt < 28 && sand > 45),
        ("clay-loam", (sand, _, clay) => clay is >= 27 and < 40 && sand is > 20 and <= 45),
        ("silty-clay-loam", (sand, _, clay) => clay is >= 27 and < 40 && sand <= 20),
        ("sandy-clay", (sand, _, clay) => clay >= 35 && sand > 45),
        ("silty-clay", (_, silt, clay) => clay >= 40 && silt >= 40),
        ("clay", (sand, silt, clay) => clay >= 40 && sand <= 45 && silt < 40),
    ];

    /// <summary>Keys of the classes, sands first.</summary>
    public static Sequence<string> Classes { get; } = Rules.Select(r => r.Key).ToSequence();

    /// <summary>Every class whose rule holds: one, for shares in per cent that make a hundred.</summary>
    public static Sequence<string> Holding(double sand, double silt, double clay) => Rules.Where(r => r.Is(sand, silt, clay)).Select(r => r.Key).ToSequence();

    /// <summary>The class of shares of one that make one; null for shares that do not.</summary>
    public static string? Of(double sand, double silt, double clay) =>
        Math.Abs(sand + silt + clay - 1) < 1e-6 && Holding(100 * sand, 100 * silt, 100 * clay) is [var only, ..] ? only : null;

    /// <summary>Its name in words.</summary>
    public static Message Named(string key) => new($"analysis.texture.{key}");
}
