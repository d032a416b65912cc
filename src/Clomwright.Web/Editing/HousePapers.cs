using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Revisions;
using Clomwright.Study;

namespace Clomwright.Web.Editing;

/// <summary>The papers of an open house as it is now: site folder and office set.</summary>
internal sealed class HousePapers
{
    private const double MillimetresPerInch = 25.4;

    private static readonly string[] Piles = ["pocket", "lifts", "drawings", "openings", "orders", "findings", "office", "calculations"];

    private readonly HouseStudy study;
    private readonly bool saved;
    private readonly PaperSize paper;
    private readonly string? letter;
    private readonly Lazy<Sequence<Sheet>> templates;

    /// <param name="study">With its record up to the moment of these papers.</param>
    /// <param name="saved">The file says the same.</param>
    /// <param name="paper">Which paper; null takes the usual one for the house's units.</param>
    /// <param name="date">The date that they carry.</param>
    /// <param name="letter">The letter that they are handed out as; null where they are not.</param>
    public HousePapers(HouseStudy study, bool saved, PaperSize? paper, DateOnly date, string? letter = null)
    {
        (this.study, this.saved, Date, this.letter) = (study, saved, date, letter);
        this.paper = paper ?? PaperOptions.Usual(study.House.Units);
        var set = FromStudy.Set(study, new PaperOptions(date) { Paper = this.paper, Planner = Rota.FromDays.Of, Language = Words.Book.Language, Issued = study.Options.Record.Issues, Revision = letter });
        (Site, Office) = (Book.Site(set), Book.Office(set));
        templates = new Lazy<Sequence<Sheet>>(() => TemplateBook.Of(set));
    }

    /// <summary>What the crew carries.</summary>
    public Sequence<Sheet> Site { get; }

    /// <summary>What the office asks for.</summary>
    public Sequence<Sheet> Office { get; }

    /// <summary>Full size, cut into tiles; drawn when they are asked for.</summary>
    public Sequence<Sheet> Templates => templates.Value;

    public DateOnly Date { get; }

    public IEnumerable<Sheet> Sheets => Site.Concat(Office);

    /// <summary>Every sheet that a set is handed out with.</summary>
    public IEnumerable<Sheet> All => Sheets.Concat(Templates);

    /// <summary>Those that show something else than what was handed out before, or were not in it.</summary>
    public IEnumerable<Sheet> Changed => All.Where(IsOther);

    /// <summary>What is drawn on every sheet; nothing where no letters are asked for.</summary>
    public Sequence<DrawnSheet> Drawn => SetRevision.DrawnOn(All);

    /// <summary>Which paper.</summary>
    public PaperSize Paper => paper;

    public string Title => study.House.Name;

    /// <summary>The book as the page lists it: what the crew carries first.</summary>
    public PapersState State => new(
        study.House.Name,
        letter is null ? Words.Say(saved ? "web.papers.of-file" : "web.papers.unsaved", ("date", Date)) : Words.Say("web.papers.of-set", ("letter", letter), ("date", Date)),
        paper.ToString(),
        Enum.GetNames<PaperSize>(),
        [.. Site.Select(s => Card(s, Group(s.Key))).Concat(Office.Select(s => Card(s, OfficeGroup(s.Key)))).OrderBy(card => Array.IndexOf(Piles, card.Group))]);

    private SheetCard Card(Sheet sheet, string group) => new(sheet.Key, sheet.Title, Size(sheet), group, sheet.Width, sheet.Height, IsOther(sheet));

    /// <summary>A page that only the list of changes made necessary compares with nothing.</summary>
    private bool IsOther(Sheet sheet) => study.Options.Record.Issues.Count > 0 && sheet.Revision is not { State: SheetState.Same };

    private string Size(Sheet sheet) => paper is PaperSize.Letter or PaperSize.Tabloid or PaperSize.ArchD
        ? Words.Say("web.papers.inches", ("width", Amount.Number(sheet.Width / MillimetresPerInch)), ("height", Amount.Number(sheet.Height / MillimetresPerInch)))
        : Words.Say("web.papers.millimetres", ("width", Amount.Number(sheet.Width)), ("height", Amount.Number(sheet.Height)));

    private static string OfficeGroup(string key) => key.StartsWith("calculations", StringComparison.Ordinal) ? "calculations" : "office";

    /// <summary>Which pile a sheet of the site folder lies on.</summary>
    private static string Group(string key) =>
        key.StartsWith("lift-", StringComparison.Ordinal) ? "lifts"
        : key.StartsWith("opening-", StringComparison.Ordinal) ? "openings"
        : key.StartsWith("order-", StringComparison.Ordinal) || key.StartsWith("costs", StringComparison.Ordinal) ? "orders"
        : key is "emergency-card" or "safety-card" || key.StartsWith("handover", StringComparison.Ordinal) || key.StartsWith("pocket-card", StringComparison.Ordinal) ? "pocket"
        : key.StartsWith("cover", StringComparison.Ordinal) || key.StartsWith("findings", StringComparison.Ordinal) ? "findings"
        : "drawings";
}

/// <summary>The papers of a house as the page lists them.</summary>
internal sealed record PapersState(string Name, string Note, string Paper, IReadOnlyList<string> Sizes, IReadOnlyList<SheetCard> Sheets);

/// <summary>One sheet; width and height of its paper in mm; whether it is another one than was handed out last.</summary>
internal sealed record SheetCard(string Key, string Title, string Size, string Group, double Width, double Height, bool Changed);
