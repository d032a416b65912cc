using System.Globalization;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.WallTop;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>The tees: one drawn to scale with its measures, and each with its place, lift and boxes to tick.</summary>
internal static class TeeSheet
{
    /// <summary>Room for the words left of the drawing, mm.</summary>
    private const double Labels = 31;

    /// <summary>Share of the width that a drawing may take to have its measures beside it.</summary>
    private const double WidestBeside = 0.62;

    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.WallTop is not { } top || (scene.House.Tees is null && top.Straps.Count == 0))
        {
            return [];
        }

        return Draft.Fewest(Styles.Tapes, numbers => Of(scene, top, numbers));
    }

    /// <summary>The sheets with places along the wall in some size of number.</summary>
    private static IEnumerable<Draft> Of(Scene scene, WallTopResult top, Lettering numbers)
    {
        var say = scene.Say;
        List<Block> blocks =
        [
            new Cautions(say.Say("caution.title"), [say.Say("caution.tee-lifting"), say.Say("caution.platform"), say.Say("caution.tee-under"), say.Say("caution.wet-wall")]),
            .. scene.House.Tees is { } made ? (Block[])[Head(scene, made), .. List(scene, top, numbers)] : [],
            .. Straps(scene, top),
            .. BondBeamSheet.Sideways(scene, top),
        ];
        return Draft.Flow(new SheetHead("tees", say.Say("tees.title"), Clock.Drawing, say.Say("tees.scale")), scene.Portrait, blocks, say);
    }

    /// <summary>The drawing with the measures beside it; under it where it is too wide for that, alone where no tee stands.</summary>
    private static Block Head(Scene scene, Tees made)
    {
        var facts = Measures(scene, made);
        if (scene.Geometry.Tees.Count == 0)
        {
            return facts with { Across = 4 };
        }

        var drawn = Drawn(scene, made);
        var share = drawn.View.Width / (SheetFrame.Content(scene.Portrait).Width - Beside.Gutter);
        return share <= WidestBeside ? new Beside(new Stack([drawn]), new Stack([facts]), share) { Above = 3 } : new Stack([drawn, facts with { Across = 4, Above = 3 }]) { Above = 3 };
    }

    private static Facts Measures(Scene scene, Tees made)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        return new Facts(
        [
            new Fact(say.Say("bond-beam.tee-count"), say.One(Amount.Count(g.Tees.Count)), say.Say(Tag.Computed)),
            scene.Fact("bond-beam.leg", made.Depth, Tag.Given),
            scene.Fact("bond-beam.bar", made.Bar, Tag.Given),
            .. made.Timber is { } timber ? (Fact[])[scene.Fact("tees.timber", timber, Tag.Given)] : [],
            .. made.Bolt is { } bolt ? (Fact[])[scene.Fact("tees.bolt", bolt, Tag.Given)] : [],
            scene.Fact("tees.leg-length", Amount.Metres(made.Depth.Metres + (scene.House.BondBeam?.Depth.Metres ?? 0)), Tag.Computed),
            scene.Fact("bond-beam.spacing", made.Spacing, Tag.Given),
            // All bars lie at one height.
            .. g.Tees is [var first, ..] ? (Fact[])
            [
                scene.Fact("bond-beam.tee-height", Amount.Metres(first.BarHeight), Tag.Computed),
                new Fact(say.Say("tees.lift"), (first.Lift + 1).ToString(CultureInfo.InvariantCulture), say.Say(Tag.Computed)),
            ] : [],
        ], Styles.Heading) { Across = 3 };
    }

    /// <summary>One tee seen from inside the house, between wall top and bar, with the bond beam over it.</summary>
    private static Picture Drawn(Scene scene, Tees made)
    {
        const double Scale = 50;
        var say = scene.Say;
        var board = new Board();
        var timber = (made.Timber?.Metres ?? 0.09) * Scale;
        var (bar, depth) = (made.Bar.Metres * Scale, made.Depth.Metres * Scale);
        var beam = (scene.House.BondBeam?.Depth.Metres ?? 0) * Scale;
        var half = Math.Max(bar / 2 + 10, 24);
        // The wall top is at 0; down is positive on paper.
        board.Add(new Stroke(Outline.Line(-half, 0, half, 0), new Pen(Weight.Heavy)));
        if (beam > 0)
        {
            board.Add(new Stroke(Outline.Rectangle(PaperBox.At(-half, -beam, 2 * half, beam)), new Pen(Weight.Medium)));
        }

        board.Add(new Stroke(Outline.Rectangle(PaperBox.At(-bar / 2, depth - timber, bar, timber)), new Pen(Weight.Bold)));
        board.Add(new Stroke(Outline.Rectangle(PaperBox.At(-timber / 2, -beam, timber, depth + beam)), new Pen(Weight.Bold)));
        if (made.Bolt is { } bolt)
        {
            foreach (var y in (double[])[-beam / 2, depth - timber / 2])
            {
                board.Add(new Fill(Outline.Circle(new PaperPoint(0, y), Math.Max(0.5, bolt.Metres / 2 * Scale))));
            }
        }

        board.Add(new Stroke(Outline.Line(-bar / 2, 0, -bar / 2, depth - timber), new Pen(Weight.Hair, Dash.Dashed)));
        board.Add(new Stroke(Outline.Line(bar / 2, 0, bar / 2, depth - timber), new Pen(Weight.Hair, Dash.Dashed)));
        var x = half + 4;
        board.Add(new Stroke(Outline.Line(x, 0, x, depth), new Pen(Weight.Thin)));
        board.Add(new Stroke(Outline.Line(x - 1.2, 0, x + 1.2, 0), new Pen(Weight.Thin)));
        board.Add(new Stroke(Outline.Line(x - 1.2, depth, x + 1.2, depth), new Pen(Weight.Thin)));
        board.Add(new Text(say.One(made.Depth), new PaperPoint(x + 2.5, depth / 2 + 1), Styles.Body, Anchor.Start));
        var under = depth + 4;
        board.Add(new Stroke(Outline.Line(-bar / 2, under, bar / 2, under), new Pen(Weight.Thin)));
        board.Add(new Stroke(Outline.Line(-bar / 2, under - 1.2, -bar / 2, under + 1.2), new Pen(Weight.Thin)));
        board.Add(new Stroke(Outline.Line(bar / 2, under - 1.2, bar / 2, under + 1.2), new Pen(Weight.Thin)));
        board.Add(new Text(say.One(made.Bar), new PaperPoint(0, under + 4.5), Styles.Body, Anchor.Middle));
        board.Add(new Text(say.Say("tees.wall-top"), new PaperPoint(-half - 3, 1), Styles.Small, Anchor.End));
        if (beam > 0)
        {
            board.Add(new Text(say.Say("tees.beam"), new PaperPoint(-half - 3, -beam / 2 + 1), Styles.Small, Anchor.End));
        }

        board.Add(new Text(say.Say("tees.whole-cob"), new PaperPoint(-half - 3, depth / 2 + 1), Styles.Small, Anchor.End));
        return new Picture(board.Marks, new PaperBox(-half - Labels, -beam - 2, half + 18, under + 6));
    }

    private static IEnumerable<Block> List(Scene scene, WallTopResult top, Lettering numbers)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        if (g.Tees.Count == 0)
        {
            yield return RoofPoles.NotChecked(scene, new Message("papers.bond-beam.no-tees")) with { Above = 1.5 };
            yield break;
        }

        yield return new Table(
            [
                new(say.Say("bond-beam.tee")), new(say.Say("tees.pole")), new(say.Say("bond-beam.tee-station"), Anchor.End), new(""), new(say.Say("bond-beam.tee-next"), Anchor.End), new(""), new(say.Say("bond-beam.uplift"), Anchor.End), new(""), new(say.Say("bond-beam.held"), Anchor.End), new(""),
                new("") { Grows = 1 }, new(say.Say("bond-beam.set")), new(say.Say("bond-beam.through")), new(say.Say("bond-beam.fixed")),
            ],
            [
                .. g.Tees.Select(t => new Row(
                [
                    new Cell(t.Number.ToString(CultureInfo.InvariantCulture)) { Lettering = Styles.BodyStrong },
                    new Cell(t.Pole is { } pole ? Ids.Number(pole) : ""),
                    .. scene.Pair(Amount.Metres(t.Station), numbers),
                    .. scene.Pair(Amount.Metres(t.ToNext), numbers),
                    .. Line(scene, top.Tees.FirstOrDefault(c => c.Key == "tee-uplift" && c.Subject == FormattableString.Invariant($"tee {t.Number}"))),
                    new Cell("") { Tick = true },
                    new Cell("") { Tick = true },
                    new Cell("") { Tick = true },
                ])),
            ]) { Above = 2, Pad = 0.6 };
        foreach (var why in top.Tees.Select(t => t.Check.NotChecked).OfType<Message>().Distinct())
        {
            yield return RoofPoles.NotChecked(scene, why) with { Above = 2 };
        }

        yield return new Paragraph(say.Say("tees.note"), Styles.Small) { Above = 1.5 };
    }

    /// <summary>Straps that hold down: what is described of each, what comes to it, and what its cob and it may carry.</summary>
    private static IEnumerable<Block> Straps(Scene scene, WallTopResult top)
    {
        var say = scene.Say;
        if (top.Straps.Count == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say("tees.straps")) { Above = 3 };
        yield return new Table(
            [
                new(say.Say("tees.strap")) { Grows = 1 }, new(say.Say("bond-beam.tee-station"), Anchor.End),
                new(say.Say("bond-beam.uplift"), Anchor.End), new(say.Say("bond-beam.held"), Anchor.End), new(""), new(say.Say("tees.strap-pull"), Anchor.End), new(""), new(say.Say("bond-beam.fixed")),
            ],
            [
                .. scene.Geometry.Embeds.Where(e => e.Embed.Kind == EmbedKind.Strap).Select(strap => new Row(
                [
                    new Cell(strap.Address, strap.Embed.Anchor is { } anchor ? say.Say("tees.strap-anchor", ("depth", anchor.Depth), ("bar", anchor.Bar)) : "") { Lettering = Styles.BodyStrong },
                    scene.Metres(strap.Station),
                    .. Uplift(scene, Check(top, strap.Address, "strap-uplift")),
                    .. Check(top, strap.Address, "strap-pull") is { Check.Value: { } pull } && strap.Embed.Anchor?.Pull is not null ? (Cell[])[scene.Cell(pull.Capacity), Holds(scene, pull)] : ["", new Cell(say.Say("not-checked")) { Lettering = Styles.BodyStrong }],
                    new Cell("") { Tick = true },
                ])),
            ]) { Above = 1, Pad = 0.4 };
        foreach (var why in top.Straps.Select(t => t.Check.NotChecked).OfType<Message>().Distinct())
        {
            yield return RoofPoles.NotChecked(scene, why) with { Above = 2 };
        }
    }

    private static CheckedMember? Check(WallTopResult top, string subject, string key) => top.Straps.FirstOrDefault(c => c.Key == key && c.Subject == subject);

    private static Cell Holds(Scene scene, MemberCheck check) =>
        check.Use > 1 ? new Cell(scene.Say.Say("raising.short")) { Lettering = Styles.BodyStrong } : new Cell(scene.Say.Say("tees.holds"));

    /// <summary>The same with both units in one line.</summary>
    private static Cell[] Line(Scene scene, CheckedMember? tee) => tee?.Check.Value is { } check
        ? [.. scene.Pair(check.Demand, Styles.Body), .. scene.Pair(check.Capacity, Styles.Body), Holds(scene, check)]
        : ["", "", "", "", new Cell(scene.Say.Say("not-checked")) { Lettering = Styles.BodyStrong }];

    private static Cell[] Uplift(Scene scene, CheckedMember? tee) => tee?.Check.Value is { } check
        ? [scene.Cell(check.Demand), scene.Cell(check.Capacity), Holds(scene, check)]
        : ["", "", new Cell(scene.Say.Say("not-checked")) { Lettering = Styles.BodyStrong }];
}
