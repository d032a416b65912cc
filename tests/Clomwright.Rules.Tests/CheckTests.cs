using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Geometry;
using Clomwright.Rules.Tests.AtTheLimit;
using Clomwright.Testing;

namespace Clomwright.Rules.Tests;

/// <summary>What a whole house is told.</summary>
public class CheckTests
{
    private static readonly Phrasebook English = Phrasebook.In("en");

    private static House Bare => LimitCase.Bare;

    public static TheoryData<string> Examples() =>
        [.. Directory.GetFiles(Path.Combine(Counts.Root, "examples"), "*.house.json").Select(Path.GetFileName).Order(StringComparer.Ordinal).OfType<string>()];

    [Theory]
    [MemberData(nameof(Examples))]
    public void AnExample_HasNothingShortInThePracticeItAdopts(string file)
    {
        var house = HouseDocument.Read(File.ReadAllText(Path.Combine(Counts.Root, "examples", file))).House!;
        Assert.Contains("common-practice", house.Rules.Adopted);
        var said = Check(house).Where(f => f.Verdict is Verdict.FallsShort).Select(Said).ToList();
        Assert.True(said.Count == 0, string.Join('\n', said));
    }

    [Fact]
    public void Ground_WithoutAnswers_IsNotChecked() =>
        Assert.All(Of(Check(Bare), "ground"), f => Assert.IsType<Verdict.NotChecked>(f.Verdict));

    [Fact]
    public void Ground_Answered_IsMetOrShortByWhomAndWhen()
    {
        var house = Bare with
        {
            Rules = new RuleChoices
            {
                Answers =
                [
                    new Answer("ground-services", true, "M. Digger", new DateOnly(2027, 4, 1)),
                    new Answer("ground-soil", false, "M. Digger", new DateOnly(2027, 4, 2), "2 ft of fill"),
                ],
            },
        };
        var findings = Check(house);
        var services = findings.Single(f => f.Rule.Key == "ground-services");
        var soil = findings.Single(f => f.Rule.Key == "ground-soil");
        Assert.IsType<Verdict.Met>(services.Verdict);
        Assert.IsType<Verdict.FallsShort>(soil.Verdict);
        Assert.Equal("Buried services, site: met by judgement under the ground checklist; have all buried services been located and marked? Yes, says M. Digger, 1 April 2027.", Said(services));
        Assert.Contains("2 ft of fill", Said(soil), StringComparison.Ordinal);
        Assert.Equal(6, Of(findings, "ground").Count(f => f.Verdict is Verdict.NotChecked));
    }

    [Fact]
    public void Answer_GivenTwice_TheLaterOneHolds()
    {
        Answer No(bool holds) => new("ground-flood", holds, "A", new DateOnly(2027, 1, 1));
        var findings = Check(Bare with { Rules = new RuleChoices { Answers = [No(false), No(true)] } });
        Assert.IsType<Verdict.Met>(findings.Single(f => f.Rule.Key == "ground-flood").Verdict);
    }

    [Fact]
    public void OnlyAdoptedBodies_AndTheGround_AreAsked()
    {
        Assert.Equal(["ground"], Bodies(Check(Bare)));
        Assert.Equal(["ground", "common-practice", "irc-cob@2024"], Bodies(Check(Adopting("common-practice", "irc-cob@2024", "ground", "common-practice"))));
    }

