using System.CommandLine;
using Clomwright.Cli.Verbs;
using Clomwright.Evidence;

namespace Clomwright.Cli;

/// <summary>The command line <c>clom</c>: one file a verb.</summary>
internal static class CommandLine
{
    /// <summary>Runs one command and returns its exit code. What is typed wrong is one sentence and <see cref="ExitCode.WrongInput"/>.</summary>
    public static async Task<int> Run(string[] arguments, Terminal terminal, CancellationToken stop)
    {
        if (Language.Asked(arguments, Environment.GetEnvironmentVariable(Language.Variable)) is not { } words)
        {
            terminal.Complain(Message.Of("cli.no-language", ("languages", new Evidence.Argument.List([.. Phrasebook.Languages.Select(l => new Evidence.Argument.Text(l))]))));
            return ExitCode.WrongInput;
        }

        terminal.Words = words;
        if (arguments.Length == 0)
        {
            return await HomeVerb.Run(HomeVerb.Documents, terminal, openBrowser: true, stop);
        }

        var root = new RootCommand(terminal.Word("cli.about"))
        {
            OpenVerb.Command(terminal),
            NewVerb.Command(terminal),
            ArrivedVerb.Command(terminal),
            CheckVerb.Command(terminal),
            FiguresVerb.Command(terminal),
            DaysVerb.Command(terminal),
            LogVerb.Command(terminal),
            PapersVerb.Command(terminal),
            ExportVerb.Command(terminal),
        };
        root.Options.Add(Language.Option(terminal));
        var parsed = root.Parse(arguments);
        if (parsed.Errors.Count > 0)
        {
            terminal.Complain(Message.Of("cli.not-understood", ("problem", parsed.Errors[0].Message)));
            return ExitCode.WrongInput;
        }

        try
        {
            return await parsed.InvokeAsync(new() { EnableDefaultExceptionHandler = false, Output = terminal.Results, Error = terminal.Complaints }, stop);
        }
        catch (OperationCanceledException)
        {
            terminal.Complain(new Message("cli.stopped"));
            return ExitCode.WrongInput;
        }
    }
}
