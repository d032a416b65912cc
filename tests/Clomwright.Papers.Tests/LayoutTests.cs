using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Geometry.Joinery;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Sheets;
using Clomwright.Papers.Views;
using Clomwright.Testing;

namespace Clomwright.Papers.Tests;

public sealed class LayoutTests
{
    // Property over plausible houses: on each unrolled sheet every opening and every pier has exactly one width.
    [Fact]
    public void UnrolledSheets_DimensionEveryOpeningAndPierOnce() =>
        Houses.LongestNames.ForAll(house =>
        {
            var set = Papers.Placed(house, PaperSize.A4);
            foreach (var face in Enum.GetValues<Face>())
            {
                var dimensions = UnrolledSheet.Of(new Scene(set), face).SelectMany(d => d.Finish(1, 1, new Imprint("x", Papers.Date, null), new Wording(set.Units, Phrasebook.English)).Marks.All()).OfType<DimensionLine>().Select(d => d.Of).ToArray();
                var expected = set.Geometry.Openings.Select(o => Ids.Opening(o.Opening.Name) + " width").Concat(set.Geometry.Piers.Select(p => Ids.Pier(p.Address) + " width"));
                Assert.Equal(expected.Order(), dimensions.Order());
            }
        }, iter: Counts.Of(40, 500), threads: 1);

    // Property: every embed stands on exactly one sheet, by its number, whatever its height: in the stem on that of the foundation, else on that of one lift; so do the deadmen of every frame.
    [Fact]
    public void SheetsOfLiftsAndStem_HoldEveryEmbedOnce() =>
        Houses.LongestNames.ForAll(house =>
        {
            var scene = new Scene(Papers.Placed(house, PaperSize.A4));
            var g = scene.Geometry;
            var stem = StemContents.Of(g);
            LiftContents[] lifts = [.. g.Lifts.Select(l => LiftContents.Of(g, l))];
            Assert.Equal(g.Embeds.Select(e => e.Address).Order(), stem.Embeds.Concat(lifts.SelectMany(l => l.Embeds)).Select(e => e.Address).Order());
            Assert.All(stem.Embeds, e => Assert.True(e.Height < g.Wall.Base.Metres));
            Assert.All(lifts.SelectMany(l => l.Embeds), e => Assert.True(e.Height >= g.Wall.Base.Metres));
            Assert.All(stem.Deadmen, d => Assert.True(d.Height < g.Wall.Base.Metres));
            Assert.Equal(
                g.Openings.Where(o => o.Opening is { Frame: not null, Shape: OpeningShape.Rectangular }).SelectMany(o => OpeningPieces.DeadmanHeights(o).Where(h => h < g.Wall.Top.Metres)).Order(),
                stem.Deadmen.Concat(lifts.SelectMany(l => l.Deadmen)).Select(d => d.Height).Order());
        }, iter: Counts.Of(40, 500), threads: 1);

    // Analytic: a width is laid off along the arc of the face at the wall base, so its length on paper is scale times arc. 0.05 mm is finer than a printed line.
    [Theory]
    [InlineData(Face.Inside)]
    [InlineData(Face.Outside)]
    public void UnrolledWall_WidthsOfOpenings_AreToScale(Face face)
    {
        var geometry = Papers.HeronPoint.Geometry;
        var drawing = UnrolledWall.Of(geometry, new WallView(face, 40));
        foreach (var place in geometry.Openings)
        {
            var span = face == Face.Inside ? place.Inside : place.Outside;
            var offset = face == Face.Inside ? 0 : geometry.Wall.OutsideOffset(geometry.Wall.Base.Metres);
            var line = drawing.Marks.All().OfType<DimensionLine>().Single(d => d.Of == Ids.Opening(place.Opening.Name) + " width");
            Assert.Equal(40 * (span.Width + offset * geometry.Curve.Turning(span.From, span.To)), line.Length, 0.05);
        }
    }

    // Analytic: both ends of the whole strip are one ring apart, and the direction is that of a person looking at that face.
    [Theory]
    [InlineData(Face.Inside, 1)]
    [InlineData(Face.Outside, -1)]
    public void WallStrip_ClockwiseGoes_AsSeenFromThatFace(Face face, int direction)
    {
        var geometry = Papers.HeronPoint.Geometry;
        var strip = UnrolledWall.Of(geometry, new WallView(face, 40)).Strip;
        Assert.Equal(direction, Math.Sign(strip.X(strip.From + 1) - strip.X(strip.From)));
        Assert.Equal(40 * strip.FaceLength, Math.Abs(strip.X(strip.To) - strip.X(strip.From)), 1e-9);
    }

    // Property: pooled labels keep their order, never touch, and stay put when they do not meet.
    [Fact]
    public void Spreading_Labels_NeverTouchAndKeepTheirOrder() =>
        Gen.Double[0, 100].Array[1, 20].ForAll(wanted =>
        {
            var middles = Spreading.Apart(wanted, [.. wanted.Select(_ => 4.0)], double.NegativeInfinity, double.PositiveInfinity);
            var order = Enumerable.Range(0, wanted.Length).OrderBy(i => wanted[i]).ToArray();
            for (var i = 1; i < order.Length; i++)
            {
                Assert.True(middles[order[i]] - middles[order[i - 1]] >= 4 - 1e-9);
            }

            if (wanted.Length == 1)
            {
                Assert.Equal(wanted[0], middles[0], 1e-12);
            }
        });

    // Property: nothing is lost when a table goes on over the page, and no part is taller than the page.
    [Fact]
    public void Flow_OfALongTable_LosesNoRowAndCutsNone() =>
        Gen.Select(Gen.Int[1, 60], Gen.Int[1, 400]).ForAll(drawn =>
        {
            var (rows, letters) = drawn;
            var table = new Table([new("a"), new("b") { Grows = 1 }], [.. Enumerable.Range(0, rows).Select(i => new Row(new Cell($"r{i}"), new Cell(new string('m', i % 7 == 0 ? letters : 5))))]);
            var columns = Flow.Columns([table], 120, 100);
            Assert.All(columns, c => Assert.True(new Stack(c).Height(120) <= 100 + 1e-6));
            Assert.Equal(rows, columns.SelectMany(c => c.OfType<Table>()).SelectMany(t => t.Rows).Count(r => r.Cells[0].Words.StartsWith('r')));
        });

    // Property: wrapped lines fit the width and hold every letter.
    [Fact]
    public void Wrapping_Lines_FitAndKeepEveryLetter() =>
        Gen.Select(Gen.String[Gen.Char["abcw-| /mÅ "], 0, 200], Gen.Double[8, 80]).ForAll(drawn =>
        {
            var (words, width) = drawn;
            var lines = Wrapping.Lines(words, Styles.Body, width);
            Assert.All(lines, l => Assert.True(Styles.Body.WidthOf(l) <= width));
            Assert.Equal(words.Replace(" ", ""), string.Concat(lines).Replace(" ", ""));
        });
}