    [Theory]
    [InlineData("irc-cob")]
    [InlineData("irc-cob@2030")]
    [InlineData("")]
    public void AnUnknownBody_IsNotCheckedAndNamesTheKnownOnes(string name)
    {
        var finding = Check(Adopting(name)).Single(f => f.Rule.Key == "adopted-body");
        Assert.IsType<Verdict.NotChecked>(finding.Verdict);
        Assert.Contains("irc-cob@2021", Said(finding), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("irc-cob@2021", "wall-hight", "8 ft")]
    [InlineData("irc-cob@2021", "wall-height", "8")]
    [InlineData("irc-cob@2021", "wall-height", "-8 ft")]
    [InlineData("irc-cob@2021", "wall-height", "eight feet")]
    [InlineData("irc-cob@2021", "stories", "1")]
    [InlineData("nowhere", "wall-height", "8 ft")]
    public void AnEnteredNumberThatCannotBeUsed_IsNotPassedOver(string body, string rule, string limit)
    {
        var house = Adopting("irc-cob@2021");
        var findings = Check(house with { Rules = house.Rules with { Entered = [new EnteredLimit(body, rule, limit, "A", new DateOnly(2027, 1, 1))] } });
        Assert.IsType<Verdict.NotChecked>(findings.Single(f => f.Rule.Key == "entered-limit").Verdict);
        Assert.IsType<Verdict.NotChecked>(findings.Single(f => f.Rule.Key == "wall-height").Verdict);
    }

    [Fact]
    public void AnEnteredNumber_ReplacesTheShippedOneAndSaysWhoAndWhen()
    {
        var house = Bare with
        {
            Openings = [Houses.Window("window", 90, Length.FromInches(44), Length.FromInches(30)) with { Header = null }],
            Rules = new RuleChoices { Adopted = ["common-practice"], Entered = [new EnteredLimit("common-practice", "opening-width", "42 in", "S. Lead", new DateOnly(2027, 3, 4))] },
        };
        var finding = Check(house).Single(f => f.Rule.Key == "opening-width");
        Assert.IsType<Verdict.FallsShort>(finding.Verdict);
        Assert.Equal(Surety.Entered, finding.Clause.Source.Surety);
        var notes = finding.Notes.Select(n => English.Say(n, UnitSystem.Imperial)).ToList();
        Assert.Contains("The limit 42 in was entered by S. Lead on 4 March 2027.", notes);
        Assert.Contains(notes, n => n.Contains("at most 4 ft", StringComparison.Ordinal) && n.EndsWith("Met here.", StringComparison.Ordinal));
    }

    [Fact]
    public void Rivals_StandBesideTheFindingWithTheirAnswer()
    {
        var finding = Check(Adopting("common-practice")).Single(f => f is { Rule.Key: "wall-slenderness", Subject: "wall top" });
        Assert.IsType<Verdict.FallsShort>(finding.Verdict);
        var house = Bare with { Wall = new Wall(Length.FromInches(8 + 72), Length.FromInches(12)), Rules = new RuleChoices { Adopted = ["common-practice"] } };
        finding = Check(house).Single(f => f is { Rule.Key: "wall-slenderness", Subject: "wall top" });
        Assert.IsType<Verdict.Met>(finding.Verdict);
        Assert.Contains(finding.Notes, n => English.Say(n, UnitSystem.Imperial).Contains("5 ft of height, 5 to 1", StringComparison.Ordinal) && n.Key == "rules.note.rival-short");
    }

    [Fact]
    public void AThroughBottle_TakesItsWidthFromThePier()
    {
        var house = Bare with
        {
            Openings = [Plain("left", 0), Plain("right", 40)],
            Rules = new RuleChoices { Adopted = ["common-practice"] },
        };
        var bottle = new Embed { Name = "bottle", Kind = EmbedKind.Bottle, Along = Along.At(new Angle(20)), Height = Length.FromInches(50), Width = Length.FromInches(3), Through = true };
        Assert.Equal(0.0762, Width(house) - Width(house with { Embeds = [bottle] }), 2e-9); // both are rounded to whole nanometres
        Assert.Equal(Width(house), Width(house with { Embeds = [bottle with { Through = false }] }));
        Assert.Equal(Width(house), Width(house with { Embeds = [bottle with { Height = Length.FromInches(86) }] }));
        Assert.IsType<Verdict.NotChecked>(Pier(house with { Embeds = [bottle with { Width = null }] }).Verdict);

        Finding Pier(House h) => Check(h).Single(f => f is { Rule.Key: "pier-width", Subject: "pier left|right" });
        double Width(House h) => Pier(h).Verdict switch { Verdict.Met m => m.Comparisons[0].Provided.Si, Verdict.FallsShort s => s.Comparisons[0].Provided.Si, _ => double.NaN };
    }

    [Fact]
    public void APoleOverAnOpening_FallsShortAndSaysSo()
    {
        var house = Bare with
        {
            Openings = [Plain("south", 0)],
            Roof = new Roof.Reciprocal(8, Length.FromInches(30), PoleSize.Even(Length.FromInches(8))) { Eave = Length.FromInches(30) },
            Rules = new RuleChoices { Adopted = ["common-practice"] },
        };
        var finding = Check(house).Single(f => f is { Rule.Key: "pole-seat", Subject: "pole 1" });
        Assert.IsType<Verdict.FallsShort>(finding.Verdict);
        Assert.Contains(finding.Notes, n => n.Key == "rules.note.seat-over");
    }

    // Rank property: a pair is as far from the frame as its middle says, and a person is asked where the nearer pole of the two is not.
    [Fact]
    public void APairOfPoles_WhoseNearerOneIsTooNear_IsAPersonsQuestion()
    {
        var single = (Roof.Reciprocal)Houses.HeronPoint.Roof! with { IfOneFails = null };
        Assert.All(Seats(single), f => Assert.IsType<Verdict.Met>(f.Verdict));
        var pairs = Seats(single with { IfOneFails = new IfOneFails.Doubled() });
        Assert.Contains(pairs, f => f.Verdict is Verdict.NeedsJudgement { Question.Key: "rules.ask.pair-seat" });
        Assert.DoesNotContain(pairs, f => f.Verdict is Verdict.FallsShort);

        static List<Finding> Seats(Roof roof) => [.. Check(Houses.HeronPoint with { Roof = roof }).Where(f => f.Rule.Key == "pole-seat")];
    }

    [Fact]
    public void AnOpeningThatCannotBePlaced_IsNotChecked()
    {
        var house = Bare with { Openings = [Plain("one", 0), Plain("two", 0)], Rules = new RuleChoices { Adopted = ["common-practice"] } };
        Assert.Contains(Check(house), f => f is { Rule.Key: "opening-width", Subject: "two", Verdict: Verdict.NotChecked });
    }

    [Fact]
    public void Summary_ReadsAsASentence()
    {
        var tally = new Tally(31, 2, 5, 1, 6);
        Assert.Equal("31 met, 2 short, 5 NOT CHECKED, 1 needs judgement, 6 do not apply", English.Say(tally.Summary, UnitSystem.Metric));
    }

    private static Opening Plain(string name, double bearing) => Houses.Window(name, bearing, Length.FromInches(24), Length.FromInches(40)) with { Header = null };

    private static House Adopting(params string[] bodies) => Bare with { Rules = new RuleChoices { Adopted = bodies.ToSequence() } };

    private static Sequence<Finding> Check(House house) => Checked.Of(house);

    private static IEnumerable<Finding> Of(IEnumerable<Finding> findings, string adopted) => findings.Where(f => f.Clause.Adopted == adopted);

    private static IEnumerable<string> Bodies(IEnumerable<Finding> findings) => findings.Select(f => f.Clause.Adopted).Distinct();

    private static string Said(Finding finding) => English.Say(Sentences.Of(finding), UnitSystem.Imperial);
}
