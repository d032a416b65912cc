using System.Globalization;
using System.Numerics;
using System.Text.RegularExpressions;

namespace Clomwright.Evidence;

/// <summary>A number as somebody wrote it, decimal (<c>0.25</c>) or with a fraction (<c>6 1/2</c>), not yet rounded to anything.</summary>
internal readonly partial record struct WrittenNumber(string Decimal, string Over, string Under)
{
    /// <summary>How a number is written; the group names are those read by <see cref="From"/>.</summary>
    internal const string Pattern = WithFraction + @"|(?<decimal>\d+(?:\.\d*)?|\.\d+))";

    /// <summary>The same, or with a power of ten, as programs write computed numbers.</summary>
    internal const string PatternWithPower = WithFraction + @"|(?<decimal>(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?))";

    /// <summary>Longer texts than this are not numbers that people write.</summary>
    internal const int LongestText = 64;

    private const string WithFraction = @"(?:(?:(?<decimal>\d+)(?:\s+|-))?(?<over>\d+)/(?<under>\d+)";

    private const string Fractions = "½1/2¼1/4¾3/4⅛1/8⅜3/8⅝5/8⅞7/8⅓1/3⅔2/3";

    internal static WrittenNumber From(Match match) =>
        new(match.Groups["decimal"].Value, match.Groups["over"].Value, match.Groups["under"].Value);

    /// <summary>Whether it is a number at all: nothing is over zero.</summary>
    internal bool IsNumber => Under.Length == 0 || Under.Any(c => c != '0');

    /// <summary>What to repeat of a text in a message about it.</summary>
    internal static string Shown(string text) => text.Length <= LongestText ? text : text[..LongestText] + "…";

    /// <summary>Plain typewriter marks for the printed ones: primes, quotes, minus signs, spaces and one-character fractions.</summary>
    internal static string Typed(string text)
    {
        for (var i = 0; i < Fractions.Length; i += 4)
        {
            text = text.Replace(Fractions[i..(i + 1)], " " + Fractions[(i + 1)..(i + 4)], StringComparison.Ordinal);
        }

        return text.Trim()
            .Replace('\u00a0', ' ').Replace('\u2009', ' ').Replace('\u202f', ' ')
            .Replace('\u2212', '-').Replace('\u2013', '-')
            .Replace('\u2032', '\'').Replace('\u2019', '\'').Replace('\u2018', '\'')
            .Replace('\u2033', '"').Replace('\u201d', '"').Replace('\u201c', '"')
            .Replace("''", "\"", StringComparison.Ordinal);
    }

    /// <summary>Exactly, as one whole number over another. A power of ten is not read here.</summary>
    internal (BigInteger Over, BigInteger Under) Exactly()
    {
        var point = Decimal.IndexOf('.', StringComparison.Ordinal);
        var places = point < 0 ? 0 : Decimal.Length - point - 1;
        var scale = BigInteger.Pow(10, places);
        var digits = Whole(Decimal.Replace(".", "", StringComparison.Ordinal));
        return Under.Length == 0 ? (digits, scale) : (digits * Whole(Under) + scale * Whole(Over), scale * Whole(Under));
    }

    /// <summary>To the nearest double.</summary>
    internal double ToDouble()
    {
        var value = Decimal.Length == 0 ? 0 : double.Parse(Decimal, NumberStyles.Float, CultureInfo.InvariantCulture);
        return Under.Length == 0 ? value : value + (double)Whole(Over) / (double)Whole(Under);
    }

    private static BigInteger Whole(string digits) => digits.Length == 0 ? 0 : BigInteger.Parse(digits, CultureInfo.InvariantCulture);
}
