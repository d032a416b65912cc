using Clomwright.Analysis;
using Clomwright.Analysis.Mix;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>Every specimen, what it reads, by which rule it gives which strength, and what is missing: for the office as for the builder.</summary>
internal static class TestRegisterSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Mix is not { } mix)
        {
            return [];
        }

        var say = scene.Say;
        var register = mix.Register;
        Block[] blocks =
        [
            .. Later(scene, register),
            .. Strength(scene, mix.Strength),
            .. Bars(scene, register),
            .. Specimens(scene, register),
            .. ByRule(scene, register),
            .. Others(scene, register),
            .. Written(scene),
            .. Missing(say, register),
            .. Blank(say),
            new Cautions(say.Say("caution.title"), [say.Say("caution.tests"), say.Say("caution.lifting"), say.Say("caution.dust")]) { Above = 4 },
        ];
        return Draft.Flow(new SheetHead("test-register", say.Say("register.title")), scene.Portrait, blocks, say);
    }

    /// <summary>Tests dated after the day of the sheet: papers know no clock, so they count, and one of the dates is wrong.</summary>
    private static IEnumerable<Block> Later(Scene scene, TestRegister register)
    {
        var later = register.Bars.Count(b => b.Date > scene.Imprint.Date) + register.Specimens.Count(s => s.Date > scene.Imprint.Date);
        if (later > 0)
        {
            yield return new Paragraph(scene.Say.Say("register.later", ("n", later), ("date", scene.Imprint.Date)), Styles.BodyStrong);
        }
    }

    private static IEnumerable<Block> Strength(Scene scene, CobStrength strength)
    {
        var say = scene.Say;
        Fact Of(string key, double pascals, Tag tag) => scene.Fact(key, new Amount(pascals, Dimension.Stress), tag);
        yield return new Facts(
        [
            Of("register.allowable", strength.Allowable, strength.Tag),
            Of("register.characteristic", strength.Characteristic, strength.Tag),
            strength.Mean is { } mean ? Of("register.mean", mean, Tag.Measured) : new Fact(say.Say("register.mean"), say.Say("not-known")),
        ], Styles.Reading) { Across = 3 };
        yield return new Paragraph(say.Say("register.strength", ("why", strength.Why), ("divisor", Amount.Number(strength.Divisor))), Styles.Body) { Above = 1.5 };
    }

    private static IEnumerable<Block> Bars(Scene scene, TestRegister register)
    {
        var say = scene.Say;
        yield return new Heading(say.Say("register.bars")) { Above = 4 };
        if (register.Bars.Count > 0)
        {
            yield return new Table(
                [
                    new(say.Say("register.no")), new(say.Say("register.mix")), new(say.Say("register.length"), Anchor.End), new(say.Say("register.shrinkage"), Anchor.End),
                    .. register.BarLimits.Select(l => new Column(say.Say(Amount.Fraction(l.Share.Value)))), new(say.Say("register.who")) { Grows = 1 },
                ],
                [
                    .. register.Bars.Select(b => new Row(
                    [
                        Number(say, b.Number), Mix(say, b.Trial, b.OfThisMix), scene.Metres(b.Length),
                        new Cell(say.One(Amount.Fraction(b.Shrinkage)), say.Say(b.Cracked ? "register.cracked" : "register.whole")) { Lettering = Styles.BodyStrong },
                        .. register.BarLimits.Select(l => Held(say, b, l)),
                        Who(say, b.Date, b.Tester),
                    ])),
                ]) { Above = 1.5 };
        }

        yield return new Paragraph(say.Say("register.limits", ("limits", new Argument.List(register.BarLimits.Select(l => (Argument)Message.Of("papers.register.limit", ("share", Amount.Fraction(l.Share.Value)), ("name", l.Name), ("source", say.Book.Title(l.Share.Source)))).ToSequence()))), Styles.Small) { Above = 1.5 };
    }

    private static Cell Held(Wording say, BarReading bar, BarLimit limit) => new(
        say.Say(bar.Shrinkage <= limit.Share.Value * (1 + 1e-9) ? "register.within" : "register.over"), limit.Fits(bar.Length) ? "" : say.Say("register.other-box"));

    private static IEnumerable<Block> Specimens(Scene scene, TestRegister register)
    {
        var say = scene.Say;
        yield return new Heading(say.Say("register.specimens")) { Above = 4 };
        if (register.Specimens.Count == 0)
        {
            yield return new Paragraph(say.Say("register.none"), Styles.Body) { Above = 1.5 };
            yield break;
        }

        yield return new Table(
            [
                new(say.Say("register.no")), new(say.Say("register.mix")), new(say.Say("register.shape")), new(say.Say("register.dried"), Anchor.End), new(say.Say("register.load-over-area"), Anchor.End),
                new(say.Say("register.as-prism"), Anchor.End), new(say.Say("register.counts")), new(say.Say("register.who")) { Grows = 1 },
            ],
            [
                .. register.Specimens.Select(s => new Row(
                    Number(say, s.Number), Mix(say, s.Trial, s.LeftOut?.Key is not ("analysis.left-out.mix" or "analysis.left-out.trial")),
                    new Cell(say.Say("register.shape-" + s.Shape), Size(say, s)),
                    new Cell(say.Say("register.days", ("n", s.CuredDays)), s.Moisture is { } w ? say.Say("register.damp", ("w", Amount.Fraction(w))) : say.Say("register.damp-unknown")),
                    scene.Cell(new Amount(s.Strength, Dimension.Stress)), scene.Cell(new Amount(s.AsPrism, Dimension.Stress)) with { Lettering = Styles.BodyStrong },
                    new Cell(say.Say(s.Counts ? "register.yes" : "register.no-count"), s.LeftOut is { } why ? say.Say(why) : s.FromWall ? say.Say("register.from-wall") : ""),
                    Who(say, s.Date, s.Tester))),
            ]) { Above = 1.5 };
        yield return new Paragraph(say.Say("register.shape-note"), Styles.Small) { Above = 1.5 };
    }

    private static string Size(Wording say, SpecimenReading s) => string.Join(" × ", ((double[])[s.Width, s.Depth, s.Height]).Select(m => say.One(Amount.Metres(m))));

    private static IEnumerable<Block> ByRule(Scene scene, TestRegister register)
    {
        var say = scene.Say;
        yield return new Heading(say.Say("register.by-rule")) { Above = 4 };
        yield return new Table(
            [new(say.Say("register.rule")) { Grows = 1 }, new(say.Say("register.value"), Anchor.End)],
            [
                .. register.ByRule.Select(r => new Row(
                    new Cell(say.Say(r.Name), say.Say(r.Source)),
                    r.Value.Value is { } value ? scene.Cell(new Amount(value.Value, Dimension.Stress)) with { Lettering = Styles.BodyStrong } : new Cell(say.Say("not-checked"), say.Say(r.Value.NotChecked!)))),
            ]) { Above = 1.5 };
        var scatter = register.Sample.Value is { Count: > 1 } sample ? say.Say("register.scatter", ("n", sample.Count), ("variation", Amount.Fraction(sample.Variation))) + " " : "";
        yield return new Paragraph(scatter + say.Say("register.by-rule-note"), Styles.Small) { Above = 1.5 };
    }

    private static IEnumerable<Block> Others(Scene scene, TestRegister register)
    {
        var say = scene.Say;
        Row[] rows =
        [
            .. register.Ruptures.Select(r => new Row(
                new Cell(say.Say("register.brick", ("n", r.Number))), Mix(say, r.Trial, r.OfThisMix),
                new Cell(say.Say("register.rupture", ("modulus", new Amount(r.Modulus.Value, Dimension.Stress))), say.Say(r.Oven ? "register.rupture-oven" : "register.rupture-note")))),
            .. register.Drops.Select(d => new Row(new Cell(say.Say("register.drop", ("n", d.Number))), Mix(say, d.Trial, d.OfThisMix), new Cell(say.Say(d.Says), say.Say(d.Source)))),
            .. register.Erosions.Select(e => new Row(new Cell(say.Say("register.erosion", ("n", e.Number))), Mix(say, e.Trial, e.OfThisMix), new Cell(say.Say(e.Says), say.Say(e.Source)))),
        ];
        if (rows.Length > 0)
        {
            yield return new Heading(say.Say("register.others")) { Above = 4 };
            yield return new Table([new(say.Say("register.test")), new(say.Say("register.mix")), new(say.Say("register.says")) { Grows = 1 }], rows) { Above = 1.5 };
        }
    }

    /// <summary>Tests in the site record, as they were written there; no strength is read from them.</summary>
    private static IEnumerable<Block> Written(Scene scene)
    {
        var say = scene.Say;
        Row[] rows = [.. scene.Set.Record.Standing.Where(e => e.What is Seen.Tested).OrderBy(e => e.What.On).Select(e => (Entry: e, Test: (Seen.Tested)e.What)).Select(t => new Row(
            new Cell(say.Say("register.written-test", ("test", t.Test.Test), ("of", t.Test.Of))) { Lettering = Styles.BodyStrong }, new Cell(t.Test.Result), Who(say, t.Test.Date, t.Entry.Author)))];
        if (rows.Length > 0)
        {
            yield return new Heading(say.Say("register.written")) { Above = 4 };
            yield return new Table([new(say.Say("register.test")) { Grows = 0.6 }, new(say.Say("register.says")) { Grows = 1 }, new(say.Say("register.who"))], rows) { Above = 1.5 };
            yield return new Paragraph(say.Say("register.written-note"), Styles.Small) { Above = 1.5 };
        }
    }

    private static IEnumerable<Block> Missing(Wording say, TestRegister register)
    {
        yield return new Heading(say.Say("register.missing")) { Above = 4 };
        if (register.Missing.Count == 0)
        {
            yield return new Paragraph(say.Say("register.nothing-missing"), Styles.Body) { Above = 1 };
        }

        foreach (var missing in register.Missing)
        {
            yield return new Paragraph("– " + say.Say(missing), Styles.Body) { Above = 0.8 };
        }
    }

    private static IEnumerable<Block> Blank(Wording say)
    {
        yield return new Heading(say.Say("register.to-fill")) { Above = 4 };
        yield return new Table(
            [.. ((string[])["no", "made", "from", "size", "crushed", "dried", "mass", "load", "by"]).Select(k => new Column(say.Say("register.fill-" + k)) { Grows = 1 })],
            [.. Enumerable.Range(0, 5).Select(_ => new Row("", "", "", "", "", "", "", "", ""))]) { Above = 1.5, Pad = 2.6 };
    }

    private static Cell Number(Wording say, int number) => new(say.One(Amount.Count(number)));

    private static Cell Mix(Wording say, string? trial, bool ofThisMix) => new(trial ?? say.Say("register.recipe"), ofThisMix ? "" : say.Say("register.other-mix"));

    private static Cell Who(Wording say, DateOnly? date, string? tester) => new(date is { } d ? say.Say(d) : say.Say("register.no-date"), tester ?? say.Say("register.nobody"));
}
