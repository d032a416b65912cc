using System.Runtime.CompilerServices;
using Clomwright.Analysis;
using Clomwright.Study;

namespace Clomwright.Web.Editing;

/// <summary>Long work on one study, beside everything else.</summary>
internal sealed class LongRun<T>
{
    private static readonly TimeSpan LookAgain = TimeSpan.FromMilliseconds(120);

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

    /// <summary>What a page is told: how far it is, time and again, then what was found. Nothing more once it is given up.</summary>
    /// <param name="far">Says how far it is.</param>
    /// <param name="found">Say what was found, one after the other where one is quicker than the next.</param>
    /// <param name="alone">Called when the page lets go before it is done; null where others wait too.</param>
    /// <param name="stop">The page lets go.</param>
    public async IAsyncEnumerable<TAnswer> Told<TAnswer>(Func<double, TAnswer> far, Func<T, TAnswer>[] found, Action? alone, [EnumeratorCancellation] CancellationToken stop)
    {
        try
        {
            while (!Done.IsCompleted)
            {
                yield return far(Share);
                await Task.WhenAny(Done, Task.Delay(LookAgain, stop));
                stop.ThrowIfCancellationRequested();
            }
        }
        finally
        {
            if (!Done.IsCompleted)
            {
                alone?.Invoke();
            }
        }

        if (Done.IsCanceled)
        {
            yield break;
        }

        var known = await Done;
        foreach (var say in found)
        {
            yield return await Task.Run(() => say(known), stop);
        }
    }

    /// <summary>Gives up.</summary>
    public void Cancel() => cancel();
}
