using Clomwright.Evidence;
using Clomwright.Files.Forms;

namespace Clomwright.Files.Typing;

/// <summary>One step from an old list to a new one: an old item kept or changed, taken out (<see cref="New"/> is -1) or a new one put in (<see cref="Old"/> is -1).</summary>
internal readonly record struct Aligned(int Old, int New);

/// <summary>Which items of two lists are the same things.</summary>
internal static class Alignment
{
    /// <summary>Longer changed stretches than this are paired in order.</summary>
    private const int ComparedMost = 1000;

    /// <summary>
    /// Items are matched by their names, or by value where they have none, in a longest common subsequence; what is left between two matches is paired in order, so
    /// that a renamed thing stays where it is.
    /// </summary>
    public static IReadOnlyList<Aligned> Of(Sequence<Piece> old, Sequence<Piece> now)
    {
        var (oldNames, nowNames) = (old.Select(NameOf).ToArray(), now.Select(NameOf).ToArray());
        var same = 0;
        while (same < old.Count && same < now.Count && oldNames[same].Equals(nowNames[same]))
        {
            same++;
        }

        var (oldEnd, nowEnd) = (old.Count, now.Count);
        while (oldEnd > same && nowEnd > same && oldNames[oldEnd - 1].Equals(nowNames[nowEnd - 1]))
        {
            (oldEnd, nowEnd) = (oldEnd - 1, nowEnd - 1);
        }

        var steps = new List<Aligned>();
        Between(steps, 0, same, 0, same);
        if (oldEnd - same > ComparedMost || nowEnd - same > ComparedMost)
        {
            Between(steps, same, oldEnd, same, nowEnd);
        }
        else
        {
            Subsequence(steps, oldNames.AsSpan(same, oldEnd - same), nowNames.AsSpan(same, nowEnd - same), same);
        }

        Between(steps, oldEnd, old.Count, nowEnd, now.Count);
        return steps;
    }

    private static void Subsequence(List<Aligned> steps, ReadOnlySpan<Piece> old, ReadOnlySpan<Piece> now, int offset)
    {
        var longest = Longest(old, now);
        var (i, j) = (0, 0);
        while (i < old.Length || j < now.Length)
        {
            var (fromOld, fromNow) = (i, j);
            while (i < old.Length && j < now.Length && !old[i].Equals(now[j]))
            {
                (i, j) = longest[i + 1, j] >= longest[i, j + 1] ? (i + 1, j) : (i, j + 1);
            }

            if (i == old.Length || j == now.Length)
            {
                (i, j) = (old.Length, now.Length);
            }

            Between(steps, offset + fromOld, offset + i, offset + fromNow, offset + j);
            if (i < old.Length && j < now.Length)
            {
                steps.Add(new Aligned(offset + i++, offset + j++));
            }
        }
    }

    private static void Between(List<Aligned> steps, int fromOld, int toOld, int fromNow, int toNow)
    {
        for (; fromOld < toOld || fromNow < toNow; fromOld++, fromNow++)
        {
            steps.Add(new Aligned(fromOld < toOld ? fromOld : -1, fromNow < toNow ? fromNow : -1));
        }
    }

    private static Piece NameOf(Piece item) => (item as Piece.Members)?.Find("name") ?? item;

    private static int[,] Longest(ReadOnlySpan<Piece> old, ReadOnlySpan<Piece> now)
    {
        var longest = new int[old.Length + 1, now.Length + 1];
        for (var i = old.Length - 1; i >= 0; i--)
        {
            for (var j = now.Length - 1; j >= 0; j--)
            {
                longest[i, j] = old[i].Equals(now[j]) ? longest[i + 1, j + 1] + 1 : Math.Max(longest[i + 1, j], longest[i, j + 1]);
            }
        }

        return longest;
    }
}
