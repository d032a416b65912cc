using Clomwright.Analysis.Mix;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

/// <summary>Holds a house against the bodies of rules that it adopts.</summary>
public static class RuleBook
{
    /// <summary>The key of the body of rules that the model of the whole wall answers.</summary>
    public const string WallModel = Engineering.WallModel;

    private const string Ground = "ground";

    /// <summary>Every body of rules there is.</summary>
    public static Sequence<BodyOfRules> Bodies => ClauseRegister.Bodies;

    /// <summary>Every clause there is, computed or not.</summary>
    public static IEnumerable<WrittenClause> Clauses => Bodies.SelectMany(body => body.Clauses);

    /// <summary>What the ground checklist, the engineering checks and every adopted body of rules say.</summary>
    /// <remarks>
    /// The checklist is asked of every house and the engineering checks of every house with a roof, whatever it adopts. A body that is not known, and a number
    /// entered for a rule that is not known, are findings themselves: not checked.
    /// </remarks>
    /// <param name="geometry">The placed house.</param>
    /// <param name="demands">What the engineering checks computed; a rule for which there is none is not checked.</param>
    /// <param name="mix">What the tests of the mix read; null leaves every rule about tests not checked.</param>
    public static Sequence<Finding> Check(HouseGeometry geometry, Sequence<CheckedDemand> demands = default, MixResult? mix = null) =>
        Check(geometry.House, clause => Findings.Answer(clause, geometry, demands, mix));

    /// <summary>Whether a finding is said of what was computed of a house or read from its tests, and not of where everything stands alone.</summary>
    public static bool ReadsResults(Finding finding) => ClauseRegister.ReadsResults(finding.Clause, finding.Rule);

    /// <summary>
    /// What the rules say while a house is being changed by hand: of where everything stands now, and for all that <see cref="ReadsResults"/> what they said of the same house before.
    /// Whoever shows it says which findings are those of before.
    /// </summary>
    /// <param name="geometry">The placed house as it is now.</param>
    /// <param name="before">All that <see cref="Check(HouseGeometry, Sequence{CheckedDemand}, MixResult?)"/> and <see cref="CheckWall"/> said of it before.</param>
    public static Sequence<Finding> CheckPlaces(HouseGeometry geometry, Sequence<Finding> before)
    {
        var held = before.Where(ReadsResults).ToLookup(f => (f.Clause.Adopted, f.Rule.Key));
        IEnumerable<Finding> Answer(WrittenClause clause) =>
            ClauseRegister.ReadsResults(clause.Clause, clause.Rule) ? held[(clause.Clause.Adopted, clause.Rule.Key)] : Findings.Answer(clause, geometry);

        return [.. Check(geometry.House, Answer), .. before.Where(f => f.Clause.Body == Engineering.WallModel)];
    }

    /// <summary>What the model of the whole wall says, of every house with a roof. Apart from the others because it takes longer: who shows findings while something is dragged leaves it for when it rests.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="demands">What the model computed.</param>
    public static Sequence<Finding> CheckWall(HouseGeometry geometry, Sequence<CheckedDemand> demands) => geometry.House.Roof is null ? []
        : Bodies.First(b => b.Adopted == Engineering.WallModel).Clauses.SelectMany(c => Findings.Answer(c, geometry, demands)).ToSequence();

    /// <summary>What the checklist, the engineering checks and every adopted body say, each of their clauses answered in one way.</summary>
    private static Sequence<Finding> Check(House house, Func<WrittenClause, IEnumerable<Finding>> answer)
    {
        string[] always = house.Roof is null ? [Ground] : [Ground, Engineering.Body];
        var adopted = always.Concat(house.Rules.Adopted.Where(name => name != Engineering.WallModel)).Distinct();
        return
        [
            .. adopted.SelectMany(name => Bodies.FirstOrDefault(b => b.Adopted == name) is { } body ? Check(body, answer) : [Misread.Body(name)]),
            .. house.Rules.Entered.SelectMany(Misread.Entered),
        ];
    }

    /// <summary>What one body of rules says: its gates first, and nothing but them where the house is outside.</summary>
    private static IEnumerable<Finding> Check(BodyOfRules body, Func<WrittenClause, IEnumerable<Finding>> answer)
    {
        var gates = body.Clauses.Where(c => c.Gate).SelectMany(answer).ToList();
        return Gates.Stop(gates, body) is { } stopped ? [stopped] : gates.Concat(body.Clauses.Where(c => !c.Gate).SelectMany(answer));
    }
}
