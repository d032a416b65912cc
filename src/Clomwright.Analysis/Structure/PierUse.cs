using Clomwright.Analysis.WallByHand;

namespace Clomwright.Analysis.Structure;

/// <summary>How hard the forces that the model leads through a section use a pier without tension: where they stand, and whether they slide.</summary>
/// <remarks>
/// Forces of an elastic body are in equilibrium with the loads. Cob that holds no tension passes a force on as long as it stands inside the section, less the strip that is crushed under it:
/// across |e| up to (t - N/(k f_a b))/2, along |e_b| up to (b - N/(k f_a t))/2 with k = 0.85, each by itself. Along, it slides at mu N in joints between lifts, each as if it had dried, and cracks
/// across at A f_t/b_s sqrt(1 + s/f_t) with the numbers of the hand (<see cref="PierStrength"/>).
/// </remarks>
internal sealed class PierUse
{
    private readonly PierSections[] piers;
    private readonly bool[][] joints;
    private readonly double strength, friction, tension;

    /// <param name="body">The wall.</param>
    /// <param name="piers">Its piers.</param>
    /// <param name="strength">f_a, Pa.</param>
    public PierUse(WallBody body, PierSections[] piers, double strength)
    {
        (this.piers, this.strength, friction, tension) = (piers, strength, body.Numbers["wall-joint-friction"], body.Numbers["wall-tension-share"] * strength);
        var tops = body.Geometry.Lifts.Select(l => l.Top.Metres).ToArray();
        joints = [.. piers.Select(p => p.Rows.Select(k => tops.Any(top => top > body.Grid.Z[k] && top <= body.Grid.Z[k + 1])).ToArray())];
        (Across, Along) = (new PierPush[piers.Length], new PierPush[piers.Length]);
    }

    /// <summary>The hardest across, one a pier.</summary>
    public PierPush[] Across { get; }

    /// <summary>The hardest along, one a pier.</summary>
    public PierPush[] Along { get; }

    /// <summary>Takes one case in.</summary>
    /// <param name="number">Of the case.</param>
    /// <param name="actions">Of all sections, one after the other.</param>
    public void Take(int number, double[] actions)
    {
        var at = 0;
        for (var i = 0; i < piers.Length; i++)
        {
            for (var n = 0; n < piers[i].Rows.Length; n++, at += PierSections.Parts)
            {
                if (piers[i].Areas[n] > 0)
                {
                    Take(i, n, number, -actions[at], Math.Abs(actions[at + 1]), Math.Abs(actions[at + 2]), Math.Abs(actions[at + 3]));
                }
            }
        }
    }

    /// <summary>Takes in what later cases made of the same piers.</summary>
    public void Take(PierUse later)
    {
        for (var pier = 0; pier < piers.Length; pier++)
        {
            foreach (var (kept, one) in new[] { (Across, later.Across[pier]), (Along, later.Along[pier]) })
            {
                if (one.Mode is not null)
                {
                    Keep(kept, pier, one);
                }
            }
        }
    }

    private void Take(int pier, int row, int number, double load, double shear, double across, double along)
    {
        var (thickness, area) = (piers[pier].Deep[row], piers[pier].Areas[row]);
        var width = area / thickness;
        var block = Rocking.Block * strength;
        var (e, eb) = load > 0 ? (across / load, along / load) : (thickness, width);
        var mayAcross = Math.Max(0, (thickness - load / (block * width)) / 2);
        var mayAlong = Math.Max(0, (width - load / (block * thickness)) / 2);
        Keep(Across, pier, new PierPush("tipping", e, mayAcross, load, row, number));
        Keep(Along, pier, new PierPush("tipping", eb, mayAlong, load, row, number));
        Keep(Along, pier, new PierPush("cracking", shear, PierStrength.Cracking(load, width, thickness, piers[pier].Pier.Heights.Width, tension), load, row, number));
        if (joints[pier][row])
        {
            Keep(Along, pier, new PierPush("sliding", shear, friction * Math.Max(0, load), load, row, number));
        }
    }

    private static void Keep(PierPush[] kept, int pier, PierPush one)
    {
        if (kept[pier].Mode is null || one.Use > kept[pier].Use)
        {
            kept[pier] = one;
        }
    }
}

/// <summary>One pier in one case at one level.</summary>
/// <param name="Mode"><c>tipping</c>: off the middle, m; <c>sliding</c> and <c>cracking</c>: force, N.</param>
/// <param name="Asked">How far off, or how hard.</param>
/// <param name="Holds">What it stands.</param>
/// <param name="Load">What presses there, N.</param>
/// <param name="Row">Of the pier's sections.</param>
/// <param name="Case">Number of the case.</param>
internal readonly record struct PierPush(string? Mode, double Asked, double Holds, double Load, int Row, int Case)
{
    public double Use => Holds > 0 ? Asked / Holds : Asked > 0 ? double.MaxValue : 0;
}
