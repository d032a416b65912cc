namespace Clomwright.Papers.Layout;

/// <summary>Moves labels apart along a line as little as possible.</summary>
internal static class Spreading
{
    /// <summary>New middles, in the order given, so that neighbours do not touch and all stay between two ends where there is room.</summary>
    /// <param name="wanted">Where each would like its middle.</param>
    /// <param name="sizes">Room each needs along the line.</param>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end.</param>
    /// <remarks>Neighbours that touch are pooled and stand about the mean of what they want, which makes the sum of squared moves least.</remarks>
    public static double[] Apart(IReadOnlyList<double> wanted, IReadOnlyList<double> sizes, double low, double high)
    {
        var order = Enumerable.Range(0, wanted.Count).OrderBy(i => wanted[i]).ToArray();
        List<Pool> pools = [];
        foreach (var i in order)
        {
            var pool = new Pool([i], wanted[i], sizes[i]);
            while (pools.Count > 0 && pools[^1].Right(low, high) > pool.Left(low, high) + 1e-9)
            {
                pool = Joined(pools[^1], pool);
                pools.RemoveAt(pools.Count - 1);
            }

            pools.Add(pool);
        }

        var middles = new double[wanted.Count];
        foreach (var pool in pools)
        {
            var at = pool.Left(low, high);
            foreach (var i in pool.Members)
            {
                middles[i] = at + sizes[i] / 2;
                at += sizes[i];
            }
        }

        return middles;

        Pool Joined(Pool a, Pool b)
        {
            int[] members = [.. a.Members, .. b.Members];
            var size = members.Sum(i => sizes[i]);
            var offset = 0.0;
            var sum = 0.0;
            foreach (var i in members)
            {
                sum += wanted[i] - offset - sizes[i] / 2;
                offset += sizes[i];
            }

            return new Pool(members, sum / members.Length + size / 2, size);
        }
    }

    private sealed record Pool(int[] Members, double Middle, double Size)
    {
        public double Left(double low, double high) => Math.Max(low, Math.Min(Middle - Size / 2, high - Size));

        public double Right(double low, double high) => Left(low, high) + Size;
    }
}
