using Clomwright.Analysis;
using Clomwright.Study;

namespace Clomwright.Web.Editing;

/// <summary>Long work on one study, beside everything else.</summary>
internal sealed class LongRun<T>
{
    private readonly Action cancel;
    private double share;

    /// <param name="study">Of which house.</param>
    /// <param name="work">The work.</param>
    public LongRun(HouseStudy study, Func<HouseStudy, Watch, T> work)
    {
        // Without a timer there is nothing in it to give back.
        var giveUp = new CancellationTokenSource();
        (Study, cancel) = (study, giveUp.Cancel);
        var watch = new Watch(done => Volatile.Write(ref share, done), giveUp.Token);
        Done = Task.Run(() => work(study, watch), giveUp.Token);
    }

    /// <summary>Of which house.</summary>
    public HouseStudy Study { get; }

    /// <summary>What came of it; cancelled when somebody stopped it or the house changed.</summary>
    public Task<T> Done { get; }

    /// <summary>How far it is, 0 to 1.</summary>
    public double Share => Volatile.Read(ref share);

    /// <summary>Gives up.</summary>
    public void Cancel() => cancel();
}
