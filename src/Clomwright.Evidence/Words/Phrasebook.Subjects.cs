using System.Text.RegularExpressions;

namespace Clomwright.Evidence;

public sealed partial class Phrasebook
{
    private const string OfPier = "pier ";
    private const string OfHeader = "/header";
    private const string OfFrame = "/frame";

    /// <summary>The subject of a finding or of a check in words: <c>pole 3, on its seat</c>. Machines take it as it is, and the author's own names stay in it.</summary>
    /// <remarks>
    /// A subject is made of parts between <c>", "</c>. A part that we made has words under <c>evidence.subject.</c> and its own letters, numbers as <c>n</c>; of <c>pier a|b</c> and
    /// <c>a/header</c> and <c>a/frame</c> the rest is the author's, and what a pier stands between is said as <see cref="Between"/>. Whatever else stands there is the author's and is said as it was written.
    /// </remarks>
    public string Subject(string subject)
    {
        ArgumentNullException.ThrowIfNull(subject);
        return OneLine.Of(string.Join(", ", subject.Split(", ").Select(Part)));
    }

    /// <summary>What a pier stands between, of its address <c>pier a|b</c>: <c>a to b</c>. No author's name has the mark that parts the two.</summary>
    public string Between(string pier)
    {
        ArgumentNullException.ThrowIfNull(pier);
        var names = pier.StartsWith(OfPier, StringComparison.Ordinal) ? pier[OfPier.Length..] : pier;
        return names.Split('|') is [var from, var to] ? Said("evidence.subject.of-pier-between", ("from", from), ("to", to)) : names;
    }

    /// <summary>A material in words: those of <c>evidence.material.</c> and its key; one that the author named himself as it was written.</summary>
    public string Material(string material)
    {
        ArgumentNullException.ThrowIfNull(material);
        return NameOf($"evidence.material.{material}", OneLine.Of(material));
    }

    /// <summary>The words of a key, or something else where it has none.</summary>
    public string NameOf(string key, string otherwise) => Has(key) ? Said(key) : otherwise;

    private bool Has(string key) => phrases.ContainsKey(key) || otherwise?.phrases.ContainsKey(key) == true;

    private string Part(string part)
    {
        var numbers = Digits().Matches(part).Select(m => m.Value).ToArray();
        var key = $"evidence.subject.{Digits().Replace(part, "n").Replace(' ', '-').Replace("'", "", StringComparison.Ordinal)}";
        return Has(key) && !key.Contains(".of-", StringComparison.Ordinal)
            ? Said(key, ("n", numbers.ElementAtOrDefault(0) ?? ""), ("m", numbers.ElementAtOrDefault(1) ?? ""))
            : part.StartsWith(OfPier, StringComparison.Ordinal) ? Said("evidence.subject.of-pier", ("name", Between(part)))
            : part.EndsWith(OfHeader, StringComparison.Ordinal) ? Said("evidence.subject.of-header", ("name", part[..^OfHeader.Length]))
            : part.EndsWith(OfFrame, StringComparison.Ordinal) ? Said("evidence.subject.of-frame", ("name", part[..^OfFrame.Length]))
            : part;
    }

    private string Said(string key, params ReadOnlySpan<(string, Argument)> arguments) => Say(Message.Of(key, arguments), UnitSystem.Metric);

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Digits();
}
