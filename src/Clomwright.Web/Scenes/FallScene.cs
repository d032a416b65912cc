using Clomwright.Analysis.Collapse;
using Clomwright.Evidence;
using Clomwright.Rules;
using Clomwright.Study;

namespace Clomwright.Web.Scenes;

/// <summary>How far the search for the push at which the house falls is; what was found; or one sentence why there is nothing.</summary>
/// <param name="Share">Of the work, 0 to 1.</param>
/// <param name="Scene">What was found; null until it is.</param>
/// <param name="Trouble">Why there is nothing.</param>
public sealed record FallAnswer(double Share, FallScene? Scene, string? Trouble);

/// <summary>The push at which the house falls, as the page tells it.</summary>
public sealed record FallScene
{
    /// <summary>Why nothing is known; null when it is.</summary>
    public required string? NotChecked { get; init; }

    /// <summary>Numbers, and where they come from.</summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>What the rule says of it.</summary>
    public required IReadOnlyList<FindingLine> Findings { get; init; }

    /// <summary>All findings of the house counted, this among them.</summary>
    public required Totals Totals { get; init; }
}

/// <summary>Makes a <see cref="FallScene"/>.</summary>
internal static class FallSceneOf
{
    /// <param name="study">A deep study whose search is done.</param>
    /// <param name="words">The language.</param>
    public static FallScene Scene(HouseStudy study, Phrasebook words)
    {
        var pen = new Pen(words, study.House.Units);
        return new FallScene
        {
            NotChecked = study.Collapse.NotChecked is { } why ? pen.Say(why) : null,
            Figures = study.Collapse.Value is { } collapse ? [.. Figures(collapse, pen)] : [],
            Findings = [.. FindingLines.Of(study.WallFindings.Where(f => f.Rule.Key == "wall-collapse").ToSequence(), pen, _ => false).Select(f => f.Line)],
            Totals = FindingLines.Totals(study.FullTally, pen),
        };
    }

    private static IEnumerable<Figure> Figures(CollapseResult collapse, Pen pen)
    {
        Figure Of(string key, double factor) => new(pen.Say(key), pen.Short(Amount.Fraction(factor)));
        yield return Of("web.fall.least", collapse.Least);
        if (collapse.WithoutBeam.Value is { } without)
        {
            yield return Of("web.fall.no-beam", without.Factor);
        }

        yield return Of(collapse.Cracked.Beyond is null ? "web.fall.cracking-stands" : "web.fall.cracking", collapse.Cracked.Limit);
        foreach (var hand in collapse.ByHand.OrderBy(m => m.Factor).Take(2))
        {
            yield return Of(HandKey(hand.Kind), hand.Factor);
        }

        yield return collapse.Earthquake.Value is { } earthquake ? Of("web.fall.asked", earthquake.Coefficient) : new Figure(pen.Say("web.fall.asked"), pen.Say(collapse.Earthquake.NotChecked!));
    }

    private static string HandKey(string kind) => kind switch
    {
        "free" => "web.fall.hand-free",
        "crushes" => "web.fall.hand-crushes",
        "held" => "web.fall.hand-held",
        "slides" => "web.fall.hand-slides",
        "tips" => "web.fall.hand-tips",
        _ => "web.fall.hand-cracks",
    };
}
