using System.Reflection;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Web;

namespace Clomwright.Cli.Verbs;

/// <summary><c>clom</c> with nothing behind it, as a double click starts it: the workbench on a plain folder of houses among the user's documents.</summary>
internal static class HomeVerb
{
    /// <summary>The folder's name.</summary>
    public const string Folder = "Clomwright houses";

    private const string Examples = "examples/";

    /// <summary>Where this user's documents are; the user's own folder where the system knows no such place.</summary>
    public static string Documents => Environment.GetFolderPath(Environment.SpecialFolder.MyDocuments, Environment.SpecialFolderOption.DoNotVerify) is { Length: > 0 } documents
        ? documents : Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);

    /// <summary>Makes the folder, with the example houses in it, where there is none; then opens the workbench on it.</summary>
    public static async Task<int> Run(string documents, Terminal terminal, bool openBrowser, CancellationToken stop)
    {
        var folder = Path.Combine(documents, Folder);
        var first = !Directory.Exists(folder);
        if (Made(folder, terminal) is { } problem)
        {
            terminal.Complain(problem);
            return Stay(ExitCode.WrongInput, terminal);
        }

        terminal.Say(new Message("cli.home.stay"));
        var code = await Workbench.Run(new WorkbenchOptions { Folder = folder, OpenBrowser = openBrowser, Greet = first, Language = Language.Chosen(null, terminal) }, terminal.Results.WriteLine, stop);
        return code == ExitCode.Met ? code : Stay(code, terminal);
    }

    /// <summary>A folder that is there is left as it is, empty or not.</summary>
    private static Message? Made(string folder, Terminal terminal)
    {
        if (Directory.Exists(folder))
        {
            terminal.Say(Message.Of("cli.home.folder", ("folder", folder)));
            return null;
        }

        try
        {
            Directory.CreateDirectory(folder);
        }
        catch (Exception wrong) when (wrong is IOException or UnauthorizedAccessException)
        {
            return Message.Of("cli.home.no-folder", ("folder", folder), ("why", OneLine.Of(wrong.Message)));
        }

        var assembly = Assembly.GetExecutingAssembly();
        var names = assembly.GetManifestResourceNames().Where(name => name.StartsWith(Examples, StringComparison.Ordinal)).Order(StringComparer.Ordinal).ToList();
        foreach (var name in names)
        {
            using var stream = assembly.GetManifestResourceStream(name)!;
            var bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            if (KeptFile.Write(Path.Combine(folder, name[Examples.Length..]), bytes) is { } refused)
            {
                return refused.What;
            }
        }

        terminal.Say(Message.Of("cli.home.examples", ("n", names.Count), ("folder", folder)));
        return null;
    }

    /// <summary>A window that closes at once would take the sentence with it.</summary>
    private static int Stay(int code, Terminal terminal)
    {
        if (terminal.Watched is not null && !Console.IsInputRedirected)
        {
            terminal.Say(new Message("cli.home.wait"));
            Console.ReadLine();
        }

        return code;
    }
}
