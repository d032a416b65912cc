using Clomwright.Analysis.Finishes;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>One face for whoever plasters it: how much, what to read and do first, coats with their batches, the panel to follow, and every timber that wants lath.</summary>
internal static class PlasterCard
{
    public static IEnumerable<Draft> Of(Scene scene, Face face)
    {
        if (scene.Set.Finishes is not { } finishes || finishes.Of(face) is not { Coats.Count: > 0 } plaster)
        {
            return [];
        }

        var say = scene.Say;
        var side = face.ToString().ToLowerInvariant();
        List<Block> blocks =
        [
            new Facts(
            [
                scene.Fact("plaster.area", new Area(plaster.Area), Tag.Computed), scene.Fact("plaster.plain", new Area(plaster.Plain), Tag.Computed),
                scene.Fact("plaster.reveals", new Area(plaster.Reveals), Tag.Computed), scene.Fact("plaster.niches", new Area(plaster.Niches), Tag.Computed),
            ], Styles.Heading),
            new Cautions(say.Say("caution.title"), [.. Hazards(plaster).Select(h => say.Say(h))]) { Above = 4 },
            new Heading(say.Say("plaster.before")),
            Before(scene, plaster),
            new Heading(say.Say("plaster.coats")),
            Coats(scene, plaster),
            new Paragraph(say.Say("plaster.coats-note"), Styles.Small) { Above = 1.5 },
            .. Linings(scene, finishes, face),
            .. finishes.Panels.Where(p => p.Face == face).SelectMany(p => Panels(scene, p)),
            .. Lath(scene, finishes, face),
            new Facts([.. ((string[])["plaster.started", "plaster.finished", "plaster.by"]).Select(k => new Fact(say.Say(k), ""))], Styles.Body) { Above = 5, Across = 3 },
        ];
        return Draft.Flow(new SheetHead("plaster-" + side, say.Say("plaster.title-" + side)), scene.Portrait, blocks, say);
    }

    private static IEnumerable<string> Hazards(FacePlaster plaster)
    {
        if (plaster.Sealing is not null)
        {
            yield return "caution.sealed";
        }

        if (plaster.Coats.Any(c => c.Binder == Binder.Lime))
        {
            yield return "caution.mortar";
        }

        yield return "caution.dust";
        yield return "caution.platform";
    }

    /// <summary>What is done and written down before the first coat.</summary>
    private static Table Before(Scene scene, FacePlaster plaster)
    {
        var say = scene.Say;
        List<Row> rows =
        [
            Step(say, "plaster.before-reading", Wording.Dotted(say.Say("plaster.reading-lines"), plaster.Ready.Value is { } ready
                ? ready.High is { } high
                    ? say.Say("plaster.ready", ("low", new Amount(ready.Low, Dimension.Days)), ("high", new Amount(high, Dimension.Days)))
                    : say.Say("plaster.ready-open", ("low", new Amount(ready.Low, Dimension.Days)))
                : say.Say("plaster.ready-unknown", ("because", say.Say(plaster.Ready.NotChecked!))))),
            Step(say, "plaster.before-weather", Wording.Dotted(plaster.SeasonRule is { } rule ? say.Say(rule) : "", plaster.Season.Value is { } season
                ? season.Months.Count == 0 ? say.Say("plaster.no-month") : say.Say("plaster.months", ("months", string.Join(", ", season.Months.Select(m => say.Say("month." + m)))))
                : say.Say("plaster.season-unknown", ("because", say.Say(plaster.Season.NotChecked!))))),
            Step(say, "plaster.before-cut", say.Say("plaster.cut-how")),
            Step(say, "plaster.before-lath", say.Say("plaster.lath-how")),
            Step(say, "plaster.before-wet", say.Say("plaster.wet-how")),
        ];
        return new Table([new("") { Grows = 1 }], rows) { Above = 1 };
    }

    private static Row Step(Wording say, string key, string note) => new(new Cell(say.Say(key), note) { Tick = true });

    /// <summary>What is set against this face to keep it warm: the coats are told without knowing of it.</summary>
    private static IEnumerable<Block> Linings(Scene scene, FinishesResult finishes, Face face)
    {
        var (say, places) = (scene.Say, finishes.Linings.Where(l => l.Lining.Face == face).ToList());
        if (places.Count == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say("plaster.linings"));
        foreach (var place in places)
        {
            var lining = place.Lining;
            var where = lining is { From: { } from, To: { } to } ? say.Say("plaster.lining-between", ("from", from), ("to", to)) : say.Say("plaster.lining-round");
            yield return new Paragraph(
                say.Say("plaster.lining", ("name", lining.Name), ("material", new Argument.Material(lining.Material)), ("depth", lining.Depth), ("bottom", Amount.Metres(place.Bottom)), ("top", Amount.Metres(place.Top)), ("where", where), ("area", (Amount)new Area(place.Area))),
                Styles.BodyStrong) { Above = 1.5 };
        }
    }

    private static Table Coats(Scene scene, FacePlaster plaster)
    {
        var say = scene.Say;
        return new Table(
            [new(say.Say("plaster.coat")) { Grows = 1 }, new(say.Say("plaster.thick"), Anchor.End), new(say.Say("plaster.batch")), new(say.Say("plaster.batches"), Anchor.End), new(say.Say("plaster.water"), Anchor.End)],
            [.. plaster.Coats.Select(c => Coat(scene, c))]) { Above = 1.5 };
    }

