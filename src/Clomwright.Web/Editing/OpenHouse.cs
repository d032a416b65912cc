using Clomwright.Analysis;
using Clomwright.Analysis.Collapse;
using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Days;
using Clomwright.Analysis.Structure;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Papers;
using Clomwright.Record;
using Clomwright.Study;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Editing;

/// <summary>A house that is open: its file, what it was and is, and its study. One request at a time.</summary>
internal sealed class OpenHouse
{
    private readonly Lock gate = new();
    private readonly Lock printing = new();
    private readonly HouseFolder folder;
    private readonly string name;
    private HouseFile file;
    private Sequence<Diagnostic> saidOfFile;
    private History history;
    private House saved;
    private HouseStudy study, written;
    private Scene? inside;
    private Scene? outside;
    private RoofScene? roof;
    private EarthScene? earth;
    private ComfortScene? comfort;
    private LongRun<Known<DryingResult>>? drying;
    private LongRun<Known<CollapseResult>>? fall;
    private LongRun<Known<DaysResult>>? days;
    private LongRun<Known<DaysChoices>>? choices;
    private StructureResult? rested;
    private readonly FindingMemory lines = new();
    private readonly SentFindings sent = new();
    private long revision;

    /// <summary>Done when the house becomes another; then there is a new one.</summary>
    private TaskCompletionSource another = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private HousePapers? papers;
    private (HouseStudy Study, bool Saved, PaperSize Paper, DateOnly Date) printed;

