namespace Clomwright.Web.Scenes;

/// <summary>How far the drying of a wall is worked out, and then the picture; or one sentence why there is none.</summary>
/// <param name="Share">How far, 0 to 1.</param>
/// <param name="Scene">The picture; null until it is there.</param>
/// <param name="Trouble">Why there is none.</param>
public sealed record WaterAnswer(double Share, WaterScene? Scene, string? Trouble);

/// <summary>The water of a wall over the days: the page only looks up a day. Every word and every written number already text.</summary>
public sealed record WaterScene
{
    /// <summary>Why nothing is known; null when it is.</summary>
    public required string? NotChecked { get; init; }

    /// <summary>inside or outside: where the wall is seen from.</summary>
    public required string Face { get; init; }

    /// <summary>What each day is called, from 0, on which the first lift is laid; pictures are of its evening.</summary>
    public required IReadOnlyList<string> Days { get; init; }

    /// <summary>What stands and what comes next, day by day.</summary>
    public required IReadOnlyList<string> Says { get; init; }

    /// <summary>Lifts, bottom up.</summary>
    public required IReadOnlyList<WaterLift> Lifts { get; init; }

    /// <summary>Stretches that face one way, clockwise from the zero mark.</summary>
    public required IReadOnlyList<WaterBay> Bays { get; init; }

    /// <summary>Water contents as they are written, by their whole hundredths.</summary>
    public required IReadOnlyList<WaterValue> Values { get; init; }

    /// <summary>What each hatch means, the driest first.</summary>
    public required IReadOnlyList<string> Bands { get; init; }

    /// <summary>How high today, when roof and plaster, as bands.</summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>What a builder is warned of.</summary>
    public required IReadOnlyList<string> Warnings { get; init; }
}

/// <summary>A lift in time.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Bottom">m from the finished floor.</param>
/// <param name="Top">m.</param>
/// <param name="Shown">The first day on which it stands; null when it is not laid in the time looked at.</param>
/// <param name="Laid">When it is laid, in words.</param>
/// <param name="Next">When it may take the next, from the quickest to the slowest case.</param>
/// <param name="Keys">For how long its top keys.</param>
/// <param name="Settles">How far it comes down.</param>
/// <param name="Cells">Bay by bay.</param>
public sealed record WaterLift(string Number, double Bottom, double Top, int? Shown, string Laid, string Next, string Keys, string Settles, IReadOnlyList<WaterCell> Cells);

/// <summary>A lift in one bay.</summary>
/// <param name="From">The day its water begins with.</param>
/// <param name="Water">Its water day by day, each a character: whole hundredths above '0'. The last stays.</param>
/// <param name="Firm">The first day on which it may take the next lift; null when not in the time looked at.</param>
/// <param name="Dry">The first day on which it is dry enough for plaster; null when not in the days shown.</param>
/// <param name="Unkeyed">The first day on which its top no longer keys, where the next lift is not laid by then.</param>
public sealed record WaterCell(int From, string Water, int? Firm, int? Dry, int? Unkeyed);

/// <summary>A stretch that faces one way.</summary>
/// <param name="Name">In words, with the way it faces.</param>
/// <param name="Faces">The way its outside faces, in a letter or two.</param>
/// <param name="Boxes">Left and right on the view, m; two where it stands across the zero mark.</param>
public sealed record WaterBay(string Name, string Faces, IReadOnlyList<double[]> Boxes);

/// <summary>A water content as it is written.</summary>
/// <param name="Text">As a share of the dry earth.</param>
/// <param name="Band">Which hatch, from 0 the driest.</param>
public sealed record WaterValue(string Text, int Band);
