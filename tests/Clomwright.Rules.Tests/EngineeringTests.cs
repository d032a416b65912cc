using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Rules.Tests.AtTheLimit;

namespace Clomwright.Rules.Tests;

/// <summary>What becomes of demands. Rank: analytic.</summary>
public class EngineeringTests
{
    private static readonly Message Snow = new("analysis.loads.no-snow");

    private static readonly Amount Ten = new(10, Dimension.Force), Nine = new(9, Dimension.Force);

    private static House Roofed => LimitCase.Bare with
    {
        Roof = new Roof.Reciprocal(8, Length.FromInches(30), PoleSize.Even(Length.FromInches(8))) { Eave = Length.FromInches(30) },
    };

    [Fact]
    public void AHouseWithARoof_WithoutResults_IsMetInNothing()
    {
        var findings = Of(Roofed);
        Assert.NotEmpty(findings);
        Assert.All(findings, f => Assert.True(f.Verdict is Verdict.NotChecked or Verdict.NotApplicable, $"{f.Rule.Key}: {f.Verdict}"));
        Assert.Contains(findings, f => f is { Rule.Key: "pole-loss", Verdict: Verdict.NotChecked });
    }

    [Fact]
    public void ADemandWithALoadMissing_IsNeverMet_ButFallsShort()
    {
        Assert.IsType<Verdict.Met>(Answer(Demand(Nine, Ten)));
        Assert.Equal(Snow, Assert.IsType<Verdict.NotChecked>(Answer(Demand(Nine, Ten) with { Missing = Snow })).Because);
        Assert.IsType<Verdict.FallsShort>(Answer(Demand(Ten, Nine) with { Missing = Snow }));
    }

    [Fact]
    public void ADemandThatOnlyAPersonCanJudge_IsAskedWhereItExceeds()
    {
        var question = new Message("rules.ask.stories");
        Assert.Equal(question, Assert.IsType<Verdict.NeedsJudgement>(Answer(Demand(Ten, Nine) with { Question = question })).Question);
        Assert.IsType<Verdict.Met>(Answer(Demand(Nine, Ten) with { Question = question }));
    }

    [Theory]
    [InlineData(double.NaN, 10)]
    [InlineData(9, double.NaN)]
    [InlineData(9, double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity, 10)]
    public void ADemandThatIsNoNumber_IsNotChecked(double demand, double capacity) =>
        Assert.IsType<Verdict.NotChecked>(Answer(Demand(new Amount(demand, Dimension.Force), new Amount(capacity, Dimension.Force))));

    [Fact]
    public void ManyThingsNotCheckedForOneReason_AreOneFinding()
    {
        var tees = Enumerable.Range(1, 12).Select(n => CheckedDemand.Unknown("tee-uplift", $"tee {n}", Snow)).ToSequence();
        Assert.Equal("tees", Of(Roofed, [.. tees]).Single(f => f.Rule.Key == "tee-uplift").Subject);
        Assert.Equal(13, Of(Roofed, [.. tees, CheckedDemand.Held("tee-uplift", "tee 13", Nine, Ten)]).Count(f => f.Rule.Key == "tee-uplift"));
    }

    [Fact]
    public void AShareEntered_IsTheShareOfTheCapacityThatMayBeUsed()
    {
        var house = Roofed with { Rules = new RuleChoices { Entered = [new EnteredLimit("engineering", "pole-shear", "0.8", "E. Engineer", new DateOnly(2027, 1, 1))] } };
        var shortfall = Assert.IsType<Verdict.FallsShort>(Of(house, Demand(Nine, Ten)).Single(f => f.Rule.Key == "pole-shear").Verdict);
        Assert.Equal(8, shortfall.Comparisons[0].Limit.Si);
    }

    private static CheckedDemand Demand(Amount demand, Amount capacity) => CheckedDemand.Held("pole-shear", "pole 1", demand, capacity);

    private static Verdict Answer(CheckedDemand demand) => Of(Roofed, demand).Single(f => f.Rule.Key == "pole-shear").Verdict;

    private static List<Finding> Of(House house, params CheckedDemand[] demands) =>
        [.. RuleBook.Check(FromBuilding.Of(house), demands.ToSequence()).Where(f => f.Clause.Body == "engineering")];
}
