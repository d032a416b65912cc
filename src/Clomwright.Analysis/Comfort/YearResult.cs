using Clomwright.Evidence;

namespace Clomwright.Analysis.Comfort;

/// <summary>The house through a drawn year. Numbers of a model, never a promise.</summary>
public sealed record YearResult
{
    /// <summary>Kept warm.</summary>
    public required RunResult Heated { get; init; }

    /// <summary>Nobody heats; people live in it and open windows when it is hot.</summary>
    public required RunResult Free { get; init; }

    /// <summary>Heat of a year by the simple hour of ISO 13790, J: a second opinion.</summary>
    public required double Simple { get; init; }

    /// <summary>How warm it is kept, C.</summary>
    public required double Warm { get; init; }

    /// <summary>Firewood of a winter.</summary>
    public required WoodNeed Wood { get; init; }

    /// <summary>Sun of a year through each opening.</summary>
    public required Sequence<GlassGain> Glass { get; init; }
}

/// <summary>Firewood.</summary>
/// <param name="Mass">As it lies, kg.</param>
/// <param name="Stacked">Stacked, m3.</param>
/// <param name="Species">Its key.</param>
/// <param name="HeatEach">Of a kilogram as it lies, J/kg.</param>
/// <param name="Stove">Share of it that the room gets.</param>
public sealed record WoodNeed(double Mass, double Stacked, string Species, double HeatEach, double Stove);

/// <summary>Sun through an opening.</summary>
/// <param name="Opening">Its name.</param>
/// <param name="Area">Of glass, m2.</param>
/// <param name="Facing">Azimuth, rad.</param>
/// <param name="Gain">Of a year, J.</param>
public sealed record GlassGain(string Opening, double Area, double Facing, double Gain);

/// <summary>A run through the year.</summary>
public sealed record RunResult
{
    /// <summary>Colder than this is counted as cold, C.</summary>
    public const double Cold = 10;

    /// <summary>Hotter than this is counted as hot, C.</summary>
    public const double Hot = 26;

    /// <summary>January first.</summary>
    public required Sequence<MonthComfort> Months { get; init; }

    /// <summary>In turn from the first of July.</summary>
    public required Sequence<DayFelt> Days { get; init; }

    /// <summary>Heating of a year, J.</summary>
    public required double Heat { get; init; }

    /// <summary>The most that heating gives in an hour, W.</summary>
    public required double Peak { get; init; }

    /// <summary>Hours of a year that feel colder than 10 C.</summary>
    public required double ColdHours { get; init; }

    /// <summary>Hours of a year that feel hotter than 26 C.</summary>
    public required double HotHours { get; init; }

    /// <summary>What of a year leaves the room by each part while it is colder outside, J.</summary>
    public required Sequence<PartLoss> LostBy { get; init; }

    /// <summary>How far the heat of the worst hour does not come out, as a share of what moved.</summary>
    public required double WorstBalance { get; init; }

    /// <summary>How many were followed.</summary>
    public required int Hours { get; init; }

    /// <summary>The hottest day.</summary>
    public DayFelt Hottest => Days.MaxBy(d => d.High)!;

    /// <summary>The coldest day.</summary>
    public DayFelt Coldest => Days.MinBy(d => d.Low)!;
}

/// <summary>A month of a run; temperatures are means, C.</summary>
/// <param name="Number">1 to 12.</param>
/// <param name="Felt">Half air, half surfaces.</param>
/// <param name="Air">In the room.</param>
/// <param name="Outside">Of the air outside.</param>
/// <param name="Vapour">Outside, Pa.</param>
/// <param name="Heat">Heating, J.</param>
/// <param name="Sun">Through glass, J.</param>
/// <param name="Open">Hours with windows open.</param>
public sealed record MonthComfort(int Number, double Felt, double Air, double Outside, double Vapour, double Heat, double Sun, double Open);

/// <summary>A day as it feels, C.</summary>
public sealed record DayFelt(DateOnly Date, double Low, double Mean, double High);

/// <summary>What leaves by a kind of part, J.</summary>
public sealed record PartLoss(PartKind Part, double Lost);
