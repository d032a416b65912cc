using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Cli.Verbs;

/// <summary>What <c>clom log</c> can be told beside a day of work: a test, something that came, something measured in the wall.</summary>
internal static class LogOthers
{
    /// <summary>Its options, in the order of the help; the first of each line says what kind of entry it is.</summary>
    public static readonly string[] Words = [Test, Of, Result, Came, Amount, AsOrdered, Part, Measure, Found];

    private const string Test = "--test", Of = "--of", Result = "--result", Came = "--came", Amount = "--amount", AsOrdered = "--as-ordered", Part = "--measured", Measure = "--measure", Found = "--found";

    /// <summary>The entry that was typed; null for a day of work. A correction keeps what is not said anew.</summary>
    /// <param name="typed">Options and what follows them.</param>
    /// <param name="earlier">What it takes the place of; null for a new entry.</param>
    /// <param name="date">The day typed; the earlier entry's, else today, where none was.</param>
    /// <exception cref="LogBlanks.Wrong">What was typed wrong.</exception>
    public static Seen? Read(Dictionary<string, string> typed, Seen? earlier, DateOnly date)
    {
        string[] kinds = [.. new[] { Test, Came, Part }.Where(typed.ContainsKey)];
        if (kinds.Length > 1)
        {
            throw new LogBlanks.Wrong(Message.Of("cli.log.one-kind", ("one", kinds[0]), ("other", kinds[1])));
        }

        string Text(string word, string? before) => typed.GetValueOrDefault(word, before ?? "");
        return (earlier, kinds.FirstOrDefault()) switch
        {
            (Seen.Tested or null, Test) or (Seen.Tested, null) => earlier as Seen.Tested is var t ? new Seen.Tested(date, Text(Test, t?.Test), Text(Of, t?.Of), Text(Result, t?.Result)) : null,
            (Seen.Delivery or null, Came) or (Seen.Delivery, null) => earlier as Seen.Delivery is var d
                ? new Seen.Delivery(date, Text(Came, d?.What), Text(Amount, d?.Amount)) { AsOrdered = typed.TryGetValue(AsOrdered, out var yes) ? YesOrNo(yes) : d?.AsOrdered } : null,
            (Seen.AsBuilt or null, Part) or (Seen.AsBuilt, null) => earlier as Seen.AsBuilt is var b
                ? new Seen.AsBuilt(date, Text(Part, b?.Part), typed.TryGetValue(Measure, out var what) ? Which(what) : b?.What ?? throw Missing(Measure), typed.TryGetValue(Found, out var found) ? LogBlanks.Length(found, bareInches: true) : b?.Found ?? throw Missing(Found)) : null,
            (Seen.Day or null, null) => Words.FirstOrDefault(typed.ContainsKey) is { } stray ? throw new LogBlanks.Wrong(Message.Of("cli.log.of-what", ("option", stray))) : null,
            (_, { } kind) => throw new LogBlanks.Wrong(Message.Of("cli.log.other-kind", ("option", kind))),
            _ => throw new LogBlanks.Wrong(new Message("cli.log.cannot-correct")),
        };
    }

    private static bool YesOrNo(string text) => text.Trim().ToLowerInvariant() switch
    {
        "yes" => true,
        "no" => false,
        _ => throw new LogBlanks.Wrong(Message.Of("cli.log.no-yes", ("text", OneLine.Of(text)))),
    };

    private static Measured Which(string text) =>
        Enum.GetValues<Measured>().Where(m => string.Equals(m.ToString(), text.Trim(), StringComparison.OrdinalIgnoreCase)).Cast<Measured?>().FirstOrDefault()
        ?? throw new LogBlanks.Wrong(Message.Of("cli.log.no-measure", ("text", OneLine.Of(text))));

    private static LogBlanks.Wrong Missing(string option) => new(Message.Of("cli.log.missing", ("option", option)));
}
