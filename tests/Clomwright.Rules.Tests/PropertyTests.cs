using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Rules.Tests.AtTheLimit;
using Clomwright.Testing;

namespace Clomwright.Rules.Tests;

/// <summary>What holds for every house. Rank: property.</summary>
public class PropertyTests
{
    /// <summary>Computed lengths are compared in whole nanometres, and a mirrored station is told to the nearest one, so two runs may differ by a few.</summary>
    private const double Few = 5e-9;

    private static readonly Phrasebook English = Phrasebook.In("en");

    [Fact]
    public void TurningAHouse_ChangesNoPracticeFinding() =>
        Gen.Select(Houses.Plausible, Gen.Int[1, 3]).ForAll((house, quarters) => Same(house, Moved.Turned(house, quarters)), iter: Counts.Of(20, 500));

    [Fact]
    public void MirroringAHouse_ChangesNoPracticeFinding() =>
        Houses.Plausible.ForAll(house => Same(house, Moved.Mirrored(house)), iter: Counts.Of(20, 500));

    [Fact]
    public void RenamingAHouse_ChangesNoPracticeFinding() =>
        Houses.Plausible.ForAll(house => Same(house, Moved.Renamed(house)), iter: Counts.Of(20, 500));

    [Fact]
    public void AWiderPier_NeverFailsAPierRuleThatANarrowerOneMet() =>
        Gen.Select(Gen.Int[30, 120], Gen.Int[1, 40], Gen.Int[0, 6]).ForAll((apart, wider, taper) =>
        {
            var narrow = PierFindings(Length.FromInches(apart), taper);
            var wide = PierFindings(Length.FromInches(apart + wider), taper);
            return narrow.All(f => f.Value is not Verdict.Met || wide[f.Key] is Verdict.Met);
        }, iter: Counts.Of(40, 2000));

    [Fact]
    public void AMissingNumber_NeverYieldsMet() => Houses.Plausible.ForAll(house =>
    {
        var geometry = FromBuilding.Of(house with { Rules = new RuleChoices() });
        return RuleBook.Clauses.Where(c => c.NumberIsMissing).SelectMany(c => Findings.Answer(c, geometry)).All(f => f.Verdict is Verdict.NotChecked);
    }, iter: Counts.Of(20, 500));

    [Fact]
    public void AMissingInput_NeverMakesARuleMet() => Gen.Select(Houses.Plausible, Gen.Int[0, Without.Length - 1]).ForAll((house, which) =>
    {
        house = house with { Rules = house.Rules with { Adopted = ["common-practice", "irc-cob@2021"] } };
        var before = Met(house).ToHashSet();
        return Met(Without[which](house)).All(before.Contains);
    }, iter: Counts.Of(25, 500));

    [Fact]
    public void EveryFindingAndNote_ReadsInFull() => Houses.Plausible.ForAll(house =>
    {
        foreach (var finding in Check(house with { Rules = house.Rules with { Adopted = ["common-practice", "irc-cob@2021", "irc-cob@2024"] } }))
        {
            var said = finding.Notes.Append(Sentences.Of(finding)).Select(m => English.Say(m, house.Units)).ToList();
            Assert.All(said, s => Assert.DoesNotMatch(@"\[[a-z]+\.|[{}]|\?\?| {2}|\.\.", s));
            Assert.EndsWith(finding.Verdict is Verdict.NeedsJudgement || finding.Clause.Body == "ground" ? "" : ".", said[^1], StringComparison.Ordinal);
        }
    }, iter: Counts.Of(25, 500));

    [Fact]
    public void EveryClauseOfAnAdoptedBody_AnswersAtLeastOnce() => Houses.Plausible.ForAll(house =>
    {
        var geometry = FromBuilding.Of(house);
        return RuleBook.Clauses.All(c => Findings.Answer(c, geometry).Any());
    }, iter: Counts.Of(20, 500));

    [Fact]
    public void EveryPlace_IsAStretchOfTheWall() => Houses.Plausible.ForAll(house =>
    {
        var geometry = FromBuilding.Of(house);
        return RuleBook.Check(geometry).SelectMany(f => f.Places).All(p =>
            p.ToStation >= p.FromStation && p.ToHeight >= p.FromHeight && p.ToStation - p.FromStation <= geometry.Curve.Length && double.IsFinite(p.FromStation + p.ToHeight));
    }, iter: Counts.Of(20, 500));

    /// <summary>The description may be nonsense; the answer is still findings, never an exception.</summary>
    [Fact]
    public void AnyHouse_HoweverSilly_IsAnswered() => Gen.Select(Houses.Plausible, Gen.Int[0, Silly.Length - 1], Gen.Int[0, Silly.Length - 1]).ForAll((house, one, other) =>
    {
        house = Silly[other](Silly[one](house));
        return Check(house with { Rules = house.Rules with { Adopted = ["common-practice", "irc-cob@2021"] } }).Count > 0;
    }, iter: Counts.Of(30, 1000));

