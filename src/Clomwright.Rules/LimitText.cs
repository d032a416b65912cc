using System.Globalization;
using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>What the number of a clause measures.</summary>
public enum LimitKind
{
    /// <summary>A length: <c>24 in</c>.</summary>
    Length,

    /// <summary>One thing over another: <c>7</c>.</summary>
    Ratio,

    /// <summary>A share of one: <c>1/3</c>, <c>40 %</c>.</summary>
    Share,

    /// <summary>A slope: <c>4 %</c>.</summary>
    Slope,

    /// <summary>A stress: <c>60 psi</c>.</summary>
    Stress,

    /// <summary>A load on an area: <c>50 psf</c>.</summary>
    AreaLoad,

    /// <summary>A speed: <c>110 mph</c>.</summary>
    Speed,

    /// <summary>A number of things: <c>0</c>.</summary>
    Count,

    /// <summary>A seismic design category, A to F.</summary>
    Category,
}

/// <summary>Reads the limits that data files and users write.</summary>
internal static class LimitText
{
    public static Limit? Read(string written, LimitKind kind)
    {
        var text = written.Trim();
        Amount? value = kind switch
        {
            LimitKind.Length => LengthText.TryParse(text, out var length, out _) ? length : null,
            LimitKind.Ratio => Number(text) is { } n ? Amount.Number(n) : null,
            LimitKind.Share => Share(text) is { } n ? Amount.Fraction(n) : null,
            LimitKind.Slope => Share(text) is { } n ? new Slope(n) : null,
            LimitKind.Stress => WithUnit(text, Dimension.Stress),
            LimitKind.AreaLoad => WithUnit(text, Dimension.AreaLoad),
            LimitKind.Speed => WithUnit(text, Dimension.Speed),
            LimitKind.Count => Number(text) is { } n && n == Math.Floor(n) ? Amount.Count((long)n) : null,
            _ => text is [>= 'A' and <= 'F'] ? Amount.Count(text[0] - 'A' + 1) : null,
        };
        return value is { } v && v.Si >= 0 ? new Limit(text, v) : null;
    }

    private static double? Share(string text) => text.EndsWith('%') ? Number(text[..^1].TrimEnd()) / 100 : Number(text);

    private static Amount? WithUnit(string text, Dimension dimension)
    {
        var space = text.IndexOf(' ', StringComparison.Ordinal);
        return space > 0 && Number(text[..space]) is { } n && Units.Find(dimension, text[(space + 1)..].TrimStart()) is { } unit
            ? new Amount(unit.ToSi(n), dimension)
            : null;
    }

    private static double? Number(string text)
    {
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        if (slash > 0)
        {
            return Number(text[..slash]) / Number(text[(slash + 1)..]) is { } quotient && double.IsFinite(quotient) ? quotient : null;
        }

        return double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) && double.IsFinite(n) ? n : null;
    }
}
