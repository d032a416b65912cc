using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>What stands or lies on a plot besides the house.</summary>
public enum PlotFeatureKind
{
    /// <summary>Another building.</summary>
    Building,

    /// <summary>A well or a spring.</summary>
    Well,

    /// <summary>A septic tank or its field.</summary>
    Septic,

    /// <summary>A drive or a road.</summary>
    Drive,

    /// <summary>A tree.</summary>
    Tree,

    /// <summary>Where electricity, water or gas comes in.</summary>
    Service,

    /// <summary>A stream, a pond or a ditch.</summary>
    Water,
}

/// <summary>The plot in distances that a tape gives, all from the centre peg.</summary>
public sealed record Plot
{
    /// <summary>Its boundaries, straight, in any order.</summary>
    public Sequence<PlotBoundary> Boundaries { get; init; }

    /// <summary>What else is there.</summary>
    public Sequence<PlotFeature> Features { get; init; }

    /// <summary>Fall of the ground over the plot; null where nobody has measured it.</summary>
    public Slope? Fall { get; init; }

    /// <summary>The way it falls; null where it is not given.</summary>
    public Angle? Downhill { get; init; }
}

/// <summary>A straight boundary.</summary>
/// <param name="Name">The author's name for it: the road, the neighbour.</param>
/// <param name="Bearing">Of the shortest line to it from the centre peg, clockwise from north.</param>
/// <param name="Distance">Length of that line.</param>
public sealed record PlotBoundary(string Name, Angle Bearing, Length Distance);

/// <summary>A thing on the plot.</summary>
/// <param name="Name">The author's name for it.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Bearing">Of its middle from the centre peg, clockwise from north.</param>
/// <param name="Distance">Of its middle from the centre peg.</param>
public sealed record PlotFeature(string Name, PlotFeatureKind Kind, Angle Bearing, Length Distance);
