using System.Text.RegularExpressions;

namespace Clomwright.Evidence;

/// <summary>Reads and writes slopes and tapers: <c>4 %</c>, <c>1/2 in per ft</c>, <c>20 mm per m</c>, <c>4 in 12</c>, <c>1:20</c>, <c>10 deg</c>.</summary>
public static partial class SlopeText
{
    /// <summary>Reads a slope.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">Rise over run; zero when there is a problem.</param>
    /// <param name="problem">What is wrong and what would be right; null when it was read.</param>
    public static bool TryParse(string text, out Slope value, out Message? problem)
    {
        var ratio = WrittenNumber.Typed(text) is { Length: <= WrittenNumber.LongestText } typed ? Read(typed) : null;
        var good = ratio is { } r && double.IsFinite(r);
        value = new Slope(good ? ratio!.Value : 0);
        problem = good ? null
            : text.Contains(',', StringComparison.Ordinal) ? Message.Of("evidence.number-comma", ("text", WrittenNumber.Shown(text)))
            : Message.Of("evidence.slope-unreadable", ("text", WrittenNumber.Shown(text)));
        return good;
    }

    /// <summary>The shortest text that reads back as the same double: per cent, inches per foot in sixteenths, or a rise in 1.</summary>
    public static string Written(Slope value)
    {
        if (!double.IsFinite(value.RiseOverRun))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "Only a finite slope can be written.");
        }

        var sixteenths = Math.Round(value.RiseOverRun * 12 * 16);
        string[] candidates =
        [
            $"{QuantityText.RoundTrip(Math.Round(value.RiseOverRun * 100, 9))} %",
            $"{QuantityText.RoundTrip(value.RiseOverRun * 100)} %",
            Math.Abs(sixteenths) < 24 * 16 ? $"{LengthText.Written(new Length((long)sixteenths * (Length.PerInch / 16)))} per ft" : "",
            $"{QuantityText.RoundTrip(value.RiseOverRun)} in 1",
        ];
        return candidates.Where(text => TryParse(text, out var back, out _) && back == value).MinBy(text => text.Length)!;
    }

    private static double? Read(string typed)
    {
        var negative = typed.StartsWith('-');
        var body = negative ? typed[1..].TrimStart() : typed;
        var ratio = PerLength(body) ?? Ratio(body) ?? Single(body);
        return negative ? -ratio : ratio;
    }

    private static double? PerLength(string body)
    {
        var match = Per().Match(body);
        return match.Success
            && LengthText.TryParse(match.Groups["rise"].Value, out var rise, out _)
            && LengthText.TryParse(Counted(match.Groups["run"].Value), out var run, out _)
            ? rise.Over(run).Si
            : null;
    }

    private static string Counted(string run) => run.Length > 0 && char.IsAsciiDigit(run[0]) ? run : "1 " + run;

    private static double? Ratio(string body)
    {
        var match = RiseInRun().Match(body);
        return match.Success && Number(match.Groups["rise"].Value) is { } rise && Number(match.Groups["run"].Value) is { } run ? rise / run : null;
    }

    private static double? Number(string text) => QuantityText.TryParse(text, Dimension.Number, out var value, out _) ? value.Si : null;

    private static double? Single(string body) =>
        QuantityText.TryParse(body, Dimension.Fraction, out var share, out _) ? share.Si
        : QuantityText.TryParse(body, out Angle angle, out _) && Math.Abs(angle.Degrees) < 90 ? Math.Tan(angle.Radians)
        : null;

    [GeneratedRegex(@"^(?<rise>[^-].*?)\s*(?:\bper\b|/(?=[a-z]))\s*(?<run>[^-].*)$", RegexOptions.CultureInvariant)]
    private static partial Regex Per();

    [GeneratedRegex(@"^(?<rise>[\d.][^:]*?)\s*(?:\bin\b|:)\s*(?<run>[\d.].*)$|^(?<rise>\d+)/(?<run>\d+)$", RegexOptions.CultureInvariant)]
    private static partial Regex RiseInRun();
}
