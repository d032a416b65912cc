using System.CommandLine;
using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Cli.Verbs;

/// <summary>What <c>clom log</c> can be told.</summary>
internal sealed class LogBlanks(Terminal terminal)
{
    private const string Lift = "--lift", Batches = "--batches", People = "--people", Hours = "--hours";

    private static readonly string[] Words =
        ["--day", "--inches", "--raised", Lift, Batches, People, Hours, "--stopped", "--done", "--who", "--rain", "--high", "--low", "--note", "--by", "--id", "--correct", "--strike", "--why", .. LogOthers.Words];

    private readonly Dictionary<string, Option<string>> options = Words.ToDictionary(
        word => word, word => new Option<string>(word) { Description = terminal.Word($"cli.log.{word[2..]}") }, StringComparer.Ordinal);

    /// <summary>All options, in the order of the help.</summary>
    public IEnumerable<Option> All => Words.Select(word => options[word]);

    /// <summary>Who writes.</summary>
    public string Author(ParseResult parsed) => parsed.GetValue(options["--by"]) ?? Environment.UserName;

    /// <summary>The id that who sends made, by which the same entry sent twice is one; null lets one be made here.</summary>
    public string? Id(ParseResult parsed) => parsed.GetValue(options["--id"]);

    /// <summary>What was typed.</summary>
    /// <returns>What was seen and which entry it corrects; or one sentence on what was typed wrong.</returns>
    public (Seen? What, string? Corrects, Message? Problem) Read(ParseResult parsed, SiteRecord record, DateOnly today)
    {
        var typed = Words.Select(word => (word, text: parsed.GetValue(options[word]))).Where(t => t.text is not null).ToDictionary(t => t.word, t => t.text!, StringComparer.Ordinal);
        try
        {
            if (typed.TryGetValue("--strike", out var struck))
            {
                return (new Seen.Struck(typed.GetValueOrDefault("--why", "")), Named(struck, record).Id, null);
            }

            var corrects = typed.TryGetValue("--correct", out var key) ? Named(key, record) : null;
            var date = typed.TryGetValue("--day", out var said) ? Date(said) : corrects?.What.On ?? today;
            return (LogOthers.Read(typed, corrects?.What, date) ?? Filled(corrects?.What as Seen.Day ?? new Seen.Day(today), typed), corrects?.Id, null);
        }
        catch (Wrong wrong)
        {
            return (null, null, wrong.What);
        }
    }

    /// <summary>The day with what was typed; a correction keeps the rest.</summary>
    private static Seen.Day Filled(Seen.Day day, Dictionary<string, string> typed)
    {
        foreach (var (word, text) in typed)
        {
            day = word switch
            {
                "--day" => day with { Date = Date(text) },
                "--inches" => day with { Raised = Length(text, bareInches: true) },
                "--raised" => day with { Raised = Length(text, bareInches: false) },
                Lift => day with { Lift = Whole(word, text) },
                Batches => day with { Batches = Number(word, text) },
                People => day with { People = Whole(word, text) },
                Hours => day with { Hours = Number(word, text) },
                "--stopped" => day with { Stopped = Stopped(text) },
                "--done" => day with { Done = List(text) },
                "--who" => day with { Who = List(text) },
                "--rain" => day with { Weather = (day.Weather ?? None) with { Rain = Length(text, bareInches: false) } },
                "--high" => day with { Weather = (day.Weather ?? None) with { High = Temperature(text) } },
                "--low" => day with { Weather = (day.Weather ?? None) with { Low = Temperature(text) } },
                "--note" => day with { Notes = text },
                _ => day,
            };
        }

        return day;
    }

    private static SeenWeather None { get; } = new(null, null, null);

    /// <summary>The entry of an id, or of a day of work.</summary>
    private static SiteEntry Named(string key, SiteRecord record) =>
        (DateOnly.TryParseExact(key, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? record.DayOf(date) : record.Find(key))
        ?? throw new Wrong(Message.Of("cli.log.no-entry", ("key", OneLine.Of(key))));

    private static DateOnly Date(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : throw new Wrong(Message.Of("cli.log.no-date", ("text", OneLine.Of(text))));

    internal static Length Length(string text, bool bareInches)
    {
        var read = bareInches ? LengthText.TryParse(text, Units.Inch, out var value, out var problem) : LengthText.TryParse(text, out value, out problem);
        return read ? value : throw new Wrong(problem!);
    }

    private static Temperature Temperature(string text) => QuantityText.TryParse(text, out Temperature value, out var problem) ? value : throw new Wrong(problem!);

    private static double Number(string word, string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value) ? value : throw new Wrong(Message.Of("cli.log.no-number", ("option", word), ("text", OneLine.Of(text))));

    private static int Whole(string word, string text) =>
        int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var value) ? value : throw new Wrong(Message.Of("cli.log.no-number", ("option", word), ("text", OneLine.Of(text))));

    private static StoppedBy Stopped(string text) =>
        Enum.GetValues<StoppedBy>().Where(s => string.Equals(s.ToString(), text, StringComparison.OrdinalIgnoreCase)).Cast<StoppedBy?>().FirstOrDefault()
        ?? throw new Wrong(Message.Of("cli.log.no-stop", ("text", OneLine.Of(text))));

    private static Sequence<string> List(string text) => text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).ToSequence();

    /// <summary>What was typed wrong.</summary>
    internal sealed class Wrong(Message what) : Exception
    {
        public Message What { get; } = what;
    }
}
