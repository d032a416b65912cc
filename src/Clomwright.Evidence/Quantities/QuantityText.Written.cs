using System.Globalization;

namespace Clomwright.Evidence;

public static partial class QuantityText
{
    /// <summary>The shortest text, in SI or a power of ten of it, that reads back as the same double.</summary>
    /// <param name="value">A finite quantity.</param>
    public static string Written(Amount value)
    {
        ThrowUnlessFinite(value.Si);
        if (value.Dimension == Dimension.Slope)
        {
            return SlopeText.Written(new Slope(value.Si));
        }

        return Units.Of(value.Dimension)
            .Where(u => u.System == UnitSystem.Metric)
            .OrderByDescending(u => u.Factor)
            .Select(u => TryWrite(value.Si, u))
            .OfType<string>()
            .MinBy(text => text.Length) ?? RoundTrip(value.Si);
    }

    /// <summary>The text in the unit asked for if that reads back as the same double, otherwise as <see cref="Written(Amount)"/>.</summary>
    public static string Written(Amount value, Unit unit)
    {
        ThrowUnlessFinite(value.Si);
        ArgumentOutOfRangeException.ThrowIfNotEqual(unit.Dimension, value.Dimension, nameof(unit));
        return TryWrite(value.Si, unit) ?? Written(value);
    }

    /// <summary>The angle in degrees, as kept.</summary>
    public static string Written(Angle value)
    {
        ThrowUnlessFinite(value.Degrees);
        return $"{RoundTrip(value.Degrees)} deg";
    }

    internal static string RoundTrip(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static string? TryWrite(double si, Unit unit)
    {
        var number = unit.FromSi(si);
        return unit.ToSi(number) == si ? $"{RoundTrip(number)} {unit.Symbol}" : null;
    }

    private static void ThrowUnlessFinite(double value)
    {
        if (!double.IsFinite(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "Only a finite quantity can be written.");
        }
    }
}
