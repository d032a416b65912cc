using System.Runtime.InteropServices;

namespace Clomwright.Numerics.Factorisation;

/// <summary>Where all <see cref="NativeBlock"/>s get their memory and give it back, from any thread: a few large chunks that the system lends and takes back whole.</summary>
/// <remarks>
/// A wall is some hundred blocks of a few kB to some MB, taken and given back by whichever threads of the pool come by. The system's allocator keeps for each thread (glibc: arenas of 64 MiB, eight for each processor)
/// what that thread was ever given: after minutes several times what any moment needed. Here what one thread gave back serves the next, and a chunk that is empty goes back to the system but for <see cref="KeptChunks"/>.
/// </remarks>
internal sealed partial class NativeStore : IDisposable
{
    /// <summary>Bytes of a chunk. Above 32 MiB every system's allocator maps a request by itself and unmaps it when it is given back; pages that nobody has written to take no memory.</summary>
    public const long ChunkBytes = 64L << 20;

    /// <summary>Empty chunks kept for the next wall, which takes one to two: fresh pages cost several times what they cost to fill with zeros.</summary>
    public const int KeptChunks = 2;

    /// <summary>Blocks start on and are rounded up to a cache line, bytes.</summary>
    public const int Line = 64;

    /// <summary>Larger blocks are no part of a chunk: the system lends each by itself.</summary>
    private const long LargestShared = ChunkBytes / 2;

    /// <summary>Bytes of a large page, on which a chunk starts.</summary>
    private const int LargePage = 2 << 20;

    /// <summary>What Linux calls MADV_HUGEPAGE.</summary>
    private const int LargePages = 14;

    private readonly Lock gate = new();
    private readonly List<NativeChunk> chunks = [];
    private long alone;

    /// <summary>The store of the process.</summary>
    public static NativeStore Shared { get; } = new();

    /// <summary>Bytes lent to blocks.</summary>
    public long Lent
    {
        get
        {
            lock (gate)
            {
                return alone + chunks.Sum(chunk => ChunkBytes - chunk.Free);
            }
        }
    }

    /// <summary>Bytes asked of the system.</summary>
    public long Held
    {
        get
        {
            lock (gate)
            {
                return alone + chunks.Count * ChunkBytes;
            }
        }
    }

    /// <summary>Memory for a block, with whatever was in it.</summary>
    public nint Take(long bytes)
    {
        bytes = Rounded(bytes);
        lock (gate)
        {
            if (bytes > LargestShared)
            {
                var whole = Borrow(bytes);
                alone += bytes;
                return whole;
            }

            // The oldest chunk with room: younger ones run empty.
            foreach (var chunk in chunks)
            {
                if (chunk.Take(bytes) is { } place)
                {
                    return place;
                }
            }

            chunks.Add(new NativeChunk(Borrow(ChunkBytes), ChunkBytes));
            return chunks[^1].Take(bytes)!.Value;
        }
    }

    /// <summary>Gives a block back.</summary>
    /// <param name="place">What <see cref="Take"/> answered.</param>
    /// <param name="bytes">What was asked for.</param>
    public void Give(nint place, long bytes)
    {
        bytes = Rounded(bytes);
        lock (gate)
        {
            if (bytes > LargestShared)
            {
                alone -= bytes;
                Return(place);
                return;
            }

            var chunk = chunks.Find(c => c.Holds(place))!;
            chunk.Give(place, bytes);
            if (chunk.IsEmpty && chunks.Count(c => c.IsEmpty) > KeptChunks)
            {
                chunks.Remove(chunk);
                Return(chunk.Start);
            }
        }
    }

    /// <summary>Gives every chunk back, whatever is still lent of it.</summary>
    public void Dispose()
    {
        lock (gate)
        {
            chunks.ForEach(chunk => Return(chunk.Start));
            chunks.Clear();
        }
    }

    private static long Rounded(long bytes) => (bytes + Line - 1) / Line * Line;

    private static unsafe nint Borrow(long bytes)
    {
        var place = (nint)NativeMemory.AlignedAlloc((nuint)bytes, LargePage);
        if (OperatingSystem.IsLinux())
        {
            // Only advice: a system without large pages goes on with small ones.
            _ = Advise(place, (nint)bytes, LargePages);
        }

        return place;
    }

    private static unsafe void Return(nint place) => NativeMemory.AlignedFree((void*)place);

    [LibraryImport("libc", EntryPoint = "madvise")]
    private static partial int Advise(nint place, nint bytes, int advice);
}
