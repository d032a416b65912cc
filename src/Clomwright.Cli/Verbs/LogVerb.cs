using System.CommandLine;
using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Record;
using Clomwright.Study;

namespace Clomwright.Cli.Verbs;

/// <summary><c>clom log FILE</c>: prints the site record; with something to say, writes it down.</summary>
internal static class LogVerb
{
    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = terminal.Word("cli.file") };
        var blanks = new LogBlanks(terminal);
        var command = new Command("log", terminal.Word("cli.log")) { file };
        blanks.All.ToList().ForEach(command.Add);
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(file)!;
            if (RecordInput.Study(path, null, terminal) is not { } study)
            {
                return ExitCode.WrongInput;
            }

            if (!blanks.All.Any(option => parsed.GetResult(option) is { Implicit: false }))
            {
                Print(study, terminal);
                return ExitCode.Met;
            }

            var (what, corrects, problem) = blanks.Read(parsed, study.Options.Record, terminal.Today);
            problem ??= DayWords.Wrong(study, what!);
            return problem is null ? Write(path, study, new SiteEntry(blanks.Id(parsed) ?? RecordInput.NewId(), terminal.Now, blanks.Author(parsed), what!) { Corrects = corrects }, terminal) : Refused(problem, study, terminal);
        });
        return command;
    }

    private static int Write(string path, HouseStudy study, SiteEntry entry, Terminal terminal)
    {
        var units = study.House.Units;
        if (new SqliteRecord(SqliteRecord.Beside(path)).Append(entry).Problem is { } problem)
        {
            return Refused(problem, study, terminal);
        }

        terminal.Say(
            entry.What switch
            {
                Seen.Day day => Message.Of("cli.log.written", ("date", day.Date), ("day", DayWords.Of(day)), ("id", entry.Id)),
                Seen.Struck => Message.Of("cli.log.struck", ("corrects", entry.Corrects!), ("id", entry.Id)),
                var other => Message.Of("cli.log.written-other", ("what", DayWords.Of(other)), ("id", entry.Id)),
            },
            units);
        if (entry.What.On > terminal.Today)
        {
            terminal.Say(Message.Of("cli.log.ahead", ("date", entry.What.On.Value), ("today", terminal.Today)), units);
        }

        return ExitCode.Met;
    }

    private static int Refused(Message problem, HouseStudy study, Terminal terminal)
    {
        terminal.Complain(Message.Of("cli.log.refused", ("problem", problem)), study.House.Units);
        return ExitCode.WrongInput;
    }

    private static void Print(HouseStudy study, Terminal terminal)
    {
        var (record, units) = (study.Options.Record, study.House.Units);
        string Say(Message message) => terminal.Words.Say(message, units);
        if (record.Entries.Count == 0)
        {
            terminal.Say(new Message("cli.log.empty"), units);
            return;
        }

        terminal.Say(Message.Of("cli.log.head", ("name", study.House.Name), ("n", record.Standing.Count), ("corrected", record.Entries.Count - record.Standing.Count)), units);
        terminal.Results.WriteLine();
        foreach (var entry in record.Standing.OrderBy(e => e.What.On))
        {
            var what = Say(DayWords.Of(entry.What));
            Lines($"{entry.What.On:yyyy-MM-dd}  {entry.Id}  ", what, terminal.Results);
        }

        if (DayWords.Height(study, record) is { } height)
        {
            terminal.Results.WriteLine();
            terminal.Say(height, units);
        }
    }

    /// <summary>Words behind a heading, broken at 80 letters.</summary>
    private static void Lines(string heading, string words, TextWriter to)
    {
        const int wide = 80;
        var line = heading;
        var first = true;
        foreach (var word in words.Split(' '))
        {
            if (line.Length + word.Length > wide && !first)
            {
                to.WriteLine(line.TrimEnd());
                line = new string(' ', heading.Length);
            }

            line += word + " ";
            first = false;
        }

        to.WriteLine(line.TrimEnd());
    }
}
