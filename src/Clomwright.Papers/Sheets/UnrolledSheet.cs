using Clomwright.Analysis.FreeZone;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>The unrolled elevation of one face, with the tables that go with it.</summary>
internal static class UnrolledSheet
{
    private const double BandGap = 3;
    private const int MostBands = 4;

    /// <summary>From this width on the two tables stand beside each other, mm.</summary>
    private const double Wide = 300;

    public static IEnumerable<Draft> Of(Scene scene, Face face)
    {
        var say = scene.Say;
        var side = face.ToString().ToLowerInvariant();
        var layout = Best(scene, face);
        var head = new SheetHead($"unrolled-{side}", say.Say("unrolled.title-" + side), Clock.Drawing, say.Say(layout.Scale.Label));
        Block[] bands = [.. layout.Bands.Select(b => new Picture(b.Marks, b.View) { Above = BandGap })];
        List<Block> blocks = [];
        blocks.Add(new Paragraph(say.Say("unrolled.note-" + side) + " " + say.Say("unrolled.note-tags"), Styles.Small));
        blocks.Add(new Facts(
        [
            scene.Fact("unrolled.ring", Amount.Metres(layout.Bands[0].Strip.FaceLength), Tag.Computed),
            scene.Fact("unrolled.face-area", new Area(face == Face.Inside ? scene.Geometry.Measures.InsideFaceArea : scene.Geometry.Measures.OutsideFaceArea), Tag.Computed),
            scene.Fact("unrolled.openings-share", Amount.Fraction(scene.Geometry.Measures.OpeningLengthShare), Tag.Computed),
        ], Styles.Heading));
        blocks.AddRange(Free(scene));
        Block[] openings = [.. Openings(scene, layout.Bands[0].Strip)];
        Block[] keys = [.. Keys(scene, layout.Bands[0].Strip), .. Found(scene)];
        var wide = SheetFrame.Content(layout.Paper).Width > Wide && openings.Length > 0 && keys.Length > 0;
        blocks.AddRange(wide ? [new Beside(new Stack(openings), new Stack(keys)) { Above = 5 }] : [.. openings, .. keys]);
        // A drawing that lies down on small paper has its tables on upright sheets after it.
        if (layout.Paper.Width < layout.Paper.Height || wide)
        {
            return Draft.Flow(head, layout.Paper, [.. bands, .. blocks], say);
        }

        Draft[] drawn = [.. Draft.Flow(head, layout.Paper, bands, say)];
        return [.. drawn, .. Draft.Flow(head, scene.Portrait, blocks, say, first: drawn.Length + 1)];
    }

    /// <summary>The paper, scale and number of strips that show the wall largest; a strip more has to earn its place.</summary>
    private static (DrawingScale Scale, IReadOnlyList<WallDrawing> Bands, Format Paper) Best(Scene scene, Face face)
    {
        var best = (Scale: DrawingScale.Usual(scene.Say.First)[^1], Count: 1, Paper: scene.Portrait);
        var score = 0.0;
        for (var count = 1; count <= MostBands; count++)
        {
            var cuts = StripCuts.Of(scene.Geometry, face, count);
            foreach (var paper in scene.Set.Options.Paper.Drawing().Reverse())
            {
                var content = SheetFrame.Content(paper);
                foreach (var scale in DrawingScale.Usual(scene.Say.First))
                {
                    var worth = Math.Pow(0.85, count - 1) / scale.Denominator;
                    if (worth <= score)
                    {
                        break;
                    }

                    var rooms = UnrolledWall.Rooms(scene.Geometry, View(scene, face, scale), cuts);
                    if (rooms.All(r => r.Width <= content.Width) && rooms.Sum(r => r.Height + BandGap) - BandGap <= content.Height)
                    {
                        (best, score) = ((scale, count, paper), worth);
                        break;
                    }
                }
            }
        }

        return (best.Scale, UnrolledWall.Bands(scene.Geometry, View(scene, face, best.Scale) with { Free = FromGeometry.Of(scene.Geometry), AsBuilt = scene.Set.AsBuilt }, best.Count), best.Paper);
    }

    private static WallView View(Scene scene, Face face, DrawingScale scale) => new(face, scale.PaperPerMetre)
    {
        Units = scene.Say.First,
        Book = scene.Say.Book,
        Digits = scene.Set.Options.Paper is PaperSize.A3 or PaperSize.Tabloid ? 3.5 : 2.5,
    };

    /// <summary>What the dotted hatching means, or that there is no free zone.</summary>
    private static IEnumerable<Block> Free(Scene scene)
    {
        var (say, zone) = (scene.Say, FromGeometry.Of(scene.Geometry));
        if (zone.Boxes.Count > 0)
        {
            var board = new Board();
            var box = PaperBox.At(0, 0, 12, 4);
            LegendBox.Draw(board, box, [StripFree.Sample(Outline.Rectangle(box))], say.Say("unrolled.free"));
            yield return new Picture(board.Marks, board.Marks.Bounds().Inset(-0.5)) { Left = true };
        }

        yield return new Paragraph(zone.Boxes.Count > 0 ? say.Say("unrolled.note-free", ("depth", Amount.Metres(zone.Depth))) : say.Say("unrolled.no-free"), Styles.Small) { Above = 1 };
    }

