using System.Globalization;
using System.Text.RegularExpressions;

namespace Clomwright.Evidence;

/// <summary>Reads and writes every quantity other than a written length: <c>135 deg</c>, <c>1.0 kPa</c>, <c>105 mph</c>, <c>0.67 ft3</c>.</summary>
/// <remarks>What is written reads back as the same double to the last bit. Slopes are in <see cref="SlopeText"/>, lengths in <see cref="LengthText"/>.</remarks>
public static partial class QuantityText
{
    /// <summary>Reads a quantity of any dimension; plain numbers and counts carry no unit.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="dimension">What it has to measure.</param>
    /// <param name="value">The quantity in SI; zero when there is a problem.</param>
    /// <param name="problem">What is wrong and what would be right; null when it was read.</param>
    public static bool TryParse(string text, Dimension dimension, out Amount value, out Message? problem)
    {
        (value, problem) = dimension switch
        {
            Dimension.Length => LengthText.TryParse(text, out var length, out var wrong) ? (length.Amount, null) : (new(0, dimension), wrong),
            Dimension.Slope => SlopeText.TryParse(text, out var slope, out var wrong) ? (slope.Amount, null) : (new(0, dimension), wrong),
            _ => Read(text, dimension),
        };
        return problem is null;
    }

    /// <summary>Reads an angle in degrees or radians; degrees are kept as written.</summary>
    public static bool TryParse(string text, out Angle value, out Message? problem)
    {
        var (number, unit, wrong) = Parts(text, Dimension.Angle);
        (value, problem) = (unit?.Symbol == "deg" ? new Angle(number) : Angle.FromRadians(unit is null ? 0 : number), wrong);
        return problem is null;
    }

    /// <summary>Reads a slope; see <see cref="SlopeText"/>.</summary>
    public static bool TryParse(string text, out Slope value, out Message? problem) => SlopeText.TryParse(text, out value, out problem);

    /// <summary>Reads a stress, pressure or load on an area.</summary>
    public static bool TryParse(string text, out Stress value, out Message? problem) => Read(text, Dimension.Stress, si => new Stress(si), out value, out problem);

    /// <summary>Reads a speed.</summary>
    public static bool TryParse(string text, out Speed value, out Message? problem) => Read(text, Dimension.Speed, si => new Speed(si), out value, out problem);

    /// <summary>Reads a volume; a gallon is the US one.</summary>
    public static bool TryParse(string text, out Volume value, out Message? problem) => Read(text, Dimension.Volume, si => new Volume(si), out value, out problem);

    /// <summary>Reads a mass.</summary>
    public static bool TryParse(string text, out Mass value, out Message? problem) => Read(text, Dimension.Mass, si => new Mass(si), out value, out problem);

    /// <summary>Reads a force; a lb is a pound-force here.</summary>
    public static bool TryParse(string text, out Force value, out Message? problem) => Read(text, Dimension.Force, si => new Force(si), out value, out problem);

    /// <summary>Reads a share.</summary>
    public static bool TryParse(string text, out Share value, out Message? problem) => Read(text, Dimension.Fraction, si => new Share(si), out value, out problem);

    /// <summary>Reads a density.</summary>
    public static bool TryParse(string text, out Density value, out Message? problem) => Read(text, Dimension.Density, si => new Density(si), out value, out problem);

    /// <summary>Reads an area.</summary>
    public static bool TryParse(string text, out Area value, out Message? problem) => Read(text, Dimension.Area, si => new Area(si), out value, out problem);

    /// <summary>Reads a temperature.</summary>
    public static bool TryParse(string text, out Temperature value, out Message? problem) => Read(text, Dimension.Temperature, si => new Temperature(si), out value, out problem);

    private static bool Read<T>(string text, Dimension dimension, Func<double, T> made, out T value, out Message? problem)
    {
        (var amount, problem) = Read(text, dimension);
        value = made(amount.Si);
        return problem is null;
    }

    private static (Amount Value, Message? Problem) Read(string text, Dimension dimension)
    {
        var (number, unit, problem) = Parts(text, dimension);
        var si = unit?.ToSi(number) ?? number;
        return problem is null && !double.IsFinite(si)
            ? (new(0, dimension), Message.Of("evidence.quantity-too-large", ("text", text), ("example", Examples.Of(dimension))))
            : (new(problem is null ? si : 0, dimension), problem);
    }

    private static (double Number, Unit? Unit, Message? Problem) Parts(string text, Dimension dimension)
    {
        var typed = WrittenNumber.Typed(text);
        var unreadable = Message.Of("evidence.quantity-unreadable", ("text", WrittenNumber.Shown(text)), ("what", Examples.Noun(dimension)), ("example", Examples.Of(dimension)));
        if (typed.Length > WrittenNumber.LongestText)
        {
            return (0, null, unreadable);
        }

        if (typed.Contains(',', StringComparison.Ordinal))
        {
            return (0, null, Message.Of("evidence.number-comma", ("text", text)));
        }

        var match = Whole().Match(typed);
        if (!match.Success || !WrittenNumber.From(match).IsNumber)
        {
            return (0, null, unreadable);
        }

        var number = WrittenNumber.From(match).ToDouble();
        number = match.Groups["minus"].Success ? -number : number;
        var name = match.Groups["unit"].Value;
        if (!double.IsFinite(number) || (dimension == Dimension.Count && number != Math.Floor(number)))
        {
            return (0, null, unreadable);
        }

        if (name.Length == 0 && !Units.Of(dimension).Any())
        {
            return (number, null, null);
        }

        return Units.Find(dimension, name) is { } unit ? (number, unit, null)
            : name.Length == 0 ? (0, null, Message.Of("evidence.quantity-unit-missing", ("text", text), ("what", Examples.Noun(dimension)), ("example", Examples.Of(dimension))))
            : (0, null, Message.Of("evidence.quantity-unit-unknown", ("text", text), ("unit", name), ("what", Examples.Noun(dimension)), ("example", Examples.Of(dimension))));
    }

    [GeneratedRegex(@"^(?<minus>-)?\s*" + WrittenNumber.PatternWithPower + @"(?:\s*(?<unit>[^\s\d.\-].*?)\.?)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Whole();
}
