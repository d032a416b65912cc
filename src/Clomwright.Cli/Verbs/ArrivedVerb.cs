using System.CommandLine;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Rules;
using Clomwright.Study;
using Clomwright.Study.Arrivals;

namespace Clomwright.Cli.Verbs;

/// <summary><c>clom arrived FILE --opening NAME --width W --height H</c>: a frame came in another size; what that breaks, and three ways to go on.</summary>
internal static class ArrivedVerb
{
    private static readonly (string Word, WayKind Kind)[] Takes = [("as-it-came", WayKind.AsItCame), ("shift", WayKind.Shift), ("sill", WayKind.Sill)];

    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = terminal.Word("cli.file") };
        var opening = new Option<string>("--opening") { Description = terminal.Word("cli.arrived.opening"), Required = true };
        var width = new Option<string>("--width") { Description = terminal.Word("cli.arrived.width"), Required = true };
        var height = new Option<string>("--height") { Description = terminal.Word("cli.arrived.height"), Required = true };
        var take = new Option<string?>("--take") { Description = terminal.Word("cli.arrived.take") };
        var command = new Command("arrived", terminal.Word("cli.arrived")) { file, opening, width, height, take };
        command.SetAction(async (parsed, stop) =>
        {
            var path = parsed.GetValue(file)!;
            if (HouseInput.Study(path, StudyOptions.Quick, terminal) is not { } study)
            {
                return ExitCode.WrongInput;
            }

            var taken = parsed.GetValue(take);
            if (taken is not null && Takes.All(t => t.Word != taken))
            {
                terminal.Complain(Message.Of("cli.arrived.no-way", ("text", taken)));
                return ExitCode.WrongInput;
            }

            if (Read(parsed.GetValue(width)!, study, terminal) is not { } wide || Read(parsed.GetValue(height)!, study, terminal) is not { } high)
            {
                return ExitCode.WrongInput;
            }

            var (arrival, problem) = await Patience.For(() => ArrivalOf.Of(study, parsed.GetValue(opening)!, wide, high), stop);
            if (arrival is null)
            {
                terminal.Complain(problem!, study.House.Units);
                return ExitCode.WrongInput;
            }

            Say(arrival, study, terminal);
            return taken is null ? ExitCode.Met : Write(path, arrival.Ways.FirstOrDefault(w => w.Kind == Takes.First(t => t.Word == taken).Kind), terminal);
        });
        return command;
    }

    private static Length? Read(string text, HouseStudy study, Terminal terminal)
    {
        if (LengthText.TryParse(text, study.House.Units == UnitSystem.Imperial ? Units.Inch : Units.Millimetre, out var length, out var problem))
        {
            return length;
        }

        terminal.Complain(problem!);
        return null;
    }

    private static void Say(Arrival arrival, HouseStudy study, Terminal terminal)
    {
        var units = study.House.Units;
        terminal.Say(Message.Of("cli.arrived.head", ("name", arrival.Drawn.Name), ("width", arrival.Drawn.Width), ("height", arrival.Drawn.Height), ("wide", arrival.Width), ("high", arrival.Height)), units);
        foreach (var way in arrival.Ways)
        {
            terminal.Results.WriteLine();
            terminal.Say(Message.Of(way.BreaksNothing ? "cli.arrived.way-good" : "cli.arrived.way", ("what", way.What), ("n", way.Breaks.Count)), units);
            if (way.Wrong is { } wrong)
            {
                terminal.Say(Message.Of("cli.check.note", ("note", wrong)), units);
            }

            foreach (var finding in way.Breaks)
            {
                terminal.Say(Message.Of("cli.check.line", ("finding", Sentences.Of(finding))), units);
            }
        }

        terminal.Results.WriteLine();
        terminal.Say(new Message("cli.no-substitute"), units);
    }

    /// <summary>Only the lines of the opening change in the file; where it cannot be written nothing is.</summary>
    private static int Write(string path, WayOn? way, Terminal terminal)
    {
        if (way is not { Wrong: null })
        {
            terminal.Complain(way?.Wrong is { } wrong ? Message.Of("cli.arrived.not-taken", ("why", wrong)) : new Message("cli.arrived.no-such-way"));
            return ExitCode.WrongInput;
        }

        var reading = HouseFile.Read(path);
        var (_, problem) = new HouseFile(path, reading.Document!).Save(reading.Document!.With(way.After));
        if (problem is not null)
        {
            terminal.Complain(problem.What);
            return ExitCode.WrongInput;
        }

        terminal.Say(Message.Of("cli.arrived.taken", ("what", way.What)));
        return ExitCode.Met;
    }
}
