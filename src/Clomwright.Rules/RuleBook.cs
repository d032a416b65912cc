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
    public static Sequence<Finding> Check(HouseGeometry geometry, Sequence<CheckedDemand> demands = default, MixResult? mix = null)
    {
        var choices = geometry.House.Rules;
        string[] always = geometry.House.Roof is null ? [Ground] : [Ground, Engineering.Body];
        var adopted = always.Concat(choices.Adopted.Where(name => name != Engineering.WallModel)).Distinct();
        return
        [
            .. adopted.SelectMany(name => Bodies.FirstOrDefault(b => b.Adopted == name) is { } body ? Check(body, geometry, demands, mix) : [Misread.Body(name)]),
            .. choices.Entered.SelectMany(Misread.Entered),
        ];
    }

    /// <summary>What the model of the whole wall says, of every house with a roof. Apart from the others because it takes longer: who shows findings while something is dragged leaves it for when it rests.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="demands">What the model computed.</param>
    public static Sequence<Finding> CheckWall(HouseGeometry geometry, Sequence<CheckedDemand> demands) => geometry.House.Roof is null ? []
        : Bodies.First(b => b.Adopted == Engineering.WallModel).Clauses.SelectMany(c => Findings.Answer(c, geometry, demands)).ToSequence();

    /// <summary>What one body of rules says: its gates first, and nothing but them where the house is outside.</summary>
    private static IEnumerable<Finding> Check(BodyOfRules body, HouseGeometry geometry, Sequence<CheckedDemand> demands, MixResult? mix)
    {
        var gates = body.Clauses.Where(c => c.Gate).SelectMany(c => Findings.Answer(c, geometry, demands, mix)).ToList();
        return Gates.Stop(gates, body) is { } stopped
            ? [stopped]
            : gates.Concat(body.Clauses.Where(c => !c.Gate).SelectMany(c => Findings.Answer(c, geometry, demands, mix)));
    }
}
