namespace Clomwright.Evidence;

/// <summary>Work on things that know nothing of one another, on as many processors as there are.</summary>
public static class OnAllProcessors
{
    /// <summary>What each comes to, in their order.</summary>
    /// <param name="items">Each is taken once, some at a time, in no order.</param>
    /// <param name="make">May be called by several threads at once.</param>
    /// <exception cref="AggregateException">What some of them threw.</exception>
    public static TOut[] EachBesideOthers<TIn, TOut>(this IReadOnlyList<TIn> items, Func<TIn, TOut> make)
    {
        ArgumentNullException.ThrowIfNull(items);
        ArgumentNullException.ThrowIfNull(make);
        var made = new TOut[items.Count];
        Parallel.For(0, made.Length, i => made[i] = make(items[i]));
        return made;
    }
}
