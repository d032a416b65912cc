using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>One lift on a clipboard at the wall: how much, between which faces, what is set in it, and when it is ready for the next.</summary>
internal static class LiftSheet
{
    public static IEnumerable<Draft> Of(Scene scene, LiftSlice lift)
    {
        var say = scene.Say;
        var head = new SheetHead(Ids.Lift(lift.Number), say.Say("lift.title", ("n", lift.Number), ("count", scene.Geometry.Lifts.Count)));
        List<Block> blocks =
        [
            Numbers(scene, lift),
            new Picture(Strip(scene, lift, out var view), view) { Above = 3 },
            .. FacesAndOpenings(scene, lift),
            Cautions(scene, lift),
            .. SetIn(scene, lift),
            LiftWindow.Of(scene, lift),
        ];
        return Draft.Flow(head, scene.Portrait, blocks, say);
    }

    private static Facts Numbers(Scene scene, LiftSlice lift)
    {
        var say = scene.Say;
        var counted = scene.Set.Quantities.Lifts.FirstOrDefault(q => q.Lift == lift.Index);
        var platform = WorkHeight.Platform(lift.Top.Metres);
        return new Facts(
        [
            scene.Fact("lift.from", lift.Bottom, Tag.Given),
            scene.Fact("lift.to", lift.Top, Tag.Given),
            scene.Fact("lift.rise", lift.Top - lift.Bottom, Tag.Computed),
            counted?.Batches is { } batches ? scene.Fact("lift.batches", Amount.Number(Math.Round(batches * 2) / 2), Tag.Computed) : scene.Unknown("lift.batches", "lift.no-batch"),
            counted?.RisePerBatch is { } rise ? scene.Fact("lift.rise-per-batch", Amount.Metres(rise), Tag.Computed) : scene.Unknown("lift.rise-per-batch", "lift.no-batch"),
            scene.Fact("lift.volume", new Volume(lift.LaidVolume), Tag.Computed),
            scene.Fact("lift.net-volume", new Volume(lift.NetVolume), Tag.Computed),
            platform > 0.25
                ? scene.Fact("lift.platform", Amount.Metres(platform), Tag.Practice)
                : new Fact(say.Say("lift.platform"), say.Say("lift.platform-floor"), say.Say(Tag.Practice)),
        ], Styles.Reading);
    }

    /// <summary>The whole ring with this lift filled in.</summary>
    private static Sequence<Mark> Strip(Scene scene, LiftSlice lift, out PaperBox view)
    {
        var content = SheetFrame.Content(scene.Portrait);
        var drawing = UnrolledWall.Of(scene.Geometry, new WallView(Face.Inside, (content.Width - 8) / scene.Geometry.Curve.Length) { Units = scene.Say.First, Measures = false, Details = false });
        var strip = drawing.Strip;
        var band = strip.Box(new Span(strip.From, strip.To), lift.Bottom.Metres, lift.Top.Metres);
        view = drawing.View;
        return [.. drawing.Marks.TakeWhile(m => m is not Group { Id: "lift-lines" }), Shaded(band), .. drawing.Marks.SkipWhile(m => m is not Group { Id: "lift-lines" })];
    }

    /// <summary>The lift hatched; openings are drawn over it afterwards and stay white.</summary>
    private static Group Shaded(PaperBox band) => new("this-lift",
    [
        new Hatch(Outline.Rectangle(band), 45, 0.9, new Pen(Weight.Thin)),
        new Stroke(Outline.Rectangle(band), new Pen(Weight.Heavy)),
    ]);

    /// <summary>Beside each other where the numbers leave room and that is no taller, else under one another.</summary>
    private static IEnumerable<Block> FacesAndOpenings(Scene scene, LiftSlice lift)
    {
        Block[] faces = [.. Faces(scene, lift)];
        Block[] openings = [.. Openings(scene, lift)];
        var content = SheetFrame.Content(scene.Portrait);
        var share = (faces.OfType<Table>().Max(t => t.NaturalWidth) + 1) / (content.Width - Beside.Gutter);
        var beside = new Beside(new Stack(faces), new Stack(openings), share) { Above = 3 };
        var under = new Stack([.. faces, .. openings]);
        return share < 0.68 && beside.Height(content.Width) <= under.Height(content.Width) ? [beside] : [.. faces, .. openings];
    }

