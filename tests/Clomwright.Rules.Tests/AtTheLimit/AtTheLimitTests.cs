using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules.Tests.AtTheLimit;

/// <summary>Every computed clause has a house exactly at its limit, and its verdict there follows the rule's own word.</summary>
/// <remarks>Rank: analytic. Written lengths meet their limit to the last bit; computed ones are compared in whole nanometres and meet it to the last of these.</remarks>
public class AtTheLimitTests
{
    internal static IReadOnlyList<LimitCase> Cases { get; } = [.. EngineeringCases.All, .. CommonPracticeCases.All, .. IrcCobCases.All, .. DwellingCases.All];

    public static TheoryData<int, string> Numbered()
    {
        var data = new TheoryData<int, string>();
        for (var i = 0; i < Cases.Count; i++)
        {
            foreach (var body in RuleBook.Bodies.Where(b => b.Key == Cases[i].Body))
            {
                data.Add(i, body.Adopted);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Numbered))]
    public void House_ExactlyAtTheLimit_FollowsTheWord(int index, string adopted)
    {
        var (clause, verdict) = Answer(index, adopted, 0);
        var compared = Compared(verdict);
        Assert.Equal(compared.Limit.Si, compared.Provided.Si);
        Assert.Equal(compared.Word is ComparisonWord.AtMost or ComparisonWord.AtLeast, verdict is Verdict.Met);
        if (clause.Limit!.Value.Dimension == compared.Limit.Dimension)
        {
            Assert.Equal(clause.Limit.Value.Si, compared.Limit.Si);
        }

        if (clause.Rule.Key != "seismic-category")
        {
            Assert.Equal(clause.Word, compared.Word);
        }
    }

    [Theory]
    [MemberData(nameof(Numbered))]
    public void House_AHairOffTheLimit_IsMetOnOneSideOnly(int index, string adopted)
    {
        Assert.IsType<Verdict.Met>(Answer(index, adopted, -1).Verdict);
        Assert.IsNotType<Verdict.Met>(Answer(index, adopted, 1).Verdict);
    }

    [Fact]
    public void EveryComputedClause_HasACaseAtItsLimit()
    {
        var without = RuleBook.Clauses.Where(c => c.Clause.Status == ClauseStatus.Computed && !Cases.Any(l => l.Body == c.Clause.Body && l.Rule == c.Rule.Key));
        Assert.Empty(without.Select(c => $"{c.Clause.Adopted} {c.Rule.Key}"));
    }

    [Fact]
    public void EveryCase_BelongsToAComputedClause() =>
        Assert.All(Cases, l => Assert.Contains(RuleBook.Clauses, c => c.Clause.Status == ClauseStatus.Computed && c.Clause.Body == l.Body && c.Rule.Key == l.Rule));

    private static (WrittenClause Clause, Verdict Verdict) Answer(int index, string adopted, int side)
    {
        var limit = Cases[index];
        var clause = RuleBook.Bodies.Single(b => b.Adopted == adopted).Clauses.Single(c => c.Rule.Key == limit.Rule);
        var house = limit.Adopting(adopted, side);
        var geometry = FromBuilding.Of(house);
        var finding = Findings.Answer(clause, geometry, limit.Demand is { } demand ? [demand(side)] : [], Checked.Mix(geometry)).Single(f => f.Subject == limit.Subject);
        return (limit.Entered is { } entered && LimitText.TryRead(entered, clause.Measures!.Value, out var number, out _) ? clause with { Limit = number } : clause, finding.Verdict);
    }

    private static Comparison Compared(Verdict verdict) => verdict switch
    {
        Verdict.Met met => met.Comparisons[0],
        Verdict.FallsShort shortfall => shortfall.Comparisons[0],
        _ => throw new InvalidOperationException($"Nothing was compared: {verdict}."),
    };
}
