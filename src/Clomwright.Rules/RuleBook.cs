using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

/// <summary>Holds a house against the bodies of rules that it adopts.</summary>
public static class RuleBook
{
    private const string Ground = "ground";

    /// <summary>Every body of rules there is.</summary>
    public static Sequence<BodyOfRules> Bodies => ClauseRegister.Bodies;

    /// <summary>Every clause there is, computed or not.</summary>
    public static IEnumerable<WrittenClause> Clauses => Bodies.SelectMany(body => body.Clauses);

    /// <summary>What the ground checklist and every adopted body of rules say. The checklist is asked of every house, whatever it adopts.</summary>
    /// <remarks>A body that is not known, and a number entered for a rule that is not known, are findings themselves: not checked.</remarks>
    public static Sequence<Finding> Check(HouseGeometry geometry)
    {
        var choices = geometry.House.Rules;
        var adopted = choices.Adopted.Where(name => name != Ground).Prepend(Ground).Distinct();
        return
        [
            .. adopted.SelectMany(name => Bodies.FirstOrDefault(b => b.Adopted == name) is { } body ? Check(body, geometry) : [Misread.Body(name)]),
            .. choices.Entered.SelectMany(Misread.Entered),
        ];
    }

    /// <summary>What one body of rules says: its gates first, and nothing but them where the house is outside.</summary>
    private static IEnumerable<Finding> Check(BodyOfRules body, HouseGeometry geometry)
    {
        var gates = body.Clauses.Where(c => c.Gate).SelectMany(c => Findings.Answer(c, geometry)).ToList();
        return Gates.Stop(gates, body) is { } stopped
            ? [stopped]
            : gates.Concat(body.Clauses.Where(c => !c.Gate).SelectMany(c => Findings.Answer(c, geometry)));
    }
}
