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

    private static readonly string[] Deep = [Collapse, "wall-green", "wall-roof-day", "wall-wet-foot", "wall-settlement", "wall-thrust"];

    // Rank property: quick findings never pass what only the model can answer; with it solved every pier, every pole, tension and foot have an answer, and nothing quick is lost.
    [Fact]
    public void QuickFindings_DoNotCheckTheWall_AndAllFindingsDo()
    {
        var study = HouseStudy.Of(Houses.HeronPoint);
        var quick = study.Findings.Where(f => f.Clause.Body == RuleBook.WallModel && !Deep.Contains(f.Rule.Key)).ToList();
        Assert.Equal(8, quick.Count);
        Assert.All(quick, f => Assert.Equal("study.structure.not-asked", Assert.IsType<Verdict.NotChecked>(f.Verdict).Because.Key));
        Assert.Equal(3 * study.Geometry.Piers.Count + study.Geometry.Landings.Count(l => !l.Secondary) + 2 * study.House.Openings.Count(o => o.Header is not null) + 3, study.WallFindings.Count - Deep.Length);
        Assert.All(study.WallFindings.Where(f => !Deep.Contains(f.Rule.Key)), f => Assert.True(f.Verdict is Verdict.Met or Verdict.NeedsJudgement, $"{f.Rule.Key} {f.Subject}: {f.Verdict}"));
        Assert.Equal(study.Findings.Count - 8 - Deep.Length + study.WallFindings.Count, study.AllFindings.Count);
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

    // Rank property: cob that nobody tested may carry less; edges fall short, and a change that was tried in vain says what keeps it from helping.
    [Fact]
    public void UntestedCob_FallsShortAtTheEdges_AndSaysWhatWasTriedInVain()
    {
        var (_, tried) = Tightest(Houses.HeronPoint with { Mix = Houses.HeronPoint.Mix with { Prisms = [] } });
        Assert.Empty(tried.Mends);
        Assert.NotEmpty(tried.InVain);
    }

    // Rank property: cob a little weaker than a roof asks carries less soil; what is offered has been tried.
    [Fact]
    public void ALittleTooWeakACob_IsMended()
    {
        var house = Houses.HeronPoint with
        {
            Mix = Houses.HeronPoint.Mix with { Prisms = Houses.HeronPoint.Mix.Prisms.Select(p => p with { FailureLoad = new Force(0.73 * p.FailureLoad.Newtons) }).ToSequence() },
        };
        var (least, tried) = Tightest(house);
        Assert.NotEmpty(tried.Mends);
        foreach (var mend in tried.Mends)
        {
            Assert.DoesNotContain(HouseStudy.Of(mend.Edit.Apply(house)).AllFindings, f => f.Rule.Key == least.Rule.Key && f.Subject == least.Subject && f.Verdict is Verdict.FallsShort);
        }
    }

    private static (Finding Least, Mends.Attempts Tried) Tightest(House house)
    {
        var study = HouseStudy.Of(house);
        var edges = study.WallFindings.Where(f => f is { Rule.Key: "wall-edge-pressure", Verdict: Verdict.FallsShort }).ToList();
        Assert.NotEmpty(edges);
        var least = edges.MinBy(f => ((Verdict.FallsShort)f.Verdict).Comparisons[0].Provided.Si)!;
        return (least, study.TriedFor(least));
    }

    private static House Buried => Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { Grade = Houses.HeronPoint.Stem.Top + Length.FromFeet(5) } };

    // Rank property: ground no higher than the wall's foot asks nothing; ground 5 ft over it turns a metre of wall, and what is offered has been tried; ground of unknown height is not checked.
    [Fact]
    public void HighGround_TurnsTheWall()
    {
        static List<Finding> Soil(House house) => HouseStudy.Of(house).Findings.Where(f => f.Rule.Key == "wall-soil").ToList();
        Assert.IsType<Verdict.NotApplicable>(Assert.Single(Soil(Houses.HeronPoint)).Verdict);
        var turned = Soil(Buried);
        Assert.Contains(turned, f => f is { Subject: "turning", Verdict: Verdict.FallsShort });
        Assert.NotEmpty(HouseStudy.Of(Buried).MendsOf(turned.First(f => f.Subject == "turning")));
        Assert.All(Soil(Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { Grade = null } }), f => Assert.IsType<Verdict.NotChecked>(f.Verdict));
    }

    // Rank property: all openings on one side leave the other stiff; the layout is found, and one without them is not.
    [Fact]
    public void OpeningsOnOneSide_AreFoundToTwist()
    {
        static Finding Twist(House house) => HouseStudy.Of(house).WallFindings.Single(f => f.Rule.Key == "wall-twist");
        var plain = Houses.HeronPoint with { Openings = [], Niches = [] };
        Assert.IsType<Verdict.Met>(Twist(plain).Verdict);
        Assert.IsType<Verdict.NeedsJudgement>(Twist(plain with { Openings = Houses.HeronPoint.Openings.Take(1).Select(o => o with { Width = o.Width + Length.FromFeet(3) }).ToSequence() }).Verdict);
    }
}
