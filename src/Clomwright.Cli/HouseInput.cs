using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Study;

namespace Clomwright.Cli;

/// <summary>Reads the house file that a verb is asked about.</summary>
internal static class HouseInput
{
    /// <summary>The study of the house in a file, or null after each thing wrong with it was said in one sentence with its place.</summary>
    public static HouseStudy? Study(string path, StudyOptions options, Terminal terminal)
    {
        var reading = HouseFile.Read(path);
        var study = reading.House is { } house ? HouseStudy.Of(house, options) : null;
        var errors = reading.Diagnostics.Concat(study?.Geometry.Diagnostics.Select(reading.Document!.InFile) ?? [])
            .Where(d => d.Severity == Severity.Error).ToList();
        foreach (var wrong in errors)
        {
            terminal.Complain(Sentence(path, reading.Document, wrong));
        }

        return errors.Count == 0 ? study : null;
    }

    private static Message Sentence(string path, HouseDocument? document, Diagnostic wrong)
    {
        if (document is null || wrong.Path.Length == 0)
        {
            return Message.Of("cli.wrong", ("file", path), ("what", wrong.What));
        }

        var at = document.PositionOf(wrong.Path);
        return Message.Of("cli.wrong-at", ("file", path), ("line", at.Line), ("path", wrong.Path), ("what", wrong.What));
    }
}
