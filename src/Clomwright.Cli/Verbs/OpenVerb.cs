using System.CommandLine;
using Clomwright.Evidence;
using Clomwright.Web;

namespace Clomwright.Cli.Verbs;

/// <summary><c>clom open [FILE or FOLDER]</c>: starts the workbench on a local address and opens the browser.</summary>
internal static class OpenVerb
{
    public static Command Command(Terminal terminal)
    {
        var place = new Argument<string>("FILE or FOLDER") { Description = terminal.Word("cli.open.place"), DefaultValueFactory = _ => "." };
        var port = new Option<int>("--port") { Description = terminal.Word("cli.open.port") };
        var quiet = new Option<bool>("--no-browser") { Description = terminal.Word("cli.open.no-browser") };
        var share = new Option<bool>("--share") { Description = terminal.Word("cli.open.share") };
        var greet = new Option<bool>("--greet") { Description = terminal.Word("cli.open.greet") };
        var command = new Command("open", terminal.Word("cli.open")) { place, port, quiet, share, greet };
        command.SetAction((parsed, stop) =>
        {
            var where = parsed.GetValue(place)!;
            if (!File.Exists(where) && !Directory.Exists(where))
            {
                terminal.Complain(Message.Of("cli.no-file", ("file", where)));
                return Task.FromResult(ExitCode.WrongInput);
            }

            return Workbench.Run(
                WorkbenchOptions.For(where) with { Port = parsed.GetValue(port), OpenBrowser = !parsed.GetValue(quiet), Share = parsed.GetValue(share), Greet = parsed.GetValue(greet), Language = Language.Chosen(parsed, terminal) },
                terminal.Results.WriteLine,
                stop);
        });
        return command;
    }
}
