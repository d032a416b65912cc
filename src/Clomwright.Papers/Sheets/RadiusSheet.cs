using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>How far both faces are from the centre peg at the top of each lift: radii of a round house, distances by bearing of any other.</summary>
internal static class RadiusSheet
{
    /// <summary>Heights of the table: the foot of the cob and the top of each lift.</summary>
    public static IEnumerable<(double Height, string Name)> Levels(Scene scene)
    {
        yield return (scene.Geometry.Wall.Base.Metres, scene.Say.Say("radius.foot"));
        foreach (var lift in scene.Geometry.Lifts)
        {
            yield return (lift.Top.Metres, scene.Say.Say("radius.lift", ("n", lift.Number)));
        }
    }

    public static IEnumerable<Draft> Of(Scene scene) => scene.Geometry.Curve.IsRoundAboutCentre ? Round(scene) : Draft.Fewest(Styles.Tapes, numbers => ByBearing(scene, numbers));

    private static SheetHead Head(Scene scene) => new("radius-table", scene.Say.Say(scene.Geometry.Curve.IsRoundAboutCentre ? "radius.title" : "radius.title-bearing"));

    private static Cautions Care(Scene scene) => new(scene.Say.Say("caution.title"), [scene.Say.Say("caution.wet-wall"), scene.Say.Say("caution.platform")]) { Above = 3 };

    private static IEnumerable<Draft> Round(Scene scene)
    {
        var (say, wall) = (scene.Say, scene.Geometry.Wall);
        var radius = scene.Geometry.Curve.Length / (2 * Math.PI);
        return Draft.Flow(Head(scene), scene.Portrait,
        [
            new Paragraph(say.Say("radius.note"), Styles.Body),
            new Table(
                [
                    new(""), new(say.Say("radius.height"), Anchor.End), new(""), new(say.Say("radius.inside"), Anchor.End), new(""), new(say.Say("radius.outside"), Anchor.End), new(""),
                    new(say.Say("radius.thickness"), Anchor.End), new(""), new(say.Say("radius.seen")) { Grows = 1 },
                ],
                [
                    .. Levels(scene).Reverse().Select(l => new Row(
                    [
                        new Cell(l.Name) { Lettering = Styles.BodyStrong },
                        .. scene.Pair(Amount.Metres(l.Height), Styles.BodyStrong),
                        .. scene.Pair(Amount.Metres(radius + wall.InsideOffset(l.Height)), Styles.Reading),
                        .. scene.Pair(Amount.Metres(radius + wall.OutsideOffset(l.Height)), Styles.Reading),
                        .. scene.Pair(Amount.Metres(wall.ThicknessAt(l.Height)), Styles.BodyStrong),
                        new Cell(""),
                    ])),
                ]) { Above = 3, Pad = 1.4 },
            new Paragraph(say.Say("radius.strip"), Styles.Small) { Above = 2 },
            Care(scene),
        ], say);
    }

    private static IEnumerable<Draft> ByBearing(Scene scene, Lettering numbers)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        (double Height, string Name)[] levels = [.. Levels(scene)];
        var paper = scene.Set.Options.Paper.Drawing()[0];
        var insides = g.Wall.InsideTaper.RiseOverRun == 0 ? levels[..1] : levels;
        List<Block> blocks = [new Paragraph(say.Say("radius.note-bearing"), Styles.Body)];
        var both = insides.Length == 1;
        if (both)
        {
            blocks.Add(Table(scene, numbers, levels, (say.Say("radius.inside-all"), g.Wall.Base.Metres)));
        }
        else
        {
            blocks.AddRange([new Heading(say.Say("radius.inside")), Table(scene, numbers, insides, null, inside: true), new Heading(say.Say("radius.outside")), Table(scene, numbers, levels, null)]);
        }

        blocks.AddRange([new Paragraph(say.Say("radius.strip"), Styles.Small) { Above = 2 }, Care(scene)]);
        return Draft.Flow(Head(scene), paper, blocks, say);
    }

    /// <summary>A row for each bearing and a column for each height; before them the inside face where it is plumb.</summary>
    private static Table Table(Scene scene, Lettering numbers, (double Height, string Name)[] levels, (string Name, double Height)? plumb, bool inside = false)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        var tables = levels.Select(l => OffsetTables.At(g, l.Height)).ToArray();
        Cell Of(OffsetRow? row, bool isInside) => row is null ? new Cell("–") : scene.Metres(isInside ? row.Inside : row.Outside) with { Lettering = numbers };
        return new Table(
            [
                new(say.Say("radius.bearing"), Anchor.End), new(say.Say("radius.station"), Anchor.End),
                .. plumb is { } p ? (Column[])[new(p.Name, Anchor.End) { Grows = 1 }] : [],
                .. levels.Select(l => new Column($"{l.Name}\n{say.One(Amount.Metres(l.Height))}", Anchor.End) { Grows = 1 }),
            ],
            [
                .. tables[0].Rows.Select(row => new Row(
                [
                    new Cell(say.One(Scene.Bearing(row.Bearing))) { Lettering = Styles.BodyStrong },
                    scene.Metres(row.Station),
                    .. plumb is null ? (Cell[])[] : [Of(row, true)],
                    .. tables.Select(t => Of(t.Rows.Where(r => Math.Abs(r.Bearing - row.Bearing) < 1e-9).MinBy(r => Math.Abs(r.Station - row.Station)), inside)),
                ])),
            ]) { Above = 2, Pad = 0.5 };
    }
}
