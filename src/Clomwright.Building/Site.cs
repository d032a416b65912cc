using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The place. Anything not given stays null and is "not checked" where it is needed.</summary>
public sealed record Site
{
    /// <summary>Degrees north.</summary>
    public double? Latitude { get; init; }

    /// <summary>Degrees east.</summary>
    public double? Longitude { get; init; }

    /// <summary>Above sea level.</summary>
    public Length? Elevation { get; init; }

    /// <summary>Key of a climate in the data files.</summary>
    public string? Climate { get; init; }

    /// <summary>Outside grade against the finished floor, negative below it; the highest grade around the wall.</summary>
    public Length? Grade { get; init; }

    /// <summary>Edition of the loading code: <c>asce7-16</c>, <c>asce7-22</c>, <c>en1990</c>.</summary>
    public string? Loads { get; init; }

    /// <summary>Ground snow load of that edition.</summary>
    public Stress? GroundSnow { get; init; }

    /// <summary>Basic wind speed of that edition.</summary>
    public Speed? WindSpeed { get; init; }

    /// <summary>Wind exposure category or terrain category.</summary>
    public string? Exposure { get; init; }

    /// <summary>Design spectral acceleration at short periods, as a share of g.</summary>
    public double? SeismicSds { get; init; }

    /// <summary>Design spectral acceleration at one second, as a share of g.</summary>
    public double? SeismicSd1 { get; init; }

    /// <summary>Mapped spectral acceleration at one second, as a share of g.</summary>
    public double? SeismicS1 { get; init; }

    /// <summary>Site class, <c>D</c>.</summary>
    public string? SiteClass { get; init; }

    /// <summary>Risk category, <c>II</c>.</summary>
    public string? RiskCategory { get; init; }

    /// <summary>Depth that frost reaches.</summary>
    public Length? FrostDepth { get; init; }

    /// <summary>Allowable bearing pressure of the ground.</summary>
    public Stress? SoilBearing { get; init; }
}

/// <summary>The floor build-up, from the bottom up.</summary>
public sealed record Floor
{
    /// <summary>Layers below the finished floor.</summary>
    public Sequence<Layer> Layers { get; init; }
}

/// <summary>One layer of a floor or roof build-up.</summary>
/// <param name="Name">The author's name for it.</param>
/// <param name="Depth">Thickness square to the layer.</param>
/// <param name="Material">Key of a material in the data files; null where none is named.</param>
public sealed record Layer(string Name, Length Depth, string? Material = null);

/// <summary>The rubble trench under the stem wall.</summary>
/// <param name="Width">Across.</param>
/// <param name="Depth">Below outside grade.</param>
/// <param name="Outlet">Height of the drain outlet against the finished floor; null if there is none yet.</param>
public sealed record Trench(Length Width, Length Depth, Length? Outlet = null);

/// <summary>The stone wall that lifts the cob off the ground.</summary>
/// <param name="Width">Across, centred under the wall base unless <see cref="InsideOffset"/> says otherwise.</param>
/// <param name="Top">Height of its top, where the cob begins.</param>
/// <param name="Material">Key of a material: <c>mortared-stone</c>, <c>dry-stone</c>, <c>broken-concrete</c>, <c>block</c>, <c>earth-bags</c>.</param>
public sealed record Stem(Length Width, Length Top, string Material = "mortared-stone")
{
    /// <summary>How far the stem's inside face stands inside the wall's inside face at the base; null centres the stem under the wall.</summary>
    public Length? InsideOffset { get; init; }

    /// <summary>A capillary break between stem and cob: its material key, or null.</summary>
    public string? DampBreak { get; init; }
}
