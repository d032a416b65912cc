using Clomwright.Analysis.Comfort;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;
using Outline = Clomwright.Papers.Drawing.Outline;

namespace Clomwright.Papers.Sheets;

/// <summary>Pictures that the energy sheet and the owner's page share.</summary>
internal static class Warmth
{
    private const int MostBands = 3;
    private const double BandGap = 2;

    /// <summary>Plans with the sun take this share of the room that three beside each other could have.</summary>
    private const double Smaller = 0.78;

    /// <summary>What the house loses by part, as bars.</summary>
    public static Picture Bars(Scene scene, ComfortResult comfort)
    {
        var say = scene.Say;
        var content = SheetFrame.Content(scene.Portrait);
        var (marks, view) = LossBars.Of([.. comfort.Losses.Select(l => new LossBars.Row(say.Say("comfort.part." + l.Kind.ToString().ToLowerInvariant()), l.Loss, say.One(new Amount(l.Loss, Dimension.HeatLoss))))], content.Width * 0.9);
        return new Picture(marks, view) { Above = 1.5, Left = true };
    }

    /// <summary>The wall in one month, in strips as large as fit in a share of the sheet.</summary>
    public static IEnumerable<Block> ColdWall(Scene scene, DampResult damp, DampMonth month, double share)
    {
        var content = SheetFrame.Content(scene.Portrait);
        WallView View(DrawingScale scale) => new(Face.Inside, scale.PaperPerMetre) { Units = scene.Say.First, Book = scene.Say.Book, Details = false, Measures = false };
        foreach (var scale in DrawingScale.Usual(scene.Say.First))
        {
            for (var count = 1; count <= MostBands; count++)
            {
                var cuts = StripCuts.Of(scene.Geometry, Face.Inside, count);
                var rooms = UnrolledWall.Rooms(scene.Geometry, View(scale), cuts);
                if (rooms.All(r => r.Width <= content.Width) && rooms.Sum(r => r.Height + BandGap) <= content.Height * share)
                {
                    for (var i = 0; i + 1 < cuts.Count; i++)
                    {
                        var band = ColdStrip.Band(scene.Geometry, damp, month, View(scale), cuts[i], cuts[i + 1]);
                        yield return new Picture(band.Marks, band.View) { Above = BandGap };
                    }

                    yield return Legend(scene, damp);
                    yield break;
                }
            }
        }
    }

    private static Picture Legend(Scene scene, DampResult damp)
    {
        const double width = 12, height = 5;
        var board = new Board();
        var x = 0.0;
        foreach (var (runs, words) in (ReadOnlySpan<(bool, string)>)[(false, scene.Say.Say("comfort.mould-here", ("share", Amount.Fraction(damp.Limit)))), (true, scene.Say.Say("comfort.water-here"))])
        {
            var box = PaperBox.At(x, 0, width, height);
            LegendBox.Draw(board, box, ColdStrip.Sample(Outline.Rectangle(box), runs), words);
            x += Math.Max(width, Styles.Small.WidthOf(words)) + 8;
        }

        return new Picture(board.Marks, board.Marks.Bounds().Inset(-0.5)) { Above = 2, Left = true };
    }

    /// <summary>The floor in the sun at three hours of a month.</summary>
    public static Block Sun(Scene scene, SunInRoom sun, int month)
    {
        var say = scene.Say;
        var content = SheetFrame.Content(scene.Portrait);
        var third = (content.Width - 2 * Layout.Beside.Gutter) / 3;
        var across = Math.Sqrt(scene.Geometry.Measures.OutsideArea / Math.PI) * 2 * 1.35;
        Stack At(int hour)
        {
            var (marks, view) = SunPlan.Of(scene.Geometry, sun.At(month, hour), third * Smaller / across);
            return new Stack([new LeadIn(say.Say("comfort.sun-at", ("month", new Message($"papers.month-short.{month}")), ("hour", hour))), new Picture(marks, view) { Above = 1 }]);
        }

        return new Beside(At(9), new Stack([new Beside(At(12), At(15))]), 1.0 / 3) { Above = 2 };
    }

    /// <summary>What each fix brings.</summary>
    public static Table FixTable(Scene scene, FixResults fixes)
    {
        var say = scene.Say;
        return new Table(
            [new(say.Say("comfort.fix")) { Grows = 1 }, new(say.Say("comfort.fix-loss"), Anchor.End), new(say.Say("comfort.fix-heat"), Anchor.End), new(say.Say("comfort.fix-wood"), Anchor.End), new(say.Say("comfort.fix-saved"), Anchor.End), new(say.Say("comfort.fix-mould"), Anchor.End)],
            [
                .. fixes.Fixes.Select(f => new Row(
                    new Cell(say.Say(f.What)), new Cell(say.One(new Amount(f.Loss, Dimension.HeatLoss))), new Cell(say.One(new Amount(f.Heat, Dimension.Energy))), new Cell(say.One(new Amount(f.WoodMass, Dimension.Mass))),
                    new Cell(f.Key == "nothing" || !(fixes.Base > 0) ? "–" : say.One(Amount.Fraction(Math.Round(1 - f.Heat / fixes.Base, 2)))) { Lettering = Styles.BodyStrong },
                    new Cell(say.One(Amount.Fraction(Math.Round(f.Mould, 2)))))),
            ]) { Above = 1.5, Pad = 0.4 };
    }
}
