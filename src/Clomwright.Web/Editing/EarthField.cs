using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Web.Editing;

/// <summary>One thing about a part of the earth that can be written: how it stands there, and what a written text makes of the part.</summary>
/// <param name="Name">Kebab case; its words are <c>web.earth.blank.{name}</c>.</param>
/// <param name="Text">As a builder writes it; empty where nobody said.</param>
/// <param name="Write">The part with the text taken, or what is wrong with the text.</param>
internal sealed record EarthField<T>(string Name, Func<T, string> Text, Func<T, string, (T Part, Message? Problem)> Write)
{
    /// <summary>Words to choose from; empty for a blank to write in.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>What stands in the blank of a part that is being added.</summary>
    public string Fresh { get; init; } = "";
}

/// <summary>The kinds of such fields. A field that may be left out is emptied by writing nothing.</summary>
internal sealed class EarthFields<T>(UnitSystem units)
{
    /// <summary>Units that are read off scales, presses and buckets.</summary>
    private static readonly HashSet<string> OnSite = new(StringComparer.Ordinal) { "kg", "lb", "lbf", "kN", "L", "gal", "ft3", "C", "F" };

    public EarthField<T> Length(string name, Func<T, Length?> of, Func<T, Length?, T> with, bool needed = false) => new(
        name,
        part => of(part) is { } length ? LengthText.Written(length, units) : "",
        (part, text) => Empty(text) ? Emptied(part, needed, p => with(p, null))
            : LengthText.TryParse(text, units == UnitSystem.Imperial ? Units.Inch : Units.Millimetre, out var length, out var problem) ? (with(part, length), null) : (part, problem));

    /// <summary>A quantity in SI; written in whichever unit says it shortest.</summary>
    public EarthField<T> Quantity(string name, Dimension dimension, Func<T, double?> of, Func<T, double?, T> with, bool needed = false) => new(
        name,
        part => of(part) is { } si ? Shortest(new Amount(si, dimension)) : "",
        (part, text) => Empty(text) ? Emptied(part, needed, p => with(p, null))
            : QuantityText.TryParse(text.Trim(), dimension, out var amount, out var problem) ? (with(part, amount.Si), null) : (part, problem));

    private static bool Empty(string text) => string.IsNullOrWhiteSpace(text);

    private static (T Part, Message? Problem) Emptied(T part, bool needed, Func<T, T> empty) => needed ? (part, new Message("web.earth.needed")) : (empty(part), null);

    private string Shortest(Amount amount) => Units.Of(amount.Dimension).Where(unit => OnSite.Contains(unit.Symbol))
        .Select(unit => (unit.System, Text: QuantityText.Written(amount, unit)))
        .OrderBy(written => written.Text.Length).ThenBy(written => written.System == units ? 0 : 1)
        .Select(written => written.Text).FirstOrDefault() ?? QuantityText.Written(amount);
}
