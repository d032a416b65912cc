using Clomwright.Evidence;

namespace Clomwright.Analysis.Loads;

/// <summary>Kinds of load that combinations tell apart.</summary>
public enum LoadKind
{
    /// <summary>D, G: weight that stays.</summary>
    Dead,

    /// <summary>L_r: people keeping the roof.</summary>
    RoofLive,

    /// <summary>S: snow.</summary>
    Snow,

    /// <summary>R: water standing behind a blocked drain.</summary>
    Rain,

    /// <summary>W: wind, down or up.</summary>
    Wind,

    /// <summary>E: earthquake.</summary>
    Earthquake,
}

/// <summary>How loads and strengths are compared.</summary>
public enum LoadForm
{
    /// <summary>Everyday loads against allowable stresses.</summary>
    AllowableStress,

    /// <summary>Factored loads against strengths.</summary>
    Strength,
}

/// <summary>One sum of loads.</summary>
/// <param name="Key">As engineers write it: <c>0.6D + 0.6W</c>.</param>
/// <param name="Form">Allowable stress or strength.</param>
/// <param name="DeadIsLeast">The dead load helps: take the least that may be there (dry soil, or the bare deck).</param>
/// <param name="Terms">Factors by kind; kinds that are not named do not act.</param>
/// <param name="Source">Whose combination it is.</param>
public sealed record Combination(string Key, LoadForm Form, bool DeadIsLeast, Sequence<CombinationTerm> Terms, Source Source)
{
    /// <summary>The factor of a kind; 0 when it does not act.</summary>
    public double Factor(LoadKind kind)
    {
        foreach (var term in Terms)
        {
            if (term.Kind == kind)
            {
                return term.Factor;
            }
        }

        return 0;
    }

    /// <summary>The sum of effects.</summary>
    public double Sum(Func<LoadKind, double> effect) => Terms.Sum(t => t.Factor * effect(t.Kind));
}

/// <summary>One factor of a combination.</summary>
public readonly record struct CombinationTerm(LoadKind Kind, double Factor);
