using System.CommandLine;
using System.Text;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Papers;
using Clomwright.Papers.Writers;
using Clomwright.Study;

namespace Clomwright.Cli.Verbs;

/// <summary><c>clom export FILE --as ics --out F</c>: the days of a job for a calendar program.</summary>
internal static class ExportVerb
{
    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = terminal.Word("cli.file") };
        var format = new Option<string>("--as") { Description = terminal.Word("cli.export.as"), Required = true };
        format.AcceptOnlyFromAmong("ics");
        var target = new Option<string>("--out") { Description = terminal.Word("cli.export.out"), Required = true };
        var command = new Command("export", terminal.Word("cli.export")) { file, format, target };
        command.SetAction(async (parsed, stop) => HouseInput.Study(parsed.GetValue(file)!, StudyOptions.Quick, terminal) is { } study
            ? await Calendar(study, parsed.GetValue(target)!, terminal, stop) : ExitCode.WrongInput);
        return command;
    }

    private static async Task<int> Calendar(HouseStudy study, string target, Terminal terminal, CancellationToken stop)
    {
        var days = await Patience.Watching("cli.drawing", study.DaysFor, terminal, stop);
        if (days.Value is not { } forecast)
        {
            terminal.Say(Message.Of("cli.days.not", ("why", days.NotChecked!)), study.House.Units);
            return ExitCode.NotChecked;
        }

        var entries = DaysCalendar.Of(study, forecast);
        if (OutputFile.Write(target, Encoding.UTF8.GetBytes(CalendarWriter.Write(study.House.Id, study.House.Name, entries, terminal.Today))) is { } refused)
        {
            terminal.Complain(refused.What);
            return ExitCode.WrongInput;
        }

        terminal.Say(Message.Of("cli.export.done", ("n", entries.Count), ("file", target)));
        return ExitCode.Met;
    }
}
