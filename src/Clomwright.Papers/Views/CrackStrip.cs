using Clomwright.Analysis.Collapse;
using Clomwright.Building;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Outline = Clomwright.Papers.Drawing.Outline;

namespace Clomwright.Papers.Views;

/// <summary>One face of the unrolled wall with the cob that has cracked, hatched closer the wider its cracks gape.</summary>
internal static class CrackStrip
{
    /// <summary>From what opening on a further hatching is laid over those before it, m.</summary>
    public static readonly (double Opening, double Angle, double Spacing, Weight Weight)[] Widths = [(0.0001, 45, 2.6, Weight.Hair), (0.0003, -45, 2.0, Weight.Hair), (0.001, 0, 0.8, Weight.Thin)];

    public static WallDrawing Band(HouseGeometry geometry, CrackedWall wall, WallView view, double from, double to)
    {
        var strip = new WallStrip(geometry, view.Face, view.PaperPerMetre, from, to, default);
        var board = new Board();
        var body = strip.Box(new Span(from, to), geometry.Wall.Base.Metres, geometry.Wall.Top.Metres);
        var cells = wall.Cracks.Where(c => c.Outside == (view.Face == Face.Outside)).ToArray();
        List<Mark> marks = [];
        foreach (var (opening, angle, spacing, weight) in Widths)
        {
            Outline[] pieces = [.. cells.Where(c => c.Opening >= opening).SelectMany(c => strip.Parts(new Span(c.From, c.To)).Select(p => Outline.Rectangle(strip.Box(p, c.Bottom, c.Top))))];
            if (pieces.Length > 0)
            {
                marks.Add(new Hatch(Outline.Of(pieces), angle, spacing, new Pen(weight)));
            }
        }

        board.Add(new Group("cracks", [.. marks], Outline.Rectangle(body)));
        var taken = new Taken(body);
        StripBody.Draw(board, strip);
        StripHoles.Draw(board, strip, view, taken);
        return new WallDrawing(board.Marks, StripMeasures.Room(strip, view), strip);
    }

    /// <summary>Hatching as it stands for an opening and all below it.</summary>
    public static IEnumerable<Mark> Sample(Outline area, int widths) => Widths.Take(widths).Select(w => new Hatch(area, w.Angle, w.Spacing, new Pen(w.Weight)));
}
