namespace Clomwright.Web.Scenes;

/// <summary>Who works, as blanks to write in.</summary>
/// <param name="Blanks">The crew; empty where the house names none.</param>
/// <param name="Missing">Why there are none; null where there are.</param>
public sealed record DaysScene(IReadOnlyList<BlankCard> Blanks, string? Missing);

/// <summary>How far the seasons are drawn, and then the picture; or one sentence why there is none.</summary>
/// <param name="Share">How far, 0 to 1.</param>
/// <param name="Scene">The picture; null until it is there.</param>
/// <param name="Trouble">Why there is none.</param>
public sealed record DaysAnswer(double Share, ForecastScene? Scene, string? Trouble);

/// <summary>When a job would be done. Days count from the first of work, 0; every word and every written day already text.</summary>
public sealed record ForecastScene
{
    /// <summary>Why nothing is known; null when it is.</summary>
    public required string? NotChecked { get; init; }

    /// <summary>The bands that matter most, in words.</summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>What the bands are drawn from, what weather takes, what is not known.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>Marks and lifts, in order.</summary>
    public required IReadOnlyList<BandRow> Rows { get; init; }

    /// <summary>The last day of the chart.</summary>
    public required int Last { get; init; }

    /// <summary>Mondays that are written.</summary>
    public required IReadOnlyList<DayMark> Weeks { get; init; }

    /// <summary>Lifts, bottom up.</summary>
    public required IReadOnlyList<RisingLift> Lifts { get; init; }

    /// <summary>What each day is called, from 0.</summary>
    public required IReadOnlyList<string> Days { get; init; }

    /// <summary>What stands by the middle of the seasons on each.</summary>
    public required IReadOnlyList<string> Says { get; init; }

    /// <summary>Who does what in the week; null where the days are not planned.</summary>
    public required WeekView? Week { get; init; }
}

/// <summary>A band: one season in ten, half, nine in ten.</summary>
/// <param name="Key">Of the mark or lift.</param>
/// <param name="Name">In words.</param>
/// <param name="Early">The first, in days; null where not so many come to it.</param>
/// <param name="Half">The second.</param>
/// <param name="Late">The third.</param>
/// <param name="EarlyText">The first as a day.</param>
/// <param name="HalfText">The second.</param>
/// <param name="LateText">The third.</param>
/// <param name="IsLift">Whether it is a lift.</param>
public sealed record BandRow(string Key, string Name, int? Early, int? Half, int? Late, string EarlyText, string HalfText, string LateText, bool IsLift);

/// <summary>A day that is written under a chart.</summary>
public sealed record DayMark(int Day, string Label);

/// <summary>A lift of the rising wall.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Bottom">m from the finished floor.</param>
/// <param name="Top">m.</param>
/// <param name="TopText">As a tape reads it.</param>
/// <param name="From">The middle day on which it is begun; null where not half of the seasons come to it.</param>
/// <param name="Shown">The middle day on which it is closed.</param>
/// <param name="ByDrying">Share of seasons in which it waited for the wall, 0 to 1.</param>
/// <param name="Limit">people or drying.</param>
/// <param name="LimitText">The same in words.</param>
/// <param name="Waits">The share in words.</param>
/// <param name="Band">Its days in words.</param>
public sealed record RisingLift(string Number, double Bottom, double Top, string TopText, int? From, int? Shown, double ByDrying, string Limit, string LimitText, string Waits, string Band);

/// <summary>Who does what in a week.</summary>
/// <param name="Days">Its days.</param>
/// <param name="Rows">People, or kinds of work where nobody is named.</param>
/// <param name="Note">How it was made.</param>
/// <param name="Clashes">What cannot be manned.</param>
public sealed record WeekView(IReadOnlyList<string> Days, IReadOnlyList<WeekRow> Rows, string Note, IReadOnlyList<string> Clashes);

/// <summary>A row of a week.</summary>
public sealed record WeekRow(string Name, IReadOnlyList<string> Cells);

/// <summary>How far other ways are tried, and then what they bring.</summary>
public sealed record ChoicesAnswer(double Share, ChoicesScene? Scene, string? Trouble);

/// <summary>Other ways and weeks.</summary>
/// <param name="NotChecked">Why nothing is known; null when it is.</param>
/// <param name="Ways">Each: what, wall half by, poles half by, poles nine in ten by.</param>
/// <param name="Weeks">The best and the last safe week, in a sentence each.</param>
/// <param name="Note">Of what they are drawn.</param>
public sealed record ChoicesScene(string? NotChecked, IReadOnlyList<IReadOnlyList<string>> Ways, IReadOnlyList<string> Weeks, string Note);
