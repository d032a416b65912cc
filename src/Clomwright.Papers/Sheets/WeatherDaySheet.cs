using Clomwright.Analysis.Drying;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>Rain, hot wind or frost is coming: how much cover, tied where, what to do meanwhile, and what to look at when it comes off.</summary>
internal static class WeatherDaySheet
{
    private const double TallestDrawing = 32;
    private const double DrawingShare = 0.46;

    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Cover is not { } known)
        {
            return [];
        }

        var say = scene.Say;
        List<Block> blocks =
        [
            .. known.Value is { } cover ? Sheet(scene, cover) : [new Paragraph(say.Say("weather.no-cover", ("because", known.NotChecked!)), Styles.BodyStrong), Cautions(say) with { Above = 3 }],
            new Beside(
                new Stack([.. Steps(scene, "weather.rain", ["weather.rain-stop", "weather.rain-top", "weather.rain-hang", "weather.rain-foot"])]),
                new Stack([.. Steps(scene, "weather.uncover", ["weather.uncover-look", "weather.uncover-foot", "weather.uncover-press", "weather.uncover-off", "weather.uncover-write"])])) { Above = 3 },
            // Together, so that the lines to write in never stand alone on a second sheet.
            new Stack(
            [
                new Across(
                [
                    new Stack([.. Steps(scene, "weather.hot", ["weather.hot-shade", "weather.hot-top", "weather.hot-lay"])]),
                    new Stack([.. Steps(scene, "weather.frost", ["weather.frost-cover", "weather.frost-stop", "weather.frost-off"]), new Paragraph(Frost(scene), Styles.Small) { Above = 1 }]),
                    new Stack([new Heading(say.Say("weather.inside")), Ticked([.. ((string[])["weather.inside-soil", "weather.inside-straw", "weather.inside-tests", "weather.inside-teach"]).Select(k => say.Say(k)), Timber(scene), say.Say("weather.inside-tools")]) with { Above = 0.6 }]),
                ], 3),
                new Facts([.. ((string[])["weather.log-covered", "weather.log-rain", "weather.log-uncovered", "weather.log-by"]).Select(k => new Fact(say.Say(k), ""))], Styles.Body) { Above = 4 },
            ]) { Above = 3 },
        ];
        return Draft.Flow(new SheetHead("weather-day", say.Say("weather.title")), scene.Portrait, blocks, say);
    }

    private static IEnumerable<Block> Sheet(Scene scene, WallCover cover)
    {
        var say = scene.Say;
        yield return new Facts(
        [
            scene.Fact("weather.area", new Area(cover.Whole.Area), Tag.Computed),
            scene.Fact("weather.width", Amount.Metres(cover.Whole.Width), Tag.Computed),
            scene.Fact("weather.run", Amount.Metres(cover.Run), Tag.Computed),
            scene.Fact("weather.ridge", Amount.Metres(cover.Ridge), Tag.Computed),
            new Fact(say.Say("weather.ties"), say.Say("weather.ties-count", ("n", cover.TiesEachEdge)), say.Say("weather.ties-every", ("spacing", Amount.Metres(cover.TieSpacing)))),
            scene.Fact("weather.pull", new Amount(cover.Pull, Dimension.Force), Tag.Computed),
        ], Styles.Heading) { Across = 6 };
        yield return new Paragraph(say.Say("weather.cover-how", ("over", Amount.Metres(cover.Over)), ("below", Amount.Metres(scene.Geometry.Wall.Base.Metres - cover.OuterEdge)), ("lap", Amount.Fraction(cover.Lap)), ("wind", new Amount(cover.Wind, Dimension.Speed))), Styles.Body) { Above = 2.5 };
        var content = SheetFrame.Content(scene.Portrait);
        var drawn = Section(scene, cover, (content.Width - Beside.Gutter) * DrawingShare, out var view);
        yield return new Beside(
            new Stack(
            [
                new Picture(drawn, view) { Left = true },
                new Table(
                    [new(say.Say("weather.top-lift")), new(say.Say("weather.width"), Anchor.End), new(""), new(say.Say("weather.area"), Anchor.End), new("") { Grows = 1 }],
                    [
                        .. Shown(cover).Select(l => new Row([new Cell(say.Say("weather.lift", ("n", l.Number))), .. scene.Pair(Amount.Metres(l.Width), Styles.BodyStrong), .. scene.Pair(new Area(l.Area), Styles.BodyStrong)])),
                    ]) { Above = 2, Pad = 0.35 },
            ]),
            new Stack([Cautions(say)]), DrawingShare) { Above = 3 };
    }

    private static Cautions Cautions(Wording say) => new(say.Say("caution.title"), [.. ((string[])["caution.tarp-wind", "caution.lightning", "caution.free-wall", "caution.soaked"]).Select(k => say.Say(k))]);

    /// <summary>At most four of the lifts, the last among them.</summary>
    private static IEnumerable<CoverAtLift> Shown(WallCover cover)
    {
        var every = (cover.Lifts.Count + 3) / 4;
        return cover.Lifts.Where((_, i) => (cover.Lifts.Count - 1 - i) % every == 0);
    }

    /// <summary>A cut through wall and sheet, to no scale of its own: how it hangs.</summary>
    private static Sequence<Mark> Section(Scene scene, WallCover cover, double width, out PaperBox view)
    {
        var wall = scene.Geometry.Wall;
        var (low, high) = (Math.Min(cover.OuterEdge, wall.Base.Metres) - 0.25, cover.Ridge + 0.2);
        var scale = Math.Min(TallestDrawing / (high - low), width / (2.4 + wall.ThicknessAt(wall.Base.Metres)));
        var (left, thick) = (1.2 * scale, wall.ThicknessAt(wall.Base.Metres) * scale);
        double Y(double metres) => (high - metres) * scale;
        var board = new Board();
        double Inside(double height) => left + thick - wall.InsideOffset(height) * scale;
        double Outside(double height) => left + thick - wall.OutsideOffset(height) * scale;
        var (foot, top) = (wall.Base.Metres, wall.Top.Metres);
        var cut = Outline.Polygon(new PaperPoint(Outside(foot), Y(foot)), new PaperPoint(Inside(foot), Y(foot)), new PaperPoint(Inside(top), Y(top)), new PaperPoint(Outside(top), Y(top)));
        board.Add(new Hatch(cut, 45, 1.4, new Pen(Weight.Hair)));
        board.Add(new Stroke(cut, new Pen(Weight.Heavy)));
        var stem = new PaperBox(left - 0.05 * scale, Y(wall.Base.Metres), left + thick + 0.05 * scale, Y(low));
        board.Rectangle(stem, Weight.Medium);
        var ridge = new PaperPoint((Inside(top) + Outside(top)) / 2, Y(cover.Ridge));
        var outer = new PaperPoint(left - 0.5 * scale, Y(cover.OuterEdge));
        var inner = new PaperPoint(left + thick + 0.45 * scale, Y(top - 0.6));
        board.Add(new Stroke(Outline.Through(outer, ridge, inner), new Pen(Weight.Heavy)));
        board.Line(outer.X, outer.Y, outer.X - 0.4 * scale, Y(low), Weight.Thin);
        board.Line(inner.X, inner.Y, inner.X + 0.45 * scale, Y(foot), Weight.Thin);
        board.Add(new Fill(Outline.Circle(ridge, 0.8)));
        board.Line(0, Y(low), left - 0.05 * scale, Y(low), Weight.Bold);
        board.Say(scene.Say.Say("face.outside"), 0, Y(low) + 0.9 + Styles.Small.Ascent(), Styles.Small);
        board.Say(scene.Say.Say("face.inside"), left + thick - 0.3 * scale, Y(low) + 0.9 + Styles.Small.Ascent(), Styles.Small);
        view = board.Marks.Bounds().Inset(-0.6);
        return board.Marks;
    }

    private static IEnumerable<Block> Steps(Scene scene, string heading, string[] keys)
    {
        yield return new Heading(scene.Say.Say(heading)) { Above = 3 };
        yield return Ticks(scene, keys) with { Above = 0.6 };
    }

    /// <summary>What this house has to make and do without a roof, whole: what is done is crossed out on the sheet.</summary>
    private static string Timber(Scene scene)
    {
        var say = scene.Say;
        string One(UnderCoverWork work) => work.Count is { } n ? say.Say("weather.one", ("n", n), ("what", new Message("papers.weather.work-" + work.Key)))
            : say.Say("weather.one-hours", ("what", new Message("papers.weather.work-" + work.Key)), ("hours", Amount.Number(Math.Round(work.Hours ?? 0))));
        return scene.Set.UnderCover is { } under && under.Works.Any(w => !w.IsUnderRoof) ? say.Say("weather.this-house", ("list", string.Join(", ", under.Works.Where(w => !w.IsUnderRoof).Select(One)))) : say.Say("weather.inside-timber");
    }

    private static Stack Ticks(Scene scene, string[] keys) => Ticked(keys.Select(k => scene.Say.Say(k)));

    private static Stack Ticked(IEnumerable<string> lines) => new([new Table([new("") { Grows = 1 }], [.. lines.Select(line => new Row(new Cell(line) { Tick = true }))]) { Pad = 0.25 }]);

    private static string Frost(Scene scene)
    {
        var say = scene.Say;
        if (scene.Set.Weather is not { Value: { } weather })
        {
            return say.Say("weather.frost-unknown", ("because", scene.Set.Weather is { NotChecked: { } because } ? say.Say(because) : say.Say("not-known")));
        }

        var months = weather.Climate.Months.Where(m => m.Low < 0).Select(m => say.Say("month." + m.Number)).ToList();
        return months.Count == 0
            ? say.Say("weather.frost-none", ("place", weather.Climate.Place), ("low", new Amount(weather.Climate.Months.Min(m => m.Low), Dimension.Temperature)))
            : say.Say("weather.frost-months", ("place", weather.Climate.Place), ("months", string.Join(", ", months)));
    }
}
