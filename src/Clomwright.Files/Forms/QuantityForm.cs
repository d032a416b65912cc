using Clomwright.Evidence;
using Clomwright.Files.Json;

namespace Clomwright.Files.Forms;

/// <summary>Reads a text as a quantity.</summary>
internal delegate bool Parse<T>(string text, out T value, out Message? problem);

/// <summary>A text with a unit.</summary>
/// <param name="dimension">What it measures.</param>
/// <param name="parse">How it is read.</param>
/// <param name="written">How it is written so that it reads back the same.</param>
internal sealed class QuantityForm<T>(Dimension dimension, Parse<T> parse, Func<T, UnitSystem, string> written) : Form<T> where T : struct, IQuantity
{
    public override Kind Kind { get; } = new Kind.Quantity(dimension);

    public override bool TryRead(Node node, KeyPath path, Reading reading, out T value)
    {
        value = default;
        if (node is NumberNode)
        {
            reading.Problem(path, Message.Of("files.no-unit", ("found", reading.Quote(node)), ("expected", new Message($"files.kind.{Quantities.Word(dimension)}"))));
            return false;
        }

        if (node is not TextNode text)
        {
            return reading.NotOfKind(path, node, $"files.kind.{Quantities.Word(dimension)}");
        }

        if (!parse(text.Value, out value, out var problem))
        {
            reading.Problem(path, problem!);
            return false;
        }

        return true;
    }

    /// <summary>What is no number becomes a text that is refused when it is read.</summary>
    public override Piece Write(T value, UnitSystem units) => Piece.Of(double.IsFinite(value.Amount.Si) ? written(value, units) : "?");
}

/// <summary>The quantities of the house file.</summary>
internal static class Quantities
{
    public static QuantityForm<Length> Lengths { get; } = new(Dimension.Length, LengthText.TryParse, LengthText.Written);

    public static QuantityForm<Angle> Angles { get; } = new(Dimension.Angle, QuantityText.TryParse, (value, _) => QuantityText.Written(value));

    public static QuantityForm<Slope> Slopes { get; } = new(Dimension.Slope, QuantityText.TryParse, (value, _) => QuantityText.Written(value.Amount));

    public static QuantityForm<Stress> Stresses { get; } = new(Dimension.Stress, QuantityText.TryParse, (value, units) => Written(value.Amount, units, "psf", "kPa"));

    public static QuantityForm<Speed> Speeds { get; } = new(Dimension.Speed, QuantityText.TryParse, (value, units) => Written(value.Amount, units, "mph", "m/s"));

    public static QuantityForm<Volume> Volumes { get; } = new(Dimension.Volume, QuantityText.TryParse, (value, units) => Written(value.Amount, units, "ft3", "L"));

    public static QuantityForm<Mass> Masses { get; } = new(Dimension.Mass, QuantityText.TryParse, (value, units) => Written(value.Amount, units, "lb", "kg"));

    public static QuantityForm<Force> Forces { get; } = new(Dimension.Force, QuantityText.TryParse, (value, units) => Written(value.Amount, units, "lbf", "kN"));

    public static QuantityForm<Density> Densities { get; } = new(Dimension.Density, QuantityText.TryParse, (value, units) => Written(value.Amount, units, "lb/ft3", "kg/m3"));

    public static QuantityForm<Temperature> Temperatures { get; } = new(Dimension.Temperature, QuantityText.TryParse, (value, _) => QuantityText.Written(value.Amount));

    public static QuantityForm<Share> Shares { get; } = new(Dimension.Fraction, QuantityText.TryParse, (value, units) => Written(value.Amount, units, "%", "%"));

    /// <summary>The word for a dimension in message keys.</summary>
    public static string Word(Dimension dimension) => dimension.ToString().ToLowerInvariant();

    /// <summary>In the unit preferred where that is short, then in the other system's, otherwise the shortest that reads back the same.</summary>
    private static string Written(Amount value, UnitSystem units, string imperial, string metric)
    {
        var shortest = QuantityText.Written(value);
        return (units == UnitSystem.Imperial ? [imperial, metric] : new[] { metric })
            .Select(unit => QuantityText.Written(value, Units.Find(value.Dimension, unit)!))
            .FirstOrDefault(text => text.Length <= shortest.Length + LongerMost, shortest);
    }

    private const int LongerMost = 3;
}
