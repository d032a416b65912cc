using System.Globalization;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.WallTop;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>What ties the roof to the wall: pieces of the bond beam with their mitres, and the tees.</summary>
internal static class BondBeamSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        var house = scene.House;
        if (scene.Set.WallTop is not { } top || house.BondBeam is null && house.Tees is null)
        {
            return [];
        }

        var say = scene.Say;
        List<Block> blocks =
        [
            .. house.BondBeam is { } beam ? Beam(scene, beam, top) : [],
            .. house.Tees is { } tees ? Tees(scene, tees, top) : [],
            new Cautions(say.Say("caution.title"), [say.Say("caution.free-wall"), say.Say("caution.wet-wall"), say.Say("caution.platform")]) { Above = 4 },
        ];
        return Draft.Flow(new SheetHead("bond-beam", say.Say("bond-beam.title")), scene.Portrait, blocks, say);
    }

    private static IEnumerable<Block> Beam(Scene scene, BondBeam beam, WallTopResult top)
    {
        var say = scene.Say;
        yield return new Heading(say.Say("bond-beam.pieces"));
        if (top.BeamPieces.Count == 0)
        {
            yield return RoofPoles.NotChecked(scene, new Message("papers.bond-beam.no-pieces")) with { Above = 1.5 };
            yield break;
        }

        yield return new Facts(
        [
            new Fact(say.Say("bond-beam.count"), say.One(Amount.Count(top.BeamPieces.Count)), say.Say(Tag.Computed)),
            scene.Fact("bond-beam.width", beam.Width, Tag.Given),
            scene.Fact("bond-beam.depth", beam.Depth, Tag.Given),
            scene.Fact("bond-beam.to-buy", Amount.Metres(top.BeamPieces.Select((p, i) => Longest(beam, top, i)).Sum()), Tag.Computed),
        ], Styles.Heading) { Above = 1.5 };
        yield return new Table(
            [
                new(say.Say("bond-beam.piece")), new(say.Say("bond-beam.from"), Anchor.End), new(say.Say("bond-beam.to"), Anchor.End), new(say.Say("bond-beam.chord"), Anchor.End),
                new(say.Say("bond-beam.longest"), Anchor.End), new(say.Say("bond-beam.mitre-start"), Anchor.End), new(say.Say("bond-beam.mitre-end"), Anchor.End), new(say.Say("bond-beam.laid")),
            ],
            [
                .. top.BeamPieces.Select((p, i) => new Row(
                    new Cell(p.Number.ToString(CultureInfo.InvariantCulture)) { Tick = true, Lettering = Styles.BodyStrong },
                    scene.Metres(p.From),
                    scene.Metres(p.To),
                    scene.Metres(p.Chord) with { Lettering = Styles.BodyStrong },
                    scene.Metres(Longest(beam, top, i)),
                    new Cell(say.One(new Amount(Before(top, i).Mitre, Dimension.Angle))),
                    new Cell(say.One(new Amount(p.Mitre, Dimension.Angle))),
                    new Cell("") { Tick = true })),
            ]) { Above = 2 };
        yield return new Paragraph(say.Say("bond-beam.pieces-note"), Styles.Small) { Above = 1.5 };
    }

    private static BeamPiece Before(WallTopResult top, int index) => top.BeamPieces[(index + top.BeamPieces.Count - 1) % top.BeamPieces.Count];

    /// <summary>The longer edge of a piece: its middle line and what both mitres add on that side.</summary>
    private static double Longest(BondBeam beam, WallTopResult top, int index) =>
        top.BeamPieces[index].Chord + beam.Width.Metres / 2 * Math.Abs(Math.Tan(Before(top, index).Mitre) + Math.Tan(top.BeamPieces[index].Mitre));

    private static IEnumerable<Block> Tees(Scene scene, Tees made, WallTopResult top)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        yield return new Heading(say.Say("bond-beam.tees")) { Above = 5 };
        yield return new Facts(
        [
            scene.Fact("bond-beam.bar", made.Bar, Tag.Given),
            scene.Fact("bond-beam.leg", made.Depth, Tag.Given),
            scene.Fact("bond-beam.spacing", made.Spacing, Tag.Given),
            new Fact(say.Say("bond-beam.tee-count"), say.One(Amount.Count(g.Tees.Count)), say.Say(Tag.Computed)),
        ], Styles.Heading) { Above = 1.5 };
        if (g.Tees.Count == 0)
        {
            yield return RoofPoles.NotChecked(scene, new Message("papers.bond-beam.no-tees")) with { Above = 1.5 };
            yield break;
        }

        yield return new Table(
            [
                new(say.Say("bond-beam.tee")), new(say.Say("bond-beam.tee-station"), Anchor.End), new(say.Say("bond-beam.tee-next"), Anchor.End), new(say.Say("bond-beam.tee-height"), Anchor.End),
                new(say.Say("bond-beam.uplift"), Anchor.End), new(say.Say("bond-beam.held"), Anchor.End), new("") { Grows = 1 }, new(say.Say("bond-beam.set")), new(say.Say("bond-beam.through")), new(say.Say("bond-beam.fixed")),
            ],
            [
                .. g.Tees.Select((t, i) => new Row(
                [
                    new Cell(t.Number.ToString(CultureInfo.InvariantCulture)) { Lettering = Styles.BodyStrong },
                    scene.Metres(t.Station),
                    scene.Metres(g.Tees.Count == 1 ? g.Curve.Length : g.Curve.Wrap(g.Tees[(i + 1) % g.Tees.Count].Station - t.Station)),
                    scene.Metres(t.BarHeight),
                    .. Uplift(scene, top.Tees.FirstOrDefault(c => c.Subject == FormattableString.Invariant($"tee {t.Number}"))),
                    new Cell("") { Tick = true },
                    new Cell("") { Tick = true },
                    new Cell("") { Tick = true },
                ])),
            ]) { Above = 2 };
        foreach (var why in top.Tees.Select(t => t.Check.NotChecked).OfType<Message>().Distinct())
        {
            yield return RoofPoles.NotChecked(scene, why) with { Above = 2 };
        }

        yield return new Paragraph(say.Say("bond-beam.tees-note"), Styles.Small) { Above = 1.5 };
    }

    private static Cell[] Uplift(Scene scene, CheckedMember? tee) => tee?.Check.Value is { } check
        ?
        [
            scene.Cell(check.Demand), scene.Cell(check.Capacity),
            check.Use > 1 ? new Cell(scene.Say.Say("raising.short")) { Lettering = Styles.BodyStrong } : new Cell(scene.Say.Say("raising.within")),
        ]
        : ["", "", new Cell(scene.Say.Say("not-checked")) { Lettering = Styles.BodyStrong }];
}
