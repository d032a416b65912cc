namespace Clomwright.Numerics.Frames;

/// <summary>Orders nodes so that neighbours stay close together and the profile of the matrix small.</summary>
/// <remarks>Reverse Cuthill-McKee (George 1971), begun at an end of a long way through each connected part.</remarks>
internal static class Numbering
{
    /// <summary>Nodes in their new order.</summary>
    public static int[] Of(int nodes, IReadOnlyList<(int A, int B)> links)
    {
        var neighbours = new List<int>[nodes];
        for (var i = 0; i < nodes; i++)
        {
            neighbours[i] = [];
        }

        foreach (var (a, b) in links)
        {
            neighbours[a].Add(b);
            neighbours[b].Add(a);
        }

        var order = new List<int>(nodes);
        var placed = new bool[nodes];
        for (var seed = 0; seed < nodes; seed++)
        {
            if (!placed[seed])
            {
                // Two sweeps from any node end far apart; starting there keeps the levels narrow.
                var far = Sweep(Sweep(seed, neighbours, placed)[^1], neighbours, placed)[^1];
                foreach (var node in Sweep(far, neighbours, placed))
                {
                    placed[node] = true;
                    order.Add(node);
                }
            }
        }

        order.Reverse();
        return [.. order];
    }

    private static List<int> Sweep(int start, List<int>[] neighbours, bool[] placed)
    {
        var seen = new HashSet<int> { start };
        var order = new List<int> { start };
        for (var at = 0; at < order.Count; at++)
        {
            foreach (var next in neighbours[order[at]].Where(k => !placed[k] && !seen.Contains(k)).Distinct().OrderBy(k => neighbours[k].Count).ThenBy(k => k).ToList())
            {
                seen.Add(next);
                order.Add(next);
            }
        }

        return order;
    }
}
