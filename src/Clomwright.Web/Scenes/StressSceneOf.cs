using Clomwright.Analysis.Structure;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Rules;
using Clomwright.Study;

namespace Clomwright.Web.Scenes;

/// <summary>The stress of a wall as the page draws it.</summary>
public static class StressSceneOf
{
    private const int Tight = 6;
    private const int ZonesNamed = 5;

    private static readonly double[] Shares = [0.2, 0.4, 0.6, 0.8, 1.0];

    /// <summary>The scene. Solves the wall where nobody has yet.</summary>
    /// <param name="study">The house.</param>
    /// <param name="face">Where the wall is seen from.</param>
    /// <param name="words">The language.</param>
    public static StressScene Scene(HouseStudy study, Face face, Phrasebook words)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        var wall = study.Structure.Value;
        var view = new FaceViewOf(study.Geometry, face, pen);
        return new StressScene
        {
            NotChecked = study.Structure.NotChecked is { } why ? pen.Say(why) : null,
            Face = face == Face.Inside ? "inside" : "outside",
            Bands = [.. Shares.Select(share => new StressBand(
                pen.Say("web.stress.from", ("share", Amount.Fraction(share))), wall is null ? [] : Pieces(view, wall.Picture, wall.Picture.Compression, share * wall.Allowed.Value)))],
            Tension = new StressBand(
                wall is null ? "" : pen.Say("web.stress.pull", ("level", Pressure(wall.TensionLevel))), wall is null ? [] : Pieces(view, wall.Picture, wall.Picture.Tension, wall.TensionLevel)),
            Piers = wall is null ? [] : [.. wall.Piers.Select(p => new StressMark(p.Address, Used(p.EdgeMost / wall.Allowed.Value, pen), view.Points(p.EdgeStation, p.EdgeHeight)))],
            Tightest = wall is null ? [] : [.. Lines(study, wall, pen).OrderByDescending(l => l.Share).Take(Tight)],
            Zones = wall is null ? [] : [.. wall.Tension.Take(ZonesNamed).Select(z => pen.Say(
                "web.stress.zone", ("place", WallWords.Place(z)), ("tension", Pressure(z.Tension)), ("height", Amount.Metres(z.Height)), ("case", WallWords.Case(z.Case))))],
            Trust = wall is null ? [] : [.. Trust(wall, pen)],
            Findings = [.. FindingLines.Of(study.WallFindings, pen, _ => false).Select(f => f.Line)],
            Totals = FindingLines.Totals(study.FullTally, pen),
        };
    }

    private static IReadOnlyList<double[][]> Pieces(FaceViewOf view, WallPicture picture, Sequence<double> numbers, double level) =>
        [.. StressBands.Above(picture, numbers, level).SelectMany(view.Turns)];

    private static IEnumerable<StressLine> Lines(HouseStudy study, StructureResult wall, Pen pen)
    {
        var standing = study.WallFindings.ToLookup(f => (f.Rule.Key, f.Subject), f => FindingLines.Standing(f.Verdict));
        foreach (var pier in wall.Piers)
        {
            yield return Line(pen.Say("web.stress.pier", ("pier", pier.Address)), ("wall-edge-pressure", pier.Address), pier.EdgeMost / wall.Allowed.Value, pier.EdgeCase);
        }

        foreach (var landing in wall.Landings)
        {
            yield return Line(pen.Say("web.stress.pole", ("pole", landing.Name)), ("wall-under-pole", landing.Name), landing.Pressure / study.Mix.Strength.Allowable, landing.Case);
        }

        StressLine Line(string what, (string, string) rule, double share, WallCase one) =>
            new(what, standing[rule].FirstOrDefault() ?? "none", Used(share, pen), Math.Clamp(0.8 * share, 0, 1), pen.Say(WallWords.Case(one)));
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

    private static string Used(double share, Pen pen) => pen.Short(Amount.Fraction(Math.Round(share, 2)));

    private static Amount Pressure(double pascals) => new(pascals, Dimension.Stress);
}
