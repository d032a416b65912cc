using System.Globalization;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>Floor plan, foundation plan and framing plan, each with the schedules that belong to it.</summary>
internal static class OfficePlans
{
    private const double Share = 0.5;

    public static IEnumerable<Draft> Site(Scene scene)
    {
        var (say, site) = (scene.Say, scene.House.Site);
        string[] missing =
        [
            .. site.Plot is { Boundaries.Count: > 0 } ? (string[])[] : [say.Say("site-plan.no-boundaries")],
            .. site.Plot is { Features.Count: > 0 } ? (string[])[] : [say.Say("site-plan.no-features")],
            .. site.Plot?.Downhill is null ? [say.Say("site-plan.no-fall")] : (string[])[],
        ];
        Block[] beside =
        [
            new Heading(say.Say("site-plan.areas")),
            new Facts([scene.Fact("cover.inside-area", new Area(scene.Geometry.Measures.InsideArea), Tag.Computed), scene.Fact("cover.outside-area", new Area(scene.Geometry.Measures.OutsideArea), Tag.Computed)], Styles.BodyStrong) { Above = 1.5 },
            new Paragraph(say.Say("site-plan.note"), Styles.Body) { Above = 3 },
            .. site.Plot is { Boundaries.Count: > 0 } plot ? (Block[])[Typed(scene, plot)] : [],
            .. missing.Length == 0 ? (Block[])[] : [new Cautions(say.Say("site-plan.missing"), missing) { Above = 3 }],
        ];
        return Drawn(scene, "site-plan", "site-plan.title", s => SitePlan.Of(scene.Geometry, s.PaperPerMetre, say), beside);
    }

    /// <summary>What was typed, so that nothing is lost where a label found no room on the drawing.</summary>
    private static Table Typed(Scene scene, Plot plot)
    {
        var say = scene.Say;
        return new Table(
            [new(say.Say("site-plan.typed")) { Grows = 1 }, new(say.Say("plan.bearing"), Anchor.End), new(say.Say("plan.from-centre"), Anchor.End)],
            [
                .. plot.Boundaries.Select(b => new Row(new Cell(b.Name), scene.Cell(Scene.Bearing(b.Bearing.Radians)), scene.Cell(b.Distance))),
                .. plot.Features.Select(f => new Row(new Cell(f.Name, say.Say("site-plan.kind-" + f.Kind.ToString().ToLowerInvariant())), scene.Cell(Scene.Bearing(f.Bearing.Radians)), scene.Cell(f.Distance))),
            ]) { Above = 3, Pad = 0.5 };
    }

    public static IEnumerable<Draft> Floor(Scene scene)
    {
        var g = scene.Geometry;
        return Drawn(scene, "floor-plan", "floor-plan.title", s =>
        {
            var board = new Board();
            board.Add(PlanDrawing.Of(g, new PlanView(s.PaperPerMetre) { Units = scene.Say.First, Book = scene.Say.Book, SettingOut = scene.Set.SettingOut }).Marks);
            return board;
        }, [new Heading(scene.Say.Say("schedule.openings")), Openings(scene) with { Above = 1 }, .. Finishes(scene), .. Posts.Place(scene)]);
    }

    public static IEnumerable<Draft> Foundation(Scene scene)
    {
        var (say, house) = (scene.Say, scene.House);
        Fact Of(string key, Length? length) => length is { } known ? scene.Fact(key, known, Tag.Given) : new Fact(say.Say(key), say.Say("criteria.not-given"));
        Fact[] facts =
        [
            Of("schedule.trench-width", house.Trench?.Width), Of("schedule.trench-depth", house.Trench?.Depth), Of("schedule.stem-width", house.Stem.Width), Of("schedule.stem-top", house.Stem.Top),
            Of("schedule.outlet", house.Trench?.Outlet), new Fact(say.Say("schedule.stem-material"), say.Material(house.Stem.Material), say.Say(Tag.Given)),
            new Fact(say.Say("schedule.damp-break"), house.Stem.DampBreak is { } damp ? say.Material(damp) : say.Say("criteria.not-given")), Of("schedule.frost", house.Site.FrostDepth),
            .. Posts.Facts(scene),
        ];
        var sleeves = scene.Geometry.Embeds.Where(e => e.Embed.Kind is EmbedKind.Sleeve or EmbedKind.Pipe && e.Height < scene.Geometry.Wall.Base.Metres).OrderBy(e => e.Station).ToArray();
        Block[] beside =
        [
            new Facts(facts, Styles.BodyStrong) { Across = 3 },
            .. sleeves.Length == 0 ? (Block[])[] :
            [
                new Heading(say.Say("foundation.sleeves")),
                new Table([new(""), new(say.Say("foundation.sleeve")) { Grows = 1 }, new(say.Say("foundation.station"), Anchor.End), new(say.Say("foundation.height"), Anchor.End), new(say.Say("foundation.size"), Anchor.End)],
                    [.. sleeves.Select((e, i) => new Row(new Cell((i + 1).ToString(CultureInfo.InvariantCulture)) { Lettering = Styles.BodyStrong }, new Cell(e.Address), scene.Metres(e.Station), scene.Metres(e.Height), e.Embed.Width is { } w ? scene.Cell(w) : new Cell(say.Say("not-known"))))]) { Above = 1, Pad = 0.4 },
            ],
            new Paragraph(say.Say("schedule.foundation-note"), Styles.Small) { Above = 2 },
            .. Posts.Place(scene),
        ];
        return Drawn(scene, "foundation-plan", "foundation-plan.title", s => FoundationPlan.Of(scene.Geometry, s.PaperPerMetre, say.Say).Board, beside);
    }

