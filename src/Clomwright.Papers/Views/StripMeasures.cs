using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Views;

/// <summary>Heights, zero mark, arc scale and the chain of widths round the unrolled wall.</summary>
internal static class StripMeasures
{
    private const double LeftRoom = 25;
    private const double RightRoom = 18;
    private const double ScaleRoom = 8.5;

    private static readonly Lettering HeightLettering = Styles.Body;

    /// <summary>The room on paper that the strip and its measures take.</summary>
    public static PaperBox Room(WallStrip strip, WallView view)
    {
        var (top, bottom) = (strip.Y(StripBody.Highest(strip)) - 6.5, strip.Y(StripBody.Lowest(strip)) + 1);
        return view.Measures
            ? new PaperBox(strip.Corner.X - LeftRoom, top, strip.Right + RightRoom, bottom + ScaleRoom + Widths(strip, view).Height + 1)
            : new PaperBox(strip.Corner.X - 3, top, strip.Right + 3, bottom + 1);
    }

    public static void Draw(Board board, WallStrip strip, WallView view)
    {
        Heights(board, strip, view);
        ZeroMark(board, strip);
        var y = strip.Y(StripBody.Lowest(strip)) + 2.2;
        ArcScale(board, strip, view, y);
        Widths(strip, view).Draw(board, y + ScaleRoom - 1.2);
    }

    /// <summary>Every height of a level line: first units on the left, the others on the right, moved apart where they would touch.</summary>
    private static void Heights(Board board, WallStrip strip, WallView view)
    {
        var wall = strip.Geometry.Wall;
        List<double> heights = [0, wall.Base.Metres, .. strip.Geometry.Lifts.Select(l => l.Top.Metres), wall.Top.Metres, StripBody.Highest(strip)];
        if (StripBody.Ground(strip) < 0)
        {
            heights.Add(StripBody.Ground(strip));
        }

        var levels = heights.Distinct().Order().ToArray();
        var ys = levels.Select(strip.Y).ToArray();
        var sizes = levels.Select(_ => HeightLettering.Digits + 1.0).ToArray();
        var (low, high) = (strip.Y(StripBody.Highest(strip)) - 5, strip.Y(StripBody.Lowest(strip)) + 3);
        var middles = Spreading.Apart(ys, sizes, low, high);
        var other = view.Units == UnitSystem.Imperial ? UnitSystem.Metric : UnitSystem.Imperial;
        for (var i = 0; i < levels.Length; i++)
        {
            var (left, right) = (strip.Corner.X - 8.5, strip.Right + 4);
            board.Add(new Stroke(Outline.Through(new(strip.Corner.X - 5.5, ys[i]), new(strip.Corner.X - 6.5, ys[i]), new(left + 0.8, middles[i])), new Pen(Weight.Hair)));
            board.Add(new Stroke(Outline.Through(new(strip.Right + 1, ys[i]), new(strip.Right + 2, ys[i]), new(right - 0.6, middles[i])), new Pen(Weight.Hair)));
            board.Say(view.Book.Tape(levels[i], view.Units), left, middles[i] + HeightLettering.Digits / 2, HeightLettering, Anchor.End);
            board.Say(view.Book.Tape(levels[i], other), right, middles[i] + Styles.Small.Digits / 2, Styles.Small);
        }

        foreach (var lift in strip.Geometry.Lifts)
        {
            var height = (lift.Top - lift.Bottom).Metres * strip.PaperPerMetre;
            var lettering = height > 3 ? Styles.BodyStrong : Styles.SmallStrong;
            if (height > lettering.Size * 0.8)
            {
                board.Say($"{lift.Number}", strip.Corner.X - 2.8, strip.Y((lift.Bottom.Metres + lift.Top.Metres) / 2) + lettering.Digits / 2, lettering, Anchor.Middle);
            }
        }
    }

    private static void ZeroMark(Board board, WallStrip strip)
    {
        foreach (var arc in strip.Arcs(0))
        {
            var x = strip.X(arc);
            var (top, bottom) = (strip.Y(StripBody.Highest(strip)), strip.Y(StripBody.Lowest(strip)) + 2.2);
            board.Add(new Group("zero-mark",
            [
                new Stroke(Outline.Line(x, top, x, bottom), new Pen(Weight.Medium, Dash.Chain)),
                new Fill(Outline.Polygon(new(x, bottom), new(x - 1.5, bottom - 2.6), new(x + 1.5, bottom - 2.6))),
            ]));
        }
    }

