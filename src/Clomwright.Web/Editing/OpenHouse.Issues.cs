using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers;
using Clomwright.Papers.Revisions;
using Clomwright.Record;
using Clomwright.Study;
using Issue = Clomwright.Building.Seen.Issue;

namespace Clomwright.Web.Editing;

/// <content>Papers handed out: the next letter is given and written to the site record, and a set that was handed out can be printed again as long as the house still draws it.</content>
internal sealed partial class OpenHouse
{
    private (string Letter, House House, HousePapers Book)? handed;

    /// <summary>Writes the papers of the house as it is now to the record with the next letter.</summary>
    /// <param name="id">Of the entry, made by the page: the same sent again hands nothing out twice.</param>
    /// <param name="by">Who hands them out.</param>
    /// <param name="to">To whom.</param>
    /// <param name="paper">Which paper; null takes the usual one for the house's units.</param>
    /// <param name="moment">When.</param>
    /// <returns>The set; null with what stood in the way, and without where it was handed out before.</returns>
    public (HousePapers? Book, Message? Problem) HandOut(string id, string by, string to, PaperSize? paper, DateTimeOffset moment)
    {
        lock (printing)
        {
            var (now, store) = (Written, new SqliteRecord(SqliteRecord.Beside(file.Path)));
            if (now.Options.Record.Find(id) is { What: Issue })
            {
                return (null, null);
            }

            // What hangs on the wall has to be what the file says.
            if (!Now.Saved)
            {
                return (null, new Message("web.issue.unsaved"));
            }

            var (letter, date) = (Letters.Next(now.Options.Record), DateOnly.FromDateTime(moment.LocalDateTime));
            var book = new HousePapers(now, true, paper, date, letter);
            var issue = new Issue(date, letter, [], to) { Drawn = book.Drawn };
            if (store.Append(new SiteEntry(id, moment, by, issue)).Problem is { } problem)
            {
                return (null, problem);
            }

            handed = (letter, now.House, book);
            return (book, null);
        }
    }

    /// <summary>A set that was handed out, with its letter and its date. Where the house or the paper is another one since, what is drawn now would not be that set: then there is only a sentence.</summary>
    /// <param name="letter">Its letter.</param>
    /// <param name="paper">Which paper; null takes the usual one for the house's units.</param>
    public (HousePapers? Book, Message? Problem) Handed(string letter, PaperSize? paper)
    {
        lock (printing)
        {
            var now = Written;
            var record = now.Options.Record;
            if (record.Standing.LastOrDefault(e => e.What is Issue { Drawn.Count: > 0 } issue && issue.Revision == letter) is not { What: Issue set } entry)
            {
                return (null, Message.Of("web.issue.no-set", ("letter", letter)));
            }

            var size = paper ?? PaperOptions.Usual(now.House.Units);
            if (handed is { } there && there.Letter == letter && there.House == now.House && there.Book.Paper == size)
            {
                return (there.Book, null);
            }

            var before = new SiteRecord(record.Entries.TakeWhile(e => e.Id != entry.Id).ToSequence());
            var study = HouseStudy.Of(now.House, StudyOptions.Quick with { Record = before, Today = before.Entries.Count > 0 ? set.Date : null }, now);
            var book = new HousePapers(study, true, size, set.Date, letter);
            if (!book.Drawn.Select(Print).ToHashSet().SetEquals(set.Drawn.Select(Print)))
            {
                return (null, Message.Of("web.issue.other-set", ("letter", letter)));
            }

            handed = (letter, now.House, book);
            return (book, null);
        }
    }

    private static (string, string, string) Print(DrawnSheet sheet) => (sheet.Part, sheet.Key, sheet.Print);
}
