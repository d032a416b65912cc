namespace Clomwright.Papers.Sheets;

/// <summary>Sheets drawn on as many processors as there are, in the order asked for.</summary>
internal static class SideBySide
{
    public static T[] Drawn<T>(IEnumerable<Func<IEnumerable<T>>> sheets) =>
        [.. sheets.AsParallel().AsOrdered().WithMergeOptions(ParallelMergeOptions.FullyBuffered).Select(some => some().ToArray()).SelectMany(some => some)];
}
