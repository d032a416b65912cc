using Clomwright.Evidence;

namespace Clomwright.Analysis.Loads;

/// <summary>Edition of the loading code that a site's snow and wind were read from.</summary>
public enum LoadEdition
{
    /// <summary>ASCE 7-16.</summary>
    Asce716,

    /// <summary>ASCE 7-22: ground snow is a strength-level load.</summary>
    Asce722,

    /// <summary>EN 1990 with EN 1991, recommended values.</summary>
    En1990,
}

/// <summary>Ground snow load of an edition, Pa.</summary>
public readonly record struct GroundSnow(LoadEdition Edition, double Pascals);

/// <summary>Basic wind speed of an edition, m/s.</summary>
public readonly record struct BasicWind(LoadEdition Edition, double MetresPerSecond);

/// <summary>Names of editions as a house file writes them.</summary>
public static class LoadEditions
{
    /// <summary>The keys of all editions.</summary>
    public static Sequence<string> Keys => [.. Enum.GetValues<LoadEdition>().Select(Key)];

    /// <summary>The edition of a key; null when it is no known one.</summary>
    public static LoadEdition? Parse(string? key) => key switch
    {
        "asce7-16" => LoadEdition.Asce716,
        "asce7-22" => LoadEdition.Asce722,
        "en1990" => LoadEdition.En1990,
        _ => null,
    };

    /// <summary>The key of an edition.</summary>
    public static string Key(LoadEdition edition) => edition switch
    {
        LoadEdition.Asce716 => "asce7-16",
        LoadEdition.Asce722 => "asce7-22",
        _ => "en1990",
    };

    /// <summary>Null when snow and wind are of one edition; else why they must not be combined.</summary>
    /// <remarks>Snow and wind maps of different editions stand for different chances of being exceeded, and their load factors differ with them.</remarks>
    public static Message? Refusal(GroundSnow? snow, BasicWind? wind) =>
        snow is { } s && wind is { } w && s.Edition != w.Edition
            ? Message.Of("analysis.loads.mixed-editions", ("snow", Key(s.Edition)), ("wind", Key(w.Edition)))
            : null;
}
