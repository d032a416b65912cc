using System.CommandLine;
using System.Text;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Geometry.Solids;
using Clomwright.Papers;
using Clomwright.Papers.Exports;
using Clomwright.Papers.Writers;
using Clomwright.Papers.Writers.Dxf;
using Clomwright.Study;

namespace Clomwright.Cli.Verbs;

/// <summary><c>clom export FILE --as dxf|glb|xlsx|csv|ics --out F</c>: drawings, bodies, tables and days of a house for other programs. The same house gives the same bytes.</summary>
internal static class ExportVerb
{
    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = terminal.Word("cli.file") };
        var format = new Option<string>("--as") { Description = terminal.Word("cli.export.as"), Required = true };
        var table = new Option<string>("--of") { Description = terminal.Word("cli.export.of"), DefaultValueFactory = _ => "orders" };
        var target = new Option<string>("--out") { Description = terminal.Word("cli.export.out"), Required = true };
        var command = new Command("export", terminal.Word("cli.export")) { file, format, table, target };
        command.SetAction(async (parsed, stop) =>
        {
            var (asked, of) = (parsed.GetValue(format)!, parsed.GetValue(table)!);
            if (!Formats.Contains(asked) || !HouseTables.Keys.Contains(of))
            {
                terminal.Complain(!Formats.Contains(asked) ? Unknown("cli.export.unknown", asked, Formats) : Unknown("cli.export.no-table", of, HouseTables.Keys));
                return ExitCode.WrongInput;
            }

            if (HouseInput.Study(parsed.GetValue(file)!, StudyOptions.Quick, terminal) is not { } study)
            {
                return ExitCode.WrongInput;
            }

            var to = parsed.GetValue(target)!;
            return asked switch
            {
                "ics" => await Calendar(study, to, terminal, stop),
                "dxf" => await Written("cli.export.drawings", () => Encoding.UTF8.GetBytes(DxfWriter.Write(HouseDrawings.Of(Set(study, terminal)), study.House.Units)), to, terminal, stop),
                "glb" => await Written("cli.export.bodies", () => GlbWriter.Write(study.House.Name, Bodies(study)), to, terminal, stop),
                "xlsx" => await Written("cli.export.tables", () => XlsxWriter.Write(HouseTables.Of(Checked(study, terminal))), to, terminal, stop),
                _ => await Written("cli.export.table", () => Encoding.UTF8.GetBytes(CsvWriter.Write(HouseTables.Of(Checked(study, terminal)).First(t => t.Key == of))), to, terminal, stop),
            };
        });
        return command;
    }

    private static readonly Sequence<string> Formats = ["dxf", "glb", "xlsx", "csv", "ics"];

    private static Message Unknown(string said, string asked, Sequence<string> known) =>
        Message.Of(said, ("asked", OneLine.Of(asked)), ("known", new Evidence.Argument.List(known.Select(k => (Evidence.Argument)k).ToSequence())));

    private static PaperSet Set(HouseStudy study, Terminal terminal) => new()
    {
        Geometry = study.Geometry, Quantities = study.Quantities, SettingOut = study.SettingOut, Roof = study.House.Roof is null ? null : study.Roof,
        Options = new PaperOptions(terminal.Today) { Language = terminal.Words.Language },
    };

    /// <summary>With all that the rules say, the model of the whole wall solved.</summary>
    private static PaperSet Checked(HouseStudy study, Terminal terminal) => Set(study, terminal) with { Findings = study.AllFindings };

    private static SolidMesh[] Bodies(HouseStudy study) =>
        [.. HouseSolids.Of(study.Geometry), .. study.House.Roof is null ? [] : RoofSolids.Of(study.Geometry, study.Roof).Solids];

    /// <summary>Drawn whole before a byte is written.</summary>
    private static async Task<int> Written(string said, Func<byte[]> draw, string target, Terminal terminal, CancellationToken stop)
    {
        var bytes = await Patience.For(draw, stop);
        if (OutputFile.Write(target, bytes) is { } refused)
        {
            terminal.Complain(refused.What);
            return ExitCode.WrongInput;
        }

        terminal.Say(Message.Of(said, ("file", target)));
        return ExitCode.Met;
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
