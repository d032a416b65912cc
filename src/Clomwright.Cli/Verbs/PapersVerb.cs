using System.CommandLine;
using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Papers;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Writers;
using Clomwright.Study;

namespace Clomwright.Cli.Verbs;

/// <summary><c>clom papers FILE --out DIR</c>: the site folder and the office set, each as one PDF, and every sheet as SVG.</summary>
internal static class PapersVerb
{
    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = terminal.Word("cli.file") };
        var folder = new Option<string>("--out") { Description = terminal.Word("cli.papers.out"), Required = true };
        var date = new Option<string?>("--date") { Description = terminal.Word("cli.papers.date") };
        var paper = new Option<string>("--paper") { Description = terminal.Word("cli.papers.paper"), DefaultValueFactory = _ => "a4" };
        paper.AcceptOnlyFromAmong([.. Enum.GetNames<PaperSize>().Select(name => name.ToLowerInvariant())]);
        var deep = new Option<bool>("--deep") { Description = terminal.Word("cli.papers.deep") };
        var command = new Command("papers", terminal.Word("cli.papers")) { file, folder, date, paper, deep };
        command.SetAction(async (parsed, stop) =>
        {
            if (DateOf(parsed.GetValue(date), terminal) is not { } day)
            {
                return ExitCode.WrongInput;
            }

            var options = new PaperOptions(day) { Paper = Enum.Parse<PaperSize>(parsed.GetValue(paper)!, ignoreCase: true), Planner = Rota.FromDays.Of, Language = terminal.Words.Language };
            if (HouseInput.Study(parsed.GetValue(file)!, new StudyOptions(parsed.GetValue(deep)), terminal) is not { } study)
            {
                return ExitCode.WrongInput;
            }

            await Patience.Search(study, terminal, stop);
            var set = FromStudy.Set(study, options);
            var (site, office) = await Patience.For(() => (Book.Site(set), Book.Office(set)), stop);
            var templates = await Patience.For(() => (Tiles: TemplateBook.Of(set), Whole: TemplateBook.Whole(set)), stop);
            return Write(study, site, office, templates, options, parsed.GetValue(folder)!, terminal, stop);
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

    /// <summary>Everything is drawn before anything is written: what is stopped half-way leaves only whole files.</summary>
    private static int Write(HouseStudy study, Sequence<Sheet> site, Sequence<Sheet> office, (Sequence<Sheet> Tiles, Sequence<Sheet> Whole) templates, PaperOptions options, string folder, Terminal terminal, CancellationToken stop)
    {
        var files = site.Concat(office).Concat(templates.Whole).Select(sheet => ($"{sheet.Key}.svg", (Func<byte[]>)(() => System.Text.Encoding.UTF8.GetBytes(SvgWriter.Write(sheet)))))
            .Append(($"{study.House.Id}-site.pdf", () => PdfWriter.Write(site, study.House.Name, options.Date)))
            .Append(($"{study.House.Id}-office.pdf", () => PdfWriter.Write(office, study.House.Name, options.Date)))
            .Append(($"{study.House.Id}-templates.pdf", () => PdfWriter.Write(templates.Tiles, study.House.Name, options.Date))).ToList();
        foreach (var (name, bytes) in files)
        {
            stop.ThrowIfCancellationRequested();
            if (OutputFile.Write(Path.Combine(folder, name), bytes()) is { } refused)
            {
                terminal.Complain(refused.What);
                return ExitCode.WrongInput;
            }
        }

        terminal.Say(Message.Of("cli.papers.done", ("n", site.Count + office.Count), ("folder", folder)));
        return ExitCode.Met;
    }
}