    private static readonly Func<House, House>[] Silly =
    [
        house => house with { Wall = house.Wall with { ThicknessAtTop = Length.Zero } },
        house => house with { Wall = house.Wall with { ThicknessAtTop = Length.FromInches(-12) } },
        house => house with { Wall = house.Wall with { Top = Length.Zero } },
        house => house with { Wall = house.Wall with { OutsideTaper = new Slope(-3) } },
        house => house with { Stem = house.Stem with { Top = Length.FromFeet(9) } },
        house => house with { Openings = house.Openings.Select(o => o with { Width = Length.FromFeet(400) }).ToSequence() },
        house => house with { Openings = house.Openings.Select(o => o with { Width = Length.FromInches(-3), Sill = Length.FromInches(-30) }).ToSequence() },
        house => house with { Openings = house.Openings.Select(o => o with { Header = new Header(0, Length.Zero, Length.Zero, Length.FromFeet(-2)) }).ToSequence() },
        house => house with { Niches = house.Niches.Select(n => n with { Depth = Length.FromFeet(9) }).ToSequence() },
        house => house with { Embeds = house.Embeds.Select(e => e with { Kind = EmbedKind.Bottle, Through = true, Width = Length.FromFeet(3), Count = 200, Spacing = Length.Zero }).ToSequence() },
        house => house with { Lifts = new LiftPlan() },
        house => house with { Lifts = new LiftPlan { Height = Length.Zero } },
        house => house with { Tees = new Tees(Length.Zero, Length.Zero, Length.Zero) },
        house => house with { Roof = new Roof.Reciprocal(-4, Length.FromFeet(90), PoleSize.Even(Length.Zero)) { Eave = Length.FromFeet(-1) } },
        house => house with { Site = house.Site with { SeismicSds = double.PositiveInfinity, WindSpeed = new Speed(double.NaN), GroundSnow = new Stress(double.NaN) } },
        house => house with { Mix = new Mix { Prisms = [.. Enumerable.Repeat(new Prism(Length.FromInches(4), Length.FromInches(4), Length.FromInches(8), new Force(double.NaN), 1), 5)] } },
        house => house with { Plan = new Plan.Round(Length.FromInches(1)) },
    ];

    private static readonly Func<House, House>[] Without =
    [
        house => house with { Site = house.Site with { Grade = null } },
        house => house with { Site = house.Site with { SeismicSds = null } },
        house => house with { Site = house.Site with { RiskCategory = null } },
        house => house with { Stem = house.Stem with { DampBreak = null } },
        house => house with { Finishes = [] },
        house => house with { Tees = null },
        house => house with { Mix = new Mix() },
        house => house with { Roof = null },
        house => house with { Rules = house.Rules with { Answers = [], Entered = [] } },
    ];

    private static bool Same(House one, House other)
    {
        var a = Practice(one);
        var b = Practice(other);
        Assert.Equal(a.Select(f => f.What), b.Select(f => f.What));
        foreach (var (x, y) in a.Zip(b))
        {
            Assert.True(Math.Abs(x.Provided - y.Provided) <= Few && Math.Abs(x.Limit - y.Limit) <= Few, $"{x} became {y}");
        }

        return true;
    }

    /// <summary>Findings without names: sorted by rule, verdict and numbers.</summary>
    private static List<(string What, double Provided, double Limit)> Practice(House house) =>
    [
        .. Check(house with { Rules = new RuleChoices { Adopted = ["common-practice"] } })
            .Select(f => (f, made: Compared(f.Verdict)))
            .Select(f => ($"{f.f.Rule.Key} {f.f.Verdict.GetType().Name}", f.made?.Provided.Si ?? 0, f.made?.Limit.Si ?? 0))
            .OrderBy(f => f.Item1, StringComparer.Ordinal).ThenBy(f => f.Item2).ThenBy(f => f.Item3),
    ];

    private static IEnumerable<string> Met(House house) => Check(house).Where(f => f.Verdict is Verdict.Met).Select(f => $"{f.Clause.Adopted} {f.Rule.Key} {f.Subject}");

    private static Dictionary<string, Verdict> PierFindings(Length apart, int taper)
    {
        var house = LimitCase.Bare with
        {
            Wall = LimitCase.Bare.Wall with { OutsideTaper = new Slope(taper / 100.0) },
            Openings =
            [
                new Opening { Name = "left", Kind = OpeningKind.Fixed, Along = Along.At(Length.FromInches(60)), Width = Length.FromInches(24), Height = Length.FromInches(40), Sill = Length.FromInches(36) },
                new Opening { Name = "right", Kind = OpeningKind.Fixed, Along = Along.At(Length.FromInches(60) + apart), Width = Length.FromInches(24), Height = Length.FromInches(40), Sill = Length.FromInches(36) },
            ],
            Niches = [new Niche { Name = "niche", Along = Along.At(Length.FromInches(75)), Width = Length.FromInches(4), Height = Length.FromInches(6), Depth = Length.FromInches(2), Sill = Length.FromInches(48) }],
            Rules = new RuleChoices { Adopted = ["common-practice"] },
        };
        return Check(house).Where(f => f.Rule.Key is "pier-width" or "niche-pier" && f.Subject is "pier left|right" or "niche").ToDictionary(f => f.Rule.Key, f => f.Verdict);
    }

    private static Comparison? Compared(Verdict verdict) => verdict switch
    {
        Verdict.Met { Comparisons: [var made, ..] } => made,
        Verdict.FallsShort { Comparisons: [var made, ..] } => made,
        _ => null,
    };

    private static Sequence<Finding> Check(House house) => Checked.Of(house);
}
