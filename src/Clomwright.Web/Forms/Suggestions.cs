using Clomwright.Analysis;
using Clomwright.Analysis.Comfort;
using Clomwright.Analysis.Finishes;
using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Weather;
using Clomwright.Rules;

namespace Clomwright.Web.Forms;

/// <summary>What the program knows by its own key, offered where a key is written. Something else may always be written: what is not known is then not checked.</summary>
internal static class Suggestions
{
    /// <summary>The keys for a place; none where anything may stand.</summary>
    public static IReadOnlyList<string> For(string thing, string key) => (thing, key) switch
    {
        ("site", "climate") => [.. Climate.All.Select(climate => climate.Key)],
        ("site", "loads") => LoadEditions.Keys,
        ("site", "exposure") => ["B", "C", "D", "0", "I", "II", "III", "IV"],
        ("site", "site-class") => ["A", "B", "C", "D", "E", "F"],
        ("site", "risk-category") => ["I", "II", "III", "IV"],
        ("soil", "class") => [.. GroundClass.All.Select(ground => ground.Key)],
        ("freezing", "ground") => ["gravel", "silt"],
        ("freezing", "surface") => ["bare", "turf", "snow"],
        ("stem", "material") => StemMaterial.Keys,
        ("header" or "bond-beam" or "tees" or "compression-ring", "material") or ("roof", "deck-material") => [.. Timber.All.Where(t => t.Form != TimberForm.Pole).Select(t => t.Key).Distinct()],
        ("roof", "species") => [.. Timber.All.Where(t => t.Form == TimberForm.Pole).Select(t => t.Key).Distinct()],
        ("pin", "material") => Metal.Keys,
        ("layer", "material") => [.. RoofMaterial.All.Select(material => material.Key)],
        ("finish" or "coat" or "test-panel", "material") => PlasterMaterial.Keys,
        ("lining" or "floor-edge" or "floor-layer", "material") => ThermalMaterial.Keys,
        ("opening" or "comfort", "glazing") => ThermalMaterial.GlazingKeys,
        ("comfort", "wood") => ThermalMaterial.WoodKeys,
        ("assumed-number", "key") => AssumedKeys.Known,
        ("entered-limit", "body") => [.. RuleBook.Bodies.Select(body => body.Adopted)],
        ("entered-limit", "rule") => [.. RuleBook.Clauses.Where(clause => clause.Measures is not null).Select(clause => clause.Rule.Key).Distinct()],
        ("answer", "question") => [.. RuleBook.Clauses.Where(clause => clause.Clause.Status == Evidence.ClauseStatus.Judgement).Select(clause => clause.Rule.Key).Distinct()],
        _ => [],
    };
}
