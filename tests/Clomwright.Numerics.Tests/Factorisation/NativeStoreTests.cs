using Clomwright.Numerics.Factorisation;
using Clomwright.Testing;

namespace Clomwright.Numerics.Tests.Factorisation;

public sealed class NativeStoreTests
{
    /// <summary>Of the sizes of a wall's blocks: most small, some MB now and then, one that no chunk is shared for.</summary>
    private static readonly Gen<long> Sizes = Gen.Frequency((6, Gen.Long[1, 20_000]), (3, Gen.Long[20_000, 3_000_000]), (1, Gen.Long[3_000_000, 40_000_000]));

    // Rank: property. What is lent never overlaps, lies on cache lines, and is all there again once given back, in whatever order.
    [Fact]
    public void Blocks_never_overlap_and_what_is_given_back_serves_again() =>
        Gen.Select(Sizes, Gen.Int[0, 1000]).Array[1, 120].ForAll(
            steps =>
            {
                using var store = new NativeStore();
                var lent = new List<(nint Place, long Bytes)>();
                foreach (var (bytes, which) in steps)
                {
                    // Two are taken for one that is given back.
                    if (which % 3 == 0 && lent.Count > 0)
                    {
                        GiveBack(store, lent, which % lent.Count);
                    }
                    else
                    {
                        var place = store.Take(bytes);
                        Assert.Equal(0, place % NativeStore.Line);
                        Assert.DoesNotContain(lent, other => place < other.Place + other.Bytes && other.Place < place + bytes);
                        lent.Add((place, bytes));
                    }

                    Assert.InRange(store.Lent, lent.Sum(l => l.Bytes), lent.Sum(l => l.Bytes + NativeStore.Line));
                    Assert.InRange(store.Held, store.Lent, long.MaxValue);
                }

                while (lent.Count > 0)
                {
                    GiveBack(store, lent, steps[0].Item2 % lent.Count);
                }

                Assert.Equal(0, store.Lent);
                Assert.InRange(store.Held, 0, NativeStore.KeptChunks * NativeStore.ChunkBytes);
            },
            iter: Counts.Of(50, 1000));

    // Rank: property. Threads that take and give back each other's blocks, as those of the pool do, end with nothing lent and no more held than one of them alone would need.
    [Fact]
    public void Many_threads_hold_no_more_than_is_in_use()
    {
        using var store = new NativeStore();
        var passed = new System.Collections.Concurrent.ConcurrentQueue<(nint Place, long Bytes)>();
        var most = 0L;
        var threads = Enumerable.Range(0, 24).Select(n => new Thread(() =>
        {
            for (var i = 0; i < 400; i++)
            {
                var bytes = 4_000 + 613 * ((n * 400 + i) % 300);
                passed.Enqueue((store.Take(bytes), bytes));
                if (passed.Count > 200 && passed.TryDequeue(out var old))
                {
                    store.Give(old.Place, old.Bytes);
                }

                InterlockedMax(ref most, store.Held);
            }
        })).ToList();
        threads.ForEach(t => t.Start());
        threads.ForEach(t => t.Join());
        while (passed.TryDequeue(out var left))
        {
            store.Give(left.Place, left.Bytes);
        }

        Assert.Equal(0, store.Lent);
        // At most 224 blocks of 188 kB are in use at once, 42 MB: a chunk, and a second should the first be badly cut.
        Assert.InRange(most, 1, 2 * NativeStore.ChunkBytes);
    }

    private static void GiveBack(NativeStore store, List<(nint Place, long Bytes)> lent, int which)
    {
        store.Give(lent[which].Place, lent[which].Bytes);
        lent.RemoveAt(which);
    }

    private static void InterlockedMax(ref long most, long value)
    {
        for (var known = Volatile.Read(ref most); value > known;)
        {
            var before = Interlocked.CompareExchange(ref most, value, known);
            known = before == known ? value : before;
        }
    }
}
