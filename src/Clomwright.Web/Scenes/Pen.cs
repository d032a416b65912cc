using Clomwright.Evidence;

namespace Clomwright.Web.Scenes;

/// <summary>Writes for the page: messages in words, lengths as a tape reads them, coordinates to a tenth of a millimetre.</summary>
internal sealed class Pen(Phrasebook words, UnitSystem units)
{
    /// <summary>Which units come first.</summary>
    public UnitSystem Units => units;

    public string Say(Message message) => words.Say(message, units);

    public string Say(string key, params ReadOnlySpan<(string Name, Argument Value)> arguments) => Say(Message.Of(key, arguments));

    public string Say(Amount amount) => words.Say(amount, units);

    public string Say(Source source) => words.Say(source);

    /// <summary>Why a verdict is what it is.</summary>
    public string Reason(Verdict verdict) => words.Reason(verdict, units);

    /// <summary>The subject of a finding or a check in words.</summary>
    public string Subject(string subject) => words.Subject(subject);

    /// <summary>The words of a key, or something else where it has none.</summary>
    public string NameOf(string key, string otherwise) => words.NameOf(key, otherwise);

    /// <summary>In the first units only, for where there is room for one.</summary>
    public string Short(Amount amount) => words.One(amount, units);

    /// <summary>In the other units only.</summary>
    public string Other(Amount amount) => words.One(amount, units == UnitSystem.Imperial ? UnitSystem.Metric : UnitSystem.Imperial);

    /// <summary>In the first units only.</summary>
    public string Short(double metres) => Short(Amount.Metres(metres));

    /// <summary>A coordinate to a tenth of a millimetre, which is finer than a screen shows.</summary>
    public static double Round(double metres) => Math.Round(metres, 4);

    public static double[] Point(double x, double y) => [Round(x), Round(y)];
}
