using Clomwright.Analysis;
using Clomwright.Analysis.Days;
using Clomwright.Analysis.Structure;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Study;
using Clomwright.Web.Forms;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Editing;

/// <summary>A house that is open: its file, what it was and is, and its study. One request at a time.</summary>
internal sealed partial class OpenHouse : IDisposable
{
    private readonly Lock gate = new();
    private readonly HouseFolder folder;
    private readonly string name;
    private HouseFile file;
    private Sequence<Diagnostic> saidOfFile;
    private History history;
    private House saved;
    private HouseStudy study, written;
    private Looked? looked;
    private readonly KeptAside aside;
    private StructureResult? rested;
    private readonly SceneMemory made = new();
    private readonly SentScenes sent = new();
    private long revision;

    /// <summary>Done when the house becomes another; then there is a new one.</summary>
    private TaskCompletionSource another = new(TaskCreationOptions.RunContinuationsAsynchronously);

    public OpenHouse(HouseFolder folder, string name, HouseFile file, HouseReading reading)
    {
        (this.folder, this.name, this.file) = (folder, name, file);
        saved = reading.House!;
        saidOfFile = OfFileAlone(reading);
        history = History.From(saved);
        history = KeptAside.Of(file) is { } kept ? history.With(kept, "kept") : history;
        study = written = HouseStudy.Of(history.Now);
        aside = new KeptAside(file.Path, Unsaved);
    }

    /// <summary>The study of the house as it is now, saved or not, and whether it is saved.</summary>
    public (HouseStudy Study, bool Saved) Now
    {
        get
        {
            lock (gate)
            {
                TakeNewFile();
                return (study, Saved);
            }
        }
    }

    /// <summary>Where its file is.</summary>
    public string FilePath => file.Path;

    /// <summary>The house as it is, with the number of what it is, as soon as that is beyond one already seen.</summary>
    public async Task<(HouseStudy Study, long Revision)> After(long seen, CancellationToken stop)
    {
        while (true)
        {
            Task wait;
            lock (gate)
            {
                if (revision > seen)
                {
                    return (study, revision);
                }

                wait = another.Task;
            }

            await wait.WaitAsync(stop);
        }
    }

    /// <summary>Whether it is what it was under a number.</summary>
    public bool IsStill(long seen)
    {
        lock (gate)
        {
            return revision == seen;
        }
    }

    /// <summary>Keeps what the wall carries, by which the next opening is taken in hand.</summary>
    public void Rest(Known<StructureResult> solved)
    {
        if (solved.Value is { } structure)
        {
            lock (gate)
            {
                rested = structure;
            }
        }
    }

    /// <summary>One opening of a house is in hand at a time: who has this may <see cref="Take"/> one.</summary>
    public SemaphoreSlim Hand { get; } = new(1, 1);

    /// <summary>Takes an opening in hand to follow the wall's stress; or why it cannot be followed.</summary>
    /// <param name="now">The house as it is looked at.</param>
    /// <param name="opening">Name of the opening.</param>
    public Known<WallInHand> Take(HouseStudy now, string opening)
    {
        StructureResult? known;
        lock (gate)
        {
            known = rested;
        }

        return known is null ? new Message("web.stress.not-solved") : WallInHand.Take(now, known, opening);
    }

    private bool Saved => history.Now == saved;

    /// <summary>What can be looked at of the house as it is.</summary>
    private Looked Seen => looked ??= new(study, [.. saidOfFile, .. study.Diagnostics.Select(file.Document.InFile)], made);

    /// <summary>Some parts of the house as it is as a form, and of which revision.</summary>
    public FormAnswer Form(IEnumerable<string> paths)
    {
        lock (gate)
        {
            return new FormAnswer(revision, new FormOf(history.Now, study.Diagnostics, new Pen(Words.Book, history.Now.Units)).Parts(paths));
        }
    }

    /// <summary>The house as it is; a file that another program changed is taken over where nothing here is unsaved.</summary>
    public HouseAnswer Look(Sight sight)
    {
        lock (gate)
        {
            TakeNewFile();
            return Answer(sight);
        }
    }

    /// <summary>Makes a change, or says why it cannot be made.</summary>
    /// <param name="gesture">Changes of one gesture are one step back.</param>
    /// <param name="change">The change.</param>
    /// <param name="sight">What is looked at.</param>
    /// <param name="since">The number of the scene that the page has: what is the same is not sent again. Null sends all.</param>
    public HouseAnswer Change(string gesture, Change change, Sight sight, long? since = null)
    {
        lock (gate)
        {
            var before = since is null || !change.ByHand ? null : whole;
            if (before is not null)
            {
                Moves();
            }

            Message? reason;
            if ((change is Change.TakeWay way ? EditOfWay(way, out reason) : EditOf.Change(change, history.Now, StationOf, out reason, Roomiest)) is not { } edit)
            {
                return Answer(sight, ChangeRefusal.Of(change, reason!, Say(reason!)));
            }

            var next = history.With(edit.Apply(history.Now), gesture);
            if (before is not null && next.Now == history.Now && shown == (revision, before, sight, since!.Value))
            {
                return HouseAnswer.AsShown;
            }

            Become(next, before);
            return before is not null && Seen.Wall(sight, before.Findings) is { } scene ? InHand(scene, before, sight, since) : Answer(sight, since: since);
        }
    }

    /// <summary>Takes the last step back.</summary>
    public HouseAnswer Undo(Sight sight)
    {
        lock (gate)
        {
            Become(history.Undo());
            return Answer(sight);
        }
    }

