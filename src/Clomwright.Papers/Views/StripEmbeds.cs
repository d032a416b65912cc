using System.Globalization;
using Clomwright.Building;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>What is built in, where it lies on the unrolled wall: embeds by number, tees, and the seats of poles.</summary>
internal static class StripEmbeds
{
    /// <summary>Seats of poles and tees, which openings may cover.</summary>
    public static void Seats(Board board, WallStrip strip, WallView view)
    {
        Landings(board, strip);
        if (view.Details)
        {
            Tees(board, strip);
        }
    }

    public static void Draw(Board board, WallStrip strip, WallView view, Taken taken)
    {
        foreach (var embed in strip.Geometry.Embeds)
        {
            foreach (var arc in strip.Arcs(embed.Station))
            {
                taken.Keep(Symbol(strip, embed, strip.At(arc, embed.Height)).Bounds());
            }
        }

        foreach (var row in strip.Geometry.Embeds.GroupBy(e => e.Index))
        {
            var labelled = false;
            foreach (var embed in row)
            {
                foreach (var arc in strip.Arcs(embed.Station))
                {
                    var at = strip.At(arc, embed.Height);
                    List<Mark> marks = [.. Symbol(strip, embed, at)];
                    if (view.Details && !labelled && taken.Place(Taken.Round(Number(embed), at, Styles.SmallStrong, 1.9)) is { } label)
                    {
                        marks.Add(new Fill(Outline.Rectangle(label.Bounds.Inset(0.1)), Tone.Paper));
                        marks.Add(label);
                        labelled = true;
                    }

                    var over = marks.Bounds();
                    var cut = over.Left < strip.Corner.X - 1 || over.Right > strip.Right + 1;
                    board.Add(new Group(Ids.Embed(embed.Address), [.. marks], cut ? Outline.Rectangle(over with { Left = Math.Max(over.Left, strip.Corner.X), Right = Math.Min(over.Right, strip.Right) }) : null));
                }
            }
        }
    }

    /// <summary>The number of an embed: its place in the house file, from 1.</summary>
    public static string Number(EmbedPlace embed) => (embed.Index + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>A filled spot where it is reached from this face, a ring where it is reached from the other, a ring with a spot where it goes through.</summary>
    private static Mark[] Symbol(WallStrip strip, EmbedPlace embed, PaperPoint at)
    {
        var seen = embed.Embed.Face == strip.Face;
        var width = (embed.Embed.Width?.Metres ?? 0) * strip.PaperPerMetre;
        var height = (embed.Embed.Size?.Metres ?? embed.Embed.Width?.Metres ?? 0) * strip.PaperPerMetre;
        if (width > 2.4 && height > 1)
        {
            var box = PaperBox.At(at.X - width / 2, at.Y - height / 2, width, height);
            var outline = embed.Embed.Kind is EmbedKind.Bottle or EmbedKind.Sleeve or EmbedKind.Pipe ? Outline.Ellipse(at, width / 2, height / 2) : Outline.Rectangle(box);
            return [new Stroke(outline, new Pen(Weight.Medium, seen || embed.Embed.Through ? Dash.Solid : Dash.Dashed))];
        }

        var ring = Outline.Circle(at, 0.9);
        return embed.Embed.Through ? [new Stroke(ring, new Pen(Weight.Thin)), new Fill(Outline.Circle(at, 0.45))]
            : seen ? [new Fill(ring)]
            : [new Stroke(ring, new Pen(Weight.Thin))];
    }

    private static void Tees(Board board, WallStrip strip)
    {
        var bar = (strip.Geometry.House.Tees?.Bar.Metres ?? 0) / 2;
        foreach (var tee in strip.Geometry.Tees)
        {
            var half = bar;
            foreach (var arc in strip.Arcs(tee.Station))
            {
                var (from, to) = (Math.Max(strip.From, arc - half), Math.Min(strip.To, arc + half));
                var outline = Outline.Of(
                    Outline.Line(strip.At(from, tee.BarHeight), strip.At(to, tee.BarHeight)),
                    Outline.Line(strip.At(arc, tee.BarHeight), strip.At(arc, strip.Geometry.Wall.Top.Metres)));
                board.Add(new Group(Ids.Tee(tee.Number), [new Stroke(outline, new Pen(Weight.Thin, Dash.Dashed))]));
            }
        }
    }

    /// <summary>Seats of poles on the bond beam: filled for poles, open for secondaries; numbered where there is room.</summary>
    private static void Landings(Board board, WallStrip strip)
    {
        var top = strip.Y(StripBody.Highest(strip));
        var last = double.NegativeInfinity;
        foreach (var (landing, x) in strip.Geometry.Landings.SelectMany(l => strip.Arcs(l.Station).Select(a => (l, x: strip.X(a)))).OrderBy(p => p.x))
        {
            var triangle = Outline.Polygon(new(x, top), new(x - 1.2, top - 2.1), new(x + 1.2, top - 2.1));
            Mark seat = landing.Secondary ? new Stroke(triangle, new Pen(Weight.Thin)) : new Fill(triangle);
            List<Mark> marks = [seat];
            var number = Ids.Number(landing.Name);
            var half = Styles.Small.WidthOf(number) / 2;
            if (!landing.Secondary && x - half > last + 0.6)
            {
                marks.Add(new Text(number, new PaperPoint(x, top - 2.9), Styles.Small, Anchor.Middle));
                last = x + half;
            }

            board.Add(new Group(Ids.Landing(landing.Name), [.. marks]));
        }
    }
}
