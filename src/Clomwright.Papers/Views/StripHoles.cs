using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>Openings, headers and niches on the unrolled wall.</summary>
internal static class StripHoles
{
    private static readonly Lettering Name = Styles.Small;

    public static void Draw(Board board, WallStrip strip, WallView view, Taken taken)
    {
        for (var i = 0; i < strip.Geometry.Openings.Count; i++)
        {
            Opening(board, strip, view, taken, strip.Geometry.Openings[i], Ids.Letter(i));
        }

        foreach (var niche in strip.Geometry.Niches)
        {
            Niche(board, strip, taken, niche);
        }
    }

    private static void Opening(Board board, WallStrip strip, WallView view, Taken taken, OpeningPlace place, string letter)
    {
        foreach (var outline in strip.Laid(Unrolled.Outline(strip.Geometry, place, strip.Face)))
        {
            var box = outline.Bounds;
            var inner = new Board();
            inner.Add(new Fill(outline, Tone.Paper));
            inner.Add(new Stroke(outline, new Pen(Weight.Heavy)));
            taken.Keep(box);
            Inscribe(inner, view, place, letter, box);
            board.Add(new Group(Ids.Opening(place.Opening.Name), inner.Marks));
        }

        if (place.Header is { } header)
        {
            foreach (var part in strip.Parts(header.Span))
            {
                var box = strip.Box(part, header.Bottom, header.Top);
                taken.Keep(box);
                board.Add(new Group(Ids.Header(place.Opening.Name),
                [
                    new Hatch(Outline.Rectangle(box), 90 - 62, 1.1, new Pen(Weight.Hair)),
                    new Stroke(Outline.Rectangle(box), new Pen(Weight.Medium, Dash.Dashed)),
                ]));
            }
        }
    }

    /// <summary>What fits inside an opening: its letter in a ring, its name, and the heights of head and sill.</summary>
    private static void Inscribe(Board board, WallView view, OpeningPlace place, string letter, PaperBox box)
    {
        var middle = box.Centre;
        var letters = Styles.Heading;
        var radius = Math.Max(2.6, letters.WidthOf(letter) / 2 + 0.9);
        if (Math.Min(box.Width, box.Height) < 2 * radius + 1)
        {
            board.Say(letter, middle.X, middle.Y + Styles.BodyStrong.Digits / 2, Styles.BodyStrong, Anchor.Middle);
            return;
        }

        board.Add(new Stroke(Outline.Circle(middle, radius), new Pen(Weight.Thin)));
        board.Say(letter, middle.X, middle.Y + letters.Digits / 2, letters, Anchor.Middle);
        if (place.Opening.Shape == OpeningShape.Round || !view.Details)
        {
            return;
        }

        var room = box.Width - 2.4;
        var spring = box.Top + (place.Opening.Shape == OpeningShape.Arched ? (place.Opening.Rise?.Metres ?? 0) * view.PaperPerMetre : 0);
        var head = view.Book.Tape(place.Head, view.Units);
        var sill = view.Book.Tape(place.Sill, view.Units);
        var headBaseline = spring + 1 + Name.Ascent();
        if (Name.WidthOf(head) <= room && headBaseline + 0.6 < middle.Y - radius)
        {
            board.Say(head, middle.X, headBaseline, Name, Anchor.Middle);
        }

        var sillBaseline = box.Bottom - 1.9;
        if (place.Sill > 0 && Name.WidthOf(sill) <= room && sillBaseline - Name.Digits - 0.6 > middle.Y + radius)
        {
            board.Say(sill, middle.X, sillBaseline, Name, Anchor.Middle);
        }

        // A name stands whole or not at all: what the letter stands for is told beside the drawing too.
        var name = Wrapping.Lines(place.Opening.Name, Name, room);
        var nameBaseline = middle.Y + radius + 0.6 + Name.Ascent();
        if (Whole(place.Opening.Name, room) && nameBaseline + (name.Count - 1) * Name.Leading + 0.5 < sillBaseline - Name.Ascent())
        {
            for (var i = 0; i < name.Count; i++)
            {
                board.Say(name[i], middle.X, nameBaseline + i * Name.Leading, Name, Anchor.Middle);
            }
        }
    }

    /// <summary>Whether no word of a name is broken in some width: lines end at its spaces and hyphens.</summary>
    private static bool Whole(string name, double width) => name.Replace("-", "- ", StringComparison.Ordinal).Split(' ').All(word => Name.WidthOf(word) <= width);

    private static void Niche(Board board, WallStrip strip, Taken taken, NichePlace place)
    {
        var seen = place.Niche.Face == strip.Face;
        foreach (var outline in strip.Laid(Unrolled.Outline(strip.Geometry, place)))
        {
            var box = outline.Bounds;
            taken.Keep(box);
            var sign = Sign(strip.Geometry, place);
            Mark[] inner = seen
                ? [new Fill(outline, Tone.Paper), new Hatch(outline, -45, 1.3, new Pen(Weight.Hair)), new Stroke(outline, new Pen(Weight.Medium))]
                : [new Fill(outline, Tone.Paper), new Stroke(outline, new Pen(Weight.Thin, Dash.Dashed))];
            var half = Styles.SmallStrong.WidthOf(sign) / 2 + 0.8;
            var middle = Math.Clamp(box.Centre.X, strip.Corner.X + half, Math.Max(strip.Corner.X + half, strip.Right - half));
            var label = new Text(sign, new PaperPoint(middle, box.Centre.Y + Styles.SmallStrong.Digits / 2), Styles.SmallStrong, Anchor.Middle);
            taken.Keep(label.Bounds);
            board.Add(new Group(Ids.Niche(place.Niche.Name), [.. inner, new Fill(Outline.Rectangle(label.Bounds.Inset(-0.2)), Tone.Paper), label]));
        }
    }

    /// <summary>The short sign of a niche: N1, N2 in the order of the house file.</summary>
    public static string Sign(HouseGeometry geometry, NichePlace place) => $"N{geometry.Niches.Count(n => n.Index < place.Index) + 1}";
}