    /// <summary>Puts the last step taken back again.</summary>
    public HouseAnswer Redo(Sight sight)
    {
        lock (gate)
        {
            Become(history.Redo());
            return Answer(sight);
        }
    }

    /// <summary>Writes the house to its file, unless another program has changed that meanwhile.</summary>
    public HouseAnswer Save(Sight sight)
    {
        lock (gate)
        {
            var (written, problem) = folder.Save(file, file.Document.With(history.Now));
            if (written is null)
            {
                return Answer(sight, ChangeRefusal.Of(Say(problem!.What)), FileDiffers());
            }

            (file, saved) = (written, history.Now);
            revision++;
            aside.Soon();
            return Answer(sight);
        }
    }

    /// <summary>Takes the file as it is now. What was here can be had again by taking that back.</summary>
    public HouseAnswer Reload(Sight sight)
    {
        lock (gate)
        {
            return ReadAgain() is { } problem ? Answer(sight, ChangeRefusal.Of(problem)) : Answer(sight);
        }
    }

    private bool FileDiffers() => folder.Read(name).File?.Document.Text is { } text && text != file.Document.Text;

    private void TakeNewFile()
    {
        if (Saved && FileDiffers())
        {
            ReadAgain();
        }
    }

    private string? ReadAgain()
    {
        var (read, reading) = folder.Read(name);
        if (read is null || reading.House is not { } house)
        {
            return Say(reading.Diagnostics[0].What);
        }

        (file, saved, saidOfFile) = (read, house, OfFileAlone(reading));
        Become(history.With(house, $"reload-{revision}"));
        Forget();
        revision++;
        return null;
    }

    /// <summary>Makes the house another.</summary>
    /// <param name="next">What it becomes.</param>
    /// <param name="from">The study whose passes may be taken over: what it has not worked out is worked out again. Null is the one of the house as it was.</param>
    private void Become(History next, HouseStudy? from = null)
    {
        if (next.Now != history.Now)
        {
            study = HouseStudy.Of(next.Now, StudyOptions.Quick, from ?? study);
            Forget();
            revision++;
            another.SetResult();
            another = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        }

        history = next;
        aside.Soon();
    }

    private (HouseDocument File, House? Changed) Unsaved()
    {
        lock (gate)
        {
            return (file.Document, Saved ? null : history.Now);
        }
    }

    /// <summary>Nobody asks any more: what waits to be kept is kept.</summary>
    public void Dispose()
    {
        aside.Dispose();
        Hand.Dispose();
    }

    private void Forget()
    {
        looked = null;
        drying?.Cancel();
        stress?.Cancel();
        fall?.Cancel();
        days?.Cancel();
        choices?.Cancel();
        arrival?.Cancel();
        (drying, stress, fall, days, choices, arrival) = (null, null, null, null, null, null);
    }

    private double? StationOf(string part) => StandingOpening.All(study.Geometry).FirstOrDefault(o => o.Opening.Name == part)?.Station
        ?? study.Geometry.Niches.FirstOrDefault(n => n.Niche.Name == part)?.Station ?? study.Geometry.Embeds.FirstOrDefault(e => e.Embed.Name == part)?.Station;

    /// <summary>The middle of the widest pier, of its longer part where it lies across the zero mark; the zero mark where there is none.</summary>
    private double Roomiest
    {
        get
        {
            var (ring, span) = (study.Geometry.Curve.Length, study.Geometry.Piers.MaxBy(pier => pier.Narrowest)?.Span);
            return span is not { } widest ? 0
                : widest.From < ring && widest.To > ring ? (ring - widest.From > widest.To - ring ? (widest.From + ring) / 2 : (widest.To - ring) / 2)
                : study.Geometry.Curve.Wrap((widest.From + widest.To) / 2);
        }
    }

    private HouseAnswer Answer(Sight sight, ChangeRefusal? refusal = null, bool fileDiffers = false, long? since = null)
    {
        var wall = Seen.Wall(sight);
        whole = wall is null ? whole : study;
        return Answer(sight, wall, refusal, fileDiffers, since);
    }

    private HouseAnswer Answer(Sight sight, Scene? wall, ChangeRefusal? refusal, bool fileDiffers, long? since) => new(
        new HouseState
        {
            Key = HouseKey.Of(name),
            Name = history.Now.Name,
            File = name,
            Revision = revision,
            Saved = Saved,
            SavedLine = Words.Say(Saved ? "web.saved.yes" : "web.saved.no", ("file", name)),
            FileDiffers = fileDiffers,
            CanUndo = history.CanUndo,
            CanRedo = history.CanRedo,
            Refusal = refusal,
            Scene = wall is null ? null : sent.Only(wall, since),
            Roof = sight == Sight.Roof ? Seen.Roof : null,
            Earth = sight == Sight.Earth ? Seen.Earth : null,
            Days = sight == Sight.Days ? Seen.Days : null,
            Comfort = sight == Sight.Comfort ? Seen.Comfort : null,
            Ground = sight == Sight.Ground ? Seen.Ground : null,
        },
        null);

    private string Say(Message reason) => Words.Book.Say(reason, history.Now.Units);

    /// <summary>What reading said beyond what the description says of itself, which the study says again.</summary>
    private static Sequence<Diagnostic> OfFileAlone(HouseReading reading)
    {
        var ofHouse = HouseDiagnostics.Of(reading.House!).Select(reading.Document!.InFile).ToHashSet();
        return reading.Diagnostics.Where(said => !ofHouse.Contains(said)).ToSequence();
    }
}
