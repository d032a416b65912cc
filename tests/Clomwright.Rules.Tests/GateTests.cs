using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Rules.Tests.AtTheLimit;

namespace Clomwright.Rules.Tests;

/// <summary>Outside its limits a body of rules says one thing: engineered design.</summary>
public class GateTests
{
    private static readonly Phrasebook English = Phrasebook.In("en");

    private static House Bare => LimitCase.Bare with { Rules = new RuleChoices { Adopted = ["irc-cob@2021"] } };

    public static TheoryData<string, House> Outsiders => new()
    {
        { "seismic design category” is 0.5, less than 0.5", Bare with { Site = Bare.Site with { SeismicSds = 0.5 } } },
        { "seismic design category” is 0.8, less than 0.75", Bare with { Site = Bare.Site with { SeismicS1 = 0.8 } } },
        { "at its thinnest” is 9 in", Bare with { Wall = Bare.Wall with { ThicknessAtTop = Length.FromInches(9) } } },
        { "upper two thirds” is 2 ft 1 in", Bare with { Wall = Bare.Wall with { ThicknessAtTop = Length.FromInches(25) } } },
        { "above outside grade” is 21 ft", Bare with { Wall = Bare.Wall with { Top = Length.FromFeet(20) } } },
        { "top of the roof at most 20 ft (6.1 m) above grade? No, says A", Bare with { Roof = ARoof, Rules = Bare.Rules with { Answers = [new Answer("roof-height", false, "A", new DateOnly(2027, 1, 1))] } } },
        { "is the building one story, without a loft that counts as another? No, says A", Bare with { Rules = Bare.Rules with { Answers = [new Answer("stories", false, "A", new DateOnly(2027, 1, 1))] } } },
        {
            "Basic wind speed” is 134 mph",
            Bare with { Site = Bare.Site with { WindSpeed = new Speed(60) }, Rules = Bare.Rules with { Entered = [new EnteredLimit("irc-cob@2021", "wind-speed", "110 mph", "A", new DateOnly(2027, 1, 1))] } }
        },
    };

    private static Roof ARoof => new Roof.Radial(8, PoleSize.Even(Length.FromInches(8)), new Slope(0.3)) { Eave = Length.FromInches(30) };

    [Theory]
    [MemberData(nameof(Outsiders))]
    public void House_OutsideAGate_NeedsAnEngineerAndNothingElse(string reason, House house)
    {
        var finding = Assert.Single(Check(house));
        Assert.Equal("rule-limits", finding.Rule.Key);
        Assert.IsType<Verdict.NeedsJudgement>(finding.Verdict);
        var said = English.Say(Sentences.Of(finding), UnitSystem.Imperial);
        Assert.Contains("outside the 2021 IRC, Appendix AU: engineered design", said, StringComparison.Ordinal);
        Assert.Contains(reason, said, StringComparison.Ordinal);
    }

    public static TheoryData<House> Unknowns =>
    [
        Bare with { Site = Bare.Site with { SeismicSds = null } },
        Bare with { Site = Bare.Site with { RiskCategory = null } },
        Bare with { Site = Bare.Site with { Grade = null } },
        Bare with { Rules = Bare.Rules with { Entered = [new EnteredLimit("irc-cob@2021", "ground-snow", "50 psf", "A", new DateOnly(2027, 1, 1))] } },
    ];

    [Theory]
    [MemberData(nameof(Unknowns))]
    public void House_WithAnInputOfAGateMissing_IsNotCheckedAtAll(House house) =>
        Assert.IsType<Verdict.NotChecked>(Assert.Single(Check(house)).Verdict);

    [Fact]
    public void SeveralGates_AreNamedInOneFinding()
    {
        var house = Bare with { Site = Bare.Site with { SeismicSds = 0.6 }, Wall = Bare.Wall with { ThicknessAtTop = Length.FromInches(9) } };
        var said = English.Say(Sentences.Of(Assert.Single(Check(house))), UnitSystem.Imperial);
        Assert.Contains("decides the seismic design category” is 0.6", said, StringComparison.Ordinal);
        Assert.Contains("Thickness of the cob at its thinnest” is 9 in", said, StringComparison.Ordinal);
    }

    [Fact]
    public void House_Inside_IsHeldAgainstTheRules()
    {
        var findings = Check(Bare);
        Assert.Contains(findings, f => f is { Rule.Key: "seismic-category", Verdict: Verdict.Met });
        Assert.Contains(findings, f => f is { Rule.Key: "wind-speed", Verdict: Verdict.NotChecked });
        Assert.Contains(findings, f => f is { Rule.Key: "wall-slenderness", Verdict: Verdict.NotChecked });
        Assert.Contains(findings, f => f is { Rule.Key: "unread", Verdict: Verdict.NotChecked });
    }

    [Theory]
    [InlineData("60 60 60 60 60", typeof(Verdict.Met))]
    [InlineData("59 59 59 59 59", typeof(Verdict.FallsShort))]
    [InlineData("59 80 80 80 80", typeof(Verdict.NotChecked))]
    [InlineData("80 80 80 80", typeof(Verdict.NotChecked))]
    public void Prisms_AreReadOnlyAsFarAsEveryReadingAgrees(string strengths, Type verdict)
    {
        // 1 psi on 4 by 4 in is 16 lbf; 1 lbf = 4.4482216152605 N (international pound, standard gravity).
        var prisms = strengths.Split(' ').Select(s => new Prism(Length.FromInches(4), Length.FromInches(4), Length.FromInches(8), new Force(16 * int.Parse(s) * 4.4482216152605), 40));
        var finding = Check(Bare with { Mix = new Mix { Prisms = prisms.ToSequence() } }).Single(f => f.Rule.Key == "cob-strength");
        Assert.IsType(verdict, finding.Verdict);
    }

    [Fact]
    public void OvenDriedOrOtherSizedPrisms_DoNotCount()
    {
        var prism = new Prism(Length.FromInches(4), Length.FromInches(4), Length.FromInches(8), new Force(9000), 40);
        var prisms = Enumerable.Repeat(prism, 4);
        Assert.Equal("NotChecked", Strength([.. prisms, prism with { Oven = true }]));
        Assert.Equal("NotChecked", Strength([.. prisms, prism with { Height = Length.FromInches(4) }]));
        Assert.Equal("NotChecked", Strength([.. prisms, prism with { Trial = "old" }])); // of parts that nobody knows
        Assert.Equal("Met", Strength([.. prisms, prism]));

        static string Strength(Sequence<Prism> prisms) => Check(Bare with { Mix = new Mix { Prisms = prisms } }).Single(f => f.Rule.Key == "cob-strength").Verdict.GetType().Name;
    }

    private static IEnumerable<Finding> Check(House house) => Checked.Of(house).Where(f => f.Clause.Body == "irc-cob");
}
