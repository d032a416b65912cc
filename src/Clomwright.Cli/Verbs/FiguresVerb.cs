using System.CommandLine;
using Clomwright.Study;

namespace Clomwright.Cli.Verbs;

/// <summary><c>clom figures FILE --json</c>: every computed number, for other programs.</summary>
internal static class FiguresVerb
{
    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = terminal.Word("cli.file") };
        var json = new Option<bool>("--json") { Description = terminal.Word("cli.figures.json") };
        var deep = new Option<bool>("--deep") { Description = terminal.Word("cli.figures.deep") };
        var command = new Command("figures", terminal.Word("cli.figures")) { file, json, deep };
        command.SetAction(async (parsed, stop) =>
        {
            if (RecordInput.Study(parsed.GetValue(file)!, null, terminal, parsed.GetValue(deep)) is not { } study)
            {
                return ExitCode.WrongInput;
            }

            await Patience.Search(study, terminal, stop);
            var figures = await Patience.For(() => FiguresOf.House(study), stop);
            terminal.Results.WriteLine(parsed.GetValue(json) ? FigureJson.Write(figures) : FigureLines.Write(figures, terminal.Words, study.House.Units));
            return ExitCode.Met;
        });
        return command;
    }
}
