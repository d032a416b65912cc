using Clomwright.Analysis.Structure;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Outline = Clomwright.Papers.Drawing.Outline;

namespace Clomwright.Papers.Views;

/// <summary>The unrolled wall with what it carries: hatching that grows denser with the pressure, dots where there is tension, and at each pier how much of what is allowed its edge uses.</summary>
internal static class StressStrip
{
    /// <summary>Shares of the pressure allowed from which on a further hatching is laid over those before it.</summary>
    public static readonly (double Share, double Angle, double Spacing, Weight Weight)[] Bands =
    [
        (0.2, 45, 2.4, Weight.Hair), (0.4, -45, 2.4, Weight.Hair), (0.6, 0, 1.8, Weight.Hair), (0.8, 90, 1.8, Weight.Thin), (1.0, 45, 0.6, Weight.Medium),
    ];

    private const double DotSpacing = 2.2;
    private const double DotRadius = 0.42;

    public static WallDrawing Band(HouseGeometry geometry, StructureResult wall, WallView view, double from, double to)
    {
        var strip = new WallStrip(geometry, view.Face, view.PaperPerMetre, from, to, default);
        var board = new Board();
        var body = strip.Box(new Span(from, to), geometry.Wall.Base.Metres, geometry.Wall.Top.Metres);
        board.Add(new Group("stress", [.. Pressed(strip, wall), .. Pulled(strip, wall)], Outline.Rectangle(body)));
        foreach (var part in geometry.Openings.Where(o => o.Header is not null).SelectMany(o => strip.Parts(o.Header!.Span).Select(p => strip.Box(p, o.Header.Bottom, o.Header.Top))))
        {
            board.Solid(part, Tone.Paper);
        }

        var taken = new Taken(new PaperBox(strip.Corner.X + 0.8, body.Top, strip.Right - 0.8, body.Bottom));
        StripBody.Draw(board, strip);
        StripHoles.Draw(board, strip, view, taken);
        Labels(board, strip, wall, view.Book, taken);
        return new WallDrawing(board.Marks, StripMeasures.Room(strip, view), strip);
    }

    /// <summary>Hatching of one band as it is drawn on the wall and beside its words.</summary>
    public static IEnumerable<Mark> Sample(Outline area, int bands) =>
        Bands.Take(bands).Select(b => new Hatch(area, b.Angle, b.Spacing, new Pen(b.Weight)));

    /// <summary>The dots of tension in an area.</summary>
    public static IEnumerable<Mark> Dots(PaperBox box, Func<PaperPoint, bool> isIn)
    {
        for (var row = Math.Ceiling(box.Top / DotSpacing); row * DotSpacing < box.Bottom; row++)
        {
            for (var n = Math.Ceiling(box.Left / DotSpacing); n * DotSpacing < box.Right; n++)
            {
                var at = new PaperPoint((n + row % 2 / 2) * DotSpacing, row * DotSpacing);
                if (isIn(at))
                {
                    yield return new Fill(Outline.Circle(at, DotRadius));
                }
            }
        }
    }

    private static IEnumerable<Mark> Pressed(WallStrip strip, StructureResult wall)
    {
        foreach (var band in Bands)
        {
            Outline[] pieces = [.. StressBands.Above(wall.Picture, wall.Picture.Compression, band.Share * wall.Allowed.Value).SelectMany(p => strip.Laid([.. p]))];
            if (pieces.Length > 0)
            {
                yield return new Hatch(Outline.Of(pieces), band.Angle, band.Spacing, new Pen(band.Weight));
            }
        }
    }

    private static IEnumerable<Mark> Pulled(WallStrip strip, StructureResult wall)
    {
        PaperPoint[][] pieces = [.. StressBands.Above(wall.Picture, wall.Picture.Tension, wall.TensionLevel).SelectMany(p => strip.Laid([.. p])).SelectMany(o => o.Pieces()).Select(p => p.ToArray())];
        return pieces.Length == 0 ? [] : Dots(PaperBox.Around(pieces.SelectMany(p => p)), at => pieces.Any(p => Holds(p, at)));
    }

    private static bool Holds(PaperPoint[] piece, PaperPoint at)
    {
        var inside = false;
        for (int i = 0, j = piece.Length - 1; i < piece.Length; j = i++)
        {
            if (piece[i].Y > at.Y != piece[j].Y > at.Y && at.X < piece[i].X + (at.Y - piece[i].Y) / (piece[j].Y - piece[i].Y) * (piece[j].X - piece[i].X))
            {
                inside = !inside;
            }
        }

        return inside;
    }

    /// <summary>At each pier the share that its edge uses, and a ring where that is.</summary>
    private static void Labels(Board board, WallStrip strip, StructureResult wall, Phrasebook book, Taken taken)
    {
        foreach (var pier in wall.Piers)
        {
            var words = book.One(Amount.Fraction(Math.Round(pier.EdgeMost / wall.Allowed.Value, 2)), UnitSystem.Metric);
            foreach (var arc in strip.Arcs(pier.EdgeStation))
            {
                var at = strip.At(arc, pier.EdgeHeight);
                if (taken.Place(Taken.Round(words, at, Styles.BodyStrong, 1.6)) is { } label)
                {
                    board.Add(new Fill(Outline.Rectangle(label.Bounds.Inset(-0.4)), Tone.Paper));
                    board.Add(new Fill(Outline.Circle(at, 0.9), Tone.Paper));
                    board.Add(new Stroke(Outline.Circle(at, 0.9), new Pen(Weight.Medium)));
                    board.Add(label);
                }
            }
        }
    }
}
