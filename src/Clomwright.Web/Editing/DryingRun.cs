using Clomwright.Analysis;
using Clomwright.Analysis.Drying;
using Clomwright.Study;

namespace Clomwright.Web.Editing;

/// <summary>The drying of one study, worked out beside everything else.</summary>
internal sealed class DryingRun
{
    private readonly CancellationTokenSource cancel = new();
    private double share;

    public DryingRun(HouseStudy study)
    {
        Study = study;
        var watch = new DryingWatch(done => Volatile.Write(ref share, done), cancel.Token);
        Done = Task.Run(() => study.DryingFor(watch), cancel.Token);
    }

    /// <summary>Of which house.</summary>
    public HouseStudy Study { get; }

    /// <summary>What came of it; cancelled when the house changed.</summary>
    public Task<Known<DryingResult>> Done { get; }

    /// <summary>How far it is, 0 to 1.</summary>
    public double Share => Volatile.Read(ref share);

    /// <summary>Gives up.</summary>
    public void Cancel() => cancel.Cancel();
}
