namespace Clomwright.Web.Scenes;

/// <summary>Warmth, damp and sun as the page draws them: every word and every written number already text.</summary>
public sealed record ComfortScene
{
    /// <summary>What the page is about, in a few numbers.</summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>Why there is no year; null when there is.</summary>
    public required string? NotChecked { get; init; }

    /// <summary>What the house loses by part.</summary>
    public required IReadOnlyList<ComfortBar> Bars { get; init; }

    /// <summary>The inside of the wall in each state; empty where that is not known.</summary>
    public required IReadOnlyList<ColdWall> Walls { get; init; }

    /// <summary>Length of the ring and height of the wall, m.</summary>
    public required double[] WallSize { get; init; }

    /// <summary>Openings on the unrolled inside, m; an opening across the zero mark stands twice.</summary>
    public required IReadOnlyList<double[][]> Holes { get; init; }

    /// <summary>Where north, east, south and west stand on the strip.</summary>
    public required IReadOnlyList<ColdMark> Winds { get; init; }

    /// <summary>The plan that the sun falls on.</summary>
    public required PlanKey Plan { get; init; }

    /// <summary>Seasons to choose from; empty where the sun is not known.</summary>
    public required IReadOnlyList<SunSeason> Seasons { get; init; }

    /// <summary>Why the sun is not known; null when it is.</summary>
    public required string? NoSun { get; init; }

    /// <summary>Parts: name, resistance, transmittance, lag, share of a swing.</summary>
    public required IReadOnlyList<IReadOnlyList<string>> Parts { get; init; }
}

/// <summary>A bar.</summary>
/// <param name="Part">Its key.</param>
/// <param name="Name">In words.</param>
/// <param name="Text">How much.</param>
/// <param name="Share">Of the longest, -1 to 1.</param>
public sealed record ComfortBar(string Part, string Name, string Text, double Share);

/// <summary>The wall in one state.</summary>
/// <param name="Key">coldest, damp, unheated.</param>
/// <param name="Name">In words.</param>
/// <param name="Says">What the picture means, in a sentence.</param>
/// <param name="Columns">Cells along.</param>
/// <param name="Rows">Cells up.</param>
/// <param name="Levels">Column by column from the floor: 0 dry, 1 mould has what it asks, 2 water runs.</param>
/// <param name="Marks">Temperatures written on it.</param>
/// <param name="Table">Wind, foot and head height.</param>
public sealed record ColdWall(string Key, string Name, string Says, int Columns, int Rows, string Levels, IReadOnlyList<ColdMark> Marks, IReadOnlyList<IReadOnlyList<string>> Table);

/// <summary>Words at a place of the strip, m.</summary>
public sealed record ColdMark(double X, double Y, string Text);

/// <summary>Hours of one season.</summary>
/// <param name="Name">In words.</param>
/// <param name="Hours">From morning to evening.</param>
public sealed record SunSeason(string Name, IReadOnlyList<SunHour> Hours);

/// <summary>The sun of one hour in the room.</summary>
/// <param name="Name">In words.</param>
/// <param name="Says">What falls where.</param>
/// <param name="Patches">Outlines on the floor, m east and north.</param>
/// <param name="OnWall">Outlines on the unrolled wall, m.</param>
public sealed record SunHour(string Name, string Says, IReadOnlyList<double[][]> Patches, IReadOnlyList<double[][]> OnWall);

/// <summary>What each fix would bring.</summary>
/// <param name="NotChecked">Why nothing is known; null when it is.</param>
/// <param name="Lines">Fix, loss, heat, firewood, saved, wall with mould.</param>
public sealed record ComfortFixes(string? NotChecked, IReadOnlyList<IReadOnlyList<string>> Lines);
