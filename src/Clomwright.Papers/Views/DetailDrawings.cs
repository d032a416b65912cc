using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>Details of wall and roof to a large scale: outside on the left. Each names its parts for labels beside it.</summary>
internal static class DetailDrawings
{
    private const double CobShown = 0.28;
    private const double OpeningShown = 0.34;

    /// <summary>Head and sill of an opening, cut upright through its middle; the opening between them is shortened.</summary>
    public static IReadOnlyList<PartLabel> Opening(Board board, HouseGeometry geometry, OpeningPlace place, double k, Func<Message, string> say)
    {
        List<PartLabel> labels = [];
        var wall = geometry.Wall;
        var opening = place.Opening;
        var headTop = (place.Header?.Top ?? place.Head) + CobShown;
        var cut = place.Head - place.Sill > 2 * OpeningShown ? place.Head - place.Sill - 2 * OpeningShown : 0;

        // Heights under the middle of the opening are moved up by what is left out of it.
        double Y(double height) => -(height < (place.Head + place.Sill) / 2 ? height + cut : height) * k;
        PaperPoint At(double offset, double height) => new(-offset * k, Y(height));
        PaperBox Box(double from, double to, double low, double high) => new(-to * k, Y(high), -from * k, Y(low));

        Cob(place.Header?.Top ?? place.Head, headTop);
        if (place.Sill > wall.Base.Metres)
        {
            Cob(Math.Max(place.Sill - CobShown, wall.Base.Metres), place.Sill);
        }
        else
        {
            var (inside, outside) = geometry.Stem;
            var stem = Outline.Rectangle(Box(inside, outside, place.Sill - CobShown, place.Sill));
            board.Add(new Group("detail-stem", [new Hatch(stem, -45, 1.6, new Pen(Weight.Hair)), new Stroke(stem, new Pen(Weight.Heavy))]));
        }

        if (place.Header is { } header && opening.Header is { } made)
        {
            var middle = (wall.InsideOffset(header.Bottom) + wall.OutsideOffset(header.Bottom)) / 2;
            for (var i = 0; i < made.Pieces; i++)
            {
                var from = middle - header.TotalWidth / 2 + i * made.Width.Metres;
                Timber(Box(from, from + made.Width.Metres, header.Bottom, header.Top));
            }

            Label(middle + header.TotalWidth / 2 - 0.02, (header.Bottom + header.Top) / 2, Message.Of("papers.detail.header", ("n", made.Pieces), ("width", made.Width), ("depth", made.Depth), ("material", new Argument.Material(made.Material)), ("bearing", made.Bearing)));
        }

        if (opening.Frame is { } frame)
        {
            var outer = frame.Setback is { } setback ? wall.OutsideOffset(Math.Max(place.Sill, wall.Base.Metres)) - setback.Metres : (wall.InsideOffset(place.Sill) + wall.OutsideOffset(place.Sill) + frame.Depth.Metres) / 2;
            var top = place.Sill + frame.Height.Metres;
            Timber(Box(outer - frame.Depth.Metres, outer, top - frame.Stock.Metres, top));
            Timber(Box(outer - frame.Depth.Metres, outer, place.Sill, place.Sill + frame.Stock.Metres));
            var pane = outer - frame.Depth.Metres / 2;
            var (upper, lower) = (top - frame.Stock.Metres, place.Sill + frame.Stock.Metres);
            board.Add(new Stroke(cut > 0
                ? Outline.Of(Outline.Line(At(pane, upper), At(pane, place.Head - OpeningShown)), Outline.Line(At(pane, place.Sill + OpeningShown), At(pane, lower)))
                : Outline.Line(At(pane, upper), At(pane, lower)), new Pen(Weight.Medium)));
            Label(outer - frame.Depth.Metres / 3, top - frame.Stock.Metres / 2, Message.Of("papers.detail.frame", ("stock", frame.Stock), ("depth", frame.Depth)));
            if (place.Head - top > 0.001)
            {
                Label(outer - frame.Depth.Metres / 2, (place.Head + top) / 2, Message.Of("papers.detail.gap", ("gap", Amount.Metres(place.Head - top))));
            }
        }

        Label(wall.OutsideOffset(place.Sill) - 0.03, place.Sill, Message.Of("papers.detail.sill", ("sill", opening.Sill)));
        Label((wall.InsideOffset(headTop) + wall.OutsideOffset(headTop)) / 2, headTop - 0.08, new Message("papers.detail.cob"));
        if (cut > 0)
        {
            var (a, b, y) = (-(wall.OutsideOffset(place.Sill) + 0.05) * k, -(wall.InsideOffset(place.Sill) - 0.05) * k, Y(place.Head - OpeningShown));
            board.Add(new Stroke(Outline.Through(new(a, y), new((a + b) / 2 - 1.5, y), new((a + b) / 2 - 0.5, y - 1.8), new((a + b) / 2 + 0.5, y + 1.8), new((a + b) / 2 + 1.5, y), new(b, y)), new Pen(Weight.Thin)));
        }

        return labels;

        void Cob(double low, double high)
        {
            var outline = Outline.Polygon(At(wall.InsideOffset(low), low), At(wall.OutsideOffset(low), low), At(wall.OutsideOffset(high), high), At(wall.InsideOffset(high), high));
            board.Add(new Group(FormattableString.Invariant($"detail-cob-{low:0.00}"), [new Hatch(outline, 45, 2, new Pen(Weight.Hair)), new Stroke(outline, new Pen(Weight.Heavy))]));
        }

        void Timber(PaperBox box) => DetailDrawings.Timber(board, box);

        void Label(double offset, double height, Message words) => labels.Add(new PartLabel(At(offset, height), say(words)));
    }

