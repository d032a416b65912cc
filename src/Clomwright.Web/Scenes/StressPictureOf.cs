using Clomwright.Analysis.Structure;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Study;

namespace Clomwright.Web.Scenes;

/// <summary>The picture of a wall's stress, at rest and on the way.</summary>
internal static class StressPictureOf
{
    private const int Tight = 6;

    /// <summary>At rest: the hardest of every case, with what the rules say.</summary>
    public static StressPicture Rested(HouseStudy study, StructureResult wall, Face face, Pen pen)
    {
        var standing = study.WallFindings.ToLookup(f => (f.Rule.Key, f.Subject), f => FindingLines.Standing(f.Verdict));
        return Of(
            study, wall, face, pen, wall.Picture, wall.Piers.Select(p => new LivePier(p.Address, p.EdgeMost, p.EdgeStation, p.EdgeHeight, p.EdgeCase)),
            wall.Landings.Select(l => new LivePole(l.Name, l.Pressure, l.Case)), (rule, subject) => standing[(rule, subject)].FirstOrDefault() ?? "none");
    }

    /// <summary>On the way: what the cases that governed do now. No rule is asked.</summary>
    /// <param name="study">The house as it is now.</param>
    /// <param name="rested">The wall as it was taken in hand: what is allowed, and from when tension counts.</param>
    /// <param name="live">What it carries now.</param>
    /// <param name="face">Where the wall is seen from.</param>
    /// <param name="pen">The language.</param>
    public static StressPicture OnTheWay(HouseStudy study, StructureResult rested, LiveStress live, Face face, Pen pen) =>
        Of(study, rested, face, pen, live.Picture, live.Piers, live.Poles, (_, _) => "none");

    private static StressPicture Of(
        HouseStudy study, StructureResult wall, Face face, Pen pen, WallPicture picture, IEnumerable<LivePier> piers, IEnumerable<LivePole> poles, Func<string, string, string> standing)
    {
        var view = new FaceViewOf(study.Geometry, face, pen);
        LivePier[] all = [.. piers];
        StressLine Line(string what, string rule, string subject, double share, WallCase one) => new(
            what, standing(rule, subject), Used(share, pen), Math.Clamp(0.8 * share, 0, 1), pen.Say(WallWords.Case(one)));
        return new StressPicture
        {
            Field = Field(view, picture, wall.Allowed.Value, wall.TensionLevel),
            Piers = [.. all.Select(p => new StressMark(p.Address, Used(p.EdgeMost / wall.Allowed.Value, pen), view.Points(p.EdgeStation, p.EdgeHeight)))],
            Tightest =
            [
                .. all.Select(p => (Share: p.EdgeMost / wall.Allowed.Value, Line: Line(pen.Say("web.stress.pier", ("pier", new Argument.Subject(p.Address))), "wall-edge-pressure", p.Address, p.EdgeMost / wall.Allowed.Value, p.EdgeCase)))
                    .Concat(poles.Select(l => (Share: l.Pressure / study.Mix.Strength.Allowable, Line: Line(pen.Say("web.stress.pole", ("pole", l.Name)), "wall-under-pole", l.Name, l.Pressure / study.Mix.Strength.Allowable, l.Case))))
                    .OrderByDescending(l => l.Share).Take(Tight).Select(l => l.Line),
            ],
        };
    }

    private static StressField Field(FaceViewOf view, WallPicture picture, double allowed, double tension)
    {
        var (around, up) = (picture.Stations.Count - 1, picture.Up);
        double[] pressed = StressBands.Filled(picture, picture.Compression), pulled = StressBands.Filled(picture, picture.Tension);
        // A column on the zero mark is seen at both ends; its first place will do.
        var columns = Enumerable.Range(0, around).Select(i => (Column: i, X: view.Points((picture.Stations[i] + picture.Stations[i + 1]) / 2, 0)[0][0])).OrderBy(c => c.X).ToArray();
        return new StressField(
            [.. columns.Select(c => c.X)],
            [Pen.Round(picture.Heights[0]), .. Enumerable.Range(0, up).Select(k => Pen.Round((picture.Heights[k] + picture.Heights[k + 1]) / 2)), Pen.Round(picture.Heights[up])],
            Bytes(pressed, allowed), Bytes(pulled, tension));

        string Bytes(double[] values, double whole) =>
            Convert.ToBase64String([.. columns.SelectMany(c => Enumerable.Range(0, up).Select(k => (byte)Math.Clamp(Math.Floor(100 * values[c.Column * up + k] / whole + 1e-9), 0, 255)))]);
    }

    private static string Used(double share, Pen pen) => pen.Short(Amount.Fraction(Math.Round(share, 2)));
}