    /// <summary>A tape along the foot of the wall, from the zero mark clockwise.</summary>
    private static void ArcScale(Board board, WallStrip strip, WallView view, double y)
    {
        var (unit, small, name) = view.Units == UnitSystem.Imperial ? (0.3048, 2, "ft") : (1.0, 10, "m");
        var minor = unit / small;
        while (minor * strip.PaperPerMetre < 1.2)
        {
            minor = minor < unit - 1e-9 ? unit : minor * 2;
        }

        var widest = Styles.Small.WidthOf($"{Math.Floor(strip.FaceLength / unit)} {name}") + 2;
        var labelled = unit / (view.Units == UnitSystem.Imperial ? 1 : 2);
        while (labelled * strip.PaperPerMetre < widest)
        {
            labelled *= labelled < unit - 1e-9 ? 2 : labelled / unit is 2 or 20 ? 2.5 : 2;
        }

        var marks = new Board();
        marks.Line(strip.Corner.X, y, strip.Right, y, Weight.Medium);
        for (var turn = Math.Floor(strip.From / strip.FaceLength); turn * strip.FaceLength < strip.To; turn++)
        {
            var zero = turn * strip.FaceLength;
            for (var n = 0; n * minor < strip.FaceLength - 1e-9; n++)
            {
                var arc = n * minor;
                if (zero + arc < strip.From - 1e-9 || zero + arc > strip.To + 1e-9)
                {
                    continue;
                }

                var x = strip.X(zero + arc);
                var isLabelled = IsMultiple(arc, labelled);
                marks.Line(x, y, x, y + (isLabelled ? 2.4 : IsMultiple(arc, unit) ? 1.7 : 0.9), isLabelled ? Weight.Medium : Weight.Hair);
                if (isLabelled && strip.FaceLength - arc > labelled * 0.6)
                {
                    var number = Math.Round(arc / unit, 1);
                    marks.Say(n == 0 ? "0" : FormattableString.Invariant($"{number:0.#} {name}"), x, y + 2.9 + Styles.Small.Ascent(), Styles.Small, Anchor.Middle);
                }
            }
        }

        board.Add(new Group("arc-scale", marks.Marks));
    }

    private static bool IsMultiple(double value, double of) => Math.Abs(value / of - Math.Round(value / of)) < 1e-6;

    /// <summary>Rough widths of openings as written, arcs of piers as computed. A pier that the strip cuts is measured where it begins.</summary>
    private static Chain Widths(WallStrip strip, WallView view)
    {
        var foot = strip.Y(StripBody.Lowest(strip)) + 2.2 + ScaleRoom - 3;
        var links = strip.Geometry.Openings
            .Where(o => strip.Parts(strip.OnFace(o)).Any())
            .Select(o => Link(strip, view, Ids.Opening(o.Opening.Name) + " width", strip.Parts(strip.OnFace(o)).First(), o.Opening.Width.Metres, null) with { Foot = foot })
            .Concat(Piers(strip, view));
        return new Chain(links, strip.Corner.X - LeftRoom + 1, strip.Right + RightRoom - 1, Lettering.Tall(view.Digits), Styles.Small);
    }

    private static IEnumerable<Link> Piers(WallStrip strip, WallView view)
    {
        var geometry = strip.Geometry;
        foreach (var pier in geometry.Piers)
        {
            var (before, after) = (geometry.Openings.First(o => o.Opening.Name == pier.Before), geometry.Openings.First(o => o.Opening.Name == pier.After));
            var (from, to) = (strip.OnFace(before).To, strip.OnFace(after).From);
            while (to <= from)
            {
                to += geometry.Curve.Length;
            }

            var begins = strip.Arcs(from).Where(arc => arc < strip.To - 1e-9).Select(arc => (double?)arc).FirstOrDefault();
            if (begins is { } start)
            {
                var part = new Span(start, Math.Min(strip.To, start + strip.Arc(to) - strip.Arc(from)));
                var width = strip.Face == Face.Inside ? pier.WidthInside : pier.WidthOutside;
                yield return Link(strip, view, Ids.Pier(pier.Address) + " width", part, width, Ids.Pier(pier.Address)) with { Lettering = Lettering.Strong(view.Digits), Broken = part.Width < strip.Arc(to) - strip.Arc(from) - 1e-9 };
            }
        }
    }

    private static Link Link(WallStrip strip, WallView view, string of, Span arcs, double metres, string? id)
    {
        var (a, b) = (strip.X(arcs.From), strip.X(arcs.To));
        var other = view.Units == UnitSystem.Imperial ? UnitSystem.Metric : UnitSystem.Imperial;
        return new Link(of, Math.Min(a, b), Math.Max(a, b), view.Book.Tape(metres, view.Units), view.Book.Tape(metres, other)) { Id = id };
    }
}