    /// <summary>The wall top: bond beam, tee and cob round its bar.</summary>
    public static IReadOnlyList<PartLabel> WallTop(Board board, HouseGeometry geometry, double k, Func<Message, string> say)
    {
        List<PartLabel> labels = [];
        var (wall, house) = (geometry.Wall, geometry.House);
        var top = wall.Top.Metres;
        var low = Math.Max(wall.Base.Metres, (geometry.Tees.Count > 0 ? geometry.Tees[0].BarHeight : top) - 0.3);
        PaperPoint At(double offset, double height) => new(-offset * k, -height * k);
        PaperBox Box(double from, double to, double bottom, double high) => new(-to * k, -high * k, -from * k, -bottom * k);
        var cob = Outline.Polygon(At(wall.InsideOffset(low), low), At(wall.OutsideOffset(low), low), At(wall.OutsideOffset(top), top), At(wall.InsideOffset(top), top));
        board.Add(new Group("detail-top", [new Hatch(cob, 45, 2, new Pen(Weight.Hair)), new Stroke(cob, new Pen(Weight.Heavy))]));
        labels.Add(new PartLabel(At((wall.InsideOffset(low) + wall.OutsideOffset(low)) / 2 + 0.08, low + 0.1), say(Message.Of("papers.detail.wall", ("thickness", wall.ThicknessAtTop)))));
        var middle = (wall.InsideOffset(top) + wall.OutsideOffset(top)) / 2 + (house.BondBeam?.Offset.Metres ?? 0);
        var over = top + (house.BondBeam?.Depth.Metres ?? 0);
        if (house.BondBeam is { } beam)
        {
            Timber(board, Box(middle - beam.Width.Metres / 2, middle + beam.Width.Metres / 2, top, over));
            labels.Add(new PartLabel(At(middle + beam.Width.Metres / 3, (top + over) / 2), say(Message.Of("papers.detail.beam", ("width", beam.Width), ("depth", beam.Depth), ("material", new Argument.Material(beam.Material))))));
        }

        if (house.Tees is { } tees && geometry.Tees.Count > 0)
        {
            var half = (tees.Timber?.Metres ?? 0.09) / 2;
            var bar = geometry.Tees[0].BarHeight;
            Timber(board, Box(middle - half / 2, middle + half / 2, bar, over));
            Timber(board, Box(middle - half, middle + half, bar, bar + 2 * half));
            labels.Add(new PartLabel(At(middle, bar + half), say(Message.Of("papers.detail.tee", ("bar", tees.Bar), ("depth", tees.Depth), ("spacing", tees.Spacing)))));
        }

        return labels;
    }

    /// <summary>A lap of the bond beam from the side: two pieces over each other by halves, and their bolts.</summary>
    public static IReadOnlyList<PartLabel> Lap(Board board, BondBeam beam, double k, Func<Message, string> say)
    {
        if (beam.Lap is not { } lap)
        {
            return [];
        }

        var (l, d, rest) = (lap.Metres * k, beam.Depth.Metres * k, 0.3 * k);
        board.Add(new Group("detail-lap",
        [
            new Stroke(Outline.Through(new(-rest, 0), new(l, 0), new(l, d / 2), new(0, d / 2), new(0, d), new(-rest, d)), new Pen(Weight.Heavy)),
            new Stroke(Outline.Through(new(l + rest, 0), new(l, 0)), new Pen(Weight.Heavy)),
            new Stroke(Outline.Through(new(l + rest, d), new(0, d)), new Pen(Weight.Heavy)),
            .. beam.Bolt is { } bolt && beam.Bolts > 0
                ? Enumerable.Range(1, beam.Bolts).Select(i => (Mark)new Stroke(Outline.Line(l * i / (beam.Bolts + 1), -0.02 * k, l * i / (beam.Bolts + 1), d + 0.02 * k), new Pen(Weight.Medium, Dash.Chain))) : [],
        ]));
        return [new PartLabel(new(l / 2, d / 2), say(beam.Bolt is { } size ? Message.Of("papers.detail.lap-bolted", ("lap", lap), ("n", beam.Bolts), ("bolt", size)) : Message.Of("papers.detail.lap-plain", ("lap", lap))))];
    }

    private static void Timber(Board board, PaperBox box) => board.Add(new Group(FormattableString.Invariant($"detail-timber-{box.Left:0.0}-{box.Top:0.0}"),
    [
        new Fill(Outline.Rectangle(box), Tone.Paper),
        new Stroke(Outline.Of(Outline.Line(box.Left, box.Top, box.Right, box.Bottom), Outline.Line(box.Left, box.Bottom, box.Right, box.Top)), new Pen(Weight.Hair)),
        new Stroke(Outline.Rectangle(box), new Pen(Weight.Medium)),
    ]));
}
