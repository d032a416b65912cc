using Clomwright.Analysis.Collapse;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;
using Outline = Clomwright.Papers.Drawing.Outline;

namespace Clomwright.Papers.Sheets;

/// <summary>The push at which the house falls, for the office: the way it falls as rigid blocks, smaller blocks, the wall that cracks, the hand, and why they differ. A book whose study did not look for it has a line of the sheet of stress instead.</summary>
internal static class CollapseSheet
{
    private const int MostBands = 3;
    private const double BandGap = 2;

    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Collapse?.Value is not { } collapse)
        {
            return [];
        }

        var say = scene.Say;
        var (scale, bands) = Drawn(scene, 0.48, Face.Inside, (view, from, to) => FallingStrip.Band(scene.Geometry, [.. collapse.Mechanism], view, from, to));
        List<Block> blocks =
        [
            Numbers(scene, collapse),
            new Paragraph(say.Say("collapse.note", ("bearing", Scene.Bearing(collapse.Weakest.Bearing)), ("stage", new Message($"study.stage.{Kebab(collapse.Stage)}"))), Styles.Body) { Above = 2 },
            new Cautions(say.Say("caution.title"), [say.Say("caution.collapse")]),
            new Heading(say.Say("collapse.falls", ("factor", Share(collapse.Weakest.Factor)))) { Above = 3 },
            .. bands.Select(b => new Picture(b.Marks, b.View) { Above = BandGap }),
            Legend(scene),
            new Beside(new Stack([Plan(scene, collapse)]), new Stack([Chart(scene, collapse)]), 0.42) { Above = 3 },
            new Paragraph(say.Say("collapse.pictures"), Styles.Small) { Above = 1 },
            new Heading(say.Say("collapse.beside")), All(scene, collapse), .. Why(scene, collapse),
            new Heading(say.Say("collapse.left-out")), new Paragraph(say.Say("collapse.left-out-what"), Styles.Body) { Above = 1.5 },
            new Heading(say.Say("collapse.cracks", ("factor", Share(collapse.Cracked.CracksAt)))), .. Cracks(scene, collapse),
        ];
        return Draft.Flow(new SheetHead("collapse", say.Say("collapse.title"), Clock.Drawing, say.Say(scale.Label)), scene.Portrait, blocks, say);
    }

    /// <summary>A line for the sheet of stress where this one is missing: never silence.</summary>
    public static IEnumerable<Block> Missing(Scene scene) => scene.Set.Collapse is { NotChecked: { } why }
        ? [new Heading(scene.Say.Say("collapse.title")), RoofPoles.NotChecked(scene, why) with { Above = 1.5 }]
        : [];

    private static Facts Numbers(Scene scene, CollapseResult collapse)
    {
        var say = scene.Say;
        Fact Of(string key, double factor) => new(say.Say(key), say.One(Share(factor)), say.Say(Tag.Computed));
        return new Facts(
            [
                Of("collapse.least", collapse.Least),
                collapse.WithoutBeam.Value is { } without ? Of("collapse.no-beam", without.Factor) : new Fact(say.Say("collapse.no-beam"), say.Say("not-checked"), say.Say(collapse.WithoutBeam.NotChecked!)),
                collapse.Earthquake.Value is { } earthquake ? Of("collapse.asked", earthquake.Coefficient) : new Fact(say.Say("collapse.asked"), say.Say("not-checked"), say.Say(collapse.Earthquake.NotChecked!)),
                scene.Fact("collapse.weight", new Amount(collapse.Weight, Dimension.Force), Tag.Computed),
            ],
            Styles.Large);
    }

    /// <summary>The largest scale at which a face fits in up to three strips over a share of the sheet.</summary>
    private static (DrawingScale Scale, IReadOnlyList<WallDrawing> Bands) Drawn(Scene scene, double share, Face face, Func<WallView, double, double, WallDrawing> band)
    {
        var content = SheetFrame.Content(scene.Portrait);
        WallView View(DrawingScale scale) => new(face, scale.PaperPerMetre) { Units = scene.Say.First, Details = false, Measures = false };
        foreach (var scale in DrawingScale.Usual(scene.Say.First))
        {
            for (var count = 1; count <= MostBands; count++)
            {
                var cuts = StripCuts.Of(scene.Geometry, face, count);
                var rooms = UnrolledWall.Rooms(scene.Geometry, View(scale), cuts);
                if (rooms.All(r => r.Width <= content.Width) && rooms.Sum(r => r.Height + BandGap) <= content.Height * share)
                {
                    return (scale, [.. Enumerable.Range(0, cuts.Count - 1).Select(i => band(View(scale), cuts[i], cuts[i + 1]))]);
                }
            }
        }

        return (DrawingScale.Usual(scene.Say.First)[^1], []);
    }

    private static Picture Legend(Scene scene)
    {
        const double width = 12, height = 6;
        var board = new Board();
        var x = 0.0;
        foreach (var outward in (bool[])[true, false])
        {
            foreach (var (share, _) in FallingStrip.Speeds)
            {
                var box = PaperBox.At(x, 0, width, height);
                LegendBox.Draw(board, box, [FallingStrip.Sample(Outline.Rectangle(box), outward ? share : -share)!], scene.Say.Say("collapse.from", ("share", Amount.Fraction(share))));
                x += width + 8;
            }

            board.Say(scene.Say.Say(outward ? "collapse.outward" : "collapse.inward"), x - (width + 8) * FallingStrip.Speeds.Length, -1.2, Styles.Small);
            x += 6;
        }

        return new Picture(board.Marks, board.Marks.Bounds().Inset(-0.5)) { Above = 2.5 };
    }

    private static Picture Plan(Scene scene, CollapseResult collapse)
    {
        var (marks, view) = FallingPlan.Of(scene.Geometry, [.. collapse.Mechanism], collapse.Weakest.Bearing, 72);
        return new Picture(marks, view);
    }

    private static Picture Chart(Scene scene, CollapseResult collapse)
    {
        var say = scene.Say;
        List<PushChart.Level> levels = [new(say.Say("collapse.line-blocks"), collapse.Least, Dash.Solid)];
        if (collapse.WithoutBeam.Value is { } without)
        {
            levels.Add(new(say.Say("collapse.line-no-beam"), without.Factor, Dash.Dashed));
        }

        if (collapse.Earthquake.Value is { } earthquake)
        {
            levels.Add(new(say.Say("collapse.line-asked"), earthquake.Coefficient, Dash.Chain));
        }

        if (collapse.Cracked.Beyond is { } beyond)
        {
            levels.Add(new(say.Say("collapse.line-beyond"), beyond, Dash.Dotted));
        }

        var (marks, view) = PushChart.Of([.. collapse.Cracked.Drift], levels, say.One, far => Wording.Dotted(say.One(far), say.Other(far)), (say.Say("collapse.axis-push"), say.Say("collapse.axis-drift")), 98);
        return new Picture(marks, view) { Left = true };
    }

    /// <summary>Every answer beside the others, and beside what an earthquake asks for.</summary>
    private static Table All(Scene scene, CollapseResult collapse)
    {
        var say = scene.Say;
        Row Line(string what, string note, string where, double factor, bool ruled = false) => new(
            new Cell(what, note), new Cell(where), new Cell(say.One(Share(factor))) { Lettering = Styles.BodyStrong },
            new Cell(collapse.Earthquake.Value is { Coefficient: > 0 } asked ? say.One(Amount.Number(Math.Round(factor / asked.Coefficient, 2))) : "–")) { Ruled = ruled };
        string Way(WallCollapse one) => say.Say("collapse.towards", ("bearing", Scene.Bearing(one.Bearing)));
        var strongest = collapse.Directions.MaxBy(d => d.Factor)!;
        return new Table(
            [new(say.Say("collapse.what")) { Grows = 1 }, new(say.Say("collapse.where")) { Grows = 0.3 }, new(say.Say("collapse.factor"), Anchor.End), new(say.Say("collapse.times"), Anchor.End)],
            [
                .. collapse.Trend.Select((t, i) => Line(say.Say("collapse.blocks", ("blocks", t.Blocks)), say.Say("collapse.size", ("size", Amount.Metres(t.Size))), Way(collapse.Weakest), t.Factor)),
                Line(say.Say("collapse.strongest", ("directions", collapse.Directions.Count)), "", Way(strongest), strongest.Factor),
                .. collapse.WithoutBeam.Value is { } without ? (Row[])[Line(say.Say("collapse.blocks-no-beam"), "", Way(without), without.Factor)] : [],
                Line(
                    say.Say("collapse.cracking", ("tension", new Amount(collapse.Cracked.TensionPa, Dimension.Stress))),
                    collapse.Cracked.Beyond is { } beyond ? say.Say("collapse.none-at", ("factor", Share(beyond))) : say.Say("collapse.stands-throughout"), Way(collapse.Weakest), collapse.Cracked.Limit, ruled: true),
                .. collapse.ByHand.Select((m, i) => Line(
                    say.Say(Hand(m.Kind)), m.Outward is { } outward ? say.Say(outward ? "collapse.goes-out" : "collapse.goes-in") : "", Named(m.Pier, say), m.Factor, ruled: i == 0)),
            ]) { Above = 1.5, Pad = 0.7 };
    }

    private static string Hand(string kind) => kind switch
    {
        "free" => "collapse.hand-free",
        "crushes" => "collapse.hand-crushes",
        "held" => "collapse.hand-held",
        "slides" => "collapse.hand-slides",
        "tips" => "collapse.hand-tips",
        _ => "collapse.hand-cracks",
    };

    private static string Named(string pier, Wording say) => pier == "wall" ? say.Say("collapse.whole") : say.Between(pier);

    private static IEnumerable<Block> Why(Scene scene, CollapseResult collapse)
    {
        string[] reasons =
        [
            "collapse.why-blocks", .. collapse.WithoutBeam.Is ? (string[])["collapse.why-beam"] : [], "collapse.why-hand",
            collapse.Cracked.Limit > collapse.Least ? "collapse.why-cracking" : "collapse.why-cracking-less",
        ];
        foreach (var key in reasons)
        {
            yield return new Paragraph(scene.Say.Say(key), Styles.Small) { Above = 1.2 };
        }

        yield return new Paragraph(scene.Say.Say("hand.see", ("calculations", new Argument.List(collapse.Calculations.Select(c => (Argument)c.Title).ToSequence()))), Styles.Small) { Above = 1.5 };
    }

    private static IEnumerable<Block> Cracks(Scene scene, CollapseResult collapse)
    {
        var say = scene.Say;
        yield return new Paragraph(say.Say("collapse.cracks-note", ("unknowns", collapse.Cracked.Unknowns)), Styles.Small) { Above = 1.5 };
        foreach (var face in (Face[])[Face.Inside, Face.Outside])
        {
            yield return new LeadIn(say.Say(face == Face.Inside ? "collapse.cracks-inside" : "collapse.cracks-outside")) { Above = 2 };
            foreach (var band in Drawn(scene, 0.3, face, (view, from, to) => CrackStrip.Band(scene.Geometry, collapse.Cracked, view, from, to)).Bands)
            {
                yield return new Picture(band.Marks, band.View) { Above = BandGap };
            }
        }

        const double width = 12, height = 6, step = 26;
        var board = new Board();
        for (var n = 1; n <= CrackStrip.Widths.Length; n++)
        {
            var box = PaperBox.At((n - 1) * step, 0, width, height);
            LegendBox.Draw(board, box, CrackStrip.Sample(Outline.Rectangle(box), n), say.Say("collapse.gapes", ("opening", say.Book.One(Amount.Metres(CrackStrip.Widths[n - 1].Opening), UnitSystem.Metric))));
        }

        yield return new Picture(board.Marks, board.Marks.Bounds().Inset(-0.5)) { Above = 2 };
        // As many states as the paper is wide; the first and the last among them.
        const int most = 9;
        var drift = collapse.Cracked.Drift;
        DriftStep[] told = [.. drift.Where((_, i) => drift.Count <= most || i == drift.Count - 1 || i % ((drift.Count + most - 2) / (most - 1)) == 0)];
        yield return new Table(
            [new(say.Say("collapse.axis-push")) { Grows = 1 }, .. told.Select(d => new Column(say.One(Share(d.Factor)), Anchor.End))],
            [
                new Row([new Cell(say.Say("collapse.leans")), .. told.Select(d => scene.Metres(d.Drift))]),
                new Row([new Cell(say.Say("collapse.cracked")), .. told.Select(d => new Cell(say.One(Amount.Fraction(Math.Round(d.Cracked, 2)))))]),
            ]) { Above = 2, Pad = 0.6 };
    }

    private static string Kebab(string stage) => string.Concat(stage.Select(c => char.IsUpper(c) ? $"-{char.ToLowerInvariant(c)}" : c.ToString()));

    private static Amount Share(double factor) => Amount.Fraction(factor);
}
