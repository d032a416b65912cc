using Clomwright.Evidence;
using Clomwright.Papers;
using Clomwright.Papers.Drawing;
using Clomwright.Study;

namespace Clomwright.Web.Editing;

/// <summary>The book of papers of an open house as it is now.</summary>
internal sealed class HousePapers
{
    private const double MillimetresPerInch = 25.4;

    private static readonly string[] Piles = ["pocket", "lifts", "drawings", "openings", "orders", "findings"];

    private readonly HouseStudy study;
    private readonly bool saved;
    private readonly PaperSize paper;

    public HousePapers(HouseStudy study, bool saved, PaperSize? paper, DateOnly date)
    {
        (this.study, this.saved, Date) = (study, saved, date);
        this.paper = paper ?? Usual(study.House.Units);
        Sheets = Book.Of(study, new PaperOptions(date) { Paper = this.paper, Planner = Rota.FromDays.Of });
    }

    public DateOnly Date { get; }

    public Sequence<Sheet> Sheets { get; }

    public string Title => study.House.Name;

    /// <summary>The book as the page lists it: what the crew carries first.</summary>
    public PapersState State => new(
        study.House.Name,
        Words.Say(saved ? "web.papers.of-file" : "web.papers.unsaved", ("date", Date)),
        paper.ToString(),
        Enum.GetNames<PaperSize>(),
        [.. Sheets.Select(Card).OrderBy(card => Array.IndexOf(Piles, card.Group))]);

    /// <summary>The paper that lies in the drawer where those units are used.</summary>
    public static PaperSize Usual(UnitSystem units) => units == UnitSystem.Imperial ? PaperSize.Letter : PaperSize.A4;

    private SheetCard Card(Sheet sheet) => new(sheet.Key, sheet.Title, Size(sheet), Group(sheet.Key), sheet.Width, sheet.Height);

    private string Size(Sheet sheet) => paper is PaperSize.Letter or PaperSize.Tabloid
        ? Words.Say("web.papers.inches", ("width", Amount.Number(sheet.Width / MillimetresPerInch)), ("height", Amount.Number(sheet.Height / MillimetresPerInch)))
        : Words.Say("web.papers.millimetres", ("width", Amount.Number(sheet.Width)), ("height", Amount.Number(sheet.Height)));

    /// <summary>Which pile a sheet lies on.</summary>
    private static string Group(string key) =>
        key.StartsWith("lift-", StringComparison.Ordinal) ? "lifts"
        : key.StartsWith("opening-", StringComparison.Ordinal) ? "openings"
        : key.StartsWith("order-", StringComparison.Ordinal) ? "orders"
        : key.StartsWith("pocket-card", StringComparison.Ordinal) ? "pocket"
        : key.StartsWith("cover", StringComparison.Ordinal) || key.StartsWith("findings", StringComparison.Ordinal) ? "findings"
        : "drawings";
}

/// <summary>The papers of a house as the page lists them.</summary>
internal sealed record PapersState(string Name, string Note, string Paper, IReadOnlyList<string> Sizes, IReadOnlyList<SheetCard> Sheets);

/// <summary>One sheet; width and height of its paper in mm.</summary>
internal sealed record SheetCard(string Key, string Title, string Size, string Group, double Width, double Height);
