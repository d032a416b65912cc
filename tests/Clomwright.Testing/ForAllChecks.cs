using CsCheck;

namespace Clomwright.Testing;

/// <summary>
/// Properties that have to hold for everything that can be drawn. Every draw follows from <see cref="Counts.Seed"/> and its number alone: a run is repeated by its seed, and the same
/// code passes or fails the same on every machine and day.
/// </summary>
/// <remarks>CsCheck's own runner draws from the clock, so a seed that is printed would not repeat its run.</remarks>
public static class ForAllChecks
{
    private const int Usual = 100;

    /// <summary>After something that did not hold, so many more are drawn in search of a smaller one.</summary>
    private const int Smaller = 60;

    /// <summary>Checks so many.</summary>
    /// <param name="gen">What is drawn.</param>
    /// <param name="check">Throws where one does not hold.</param>
    /// <param name="iter">How many.</param>
    /// <param name="threads">How many at a time.</param>
    /// <exception cref="InvalidOperationException">One does not hold; says its number, the seed and what it is.</exception>
    public static void ForAll<T>(this Gen<T> gen, Action<T> check, int iter = Usual, int threads = 2)
    {
        ArgumentNullException.ThrowIfNull(check);
        var run = Parallel.For(0, iter, new ParallelOptions { MaxDegreeOfParallelism = threads }, (number, loop) =>
        {
            if (Fault(Drawn.One(gen, Counts.Seed, number), check) is not null)
            {
                loop.Break();
            }
        });
        if (run.LowestBreakIteration is { } first)
        {
            Refuse(gen, check, (int)first);
        }
    }

    /// <inheritdoc cref="ForAll{T}(Gen{T}, Action{T}, int, int)"/>
    /// <param name="gen">What is drawn.</param>
    /// <param name="holds">Whether one holds.</param>
    /// <param name="iter">How many.</param>
    /// <param name="threads">How many at a time.</param>
    public static void ForAll<T>(this Gen<T> gen, Func<T, bool> holds, int iter = Usual, int threads = 2) => gen.ForAll(
        drawn =>
        {
            if (!holds(drawn))
            {
                throw new InvalidOperationException("It does not hold.");
            }
        },
        iter, threads);

    /// <inheritdoc cref="ForAll{T}(Gen{T}, Action{T}, int, int)"/>
    public static void ForAll<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> check, int iter = Usual, int threads = 2) => gen.ForAll(d => check(d.Item1, d.Item2), iter, threads);

    /// <inheritdoc cref="ForAll{T}(Gen{T}, Func{T, bool}, int, int)"/>
    public static void ForAll<T1, T2>(this Gen<(T1, T2)> gen, Func<T1, T2, bool> holds, int iter = Usual, int threads = 2) => gen.ForAll(d => holds(d.Item1, d.Item2), iter, threads);

    /// <inheritdoc cref="ForAll{T}(Gen{T}, Action{T}, int, int)"/>
    public static void ForAll<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> check, int iter = Usual, int threads = 2) =>
        gen.ForAll(d => check(d.Item1, d.Item2, d.Item3), iter, threads);

    /// <inheritdoc cref="ForAll{T}(Gen{T}, Func{T, bool}, int, int)"/>
    public static void ForAll<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> holds, int iter = Usual, int threads = 2) =>
        gen.ForAll(d => holds(d.Item1, d.Item2, d.Item3), iter, threads);

    /// <inheritdoc cref="ForAll{T}(Gen{T}, Action{T}, int, int)"/>
    public static void ForAll<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> check, int iter = Usual, int threads = 2) =>
        gen.ForAll(d => check(d.Item1, d.Item2, d.Item3, d.Item4), iter, threads);

    /// <inheritdoc cref="ForAll{T}(Gen{T}, Action{T}, int, int)"/>
    public static void ForAll<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Action<T1, T2, T3, T4, T5> check, int iter = Usual, int threads = 2) =>
        gen.ForAll(d => check(d.Item1, d.Item2, d.Item3, d.Item4, d.Item5), iter, threads);

    private static void Refuse<T>(Gen<T> gen, Action<T> check, int first)
    {
        var (least, number) = (Drawn.One(gen, Counts.Seed, first, null, out var size), first);
        for (var next = first + 1; next <= first + Smaller; next++)
        {
            var other = Drawn.One(gen, Counts.Seed, next, size, out var its);
            if (Size.IsLessThan(its, size) && Fault(other, check) is not null)
            {
                (least, number, size) = (other, next, its);
            }
        }

        throw new InvalidOperationException(FormattableString.Invariant($"Number {number} of seed {Counts.Seed} does not hold: {least}"), Fault(least, check));
    }

    private static Exception? Fault<T>(T drawn, Action<T> check)
    {
        try
        {
            check(drawn);
            return null;
        }
        catch (Exception failed)
        {
            return failed;
        }
    }
}
