using Clomwright.Evidence;
using Clomwright.Papers;
using Clomwright.Papers.Drawing;
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
    private readonly Lazy<Sequence<Sheet>> templates;

    public HousePapers(HouseStudy study, bool saved, PaperSize? paper, DateOnly date)
    {
        (this.study, this.saved, Date) = (study, saved, date);
        this.paper = paper ?? Usual(study.House.Units);
        var set = FromStudy.Set(study, new PaperOptions(date) { Paper = this.paper, Planner = Rota.FromDays.Of, Language = Words.Book.Language, Issued = study.Options.Record.Issues });
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

    public string Title => study.House.Name;

    /// <summary>The book as the page lists it: what the crew carries first.</summary>
    public PapersState State => new(
        study.House.Name,
        Words.Say(saved ? "web.papers.of-file" : "web.papers.unsaved", ("date", Date)),
        paper.ToString(),
        Enum.GetNames<PaperSize>(),
        [.. Site.Select(s => Card(s, Group(s.Key))).Concat(Office.Select(s => Card(s, OfficeGroup(s.Key)))).OrderBy(card => Array.IndexOf(Piles, card.Group))]);

    /// <summary>The paper that lies in the drawer where those units are used.</summary>
    public static PaperSize Usual(UnitSystem units) => units == UnitSystem.Imperial ? PaperSize.Letter : PaperSize.A4;

    private SheetCard Card(Sheet sheet, string group) => new(sheet.Key, sheet.Title, Size(sheet), group, sheet.Width, sheet.Height);

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

/// <summary>One sheet; width and height of its paper in mm.</summary>
internal sealed record SheetCard(string Key, string Title, string Size, string Group, double Width, double Height);
