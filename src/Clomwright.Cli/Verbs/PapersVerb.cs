using System.CommandLine;
using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Papers;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Revisions;
using Clomwright.Papers.Writers;
using Clomwright.Study;

namespace Clomwright.Cli.Verbs;

/// <summary><c>clom papers FILE --out DIR [--issue]</c>: the site folder and the office set, each as one PDF, and every sheet as SVG.</summary>
internal static class PapersVerb
{
    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string?>("FILE") { Description = terminal.Word("cli.file"), Arity = ArgumentArity.ZeroOrOne };
        var folder = new Option<string>("--out") { Description = terminal.Word("cli.papers.out"), Required = true };
        var date = new Option<string?>("--date") { Description = terminal.Word("cli.papers.date") };
        var paper = new Option<string?>("--paper") { Description = terminal.Word("cli.papers.paper") };
        paper.AcceptOnlyFromAmong([.. Enum.GetNames<PaperSize>().Select(name => name.ToLowerInvariant())]);
        var deep = new Option<bool>("--deep") { Description = terminal.Word("cli.papers.deep") };
        var issue = new Option<bool>("--issue") { Description = terminal.Word("cli.papers.issue") };
        var to = new Option<string>("--to") { Description = terminal.Word("cli.papers.to"), DefaultValueFactory = _ => terminal.Word("cli.papers.to-site") };
        var by = new Option<string>("--by") { Description = terminal.Word("cli.papers.by"), DefaultValueFactory = _ => Environment.UserName };
        var blank = new Option<bool>("--blank") { Description = terminal.Word("cli.papers.blank") };
        var metric = new Option<bool>("--metric") { Description = terminal.Word("cli.papers.metric") };
        var command = new Command("papers", terminal.Word("cli.papers")) { file, folder, date, paper, deep, issue, to, by, blank, metric };
        command.SetAction(async (parsed, stop) =>
        {
            if (DateOf(parsed.GetValue(date), terminal) is not { } day)
            {
                return ExitCode.WrongInput;
            }

            PaperSize? size = parsed.GetValue(paper) is { } asked ? Enum.Parse<PaperSize>(asked, ignoreCase: true) : null;
            if (parsed.GetValue(blank))
            {
                UnitSystem? units = parsed.GetValue(metric) ? UnitSystem.Metric : null;
                return Blank(new PaperOptions(day) { Paper = size ?? PaperOptions.Usual(units ?? UnitSystem.Imperial), Language = terminal.Words.Language, Units = units }, parsed.GetValue(folder)!, terminal);
            }

            if (parsed.GetValue(file) is not { } path)
            {
                return Refused(new Message("cli.papers.no-file"), terminal);
            }

            if (RecordInput.Study(path, day, terminal, parsed.GetValue(deep)) is not { } study)
            {
                return ExitCode.WrongInput;
            }

            var record = study.Options.Record;
            var options = new PaperOptions(day)
            {
                Paper = size ?? PaperOptions.Usual(study.House.Units), Planner = Rota.FromDays.Of, Language = terminal.Words.Language,
                Issued = record.Issues, Revision = parsed.GetValue(issue) ? Letters.Next(record) : null,
            };
            await Patience.Search(study, terminal, stop);
            var set = FromStudy.Set(study, options);
            var parts = await Patience.For(() => Drawn(set, stop), stop);
            var numbered = parts.SelectMany(part => part.Sheets);
            OutFile[] files = [.. parts.SelectMany(part => part.Pictures), .. parts.Select(part => part.Document)];
            if (options.Revision is null)
            {
                return Write(files, parsed.GetValue(folder)!) is { } refused ? Refused(refused, terminal) : Done(numbered, options, parsed.GetValue(folder)!, terminal);
            }

            var handed = new Issuing(path, parsed.GetValue(by)!, parsed.GetValue(to)!, terminal);
            return handed.Out(numbered, options, () => Write(files, parsed.GetValue(folder)!)) is { } problem
                ? Refused(problem, terminal) : Done(numbered, options, parsed.GetValue(folder)!, terminal);
        });
        return command;
    }

    private static DateOnly? DateOf(string? text, Terminal terminal)
    {
        if (text is null)
        {
            return terminal.Today;
        }

        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            return date;
        }

        terminal.Complain(Message.Of("cli.papers.bad-date", ("text", text)));
        return null;
    }

    /// <summary>A file to be written.</summary>
    private sealed record OutFile(string Name, byte[] Bytes);

    /// <summary>One part of the papers, drawn and in the form of its files.</summary>
    private sealed record Part(Sequence<Sheet> Sheets, OutFile Document, IReadOnlyList<OutFile> Pictures);

    /// <summary>Everything is drawn before anything is written: what is stopped half-way leaves only whole files. The three parts know nothing of each other and are made side by side.</summary>
    private static Part[] Drawn(PaperSet set, CancellationToken stop)
    {
        Part Of(string name, Func<PaperSet, Sequence<Sheet>> draw, Func<PaperSet, Sequence<Sheet>>? pictures = null)
        {
            var sheets = draw(set);
            OutFile Picture(Sheet sheet)
            {
                stop.ThrowIfCancellationRequested();
                return new($"{sheet.Key}.svg", System.Text.Encoding.UTF8.GetBytes(SvgWriter.Write(sheet)));
            }

            OutFile[] drawn = [];
            byte[] document = [];
            Parallel.Invoke(new ParallelOptions { CancellationToken = stop },
                () => drawn = [.. (pictures?.Invoke(set) ?? sheets).Select(Picture)],
                () => document = PdfWriter.Write(sheets, set.House.Name, set.Options.Date));
            return new(sheets, new($"{set.House.Id}-{name}.pdf", document), drawn);
        }

        Func<Part>[] parts = [() => Of("site", Book.Site), () => Of("office", Book.Office), () => Of("templates", TemplateBook.Of, TemplateBook.Whole)];
        var made = new Part[parts.Length];
        try
        {
            Parallel.For(0, parts.Length, new ParallelOptions { CancellationToken = stop }, i => made[i] = parts[i]());
        }
        catch (AggregateException several) when (several.InnerExceptions.All(e => e is OperationCanceledException))
        {
            throw new OperationCanceledException(stop);
        }

        return made;
    }

    /// <summary>Writes them, some at a time; returns what stood in the way.</summary>
    private static Message? Write(IReadOnlyList<OutFile> files, string folder) =>
        files.EachBesideOthers(f => OutputFile.Write(Path.Combine(folder, f.Name), f.Bytes)?.What).FirstOrDefault(refused => refused is not null);

    private static int Refused(Message refused, Terminal terminal)
    {
        terminal.Complain(refused);
        return ExitCode.WrongInput;
    }

    private static int Done(IEnumerable<Sheet> sheets, PaperOptions options, string folder, Terminal terminal)
    {
        terminal.Say(Message.Of("cli.papers.done", ("n", sheets.Count()), ("folder", folder)));
        Issuing.SayChanges(sheets, options, terminal);
        return ExitCode.Met;
    }

    /// <summary>Sheets to fill in by hand, one PDF: no house is needed.</summary>
    private static int Blank(PaperOptions options, string folder, Terminal terminal)
    {
        var sheets = BlankBook.Of(options);
        if (Write([new("blank-sheets.pdf", PdfWriter.Write(sheets, terminal.Word("cli.papers.blank-title"), options.Date))], folder) is { } refused)
        {
            return Refused(refused, terminal);
        }

        terminal.Say(Message.Of("cli.papers.blank-done", ("n", sheets.Count), ("folder", folder)));
        return ExitCode.Met;
    }
}
