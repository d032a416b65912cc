using Clomwright.Analysis.Structure;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;
using Clomwright.Study;
using Outline = Clomwright.Papers.Drawing.Outline;

namespace Clomwright.Papers.Sheets;

/// <summary>What the wall carries by the model of the whole wall: the unrolled wall, pier by pier, pole by pole, tension and foot, and how far the model may be trusted.</summary>
internal static class WallStressSheet
{
    private const int MostBands = 3;
    private const double BandGap = 3;
    private const int ZonesNamed = 6;

    /// <summary>Hand and model may differ by this share before a reason is owed: what the model's own grid may be off, and as much again.</summary>
    private const double Alike = 0.15;

    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Structure is not { } known)
        {
            return [];
        }

        var say = scene.Say;
        if (known.Value is not { } wall)
        {
            return Draft.Flow(
                new SheetHead("wall-stress", say.Say("stress.title"), Clock.Drawing, ""), scene.Portrait, [RoofPoles.NotChecked(scene, known.NotChecked!)], say);
        }

        var (scale, bands) = Drawn(scene, wall);
        List<Block> blocks =
        [
            .. bands.Select(b => new Picture(b.Marks, b.View) { Above = BandGap }),
            Legend(scene, wall),
            new Paragraph(say.Say("stress.note", ("patch", Amount.Metres(wall.Patch)), ("cases", wall.Cases)), Styles.Small) { Above = 1.5 },
            new Cautions(say.Say("caution.title"), [say.Say("caution.wall-model")]),
            .. wall.Missing is { } missing ? (Block[])[RoofPoles.NotChecked(scene, missing) with { Above = 2 }] : [],
            .. Piers(scene, wall),
            .. Beside(scene, wall),
            .. Poles(scene, wall),
            .. Tension(scene, wall),
            new Heading(say.Say("stress.trust")),
            new Paragraph(Foot(scene, wall), Styles.Small) { Above = 1.5 },
            new Paragraph(say.Say(
                "stress.checks", ("unknowns", wall.Division.Unknowns), ("reaction", Wording.Power(wall.Checks.ReactionError)), ("betti", Wording.Power(wall.Checks.Reciprocity)),
                ("mean", Amount.Fraction(WallPrecision.Mean)), ("edge", Amount.Fraction(WallPrecision.Edge)), ("pole", Amount.Fraction(WallPrecision.UnderPole)), ("tension", Amount.Fraction(WallPrecision.Tension))), Styles.Small) { Above = 1 },
            .. CollapseSheet.Missing(scene),
        ];
        return Draft.Flow(new SheetHead("wall-stress", say.Say("stress.title"), Clock.Drawing, say.Say(scale.Label)), scene.Portrait, blocks, say);
    }

    /// <summary>The largest scale at which the wall fits in up to three strips over half of the sheet.</summary>
    private static (DrawingScale Scale, IReadOnlyList<WallDrawing> Bands) Drawn(Scene scene, StructureResult wall)
    {
        var content = SheetFrame.Content(scene.Portrait);
        foreach (var scale in DrawingScale.Usual(scene.Say.First))
        {
            for (var count = 1; count <= MostBands; count++)
            {
                var cuts = StripCuts.Of(scene.Geometry, Face.Inside, count);
                var rooms = UnrolledWall.Rooms(scene.Geometry, View(scene, scale), cuts);
                if (rooms.All(r => r.Width <= content.Width) && rooms.Sum(r => r.Height + BandGap) <= content.Height * 0.66)
                {
                    return (scale, [.. Enumerable.Range(0, cuts.Count - 1).Select(i => StressStrip.Band(scene.Geometry, wall, View(scene, scale), cuts[i], cuts[i + 1]))]);
                }
            }
        }

        return (DrawingScale.Usual(scene.Say.First)[^1], []);
    }

    private static WallView View(Scene scene, DrawingScale scale) => new(Face.Inside, scale.PaperPerMetre) { Units = scene.Say.First, Book = scene.Say.Book, Details = false, Measures = false };

    /// <summary>A box of each hatching with the share it stands for, and one of dots.</summary>
    private static Picture Legend(Scene scene, StructureResult wall)
    {
        const double width = 14, height = 7, step = 30;
        var board = new Board();
        for (var n = 1; n <= StressStrip.Bands.Length; n++)
        {
            var box = PaperBox.At((n - 1) * step, 0, width, height);
            LegendBox.Draw(board, box, StressStrip.Sample(Outline.Rectangle(box), n), scene.Say.Say("stress.from", ("share", Amount.Fraction(StressStrip.Bands[n - 1].Share))));
        }

        var dots = PaperBox.At(StressStrip.Bands.Length * step, 0, width, height);
        LegendBox.Draw(board, dots, StressStrip.Dots(dots, at => dots.Inset(0.4).Holds(new PaperBox(at.X, at.Y, at.X, at.Y))), scene.Say.Say("stress.pull", ("level", Pressure(wall.TensionLevel))));
        return new Picture(board.Marks, board.Marks.Bounds().Inset(-0.5)) { Above = 2 };
    }

    private static IEnumerable<Block> Piers(Scene scene, StructureResult wall)
    {
        var say = scene.Say;
        if (wall.Piers.Count == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say("stress.piers"));
        yield return new Table(
            [
                new(say.Say("stress.between")) { Grows = 0.5 }, new(say.Say("stress.mean"), Anchor.End), new(say.Say("stress.edge"), Anchor.End), new(say.Say("stress.used"), Anchor.End), new(say.Say("stress.governs")) { Grows = 1 },
            ],
            [
                .. wall.Piers.Select(p => new Row(
                    new Cell(Letters(scene, p.Address), say.Between(p.Address)) { Lettering = Styles.BodyStrong },
                    scene.Cell(Pressure(p.MeanMost)), scene.Cell(Pressure(p.EdgeMost)), new Cell(say.One(Amount.Fraction(Math.Round(p.EdgeMost / wall.Allowed.Value, 2)))) { Lettering = Styles.BodyStrong },
                    new Cell(say.Say(WallWords.Case(p.EdgeCase)), say.Say(p.EdgeOutside ? "stress.at-outside" : "stress.at-inside", ("height", Amount.Metres(p.EdgeHeight)))))),
                new Row(new Cell(say.Say("stress.allowed", ("allowed", Pressure(wall.Allowed.Value))))),
            ]) { Above = 1.5 };
    }

    /// <summary>The same piers worked by hand, and why the two differ where they do by more than the share that is stated.</summary>
    private static IEnumerable<Block> Beside(Scene scene, StructureResult wall)
    {
        var say = scene.Say;
        if (scene.Set.WallByHand is not { } hand || wall.Piers.Count == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say("stress.beside"));
        yield return new Table(
            [
                new(say.Say("stress.between")) { Grows = 1 }, new(say.Say("stress.mean-model"), Anchor.End), new(say.Say("stress.mean-hand"), Anchor.End), new(say.Say("stress.of-model"), Anchor.End),
                new(say.Say("stress.edge-model"), Anchor.End), new(say.Say("stress.edge-hand"), Anchor.End), new(say.Say("stress.of-model"), Anchor.End),
            ],
            [.. wall.Piers.Select(pier => (Model: pier, Hand: hand.Piers.FirstOrDefault(h => h.Address == pier.Address))).Where(both => both.Hand is { Cuts.Count: > 0 }).Select(both =>
            {
                var (mean, edge) = (both.Hand!.Cuts.Max(c => c.Mean), both.Hand.Cuts.Max(c => c.Edge));
                return new Row(
                    new Cell(Letters(scene, both.Model.Address)) { Lettering = Styles.BodyStrong },
                    scene.Cell(Pressure(both.Model.MeanMost)), scene.Cell(Pressure(mean)), Compared(say, mean / both.Model.MeanMost),
                    scene.Cell(Pressure(both.Model.EdgeMost)), scene.Cell(Pressure(edge)), Compared(say, edge / both.Model.EdgeMost));
            })]) { Above = 1.5 };
        yield return new Paragraph(say.Say("stress.beside-why", ("share", Amount.Fraction(Alike))), Styles.Small) { Above = 1 };
    }

    /// <summary>A share of the model's number, strong where the two are further apart than is left unsaid.</summary>
    private static Cell Compared(Wording say, double share) =>
        new(say.One(Amount.Fraction(Math.Round(share, 2)))) { Lettering = Math.Abs(share - 1) > Alike ? Styles.BodyStrong : Styles.Body };

    private static IEnumerable<Block> Poles(Scene scene, StructureResult wall)
    {
        var say = scene.Say;
        if (wall.Landings.Count == 0 || scene.Set.Mix is not { } mix)
        {
            yield break;
        }

        yield return new Heading(say.Say("stress.poles"));
        yield return new Table(
            [
                new(say.Say("stress.pole")), new(say.Say("stress.pressure"), Anchor.End), new(say.Say("stress.used"), Anchor.End), new(say.Say("stress.spread"), Anchor.End), new(say.Say("stress.by")) { Grows = 1 },
            ],
            [
                .. wall.Landings.Select(l => new Row(
                    new Cell(say.Subject(l.Name)), scene.Cell(Pressure(l.Pressure)), new Cell(say.One(Amount.Fraction(Math.Round(l.Pressure / mix.Strength.Allowable, 2)))) { Lettering = Styles.BodyStrong },
                    scene.Metres(l.Spread), new Cell(say.Say(WallWords.Case(l.Case))))),
                new Row(new Cell(say.Say("stress.allowed", ("allowed", Pressure(mix.Strength.Allowable))))),
            ]) { Above = 1.5 };
    }

    private static IEnumerable<Block> Tension(Scene scene, StructureResult wall)
    {
        var say = scene.Say;
        yield return new Heading(say.Say("stress.tension"));
        if (wall.Tension.Count == 0)
        {
            yield return new Paragraph(say.Say("stress.no-tension", ("level", Pressure(wall.TensionLevel))), Styles.Body) { Above = 1.5 };
            yield break;
        }

        yield return new Paragraph(say.Say("stress.none-counted"), Styles.Small) { Above = 1.5 };
        yield return new Table(
            [
                new(say.Say("stress.where")) { Grows = 0.6 }, new(say.Say("stress.most"), Anchor.End), new(say.Say("stress.area"), Anchor.End), new(say.Say("stress.by")) { Grows = 1 },
            ],
            [
                .. wall.Tension.Take(ZonesNamed).Select(z => new Row(
                    new Cell(say.Say(WallWords.Place(z)), say.Say(z.Outside ? "stress.at-outside" : "stress.at-inside", ("height", Amount.Metres(z.Height)))),
                    scene.Cell(Pressure(z.Tension)), scene.Cell(new Amount(z.Area, Dimension.Area)), new Cell(say.Say(WallWords.Case(z.Case))))),
            ]) { Above = 1 };
    }

    private static string Foot(Scene scene, StructureResult wall) => scene.Say.Say(
        !wall.Base.Standing ? "stress.foot-falls" : wall.Base.Pulling == 0 ? "stress.foot-presses" : "stress.foot-lets-go",
        ("cases", wall.Cases), ("pulling", wall.Base.Pulling), ("share", Amount.Fraction(wall.Base.LiftedMost)));

    /// <summary>The letters of the openings on both sides of a pier.</summary>
    private static string Letters(Scene scene, string address)
    {
        var pier = scene.Geometry.Piers.First(p => p.Address == address);
        return $"{Of(pier.Before)}–{Of(pier.After)}";

        string Of(string name) => scene.Letter(scene.Geometry.Openings.First(o => o.Opening.Name == name));
    }

    private static Amount Pressure(double pascals) => new(pascals, Dimension.Stress);
}
