namespace Clomwright.Numerics.Factorisation;

/// <summary>A stretch of memory from which blocks are cut, lowest place first; neighbours that are given back become one again. Not for use from several threads at once.</summary>
internal sealed class NativeChunk(nint start, long bytes)
{
    /// <summary>What is free, by place, no two touching.</summary>
    private readonly List<(long At, long Bytes)> holes = [(0, bytes)];

    /// <summary>First byte.</summary>
    public nint Start { get; } = start;

    /// <summary>Bytes in all.</summary>
    public long Bytes { get; } = bytes;

    /// <summary>Bytes that are free.</summary>
    public long Free { get; private set; } = bytes;

    /// <summary>Whether nothing of it is in use.</summary>
    public bool IsEmpty => Free == Bytes;

    /// <summary>Whether a place lies in it.</summary>
    public bool Holds(nint place) => place >= Start && place - Start < Bytes;

    /// <summary>Cuts a block from the first hole that is large enough; null where none is.</summary>
    public nint? Take(long wanted)
    {
        if (wanted > Free)
        {
            return null;
        }

        for (var i = 0; i < holes.Count; i++)
        {
            var (at, room) = holes[i];
            if (room < wanted)
            {
                continue;
            }

            if (room == wanted)
            {
                holes.RemoveAt(i);
            }
            else
            {
                holes[i] = (at + wanted, room - wanted);
            }

            Free -= wanted;
            return Start + (nint)at;
        }

        return null;
    }

    /// <summary>Takes a block back.</summary>
    public void Give(nint place, long given)
    {
        var at = (long)(place - Start);
        Free += given;
        var (low, high) = (0, holes.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = holes[middle].At < at ? (middle + 1, high) : (low, middle);
        }

        if (low < holes.Count && at + given == holes[low].At)
        {
            given += holes[low].Bytes;
            holes.RemoveAt(low);
        }

        if (low > 0 && holes[low - 1].At + holes[low - 1].Bytes == at)
        {
            holes[low - 1] = (holes[low - 1].At, holes[low - 1].Bytes + given);
        }
        else
        {
            holes.Insert(low, (at, given));
        }
    }
}
