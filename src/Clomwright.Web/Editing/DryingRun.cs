using Clomwright.Analysis;
using Clomwright.Analysis.Drying;
using Clomwright.Study;

namespace Clomwright.Web.Editing;

/// <summary>The drying of one study, worked out beside everything else.</summary>
internal sealed class DryingRun
{
    private readonly Action cancel;
    private double share;

    public DryingRun(HouseStudy study)
    {
        // Without a timer there is nothing in it to give back.
        var giveUp = new CancellationTokenSource();
        (Study, cancel) = (study, giveUp.Cancel);
        var watch = new DryingWatch(done => Volatile.Write(ref share, done), giveUp.Token);
        Done = Task.Run(() => study.DryingFor(watch), giveUp.Token);
    }

    /// <summary>Of which house.</summary>
    public HouseStudy Study { get; }

    /// <summary>What came of it; cancelled when the house changed.</summary>
    public Task<Known<DryingResult>> Done { get; }

    /// <summary>How far it is, 0 to 1.</summary>
    public double Share => Volatile.Read(ref share);

    /// <summary>Gives up.</summary>
    public void Cancel() => cancel();
}