    private static IEnumerable<Block> Faces(Scene scene, LiftSlice lift)
    {
        var (say, wall) = (scene.Say, scene.Geometry.Wall);
        yield return new Heading(say.Say("lift.faces"));
        var round = scene.House.Plan as Plan.Round;
        Row At(string key, double height)
        {
            var (inside, outside) = (wall.InsideOffset(height), wall.OutsideOffset(height));
            var radius = round is null ? 0 : round.InsideDiameter.Metres / 2;
            return new Row([say.Say(key), .. scene.Pair(Amount.Metres(inside + radius), Styles.Reading), .. scene.Pair(Amount.Metres(outside + radius), Styles.Reading), .. scene.Pair(Amount.Metres(outside - inside), Styles.Reading)]);
        }

        yield return new Table(
            [
                new(""), new(say.Say(round is null ? "lift.inside-offset" : "lift.inside-radius"), Anchor.End), new(""),
                new(say.Say(round is null ? "lift.outside-offset" : "lift.outside-radius"), Anchor.End), new(""), new(say.Say("lift.thickness"), Anchor.End), new("") { Grows = 1 },
            ],
            [At("lift.at-top", lift.Top.Metres), At("lift.at-bottom", lift.Bottom.Metres)]) { Above = 1.5 };
        yield return new Paragraph(say.Say(round is null ? "lift.offsets-note" : "lift.radii-note"), Styles.Small) { Above = 1.5 };
        if (lift.Index == 0 && lift.LaidVolume > lift.NetVolume * 1.001)
        {
            yield return new Paragraph(say.Say("lift.first-note"), Styles.Body) { Above = 1.5 };
        }
    }

    private static IEnumerable<Block> Openings(Scene scene, LiftSlice lift)
    {
        var say = scene.Say;
        var (bottom, top) = (lift.Bottom.Metres, lift.Top.Metres);
        List<TickItem> items = [];
        foreach (var o in scene.Geometry.Openings)
        {
            List<(string Key, double Height)> events = [];
            if (lift.Takes(o.Sill))
            {
                events.Add(("lift.opening-starts", o.Sill));
            }

            if (o.Head > bottom && o.Head <= top)
            {
                events.Add(("lift.opening-stops", o.Head));
            }

            if (o.Header is { } h && h.Top > bottom && h.Top <= top)
            {
                events.Add(("lift.header-top", h.Top));
            }

            items.AddRange(events.Select(e => new TickItem(scene.Letter(o), say.One(Amount.Metres(e.Height)), Wording.Dotted(say.Say(e.Key), say.Other(Amount.Metres(e.Height))))));
        }

        yield return new Heading(say.Say("lift.openings"));
        yield return items.Count == 0 ? new Paragraph(say.Say("lift.no-openings"), Styles.Body) { Above = 1.5 } : new TickGrid(items) { Above = 1.5 };
    }

    /// <summary>What is built in while this lift is laid: embeds, niches that begin, tees, and the deadmen of frames.</summary>
    private static IEnumerable<Block> SetIn(Scene scene, LiftSlice lift)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        var here = LiftContents.Of(g, lift);
        List<Row> rows = [];
        List<Block> rowsApart = [];
        foreach (var embeds in here.Embeds.GroupBy(e => e.Index).OrderBy(e => e.First().Height).ThenBy(e => e.First().Station))
        {
            var e = embeds.First();
            var kind = Wording.Dotted(say.Say("embed." + e.Embed.Kind.ToString().ToLowerInvariant()), say.Say("face." + (e.Embed.Through ? "through" : e.Embed.Face.ToString().ToLowerInvariant())), e.Embed.Note ?? "");
            if (embeds.Count() == 1)
            {
                rows.Add(Item(scene, StripEmbeds.Number(e), e.Embed.Name, kind, e.Station, e.Height));
                continue;
            }

            rowsApart.Add(new LeadIn(say.Say("lift.row", ("sign", StripEmbeds.Number(e)), ("name", e.Embed.Name), ("kind", kind), ("height", Amount.Metres(e.Height)))));
            rowsApart.Add(new TickGrid([.. embeds.Select((x, i) => new TickItem($"{i + 1}", say.One(Amount.Metres(x.Station)), say.Other(Amount.Metres(x.Station))))]) { Above = 1.2 });
        }

        rows.AddRange(here.Niches.Select(n => Item(scene, StripHoles.Sign(g, n), n.Niche.Name, say.Say("lift.niche-starts", ("depth", n.Niche.Depth)), n.Station, n.Bottom)));
        yield return new Heading(say.Say("lift.set-in")) { Above = 4 };
        var grids = rowsApart.Concat(Tees(scene, here)).Concat(Deadmen(scene, here)).ToArray();
        if (rows.Count == 0 && grids.Length == 0)
        {
            yield return new Paragraph(say.Say("lift.nothing"), Styles.Body) { Above = 1.5 };
        }