    public static IEnumerable<Draft> Framing(Scene scene)
    {
        if (scene.Set.Roof is not { } roof)
        {
            return [];
        }

        var poles = RoofPoles.Of(roof);
        return Drawn(scene, "framing-plan", "framing-plan.title", s =>
        {
            var board = new Board();
            board.Add(RoofPlan.Of(scene.Geometry, roof, s.PaperPerMetre, scene.Say.Say).Marks);
            return board;
        }, poles.Count == 0 ? [RoofPoles.NotChecked(scene, RoofPoles.Why(roof))] : [new Heading(scene.Say.Say("roof-plan.schedule")), Poles(scene, roof, poles) with { Above = 1 }, .. Posts.Under(scene), .. Ties(scene), .. Layers(scene)]);
    }

    /// <summary>A drawing as large as a usual scale lets it be, its schedules at its right.</summary>
    private static Draft[] Drawn(Scene scene, string key, string title, Func<DrawingScale, Board> draw, IReadOnlyList<Block> beside)
    {
        var say = scene.Say;
        var paper = scene.Set.Options.Paper.Office();
        var content = SheetFrame.Content(paper);
        var (width, height) = ((content.Width - Beside.Gutter) * Share, content.Height - 2);
        Picture One(DrawingScale s)
        {
            var board = draw(s);
            var box = board.Marks.Bounds();
            Levels.Bar(board, box.Left + 3, box.Bottom + 3, s.PaperPerMetre, say);
            return new Picture(board.Marks, board.Marks.Bounds().Inset(-1));
        }

        var scale = DrawingScale.Fitting(say.First, s => One(s).View is var view && view.Width <= width && view.Height <= height);
        // What does not fit at the right goes on over the page, so that the drawing keeps its size.
        var right = (content.Width - Beside.Gutter) * (1 - Share);
        var (first, rest) = Layout.Flow.Fill([.. beside.Select(b => b.At(right))], right, content.Height, whole: true);
        var head = new SheetHead(key, say.Say(title), Clock.Drawing, say.Say(scale.Label));
        Draft[] sheets = [.. Draft.Flow(head, paper, [new Beside(new Stack([One(scale)]), new Stack(first), Share)], say)];
        return rest.Count == 0 ? sheets : [.. sheets, .. Draft.Flow(head with { Scale = "" }, paper, rest, say, first: sheets.Length + 1)];
    }

    private static Table Openings(Scene scene)
    {
        var say = scene.Say;
        return new Table(
            [
                new(""), new(say.Say("schedule.opening")) { Grows = 1 }, new(say.Say("schedule.rough"), Anchor.End), new(say.Say("schedule.sill"), Anchor.End), new(say.Say("schedule.frame"), Anchor.End),
                new(say.Say("schedule.clear"), Anchor.End), new(say.Say("schedule.header")),
            ],
            [
                .. scene.Geometry.Openings.Select(o => new Row(
                    new Cell(scene.Letter(o)) { Lettering = Styles.BodyStrong },
                    new Cell(o.Opening.Name, Wording.Dotted(say.Say("schedule.kind-" + o.Opening.Kind.ToString().ToLowerInvariant()), o.Opening.Shape == OpeningShape.Rectangular ? "" : say.Say("schedule.shape-" + o.Opening.Shape.ToString().ToLowerInvariant()), o.Opening.Glazing ?? "", o.Opening.Escape ? say.Say("schedule.escape") : "")),
                    Size(scene, o.Opening.Width, o.Opening.Height), scene.Cell(o.Opening.Sill),
                    o.Opening.Frame is { } f ? Size(scene, f.Width, f.Height) : new Cell(say.Say("criteria.not-given")),
                    o.Opening.Clear is { } c ? Size(scene, c.Width, c.Height) : new Cell(say.Say("criteria.not-given")),
                    o.Opening.Header is { } h ? new Cell(say.Say("schedule.header-of", ("n", h.Pieces), ("width", h.Width), ("depth", h.Depth)), say.Say("schedule.header-bears", ("material", new Argument.Material(h.Material)), ("bearing", h.Bearing))) : new Cell(say.Say("schedule.no-header")))),
            ]) { Pad = 0.45, Lettering = Styles.Small };
    }

