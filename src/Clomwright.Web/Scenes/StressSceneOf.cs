using Clomwright.Analysis.Structure;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;
using Clomwright.Study;

namespace Clomwright.Web.Scenes;

/// <summary>The stress of a wall as the page draws it.</summary>
public static class StressSceneOf
{
    private const int ZonesNamed = 5;

    private static readonly int[] Shares = [20, 40, 60, 80, 100];

    /// <summary>The scene. Solves the wall where nobody has yet.</summary>
    /// <param name="study">The house.</param>
    /// <param name="revision">Which one it is.</param>
    /// <param name="face">Where the wall is seen from.</param>
    /// <param name="words">The language.</param>
    public static StressScene Scene(HouseStudy study, long revision, Face face, Phrasebook words)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        var wall = study.Structure.Value;
        return new StressScene
        {
            NotChecked = study.Structure.NotChecked is { } why ? pen.Say(why) : null,
            Face = face == Face.Inside ? "inside" : "outside",
            Revision = revision,
            Bands = [.. Shares.Select(share => new StressBand(pen.Say("web.stress.from", ("share", Amount.Fraction(share / 100.0))), share))],
            Tension = new StressBand(wall is null ? "" : pen.Say("web.stress.pull", ("level", new Amount(wall.TensionLevel, Dimension.Stress))), 100),
            Picture = wall is null ? null : StressPictureOf.Rested(study, wall, face, pen),
            Zones = wall is null ? [] : [.. wall.Tension.Take(ZonesNamed).Select(z => pen.Say(
                "web.stress.zone", ("place", WallWords.Place(z)), ("tension", new Amount(z.Tension, Dimension.Stress)), ("height", Amount.Metres(z.Height)), ("case", WallWords.Case(z.Case))))],
            Trust = wall is null ? [] : [.. Trust(wall, pen)],
            Findings = [.. FindingLines.Of(study.WallFindings, pen, _ => false).Select(f => f.Line)],
            Totals = FindingLines.Totals(study.FullTally, pen),
        };
    }

    private static IEnumerable<string> Trust(StructureResult wall, Pen pen)
    {
        yield return pen.Say(
            !wall.Base.Standing ? "web.stress.foot-falls" : wall.Base.Pulling == 0 ? "web.stress.foot-presses" : "web.stress.foot-lets-go",
            ("cases", wall.Cases), ("pulling", wall.Base.Pulling), ("share", Amount.Fraction(wall.Base.LiftedMost)));
        yield return pen.Say(
            "web.stress.trust", ("unknowns", wall.Division.Unknowns), ("patch", Amount.Metres(wall.Patch)), ("edge", Amount.Fraction(WallPrecision.Edge)), ("tension", Amount.Fraction(WallPrecision.Tension)));
        if (wall.Missing is { } missing)
        {
            yield return pen.Say(missing);
        }
    }
}
