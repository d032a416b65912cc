using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;
using Clomwright.Study.Mends;
using Clomwright.Testing;

namespace Clomwright.Study.Tests;

/// <summary>What the model of the whole wall says beside the quick findings.</summary>
public sealed class WallFindingTests
{
    /// <summary>Only a deep study answers this one.</summary>
    private const string Collapse = "wall-collapse";

    // Rank property: quick findings never pass what only the model can answer; with it solved every pier, every pole, tension and foot have an answer, and nothing quick is lost.
    [Fact]
    public void QuickFindings_DoNotCheckTheWall_AndAllFindingsDo()
    {
        var study = HouseStudy.Of(Houses.HeronPoint);
        var quick = study.Findings.Where(f => f.Clause.Body == RuleBook.WallModel && f.Rule.Key != Collapse).ToList();
        Assert.Equal(4, quick.Count);
        Assert.All(quick, f => Assert.Equal("study.structure.not-asked", Assert.IsType<Verdict.NotChecked>(f.Verdict).Because.Key));
        Assert.Equal(study.Geometry.Piers.Count + study.Geometry.Landings.Count(l => !l.Secondary) + 2, study.WallFindings.Count - 1);
        Assert.All(study.WallFindings.Where(f => f.Rule.Key != Collapse), f => Assert.True(f.Verdict is Verdict.Met or Verdict.NeedsJudgement, $"{f.Rule.Key} {f.Subject}: {f.Verdict}"));
        Assert.Equal(study.Findings.Count - 5 + study.WallFindings.Count, study.AllFindings.Count);
        Assert.Equal(0, study.FullTally.Short);
        Assert.Same(study.Structure.Value, HouseStudy.Of(Houses.HeronPoint with { Name = "Other" }, StudyOptions.Quick, study).Structure.Value);
    }

    // Rank property: a load that nobody gave leaves the wall unchecked, never met.
    [Fact]
    public void ALoadNotGiven_IsNeverMet()
    {
        var house = Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { GroundSnow = null } };
        Assert.All(HouseStudy.Of(house).WallFindings, f => Assert.IsNotType<Verdict.Met>(f.Verdict));
    }

    // Rank property: cob that nobody tested may carry less, edges fall short, and what is offered has been tried.
    [Fact]
    public void UntestedCob_FallsShortAtTheEdges_AndMendsHold()
    {
        var house = Houses.HeronPoint with { Mix = Houses.HeronPoint.Mix with { Prisms = [] } };
        var study = HouseStudy.Of(house);
        var edges = study.WallFindings.Where(f => f is { Rule.Key: "wall-edge-pressure", Verdict: Verdict.FallsShort }).ToList();
        Assert.NotEmpty(edges);
        var least = edges.MinBy(f => ((Verdict.FallsShort)f.Verdict).Comparisons[0].Provided.Si)!;
        foreach (var mend in study.MendsOf(least))
        {
            var after = HouseStudy.Of(mend.Edit.Apply(house), study.Options, study);
            Assert.DoesNotContain(after.AllFindings, f => f.Rule.Key == least.Rule.Key && f.Subject == least.Subject && f.Verdict is Verdict.FallsShort);
        }
    }
}
