using Clomwright.Analysis.Drying;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Geometry.Joinery;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>One opening for the carpenter and the crew: sizes, what to cut, in which order to set it, and who checks.</summary>
internal static class OpeningCard
{
    private const double DrawingWidth = 86;

    /// <summary>How tall the drawing may be, mm, and how large the lengths to cut to are written: rather a smaller drawing than a second sheet with the last lines, and rather that than smaller figures.</summary>
    private static readonly (double Height, Lettering Cut)[] Ways = [(132, Styles.Reading), (80, Styles.Reading), (80, Styles.BodyStrong)];

    public static IEnumerable<Draft> Of(Scene scene, OpeningPlace place) => Draft.Fewest(Ways, way => Of(scene, place, way.Height, way.Cut));

    private static IEnumerable<Draft> Of(Scene scene, OpeningPlace place, double height, Lettering cut)
    {
        var say = scene.Say;
        var scale = DrawingScale.Fitting(say.First, s =>
        {
            var box = Drawn(scene, place, s).Bounds();
            return box.Width <= DrawingWidth && box.Height <= height;
        });
        var marks = Drawn(scene, place, scale);
        var title = say.Say("opening.title", ("letter", scene.Letter(place)), ("name", place.Opening.Name));
        var head = new SheetHead(Ids.Opening(place.Opening.Name), title, Clock.Drawing, say.Say(scale.Label));
        List<Block> blocks =
        [
            new Beside(
                new Stack([new Picture(marks, marks.Bounds().Inset(-0.5)), .. Settling(scene, place), .. HeaderBearing.Of(scene, place)]),
                new Stack([Sizes(scene, place), .. Where(scene, place), .. Pieces(scene, place, cut)]),
                DrawingWidth / (SheetFrame.Content(scene.Portrait).Width - 6)),
            Cautions(scene, place),
            .. Steps(scene, place),
            new Facts([.. Checks(place).Select(k => new Fact(say.Say(k), ""))], Styles.Body) { Above = 2.5 },
        ];
        return Draft.Flow(head, scene.Portrait, blocks, say);
    }

    private static Sequence<Mark> Drawn(Scene scene, OpeningPlace place, DrawingScale scale) =>
        new OpeningDrawing(scene.Geometry, place, scale.PaperPerMetre, scene.Say.First, scene.Say.Book).Draw();

    private static Table Sizes(Scene scene, OpeningPlace place)
    {
        var (say, o) = (scene.Say, place.Opening);
        List<Row> rows =
        [
            Size(scene, "opening.rough", $"{say.One(o.Width)} × {say.One(o.Height)}", $"{say.Other(o.Width)} × {say.Other(o.Height)}", Tag.Given),
        ];
        if (o.Shape == OpeningShape.Arched && o.Rise is { } rise)
        {
            rows.Add(Size(scene, "opening.rise", rise, Tag.Given));
        }

        if (o.Frame is { } frame)
        {
            rows.Add(Size(scene, "opening.frame", $"{say.One(frame.Width)} × {say.One(frame.Height)}", $"{say.Other(frame.Width)} × {say.Other(frame.Height)}", Tag.Given));
            rows.Add(Size(scene, "opening.frame-depth", frame.Depth, Tag.Given));
            rows.Add(Size(scene, "opening.over-frame", o.Height - frame.Height, Tag.Computed));
            var gap = SettlementGap.Over(frame, scene.House.Mix);
            rows.Add(gap.Value is { } g
                ? Size(scene, "opening.gap", Amount.Metres(g), gap.Tag)
                : Forecast(scene, place)?.Gap.High is { } most
                    ? Size(scene, "opening.gap", say.One(Amount.Metres(most)), Wording.Dotted(say.Other(Amount.Metres(most)), say.Say("opening.gap-forecast-most")))
                    : new Row(say.Say("opening.gap"), new Cell(say.Say("not-checked")) { Lettering = Styles.BodyStrong }, new Cell(say.Say("opening.gap-unknown")) { Lettering = Styles.Small }));
        }

        if (place.Header is { } header)
        {
            rows.Add(Size(scene, header.ProudInside > 0 ? "opening.header-proud" : "opening.header-buried", Amount.Metres(Math.Abs(header.ProudInside)), Tag.Computed));
        }

        rows.Add(Size(scene, o.Kind == OpeningKind.Glass ? "opening.bow-inside-pane" : "opening.bow-inside", Amount.Metres(place.BowInside), Tag.Computed));
        rows.Add(Size(scene, "opening.bow-outside", Amount.Metres(place.BowOutside), Tag.Computed));
        return new Table([new(say.Say("kind." + o.Kind.ToString().ToLowerInvariant())) { Grows = 1 }, new("", Anchor.End), new("")], rows) { Pad = 0.5 };
    }

