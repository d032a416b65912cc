using System.Globalization;
using static Clomwright.Evidence.UnitSystem;

namespace Clomwright.Evidence;

/// <summary>Quantities for people: in one unit system or both, rounded to what a tape, a scale or a protractor can read.</summary>
/// <remarks>
/// Three figures unless said otherwise; lengths to 1/4 in and 5 mm (small ones finer), what no inch tape can read in millimetres, angles to 0.1°, temperatures to 0.5 °C and 1 °F.
/// Each step of <c>finer</c> adds a figure. What is no number is a question mark. Nothing printed here is meant to be read back; see
/// <see cref="QuantityText"/>.
/// </remarks>
public static class AmountText
{
    /// <summary>Less than this of a unit is what reckoning leaves behind, and reads 0.</summary>
    private const double Nothing = 1e-9;

    /// <summary>Under half of 1/64 in a tape reads nothing; a grain of sand is said in millimetres, in both systems alike. m.</summary>
    private const double Finest = 0.0254 / 128;

    /// <summary>Shorter than this is what reckoning leaves behind, m.</summary>
    private const double LeastLength = 5e-7;

    /// <summary>A quantity in one system.</summary>
    /// <param name="value">The quantity.</param>
    /// <param name="system">The system; plain numbers, angles and times read the same in both.</param>
    /// <param name="finer">How many figures more than usual.</param>
    public static string In(Amount value, UnitSystem system, int finer = 0) => !double.IsFinite(value.Si) ? "?" : value.Dimension switch
    {
        Dimension.Number => Figures(value.Si, 3 + finer),
        Dimension.Count => Places(value.Si, finer),
        Dimension.Length => LengthIn(value.Si, system, finer),
        Dimension.Angle => $"{Places(value.Si * 180 / Math.PI, 1 + finer)}°",
        Dimension.Slope => SlopeIn(value.Si, system, finer),
        Dimension.Temperature => TemperatureIn(value.Si, system, finer),
        Dimension.Days => $"{Places(value.Si, (Math.Abs(value.Si) < 10 ? 1 : 0) + finer)} d",
        _ => InUnit(value, system, finer),
    };

    /// <summary>A quantity in both systems, <c>60 psi (414 kPa)</c>, or once where both read the same.</summary>
    /// <param name="value">The quantity.</param>
    /// <param name="first">The system that comes first.</param>
    /// <param name="finer">How many figures more than usual.</param>
    public static string Both(Amount value, UnitSystem first, int finer = 0)
    {
        var (one, other) = (In(value, first, finer), In(value, first == Imperial ? Metric : Imperial, finer));
        return one == other ? one : $"{one} ({other})";
    }

    /// <summary>A volume that is poured, in gallons or litres whatever its size.</summary>
    /// <param name="value">The volume.</param>
    /// <param name="system">US gallons or litres.</param>
    public static string Poured(Volume value, UnitSystem system)
    {
        var unit = Units.Find(Dimension.Volume, system == Imperial ? "gal" : "L")!;
        return double.IsFinite(value.CubicMetres) ? $"{Figures(value.CubicMetres / unit.ToSi(1), 3)} {unit.Symbol}" : "?";
    }

    /// <summary>A written length exactly, then the other system: exactly too where it is whole there, otherwise as a tape reads it.</summary>
    public static string Exact(Length value, UnitSystem first)
    {
        var (one, other) = (LengthText.Written(value, first), LengthText.Written(value, first == Imperial ? Metric : Imperial));
        return one == other ? $"{one} ({LengthIn(value.Metres, one.EndsWith('m') ? Imperial : Metric, 1)})" : $"{one} ({other})";
    }

    /// <summary>A number far from one as people write it: <c>7 × 10⁻¹⁴</c>, to one figure. No units, and the decimal point is a point.</summary>
    public static string Power(double value)
    {
        if (!double.IsFinite(value))
        {
            return "?";
        }

        var parts = value.ToString("0e+0", CultureInfo.InvariantCulture).Split('e');
        return parts[1] == "+0" ? parts[0] : $"{parts[0]} × 10{string.Concat(parts[1].TrimStart('+').Select(c => c == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹"[c - '0']))}";
    }

    private static string LengthIn(double metres, UnitSystem system, int finer)
    {
        var small = Math.Abs(metres);
        if (small >= LeastLength && small < Finest && finer <= 2)
        {
            return $"{Figures(metres * 1000, 2)} mm";
        }

        finer += metres == 0 || small >= 0.025 ? 0 : small >= 0.005 ? 1 : 2;
        return finer switch
        {
            0 => LengthText.Tape(metres, system),
            1 => LengthText.Tape(metres, system, system == Imperial ? new Length(Length.PerInch / 16) : Length.FromMillimetres(1)),
            2 => LengthText.Tape(metres, system, system == Imperial ? new Length(Length.PerInch / 64) : new Length(Length.PerMillimetre / 10)),
            _ => system == Imperial ? $"{Places(metres / 0.0254, finer)} in" : $"{Places(metres * 1000, finer - 1)} mm",
        };
    }

    private static string SlopeIn(double slope, UnitSystem system, int finer)
    {
        if (system == Metric)
        {
            return $"{Places(slope * 100, 1 + finer)} %";
        }

        var perFoot = slope * 12;
        return Math.Abs(perFoot) >= 2 ? $"{(finer == 0 ? Places(Math.Round(perFoot * 4) / 4, 2) : Places(perFoot, finer + 2))} in 12"
            : finer == 0 ? $"{LengthText.Tape(perFoot * 0.0254, Imperial, new Length(Length.PerInch / 16))} per ft"
            : $"{Places(perFoot, finer + 2)} in per ft";
    }

    private static string TemperatureIn(double celsius, UnitSystem system, int finer) => system == Imperial
        ? $"{Places(celsius * 9 / 5 + 32, finer)} °F"
        : finer == 0 ? $"{Places(Math.Round(celsius * 2) / 2, 1)} °C" : $"{Places(celsius, finer + 1)} °C";

    private static string InUnit(Amount value, UnitSystem system, int finer)
    {
        var unit = ReadableUnits.For(value, system);
        var read = unit.FromSi(value.Si);
        return $"{Figures(Math.Abs(read) < Nothing ? 0 : read, 3 + finer)} {ReadableUnits.Printed(unit)}";
    }

    private static string Figures(double value, int figures)
    {
        var magnitude = value == 0 ? 0 : (int)Math.Floor(Math.Log10(Math.Abs(value)));
        var left = Math.Pow(10, Math.Max(0, magnitude - figures + 1));
        return left > 1 ? Places(Math.Round(value / left) * left, 0) : Places(value, figures - 1 - magnitude);
    }

    private static string Places(double value, int places)
    {
        var text = value.ToString("0." + new string('#', Math.Min(places, 15)), CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }
}
