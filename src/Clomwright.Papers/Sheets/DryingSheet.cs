using Clomwright.Analysis.Drying;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>How long drying takes: to go on, to roof, to plaster; by lift and side for the planned start, by month for any other; what it leans on, and the block to weigh that narrows it.</summary>
internal static class DryingSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Drying is not { } known)
        {
            return [];
        }

        var say = scene.Say;
        var drying = known.Value;
        List<Block> blocks =
        [
            drying is null ? new Paragraph(say.Say("drying.unknown", ("because", known.NotChecked!)), Styles.BodyStrong) : Main(scene, drying),
            .. drying is not null && scene.House.Crew is { Begins: not WorkBegins.Wall } crew ? new Block[] { new Paragraph(say.Say("drying.first-lift", ("date", drying.Start), ("start", crew.Start)), Styles.Body) { Above = 2.5 } } : [],
            new Paragraph(say.Say("drying.what"), Styles.Body) { Above = 2.5 },
            new Cautions(say.Say("caution.title"), [say.Say("caution.wet-wall"), say.Say("caution.early-roof"), say.Say("caution.early-plaster"), .. drying is null ? [] : LiftWindow.Warnings(scene, 0)]) { Above = 3 },
            .. drying is null ? [] : BySide(scene, drying),
            .. scene.Set.StartMonths is { Value: { } year } ? ByMonth(scene, year, drying) : [],
            new Stack([.. Block(scene, drying)]) { Above = 4 },
            .. drying is null ? [] : LeansOn(scene, drying),
        ];
        return Draft.Flow(new SheetHead("drying", say.Say("drying.title"), Clock.Forecast), scene.Portrait, blocks, say);
    }

    private static Facts Main(Scene scene, DryingResult drying)
    {
        var say = scene.Say;
        Fact Days(string key, Forecast f) => new(
            say.Say(key), say.Say("drying.days", ("days", say.Days(f))), f.Middle is { } middle ? say.Say("drying.middle", ("day", scene.Say.Day(middle))) : say.Say("drying.middle-far"));
        double? Walls(WallDrying wall) => wall.Lifts.Count == drying.Lifts.Count ? wall.Lifts[^1].LaidDay : null;
        // The last lift waits for the bond beam, not for a lift.
        var bands = drying.Lifts.SkipLast(drying.Lifts.Count > 1 ? 1 : 0).ToList();
        return new Facts(
        [
            new Fact(say.Say("drying.next"), say.Say("drying.days", ("days", say.Days(bands.Min(b => b.DaysToNext.Low), bands.Any(b => b.DaysToNext.High is null) ? null : bands.Max(b => b.DaysToNext.High)))),
                say.Say("drying.start", ("date", say.Say(drying.Start)))),
            Days("drying.walls", new(Walls(drying.Fast), Walls(drying.Middle), Walls(drying.Slow))),
            Days("drying.roof", new(drying.Fast.RoofDay, drying.Middle.RoofDay, drying.Slow.RoofDay)),
            Days("drying.plaster", new(drying.Fast.PlasterDay, drying.Middle.PlasterDay, drying.Slow.PlasterDay)),
        ], Styles.Reading);
    }

    /// <summary>Days from a lift to the next: sides down, lifts across.</summary>
    private static IEnumerable<Block> BySide(Scene scene, DryingResult drying)
    {
        var say = scene.Say;
        var sides = Forecasts.Sides(drying).ToList();
        yield return new Heading(say.Say("drying.by-bay")) { Above = 4 };
        foreach (var chunk in drying.Lifts.Chunk(10))
        {
            yield return new Table(
                [new(say.Say("drying.side")), new(say.Say("drying.between")) { Grows = 1 }, .. chunk.Select(l => new Column(say.Say("drying.lift", ("n", l.Number)), Anchor.Middle))],
                [
                    .. sides.Select(side => new Row(
                    [
                        new Cell(Forecasts.Faces(scene, side.Wind)) { Lettering = Styles.BodyStrong },
                        new Cell(string.Join(", ", side.Bays.Select(b => Forecasts.Between(scene, drying.Bays[b])).Distinct())),
                        .. chunk.Select(l => Cell(say, Forecasts.Together([.. side.Bays.Select(b => drying.WindowOf(l.Number, b))]).Firm)),
                    ])),
                    new Row([new Cell(say.Say("drying.ring")) { Lettering = Styles.BodyStrong }, new Cell(say.Say("drying.ring-waits")), .. chunk.Select(l => new Cell(scene.Say.Days(Latest(drying.Fast, l), Latest(drying.Slow, l))))]) { Ruled = true },
                    new Row([new Cell(say.Say("drying.joint")) { Lettering = Styles.BodyStrong }, new Cell(say.Say("drying.joint-dries")), .. chunk.Select(l => new Cell(Joint(scene, drying, l)))]),
                ]) { Above = 1.5 };
        }

        yield return new Paragraph(say.Say("drying.by-bay-note"), Styles.Small) { Above = 1 };
    }

    private static double? Latest(WallDrying wall, LiftBand lift) => lift.Number <= wall.Lifts.Count ? wall.Lifts[lift.Number - 1].Latest : null;

    /// <summary>In how many of the bays the joint over a lift dries, from the fast to the slow case.</summary>
    private static string Joint(Scene scene, DryingResult drying, LiftBand lift)
    {
        if (lift.Number == drying.Lifts.Count)
        {
            return "–";
        }

        var here = drying.Joints.Where(j => j.Lift == lift.Number).ToList();
        int[] counts = [here.Count(j => j.Fast), here.Count(j => j.Middle), here.Count(j => j.Slow)];
        return counts.Max() == 0 ? scene.Say.Say("drying.keyed") : scene.Say.Days(counts.Min(), counts.Max());
    }

    private static Cell Cell(Wording say, Forecast f) => new(say.Days(f), f.Middle is { } middle ? say.Day(middle) : "");

    private static IEnumerable<Block> ByMonth(Scene scene, StartYear year, DryingResult? drying)
    {
        var say = scene.Say;
        Row Line(string key, string note, Func<StartMonth, Forecast> of) => new([new Cell(say.Say(key), note) { Lettering = Styles.BodyStrong }, .. year.Months.Select(m => Upright(say, of(m)))]);
        string Side(DryingBay bay) => say.Say("drying.bay-faces", ("faces", Forecasts.Faces(scene, bay.Wind)), ("bay", Forecasts.Between(scene, bay)));
        yield return new Heading(say.Say("drying.by-month")) { Above = 4 };
        yield return new Table(
            [new(say.Say("drying.begun-in")) { Grows = 1 }, .. year.Months.Select(m => new Column(say.Say("month-short." + m.Month), Anchor.Middle))],
            [
                Line("drying.next-sunny", Side(year.Sunny), m => m.NextSunny),
                Line("drying.next-shaded", Side(year.Shaded), m => m.NextShaded),
                Line("drying.walls", say.Say("drying.from-first"), m => m.Walls),
                Line("drying.roof", say.Say("drying.from-first"), m => m.Roof),
                Line("drying.plaster", say.Say("drying.from-first"), m => m.Plaster),
                new Row([new Cell(say.Say("drying.frost"), say.Say("drying.frost-note")) { Lettering = Styles.BodyStrong }, .. year.Months.Select(m => new Cell(m.Frost ? say.Say("drying.frost-yes") : "–") { Lettering = Styles.BodyStrong })]),
            ]) { Above = 1.5 };
        yield return new Paragraph(say.Say("drying.by-month-note", ("days", new Amount(year.Looked, Dimension.Days))), Styles.Small) { Above = 1 };
    }

    /// <summary>Fast, middle and slow under one another: a column of a year is narrow.</summary>
    private static Cell Upright(Wording say, Forecast f)
    {
        string Or(double? days) => days is { } d ? say.Day(d) : "–";
        return new(Or(f.Fast) + "\n" + Or(f.Middle) + "\n" + Or(f.Slow));
    }

    /// <summary>The block that narrows the band, and what blocks have told so far.</summary>
    private static IEnumerable<Block> Block(Scene scene, DryingResult? drying)
    {
        var say = scene.Say;
        yield return new Heading(say.Say("drying.narrow")) { Above = 4 };
        foreach (var reading in drying?.Blocks ?? [])
        {
            yield return new Paragraph(reading.Fit.Value is { } fit
                ? say.Say("drying.block-says", ("n", reading.Number), ("d", Amount.Number(fit.Diffusivity * 1e8)), ("error", Amount.Fraction(Math.Round(Math.Exp(fit.DiffusivityError) - 1, 2))), ("air", Amount.Number(fit.Convection)))
                : say.Say("drying.block-silent", ("n", reading.Number), ("because", reading.Fit.NotChecked!)), Styles.BodyStrong) { Above = 1.5 };
        }

        if (drying is not null)
        {
            yield return new Paragraph(
                say.Say(
                    "drying.diffusivity", ("fast", SquareMillimetres(drying.Diffusivity.Fast)), ("middle", SquareMillimetres(drying.Diffusivity.Middle)), ("slow", SquareMillimetres(drying.Diffusivity.Slow)),
                    ("tag", Names.Of(drying.Known.FirstOrDefault(k => k.Key == "drying-diffusivity")?.Tag ?? (scene.House.Assumed.Any(a => a.Key == "drying-diffusivity") ? Tag.Given : Tag.Assumed)))), Styles.Body) { Above = 1.5 };
        }

        yield return new Table([new("") { Grows = 1 }], [.. ((string[])["drying.weigh-cast", "drying.weigh-seal", "drying.weigh-days", "drying.weigh-dry", "drying.weigh-write"]).Select(k => new Row(new Cell(say.Say(k)) { Tick = true }))]) { Above = 1, Pad = 0.45 };
        yield return new Table(
            [new(say.Say("drying.day")), .. ((string[])["0", "1", "2", "4", "7", "11", "16", "22", "29"]).Select(d => new Column(d, Anchor.Middle) { Grows = 1 }), new(say.Say("drying.day-dry"), Anchor.Middle) { Grows = 1 }],
            [.. ((string[])["drying.mass", "drying.warm", "drying.damp"]).Select(k => new Row([new Cell(say.Say(k)), .. Enumerable.Repeat(new Cell("........"), 10)]))]) { Above = 2 };
    }

    private static Amount SquareMillimetres(double? diffusivity) => Amount.Number((diffusivity ?? double.NaN) * 1e6);

    private static IEnumerable<Block> LeansOn(Scene scene, DryingResult drying)
    {
        var say = scene.Say;
        yield return new Heading(say.Say("drying.leans-on")) { Above = 4 };
        yield return new Paragraph(say.Say("drying.leans-on-note"), Styles.Small) { Above = 1 };
        yield return new Table(
            [new(say.Say("drying.what-assumed")) { Grows = 1 }, new(say.Say("drying.value"), Anchor.End), new(say.Say("drying.key"))],
            [
                .. drying.Assumptions.GroupBy(a => a.Source).OrderBy(g => g.Count()).SelectMany(g => g.Select(a =>
                    new Row(new Cell(say.Say(a.What)), new Cell(Value(scene, a)) { Lettering = Styles.BodyStrong }, new Cell(a.Key) { Lettering = Styles.Small }))
                    .Prepend(new Row(new Cell(say.Say(g.Key)) { Lettering = Styles.SmallStrong }) { Ruled = true })),
            ]) { Above = 1.5, Pad = 0.35 };
    }

    private static string Value(Scene scene, Assumption assumption) =>
        assumption is { Key: "drying-diffusivity", Value: Argument.Quantity { Value.Si: var si } } ? Wording.Unbroken(AmountText.Power(si)) : scene.Say.Say(assumption.Value);
}
