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
        Gen.Select(Houses.Plausible, Gen.Int[1, 3]).Sample((house, quarters) => Same(house, Moved.Turned(house, quarters)), iter: Counts.Of(40, 2000));

    [Fact]
    public void MirroringAHouse_ChangesNoPracticeFinding() =>
        Houses.Plausible.Sample(house => Same(house, Moved.Mirrored(house)), iter: Counts.Of(40, 2000));

    [Fact]
    public void RenamingAHouse_ChangesNoPracticeFinding() =>
        Houses.Plausible.Sample(house => Same(house, Moved.Renamed(house)), iter: Counts.Of(40, 2000));

    [Fact]
    public void AWiderPier_NeverFailsAPierRuleThatANarrowerOneMet() =>
        Gen.Select(Gen.Int[30, 120], Gen.Int[1, 40], Gen.Int[0, 6]).Sample((apart, wider, taper) =>
        {
            var narrow = PierFindings(Length.FromInches(apart), taper);
            var wide = PierFindings(Length.FromInches(apart + wider), taper);
            return narrow.All(f => f.Value is not Verdict.Met || wide[f.Key] is Verdict.Met);
        }, iter: Counts.Of(100, 2000));

    [Fact]
    public void AMissingNumber_NeverYieldsMet() => Houses.Plausible.Sample(house =>
    {
        var geometry = FromBuilding.Of(house with { Rules = new RuleChoices() });
        return RuleBook.Clauses.Where(c => c.NumberIsMissing).SelectMany(c => Findings.Answer(c, geometry)).All(f => f.Verdict is Verdict.NotChecked);
    }, iter: Counts.Of(40, 2000));

    [Fact]
    public void AMissingInput_NeverMakesARuleMet() => Gen.Select(Houses.Plausible, Gen.Int[0, Without.Length - 1]).Sample((house, which) =>
    {
        house = house with { Rules = house.Rules with { Adopted = ["common-practice", "irc-cob@2021"] } };
        var before = Met(house).ToHashSet();
        return Met(Without[which](house)).All(before.Contains);
    }, iter: Counts.Of(60, 3000));

    [Fact]
    public void EveryFindingAndNote_ReadsInFull() => Houses.Plausible.Sample(house =>
    {
        foreach (var finding in Check(house with { Rules = house.Rules with { Adopted = ["common-practice", "irc-cob@2021", "irc-cob@2024"] } }))
        {
            var said = finding.Notes.Append(Sentences.Of(finding)).Select(m => English.Say(m, house.Units)).ToList();
            Assert.All(said, s => Assert.DoesNotMatch(@"\[[a-z]+\.|[{}]|\?\?| {2}|\.\.", s));
            Assert.EndsWith(finding.Verdict is Verdict.NeedsJudgement || finding.Clause.Body == "ground" ? "" : ".", said[^1], StringComparison.Ordinal);
        }
    }, iter: Counts.Of(60, 3000));

    [Fact]
    public void EveryClauseOfAnAdoptedBody_AnswersAtLeastOnce() => Houses.Plausible.Sample(house =>
    {
        var geometry = FromBuilding.Of(house);
        return RuleBook.Clauses.All(c => Findings.Answer(c, geometry).Any());
    }, iter: Counts.Of(40, 2000));

    [Fact]
    public void EveryPlace_IsAStretchOfTheWall() => Houses.Plausible.Sample(house =>
    {
        var geometry = FromBuilding.Of(house);
        return RuleBook.Check(geometry).SelectMany(f => f.Places).All(p =>
            p.ToStation >= p.FromStation && p.ToHeight >= p.FromHeight && p.ToStation - p.FromStation <= geometry.Curve.Length && double.IsFinite(p.FromStation + p.ToHeight));
    }, iter: Counts.Of(40, 2000));

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

    private static Sequence<Finding> Check(House house) => RuleBook.Check(FromBuilding.Of(house));
}
