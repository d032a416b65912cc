using Clomwright.Analysis.WallTrials;
using Clomwright.Evidence;
using Clomwright.Rules;
using Clomwright.Study.Demands;
using Clomwright.Testing;

namespace Clomwright.Study.Tests;

/// <summary>The push at which a house falls, as a finding.</summary>
public sealed class CollapseFindingTests
{
    private static Finding Of(Sequence<Finding> findings) => findings.Single(f => f.Rule.Key == "wall-collapse");

    /// <summary>A quick study says that it was not looked into; never that it is met.</summary>
    [Fact]
    public void QuickStudy_DoesNotCheckIt() =>
        Assert.Equal("study.collapse.not-deep", Assert.IsType<Verdict.NotChecked>(Of(HouseStudy.Of(Houses.HeronPoint).Findings).Verdict).Because.Key);

    /// <summary>A deep one holds the code's share of the weight (C_s = S_DS I_e/R = 0.25/1.5 under the plateau) against the least of what blocks bear, says both answers, and writes them as figures.</summary>
    [Fact]
    public void DeepStudy_HoldsTheEarthquakeAgainstTheBlocks()
    {
        var study = HouseStudy.Of(Houses.HeronPoint, new StudyOptions(Deep: true));
        var collapse = study.Collapse.Value!;
        Assert.Equal(0.25 / 1.5, collapse.Earthquake.Value!.Coefficient, 1e-12);
        Assert.Equal(collapse.Least >= collapse.Earthquake.Value.Coefficient, Of(study.AllFindings).Verdict is Verdict.Met);
        Assert.InRange(collapse.Cracked.Limit, 0.9 * collapse.Least, double.PositiveInfinity);
        Assert.True(Of(study.AllFindings).Notes.Count >= 5);
        Assert.IsType<Figure.Branch>(((Figure.Branch)FiguresOf.House(study)).Parts.Single(part => part.Key == "collapse").Figure);
        TrialsOf(study);
    }

    /// <summary>Rank property: the same deep study answers every trial with no finding short; a result in which the cob squashes, or less than its safety is left, is found by its own rule.</summary>
    private static void TrialsOf(HouseStudy study)
    {
        string[] rules = ["wall-green", "wall-roof-day", "wall-wet-foot", "wall-settlement", "wall-thrust"];
        Assert.All(rules, rule => Assert.Contains(study.AllFindings, f => f.Rule.Key == rule && f.Verdict is Verdict.Met or Verdict.NeedsJudgement));
        Assert.Equal(0, study.FullTally.Short);
        var (trials, lift) = (study.Trials.Value!, study.Trials.Value!.Lifts[^1]);
        Assert.True(trials.Dryness.Forecast);
        Assert.IsType<Verdict.FallsShort>(Judged(trials with { Lifts = [lift with { Worst = lift.Worst with { Strength = 0.9 * lift.Worst.Pressure } }] }, "wall-green"));
        Assert.IsType<Verdict.NeedsJudgement>(Judged(trials with { Lifts = [lift with { Worst = lift.Worst with { Strength = 1.1 * lift.Worst.Pressure } }] }, "wall-green"));
        Assert.IsType<Verdict.Met>(Judged(trials with { Lifts = [lift with { Worst = lift.Worst with { Strength = 1.1 * lift.Safety * lift.Worst.Pressure } }] }, "wall-green"));
        var young = trials.Roof.Value!;
        Assert.IsType<Verdict.FallsShort>(Judged(trials with { Roof = young with { Worst = young.Worst with { Strength = 0.9 * young.Worst.Pressure } } }, "wall-roof-day"));
        Assert.IsType<Verdict.NeedsJudgement>(Judged(trials with { Wet = trials.Wet.Value! with { AtPlastic = young.Worst with { Strength = 1 } } }, "wall-wet-foot"));
        Assert.IsType<Verdict.NeedsJudgement>(Judged(trials with { Settled = trials.Settled.Value! with { Standing = false } }, "wall-settlement"));
        Assert.IsType<Verdict.NeedsJudgement>(Judged(trials with { Pushed = trials.Pushed.Value! with { Edge = 1e9 } }, "wall-thrust"));
        Assert.IsType<Verdict.NotChecked>(Judged(trials with { Roof = new Message("analysis.trials.roof-not-reached") }, "wall-roof-day"));

        Verdict Judged(WallTrialsResult spoilt, string rule) =>
            RuleBook.CheckWall(study.Geometry, OfWallTrials.Demands(spoilt, study.Structure, study.WallByHand, study.Mix)).First(f => f.Rule.Key == rule).Verdict;
    }
}