        if (rows.Count > 0)
        {
            yield return new Table(
                [new(""), new(say.Say("built.height"), Anchor.End), new(""), new(say.Say("built.station"), Anchor.End), new(""), new(say.Say("built.name")) { Grows = 1 }],
                rows) { Above = 1.5 };
        }

        foreach (var grid in grids)
        {
            yield return grid;
        }
    }

    private static IEnumerable<Block> Tees(Scene scene, LiftContents here)
    {
        var say = scene.Say;
        foreach (var level in here.Tees.GroupBy(t => Math.Round(t.BarHeight, 4)))
        {
            yield return new LeadIn(say.Say("lift.tees", ("height", Amount.Metres(level.First().BarHeight))));
            yield return new TickGrid([.. level.Select(t => new TickItem($"T{t.Number}", say.One(Amount.Metres(t.Station)), say.Other(Amount.Metres(t.Station))))]) { Above = 1.2 };
        }
    }

    private static IEnumerable<Block> Deadmen(Scene scene, LiftContents here)
    {
        var say = scene.Say;
        TickItem[] items = [.. here.Deadmen.Select(d => new TickItem(scene.Letter(d.Opening), say.One(Amount.Metres(d.Height)), say.Other(Amount.Metres(d.Height)), 2))];
        if (items.Length > 0)
        {
            yield return new LeadIn(say.Say("lift.deadmen"));
            yield return new TickGrid(items) { Above = 1.2 };
        }
    }

    private static Row Item(Scene scene, string sign, string name, string note, double station, double height) => new(
    [
        new Cell(sign) { Lettering = Styles.BodyStrong, Tick = true },
        .. scene.Pair(Amount.Metres(height), Styles.Reading),
        .. scene.Pair(Amount.Metres(station), Styles.Reading),
        new Cell(name, note) { Lettering = Styles.BodyStrong },
    ]);

    private static Cautions Cautions(Scene scene, LiftSlice lift)
    {
        var say = scene.Say;
        List<string> items = [say.Say("caution.wet-wall"), say.Say("caution.lifting")];
        if (WorkHeight.Platform(lift.Top.Metres) > 0.25)
        {
            items.Add(say.Say("caution.platform"));
        }

        if (scene.Geometry.Openings.Any(o => o.Header is { } header && lift.Takes(header.Bottom)) || scene.Geometry.Niches.Any(n => n.Niche.Head == NicheHead.Header && lift.Takes(n.Bottom + n.Niche.Height.Metres)))
        {
            items.Add(say.Say("caution.header"));
        }

        var embeds = LiftContents.Of(scene.Geometry, lift).Embeds;
        if (embeds.Any(e => e.Embed.Kind is EmbedKind.Box or EmbedKind.Wire))
        {
            items.Add(say.Say("caution.wire"));
        }

        if (HotSleeves.Any(embeds))
        {
            items.Add(say.Say("caution.flue-sleeve"));
        }

        if (lift.Number == scene.Geometry.Lifts.Count)
        {
            items.Add(say.Say("caution.free-wall"));
        }

        items.AddRange(Standing(scene, lift));
        items.AddRange(LiftWindow.Warnings(scene, lift.Number));
        return new Cautions(say.Say("caution.title"), items) { Above = 4 };
    }

    /// <summary>How dry the wall below must be, in what wind people leave its lee, and from where it is braced.</summary>
    private static IEnumerable<string> Standing(Scene scene, LiftSlice lift)
    {
        var say = scene.Say;
        if (scene.Set.WallByHand?.Green is not { } green || green.Lifts.FirstOrDefault(l => l.Number == lift.Number) is not { } now)
        {
            yield break;
        }

        if (lift.Number > 1)
        {
            yield return say.Say("caution.wall-dry", ("water", Amount.Fraction(now.Water)), ("strength", new Amount(now.Strength, Dimension.Stress)));
        }

        if (now is { Leave: { } leave, LeaveFresh: { } fresh })
        {
            yield return say.Say("caution.wall-wind", ("fresh", new Amount(fresh, Dimension.Speed)), ("leave", new Amount(leave, Dimension.Speed)));
        }

        var top = now.Height;
        if ((green.BraceEnd ?? double.PositiveInfinity) < top || (green.BraceMiddle ?? double.PositiveInfinity) < top)
        {
            yield return WallByHandSheet.Brace(scene, green);
        }
    }
}
