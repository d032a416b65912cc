using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>Sheets of a house that nobody has described yet: the same words, lines to write on in place of numbers.</summary>
internal static class BlankSheets
{
    public static IEnumerable<Draft> Lift(Wording say, PaperSize paper) => Draft.Flow(new SheetHead("lift-blank", say.Say("blank.lift")), paper.Portrait(),
    [
        Lines(say, ["pocket.lift", "lift.from", "lift.to", "lift.rise", "lift.batches", "lift.rise-per-batch", "lift.volume", "lift.platform"], Styles.Reading),
        new Heading(say.Say("lift.faces")) { Above = 4 },
        Writing(say, ["blank.at", "lift.inside-radius", "lift.outside-radius", "lift.thickness"], 2),
        new Heading(say.Say("lift.set-in")) { Above = 4 },
        Writing(say, ["blank.tick", "register-set.what", "register-set.height", "register-set.station", "daily.by"], 6),
        new Heading(say.Say("lift.openings")) { Above = 4 },
        Writing(say, ["blank.opening", "blank.starts", "blank.stops", "lift.header-top"], 2),
        Care(say, "wet-wall", "lifting", "platform", "wire"),
        new Heading(say.Say("lift.ready")) { Above = 4 },
        Ticks(say, "lift.test-stick", "lift.test-thumb", "lift.test-foot", "lift.test-shade"),
        new Paragraph(say.Say("lift.window-passed"), Styles.Body) { Above = 1.5 },
        Lines(say, ["lift.laid-on", "lift.firm-from", "lift.keys-until", "lift.checked-by"], Styles.Body) with { Above = 3 },
    ], say);

    public static IEnumerable<Draft> Opening(Wording say, PaperSize paper) => Draft.Flow(new SheetHead("opening-blank", say.Say("blank.opening-card")), paper.Portrait(),
    [
        Lines(say, ["blank.opening", "register-set.station", "blank.sill", "opening.rough", "opening.frame", "opening.frame-depth", "opening.gap", "blank.header"], Styles.Reading),
        new Heading(say.Say("opening.pieces")) { Above = 4 },
        Writing(say, ["blank.tick", "opening.piece", "blank.section", "opening.cut-length", "blank.how-many"], 6),
        Care(say, "brace", "header", "glass", "arch"),
        new Heading(say.Say("opening.steps-frame")) { Above = 3 },
        Ticks(say, "step.set-door", "step.set-window", "step.brace", "step.keys", "step.slip", "step.deadmen", "step.dry-bearing", "step.header", "step.gap", "step.sill", "step.leave-brace"),
        new Heading(say.Say("opening.steps-hole")) { Above = 3 },
        Ticks(say, "step.hole-first", "step.form", "step.deadmen", "step.slip", "step.form-out", "step.fit-later", "step.gap"),
        Lines(say, ["opening.check-plumb", "opening.check-square", "opening.check-header", "opening.check-by"], Styles.Body) with { Above = 3 },
        new Heading(say.Say("blank.sketch")) { Above = 4 },
        new Paragraph(say.Say("blank.sketch-note"), Styles.Small) { Above = 1 },
    ], say);

    public static IEnumerable<Draft> Mix(Wording say, PaperSize paper) => Draft.Flow(new SheetHead("mix-card-blank", say.Say("mix-card.title")), paper.Portrait(),
    [
        Lines(say, ["mix-card.soil", "mix-card.clay", "mix-card.sand", "mix-card.water", "mix-card.armfuls", "mix-card.wetness"], Styles.Large) with { Across = 3 },
        new Paragraph(say.Say("mix-card.water-note"), Styles.Small) { Above = 1.5 },
        new Heading(say.Say("mix-card.feel")) { Above = 4 },
        Ticks(say, "mix-card.feel-ball", "mix-card.feel-squeeze", "mix-card.feel-straw", "mix-card.feel-foot", "mix-card.feel-hands"),
        new Heading(say.Say("blank.calibrate")) { Above = 4 },
        new Paragraph(say.Say("blank.calibrate-how"), Styles.Body) { Above = 1 },
        Lines(say, ["pocket.trial-batches", "pocket.trial-length", "pocket.trial-raised", "lift.rise-per-batch"], Styles.Reading) with { Above = 2 },
        new Heading(say.Say("mix-card.log")) { Above = 4 },
        Writing(say, ["mix-card.log-date", "mix-card.log-batches", "mix-card.log-water", "mix-card.log-ball", "mix-card.log-who"], 8),
        Care(say, "mix-lime", "treading", "dust", "straw", "lifting"),
    ], say);