    public OpenHouse(HouseFolder folder, string name, HouseFile file, HouseReading reading)
    {
        (this.folder, this.name, this.file) = (folder, name, file);
        saved = reading.House!;
        saidOfFile = OfFileAlone(reading);
        history = History.From(saved);
        study = written = HouseStudy.Of(saved);
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

    /// <summary>The papers of the house as it is now; the same book until something changes.</summary>
    /// <param name="paper">Which paper; null takes the usual one for the house's units.</param>
    public HousePapers Papers(PaperSize? paper)
    {
        var (now, isSaved) = Now;
        var wanted = (now, isSaved, paper ?? HousePapers.Usual(now.House.Units), DateOnly.FromDateTime(DateTime.Now));
        lock (printing)
        {
            if (papers is null || printed != wanted)
            {
                (papers, printed) = (new HousePapers(now, isSaved, paper, wanted.Item4), wanted);
            }

            return papers;
        }
    }

    /// <summary>How the house as it is now dries, being worked out beside everything else; one run, given up when the house changes.</summary>
    public LongRun<Known<DryingResult>> Drying
    {
        get
        {
            lock (gate)
            {
                TakeNewFile();
                return drying ??= new(study, (of, watch) => of.DryingFor(watch));
            }
        }
    }

    /// <summary>The search for the push at which the house as it is now falls; one run, given up when the house changes.</summary>
    public LongRun<Known<CollapseResult>> Fall
    {
        get
        {
            lock (gate)
            {
                TakeNewFile();
                return fall ??= new(HouseStudy.Of(study.House, new StudyOptions(Deep: true), study), (deep, watch) => deep.CollapseFor(watch));
            }
        }
    }

    /// <summary>When the job of the house as it is now would be done, by what is written of it; one run, given up when the house or its record changes.</summary>
    public LongRun<Known<DaysResult>> Days
    {
        get
        {
            lock (gate)
            {
                TakeNewFile();
                TakeRecord();
                return days ??= new(written, (of, watch) => of.DaysFor(watch));
            }
        }
    }

    /// <summary>What other ways and weeks would bring it; one run, given up when the house changes or nobody waits.</summary>
    public LongRun<Known<DaysChoices>> Choices
    {
        get
        {
            lock (gate)
            {
                TakeNewFile();
                TakeRecord();
                return choices ??= new(written, (of, watch) => of.DaysChoicesFor(watch));
            }
        }
    }

    /// <summary>Gives a search up that nobody waits for any more.</summary>
    public void GiveUp(LongRun<Known<CollapseResult>> run)
    {
        lock (gate)
        {
            if (ReferenceEquals(fall, run) && !run.Done.IsCompletedSuccessfully)
            {
                fall = null;
            }
        }

        run.Cancel();
    }

    /// <summary>Gives the trying of other ways up.</summary>
    public void GiveUp(LongRun<Known<DaysChoices>> run)
    {
        lock (gate)
        {
            if (ReferenceEquals(choices, run) && !run.Done.IsCompletedSuccessfully)
            {
                choices = null;
            }
        }

        run.Cancel();
    }

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

    /// <summary>Keeps what the wall of a study carries, by which the next opening is taken in hand. Solves it where nobody has yet.</summary>
    public void Rest(HouseStudy solved)
    {
        if (solved.Structure.Value is { } structure)
        {
            lock (gate)
            {
                rested = structure;
            }
        }
    }

    /// <summary>One opening of a house is in hand at a time: who has this may <see cref="Take"/> one.</summary>
    public SemaphoreSlim Hand { get; } = new(1, 1);

    /// <summary>Takes an opening in hand to follow the wall's stress; null where it cannot be followed.</summary>
    public WallInHand? Take(string opening)
    {
        HouseStudy now;
        StructureResult? known;
        lock (gate)
        {
            (now, known) = (study, rested);
        }

        return known is null ? null : WallInHand.Take(now, known, opening);
    }

    private bool Saved => history.Now == saved;

    /// <summary>What is wrong or odd in the file and in the description, with paths as in the file.</summary>
    private IEnumerable<Diagnostic> Said => [.. saidOfFile, .. study.Diagnostics.Select(file.Document.InFile)];

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
    /// <param name="since">The revision whose wall the page has: findings that say the same are not sent again. Null sends all.</param>
    public HouseAnswer Change(string gesture, Change change, Sight sight, long? since = null)
    {
        lock (gate)
        {
            if (EditOf.Change(change, history.Now, StationOf, out var reason) is not { } edit)
            {
                return Answer(sight, ChangeRefusal.Of(change, Say(reason!)));
            }

            Become(history.With(edit.Apply(history.Now), gesture));
            return Answer(sight, since: since);
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

    private void Become(History next)
    {
        if (next.Now != history.Now)
        {
            study = HouseStudy.Of(next.Now, StudyOptions.Quick, study);
            Forget();
            revision++;
            another.SetResult();
            another = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        }

        history = next;
    }

    private void Forget()
    {
        (inside, outside, roof, earth, comfort) = (null, null, null, null, null);
        drying?.Cancel();
        fall?.Cancel();
        days?.Cancel();
        choices?.Cancel();
        (drying, fall, days, choices) = (null, null, null, null);
    }

    private double? StationOf(string opening) => StandingOpening.All(study.Geometry).FirstOrDefault(o => o.Opening.Name == opening)?.Station;

    private HouseAnswer Answer(Sight sight, ChangeRefusal? refusal = null, bool fileDiffers = false, long? since = null) => new(
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
            Scene = (sight switch { Sight.Inside or Sight.Days => inside ??= Wall(Face.Inside), Sight.Outside => outside ??= Wall(Face.Outside), _ => null }) is { } scene ? sent.Only(scene, revision, since) : null,
            Roof = sight == Sight.Roof ? roof ??= RoofSceneOf.Scene(study, Phrasebook.English, Said) : null,
            Earth = sight == Sight.Earth ? earth ??= EarthSceneOf.Scene(study, Phrasebook.English, Said) : null,
            Days = sight == Sight.Days ? DaysSceneOf.Scene(study, Phrasebook.English) : null,
            Comfort = sight == Sight.Comfort ? comfort ??= ComfortSceneOf.Scene(study, Phrasebook.English) : null,
        },
        null);

    private Scene Wall(Face face) => Scenes.FromStudy.Scene(study, face, Phrasebook.English, Said, lines);

    private string Say(Message reason) => Phrasebook.English.Say(reason, history.Now.Units);

    /// <summary>What reading said beyond what the description says of itself, which the study says again.</summary>
    private static Sequence<Diagnostic> OfFileAlone(HouseReading reading)
    {
        var ofHouse = HouseDiagnostics.Of(reading.House!).Select(reading.Document!.InFile).ToHashSet();
        return reading.Diagnostics.Where(said => !ofHouse.Contains(said)).ToSequence();
    }
}