    private static FrameGap? Forecast(Scene scene, OpeningPlace place) =>
        scene.Set.Drying is { Value: { } drying } ? drying.Gaps.FirstOrDefault(g => g.Opening == place.Opening.Name) : null;

    /// <summary>What the forecast of drying says: how far the cob beside the frame still comes down once it is bridged, and when that may be.</summary>
    private static IEnumerable<Block> Settling(Scene scene, OpeningPlace place)
    {
        var say = scene.Say;
        if (Forecast(scene, place) is not { } gap)
        {
            yield break;
        }

        // A gap that is written is held against it.
        var isShort = place.Opening.Frame is { } frame && SettlementGap.Over(frame, scene.House.Mix).Value is { } left && gap.Gap.High > left;
        string Band(Func<Amount, string> text) => gap.Gap is { Low: { } low, High: { } high } ? $"{text(Amount.Metres(low))} – {text(Amount.Metres(high))}" : say.Say("not-known");
        yield return new Facts(
        [
            new Fact(say.Say("opening.gap-forecast"), Band(say.One), Wording.Dotted(gap.Gap.High is null ? "" : Band(say.Other), say.Say("drying.forecast"), isShort ? say.Say("opening.gap-short") : "")),
            new Fact(say.Say("opening.bridge"), say.Say("drying.days", ("days", say.Days(gap.BridgeAfter.Low, gap.BridgeAfter.High))), say.Say("opening.bridge-note")),
        ], Styles.BodyStrong) { Above = 4, Across = 2 };
    }

    private static Row Size(Scene scene, string key, string first, string note) =>
        new(scene.Say.Say(key), new Cell(first) { Lettering = Styles.BodyStrong }, new Cell(note) { Lettering = Styles.Small });

    private static Row Size(Scene scene, string key, Amount amount, Tag tag) => Size(scene, key, scene.Say.One(amount), scene.Say.Other(amount), tag);

    private static Row Size(Scene scene, string key, string first, string second, Tag tag) =>
        new(scene.Say.Say(key), new Cell(first) { Lettering = Styles.BodyStrong }, new Cell(Wording.Dotted(second, scene.Say.Say(tag))) { Lettering = Styles.Small });

    private static IEnumerable<Block> Where(Scene scene, OpeningPlace place)
    {
        var say = scene.Say;
        var (curve, wall) = (scene.Geometry.Curve, scene.Geometry.Wall);
        var outside = curve.OffsetArc(place.Outside.From, place.Outside.To, wall.OutsideOffset(wall.Base.Metres));
        var straight = place.Opening.Splay is { Inside.Radians: 0, Outside.Radians: 0 };
        yield return new Paragraph(
            say.Say(straight ? "opening.where" : "opening.where-splayed", ("station", Amount.Metres(place.Station)), ("bearing", new Amount(place.Bearing, Dimension.Angle)), ("inside", Amount.Metres(place.Inside.Width)), ("outside", Amount.Metres(outside))) + " " + (straight ? say.Say("opening.no-splay") : string.Join(" ", Enum.GetValues<Face>().Select(f => Splayed(scene, place, f)).OfType<string>())),
            Styles.Small) { Above = 2 };
    }

    /// <summary>How far each jamb opens to a face, and how wide the hole is there; left and right as seen from inside.</summary>
    private static string? Splayed(Scene scene, OpeningPlace place, Face face)
    {
        var say = scene.Say;
        if (Splays.Of(scene.Geometry, place, face) is not { } opens)
        {
            return null;
        }

        var (left, right) = (say.Say(Amount.Metres(opens.Before)), say.Say(Amount.Metres(opens.After)));
        return say.Say("opening.splay-" + face.ToString().ToLowerInvariant(),
            ("angle", (Amount)(face == Face.Inside ? place.Opening.Splay.Inside : place.Opening.Splay.Outside)), ("opens", left == right ? left : say.Say("opening.splay-sides", ("left", left), ("right", right))),
            ("from", say.Say(place.Opening.Frame is null ? "opening.splay-from-middle" : "opening.splay-from-frame")), ("width", Amount.Metres(opens.Width)), ("height", Amount.Metres(opens.Height)));
    }

