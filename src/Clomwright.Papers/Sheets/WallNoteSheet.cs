using Clomwright.Analysis;
using Clomwright.Analysis.Structure;
using Clomwright.Analysis.WallTrials;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>The model of the whole wall as an engineer checks it: body, grid, loads, checks of the model itself, what each pier passes on, headers, layout, and what the numbers hang on.</summary>
internal static class WallNoteSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Structure is not { Value: { } wall })
        {
            return [];
        }

        return Draft.Fewest([0.7, 0.35], pad => Of(scene, wall, pad));
    }

    /// <summary>The sheets with some room over and under the rows of the longer tables.</summary>
    private static IEnumerable<Draft> Of(Scene scene, StructureResult wall, double pad)
    {
        var say = scene.Say;
        List<Block> blocks =
        [
            new Paragraph(say.Say("note.intro"), Styles.Body),
            new Heading(say.Say("note.body")) { Above = 3 }, Body(scene, wall),
            new Heading(say.Say("note.loads")) { Above = 4 },
            .. ((string[])["note.load-weight", "note.load-roof", "note.load-wind", "note.load-shake", wall.Soil is null ? "note.load-no-soil" : "note.load-soil"]).Select((k, i) => new Paragraph(say.Say(k, ("cases", wall.Cases)), Styles.Small) { Above = i == 0 ? 1.5 : 0.8 }),
            new Heading(say.Say("note.checks")) { Above = 4 }, Checks(scene, wall),
            .. Refinement(scene),
            new Heading(Piers(scene)) { Above = 4 }, Stands(scene, wall, pad), new Paragraph(say.Say("note.piers-how"), Styles.Small) { Above = 1 },
            .. wall.Headers.Count > 0 ? (Block[])[new Heading(say.Say("note.headers")) { Above = 4 }, Headers(scene, wall, pad)] : [],
            new Heading(say.Say("note.layout")) { Above = 4 }, Layout(scene, wall),
            .. Sensitivity(scene),
            new Paragraph(say.Say("note.factors"), Styles.Small) { Above = 2 },
        ];
        return Draft.Flow(new SheetHead("wall-note", say.Say("note.title")), scene.Portrait, blocks, say);
    }

    /// <summary>Shares of piers, across and along, that are over the whole: how many of how many, and the most. None where the wall was not modelled.</summary>
    public static SharesOver Over(Scene scene) => SharesOver.In(scene.Set.Structure is { Value: { } wall } ? wall.Piers.SelectMany(p => (double[])[p.Across.Use, p.Along.Use]) : []);

    /// <summary>Says at once that a share over the whole is a question: no verdict counts it among what falls short.</summary>
    private static string Piers(Scene scene) => Over(scene) is { Count: > 0 } over ? scene.Say.Say("note.piers-over", ("over", over.Count), ("count", over.Of)) : scene.Say.Say("note.piers");

    private static Table Body(Scene scene, StructureResult wall)
    {
        var (say, division) = (scene.Say, wall.Division);
        return new Table(
            [new(say.Say("note.what")) { Grows = 1 }, new(say.Say("note.value"), Anchor.End)],
            [
                Line("note.grid", $"{division.Around} × {division.Up} × {division.Through}"),
                Line("note.unknowns", say.One(Amount.Count(division.Unknowns))),
                Line("note.modulus", say.One(new Amount(division.Modulus, Dimension.Stress))),
                Line("note.bed", $"{say.One(Amount.Number(WallNumbers.Of(scene.House.Assumed)["wall-base-stiffness"]))} N/m³"),
                .. wall.Assumptions.Where(a => a.Key == "wall-cob-poisson").Select(a => new Row(new Cell(say.Say(a.What)), new Cell(say.Say(a.Value)))),
                Line("note.patch", say.One(Amount.Metres(wall.Patch))),
                Line("note.allowed", say.One(new Amount(wall.Allowed.Value, Dimension.Stress))),
            ]) { Above = 1.5, Pad = 0.7 };

        Row Line(string key, string value) => new(new Cell(say.Say(key)), new Cell(value));
    }

    private static Table Checks(Scene scene, StructureResult wall)
    {
        var say = scene.Say;
        Row Line(string key, double value) => new(new Cell(say.Say(key)), new Cell(Wording.Power(value)) { Lettering = Styles.BodyStrong }, new Cell(Wording.Power(1e-9)));
        return new Table(
            [new(say.Say("note.what")) { Grows = 1 }, new(say.Say("note.seen"), Anchor.End), new(say.Say("note.asked"), Anchor.End)],
            [Line("note.reactions", wall.Checks.ReactionError), Line("note.residual", wall.Checks.Residual), Line("note.energy", wall.Checks.Reciprocity)]) { Above = 1.5, Pad = 0.7 };
    }

    private static IEnumerable<Block> Refinement(Scene scene) => scene.Set.Trials is { Value: { } trials }
        ? [new Paragraph(scene.Say.Say("note.refined"), Styles.Body) { Above = 2.5 }, Variants(scene, trials.Refinement, unknowns: true)]
        : [new Paragraph(scene.Say.Say("note.refined-examples", ("mean", Amount.Fraction(WallPrecision.Mean)), ("edge", Amount.Fraction(WallPrecision.Edge)), ("pole", Amount.Fraction(WallPrecision.UnderPole)), ("tension", Amount.Fraction(WallPrecision.Tension))), Styles.Small) { Above = 1.5 }];

    private static IEnumerable<Block> Sensitivity(Scene scene)
    {
        yield return new Heading(scene.Say.Say("note.sensitivity")) { Above = 4 };
        if (scene.Set.Trials is not { Value: { } trials })
        {
            yield return new Paragraph(scene.Say.Say("note.not-deep"), Styles.Body) { Above = 1.5 };
            yield break;
        }

        yield return Variants(scene, trials.Sensitivity, unknowns: false);
        yield return new Paragraph(scene.Say.Say("note.sensitivity-how"), Styles.Small) { Above = 1 };
    }

    private static Table Variants(Scene scene, Sequence<WallVariant> variants, bool unknowns)
    {
        var say = scene.Say;
        Cell Share(double share) => share > 0 ? new Cell(say.One(Amount.Fraction(Math.Round(share, 3)))) : new Cell("–");
        return new Table(
            [
                new(say.Say("note.taken")) { Grows = 1 }, new(say.Say("note.mean-used"), Anchor.End), new(say.Say("note.edge-used"), Anchor.End), new(say.Say("note.pole-used"), Anchor.End),
                new(say.Say("note.header-used"), Anchor.End), new(say.Say("note.tension"), Anchor.End),
            ],
            [.. variants.Select(v => new Row(
                new Cell(unknowns ? say.Say("note.variant-grid", ("unknowns", v.Unknowns)) : say.Say("note.variant." + Key(v.Key), ("shift", Amount.Metres(FromDrying.SeatShift)))),
                Share(v.Mean), new Cell(say.One(Amount.Fraction(Math.Round(v.Edge, 3)))) { Lettering = Styles.BodyStrong }, Share(v.Pole), Share(v.Header), scene.Cell(new Amount(v.Tension, Dimension.Stress))))]) { Above = 1.5, Pad = 0.7 };
    }

    private static string Key(string key) => string.Concat(key.Select(c => char.IsUpper(c) ? $"-{char.ToLowerInvariant(c)}" : c.ToString()));

    private static Table Stands(Scene scene, StructureResult wall, double pad)
    {
        var say = scene.Say;
        IEnumerable<Row> Rows(PierStress pier)
        {
            foreach (var (stand, across) in new[] { (pier.Across, true), (pier.Along, false) })
            {
                Cell Of(double value) => stand.Mode == "tipping" ? scene.Metres(value) : scene.Cell(new Amount(value, Dimension.Force));
                yield return new Row(
                    new Cell(across ? say.Between(pier.Address) : "") { Lettering = Styles.BodyStrong },
                    new Cell(say.Say(across ? "note.across" : "note.along"), say.Say(new Message($"study.stand.{stand.Mode}"))), scene.Metres(stand.Height), scene.Cell(new Amount(stand.Load, Dimension.Force)),
                    Of(stand.Asked), Of(stand.Holds), new Cell(double.IsFinite(stand.Use) ? say.One(Amount.Fraction(Math.Round(stand.Use, 2))) : "–") { Lettering = Styles.BodyStrong },
                    new Cell(say.Say(WallWords.Case(stand.Case)))) { Ruled = across };
            }
        }

        return new Table(
            [
                new(say.Say("note.pier")) { Grows = 0.3 }, new(say.Say("note.way")) { Grows = 0.5 }, new(say.Say("note.at"), Anchor.End), new(say.Say("note.pressed"), Anchor.End), new(say.Say("note.stands"), Anchor.End),
                new(say.Say("note.may"), Anchor.End), new(say.Say("note.used"), Anchor.End), new(say.Say("note.by")) { Grows = 1.4 },
            ],
            [.. wall.Piers.SelectMany(Rows)]) { Above = 1.5, Pad = pad };
    }

    private static Table Headers(Scene scene, StructureResult wall, double pad)
    {
        var say = scene.Say;
        var allowed = scene.Set.Mix?.Strength.Allowable;
        return new Table(
            [new(say.Say("note.header")) { Grows = 0.6 }, new(say.Say("note.pressure"), Anchor.End), new(say.Say("note.used"), Anchor.End), new(say.Say("note.by")) { Grows = 1 }],
            [.. wall.Headers.Select(h => new Row(
                new Cell(say.Say(h.Left ? "note.left" : "note.right", ("opening", h.Opening))) { Lettering = Styles.BodyStrong }, scene.Cell(new Amount(h.Pressure, Dimension.Stress)),
                new Cell(allowed is { } f ? say.One(Amount.Fraction(Math.Round(h.Pressure / f, 2))) : "–"), new Cell(say.Say(WallWords.Case(h.Case)))))]) { Above = 1.5, Pad = pad };
    }

    private static Paragraph Layout(Scene scene, StructureResult wall)
    {
        var layout = wall.Layout;
        return new Paragraph(
            scene.Say.Say(
                "note.layout-says", ("apart", Amount.Metres(layout.Apart)), ("ratio", Amount.Number(Math.Round(layout.Ratio, 2))), ("still", Amount.Number(Math.Round(layout.RatioStill, 2))), ("bearing", new Amount(layout.Bearing, Dimension.Angle)),
                ("weakest", new Amount(layout.Weakest, Dimension.Angle)), ("sway", Amount.Number(Math.Round(layout.Sway, 2)))),
            Styles.Body) { Above = 1.5 };
    }
}
