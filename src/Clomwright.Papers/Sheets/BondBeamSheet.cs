using System.Globalization;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.WallTop;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>What ties the roof to the wall: pieces of the bond beam with their mitres, laps and bolts, and the way sideways forces go down.</summary>
internal static class BondBeamSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        var house = scene.House;
        if (scene.Set.WallTop is not { } top || house.BondBeam is null)
        {
            return [];
        }

        return Draft.Fewest([Styles.Tape, Styles.BodyStrong], cut => Of(scene, top, cut));
    }

    private static IEnumerable<Draft> Of(Scene scene, WallTopResult top, Lettering cut)
    {
        var (say, house) = (scene.Say, scene.House);
        List<Block> blocks =
        [
            .. house.BondBeam is { } beam ? Beam(scene, beam, top, cut) : [],
            .. house.Tees is null ? Sideways(scene, top) : [],
            new Cautions(say.Say("caution.title"), [say.Say("caution.lifting"), say.Say("caution.free-wall"), say.Say("caution.wet-wall"), say.Say("caution.platform")]) { Above = 4 },
        ];
        return Draft.Flow(new SheetHead("bond-beam", say.Say("bond-beam.title")), scene.Portrait, blocks, say);
    }

    private static IEnumerable<Block> Beam(Scene scene, BondBeam beam, WallTopResult top, Lettering cut)
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
            .. beam.Lap is { } lap ? (Fact[])[scene.Fact("bond-beam.lap", lap, Tag.Given)] : [],
            .. beam.Bolt is { } bolt ? (Fact[])[new Fact(say.Say("bond-beam.bolts"), say.Say("bond-beam.bolts-of", ("count", beam.Bolts), ("bolt", bolt)), say.Say(Tag.Given))] : [],
            scene.Fact("bond-beam.to-buy", Amount.Metres(top.BeamPieces.Sum(p => p.CutTo)), Tag.Computed),
        ], Styles.Heading) { Above = 1.5 };
        yield return new Table(
            [
                new(say.Say("bond-beam.piece")), new(say.Say("bond-beam.from"), Anchor.End), new(""), new(say.Say("bond-beam.chord"), Anchor.End), new(""),
                new(say.Say("bond-beam.longest"), Anchor.End), new(""), new(say.Say("bond-beam.cut"), Anchor.End), new(""), new(say.Say("bond-beam.mitre-start"), Anchor.End), new(say.Say("bond-beam.mitre-end"), Anchor.End), new(say.Say("bond-beam.laid")),
            ],
            [
                .. top.BeamPieces.Select((p, i) => new Row(
                [
                    new Cell(p.Number.ToString(CultureInfo.InvariantCulture)) { Tick = true, Lettering = Styles.BodyStrong },
                    .. scene.Pair(Amount.Metres(p.From), Styles.Body),
                    .. scene.Pair(Amount.Metres(p.Chord), cut),
                    .. scene.Pair(Amount.Metres(p.Longest), Styles.Body),
                    .. beam.Lap is null ? (Cell[])[new Cell(say.Say("not-checked")), new Cell("")] : scene.Pair(Amount.Metres(p.CutTo), cut),
                    new Cell(say.One(new Amount(Before(top, i).Mitre, Dimension.Angle))),
                    new Cell(say.One(new Amount(p.Mitre, Dimension.Angle))),
                    new Cell("") { Tick = true },
                ])),
            ]) { Above = 2 };
        yield return new Paragraph(say.Say("bond-beam.pieces-note"), Styles.Small) { Above = 1.5 };
    }

    private static BeamPiece Before(WallTopResult top, int index) => top.BeamPieces[(index + top.BeamPieces.Count - 1) % top.BeamPieces.Count];

    /// <summary>What holds sideways, one line for each joint on the way down.</summary>
    internal static IEnumerable<Block> Sideways(Scene scene, WallTopResult top)
    {
        var say = scene.Say;
        if (top.Lateral.Count == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say("bond-beam.sideways")) { Above = 5 };
        yield return new Table(
            [new(say.Say("bond-beam.joint")) { Grows = 1 }, new(say.Say("bond-beam.asked"), Anchor.End), new(say.Say("bond-beam.there"), Anchor.End), new("")],
            [
                .. top.Lateral.Select(c => new Row(
                [
                    new Cell(say.Say("bond-beam." + c.Subject.Replace(' ', '-'))) { Lettering = Styles.BodyStrong },
                    .. c.Check.Value is { } check
                        ? (Cell[])[scene.Cell(check.Demand), scene.Cell(check.Capacity), Within(scene, check)]
                        : ["", "", new Cell(say.Say("not-checked")) { Lettering = Styles.BodyStrong }],
                ])),
            ]) { Above = 1.5 };
        foreach (var why in top.Lateral.Select(c => c.Check.NotChecked).OfType<Message>().Distinct())
        {
            yield return RoofPoles.NotChecked(scene, why) with { Above = 2 };
        }

        yield return new Paragraph(say.Say("bond-beam.sideways-note"), Styles.Small) { Above = 1.5 };
    }

    internal static Cell Within(Scene scene, MemberCheck check) =>
        check.Use > 1 ? new Cell(scene.Say.Say("raising.short")) { Lettering = Styles.BodyStrong } : new Cell(scene.Say.Say("raising.within"));
}
