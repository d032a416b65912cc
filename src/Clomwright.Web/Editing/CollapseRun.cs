using Clomwright.Analysis.Collapse;
using Clomwright.Study;

namespace Clomwright.Web.Editing;

/// <summary>The search for the push at which one house falls, beside everything else.</summary>
internal sealed class CollapseRun
{
    private readonly Action cancel;
    private double share;

    public CollapseRun(HouseStudy study)
    {
        // Without a timer there is nothing in it to give back.
        var giveUp = new CancellationTokenSource();
        cancel = giveUp.Cancel;
        Study = HouseStudy.Of(study.House, new StudyOptions(Deep: true), study);
        var watch = new CollapseWatch(done => Volatile.Write(ref share, done), giveUp.Token);
        Done = Task.Run(() => { Study.CollapseFor(watch); }, giveUp.Token);
    }

    /// <summary>Of which house, studied deep.</summary>
    public HouseStudy Study { get; }

    /// <summary>Done when it is found; cancelled when somebody stopped it or the house changed.</summary>
    public Task Done { get; }

    /// <summary>How far it is, 0 to 1.</summary>
    public double Share => Volatile.Read(ref share);

    /// <summary>Gives up.</summary>
    public void Cancel() => cancel();
}
