using Clomwright.Evidence;
using Clomwright.Rules;

namespace Clomwright.Web.Scenes;

/// <summary>Which findings the page of the earth shows: what is asked of soil, mix and its tests, what leans on the strength of the cob, and whatever else falls short in the house.</summary>
internal static class EarthFindings
{
    private static readonly HashSet<string> OfEarth = new(StringComparer.Ordinal)
    {
        "clay-subsoil", "sand", "straw-condition", "mix-proportions", "mix-shrinkage", "test-before-placing", "lift-stands", "joint-kept-damp", "cob-strength", "cob-strength-bracing",
        "modulus-of-rupture", "header-bearing", "header-pressure", "tossed-lift-height", "forked-lift-height", "formed-lift-height",
    };

    /// <summary>Those findings.</summary>
    public static Sequence<Finding> Of(Sequence<Finding> findings) => findings
        .Where(f => f.Verdict is not Verdict.NotApplicable && (OfEarth.Contains(f.Rule.Key) || f.Verdict is Verdict.FallsShort))
        .ToSequence();
}
