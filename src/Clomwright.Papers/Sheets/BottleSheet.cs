using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>Bottles and glass set in the cob: each row drawn to scale along the arc, the cob left between, and how many to collect.</summary>
internal static class BottleSheet
{
    /// <summary>Cob between two bottles, m: thinner ribs crumble as they dry (common practice, no source).</summary>
    private const double RibLeast = 0.05;

    public static IEnumerable<Draft> Of(Scene scene)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        var rows = g.Embeds.Where(e => e.Embed.Kind == EmbedKind.Bottle).GroupBy(e => e.Index).ToArray();
        var glass = g.Openings.Where(o => o.Opening.Kind == OpeningKind.Glass).ToArray();
        if (rows.Length == 0 && glass.Length == 0)
        {
            return [];
        }

        List<Block> blocks = [new Paragraph(say.Say("bottles.how"), Styles.Body)];
        foreach (var row in rows)
        {
            blocks.AddRange(Row(scene, [.. row]));
        }

        if (glass.Length > 0)
        {
            blocks.Add(new Heading(say.Say("bottles.glass")) { Above = 4 });
            blocks.Add(new Table(
                [new(""), new(say.Say("bottles.pane")) { Grows = 1 }, new(say.Say("bottles.wide"), Anchor.End), new(""), new(say.Say("bottles.high"), Anchor.End), new(""), new(say.Say("bottles.bought"))],
                [.. glass.Select(o => new Row([new Cell(scene.Letter(o)) { Tick = true, Lettering = Styles.BodyStrong }, new Cell(o.Opening.Name), .. scene.Pair(o.Opening.Width, Styles.Reading), .. scene.Pair(o.Opening.Height, Styles.Reading), Dots.Cell(14)]))]) { Above = 1 });
            blocks.Add(new Paragraph(say.Say("bottles.glass-how"), Styles.Body) { Above = 1.5 });
        }

        blocks.Add(Collect(scene));
        blocks.Add(new Table([new("") { Grows = 1 }], [.. ((string[])["bottles.step-cut", "bottles.step-join", "bottles.step-slope", "bottles.step-ends", "bottles.step-wipe", "bottles.step-height"]).Select(k => new Row(new Cell(say.Say(k)) { Tick = true }))]) { Above = 4, Pad = 0.4 });
        blocks.Add(new Cautions(say.Say("caution.title"), [say.Say("caution.glass"), say.Say("bottles.cut-care"), say.Say("caution.wet-wall")]) { Above = 4 });
        return Draft.Flow(new SheetHead("bottles", say.Say("bottles.title"), Clock.Drawing), scene.Portrait, blocks, say);
    }

    private static IEnumerable<Block> Row(Scene scene, IReadOnlyList<EmbedPlace> row)
    {
        var (say, g, first) = (scene.Say, scene.Geometry, row[0]);
        var outside = g.Wall.OutsideOffset(first.Height);
        var inside = g.Wall.InsideOffset(first.Height);
        yield return new Heading(say.Say("bottles.row", ("sign", StripEmbeds.Number(first)), ("name", first.Embed.Name), ("count", row.Count), ("height", Amount.Metres(first.Height)))) { Above = 4 };
        if (first.Embed.Width is not { } width)
        {
            yield return new Paragraph(say.Say("bottles.no-width"), Styles.BodyStrong) { Above = 1 };
            yield break;
        }

        if (row.Count > 1)
        {
            var (a, b) = (row[0].Station, row[1].Station);
            var later = b > a ? b : b + g.Curve.Length;
            Fact At(string key, double offset) => scene.Fact(key, Amount.Metres(g.Curve.OffsetArc(a, later, offset)), Tag.Computed);
            var rib = Math.Min(g.Curve.OffsetArc(a, later, inside), first.Embed.Through ? g.Curve.OffsetArc(a, later, outside) : double.PositiveInfinity) - width.Metres;
            yield return new Facts(
            [
                At("bottles.next-inside", inside), At("bottles.next-outside", outside), scene.Fact("bottles.rib", Amount.Metres(rib), Tag.Computed), scene.Fact("bottles.diameter", width, Tag.Given),
            ], Styles.Reading) { Above = 1 };
            if (rib < RibLeast)
            {
                yield return new Paragraph(say.Say("bottles.thin", ("least", Amount.Metres(RibLeast))), Styles.BodyStrong) { Above = 1 };
            }
        }

        var drawn = Strip(scene, row, width.Metres, first.Embed.Face == Face.Inside ? inside : outside);
        yield return new Picture(drawn, drawn.Bounds().Inset(-0.5)) { Above = 2, Left = true };
        // In the order in which the drawing has them: seen from outside, stations run from right to left.
        var listed = row.Select((e, i) => new TickItem($"{i + 1}", say.One(Amount.Metres(e.Station)), say.Other(Amount.Metres(e.Station))));
        yield return new TickGrid([.. first.Embed.Face == Face.Outside ? listed.Reverse() : listed]) { Above = 2 };
    }

    /// <summary>The row as it stands on the face it is seen from, to a usual scale that fits the sheet.</summary>
    private static Sequence<Mark> Strip(Scene scene, IReadOnlyList<EmbedPlace> row, double width, double offset)
    {
        var g = scene.Geometry;
        var start = row[0].Station;
        double[] along = [.. row.Select(e => g.Curve.OffsetArc(start, e.Station < start ? e.Station + g.Curve.Length : e.Station, offset))];
        var length = along.Max() + width + 0.1;
        var room = SheetFrame.Content(scene.Portrait).Width - 2;
        var scale = DrawingScale.Fitting(scene.Say.First, s => length * s.PaperPerMetre <= room && (width + 0.1) * s.PaperPerMetre <= 40).PaperPerMetre;
        var board = new Board();
        var turn = row[0].Embed.Face == Face.Outside ? -1 : 1;
        var middle = (width / 2 + 0.03) * scale;
        double X(double at) => turn > 0 ? (at + width / 2 + 0.05) * scale : (length - at - width / 2 - 0.05) * scale;
        board.Line(0, middle, length * scale, middle, Weight.Hair, Dash.Chain);
        for (var i = 0; i < along.Length; i++)
        {
            var at = new PaperPoint(X(along[i]), middle);
            board.Add(new Fill(Outline.Circle(at, width / 2 * scale), Tone.Paper));
            board.Add(new Stroke(Outline.Circle(at, width / 2 * scale), new Pen(Weight.Heavy)));
            if (width * scale > 4)
            {
                board.Say($"{i + 1}", at.X, at.Y + Styles.Body.Digits / 2, Styles.Body, Anchor.Middle);
            }
        }

        return board.Marks;
    }

    /// <summary>What the orders say: how many are set, how many break on the way.</summary>
    private static Paragraph Collect(Scene scene)
    {
        var say = scene.Say;
        var line = scene.Set.Quantities.Orders.FirstOrDefault(o => o.Key == "bottles");
        return line is { Net: { } net, Order: { } order }
            ? new Paragraph(say.Say("bottles.collect", ("net", net), ("waste", Amount.Fraction(line.Waste)), ("order", order)), Styles.BodyStrong) { Above = 4 }
            : new Paragraph(say.Say("bottles.collect-none"), Styles.Body) { Above = 4 };
    }
}
