using Clomwright.Analysis.Drying;
using Clomwright.Evidence;

namespace Clomwright.Papers.Sheets;

/// <summary>Turns messages and quantities into the words of these papers.</summary>
internal sealed class Wording(UnitSystem first, Phrasebook book)
{
    /// <summary>The words of a language.</summary>
    public Phrasebook Book { get; } = book;

    /// <summary>The units that come first.</summary>
    public UnitSystem First { get; } = first;

    /// <summary>The other units.</summary>
    public UnitSystem Second { get; } = first == UnitSystem.Imperial ? UnitSystem.Metric : UnitSystem.Imperial;

    public string Say(string key, params ReadOnlySpan<(string, Argument)> arguments) => Say(Message.Of("papers." + key, arguments));

    public string Say(Message message) => Book.Say(message, First);

    public string Say(Argument argument) => Book.Say(argument, First);

    public string Say(Amount amount) => Book.Say(amount, First);

    public string Say(DateOnly date) => Book.Say(date);

    public string Say(Source source) => Book.Say(source);

    public string Say(Comparison comparison) => Book.Say(comparison, First);

    /// <summary>Why a verdict is what it is.</summary>
    public string Reason(Verdict verdict) => Book.Reason(verdict, First);

    /// <summary>The subject of a finding or a check in words.</summary>
    public string Subject(string subject) => Book.Subject(subject);

    /// <summary>A number far from one, not parted at the end of a line.</summary>
    public static string Power(double value) => Unbroken(AmountText.Power(value));

    /// <summary>What a pier stands between, without the word for a pier.</summary>
    public string Between(string pier) => Book.Between(pier);

    /// <summary>A material in words.</summary>
    public string Material(string material) => Book.Material(material);

    /// <summary>A quantity in the units that come first.</summary>
    public string One(Amount amount) => Unbroken(Book.One(amount, First));

    /// <summary>A quantity in the other units; empty where both systems write it alike.</summary>
    public string Other(Amount amount)
    {
        var other = Unbroken(Book.One(amount, Second));
        return other == One(amount) ? "" : other;
    }

    /// <summary>The name of something in words; its own where there are none.</summary>
    public string NameOf(string key, string otherwise) => Book.NameOf(key, otherwise);

    /// <summary>A volume that is poured, in m3, in gallons or litres.</summary>
    public string Poured(double cubicMetres, UnitSystem system) => Unbroken(Book.Poured(new Volume(cubicMetres), system));

    /// <summary>A span of days; see <see cref="Forecasts"/>.</summary>
    public string Days(double? low, double? high) => Book.Marked(Forecasts.Days(low, high));

    /// <summary>A forecast as its band of days.</summary>
    public string Days(Forecast forecast) => Days(forecast.Fast, forecast.Slow);

    /// <summary>One number of days.</summary>
    public string Day(double days) => Book.Marked(Forecasts.Day(days));

    /// <summary>A length in both systems.</summary>
    public string Both(Length length) => Book.Marked(LengthText.Both(length, First));

    /// <summary>The one tag of a printed number.</summary>
    public string Say(Tag tag) => Say(Names.Of(tag));

    /// <summary>A number and its units that never part at the end of a line.</summary>
    public static string Unbroken(string number) => number.Replace(' ', '\u00a0');

    /// <summary>Words joined by a middle dot, leaving out what is empty.</summary>
    public static string Dotted(params IEnumerable<string> words) => string.Join(" · ", words.Where(w => w.Length > 0));
}
