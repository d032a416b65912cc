using Clomwright.Analysis.Comfort;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>One page for who will live in it: firewood, cold and hot days, where the wall is cold and damp, sun on the floor, and what each fix would bring.</summary>
internal static class WarmthSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Comfort is not { } comfort)
        {
            return [];
        }

        var say = scene.Say;
        List<Block> blocks =
        [
            .. comfort.Year.Value is { } year ? (Block[])[Numbers(scene, comfort, year)] : [RoofPoles.NotChecked(scene, comfort.Year.NotChecked!)],
            new Paragraph(say.Say("warmth.what"), Styles.Body) { Above = 2 },
            new Cautions(say.Say("caution.title"), [say.Say("caution.stove-air"), say.Say("caution.mould"), say.Say("caution.warmth-model")]),
            .. comfort.Damp.Value is { } damp ? Wall(scene, damp) : [],
            .. comfort.Sun.Value is { } sun ? (Block[])[new Heading(say.Say("warmth.sun")) { Above = 3 }, Warmth.Sun(scene, sun, scene.House.Site.Latitude < 0 ? 6 : 12), new Paragraph(say.Say("warmth.sun-note"), Styles.Small) { Above = 1 }] : [],
            .. scene.Set.ComfortFixes?.Value is { } fixes ? (Block[])[new Heading(say.Say("warmth.fixes")) { Above = 3 }, Warmth.FixTable(scene, fixes), new Paragraph(say.Say("warmth.fixes-note"), Styles.Small) { Above = 1 }] : [],
        ];
        return Draft.Flow(new SheetHead("warmth", say.Say("warmth.title"), Clock.Forecast), scene.Portrait, blocks, say);
    }

    private static Facts Numbers(Scene scene, ComfortResult comfort, YearResult year)
    {
        var say = scene.Say;
        var wood = new Amount(year.Wood.Mass, Dimension.Mass);
        return new Facts(
            [
                new Fact(say.Say("warmth.wood"), say.One(wood), say.Say("warmth.wood-stacked", ("volume", new Amount(year.Wood.Stacked, Dimension.Volume)), ("species", new Argument.Material(year.Wood.Species)))),
                new Fact(say.Say("warmth.hottest"), say.One(new Amount(year.Free.Hottest.High, Dimension.Temperature)), say.Say("warmth.hot-hours", ("hours", Amount.Count((long)Math.Round(year.Free.HotHours))), ("limit", new Amount(RunResult.Hot, Dimension.Temperature)))),
                new Fact(say.Say("warmth.coldest"), say.One(new Amount(year.Free.Coldest.Low, Dimension.Temperature)), say.Say("warmth.cold-hours", ("hours", Amount.Count((long)Math.Round(year.Free.ColdHours))), ("limit", new Amount(RunResult.Cold, Dimension.Temperature)))),
                comfort.Damp.Value is { } damp
                    ? new Fact(say.Say("warmth.foot"), say.One(new Amount(damp.Coldest.Temperatures.Min(), Dimension.Temperature)), say.Say("warmth.foot-when", ("month", new Message($"papers.month-short.{damp.Coldest.Month}")), ("warm", new Amount(year.Warm, Dimension.Temperature))))
                    : new Fact(say.Say("warmth.foot"), say.Say("not-checked")),
            ],
            Styles.Reading);
    }

    private static IEnumerable<Block> Wall(Scene scene, DampResult damp)
    {
        var say = scene.Say;
        var first = scene.Set.FirstWinter;
        var month = first?.Value?.Dampest ?? damp.Later;
        yield return new Heading(say.Say(first?.Value is null ? "warmth.wall" : "warmth.wall-first", ("month", new Message($"papers.month-short.{month.Month}")))) { Above = 3 };
        foreach (var block in Warmth.ColdWall(scene, damp, month, 0.22))
        {
            yield return block;
        }

        yield return new Paragraph(say.Say(
            "warmth.wall-note", ("dew", new Amount(month.DewPoint, Dimension.Temperature)), ("later", Amount.Fraction(Math.Round(damp.Later.Share(damp.Limit), 2))), ("unheated", Amount.Fraction(Math.Round(damp.Unheated.Share(damp.Limit), 2)))), Styles.Small) { Above = 1 };
        yield return new Paragraph(
            first is { Value: { } winter } ? say.Say("warmth.first", ("water", new Amount(winter.Water.Left, Dimension.Mass)), ("share", Amount.Fraction(Math.Round(winter.Dampest.Share(damp.Limit), 2))))
            : first is { NotChecked: { } why } ? say.Say("warmth.first-unknown", ("because", why)) : "", Styles.Small) { Above = 1 };
    }
}
