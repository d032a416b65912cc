using System.Runtime.InteropServices;

namespace Clomwright.Numerics.Factorisation;

/// <summary>A block of numbers outside the collected heap, on a cache line, grown when asked for more and shrunk when asked for less than half.</summary>
internal sealed unsafe class NativeBlock : IDisposable
{
    private const int CacheLine = 64;

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
            Start = (double*)NativeMemory.AlignedAlloc((nuint)count * sizeof(double), CacheLine);
            Capacity = count;
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

    private void Release()
    {
        NativeMemory.AlignedFree(Start);
        Start = null;
        Capacity = 0;
    }
}
