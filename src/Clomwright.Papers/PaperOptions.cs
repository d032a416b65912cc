using Clomwright.Analysis.Days;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Papers;

/// <summary>How a book of papers is made.</summary>
/// <param name="Date">The date that every sheet carries.</param>
public sealed record PaperOptions(DateOnly Date)
{
    /// <summary>The paper.</summary>
    public PaperSize Paper { get; init; } = PaperSize.A4;

    /// <summary>The paper that lies in the drawer where those units are used.</summary>
    public static PaperSize Usual(UnitSystem units) => units == UnitSystem.Imperial ? PaperSize.Letter : PaperSize.A4;

    /// <summary>Which units come first; null takes the house's own.</summary>
    public UnitSystem? Units { get; init; }

    /// <summary>Puts named people to their work; null takes the plain plan.</summary>
    public Func<RotaQuestion, RotaResult>? Planner { get; init; }

    /// <summary>The language of the papers: one of <see cref="Phrasebook.Languages"/>.</summary>
    public string Language { get; init; } = Phrasebook.English.Language;

    /// <summary>Letter of the issue; null prints "not issued".</summary>
    public string? Revision { get; init; }

    /// <summary>The sets handed out before, the oldest first: sheets that show something else than the last of them are marked.</summary>
    public Sequence<Seen.Issue> Issued { get; init; }
}
