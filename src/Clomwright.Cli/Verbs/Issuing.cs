using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Revisions;
using Clomwright.Record;

namespace Clomwright.Cli.Verbs;

/// <summary>Papers handed out: a letter, written to the site record with what each sheet shows.</summary>
/// <param name="house">The house file.</param>
/// <param name="by">Who hands them out.</param>
/// <param name="to">To whom.</param>
/// <param name="terminal">Where it is said.</param>
internal sealed class Issuing(string house, string by, string to, Terminal terminal)
{
    /// <summary>Writes the issue to the record and then the papers: stopped between the two, a letter is used up and no two sets carry it. Where the papers cannot be written the issue is struck out.</summary>
    /// <returns>What stood in the way; null where the papers are written.</returns>
    public Message? Out(IEnumerable<Sheet> sheets, PaperOptions options, Func<Message?> write)
    {
        var store = new SqliteRecord(SqliteRecord.Beside(house));
        var issue = new Seen.Issue(options.Date, options.Revision!, [], to) { Drawn = SetRevision.DrawnOn(sheets) };
        var entry = new SiteEntry(RecordInput.NewId(), terminal.Now, by, issue);
        if (store.Append(entry).Problem is { } problem)
        {
            return Message.Of("cli.papers.issue-refused", ("problem", problem));
        }

        if (write() is { } refused)
        {
            store.Append(new SiteEntry(RecordInput.NewId(), terminal.Now, by, new Seen.Struck(terminal.Word("cli.papers.struck"))) { Corrects = entry.Id });
            return refused;
        }

        terminal.Say(Message.Of("cli.papers.issued", ("letter", issue.Revision), ("id", entry.Id)));
        return null;
    }

    /// <summary>Says which sheets are other ones than those handed out last, and which to take down.</summary>
    public static void SayChanges(IEnumerable<Sheet> sheets, PaperOptions options, Terminal terminal)
    {
        var set = SetRevision.Of(SetRevision.DrawnOn(sheets), options.Issued, options.Revision);
        if (set.Before is not { } before)
        {
            return;
        }

        if (set.Changes.Count + set.TakenBack.Count == 0)
        {
            terminal.Say(Message.Of("cli.papers.same", ("before", before)));
            return;
        }

        List(Message.Of("cli.papers.changed", ("before", before)), set.Sheets.Where(s => s.State == SheetState.Changed).Select(s => s.Drawn), terminal);
        List(Message.Of("cli.papers.new", ("before", before)), set.Sheets.Where(s => s.State == SheetState.New).Select(s => s.Drawn), terminal);
        List(Message.Of("cli.papers.back", ("before", before)), set.TakenBack, terminal);
    }

    private static void List(Message heading, IEnumerable<DrawnSheet> sheets, Terminal terminal)
    {
        foreach (var (sheet, i) in sheets.Select((s, i) => (s, i)))
        {
            if (i == 0)
            {
                terminal.Say(heading);
            }

            terminal.Results.WriteLine($"  {sheet.Number,-6} {sheet.Title}");
        }
    }
}