    private static IEnumerable<Block> Pieces(Scene scene, OpeningPlace place, Lettering cut)
    {
        var say = scene.Say;
        var pieces = OpeningPieces.Of(place);
        yield return new Heading(say.Say("opening.pieces")) { Above = 3 };
        if (pieces.Count == 0)
        {
            yield return new Paragraph(say.Say("opening.no-pieces"), Styles.Body) { Above = 1.5 };
            yield break;
        }

        yield return new Table(
            [new(""), new(say.Say("opening.piece")) { Grows = 1 }, new(say.Say("opening.cut-length"), Anchor.End), new("")],
            [
                .. pieces.Select(p => new Row(
                [
                    new Cell(say.Say("opening.count", ("n", p.Count))) { Tick = true, Lettering = Styles.BodyStrong },
                    Piece(scene, p),
                    .. scene.Pair(Amount.Metres(p.CutLength), cut),
                ])),
            ]) { Above = 1.5, Pad = 0.35 };
        if (place.Opening.Frame is null)
        {
            yield return new Paragraph(say.Say("opening.frame-unknown"), Styles.BodyStrong) { Above = 1.5 };
        }

        yield return new Paragraph(say.Say("opening.pieces-note"), Styles.Small) { Above = 1 };
    }

    /// <summary>The piece and, under it, its section in both systems.</summary>
    private static Cell Piece(Scene scene, OpeningPiece piece)
    {
        var say = scene.Say;
        string Sides(UnitSystem units) => string.Join(" × ", ((double?[])[piece.Thickness, piece.Width]).OfType<double>().Select(s => Wording.Unbroken(say.Book.One(Amount.Metres(s), units))));
        var section = piece.Width is null ? say.Say("opening.batten") : Wording.Dotted(Sides(say.First), Sides(say.Second), say.Say(Tag.Given));
        return new Cell(say.Say("piece." + piece.Kind.ToString().ToLowerInvariant()), section);
    }

    private static IEnumerable<Block> Steps(Scene scene, OpeningPlace place)
    {
        var (say, o) = (scene.Say, place.Opening);
        List<string> keys = [];
        if (o.Kind == OpeningKind.Glass)
        {
            keys.AddRange(["step.glass-bed", "step.glass-size", "step.glass-edge"]);
        }
        else if (o.Shape != OpeningShape.Rectangular || o.Header is null)
        {
            keys.AddRange(["step.form", "step.form-out"]);
        }

        if (o.Frame is { } frame && o.Kind != OpeningKind.Glass)
        {
            keys.AddRange(frame.First
                ? [o.Kind == OpeningKind.Door ? "step.set-door" : "step.set-window", "step.brace", "step.keys", "step.slip", "step.deadmen", "step.gap"]
                : ["step.hole-first", "step.deadmen", "step.fit-later", "step.slip", "step.gap"]);
        }
        else if (o.Frame is null && o.Kind != OpeningKind.Glass)
        {
            keys.Add("step.no-frame");
        }

        if (o.Header is not null)
        {
            keys.AddRange(o.Header.CrossPad ? ["step.dry-bearing", "step.cross-pad", "step.header"] : ["step.dry-bearing", "step.header"]);
        }

        if (o.Kind != OpeningKind.Door)
        {
            keys.Add("step.sill");
        }

        if (o.Header is not null || o is { Frame.First: true, Kind: not OpeningKind.Glass })
        {
            keys.Add(o.Header is not null ? "step.leave-brace" : "step.leave-brace-frame");
        }

        yield return new Heading(say.Say(o.Frame is null || o.Kind == OpeningKind.Glass ? "opening.steps" : o.Frame.First ? "opening.steps-frame" : "opening.steps-hole")) { Above = 3 };
        yield return new Table([new("") { Grows = 1 }], [.. keys.Select((k, i) => new Row(new Cell($"{i + 1}  {say.Say(k)}") { Tick = true }))]) { Above = 1, Pad = 0.45 };
        yield return new Paragraph(say.Say("opening.practice"), Styles.Small) { Above = 1 };
    }

    private static IEnumerable<string> Checks(OpeningPlace place) =>
    [
        "opening.check-plumb", .. place.Opening.Shape == OpeningShape.Rectangular ? (string[])["opening.check-square"] : [],
        .. place.Header is null ? (string[])[] : ["opening.check-header"], "opening.check-by",
    ];

    private static Cautions Cautions(Scene scene, OpeningPlace place)
    {
        var say = scene.Say;
        List<string> items = place.Opening.Frame is null ? [] : [say.Say("caution.brace")];
        if (place.Header is null && place.Opening.Kind != OpeningKind.Glass)
        {
            items.Add(say.Say("caution.arch"));
        }

        if (place.Header is not null)
        {
            items.Add(say.Say("caution.header"));
        }

        if (place.Opening.Kind is OpeningKind.Glass or OpeningKind.Fixed or OpeningKind.Opening)
        {
            items.Add(say.Say("caution.glass"));
        }

        if (place.Opening.Escape)
        {
            items.Add(say.Say("caution.escape"));
        }

        return new Cautions(say.Say("caution.title"), items) { Above = 4 };
    }
}
