namespace Clomwright.Numerics.Factorisation;

/// <summary>
/// Loops shared among threads for the length of one piece of work. The thread that asks does everything itself if no other comes to help, so a busy
/// machine makes it slow, never stuck. Which thread does what has no influence on the numbers.
/// </summary>
internal sealed class SharedWork : IDisposable
{
    private sealed class Loop(int count, Action<int> body)
    {
        public readonly int Count = count;
        public readonly Action<int> Body = body;
        public int Next;
        public int Done;
        public Exception? Failure;
    }

    private readonly int helpers;
    private volatile Loop? current;
    private volatile bool closed;

    /// <summary>Calls for helpers from the thread pool: one less than <paramref name="threads"/>.</summary>
    public SharedWork(int threads)
    {
        helpers = threads - 1;
        for (var i = 0; i < helpers; i++)
        {
            ThreadPool.UnsafeQueueUserWorkItem(static work => work.Help(), this, preferLocal: false);
        }
    }

    /// <summary>Runs <paramref name="body"/> for 0..count-1 in any order on any of the threads; returns when all are done.</summary>
    public void ForEach(int count, Action<int> body)
    {
        if (helpers == 0 || count < 2)
        {
            for (var i = 0; i < count; i++)
            {
                body(i);
            }

            return;
        }

        var loop = new Loop(count, body);
        current = loop;
        Take(loop);
        var wait = new SpinWait();
        while (Volatile.Read(ref loop.Done) < count)
        {
            wait.SpinOnce(sleep1Threshold: -1);
        }

        current = null;
        if (loop.Failure is { } failure)
        {
            throw new AggregateException(failure);
        }
    }

    /// <summary>Sends the helpers home.</summary>
    public void Dispose() => closed = true;

    private void Help()
    {
        var wait = new SpinWait();
        while (!closed)
        {
            if (current is { } loop && Volatile.Read(ref loop.Next) < loop.Count)
            {
                Take(loop);
                wait.Reset();
            }
            else
            {
                wait.SpinOnce(sleep1Threshold: -1);
            }
        }
    }

    private static void Take(Loop loop)
    {
        int i;
        while ((i = Interlocked.Increment(ref loop.Next) - 1) < loop.Count)
        {
            try
            {
                loop.Body(i);
            }
#pragma warning disable CA1031 // Carried to the thread that asked.
            catch (Exception failure)
#pragma warning restore CA1031
            {
                loop.Failure = failure;
            }

            Interlocked.Increment(ref loop.Done);
        }
    }
}
