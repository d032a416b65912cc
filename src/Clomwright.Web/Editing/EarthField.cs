using System.Globalization;
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

    /// <summary>A day, year first.</summary>
    public static EarthField<T> Date(string name, Func<T, DateOnly?> of, Func<T, DateOnly?, T> with) => new(
        name,
        part => of(part)?.ToString(Iso, CultureInfo.InvariantCulture) ?? "",
        (part, text) => Empty(text) ? (with(part, null), null)
            : DateOnly.TryParseExact(text.Trim(), Iso, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? (with(part, day), null)
            : (part, Message.Of("web.earth.not-day", ("text", Cut(text)))));

    /// <summary>Masses over the days: <c>0 d 7.44 kg; 2 d 7.1 kg</c>; read in any unit, shown in kilograms.</summary>
    public static EarthField<T> Weighings(string name, Func<T, Sequence<Weighing>> of, Func<T, Sequence<Weighing>, T> with) => new(
        name,
        part => string.Join("; ", of(part).Select(w => FormattableString.Invariant($"{w.Day:0.##} d {w.Mass.Kilograms:0.####} kg"))),
        (part, text) =>
        {
            var read = new List<Weighing>();
            foreach (var one in text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            {
                var words = one.Split(' ', 2, StringSplitOptions.TrimEntries);
                var mass = words.Length < 2 ? "" : words[1].StartsWith("d ", StringComparison.Ordinal) ? words[1][2..] : words[1];
                if (!double.TryParse(words[0], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var day) || mass.Length == 0)
                {
                    return (part, Message.Of("web.earth.not-weighing", ("text", Cut(one))));
                }

                if (!QuantityText.TryParse(mass, Dimension.Mass, out var amount, out var problem))
                {
                    return (part, problem);
                }

                read.Add(new(day, new Mass(amount.Si)));
            }

            return (with(part, read.ToSequence()), null);
        });

    private const string Iso = "yyyy-MM-dd";

    private static string Cut(string text) => text.Length <= 40 ? text : text[..40] + "…";

    private static bool Empty(string text) => string.IsNullOrWhiteSpace(text);

    private static (T Part, Message? Problem) Emptied(T part, bool needed, Func<T, T> empty) => needed ? (part, new Message("web.earth.needed")) : (empty(part), null);

    private string Shortest(Amount amount) => Units.Of(amount.Dimension).Where(unit => OnSite.Contains(unit.Symbol))
        .Select(unit => (unit.System, Text: QuantityText.Written(amount, unit)))
        .OrderBy(written => written.Text.Length).ThenBy(written => written.System == units ? 0 : 1)
        .Select(written => written.Text).FirstOrDefault() ?? QuantityText.Written(amount);
}