    private static Row Coat(Scene scene, CoatResult coat)
    {
        var say = scene.Say;
        var name = say.Say("plaster.coat-of", ("role", new Message($"analysis.coat.{coat.Role.ToString().ToLowerInvariant()}")), ("material", new Argument.Material(coat.Material)));
        var thick = coat.Depth > 0 ? scene.Metres(coat.Depth) : new Cell(say.Say("plaster.brushed"));
        return new Row(
            new Cell(coat.Passes > 1 ? say.Say("plaster.passes", ("coat", name), ("n", coat.Passes)) : name, say.Say("plaster.next", ("when", coat.Next))) { Tick = true, Lettering = Styles.BodyStrong },
            thick,
            coat.Parts is null ? new Cell("–") : new Cell(Mixes.Say(scene, coat.Parts).Replace(" : ", "\n"), coat.Panel is { } panel ? say.Say("plaster.as-panel", ("name", panel)) : coat.PartsTag == Tag.Practice ? say.Say(Tag.Practice) : ""),
            coat.Batches.Value is { } batches ? new Cell(say.One(Amount.Number(Math.Ceiling(batches.Value * 10 - 1e-9) / 10))) { Lettering = Styles.Reading } : new Cell(coat.Depth > 0 ? say.Say("not-known") : "–"),
            coat.Water is { } water && coat.Batches.Value is { Value: > 0 } n && scene.House.Mix.Batch is { } bucket
                ? new Cell(say.Say("plaster.water-band", ("low", Tenths(water.Low / 1000 / n.Value / bucket.BucketVolume.CubicMetres)), ("high", Tenths(water.High / 1000 / n.Value / bucket.BucketVolume.CubicMetres))))
                : new Cell(say.Say("plaster.by-feel")));
    }

    private static Amount Tenths(double number) => Amount.Number(Math.Round(number, 1));

    private static IEnumerable<Block> Panels(Scene scene, PanelChoice choice)
    {
        var say = scene.Say;
        yield return new Heading(say.Say("plaster.panels", ("material", new Argument.Material(choice.Material))));
        yield return new Paragraph(say.Say(choice.Why) + (choice.Next is { } next ? " " + say.Say(next) : ""), Styles.BodyStrong) { Above = 1.5 };
        if (choice.Tried.Count > 0)
        {
            yield return new Table(
                [new(say.Say("plaster.panel")), new(say.Say("plaster.batch")) { Grows = 1 }, new(say.Say("plaster.cracks")), new(say.Say("plaster.dust")), new(say.Say("plaster.bond"))],
                [
                    .. choice.Tried.Select(p => new Row(
                        new Cell(p.Name) { Lettering = p == choice.Chosen ? Styles.BodyStrong : Styles.Body }, new Cell(Mixes.Say(scene, p.Parts)),
                        new Cell(say.Say(new Message($"analysis.panel.cracks-{p.Cracks.ToString().ToLowerInvariant()}"))), new Cell(say.Say(new Message($"analysis.panel.dust-{p.Dust.ToString().ToLowerInvariant()}"))),
                        new Cell(say.Say("plaster.bond-" + p.Bond.ToString().ToLowerInvariant())))),
                ]) { Above = 1.5 };
        }
    }

    private static IEnumerable<Block> Lath(Scene scene, FinishesResult finishes, Face face)
    {
        var say = scene.Say;
        var places = finishes.Lath.Where(l => l.Face == face).ToList();
        yield return new Heading(say.Say("plaster.lath"));
        if (places.Count == 0)
        {
            yield return new Paragraph(say.Say("plaster.no-lath"), Styles.Body) { Above = 1.5 };
            yield break;
        }

        var lath = scene.House.Finishes.FirstOrDefault(f => f.Face == face && f.Lath is not null)?.Lath;
        yield return new Paragraph(lath is null ? say.Say("plaster.lath-none") : say.Say("plaster.lath-with", ("material", new Argument.Material(lath.Material)), ("lap", (Amount)lath.Lap)), Styles.Body) { Above = 1.5, Leads = true };
        yield return new Table(
            [new(say.Say("plaster.place")) { Grows = 1 }, new(say.Say("plaster.along"), Anchor.End), new(say.Say("plaster.across"), Anchor.End), new(say.Say("plaster.cover"), Anchor.End), new(say.Say("plaster.needs"), Anchor.End)],
            [
                .. places.Select(l => new Row(
                    new Cell(say.Say("plaster.place-" + l.Kind.ToString().ToLowerInvariant(), ("of", new Argument.Subject(l.Address)))) { Tick = true },
                    l.Length is { } length ? scene.Metres(length) : new Cell(say.Say("plaster.measure")),
                    l.Width is { } width ? scene.Metres(width) : new Cell(say.Say("plaster.measure")),
                    l.Cover is > 0 and var cover ? scene.Metres(cover) : new Cell(say.Say("plaster.at-the-face")),
                    scene.Cell(new Area(l.Area), l.Length is null ? say.Say(Tag.Assumed) : ""))),
            ]) { Above = 1.5 };
    }
}
