using System.Runtime.InteropServices;

namespace Clomwright.Numerics.Factorisation;

/// <summary>A block of numbers outside the collected heap, on a cache line, grown when asked for more and shrunk when asked for less than half.</summary>
/// <remarks>One cache line before and one after it may be read (not written) beside it.</remarks>
internal sealed unsafe class NativeBlock : IDisposable
{
    private const int CacheLine = 64;
    private const int CacheLineNumbers = CacheLine / sizeof(double);

    private double* allocated;
    private bool isZero;

    /// <summary>First number; null while empty.</summary>
    public double* Start { get; private set; }

    /// <summary>Room for so many numbers.</summary>
    public long Capacity { get; private set; }

    /// <summary>Makes room for a number of doubles. What was in it is lost when it moves.</summary>
    public void Require(long count)
    {
        if (count <= Capacity && 2 * count >= Capacity)
        {
            return;
        }

        Release();
        if (count > 0)
        {
            // Zeroed by the system, which costs nothing for fresh pages.
            allocated = (double*)NativeMemory.AllocZeroed((nuint)(count + 3 * CacheLineNumbers), sizeof(double));
            Start = (double*)(((nint)allocated + (2 * CacheLine) - 1) & -CacheLine);
            (Capacity, isZero) = (count, true);
            GC.AddMemoryPressure(Capacity * sizeof(double));
        }
    }

    /// <summary>Makes room for at least a number of doubles.</summary>
    public double* AtLeast(long count)
    {
        Require(Math.Max(count, Capacity));
        isZero = false;
        return Start;
    }

    /// <summary>Fills the first numbers with zero.</summary>
    public void Clear(long count)
    {
        if (!isZero)
        {
            NativeMemory.Clear(Start, (nuint)count * sizeof(double));
        }

        isZero = false;
    }

    /// <summary>Gives the memory back.</summary>
    public void Dispose()
    {
        Release();
        GC.SuppressFinalize(this);
    }

    /// <summary>Gives the memory back when nobody did.</summary>
    ~NativeBlock() => Release();

    private void Release()
    {
        if (Capacity > 0)
        {
            GC.RemoveMemoryPressure(Capacity * sizeof(double));
        }

        NativeMemory.Free(allocated);
        allocated = null;
        Start = null;
        Capacity = 0;
    }
}
