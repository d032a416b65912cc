using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers;
using Clomwright.Papers.Revisions;
using Clomwright.Study;

namespace Clomwright.Web.Editing;

/// <summary>The papers of a house beside those that were handed out: what would change, and what the set handed out last changed.</summary>
/// <param name="Name">Of the house.</param>
/// <param name="Saved">The file says what is drawn.</param>
/// <param name="Next">The letter that would be given.</param>
/// <param name="Paper">The paper.</param>
/// <param name="Sizes">The papers there are.</param>
/// <param name="Now">The house as it is, beside the set handed out last.</param>
/// <param name="Last">The set handed out last, beside the one before; null where nothing was handed out.</param>
internal sealed record IssueScene(string Name, bool Saved, string Next, string Paper, IReadOnlyList<string> Sizes, IssueList Now, IssueList? Last);

/// <summary>What one set changes.</summary>
/// <param name="Letter">The letter that its changed sheets carry.</param>
/// <param name="Line">How much changes, in words.</param>
/// <param name="Changes">Something changes: there is a set before it that differs, or none.</param>
/// <param name="Sheets">Sheets that changed and new ones, by part.</param>
/// <param name="TakeDown">Copies of the set before that hold no longer, by part.</param>
internal sealed record IssueList(string Letter, string Line, bool Changes, IReadOnlyList<IssuePart> Sheets, IReadOnlyList<IssuePart> TakeDown);

/// <summary>Sheets of one part of the papers: site, office or templates.</summary>
internal sealed record IssuePart(string Part, string Heading, IReadOnlyList<IssueSheet> Sheets);

/// <summary>One sheet with the letter on it, and how many go on from it.</summary>
internal sealed record IssueSheet(string Key, string Number, string Title, string Letter, string Mark, int Count = 1);

/// <summary>Makes it.</summary>
internal static class IssueSceneOf
{
    /// <summary>The scene.</summary>
    /// <param name="study">With what was handed out.</param>
    /// <param name="book">The papers of the house as it is: drawn only where there is something to compare them with.</param>
    /// <param name="paper">On which paper.</param>
    /// <param name="saved">The file says what is drawn.</param>
    public static IssueScene Scene(HouseStudy study, Func<HousePapers> book, PaperSize paper, bool saved)
    {
        var record = study.Options.Record;
        var (issued, next) = (record.Issues, Letters.Next(record));
        var last = SetRevision.OfLast(issued) is { } set ? List(set, Said(issued[^1], set)) : null;
        var now = issued.Count == 0
            ? new IssueList(next, Words.Say("web.issue.first", ("letter", next)), true, [], [])
            : Beside(SetRevision.Of(book().Drawn, issued, next));
        return new IssueScene(study.House.Name, saved, next, paper.ToString(), Enum.GetNames<PaperSize>(), now, last);
    }

    private static IssueList Beside(SetRevision set) => List(set, Standing(set));

    private static string Standing(SetRevision set) => set.Changes.Count + set.TakenBack.Count == 0
        ? Words.Say("web.issue.same", ("before", set.Before!))
        : Words.Say("web.issue.differs", ("n", set.Changes.Count), ("before", set.Before!), ("same", set.Sheets.Count - set.Changes.Count));

    private static string Said(Seen.Issue issue, SetRevision set) => set.Before is { } before
        ? Words.Say("web.issue.handed", ("letter", issue.Revision), ("date", issue.Date), ("to", issue.To), ("n", set.Changes.Count), ("before", before))
        : Words.Say("web.issue.handed-first", ("letter", issue.Revision), ("date", issue.Date), ("to", issue.To), ("n", set.Sheets.Count));

    private static IssueList List(SetRevision set, string line) => new(
        set.Letter!,
        line,
        set.Changes.Count + set.TakenBack.Count > 0,
        Parts(set.Changes.Select(s => (s.Drawn, s.Letter ?? set.Letter!, Words.Say(s.State == SheetState.New ? "web.issue.mark.new" : "web.issue.mark.changed")))),
        Parts(set.TakeDown.Select(s => (s.Drawn, s.Letter, ""))));

    private static IReadOnlyList<IssuePart> Parts(IEnumerable<(DrawnSheet Drawn, string Letter, string Mark)> sheets) =>
    [
        .. sheets.GroupBy(s => s.Drawn.Part, StringComparer.Ordinal).Select(part => new IssuePart(
            part.Key,
            Words.Say($"web.issue.part.{part.Key}"),
            [.. Runs([.. part.Select(s => new IssueSheet(s.Drawn.Key, s.Drawn.Number, s.Drawn.Title, s.Letter, s.Mark))])])),
    ];

    /// <summary>Sheets that go on from one another and carry the same letter and mark, as one line.</summary>
    private static IEnumerable<IssueSheet> Runs(IReadOnlyList<IssueSheet> sheets)
    {
        for (int i = 0, next; i < sheets.Count; i = next)
        {
            var (first, from) = (sheets[i], i);
            for (next = i + 1; next < sheets.Count && GoesOn(first.Key, sheets[next - 1].Key, sheets[next].Key, next - 1 == from) && (sheets[next].Letter, sheets[next].Mark) == (first.Letter, first.Mark); next++)
            {
            }

            yield return next == i + 1 ? first : first with
            {
                Number = Words.Say("web.issue.numbers", ("from", first.Number), ("to", sheets[next - 1].Number)),
                Title = Words.Say("web.issue.sheets", ("title", first.Title), ("n", next - i)),
                Count = next - i,
            };
        }
    }

    /// <summary>A sheet that goes on is called as the one it begins with, with <c>-2</c> and on behind.</summary>
    private static bool GoesOn(string first, string before, string key, bool isSecond)
    {
        static int? Place(string first, string key) => key.StartsWith(first + "-", StringComparison.Ordinal) && int.TryParse(key.AsSpan(first.Length + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var place) ? place : null;
        return Place(first, key) is { } at && (isSecond || Place(first, before) == at - 1);
    }
}
