using System.Globalization;
using Clomwright.Analysis.Foundation;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>The trench bottom peg by peg, down to the drain's outlet: what the crew levels by.</summary>
internal static class DrainSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Foundation is not { } foundation || scene.House.Trench is null)
        {
            return [];
        }

        return Draft.Fewest([Styles.Tape, Styles.BodyStrong], depth => Of(scene, foundation, depth));
    }

    private static IEnumerable<Draft> Of(Scene scene, FoundationResult foundation, Lettering depth)
    {
        var say = scene.Say;
        List<Block> blocks =
        [
            new Cautions(say.Say("caution.title"), [say.Say("caution.services"), say.Say("caution.trench")]),
            .. foundation.Drain.Value is { } drain ? Levels(scene, drain, depth) : [RoofPoles.NotChecked(scene, foundation.Drain.NotChecked!)],
        ];
        return Draft.Flow(new SheetHead("drain", say.Say("drain.title")), scene.Portrait, blocks, say);
    }

    private static IEnumerable<Block> Levels(Scene scene, DrainFall drain, Lettering depth)
    {
        var say = scene.Say;
        var outlet = scene.House.Trench!.Outlet!.Value;
        yield return new Facts(
        [
            scene.Fact("drain.fall", new Amount(drain.Slope, Dimension.Slope), scene.House.Trench.Fall is null ? Tag.Computed : Tag.Given),
            scene.Fact("drain.start", Amount.Metres(-drain.Line.Start), Tag.Computed),
            scene.Fact("drain.end", Amount.Metres(-drain.Line.End), Tag.Computed),
            scene.Fact("drain.outlet", -outlet, Tag.Given),
            drain.Beyond is { } beyond ? scene.Fact("drain.beyond", Amount.Metres(beyond), Tag.Given) : new Fact(say.Say("drain.beyond"), say.Say("not-checked"), say.Say(new Message("study.demand.no-outlet-run"))),
            scene.Fact("drain.needed", Amount.Metres(drain.Needed), Tag.Computed),
            scene.Fact("drain.there", Amount.Metres(drain.Available), Tag.Computed),
        ], Styles.Heading) { Across = 7 };
        if (drain.UnitSlip is { } slip)
        {
            yield return new Cautions(say.Say("drain.slip"), [say.Say(slip)]) { Above = 3 };
        }

        if (drain.Needed > drain.Available * (1 + 1e-12))
        {
            yield return new Cautions(say.Say("drain.short"), [say.Say("drain.short-by", ("by", Amount.Metres(drain.Needed - drain.Available)))]) { Above = 3 };
        }

        yield return new Heading(say.Say("drain.points"));
        yield return new Table(
            [
                new(say.Say("drain.point")) { Grows = 1 }, new(say.Say("drain.station"), Anchor.End), new(""), new(say.Say("drain.to-pipe"), Anchor.End), new(say.Say("drain.below-floor"), Anchor.End), new(""),
                new(say.Say("drain.below-far"), Anchor.End), new(say.Say("drain.levelled"), Anchor.End),
            ],
            [.. drain.Points.GroupBy(p => Math.Round(p.Station, 4)).Select(at => Point(scene, drain, [.. at], depth))]) { Above = 1.5, Pad = 0.55 };
        yield return new Paragraph(say.Say("drain.note"), Styles.Small) { Above = 1.5 };
    }

    /// <summary>One place on the trench bottom; what falls together there is named in one row.</summary>
    private static Row Point(Scene scene, DrainFall drain, DrainPoint[] here, Lettering depth)
    {
        var (say, point) = (scene.Say, here[0]);
        var strong = here.Any(p => p.Name is "pipe" or "far side");
        return new Row(
        [
            new Cell(Wording.Dotted(here.Select(p => Name(say, p.Name)))) { Tick = true, Lettering = strong ? Styles.BodyStrong : Styles.Body },
            .. scene.Pair(Amount.Metres(point.Station), Styles.Body),
            new Cell(say.One(Amount.Metres(point.ToPipe))),
            .. scene.Pair(Amount.Metres(-point.Height), depth),
            new Cell(say.One(Amount.Metres(drain.Line.Start - point.Height))),
            new Cell("................"),
        ]) { Ruled = false };
    }

    private static string Name(Wording say, string name) => name switch
    {
        "zero" => say.Say("drain.zero"),
        "pipe" => say.Say("drain.pipe"),
        "far side" => say.Say("drain.far"),
        _ => say.Say("drain.numbered", ("n", int.Parse(name.Split(' ')[1], CultureInfo.InvariantCulture))),
    };
}
