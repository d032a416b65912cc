using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers;
using Clomwright.Record;
using Clomwright.Study;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Editing;

/// <summary>The house together with what is written of it on site: papers and the page of a day read both.</summary>
internal sealed partial class OpenHouse
{
    private readonly Lock printing = new();
    private readonly Lock telling = new();
    private HousePapers? papers;
    private (HouseStudy Study, DateOnly Date, TodayScene Scene)? told;
    private (HouseStudy Study, bool Saved, PaperSize Paper, DateOnly Date) printed;

    /// <summary>The study of the house as it is now with its site record.</summary>
    public HouseStudy Written
    {
        get
        {
            lock (gate)
            {
                TakeNewFile();
                TakeRecord();
                return written;
            }
        }
    }

    /// <summary>Forgets everything that was put into words.</summary>
    public void Reword()
    {
        lock (gate)
        {
            made.Forget();
            sent.Forget();
            Forget();
            revision++;
        }

        lock (printing)
        {
            papers = null;
        }

        lock (telling)
        {
            told = null;
        }
    }

    /// <summary>The papers of the house as it is now, with what is written of it; the same book until something changes.</summary>
    /// <param name="paper">Which paper; null takes the usual one for the house's units.</param>
    public HousePapers Papers(PaperSize? paper)
    {
        var (now, isSaved) = (Written, Now.Saved);
        var wanted = (now, isSaved, paper ?? PaperOptions.Usual(now.House.Units), DateOnly.FromDateTime(DateTime.Now));
        lock (printing)
        {
            if (papers is null || printed != wanted)
            {
                (papers, printed) = (new HousePapers(now, isSaved, paper, wanted.Item4), wanted);
            }

            return papers;
        }
    }

    /// <summary>The day on site, worked out once as long as neither house nor record nor day is another: several phones ask for it every minute.</summary>
    /// <param name="now">The moment.</param>
    public TodayScene Today(DateTime now)
    {
        var (of, date) = (Written, DateOnly.FromDateTime(now));
        lock (telling)
        {
            if (told is not { } there || !ReferenceEquals(there.Study, of) || there.Date != date)
            {
                told = there = (of, date, TodaySceneOf.Scene(of, now, Words.Book));
            }

            return there.Scene with { Made = TodaySceneOf.Made(now, Words.Book, of.House.Units) };
        }
    }

    /// <summary>The house with what is written of it on this day: looked up anew each time, since others write it too.</summary>
    private void TakeRecord()
    {
        var path = SqliteRecord.Beside(file.Path);
        var options = StudyOptions.Quick with { Record = new FileInfo(path).LinkTarget is null ? new SqliteRecord(path).Read().Record : SiteRecord.Empty };
        options = options.Record.Entries.Count > 0 ? options with { Today = DateOnly.FromDateTime(DateTime.Now) } : options;
        if (written.House != study.House || written.Options != options)
        {
            days?.Cancel();
            choices?.Cancel();
            (days, choices) = (null, null);
            written = options == study.Options ? study : HouseStudy.Of(study.House, options, study);
        }
    }
}
