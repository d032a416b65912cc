using Clomwright.Evidence;

namespace Clomwright.Papers.Sheets;

/// <summary>Turns messages and quantities into the words of these papers.</summary>
internal sealed class Wording(UnitSystem first)
{
    private static readonly Phrasebook Book = Phrasebook.English;

    /// <summary>The units that come first.</summary>
    public UnitSystem First { get; } = first;

    /// <summary>The other units.</summary>
    public UnitSystem Second { get; } = first == UnitSystem.Imperial ? UnitSystem.Metric : UnitSystem.Imperial;

    public string Say(string key, params ReadOnlySpan<(string, Argument)> arguments) => Say(Message.Of("papers." + key, arguments));

    public string Say(Message message) => Book.Say(message, First);

    public string Say(Argument argument) => Book.Say(argument, First);

    public string Say(Amount amount) => Book.Say(amount, First);

    public static string Say(DateOnly date) => Book.Say(date);

    public static string Say(Source source) => Book.Say(source);

    public string Say(Comparison comparison) => Book.Say(comparison, First);

    /// <summary>A quantity in the units that come first.</summary>
    public string One(Amount amount) => Unbroken(AmountText.In(amount, First));

    /// <summary>A quantity in the other units; empty where both systems write it alike.</summary>
    public string Other(Amount amount)
    {
        var other = Unbroken(AmountText.In(amount, Second));
        return other == One(amount) ? "" : other;
    }

    /// <summary>The one tag of a printed number.</summary>
    public string Say(Tag tag) => Say(Names.Of(tag));

    /// <summary>A number and its units that never part at the end of a line.</summary>
    public static string Unbroken(string number) => number.Replace(' ', '\u00a0');

    /// <summary>Words joined by a middle dot, leaving out what is empty.</summary>
    public static string Dotted(params IEnumerable<string> words) => string.Join(" · ", words.Where(w => w.Length > 0));
}
