using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;
using Clomwright.Testing;

namespace Clomwright.Study.Tests;

/// <summary>What the findings say of lifts, frost and planned days. Rank: property; the forecast itself is checked where it is computed.</summary>
public class DryingFindingTests
{
    private static House Heron => Houses.HeronPoint;

    private static Finding Of(HouseStudy study, string rule, string? subject = null) => study.Findings.First(f => f.Rule.Key == rule && (subject is null || f.Subject == subject));

    private static House Planned(DateOnly? roof, DateOnly? inside) => Heron with
    {
        Crew = Heron.Crew! with { RoofOn = roof }, Finishes = Heron.Finishes.Select(f => f with { Start = f.Face == Face.Inside ? inside : null }).ToSequence(),
    };

    private static readonly DateOnly Start = Heron.Crew!.Start;

    /// <summary>A day before the kind end falls short and is mended, one between is asked of a person, one after the hard end is met; none planned is not checked.</summary>
    [Fact]
    public void ADayForTheRoof_IsShortAskedOrMet()
    {
        var bands = HouseStudy.Of(Planned(Start.AddDays(400), null)).Milestones.Value!;
        Verdict On(double days) => Of(HouseStudy.Of(Planned(Start.AddDays((int)days), null)), "roof-landing").Verdict;
        Assert.IsType<Verdict.FallsShort>(On(bands.Fast.Roof!.Value - 1));
        Assert.IsType<Verdict.NeedsJudgement>(On(bands.Fast.Roof!.Value));
        Assert.IsType<Verdict.NeedsJudgement>(On(bands.Slow.Roof!.Value - 1));
        Assert.IsType<Verdict.Met>(On(bands.Slow.Roof!.Value));
        var without = HouseStudy.Of(Planned(null, null));
        Assert.IsType<Verdict.NotChecked>(Of(without, "roof-landing").Verdict);
        Assert.Null(without.Milestones.Value!.Slow.Roof);
        var early = HouseStudy.Of(Planned(Start.AddDays(5), null));
        var mend = early.MendsOf(Of(early, "roof-landing"))[0];
        Assert.Equal(Start.AddDays((int)bands.Slow.Roof!.Value), ((Edit.ChangeCrew)mend.Edit).Crew!.RoofOn);
    }

    [Fact]
    public void ADayForPlaster_IsShortAskedOrMet_AndInSeasonOrNot()
    {
        var bands = HouseStudy.Of(Heron).Milestones.Value!;
        HouseStudy On(DateOnly day) => HouseStudy.Of(Planned(null, day));
        var early = On(Start.AddDays(60));
        Assert.IsType<Verdict.FallsShort>(Of(early, "plaster-dry", "inside face").Verdict);
        Assert.NotEmpty(early.MendsOf(Of(early, "plaster-dry", "inside face")));
        Assert.IsType<Verdict.NotChecked>(Of(early, "plaster-dry", "outside face").Verdict);
        Assert.IsType<Verdict.NeedsJudgement>(Of(On(Start.AddDays((int)bands.Fast.Plaster!.Value + 1)), "plaster-dry", "inside face").Verdict);
        Assert.IsType<Verdict.Met>(Of(On(Start.AddDays((int)bands.Slow.Plaster!.Value + 1)), "plaster-dry", "inside face").Verdict);
        var winter = HouseStudy.Of(Heron with { Finishes = Heron.Finishes.Select(f => f with { Start = new(2029, 1, 10) }).ToSequence() });
        Assert.IsType<Verdict.FallsShort>(Of(winter, "plaster-season", "outside face").Verdict);
        Assert.NotEmpty(winter.MendsOf(Of(winter, "plaster-season", "outside face")));
        Assert.IsType<Verdict.Met>(Of(HouseStudy.Of(Heron), "plaster-season", "outside face").Verdict);
    }

