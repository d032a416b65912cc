using System.CommandLine;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;

namespace Clomwright.Cli.Verbs;

/// <summary><c>clom new FILE</c>: writes a small complete house to start from. A file that is there is never written over.</summary>
internal static class NewVerb
{
    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = terminal.Word("cli.new.file") };
        var command = new Command("new", terminal.Word("cli.new")) { file };
        command.SetAction(parsed => Write(parsed.GetValue(file)!, terminal));
        return command;
    }

    private static int Write(string path, Terminal terminal)
    {
        if (HouseFile.Create(path, StarterHouse.Make()).Problem is { } refused)
        {
            terminal.Complain(refused.What);
            return ExitCode.WrongInput;
        }

        terminal.Say(Message.Of("cli.new.done", ("file", path)));
        return ExitCode.Met;
    }
}
