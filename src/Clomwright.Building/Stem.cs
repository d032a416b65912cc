using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The rubble trench under the stem wall.</summary>
/// <param name="Width">Across.</param>
/// <param name="Depth">Below outside grade, at the far side from where the drain leaves.</param>
/// <param name="Outlet">Height of the drain outlet against the finished floor; null if there is none yet.</param>
public sealed record Trench(Length Width, Length Depth, Length? Outlet = null)
{
    /// <summary>Fall at which the bottom is laid from the far side both ways round, and the pipe on to its outlet; null spreads what height there is evenly.</summary>
    public Slope? Fall { get; init; }

    /// <summary>Bearing from the centre peg of where the drain leaves the trench; null puts it at the zero mark.</summary>
    public Angle? OutletBearing { get; init; }

    /// <summary>Length of pipe from the trench to the outlet; null where nobody has measured it.</summary>
    public Length? OutletRun { get; init; }

    /// <summary>A beam on the trench stone under the stem, or null.</summary>
    public GradeBeam? GradeBeam { get; init; }
}

/// <summary>A beam of concrete all round on the stone of the trench, its top at outside grade.</summary>
/// <param name="Width">Across, under the middle of the stem.</param>
/// <param name="Depth">From its top to its underside.</param>
public sealed record GradeBeam(Length Width, Length Depth);

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

    /// <summary>Pressure that this stem is allowed, by whoever answers for it; null takes that of its material where there is one.</summary>
    public Stress? AllowedPressure { get; init; }

    /// <summary>What stands up through the damp break into the cob and keeps it from sliding; null where nothing does.</summary>
    public StemKeys? Keys { get; init; }
}

/// <summary>Stones or dowels all round that stand up out of the stem into the first lift.</summary>
/// <param name="Spacing">Along the wall.</param>
/// <param name="Height">Above the stem's top.</param>
/// <param name="Width">Each, along the wall.</param>
public sealed record StemKeys(Length Spacing, Length Height, Length Width);
