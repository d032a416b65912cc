using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Layout;

/// <summary>Room on a drawing that is taken, so that labels never touch.</summary>
internal sealed class Taken(PaperBox frame)
{
    private const double Margin = 0.35;

    private readonly List<PaperBox> boxes = [];

    /// <summary>Keeps a box free of labels.</summary>
    public void Keep(PaperBox box) => boxes.Add(box);

    /// <summary>Whether a box is free and inside the frame.</summary>
    public bool Free(PaperBox box) => frame.Holds(box) && !boxes.Any(b => b.Inset(-Margin).Overlaps(box));

    /// <summary>The first of several ways to set a label that is free, its room taken from now on; null when none is.</summary>
    public Text? Place(params IEnumerable<Text> ways)
    {
        foreach (var way in ways)
        {
            if (Free(way.Bounds))
            {
                Keep(way.Bounds);
                return way;
            }
        }

        return null;
    }

    /// <summary>Ways to set a label round a point, nearest first: right, left, above, below, then the corners, then farther out.</summary>
    public static IEnumerable<Text> Round(string words, PaperPoint at, Lettering lettering, double clear)
    {
        for (var ring = 1; ring <= 6; ring++)
        {
            var away = clear + (ring - 1) * 1.6;
            var middle = at.Y + lettering.Digits / 2;
            var (above, below) = (at.Y - away - lettering.Descent(), at.Y + away + lettering.Ascent());
            yield return new Text(words, new PaperPoint(at.X + away, middle), lettering);
            yield return new Text(words, new PaperPoint(at.X - away, middle), lettering, Anchor.End);
            yield return new Text(words, new PaperPoint(at.X, above), lettering, Anchor.Middle);
            yield return new Text(words, new PaperPoint(at.X, below), lettering, Anchor.Middle);
            yield return new Text(words, new PaperPoint(at.X + away, above), lettering);
            yield return new Text(words, new PaperPoint(at.X - away, above), lettering, Anchor.End);
            yield return new Text(words, new PaperPoint(at.X + away, below), lettering);
            yield return new Text(words, new PaperPoint(at.X - away, below), lettering, Anchor.End);
        }
    }
}