    private static Cell Size(Scene scene, Length width, Length height) =>
        new($"{scene.Say.One(width)} × {scene.Say.One(height)}", $"{scene.Say.Other(width)} × {scene.Say.Other(height)}");

    private static IEnumerable<Block> Finishes(Scene scene)
    {
        var (say, house) = (scene.Say, scene.House);
        if (house.Finishes.Count == 0 && house.Floor.Layers.Count == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say("schedule.finishes")) { Above = 4 };
        yield return new Table([new(say.Say("schedule.where")), new(say.Say("schedule.what")) { Grows = 1 }],
            [
                .. house.Finishes.Select(f => new Row(new Cell(say.Say(f.Face == Face.Inside ? "schedule.inside" : "schedule.outside")) { Lettering = Styles.SmallStrong },
                    new Cell(f.Coats.Count == 0 ? Wording.Dotted(say.Material(f.Material), f.Depth is { } depth ? say.One(depth) : "") : string.Join(", ", f.Coats.Select(c => Wording.Dotted(say.Material(c.Material ?? f.Material), c.Depth > Length.Zero ? say.One(c.Depth) : "")))))),
                .. house.Floor.Layers.Count == 0 ? (Row[])[] : [new Row(new Cell(say.Say("schedule.floor")) { Lettering = Styles.SmallStrong }, new Cell(string.Join(", ", house.Floor.Layers.Reverse().Select(l => Wording.Dotted(l.Name, l.Depth > Length.Zero ? say.One(l.Depth) : "")))))],
            ]) { Above = 1, Pad = 0.4, Lettering = Styles.Small };
    }

    private static Table Poles(Scene scene, RoofResult roof, IReadOnlyList<RoofPole> poles)
    {
        var say = scene.Say;
        return new Table(
            [new(say.Say(RoofPoles.SideBySide(roof) > 1 ? "roof-plan.pair" : "roof-plan.pole")) { Grows = 1 }, new(say.Say("roof-plan.butt"), Anchor.End), new(say.Say("roof-plan.tip"), Anchor.End), new(say.Say("roof-plan.cut"), Anchor.End), new(say.Say("roof-plan.pitch"), Anchor.End), new(say.Say("roof-plan.mass"), Anchor.End)],
            [
                .. poles.Select(p => new Row(
                    new Cell(p.Number.ToString(CultureInfo.InvariantCulture)) { Lettering = Styles.BodyStrong }, scene.Metres(p.Place.Butt), scene.Metres(p.Place.Tip), scene.Metres(p.CutLength),
                    scene.Cell(new Amount(p.Place.Pitch, Dimension.Angle)), RoofPoles.Mass(scene, p))),
            ]) { Pad = 0.35, Lettering = Styles.Small };
    }

    /// <summary>Bond beam and tees.</summary>
    private static IEnumerable<Block> Ties(Scene scene)
    {
        var (say, house) = (scene.Say, scene.House);
        List<Fact> facts = [];
        if (house.BondBeam is { } beam)
        {
            facts.AddRange([scene.Fact("bond-beam.width", beam.Width, Tag.Given), scene.Fact("bond-beam.depth", beam.Depth, Tag.Given), .. beam.Lap is { } lap ? (Fact[])[scene.Fact("bond-beam.lap", lap, Tag.Given)] : []]);
        }

        if (house.Tees is { } tees)
        {
            facts.AddRange([new Fact(say.Say("bond-beam.tee-count"), say.One(Amount.Count(scene.Geometry.Tees.Count)), say.Say(Tag.Computed)), scene.Fact("bond-beam.leg", tees.Depth, Tag.Given), scene.Fact("bond-beam.bar", tees.Bar, Tag.Given), scene.Fact("bond-beam.spacing", tees.Spacing, Tag.Given)]);
        }

        if (facts.Count > 0)
        {
            yield return new Heading(say.Say("schedule.ties")) { Above = 4 };
            yield return new Facts(facts, Styles.BodyStrong) { Above = 1, Across = 4 };
        }
    }

    private static IEnumerable<Block> Layers(Scene scene)
    {
        if (scene.House.Roof is { } roof)
        {
            yield return new Heading(scene.Say.Say("schedule.layers")) { Above = 4 };
            string[] layers = [.. roof.Deck is { } deck ? (string[])[Wording.Dotted(scene.Say.Say("schedule.deck"), scene.Say.One(deck))] : [], .. roof.Layers.Select(l => Wording.Dotted(l.Name, l.Material is { } made ? scene.Say.Material(made) : "", scene.Say.One(l.Depth)))];
            yield return new Paragraph(layers.Length == 0 ? scene.Say.Say("criteria.not-given") : string.Join(", ", layers), Styles.Body) { Above = 1 };
        }
    }
}
