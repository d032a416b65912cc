using Clomwright.Analysis;

namespace Clomwright.Study;

/// <summary>Long work that is done when somebody first asks, and kept: asked for as it is, or by one who waits, is told how far it is and may give up.</summary>
internal sealed class Awaited<T>
{
    private readonly Func<Watch?, T> work;

    /// <summary>What the work that somebody waited for came to.</summary>
    private readonly TaskCompletionSource<T> waited = new();
    private readonly Lazy<T> value;

    /// <param name="work">The work; without a watch where nobody waits.</param>
    public Awaited(Func<Watch?, T> work)
    {
        this.work = work;
        value = new(() => waited.Task.IsCompletedSuccessfully ? waited.Task.Result : work(null));
    }

    /// <summary>Whether it is done and kept.</summary>
    public bool IsValueCreated => value.IsValueCreated;

    /// <summary>What it comes to.</summary>
    public T Value => value.Value;

    /// <summary>The same for one who waits.</summary>
    /// <exception cref="OperationCanceledException">The one who waited gave up; nothing is kept, and the next who asks begins anew.</exception>
    public T For(Watch watch)
    {
        if (!value.IsValueCreated)
        {
            waited.TrySetResult(work(watch));
        }

        return value.Value;
    }
}
