using System.Globalization;
using System.Numerics;
using System.Text.RegularExpressions;

namespace Clomwright.Evidence;

/// <summary>Reads and writes lengths as builders do: <c>12 in</c>, <c>7 ft 6 1/2 in</c>, <c>7'6"</c>, <c>3/8 in</c>, <c>2.3 m</c>, <c>45 cm</c>, <c>2300 mm</c>.</summary>
/// <remarks>Nothing is rounded when reading: a length that is no whole number of nanometres (1/3 in) is refused and the nearest ones are offered.</remarks>
public static partial class LengthText
{
    private static readonly Length SixtyFourth = new(Length.PerInch / 64);

    /// <summary>Reads a length with its unit.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="value">The length; zero when there is a problem.</param>
    /// <param name="problem">What is wrong and what would be right; null when it was read.</param>
    public static bool TryParse(string text, out Length value, out Message? problem) => Succeeded(Read(text, null), out value, out problem);

    /// <summary>Reads a length on a screen that shows which unit a bare number has; after feet, a bare number is inches.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="whenBare">The unit of a number without one; a unit of length.</param>
    /// <param name="value">The length; zero when there is a problem.</param>
    /// <param name="problem">What is wrong and what would be right; null when it was read.</param>
    public static bool TryParse(string text, Unit whenBare, out Length value, out Message? problem)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(whenBare.Dimension, Dimension.Length);
        return Succeeded(Read(text, whenBare), out value, out problem);
    }

    /// <summary>The exact text of a length, in inches where it is a whole number of 1/64 in, otherwise metric. Reads back as the same length.</summary>
    public static string Written(Length value) => Written(value, UnitSystem.Imperial);

    /// <summary>The exact text of a length, in the system asked for where it is a whole number of 1/64 in or of millimetres there. Reads back as the same length.</summary>
    public static string Written(Length value, UnitSystem prefer)
    {
        var fitsInches = value.Nanometres % SixtyFourth.Nanometres == 0;
        var fitsMillimetres = value.Nanometres % Length.PerMillimetre == 0;
        return fitsInches && (prefer == UnitSystem.Imperial || !fitsMillimetres) ? Imperial(value) : Metric(value);
    }

    private static bool Succeeded((Length Value, Message? Problem) read, out Length value, out Message? problem)
    {
        (value, problem) = read;
        return problem is null;
    }

    private static (Length Value, Message? Problem) Read(string text, Unit? whenBare)
    {
        var typed = WrittenNumber.Typed(text);
        if (typed.Length > WrittenNumber.LongestText)
        {
            return Wrong(Message.Of("evidence.length-unreadable", ("text", WrittenNumber.Shown(text))));
        }

        if (typed.Contains(',', StringComparison.Ordinal))
        {
            return Wrong(Message.Of("evidence.number-comma", ("text", text)));
        }

        var negative = typed.StartsWith('-');
        var at = negative ? 1 : 0;
        var parts = new List<(WrittenNumber Number, Unit Unit)>();
        while (at < typed.Length || parts.Count == 0)
        {
            var match = Part().Match(typed, at);
            if (!match.Success || !WrittenNumber.From(match).IsNumber)
            {
                return Wrong(Message.Of("evidence.length-unreadable", ("text", text)));
            }

            var name = match.Groups["unit"].Value;
            var unit = name.Length > 0 ? Units.Find(Dimension.Length, name) : whenBare is null || parts.Count == 0 ? whenBare : Units.Inch;
            if (unit is null)
            {
                return name.Length > 0 ? Wrong(Message.Of("evidence.length-unit-unknown", ("text", text), ("unit", name)))
                    : parts.Count > 0 ? Wrong(Message.Of("evidence.length-parts", ("text", text)))
                    : Wrong(Message.Of("evidence.length-unit-missing", ("text", text)));
            }

            parts.Add((WrittenNumber.From(match), unit));
            at += match.Length;
            var joined = at + 1 < typed.Length && typed[at] == '-' && char.IsAsciiDigit(typed[at + 1]);
            at += joined ? 1 : 0;
        }

        return parts.Count > 1 && !(parts.Count == 2 && parts[0].Unit == Units.Foot && parts[1].Unit == Units.Inch)
            ? Wrong(Message.Of("evidence.length-parts", ("text", text)))
            : Sum(text, parts, negative);
    }

    private static (Length Value, Message? Problem) Sum(string text, List<(WrittenNumber Number, Unit Unit)> parts, bool negative)
    {
        var (over, under) = (BigInteger.Zero, BigInteger.One);
        foreach (var (number, unit) in parts)
        {
            var (o, u) = number.Exactly();
            var nanometres = (long)Math.Round(unit.ToSi(1e9));
            (over, under) = (over * u + o * nanometres * under, under * u);
        }

        over = negative ? -over : over;
        var exact = over % under == 0;
        var room = exact ? 0 : Length.PerInch;
        if (over > under * (long.MaxValue - room) || over < under * (long.MinValue + room))
        {
            return Wrong(Message.Of("evidence.length-too-long", ("text", text)));
        }

        if (exact)
        {
            return (new Length((long)(over / under)), null);
        }

        return Wrong(Message.Of(
            "evidence.length-not-exact",
            ("text", text),
            ("inches", Imperial(NearestMultiple(over, under, SixtyFourth))),
            ("millimetres", Metric(NearestMultiple(over, under, Length.FromMillimetres(1))))));
    }

    private static Length NearestMultiple(BigInteger over, BigInteger under, Length step)
    {
        var whole = under * step.Nanometres;
        var twice = 2 * BigInteger.Abs(over) + whole;
        return new Length((long)(over.Sign * (twice / (2 * whole)) * step.Nanometres));
    }

    private static (Length Value, Message? Problem) Wrong(Message problem) => (default, problem);

    [GeneratedRegex(@"\G\s*" + WrittenNumber.Pattern + @"(?:\s*(?<unit>[^\s\d.\-/]+)\.?)?", RegexOptions.CultureInvariant)]
    private static partial Regex Part();
}
