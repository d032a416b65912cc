using System.Globalization;

namespace Clomwright.Evidence;

public static partial class LengthText
{
    private static readonly Length QuarterInch = new(Length.PerInch / 4);

    private static readonly Length FiveMillimetres = Length.FromMillimetres(5);

    /// <summary>A length as a tape reads it: <c>7 ft 6 1/4 in</c> to the nearest 1/4 in, or <c>2.29 m</c> to the nearest 5 mm.</summary>
    /// <param name="value">The length.</param>
    /// <param name="system">Feet and inches, or metres and (under 1 m) millimetres.</param>
    /// <param name="step">Another step to round to; in feet and inches a whole number of 1/64 in.</param>
    public static string Tape(Length value, UnitSystem system, Length? step = null)
    {
        if (system == UnitSystem.Metric)
        {
            return Metric(value.RoundedTo(step ?? FiveMillimetres));
        }

        var inchStep = step ?? QuarterInch;
        ArgumentOutOfRangeException.ThrowIfNotEqual(inchStep.Nanometres % SixtyFourth.Nanometres, 0, nameof(step));
        return Imperial(value.RoundedTo(inchStep));
    }

    /// <summary>A computed length in metres as a tape reads it; a question mark where it is no number that a length can hold.</summary>
    /// <param name="metres">The length in metres.</param>
    /// <param name="system">Feet and inches, or metres and (under 1 m) millimetres.</param>
    /// <param name="step">Another step to round to; in feet and inches a whole number of 1/64 in.</param>
    public static string Tape(double metres, UnitSystem system, Length? step = null) =>
        Math.Abs(metres) < LongestOnTape ? Tape(Length.Nearest(metres), system, step) : "?";

    /// <summary>A length in both systems: <c>7 ft 6 in (2.285 m)</c> or the other way round.</summary>
    public static string Both(Length value, UnitSystem first) => $"{Tape(value, first)} ({Tape(value, Other(first))})";

    /// <summary>A computed length in metres in both systems.</summary>
    public static string Both(double metres, UnitSystem first) => $"{Tape(metres, first)} ({Tape(metres, Other(first))})";

    private const double LongestOnTape = 1e9;

    private static UnitSystem Other(UnitSystem system) => system == UnitSystem.Imperial ? UnitSystem.Metric : UnitSystem.Imperial;

    /// <summary>Feet and inches of a whole number of 1/64 in; inches alone under two feet, as builders say them.</summary>
    private static string Imperial(Length value)
    {
        var sign = value.Nanometres < 0 ? "-" : "";
        var parts = Int128.Abs(value.Nanometres / SixtyFourth.Nanometres);
        var feet = parts >= 24 * 64 ? parts / (12 * 64) : 0;
        parts -= feet * 12 * 64;
        var inches = InchesText((int)parts);
        return feet == 0 ? $"{sign}{inches} in"
            : parts == 0 ? $"{sign}{Plain(feet)} ft"
            : $"{sign}{Plain(feet)} ft {inches} in";
    }

    private static string InchesText(int sixtyFourths)
    {
        var (whole, over, under) = (sixtyFourths / 64, sixtyFourths % 64, 64);
        while (over != 0 && over % 2 == 0)
        {
            (over, under) = (over / 2, under / 2);
        }

        return over == 0 ? $"{whole}" : whole == 0 ? $"{over}/{under}" : $"{whole} {over}/{under}";
    }

    private static string Metric(Length value)
    {
        var nanometres = (decimal)value.Nanometres;
        return Math.Abs(nanometres) < 1e9m
            ? (nanometres / 1e6m).ToString("0.######", CultureInfo.InvariantCulture) + " mm"
            : (nanometres / 1e9m).ToString("0.#########", CultureInfo.InvariantCulture) + " m";
    }

    private static string Plain(Int128 value) => value.ToString(CultureInfo.InvariantCulture);
}