    /// <summary>What was found otherwise than drawn, with both numbers.</summary>
    private static IEnumerable<Block> Found(Scene scene)
    {
        var (say, marks) = (scene.Say, scene.Set.AsBuilt);
        if (marks.Count == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say("as-built.heading"));
        yield return new Table(
            [new(""), new(say.Say("built.name")) { Grows = 1 }, new(say.Say("as-built.found"), Anchor.End), new(say.Say("as-built.drawn"), Anchor.End)],
            [
                .. marks.Select((m, i) => new Row(
                    new Cell(StripFree.Sign(i)) { Lettering = Styles.BodyStrong },
                    new Cell(m.Part, Wording.Dotted(say.Say(new Message($"study.record.measured-{m.What.ToString().ToLowerInvariant()}")), say.Say(m.On))),
                    scene.Cell(m.Found), scene.Cell(m.Drawn))),
            ]) { Above = 1.5 };
    }

    private static IEnumerable<Block> Openings(Scene scene, WallStrip strip)
    {
        var say = scene.Say;
        if (scene.Geometry.Openings.Count == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say("openings.heading"));
        yield return new Table(
            [
                new("") { }, new(say.Say("openings.name")) { Grows = 1 }, new(say.Say("openings.from-arc"), Anchor.End), new(say.Say("openings.to-arc"), Anchor.End),
                new(say.Say("openings.width"), Anchor.End), new(say.Say("openings.height"), Anchor.End), new(say.Say("openings.sill"), Anchor.End), new(say.Say("openings.head"), Anchor.End),
            ],
            [
                .. scene.Geometry.Openings.Select(o =>
                {
                    var on = strip.OnFace(o);
                    return new Row(
                        new Cell(scene.Letter(o)) { Lettering = Styles.BodyStrong },
                        new Cell(o.Opening.Name, say.Say("kind." + o.Opening.Kind.ToString().ToLowerInvariant())),
                        scene.Metres(Wrapped(strip.Arc(on.From), strip.FaceLength)),
                        scene.Metres(Wrapped(strip.Arc(on.To), strip.FaceLength)),
                        scene.Cell(o.Opening.Width),
                        scene.Cell(o.Opening.Height),
                        scene.Cell(o.Opening.Sill),
                        scene.Metres(o.Head));
                }),
            ]) { Above = 1.5 };
    }

    private static double Wrapped(double arc, double length)
    {
        var a = arc % length;
        return a < 0 ? a + length : a;
    }

    /// <summary>What the numbers on the drawing stand for.</summary>
    private static IEnumerable<Block> Keys(Scene scene, WallStrip strip)
    {
        var say = scene.Say;
        Amount OnFace(double station) => Amount.Metres(Wrapped(strip.Arc(station), strip.FaceLength));
        List<Row> rows =
        [
            .. scene.Geometry.Niches.Select(n => new Row(
            [
                new Cell(StripHoles.Sign(scene.Geometry, n)) { Lettering = Styles.BodyStrong },
                new Cell(n.Niche.Name),
                new Cell(say.Say("built.niche")) { Lettering = Styles.Small },
                new Cell(say.Say("face." + n.Niche.Face.ToString().ToLowerInvariant())),
                .. scene.Pair(OnFace(n.Station), Styles.Body),
                .. scene.Pair(Amount.Metres(n.Bottom), Styles.Body, say.Say("built.sill")),
            ])),
            .. scene.Geometry.Embeds.GroupBy(e => e.Index).Select(row => row.First()).Select(e => new Row(
            [
                new Cell(StripEmbeds.Number(e)) { Lettering = Styles.BodyStrong },
                new Cell(e.Embed.Name),
                new Cell(Wording.Dotted(say.Say("embed." + e.Embed.Kind.ToString().ToLowerInvariant()), e.Embed.Count > 1 ? say.Say("built.row", ("n", e.Embed.Count)) : "")) { Lettering = Styles.Small },
                new Cell(say.Say("face." + (e.Embed.Through ? "through" : e.Embed.Face.ToString().ToLowerInvariant()))),
                .. scene.Pair(OnFace(e.Station), Styles.Body),
                .. scene.Pair(Amount.Metres(e.Height), Styles.Body, say.Say("built.middle")),
            ])),
        ];
        if (rows.Count == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say("built.heading"));
        yield return new Table(
            [
                new(""), new(say.Say("built.name")) { Grows = 1 }, new("") { Grows = 1 }, new(say.Say("built.face")), new(say.Say("built.station"), Anchor.End), new(""), new(say.Say("built.height"), Anchor.End), new(""),
            ],
            rows) { Above = 1.5 };
    }
}
