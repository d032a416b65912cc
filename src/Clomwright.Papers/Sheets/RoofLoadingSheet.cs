using System.Globalization;
using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>Soil on the roof, band by band from the ring outward, opposite bays together, with the force that holds the crossings shut after each band.</summary>
internal static class RoofLoadingSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Roof is not { } roof)
        {
            return [];
        }

        var say = scene.Say;
        List<Block> blocks =
        [
            new Cautions(say.Say("caution.title"), [.. ((string[])["overload", "heaps", roof.Reciprocal.Is ? "raising-under" : "raising-under-plain", "falls"]).Select(c => say.Say("caution." + c))]),
            new Facts(
            [
                RoofPoles.Fact(scene, "loading.wet", roof.LayersWet.Value is { } wet ? new Amount(wet.Value, Dimension.AreaLoad) : null, roof.LayersWet.NotChecked!),
                RoofPoles.Fact(scene, "loading.dry", roof.LayersDry.Value is { } dry ? new Amount(dry.Value, Dimension.AreaLoad) : null, roof.LayersDry.NotChecked!),
                RoofPoles.Fact(scene, "loading.snow", roof.Snow.Value is { } snow ? new Amount(snow.Balanced, Dimension.AreaLoad) : null, roof.Snow.NotChecked!),
            ], Styles.Heading) { Above = 4, Across = 3 },
            .. LeakTest(scene),
            .. roof.Flue is { } flue ? [new Paragraph(flue.Clear is { } clear ? say.Say("loading.flue", ("clear", Amount.Metres(clear))) : say.Say("loading.flue-open"), Styles.Body) { Above = 2 }] : Array.Empty<Block>(),
            .. roof.Reciprocal.Value is { } frame ? Ring(scene, frame)
                : [RoofPoles.NotChecked(scene, roof.Plain.Is ? new Message("papers.loading.no-order") : RoofPoles.Why(roof)) with { Above = 4 }],
        ];
        return Draft.Flow(new SheetHead("roof-loading", say.Say("loading.title")), scene.Portrait, blocks, say);
    }

    /// <summary>A stop before the first soil: a tick, a name and a date by hand, or who answered it and when.</summary>
    private static IEnumerable<Block> LeakTest(Scene scene)
    {
        var (say, house) = (scene.Say, scene.Geometry.House);
        if (house.Roof is not { Layers.Count: > 0 })
        {
            yield break;
        }

        var tested = house.Rules.Answers.FirstOrDefault(a => a.Question == "leak-test");
        yield return new Heading(say.Say("loading.leak-title"));
        yield return new Table(
            [new("") { Grows = 1 }, new(say.Say("loading.leak-by")), new(say.Say("loading.leak-on"))],
            [new Row(
                new Cell(say.Say("loading.leak-test"), say.Say(tested is null ? "loading.leak-open" : tested.Holds ? "loading.leak-tight" : "loading.leak-leaks")) { Tick = true, Lettering = Styles.BodyStrong },
                new Cell(tested?.By ?? "......................"),
                new Cell(tested?.On.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "................"))]) { Above = 1.5 };
    }

    private static IEnumerable<Block> Ring(Scene scene, ReciprocalResult frame)
    {
        var say = scene.Say;
        if (frame.FromRing.Value is not { } order)
        {
            yield return RoofPoles.NotChecked(scene, frame.FromRing.NotChecked!) with { Above = 4 };
            yield break;
        }

        yield return new Heading(say.Say("loading.order"));
        yield return new Paragraph(say.Say("loading.bays", ("order", Bays(frame.Poles.Count, say))), Styles.Body) { Above = 1.5 };
        yield return Bands(scene, order, frame.Poles.Count);
        if (order.Opens)
        {
            yield return new Cautions(say.Say("loading.opens-title"), [say.Say("loading.opens", ("pull", new Amount(-order.Least, Dimension.Force)))]) { Above = 3 };
        }

        yield return new Paragraph(say.Say("loading.note"), Styles.Small) { Above = 1.5 };
        yield return new Heading(say.Say("loading.wrong"));
        yield return new Table(
            [new(say.Say("loading.way")) { Grows = 1 }, new(say.Say("loading.least"), Anchor.End), new("")],
            [
                Wrong(scene, "fromEave", frame.FromEave.Value?.Least, frame.FromEave.NotChecked),
                .. ((string[])["eaveOnly", "halfSoil", "heapEave"]).Select(key => frame.Stages.FirstOrDefault(s => s.Key == key)).OfType<RoofStage>()
                    .Select(s => Wrong(scene, s.Key, s.Forces.Value?.CrossingForce.Min(), s.Forces.NotChecked)),
            ]) { Above = 1.5 };
    }

    private static Table Bands(Scene scene, LoadingOrder order, int bays)
    {
        var say = scene.Say;
        var outer = order.Steps.Max(s => s.Band);
        return new Table(
            [
                new(say.Say("loading.band")), new(say.Say("loading.from"), Anchor.End), new(say.Say("loading.to"), Anchor.End), new(say.Say("loading.weight"), Anchor.End),
                new(say.Say("loading.each-bay"), Anchor.End), new(say.Say("loading.least"), Anchor.End), new("") { Grows = 1 },
            ],
            [
                .. order.Steps.Select((s, i) => new Row(
                    new Cell(say.Say(i == 0 ? "loading.first-band" : s.Band == outer ? "loading.last-band" : "loading.nth-band", ("n", i + 1))) { Tick = true, Lettering = Styles.BodyStrong },
                    scene.Metres(s.InnerRadius),
                    scene.Metres(s.OuterRadius),
                    scene.Cell(new Amount(s.Weight, Dimension.Force)),
                    scene.Cell(new Amount(s.Weight / bays, Dimension.Force)),
                    scene.Cell(new Amount(s.Forces.CrossingForce.Min(), Dimension.Force)) with { Lettering = Styles.BodyStrong },
                    Shut(say, s.Forces.CrossingForce.Min(), s.Forces.Opened))),
            ]) { Above = 2 };
    }

    private static Cell Shut(Wording say, double least, Sequence<int> opened) => least < 0
        ? new Cell(say.Say("loading.opens-at", ("poles", string.Join(", ", opened)))) { Lettering = Styles.BodyStrong }
        : new Cell(say.Say("loading.shut"));

    private static Row Wrong(Scene scene, string key, double? least, Message? why)
    {
        var name = new Cell(scene.Say.Say(StageBending.Named(key)));
        return least is { } force
            ? new Row(name, scene.Cell(new Amount(force, Dimension.Force)) with { Lettering = Styles.BodyStrong }, new Cell(scene.Say.Say(force < 0 ? "loading.opens-word" : "loading.shut")) { Lettering = force < 0 ? Styles.BodyStrong : Styles.Body })
            : new Row(name with { Note = scene.Say.Say(why!) }, new Cell(scene.Say.Say("not-checked")) { Lettering = Styles.BodyStrong }, "");
    }

    /// <summary>Bays across from each other, and each pair as far as can be from the one before: 1 and 5, 3 and 7, 2 and 6, 4 and 8. An odd number has no opposite: a bay and the two across from it.</summary>
    private static string Bays(int count, Wording say)
    {
        var half = count / 2;
        if (count % 2 == 1)
        {
            return say.Say("loading.odd", ("across", half), ("across2", half + 1));
        }

        int[] first = [.. Enumerable.Range(1, half).Where(i => i % 2 == 1), .. Enumerable.Range(1, half).Where(i => i % 2 == 0)];
        return string.Join(", ", first.Select(i => Wording.Unbroken(string.Create(CultureInfo.InvariantCulture, $"{i} + {i + half}"))));
    }
}
