using Clomwright.Analysis.Loads;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Collapse;

/// <summary>The push that a wall of rigid blocks bears before it falls, as a share of its weight and the roof's.</summary>
public sealed record CollapseResult
{
    /// <summary>The weakest direction, with the bond beam.</summary>
    public required WallCollapse Weakest { get; init; }

    /// <summary>The same direction without the bond beam.</summary>
    public required Known<WallCollapse> WithoutBeam { get; init; }

    /// <summary>Every direction looked at.</summary>
    public required Sequence<WallCollapse> Directions { get; init; }

    /// <summary>The weakest direction with larger and smaller blocks, largest first: it falls as blocks get smaller.</summary>
    public required Sequence<BlockTrend> Trend { get; init; }

    /// <summary>The same direction with a wall that bends and cracks instead of blocks.</summary>
    public required CrackedWall Cracked { get; init; }

    /// <summary>Every block as it moves when the wall falls in the weakest direction.</summary>
    public required Sequence<MovingBlock> Mechanism { get; init; }

    /// <summary>The ways to fall that are worked by hand, with the same weights and loads.</summary>
    public required Sequence<HandMechanism> ByHand { get; init; }

    /// <summary>How factor and mechanism of the weakest direction belong together, and what an earthquake asks for.</summary>
    public required Calculation How { get; init; }

    /// <summary>What an earthquake asks for, as a share of the weight (its <see cref="SeismicLoad.Coefficient"/>); or why that is not known.</summary>
    public required Known<SeismicLoad> Earthquake { get; init; }

    /// <summary>The least factor of all sizes of blocks tried.</summary>
    public double Least => Trend.Select(t => t.Factor).Append(Weakest.Factor).Min();

    /// <summary>What nobody gave; what the earthquake assumed stands with it.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>What shakes, N: wall, bond beam and wet roof.</summary>
    public required double Weight { get; init; }

    /// <summary>The stage of the roof that presses: its key.</summary>
    public required string Stage { get; init; }

    /// <summary>Most that one pole pushes square out of the wall all the time, N.</summary>
    public required double ThrustMost { get; init; }

    /// <summary>How.</summary>
    public Sequence<Calculation> Calculations => [How, .. ByHand.Select(m => m.How)];
}

/// <summary>The limit in one direction.</summary>
/// <param name="Bearing">Towards which it is pushed, radians clockwise from north.</param>
/// <param name="Factor">Push over weight that joint forces can still balance.</param>
/// <param name="Above">Push over weight at which the mechanism found would move: not below <paramref name="Factor"/>.</param>
public sealed record WallCollapse(double Bearing, double Factor, double Above);

/// <summary>The limit with blocks of one size.</summary>
/// <param name="Size">Of the largest block, m.</param>
/// <param name="Blocks">How many.</param>
/// <param name="Factor">Push over weight.</param>
public sealed record BlockTrend(double Size, int Blocks, double Factor);

/// <summary>A block in the mechanism.</summary>
/// <param name="Block">The block.</param>
/// <param name="Outward">Speed of its middle out of the wall, as a share of the fastest block's speed.</param>
/// <param name="Along">Along the wall, clockwise.</param>
/// <param name="Up">Upward.</param>
/// <param name="Corners">Its eight corners, the bottom ones first: at its beginning inside and outside, at its end inside and outside.</param>
public sealed record MovingBlock(WallBlock Block, double Outward, double Along, double Up, Sequence<MovingCorner> Corners);

/// <summary>A corner of a block in the mechanism; speeds as a share of the fastest block's.</summary>
/// <param name="Station">Where it is along the wall, m.</param>
/// <param name="Offset">From the inside curve at the base, m outward.</param>
/// <param name="Height">m.</param>
/// <param name="East">Its speed eastward.</param>
/// <param name="North">Northward.</param>
/// <param name="Up">Upward.</param>
public readonly record struct MovingCorner(double Station, double Offset, double Height, double East, double North, double Up);

