using System.Runtime.InteropServices;

namespace Clomwright.Numerics.Factorisation;

/// <summary>A block of numbers outside the collected heap, on a cache line, grown when asked for more and shrunk when asked for less than half.</summary>
/// <remarks>One cache line before and one after it may be read (not written) beside it.</remarks>
internal sealed unsafe class NativeBlock : IDisposable
{
    private nint allocated;

    /// <summary>First number; null while empty.</summary>
    public double* Start { get; private set; }

    /// <summary>Room for so many numbers.</summary>
    public long Capacity { get; private set; }

    /// <summary>Makes room for a number of doubles. What was in it is lost when it moves, and anything may be in it then.</summary>
    public void Require(long count)
    {
        if (count <= Capacity && 2 * count >= Capacity)
        {
            return;
        }

        Release();
        if (count > 0)
        {
            allocated = NativeStore.Shared.Take(BytesFor(count));
            Start = (double*)(allocated + NativeStore.Line);
            Capacity = count;
            NativeMemory.Clear((void*)allocated, NativeStore.Line);
            NativeMemory.Clear(Start + count, NativeStore.Line);
            GC.AddMemoryPressure(Capacity * sizeof(double));
        }
    }

    /// <summary>Makes room for at least a number of doubles.</summary>
    public double* AtLeast(long count)
    {
        Require(Math.Max(count, Capacity));
        return Start;
    }

    /// <summary>Fills the first numbers with zero.</summary>
    public void Clear(long count) => NativeMemory.Clear(Start, (nuint)count * sizeof(double));

    /// <summary>Gives the memory back.</summary>
    public void Dispose()
    {
        Release();
        GC.SuppressFinalize(this);
    }

    /// <summary>Gives the memory back when nobody did.</summary>
    ~NativeBlock() => Release();

    private static long BytesFor(long count) => count * sizeof(double) + 2 * NativeStore.Line;

    private void Release()
    {
        if (Capacity > 0)
        {
            GC.RemoveMemoryPressure(Capacity * sizeof(double));
            NativeStore.Shared.Give(allocated, BytesFor(Capacity));
        }

        allocated = 0;
        Start = null;
        Capacity = 0;
    }
}
