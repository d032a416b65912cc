using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>A card for each pole, to cut apart and tie to it.</summary>
internal static class PoleCards
{
    private const double StickLength = 80;
    private const double StickHeight = 9;

    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Roof is not { } roof)
        {
            return [];
        }

        var say = scene.Say;
        var poles = RoofPoles.Of(roof);
        Block[] blocks = poles.Count == 0
            ? [RoofPoles.NotChecked(scene, RoofPoles.Why(roof))]
            : [
                new Paragraph(say.Say("pole-cards.note") + " " + PoleSeats.Shared(scene, poles), Styles.Small),
                .. RoofPoles.SideBySide(roof) > 1 ? (Block[])[new Paragraph(say.Say("pole-cards.pairs"), Styles.Body) { Above = 1 }] : [],
                new Cautions(say.Say("caution.title"), [say.Say("caution.lifting")]) { Above = 2 },
                new Cards([.. poles.SelectMany(p => RoofPoles.SideBySide(roof) > 1 ? (Stack[])[Card(scene, p, poles, "left"), Card(scene, p, poles, "right")] : [Card(scene, p, poles, null)])]),
            ];
        return Draft.Flow(new SheetHead("pole-cards", say.Say("pole-cards.title")), scene.Portrait, blocks, say);
    }

    private static Stack Card(Scene scene, RoofPole pole, IReadOnlyList<RoofPole> poles, string? side)
    {
        var say = scene.Say;
        var carries = pole.Card is null ? null : poles.FirstOrDefault(p => p.Card?.RestsOn == pole.Number);
        var lies = pole.Card is null
            ? Wording.Dotted(say.Say("pole-cards.rafter"), PoleSeats.Flat(scene), PoleSeats.Tip(scene, poles, pole))
            : say.Say(side is null ? "pole-cards.lies" : "pole-cards.lies-pair", ("on", pole.Card.RestsOn), ("carries", carries?.Number ?? 0));
        var board = new Board();
        Stick(board, say, pole);
        return new Stack(
        [
            new Table(
                [new(""), new("", Anchor.End) { Grows = 1 }],
                [
                    new Row(
                        new Cell(say.Say(side is null ? "pole-cards.pole" : "pole-cards.pole-" + side, ("n", pole.Number))) { Lettering = Styles.Reading },
                        new Cell(pole.People is { } people ? say.Say("pole-cards.people", ("n", people)) : say.Say("not-checked"), say.Say(pole.People is null ? "pole-cards.no-people" : "pole-cards.planning")) { Lettering = Styles.BodyStrong }),
                ]) { Pad = 0.2 },
            new Paragraph(lies, Styles.Body) { Above = 0.5 },
            new Picture(board.Marks, PaperBox.At(0, 0, StickLength, StickHeight)) { Left = true, Above = 1 },
            new Table(
                [new("") { Grows = 1 }, new("", Anchor.End), new("", Anchor.End)],
                [
                    .. pole.Marks.Select(m => Line(scene, "pole-cards.mark-" + m.Key, Amount.Metres(m.At), Styles.Heading, pole.Card is null ? "" : m.Key == "seat" ? PoleSeats.Flat(scene) : PoleSeats.Notch(scene, pole))),
                    Line(scene, "pole-cards.cut", Amount.Metres(pole.CutLength), Styles.Heading),
                    .. pole.Place.UpperRise is { } rise ? (Row[])[Line(scene, "pole-cards.over-beam", Amount.Metres(rise), Styles.BodyStrong)] : [],
                    Line(scene, "pole-cards.station", Amount.Metres(RoofPoles.Station(scene, pole)), Styles.BodyStrong),
                    pole.Mass is { } kg
                        ? Line(scene, "pole-cards.mass", new Amount(kg, Dimension.Mass), Styles.BodyStrong)
                        : new Row(new Cell(say.Say("pole-cards.mass")), new Cell(say.Say("not-checked")), new Cell("")),
                ]) { Pad = 0.35, Above = 1 },
        ]);
    }

    private static Row Line(Scene scene, string key, Amount amount, Lettering lettering, string note = "") => new([new Cell(scene.Say.Say(key), note), .. scene.Pair(amount, lettering)]);

    /// <summary>The pole lying down, butt to the left, with its marks where they are along it; their signs are moved apart where they would touch.</summary>
    private static void Stick(Board board, Wording say, RoofPole pole)
    {
        const double top = 4.6;
        var scale = StickLength / pole.CutLength;
        var (butt, tip) = (1.6, 1.6 * pole.Place.Tip / pole.Place.Butt);
        board.Add(new Stroke(Outline.Polygon(new(0, top + 1.8 - butt), new(StickLength, top + 1.8 - tip), new(StickLength, top + 1.8 + tip), new(0, top + 1.8 + butt)), new Pen(Weight.Medium)));
        var signs = pole.Marks.Select(m => say.Say("pole-cards.sign-" + m.Key)).ToArray();
        double[] sizes = [.. signs.Select(s => Styles.SmallStrong.WidthOf(s) + 2)];
        var middles = Spreading.Apart([.. pole.Marks.Select(m => m.At * scale)], sizes, 0, StickLength);
        for (var i = 0; i < signs.Length; i++)
        {
            var at = pole.Marks[i].At * scale;
            board.Line(at, top - 0.4, at, top + 4, Weight.Medium);
            board.Add(new Stroke(Outline.Line(at, top - 0.4, middles[i], 2.6), new Pen(Weight.Hair)));
            board.Say(signs[i], middles[i], 2.2, Styles.SmallStrong, Anchor.Middle);
        }
    }
}
