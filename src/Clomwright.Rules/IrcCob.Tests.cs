using System.Collections.Frozen;
using Clomwright.Analysis.Mix;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>What the model cob code asks of tests of the mix. Which of them are of the mix in the wall comes with the result; which have the size asked is decided here.</summary>
internal static partial class IrcCob
{
    private static readonly Length BarLength = Length.FromInches(24);
    private static readonly Length PrismSide = Length.FromInches(4);
    private static readonly Length PrismHeight = Length.FromInches(8);
    private const int PrismCount = 5;

    /// <summary>The method of each rule about tests.</summary>
    public static readonly FrozenDictionary<string, Func<Mix, MixResult, Amount, Sequence<Ruling>>> TestMethods = new Dictionary<string, Func<Mix, MixResult, Amount, Sequence<Ruling>>>
    {
        ["mix-shrinkage"] = MixShrinkage,
        ["cob-strength"] = CobStrength,
        ["cob-strength-bracing"] = CobStrength,
        ["modulus-of-rupture"] = Rupture,
    }.ToFrozenDictionary();

    /// <summary>The rulings of a rule about tests; not checked where nothing was computed.</summary>
    public static Sequence<Ruling> OfTests(string rule, Mix mix, MixResult? read, Amount limit) =>
        read is null ? [Ruling.NotChecked("mix", "not-computed")] : TestMethods[rule](mix, read, limit);

    /// <summary>Total shortening of each shrinkage bar of the size asked and of the mix in the wall.</summary>
    private static Sequence<Ruling> MixShrinkage(Mix mix, MixResult read, Amount most)
    {
        var bars = mix.TestBars.Index().Where(b => read.BarCounts(b.Index)).ToList();
        return bars.Count == 0
            ? [Ruling.NotChecked("mix", mix.TestBars.Count == 0 ? "no-test-bars" : "test-bars-of-other-mixes")]
            : bars.Select(b => b.Item.Length == BarLength
                ? new Ruling($"test bar {b.Index + 1}", Require.AtMost(b.Item.Shrinkage, most))
                : Ruling.NotChecked($"test bar {b.Index + 1}", "test-bar-size")).ToSequence();
    }

    /// <summary>
    /// Crushing strength of five prisms dried without an oven. How the appendix reads five results is not known here: every one at the
    /// number or above is met under any reading, every one below it falls short under any, and anything between is not checked.
    /// </summary>
    private static Sequence<Ruling> CobStrength(Mix mix, MixResult read, Amount least)
    {
        var strengths = mix.Prisms.Index()
            .Where(p => read.StrengthLeftOut(p.Index) is null && p.Item is { Oven: false, Shape: SpecimenShape.Prism } && p.Item.Width == PrismSide && p.Item.Depth == PrismSide && p.Item.Height == PrismHeight)
            .Select(p => Exactly.Near(read.StrengthOf(p.Index)!.Value, least)).ToList();
        if (strengths.Count < PrismCount)
        {
            return [Ruling.NotChecked("mix", mix.Prisms.Count == 0 ? "no-prisms" : "too-few-prisms")];
        }

        var lowest = Require.AtLeast(strengths.MinBy(s => s.Si), least);
        var highest = Require.AtLeast(strengths.MaxBy(s => s.Si), least);
        return (lowest, highest) switch
        {
            (Verdict.Met, _) => [new Ruling("mix", lowest)],
            (_, Verdict.FallsShort) => [new Ruling("mix", highest)],
            _ => [Ruling.NotChecked("mix", "prisms-on-both-sides")],
        };
    }

    /// <summary>Each brick of the mix in the wall that was broken by bending.</summary>
    private static Sequence<Ruling> Rupture(Mix mix, MixResult read, Amount least)
    {
        var bricks = mix.Bricks.Index().Where(b => read.RuptureCounts(b.Index)).ToList();
        return bricks.Count == 0
            ? [Ruling.NotChecked("mix", "no-bricks")]
            : bricks.Select(b => new Ruling($"brick {b.Index + 1}", Require.AtLeast(Exactly.Near(read.RuptureOf(b.Index)!.Value, least), least))).ToSequence();
    }
}
