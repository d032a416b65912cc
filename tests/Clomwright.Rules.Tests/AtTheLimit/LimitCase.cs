using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;

namespace Clomwright.Rules.Tests.AtTheLimit;

/// <summary>A house that stands exactly at the limit of a rule.</summary>
/// <param name="Body">Body of rules, all of its editions.</param>
/// <param name="Rule">Rule.</param>
/// <param name="Subject">The thing at its limit.</param>
/// <param name="What">What makes it so, for <c>docs/rules.md</c>.</param>
/// <param name="House">The house: at the limit for 0, a hair on the wrong side for 1, a hair on the right side for -1.</param>
internal sealed record LimitCase(string Body, string Rule, string Subject, string What, Func<int, House> House)
{
    /// <summary>The number to enter where the shipped one is missing.</summary>
    public string? Entered { get; init; }

    /// <summary>What the engineering checks computed: at the limit for 0, a hair beyond it for 1, a hair inside for -1.</summary>
    public Func<int, CheckedDemand>? Demand { get; init; }

    public override string ToString() => $"{Body} {Rule} {Subject}";

    /// <summary>The house with a body adopted and the number entered.</summary>
    public House Adopting(string adopted, int side)
    {
        var house = House(side);
        return house with
        {
            Rules = house.Rules with
            {
                Adopted = [adopted],
                Entered = Entered is null ? [] : [new EnteredLimit(adopted, Rule, Entered, "A. Reader", new DateOnly(2027, 1, 2))],
            },
        };
    }

    /// <summary>A round house of 16 ft with a wall 12 in thick, nothing in it, on a site of seismic category B.</summary>
    public static House Bare { get; } = Houses.Round(Length.FromFeet(16)) with
    {
        Site = new Site { Grade = Length.FromInches(-12), Loads = "asce7-16", SeismicSds = 0.25, SeismicSd1 = 0.1, SeismicS1 = 0.1, RiskCategory = "II" },
        Wall = new Wall(Length.FromFeet(8, 2), Length.FromInches(12)),
    };

    /// <summary>Reads the provided value of a finding and moves one length, by whole nanometres, until it is what is asked.</summary>
    /// <param name="house">The house with that length.</param>
    /// <param name="rule">Rule of common practice.</param>
    /// <param name="subject">The thing.</param>
    /// <param name="start">Where to begin.</param>
    /// <param name="asked">What the provided value has to become.</param>
    /// <param name="grows">1 where the provided value grows with the length, -1 where it shrinks.</param>
    public static House Slid(Func<Length, House> house, string rule, string subject, Length start, Length asked, int grows)
    {
        var at = start;
        for (var i = 0; i < 8; i++)
        {
            var provided = Length.Nearest(Provided(house(at), rule, subject));
            at += (asked - provided) * grows;
        }

        return house(at);
    }

    private static double Provided(House house, string rule, string subject)
    {
        var clause = RuleBook.Clauses.Single(c => c.Clause.Body == "common-practice" && c.Rule.Key == rule);
        var verdict = Findings.Answer(clause, FromBuilding.Of(house)).Single(f => f.Subject == subject).Verdict;
        return verdict switch
        {
            Verdict.Met met => met.Comparisons[0].Provided.Si,
            Verdict.FallsShort shortfall => shortfall.Comparisons[0].Provided.Si,
            _ => throw new InvalidOperationException($"{rule} of {subject} compares nothing: {verdict}."),
        };
    }
}
