namespace Clomwright.Numerics.Factorisation;

/// <summary>Shares fronts among threads: whole subtrees first, each on one thread, then the large fronts above them one by one, all threads together.</summary>
internal sealed class WorkPlan
{
    private const int PartsPerThread = 8;

    /// <summary>Plans the given fronts: children before parents, and with each front all its ancestors.</summary>
    public WorkPlan(List<Front> fronts, Func<Front, double> costOf, int threads)
    {
        var limit = threads == 1 ? double.MaxValue : fronts.Sum(costOf) / (PartsPerThread * threads);
        var below = new Dictionary<Front, (double Cost, List<Front> Fronts)>();
        foreach (var front in fronts)
        {
            var (cost, subtree) = (costOf(front), (List<Front>?)null);
            List<Front> children = [.. front.Children.Where(below.ContainsKey)];
            cost += children.Sum(child => below[child].Cost);
            if (cost > limit || Together.Count > 0 && front.Children.Any(Together.Contains))
            {
                Together.Add(front);
                continue;
            }

            foreach (var child in children)
            {
                below.Remove(child, out var part);
                if (subtree is null)
                {
                    subtree = part.Fronts;
                }
                else
                {
                    subtree.AddRange(part.Fronts);
                }
            }

            subtree ??= [];
            subtree.Add(front);
            below[front] = (cost, subtree);
        }

        Separate = [.. below.Values.OrderByDescending(part => part.Cost).Select(part => part.Fronts)];
    }

    /// <summary>Subtrees, the most costly first.</summary>
    public IReadOnlyList<List<Front>> Separate { get; }

    /// <summary>Fronts for all threads together, children before parents.</summary>
    public List<Front> Together { get; } = [];
}
