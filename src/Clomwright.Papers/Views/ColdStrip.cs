using Clomwright.Analysis.Comfort;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Outline = Clomwright.Papers.Drawing.Outline;

namespace Clomwright.Papers.Views;

/// <summary>The inside of the unrolled wall in its dampest month: hatched where mould has what it asks, densely where water runs, and how cold the face is at foot and head height.</summary>
internal static class ColdStrip
{
    private const double HeadHeight = 1.6;

    /// <summary>Hatching by humidity at the face: from the limit of mould, and from saturation.</summary>
    public static IEnumerable<Mark> Sample(Outline area, bool runs)
    {
        yield return new Hatch(area, 45, 1.7, new Pen(Weight.Thin));
        if (runs)
        {
            yield return new Hatch(area, -45, 1.7, new Pen(Weight.Thin));
        }
    }

    public static WallDrawing Band(HouseGeometry geometry, DampResult damp, DampMonth month, WallView view, double from, double to)
    {
        var strip = new WallStrip(geometry, view.Face, view.PaperPerMetre, from, to, default);
        var board = new Board();
        board.Add(new Group("damp", [.. Hatched(strip, damp, month)], Outline.Rectangle(strip.Box(new Span(from, to), 0, geometry.Wall.Top.Metres))));
        foreach (var place in geometry.Openings)
        {
            foreach (var hole in strip.Laid([.. Unrolled.Outline(geometry, place, view.Face)]))
            {
                board.Add(new Fill(hole, Tone.Paper));
            }
        }

        var taken = new Taken(new PaperBox(strip.Corner.X + 0.8, strip.Y(geometry.Wall.Top.Metres), strip.Right - 0.8, strip.Y(0) + 3));
        StripBody.Draw(board, strip);
        StripHoles.Draw(board, strip, view, taken);
        Readings(board, strip, damp, month, view, taken);
        return new WallDrawing(board.Marks, StripMeasures.Room(strip, view), strip);
    }

    private static IEnumerable<Mark> Hatched(WallStrip strip, DampResult damp, DampMonth month)
    {
        foreach (var runs in (bool[])[false, true])
        {
            var cells = Cells(strip, damp, month, runs ? 1 : damp.Limit).ToArray();
            if (cells.Length > 0)
            {
                yield return new Hatch(Outline.Of(cells), runs ? -45 : 45, 1.7, new Pen(Weight.Thin));
            }
        }
    }

    /// <summary>Boxes of a column wherever it is damp enough: those above one another are one.</summary>
    private static IEnumerable<Outline> Cells(WallStrip strip, DampResult damp, DampMonth month, double limit)
    {
        var (rows, wide) = (damp.Heights.Count, damp.Stations[0] * 2);
        var tall = damp.Heights[0] * 2;
        for (var c = 0; c < damp.Stations.Count; c++)
        {
            var part = new Span(damp.Stations[c] - wide / 2, damp.Stations[c] + wide / 2);
            for (var r = 0; r < rows; r++)
            {
                var start = r;
                while (r < rows && month.Humidities[c * rows + r] >= limit)
                {
                    r++;
                }

                if (r > start)
                {
                    foreach (var arcs in strip.Parts(part))
                    {
                        yield return Outline.Rectangle(strip.Box(arcs, damp.Heights[start] - tall / 2, damp.Heights[r - 1] + tall / 2));
                    }
                }
            }
        }
    }

    /// <summary>Temperatures of the face at eight places round, near the floor and at head height, where nothing else stands.</summary>
    private static void Readings(Board board, WallStrip strip, DampResult damp, DampMonth month, WallView view, Taken taken)
    {
        var rows = damp.Heights.Count;
        foreach (var column in damp.Winds)
        {
            foreach (var height in (double[])[damp.Heights[0], HeadHeight])
            {
                var row = Enumerable.Range(0, rows).MinBy(r => Math.Abs(damp.Heights[r] - height));
                if (strip.Geometry.Openings.Any(o => o.Sill < damp.Heights[row] + 0.1 && o.Head > damp.Heights[row] - 0.1 && strip.Parts(o.Widest).Any(p => strip.Arcs(damp.Stations[column]).Any(a => a > p.From - 0.1 && a < p.To + 0.1))))
                {
                    continue;
                }

                var words = view.Book.One(new Amount(month.Temperatures[column * rows + row], Dimension.Temperature), view.Units);
                foreach (var arc in strip.Arcs(damp.Stations[column]))
                {
                    var at = strip.At(arc, damp.Heights[row]);
                    if (taken.Place(new Text(words, new PaperPoint(at.X, at.Y + Styles.BodyStrong.Digits / 2), Styles.BodyStrong, Anchor.Middle)) is { } label)
                    {
                        board.Add(new Fill(Outline.Rectangle(label.Bounds.Inset(-0.5)), Tone.Paper));
                        board.Add(label);
                        taken.Keep(label.Bounds.Inset(-1.2));
                    }
                }
            }
        }
    }
}
