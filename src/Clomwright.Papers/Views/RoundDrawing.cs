using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Views;

/// <summary>The house in the round as lines, hidden ones left out.</summary>
internal static class RoundDrawing
{
    /// <summary>Draws it as large as a room allows.</summary>
    /// <param name="picture">What is seen.</param>
    /// <param name="width">Of the room, mm.</param>
    /// <param name="height">Of the room, mm.</param>
    public static (IReadOnlyList<Mark> Marks, PaperBox View) Of(RoundPicture picture, double width, double height)
    {
        SeenPoint[] all = [.. picture.Lines.SelectMany(l => l.Points)];
        if (all.Length == 0)
        {
            return ([], new PaperBox(0, 0, 0, 0));
        }

        PaperBox Around(double scale) => PaperBox.Around(all.Select(p => new PaperPoint(p.Across * scale, -p.Height * scale)));
        var metre = Around(1);
        var k = Math.Min(width / Math.Max(metre.Width, 1e-3), height / Math.Max(metre.Height, 1e-3));
        var board = new Board();
        foreach (var of in picture.Lines.GroupBy(l => l.Of))
        {
            var inner = new Board();
            foreach (var line in of)
            {
                inner.Add(new Stroke(Outline.Through([.. line.Points.Select(p => new PaperPoint(p.Across * k, -p.Height * k))]), Pen(of.Key)));
            }

            board.Add(new Group(Ids.Body(of.Key), inner.Marks));
        }

        return (board.Marks, Around(k).Inset(-0.5));
    }

    private static Pen Pen(string of) => of switch
    {
        "wall" or "stem" => new Pen(Weight.Medium),
        RoundPicture.Deck => new Pen(Weight.Thin, Dash.Dashed),
        RoundPicture.Ground => new Pen(Weight.Medium),
        _ => new Pen(Weight.Thin),
    };
}