    public static IEnumerable<Draft> Tests(Wording say, PaperSize paper) => Draft.Flow(new SheetHead("test-register-blank", say.Say("register.title")), paper.Portrait(),
    [
        new Heading(say.Say("register.bars")),
        Writing(say, ["register.fill-no", "register.fill-made", "blank.mix", "register.length", "register.shrinkage", "blank.cracked", "register.fill-by"], 7),
        new Heading(say.Say("register.specimens")) { Above = 4 },
        Writing(say, [.. ((string[])["no", "made", "from", "size", "crushed", "dried", "mass", "load", "by"]).Select(k => "register.fill-" + k)], 9),
        new Heading(say.Say("mix-card.soil-tests")) { Above = 4 },
        Writing(say, ["register.fill-made", "mix-card.jar", "mix-card.test-ribbon", "mix-card.test-ball", "mix-card.test-worm", "mix-card.test-wash", "register.fill-by"], 4),
        new Paragraph(say.Say("register.shape-note"), Styles.Small) { Above = 1.5 },
        Care(say, "tests", "lifting", "dust"),
    ], say);

    public static IEnumerable<Draft> Board(Wording say, PaperSize paper) => Draft.Flow(new SheetHead("day-board-blank", say.Say("board.title"), Clock.Forecast), paper.Drawing()[0],
    [
        new Table(
            [new("") { Grows = 1 }, .. Enumerable.Range(1, 6).Select(i => new Column(say.Say("weekday." + i)) { Grows = 2 })],
            [
                .. ((string[])["daily.date", "board.wall", "board.work", "pocket.mixing", "pocket.placing", "pocket.trimming", "pocket.checking", "blank.stone", "blank.timber", "blank.kitchen"])
                    .Select(k => new Row([new Cell(say.Say(k)) { Lettering = Styles.BodyStrong }, .. Enumerable.Range(0, 6).Select(_ => Dots.Cell(26))])),
            ]) { Pad = 2.2 },
        Ticks(say, "lift.test-stick", "lift.test-thumb", "lift.test-foot", "board.rain") with { Above = 3 },
        Care(say, "forecast-only", "wet-wall", "lifting", "treading"),
    ], say);

    private static Facts Lines(Wording say, string[] keys, Lettering lettering) => new([.. keys.Select(k => new Fact(say.Say(k), ""))], lettering);

    private static Table Ticks(Wording say, params string[] keys) => new([new("") { Grows = 1 }], [.. keys.Select(k => new Row(new Cell(say.Say(k)) { Tick = true }))]) { Above = 1, Pad = 0.35 };

    /// <summary>Columns of equal width with empty rows high enough for a pencil.</summary>
    private static Table Writing(Wording say, string[] keys, int rows) => new(
        [.. keys.Select(k => new Column(say.Say(k)) { Grows = 1 })],
        [.. Enumerable.Range(0, rows).Select(_ => new Row([.. keys.Select(k => new Cell("") { Tick = k == "blank.tick" })]))]) { Above = 1.5, Pad = 2.6 };

    private static Cautions Care(Wording say, params string[] keys) => new(say.Say("caution.title"), [.. keys.Select(k => say.Say("caution." + k))]) { Above = 4 };
}
