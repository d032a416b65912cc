using Clomwright.Building;
using Clomwright.Geometry;

namespace Clomwright.Papers.Sheets;

/// <summary>Sleeves through the wall that are wide enough for a stove pipe. The house file does not say what goes through a sleeve: the caution says so too.</summary>
internal static class HotSleeves
{
    /// <summary>No stove pipe is thinner than 5 in outside, m; common practice, no source.</summary>
    private const double Least = 0.125;

    /// <summary>Whether one of them may take a stove pipe.</summary>
    public static bool Any(IEnumerable<EmbedPlace> embeds) => embeds.Any(e => e is { Lift: >= 0, Embed: { Kind: EmbedKind.Sleeve, Through: true, Width.Metres: >= Least } });
}
