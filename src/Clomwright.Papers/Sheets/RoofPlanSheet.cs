using System.Globalization;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>The framing plan of the roof, and the schedule of its poles.</summary>
internal static class RoofPlanSheet
{
    /// <summary>Share of the sheet's width up to which the plan has the deck beside it.</summary>
    private const double WidestBeside = 0.62;

    /// <summary>Numbers as large as leaves one sheet, and what is said of pairs.</summary>
    private static readonly (Lettering Numbers, Lettering Pairs)[] Ways = [(Styles.Tape, Styles.Body), (Styles.Tape, Styles.Small), (Styles.BodyStrong, Styles.Body), (Styles.BodyStrong, Styles.Small)];

    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Roof is not { } roof)
        {
            return [];
        }

        var say = scene.Say;
        var content = SheetFrame.Content(scene.Portrait);
        var scale = DrawingScale.Fitting(say.First, s =>
        {
            var view = RoofPlan.Of(scene.Geometry, roof, s.PaperPerMetre, say.Say).View;
            return view.Width <= content.Width && view.Height <= content.Height * 0.42;
        });
        var (marks, box) = RoofPlan.Of(scene.Geometry, roof, scale.PaperPerMetre, say.Say);
        var poles = RoofPoles.Of(roof);
        var head = new SheetHead("roof-plan", say.Say("roof-plan.title"), Clock.Drawing, say.Say(scale.Label));
        var picture = new Picture(marks, box);
        if (poles.Count == 0)
        {
            return Draft.Flow(head, scene.Portrait, [picture, RoofPoles.NotChecked(scene, RoofPoles.Why(roof))], say);
        }

        // A plan that leaves room beside it has the deck there.
        var share = box.Width / (content.Width - Beside.Gutter);
        return Draft.Fewest(Ways, way => Draft.Flow(head, scene.Portrait, share < WidestBeside
            ? [new Beside(new Stack([picture]), new Stack([.. Decking(scene, roof, 3)]), share), .. Numbers(scene, roof, poles, way.Numbers, way.Pairs), Care(say, roof)]
            : [picture, .. Numbers(scene, roof, poles, way.Numbers, way.Pairs), .. Decking(scene, roof, 7), Care(say, roof)], say));
    }

    private static Cautions Care(Wording say, RoofResult roof) =>
        new(say.Say("caution.title"), [say.Say(roof.Reciprocal.Is ? "caution.framing" : "caution.framing-plain")]) { Above = 2 };

    private static IEnumerable<Block> Numbers(Scene scene, RoofResult roof, IReadOnlyList<RoofPole> poles, Lettering numbers, Lettering pairs)
    {
        var say = scene.Say;
        yield return new Facts([.. Large(scene, roof, poles)], Styles.Heading) { Across = 7 };
        yield return new Paragraph(say.Say(roof.Reciprocal.Is ? "roof-plan.note" : "roof-plan.note-plain"), Styles.Small) { Above = 2 };
        foreach (var post in Posts.Under(scene))
        {
            yield return post;
        }

        if (RoofPoles.SideBySide(roof) > 1)
        {
            yield return new Paragraph(say.Say("roof-plan.pairs", ("places", poles.Count), ("count", RoofPoles.Count(roof))), pairs) { Above = 1.5 };
        }

        yield return new Heading(say.Say("roof-plan.schedule"));
        yield return roof.Reciprocal.Is ? Ring(scene, poles, RoofPoles.SideBySide(roof), numbers) : Plain(scene, poles, numbers);
        yield return new Paragraph(say.Say(RoofPoles.SideBySide(roof) > 1 ? "roof-plan.schedule-note-pairs" : "roof-plan.schedule-note"), Styles.Small) { Above = 1.5 };
    }

    private static IEnumerable<Block> Decking(Scene scene, RoofResult roof, int across)
    {
        var say = scene.Say;
        yield return new Heading(say.Say("roof-plan.deck"));
        // Rows of numbers; how boards and straps are fixed, and why one is not checked, take the whole width under them.
        var open = say.Say("not-checked");
        List<Fact> shares = [.. Shares(scene, roof)], deck = [.. Deck(scene, roof), .. shares];
        yield return new Facts([.. Deck(scene, roof).Select(f => f.Value == open ? f with { Note = "" } : f)], Styles.Body) { Above = 1.5, Across = across };
        yield return new Facts([.. shares.Select(f => f with { Note = "" })], Styles.Body) { Above = 1.5, Across = across };
        yield return new Paragraph(string.Join(" ", Made(scene, roof)), Styles.Small) { Above = 1.5 };
        foreach (var fact in deck.Where(f => f.Value == open))
        {
            yield return new Paragraph($"{fact.Label}: {open}: {fact.Note}", Styles.Small) { Above = 1 };
        }
    }

    private static IEnumerable<Fact> Deck(Scene scene, RoofResult roof)
    {
        var (say, house) = (scene.Say, scene.Geometry.House);
        if (roof.Spans is { } spans)
        {
            yield return scene.Fact("roof-plan.deck-span", Amount.Metres(spans.Deck), Tag.Computed);
            yield return house.Roof?.Deck is { } boards ? scene.Fact("roof-plan.deck-thick", Amount.Metres(boards.Metres), Tag.Given) : new Fact(say.Say("roof-plan.deck-thick"), say.Say("not-checked"), say.Say(new Message("analysis.deck.none")));
            yield return new Fact(say.Say("roof-plan.secondaries"), say.One(Amount.Count(spans.Count)), say.Say(Tag.Computed));
            if (spans.Count > 0)
            {
                yield return scene.Fact("roof-plan.secondary-cut", Amount.Metres(spans.SecondaryLength), Tag.Computed);
            }
        }

        if (house.Roof is { Seat.Bolt: { } bolt })
        {
            yield return scene.Fact("roof-plan.seat-bolt", Amount.Metres(bolt.Metres), Tag.Given);
        }

        if (house.Roof is Roof.Reciprocal reciprocal)
        {
            yield return reciprocal.Pin is { } pin ? scene.Fact("roof-plan.pin", Amount.Metres(pin.Diameter.Metres), Tag.Given) : new Fact(say.Say("roof-plan.pin"), say.Say("not-checked"), say.Say(new Message("analysis.pin.none")));
        }
    }

    /// <summary>How boards and straps are fixed, and what the circles of a flue are.</summary>
    private static IEnumerable<string> Made(Scene scene, RoofResult roof)
    {
        var (say, house) = (scene.Say, scene.Geometry.House);
        yield return say.Say("roof-plan.shares-note");
        if (house.Roof is { DeckNails: { } nails })
        {
            yield return say.Say(nails.Kind == DeckFastener.Screw ? "roof-plan.nails-screws" : "roof-plan.nails-nails", ("count", nails.Count), ("diameter", nails.Diameter), ("length", nails.Length));
        }

        if (house.Roof is { Braces: { } braces })
        {
            yield return say.Say("roof-plan.braces-made", ("width", braces.Width), ("thickness", braces.Thickness), ("count", braces.Nails));
        }

        if (roof.Flue is { } flue)
        {
            yield return flue.Clear is null ? say.Say("roof-plan.flue-open") : say.Say("roof-plan.flue");
        }
    }

    /// <summary>What is used most of each kind, and beside it everything that nobody could check.</summary>
    private static IEnumerable<Fact> Shares(Scene scene, RoofResult roof)
    {
        var say = scene.Say;
        Sequence<CheckedMember> all = [.. roof.Deck, .. roof.Fixings, .. roof.Supports];
        foreach (var check in all.Where(c => c.Check.Is).GroupBy(c => c.Key).Select(g => g.MaxBy(c => c.Check.Value!.Use)!).Concat(all.Where(c => !c.Check.Is)))
        {
            var used = check.Check.Value is { } made ? Amount.Fraction(made.Use) : (Amount?)null;
            yield return new Fact(Used(say, check), used is { } share ? say.One(share) : say.Say("not-checked"), used is null ? say.Say(check.Check.NotChecked!) : say.Say(Tag.Computed));
        }
    }

    /// <summary>What a check is of: by its own name where the subject alone would not say it.</summary>
    private static string Used(Wording say, CheckedMember check) => check.Key is "deck" or "secondary" ? $"{say.Say("roof-plan.use")}: {say.Subject(check.Subject)}" : say.Say("roof-plan." + $"use-{check.Key}");

    /// <summary>What is described to hold the frame when one pole fails.</summary>
    public static Fact WayOut(Scene scene, IfOneFails? way)
    {
        var say = scene.Say;
        return new Fact(say.Say("roof-plan.way-out"), way switch
        {
            IfOneFails.Strap strap => say.Say("roof-plan.way-strap", ("width", strap.Width), ("thickness", strap.Thickness)),
            IfOneFails.Doubled => say.Say("roof-plan.way-doubled"),
            IfOneFails.Post post => say.Say("roof-plan.way-post", ("diameter", post.Diameter)),
            _ => say.Say("roof-plan.way-none"),
        }, way is null ? "" : say.Say(Tag.Given));
    }

    private static IEnumerable<Fact> Large(Scene scene, RoofResult roof, IReadOnlyList<RoofPole> poles)
    {
        yield return new Fact(scene.Say.Say("roof-plan.count"), scene.Say.One(Amount.Count(RoofPoles.Count(roof))), RoofPoles.SideBySide(roof) > 1 ? scene.Say.Say("roof-plan.count-pairs", ("places", poles.Count)) : "");
        yield return scene.Fact("roof-plan.butt", Amount.Metres(poles.Max(p => p.Place.Butt)), Tag.Given);
        yield return scene.Fact("roof-plan.tip", Amount.Metres(poles.Min(p => p.Place.Tip)), Tag.Given);
        yield return scene.Fact("roof-plan.pitch", new Amount(poles.Average(p => p.Place.Pitch), Dimension.Angle), Tag.Computed);
        if (roof.Reciprocal.Value is { } frame)
        {
            yield return scene.Fact("roof-plan.ring", Amount.Metres(frame.Geometry.RingRadius), Tag.Given);
            yield return scene.Fact("roof-plan.clear", Amount.Metres(Math.Max(0, frame.Geometry.ClearOpening)), Tag.Computed);
            yield return new Fact(scene.Say.Say("roof-plan.turn"), scene.Say.Say(frame.Geometry.Turn == Turn.Clockwise ? "roof-plan.turn-clockwise" : "roof-plan.turn-anticlockwise"), scene.Say.Say(Tag.Given));
        }
    }

    private static Table Ring(Scene scene, IReadOnlyList<RoofPole> poles, int sideBySide, Lettering numbers)
    {
        var say = scene.Say;
        return new Table(
            [
                new(say.Say(sideBySide > 1 ? "roof-plan.pair" : "roof-plan.pole")), new(say.Say("roof-plan.station"), Anchor.End), new(say.Say(sideBySide > 1 ? "roof-plan.cut-each" : "roof-plan.cut"), Anchor.End), new(say.Say(sideBySide > 1 ? "roof-plan.mass-each" : "roof-plan.mass"), Anchor.End),
                new(say.Say("roof-plan.seat"), Anchor.End), new(say.Say("roof-plan.near"), Anchor.End), new(say.Say("roof-plan.far"), Anchor.End), new(say.Say("roof-plan.rests-on"), Anchor.End),
            ],
            [
                .. poles.Select(p => new Row(
                    Number(p), scene.Metres(RoofPoles.Station(scene, p)) with { Lettering = numbers }, scene.Metres(p.CutLength) with { Lettering = numbers }, RoofPoles.Mass(scene, p), scene.Metres(p.SeatMark) with { Lettering = numbers },
                    scene.Metres(p.Card!.NearMark) with { Lettering = numbers }, scene.Metres(p.Card.FarMark) with { Lettering = numbers },
                    new Cell(p.Card.RestsOn.ToString(CultureInfo.InvariantCulture)))),
            ]) { Above = 1.5 };
    }

    private static Table Plain(Scene scene, IReadOnlyList<RoofPole> poles, Lettering numbers)
    {
        var say = scene.Say;
        return new Table(
            [
                new(say.Say("roof-plan.pole")), new(say.Say("roof-plan.station"), Anchor.End), new(say.Say("roof-plan.cut"), Anchor.End), new(say.Say("roof-plan.mass"), Anchor.End),
                new(say.Say("roof-plan.seat"), Anchor.End), new(say.Say("roof-plan.upper"), Anchor.End),
            ],
            [
                .. poles.Select(p => new Row(
                    Number(p), scene.Metres(RoofPoles.Station(scene, p)) with { Lettering = numbers }, scene.Metres(p.CutLength) with { Lettering = numbers }, RoofPoles.Mass(scene, p),
                    scene.Metres(p.SeatMark) with { Lettering = numbers }, scene.Metres(p.Marks[^1].At) with { Lettering = numbers })),
            ]) { Above = 1.5 };
    }

    private static Cell Number(RoofPole pole) => new(pole.Number.ToString(CultureInfo.InvariantCulture)) { Lettering = Styles.BodyStrong };
}
