using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>The card in the lead builder's pocket: inches today, batches, what goes in, from when to when the next lift may go on, and who does what.</summary>
public static class PocketCard
{
    /// <summary>All lifts of a house.</summary>
    public static Sheet Of(PaperSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        var scene = new Scene(set);
        return Of(scene).First().Finish(1, 1, scene.Imprint, scene.Say);
    }

    internal static IEnumerable<Draft> Of(Scene scene)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        var table = new Table(
            [
                new(say.Say("pocket.lift")), new(say.Say("pocket.to"), Anchor.End), new(""), new(say.Say("pocket.batches"), Anchor.End),
                new(say.Say("pocket.rise-per-batch"), Anchor.End) { Grows = 1 }, new(""), new(say.Say("pocket.set-in"), Anchor.End),
            ],
            [.. g.Lifts.Reverse().Select(l => Lift(scene, l))]) { Lettering = Styles.BodyStrong };
        return Draft.Flow(new SheetHead("pocket-card", say.Say("pocket.title")), scene.Set.Options.Paper.Pocket(), [table, new Paragraph(say.Say("pocket.note"), Styles.Small) { Above = 1.5 }, .. Today(say), Caution(say)], say);
    }

    /// <summary>One lift from ten typed numbers, without a house file.</summary>
    /// <param name="numbers">The ten numbers.</param>
    /// <param name="options">Paper, date and units.</param>
    public static Sheet FromNumbers(PocketNumbers numbers, PaperOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        var say = new Wording(options.Units ?? UnitSystem.Imperial, Phrasebook.In(options.Language));
        var count = PocketCount.Of(numbers);
        Fact Large(string key, Amount amount) => new(say.Say(key), say.One(amount), Wording.Dotted(say.Other(amount), say.Say(Tag.Computed)));
        Fact Missing(string key) => new(say.Say(key), say.Say("not-known"), say.Say("lift.no-batch"));
        var facts = new Facts(
        [
            Large("pocket.raise", Amount.Metres(count.Rise)),
            count.Batches is { } b ? Large("pocket.batches", Amount.Number(Math.Round(b * 2) / 2)) : Missing("pocket.batches"),
            count.RisePerBatch is { } r ? Large("pocket.rise-per-batch", Amount.Metres(r)) : Missing("pocket.rise-per-batch"),
            count.BatchesEach is { } e ? Large("pocket.each", Amount.Number(Math.Round(e, 1))) : Missing("pocket.each"),
            Large("lift.volume", new Volume(count.Volume)),
            new Fact(say.Say("lift.to"), say.One(numbers!.Top), Wording.Dotted(say.Other(numbers.Top), say.Say(Tag.Given))),
        ], Styles.Large) { Across = 2 };
        var typed = new Paragraph(
            say.Say("pocket.typed",
                ("ring", numbers.RingLength), ("openings", numbers.OpeningWidths), ("bottom", numbers.Bottom), ("top", numbers.Top), ("below", numbers.ThicknessAtBottom), ("above", numbers.ThicknessAtTop),
                ("batches", numbers.TrialBatches), ("length", numbers.TrialLength), ("raised", numbers.TrialRaised), ("people", numbers.People)),
            Styles.Small);
        return Single(options, say, new SheetHead("pocket-card", say.Say("pocket.title")), [facts, typed, .. Today(say), Caution(say)]);
    }

    /// <summary>An empty card to fill in by hand.</summary>
    public static Sheet Blank(PaperOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        var say = new Wording(options.Units ?? UnitSystem.Imperial, Phrasebook.In(options.Language));
        var facts = new Facts([.. ((string[])["pocket.raise", "lift.to", "pocket.batches", "pocket.rise-per-batch", "pocket.each", "pocket.set-in"]).Select(k => new Fact(say.Say(k), ""))], Styles.Large) { Across = 2 };
        return Single(options, say, new SheetHead("pocket-card-blank", say.Say("pocket.title-blank")), [facts, .. Today(say), Caution(say)]);
    }

    /// <summary>Two cards on one sheet of twice the width, with a line to cut along.</summary>
    public static Sheet TwoUp(Sheet left, Sheet right)
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        var (width, height) = (left.Width + right.Width, Math.Max(left.Height, right.Height));
        return new Sheet(left.Key + "-two-up", left.Title, width, height,
        [
            new Group("left", left.Marks),
            new Group("right", right.Marks.Select(m => m.Moved(left.Width, 0)).ToSequence()),
            new Stroke(Outline.Line(left.Width, 5, left.Width, height - 5), new Pen(Weight.Hair, Dash.Dashed)),
        ]);
    }

    private static Row Lift(Scene scene, LiftSlice lift)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        var counted = scene.Set.Quantities.Lifts.FirstOrDefault(q => q.Lift == lift.Index);
        var embeds = LiftContents.Of(g, lift).Listed;
        Cell[] perBatch = counted?.RisePerBatch is { } r ? scene.Pair(Amount.Metres(r), Styles.BodyStrong) : [new Cell("?"), new Cell("")];
        return new Row(
        [
            new Cell(say.One(Amount.Count(lift.Number))) { Tick = true, Lettering = Styles.Reading },
            .. scene.Pair(lift.Top, Styles.Reading),
            counted?.Batches is { } b ? new Cell(say.One(Amount.Number(Math.Round(b * 2) / 2))) { Lettering = Styles.Reading } : new Cell("?"),
            .. perBatch,
            new Cell(embeds == 0 ? "–" : say.One(Amount.Count(embeds))),
        ]);
    }

    private static IEnumerable<Block> Today(Wording say)
    {
        yield return new Heading(say.Say("pocket.today")) { Above = 4 };
        yield return new Facts(
            [.. ((string[])["pocket.lift-today", "pocket.rise-today", "pocket.window-from", "pocket.window-until", "pocket.mixing", "pocket.placing", "pocket.trimming", "pocket.checking"]).Select(k => new Fact(say.Say(k), ""))],
            Styles.Body) { Above = 2, Across = 2 };
        yield return new Paragraph(say.Say("pocket.ready"), Styles.Small) { Above = 2 };
    }

    private static Cautions Caution(Wording say) => new(say.Say("caution.title"), [say.Say("caution.wet-wall")]);

    private static Sheet Single(PaperOptions options, Wording say, SheetHead head, IReadOnlyList<Block> blocks) =>
        Draft.Flow(head, options.Paper.Pocket(), blocks, say).First().Finish(1, 1, new Imprint("", options.Date, options.Revision), say);
}