    [Fact]
    public void LiftsThatAreTooHigh_AreShort_AndLowerOnesMendThem()
    {
        House With(double index, Length height) => Heron with { Lifts = new LiftPlan { Height = height }, Assumed = [new("drying-liquidity-tossed", index), new("drying-liquid-limit", .32), new("drying-plastic-limit", .18)] };
        var wet = HouseStudy.Of(With(.8, Length.FromInches(18)));
        var finding = wet.Findings.First(f => f.Rule.Key == "fresh-height" && f.Verdict is Verdict.FallsShort);
        Assert.NotEmpty(wet.MendsOf(finding));
        Assert.Contains(wet.Findings, f => f.Rule.Key == "lift-bulge" && f.Verdict is Verdict.NeedsJudgement);
        Assert.All(HouseStudy.Of(Heron).Findings.Where(f => f.Rule.Key is "fresh-height" or "lift-bulge"), f => Assert.IsType<Verdict.Met>(f.Verdict));
    }

    [Fact]
    public void CobLaidIntoWinter_IsAskedForItsFrost_AndAnotherMonthMendsIt()
    {
        House From(DateOnly day) => Heron with { Crew = Heron.Crew! with { Start = day, RoofOn = null }, Finishes = Heron.Finishes.Select(f => f with { Start = null }).ToSequence() };
        Assert.IsType<Verdict.Met>(Of(HouseStudy.Of(From(Start)), "frost-young").Verdict);
        Assert.IsType<Verdict.NeedsJudgement>(Of(HouseStudy.Of(From(new(2027, 12, 1))), "frost-young").Verdict);
        Assert.IsType<Verdict.NotChecked>(Of(HouseStudy.Of(From(Start) with { Site = Heron.Site with { Climate = null } }), "frost-young").Verdict);
    }

    /// <summary>A mix that shrinks too much is mended by another that was tried and did not, and by none that nobody tried.</summary>
    [Fact]
    public void AMixThatShrinks_IsMendedByATrialThatDidNot()
    {
        var mix = Heron.Mix with
        {
            Recipe = Heron.Mix.Trials[0].Recipe,
            TestBars = Heron.Mix.TestBars.Select(b => b.Trial == "A" ? b with { Shrinkage = Length.FromInches(2) } : b).ToSequence(),
        };
        var study = HouseStudy.Of(Heron with { Mix = mix });
        var finding = study.Findings.First(f => f.Rule.Key == "mix-shrinkage" && f.Verdict is Verdict.FallsShort);
        var mend = Assert.Single(study.MendsOf(finding));
        Assert.Equal(Heron.Mix.Trials[1].Recipe, ((Edit.ChangeMix)mend.Edit).Mix.Recipe);
        var untried = HouseStudy.Of(Heron with { Mix = mix with { TestBars = mix.TestBars.Where(b => b.Trial == "A").ToSequence() } });
        Assert.Empty(untried.MendsOf(untried.Findings.First(f => f.Rule.Key == "mix-shrinkage" && f.Verdict is Verdict.FallsShort)));
    }

    /// <summary>Nothing that milestones do not read makes them run again, and what they read does.</summary>
    [Fact]
    public void Milestones_AreTakenOver_WhereNothingTheyReadChanged()
    {
        var house = Planned(null, null);
        var study = HouseStudy.Of(house);
        Assert.NotNull(study.Milestones.Value);
        Assert.Same(study.Milestones.Value, HouseStudy.Of(house with { Niches = [] }, StudyOptions.Quick, study).Milestones.Value);
        Assert.Same(study.Milestones.Value, HouseStudy.Of(house with { Openings = house.Openings.Skip(1).ToSequence() }, StudyOptions.Quick, study).Milestones.Value);
        Assert.NotSame(study.Milestones.Value, HouseStudy.Of(house with { Assumed = [new("drying-wind", .1)] }, StudyOptions.Quick, study).Milestones.Value);
    }

    /// <summary>No finding and no figure of a house without planned days runs bay by bay.</summary>
    [Fact]
    public void Findings_DoNotRunTheWholeForecast()
    {
        var study = HouseStudy.Of(Heron);
        Assert.NotEmpty(study.Findings);
        var told = new List<double>();
        Assert.NotNull(study.DryingFor(new(told.Add, default)).Value);
        Assert.NotEmpty(told);
        Assert.Contains(study.Calculations, c => c.Key == "frame-gap");
        Assert.Contains(study.Calculations, c => c.Key == "lift-foot");
    }
}
