using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Revisions;

/// <summary>A sheet beside the set that was handed out last.</summary>
public enum SheetState
{
    /// <summary>It shows what it showed, or nothing was handed out before.</summary>
    Same,

    /// <summary>It shows something else.</summary>
    Changed,

    /// <summary>It was not in that set.</summary>
    New,
}

/// <summary>What a set of papers says of one of its sheets.</summary>
/// <param name="Drawn">The sheet.</param>
/// <param name="State">Beside the set that was handed out last.</param>
/// <param name="Letter">The letter since which it shows what it shows: that of the oldest set whose like still holds. Null where it was not handed out.</param>
public sealed record SheetRevision(DrawnSheet Drawn, SheetState State, string? Letter);

/// <summary>A set of papers beside the one that was handed out last: which sheets are other ones, and which belong no more on the wall.</summary>
/// <param name="Letter">Its own letter; null where it is not handed out.</param>
/// <param name="Before">The letter of the set handed out last; null for the first.</param>
/// <param name="Sheets">All its sheets, in page order.</param>
/// <param name="TakenBack">Sheets of that set that are not in this one.</param>
public sealed record SetRevision(string? Letter, string? Before, Sequence<SheetRevision> Sheets, Sequence<DrawnSheet> TakenBack)
{
    /// <summary>Sheets that changed and new ones: those to hang up.</summary>
    public Sequence<SheetRevision> Changes => Sheets.Where(s => s.State != SheetState.Same).ToSequence();

    /// <summary>What hangs on the wall and holds no longer: sheets of the set before that show something else now or are gone, each with the letter that the copy on the wall carries.</summary>
    public Sequence<HungSheet> TakeDown { get; init; }

    /// <summary>What is drawn on sheets, for the record; nothing where no letters are asked for.</summary>
    public static Sequence<DrawnSheet> DrawnOn(IEnumerable<Sheet> sheets) => sheets.Select(s => s.Revision?.Drawn).OfType<DrawnSheet>().ToSequence();

    /// <summary>Sheets beside what was handed out.</summary>
    /// <param name="drawn">Of one part of the papers or of all, in page order.</param>
    /// <param name="issued">The sets handed out, the oldest first.</param>
    /// <param name="letter">The letter that these carry; null where they are not handed out.</param>
    public static SetRevision Of(IReadOnlyList<DrawnSheet> drawn, Sequence<Seen.Issue> issued, string? letter)
    {
        ArgumentNullException.ThrowIfNull(drawn);
        var parts = drawn.Select(s => s.Part).ToHashSet(StringComparer.Ordinal);
        var sets = issued.Reverse().Select(i => (i.Revision, Prints: i.Drawn.DistinctBy(s => (s.Part, s.Key)).ToDictionary(s => (s.Part, s.Key), s => s.Print))).ToList();
        var sheets = drawn.Select(s =>
        {
            var like = sets.TakeWhile(set => set.Prints.GetValueOrDefault((s.Part, s.Key)) == s.Print).LastOrDefault().Revision;
            var state = sets.Count == 0 || like is not null ? SheetState.Same : sets[0].Prints.ContainsKey((s.Part, s.Key)) ? SheetState.Changed : SheetState.New;
            return new SheetRevision(s, state, like ?? letter);
        });
        var keys = drawn.Select(s => (s.Part, s.Key)).ToHashSet();
        var latest = issued is [.., var last] ? last : null;
        var back = latest?.Drawn.Where(s => parts.Contains(s.Part) && !keys.Contains((s.Part, s.Key))).ToSequence() ?? [];
        var hung = latest?.Drawn.Where(s => parts.Contains(s.Part) && drawn.All(d => (d.Part, d.Key, d.Print) != (s.Part, s.Key, s.Print)))
            .Select(s => new HungSheet(s, sets.TakeWhile(set => set.Prints.GetValueOrDefault((s.Part, s.Key)) == s.Print).Last().Revision)).ToSequence() ?? [];
        return new(letter, latest?.Revision, sheets.ToSequence(), back) { TakeDown = hung };
    }

    /// <summary>A set that was handed out beside those before it; all by what the record says of them.</summary>
    /// <param name="issued">The sets handed out, the oldest first; the last is the one compared.</param>
    /// <returns>Null where nothing was handed out.</returns>
    public static SetRevision? OfLast(Sequence<Seen.Issue> issued) =>
        issued is [.., var last] ? Of(last.Drawn, issued.SkipLast(1).ToSequence(), last.Revision) : null;
}

/// <summary>A sheet as it hangs on the wall.</summary>
/// <param name="Drawn">The sheet.</param>
/// <param name="Letter">The letter on it: that of the oldest set since which it shows what it shows.</param>
public sealed record HungSheet(DrawnSheet Drawn, string Letter);
