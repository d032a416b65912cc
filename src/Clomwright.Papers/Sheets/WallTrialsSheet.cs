using Clomwright.Analysis.WallTrials;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>The model of the wall beside everyday use: rising lift by lift, young under its roof, its foot soaked, the ground settled, pushed by its roof.</summary>
internal static class WallTrialsSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Trials is not { Value: { } trials })
        {
            return [];
        }

        var say = scene.Say;
        List<Block> blocks =
        [
            new Paragraph(say.Say("trials.intro"), Styles.Body),
            new Cautions(say.Say("caution.title"), [say.Say("caution.wall-model"), say.Say(trials.Dryness.Forecast ? "trials.forecast" : "trials.stated")]),
            new Heading(say.Say("trials.rising")) { Above = 3 }, Rising(scene, trials), new Paragraph(say.Say("trials.rising-how"), Styles.Small) { Above = 1 },
            .. trials.Sags.Count > 0 ? (Block[])[new Heading(say.Say("trials.sags")) { Above = 4 }, Sags(scene, trials), new Paragraph(say.Say("trials.sags-how"), Styles.Small) { Above = 1 }] : [],
            new Heading(say.Say("trials.roof-day")) { Above = 4 }, RoofDay(scene, trials),
            new Heading(say.Say("trials.wet")) { Above = 4 }, .. Wet(scene, trials),
            new Heading(say.Say("trials.settled")) { Above = 4 }, Settled(scene, trials),
            new Heading(say.Say("trials.pushed")) { Above = 4 }, Pushed(scene, trials),
        ];
        return Draft.Flow(new SheetHead("wall-trials", say.Say("trials.title"), Clock.Forecast, ""), scene.Portrait, blocks, say);
    }

    private static Cell Stress(Scene scene, double pascals) => scene.Cell(new Amount(pascals, Dimension.Stress));

    private static Cell Times(Scene scene, double margin) => new(double.IsFinite(margin) ? scene.Say.One(Amount.Number(Math.Round(margin, 2))) : "–") { Lettering = Styles.BodyStrong };

    private static string Where(Scene scene, PressedPlace place) => scene.Say.Say("trials.place", ("station", Amount.Metres(place.Station)), ("height", Amount.Metres(place.Height)));

    private static Table Rising(Scene scene, WallTrialsResult trials)
    {
        var say = scene.Say;
        return new Table(
            [
                new(say.Say("hand.lift")), new(say.Say("trials.day"), Anchor.End), new(say.Say("hand.high"), Anchor.End), new(say.Say("trials.foot"), Anchor.End), new(say.Say("trials.foot-strength"), Anchor.End),
                new(say.Say("trials.hardest"), Anchor.End), new(say.Say("trials.strength"), Anchor.End), new(say.Say("trials.times"), Anchor.End), new(say.Say("trials.asked"), Anchor.End), new(say.Say("trials.where")) { Grows = 1 },
            ],
            [.. trials.Lifts.Select(l => new Row(
                new Cell($"{l.Number}") { Lettering = Styles.BodyStrong }, new Cell(l.Day is { } day ? say.One(Amount.Number(Math.Round(day, 1))) : "–"), scene.Metres(l.Height), Stress(scene, l.Base.Pressure), Stress(scene, l.Base.Strength),
                Stress(scene, l.Worst.Pressure), Stress(scene, l.Worst.Strength), Times(scene, l.Worst.Margin), new Cell(say.One(Amount.Number(l.Safety))), new Cell(Where(scene, l.Worst))))]) { Above = 1.5, Pad = 0.7 };
    }

    private static Table Sags(Scene scene, WallTrialsResult trials)
    {
        var say = scene.Say;
        return new Table(
            [new(say.Say("trials.opening")) { Grows = 1 }, new(say.Say("trials.sill"), Anchor.End), new(say.Say("trials.head"), Anchor.End), new(say.Say("trials.bends"), Anchor.End), new(say.Say("trials.closes"), Anchor.End)],
            [.. trials.Sags.Select(o => new Row(
                new Cell(o.Opening) { Lettering = Styles.BodyStrong }, Fine(scene, o.Sill), Fine(scene, o.Head), Fine(scene, o.Bends), Fine(scene, o.Closes)))]) { Above = 1.5, Pad = 0.7 };
    }

    /// <summary>Tenths of a millimetre: less than a tape reads.</summary>
    private static Cell Fine(Scene scene, double metres) => new(scene.Say.Say("trials.millimetres", ("n", Amount.Number(Math.Round(metres * 1000, 1)))));

    private static Block RoofDay(Scene scene, WallTrialsResult trials) => trials.Roof.Value is { } young
        ? new Paragraph(scene.Say.Say(
            young.Planned ? "trials.roof-planned" : "trials.roof-forecast", ("day", Amount.Number(Math.Round(young.Day))), ("stage", WallWords.Case(young.Case)), ("pressure", new Amount(young.Worst.Pressure, Dimension.Stress)),
            ("strength", new Amount(young.Worst.Strength, Dimension.Stress)), ("place", Where(scene, young.Worst)), ("margin", Amount.Number(Math.Round(young.Worst.Margin, 2))), ("safety", Amount.Number(young.Safety)),
            ("weakest", Amount.Fraction(Math.Round(young.Weakest, 2)))), Styles.Body) { Above = 1.5 }
        : RoofPoles.NotChecked(scene, trials.Roof.NotChecked!);

    private static IEnumerable<Block> Wet(Scene scene, WallTrialsResult trials)
    {
        var say = scene.Say;
        if (trials.Wet.Value is not { } wet)
        {
            yield return RoofPoles.NotChecked(scene, trials.Wet.NotChecked!);
            yield break;
        }

        yield return new Table(
            [
                new(say.Say("trials.water")), .. ((string[])["trials.strength", "trials.round-pressed", "trials.times", "trials.part-pressed", "trials.times", "trials.beside-pressed", "trials.times"]).Select(k => new Column(say.Say(k), Anchor.End) { Grows = 1 }),
            ],
            [.. wet.Round.Zip(wet.Part, (r, p) => new Row(
                new Cell(say.One(Amount.Fraction(Math.Round(r.Water, 3)))) { Lettering = Styles.BodyStrong }, Stress(scene, r.Strength), Stress(scene, r.Soaked.Pressure), Times(scene, r.Soaked.Margin),
                Stress(scene, p.Soaked.Pressure), Times(scene, p.Soaked.Margin), Stress(scene, p.Dry.Pressure), Times(scene, p.Dry.Margin)))]) { Above = 1.5, Pad = 0.7 };
        string Content(double? water) => water is { } w ? say.One(Amount.Fraction(Math.Round(w, 3))) : say.Say("trials.none");
        yield return new Paragraph(
            say.Say(
                "trials.wet-says", ("height", Amount.Metres(wet.Height)), ("safety", Amount.Number(wet.Safety)), ("safe", Content(wet.WaterAt(wet.Safety))), ("gone", Content(wet.WaterAt(1))), ("part", wet.PartAddress),
                ("partSafe", Content(wet.PartWaterAt(wet.Safety))), ("partGone", Content(wet.PartWaterAt(1))), ("plastic", Amount.Fraction(Math.Round(wet.Plastic, 3)))), Styles.Small) { Above = 1 };
        yield return new Table(
            [new(say.Say("trials.skin")) { Grows = 0.4 }, new(say.Say("trials.depth"), Anchor.End), new(say.Say("trials.left-pressed"), Anchor.End), new(say.Say("trials.times"), Anchor.End), new(say.Say("trials.where")) { Grows = 1 }],
            [.. wet.Skins.Select(s => new Row(
                new Cell(say.Say("trials.skin-" + s.Faces)) { Lettering = Styles.BodyStrong }, scene.Metres(s.Depth), s.Standing ? Stress(scene, s.Worst.Pressure) : new Cell("–"), s.Standing ? Times(scene, s.Worst.Margin) : new Cell(say.Say("trials.falls")),
                new Cell(Where(scene, s.Worst))) { Ruled = s.Depth == wet.Skins[0].Depth })]) { Above = 3, Pad = 0.7 };
    }

    private static Block Settled(Scene scene, WallTrialsResult trials) => trials.Settled.Value is { } settled
        ? new Paragraph(scene.Say.Say(
            settled.Standing ? "trials.settled-says" : "trials.settled-falls", ("depth", Amount.Metres(settled.Depth)), ("arc", Amount.Metres(settled.Arc)), ("station", Amount.Metres(settled.Station)), ("edge", new Amount(settled.Edge, Dimension.Stress)),
            ("before", new Amount(settled.EdgeBefore, Dimension.Stress)), ("tension", new Amount(settled.Tension, Dimension.Stress)), ("lifted", Amount.Fraction(Math.Round(settled.Lifted, 2))), ("case", WallWords.Case(settled.Case))), Styles.Body) { Above = 1.5 }
        : RoofPoles.NotChecked(scene, trials.Settled.NotChecked!);

    private static Paragraph Pushed(Scene scene, WallTrialsResult trials) => trials.Pushed.Value is { } pushed
        ? new Paragraph(scene.Say.Say(
            pushed.Slipping ? "trials.slips" : "trials.pushes", ("outward", new Amount(pushed.Outward, Dimension.Force)), ("round", new Amount(pushed.Round, Dimension.Force)), ("edge", new Amount(pushed.Edge, Dimension.Stress)),
            ("before", new Amount(pushed.EdgeBefore, Dimension.Stress)), ("tension", new Amount(pushed.Tension, Dimension.Stress)), ("lifted", Amount.Fraction(Math.Round(pushed.Lifted, 2))), ("turns", new Amount(pushed.Turns, Dimension.Moment)),
            ("holds", new Amount(pushed.Hand.Value, Dimension.Moment)), ("case", WallWords.Case(pushed.Case))), Styles.Body) { Above = 1.5 }
        : new Paragraph(scene.Say.Say(trials.Pushed.NotChecked!), Styles.Body) { Above = 1.5 };
}
