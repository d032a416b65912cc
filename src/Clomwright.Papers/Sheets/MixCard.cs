using Clomwright.Analysis.Mix;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>The card at the mixing tarp: one batch in buckets and armfuls, how it should feel, what to try next, and what can hurt.</summary>
internal static class MixCard
{
    private static readonly string[] Feels = ["ball", "squeeze", "straw", "foot", "hands"];

    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Mix is not { } mix)
        {
            return [];
        }

        var say = scene.Say;
        Block[] blocks =
        [
            .. Batch(scene, mix),
            new Heading(say.Say("mix-card.feel")) { Above = 4 },
            new Table([new("") { Grows = 1 }], [.. Feels.Select(f => new Row(new Cell(say.Say("mix-card.feel-" + f)) { Tick = true }))]) { Above = 1, Pad = 0.5 },
            new Heading(say.Say("mix-card.next")) { Above = 4 },
            new Paragraph(say.Say(mix.Next.What), Styles.BodyStrong) { Above = 1.5 },
            new Paragraph(say.Say(mix.Next.Because), Styles.Body) { Above = 1 },
            .. Soil(scene, mix),
            new Heading(say.Say("mix-card.log")) { Above = 4 },
            Log(say),
            new Cautions(say.Say("caution.title"), [Lifting(scene, mix), say.Say("caution.mix-lime"), say.Say("caution.treading"), say.Say("caution.dust"), say.Say("caution.straw")]) { Above = 4 },
        ];
        return Draft.Flow(new SheetHead("mix-card", say.Say("mix-card.title")), scene.Portrait, blocks, say);
    }

    private static IEnumerable<Block> Batch(Scene scene, MixResult mix)
    {
        var say = scene.Say;
        var written = mix.AsWritten.Value;
        if ((written ?? mix.Blend.Value) is not { } batch)
        {
            yield return new Facts([.. ((string[])["mix-card.soil", "mix-card.sand", "mix-card.water", "mix-card.armfuls"]).Select(k => new Fact(say.Say(k), ""))], Styles.Large);
            yield return new Paragraph(Wording.Dotted(say.Say("not-known"), say.Say(mix.AsWritten.NotChecked!)), Styles.Body) { Above = 1.5 };
            yield break;
        }

        var tag = written is null ? Tag.Computed : Tag.Given;
        Fact Buckets(string key, double count, string note = "") => new(say.Say(key), say.Say("mix-card.buckets", ("n", Amount.Number(Math.Round(count * 4) / 4))), Wording.Dotted(note, say.Say(tag)));
        yield return new Facts(
        [
            Buckets("mix-card.soil", batch.Soil, say.Say("mix-card.each", ("mass", new Amount(batch.SoilMass, Dimension.Mass)))),
            .. batch.Clay > 0 ? [Buckets("mix-card.clay", batch.Clay)] : (Fact[])[],
            .. batch.Sand > 0 ? [Buckets("mix-card.sand", batch.Sand, say.Say("mix-card.each", ("mass", new Amount(batch.SandMass, Dimension.Mass))))] : (Fact[])[],
            batch.Water is { } water ? Buckets("mix-card.water", water) : new Fact(say.Say("mix-card.water"), say.Say("not-known")),
            batch.Armfuls is { } armfuls
                ? new Fact(say.Say("mix-card.armfuls"), say.One(Amount.Number(Math.Round(armfuls * 2) / 2)), Wording.Dotted(say.Say(new Amount(batch.Straw!.Value, Dimension.Mass)), say.Say(tag)))
                : batch.Straw is { } straw
                    ? new Fact(say.Say("mix-card.straw"), say.One(new Amount(straw, Dimension.Mass)), say.Say("mix-card.no-armful"))
                    : new Fact(say.Say("mix-card.straw"), say.Say("not-known")),
        ], Styles.Large) { Across = 3 };
        yield return new Paragraph(say.Say(written is null ? "mix-card.from-target" : "mix-card.from-recipe"), Styles.Small) { Above = 1.5 };
        yield return new Facts(
        [
            new Fact(say.Say("mix-card.clay-share"), say.One(Amount.Fraction(batch.ClayShare)), say.Say(Tag.Computed)),
            batch.StrawShare is { } share ? new Fact(say.Say("mix-card.straw-share"), say.One(Amount.Fraction(share)), say.Say(Tag.Computed)) : new Fact(say.Say("mix-card.straw-share"), say.Say("not-known")),
            new Fact(say.Say("mix-card.wetness"), say.One(Amount.Fraction(mix.MixingWater.Value)), say.Say(mix.MixingWater.Assumption is null ? Tag.Computed : Tag.Assumed)),
            new Fact(
                say.Say("mix-card.straw-drinks"), batch.StrawWater is { } drinks ? say.One(new Amount(drinks, Dimension.Mass)) : say.Say("not-known"),
                batch.StrawWater is { } kg ? Wording.Dotted(say.Other(new Amount(kg, Dimension.Mass)), say.Say(Tag.Assumed)) : ""),
        ], Styles.Heading) { Above = 3 };
        yield return new Paragraph(say.Say("mix-card.water-note"), Styles.Small) { Above = 1.5 };
    }

    private static IEnumerable<Block> Soil(Scene scene, MixResult mix)
    {
        var say = scene.Say;
        yield return new Heading(say.Say("mix-card.soil-tests")) { Above = 4 };
        List<Row> rows = [];
        if (mix.Jar.Value is { } jar)
        {
            rows.Add(new Row(
                new Cell(say.Say("mix-card.jar")) { Lettering = Styles.BodyStrong },
                new Cell(
                    say.Say("mix-card.jar-says", ("sand", Amount.Fraction(jar.Sand)), ("silt", Amount.Fraction(jar.Silt)), ("clay", Amount.Fraction(jar.Clay)), ("texture", Texture.Named(jar.Texture)), ("seen", Amount.Fraction(jar.ClayByVolume))),
                    jar.Times.Value is { } times
                        ? say.Say("mix-card.jar-times", ("sand", new Amount(times.Sand, Dimension.Time)), ("silt", new Amount(times.Silt, Dimension.Time)))
                        : say.Say(jar.Times.NotChecked!))));
        }
        else
        {
            rows.Add(new Row(new Cell(say.Say("mix-card.jar")) { Lettering = Styles.BodyStrong }, new Cell(say.Say(mix.Jar.NotChecked!))));
        }

        rows.AddRange(mix.HandTests.Select(h => new Row(
            new Cell(say.Say("mix-card.test-" + h.Key)) { Lettering = Styles.BodyStrong }, new Cell(say.Say(h.Says), say.Say("mix-card.does-not", ("what", h.DoesNot))))));
        yield return new Table([new(""), new("") { Grows = 1 }], rows) { Above = 1.5 };
    }

    private static Table Log(Wording say) => new(
        [
            new(say.Say("mix-card.log-date")) { Grows = 1 }, new(say.Say("mix-card.log-batches")) { Grows = 1 }, new(say.Say("mix-card.log-water")) { Grows = 1 }, new(say.Say("mix-card.log-ball")) { Grows = 1 },
            new(say.Say("mix-card.log-who")) { Grows = 3 },
        ],
        [.. Enumerable.Range(0, 4).Select(_ => new Row("", "", "", "", ""))]) { Above = 1.5, Pad = 3.2 };

    /// <summary>Weights stand with the caution: a bucket as the crew fills it.</summary>
    private static string Lifting(Scene scene, MixResult mix)
    {
        var batch = mix.AsWritten.Value ?? mix.Blend.Value;
        return batch is null ? scene.Say.Say("caution.lifting") : scene.Say.Say("caution.mix-lifting", ("soil", new Amount(batch.SoilMass, Dimension.Mass)), ("sand", new Amount(batch.SandMass, Dimension.Mass)));
    }
}
