using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>What the office asks for in words: how the cob is made, tests, inspections, what waits, fire and energy; and the request to build in a material that its code may not hold.</summary>
internal static class StatementSheet
{
    public static IEnumerable<Draft> Of(Scene scene) => [.. Specification(scene), .. Tests(scene), .. Inspections(scene), .. Request(scene)];

    private static IEnumerable<Draft> Specification(Scene scene)
    {
        var (say, house) = (scene.Say, scene.House);
        var lift = scene.Geometry.Lifts.Count == 0 ? Length.Zero : scene.Geometry.Lifts.Max(l => l.Top - l.Bottom);
        string[] made =
        [
            say.Say("spec.soil"), say.Say("spec.mix"), say.Say("spec.lifts", ("n", scene.Geometry.Lifts.Count), ("height", lift)), say.Say("spec.method-" + house.Lifts.Method.ToString().ToLowerInvariant()),
            say.Say("spec.joints"), say.Say("spec.tolerance"), say.Say("spec.weather"), say.Say(house.Stem.DampBreak is null ? "spec.no-damp-break" : "spec.damp-break", ("material", new Argument.Material(house.Stem.DampBreak ?? ""))), say.Say("spec.roof-when"),
        ];
        Block[] blocks =
        [
            new Heading(say.Say("spec.cob")), .. made.Select(Line),
            new Heading(say.Say("spec.special")) { Above = 4 }, Line(say.Say("spec.special-1")), Line(say.Say("spec.special-2")),
            new Heading(say.Say("spec.deferred")) { Above = 4 }, .. Deferred(scene).Select(Line),
            new Heading(say.Say("spec.fire")) { Above = 4 }, Line(say.Say("spec.fire-1")), Line(say.Say("spec.fire-2")),
            new Heading(say.Say("spec.energy")) { Above = 4 }, Line(say.Say(scene.Set.Comfort is null ? "spec.energy-none" : "spec.energy-1")), Line(say.Say("spec.energy-2")),
        ];
        return Draft.Flow(new SheetHead("statements", say.Say("spec.title")), scene.Portrait, blocks, say);
    }

    private static Paragraph Line(string words) => new("– " + words, Styles.Body) { Above = 1, Indent = 0 };

    /// <summary>What this set leaves to others or to later.</summary>
    private static IEnumerable<string> Deferred(Scene scene)
    {
        var (say, house) = (scene.Say, scene.House);
        yield return say.Say("spec.deferred-electrical");
        yield return say.Say("spec.deferred-plumbing");
        if (house.Roof?.Flue is not null)
        {
            yield return say.Say("spec.deferred-flue");
        }

        yield return say.Say("spec.deferred-glazing");
        if (house.Roof is null)
        {
            yield return say.Say("spec.deferred-roof");
        }

        if (scene.Set.Mix?.Strength.Tag != Tag.Measured)
        {
            yield return say.Say("spec.deferred-strength");
        }
    }

    private static IEnumerable<Draft> Tests(Scene scene)
    {
        var (say, mix) = (scene.Say, scene.House.Mix);
        Row Test(string key, int made, params string[] rules)
        {
            Finding[] asked = [.. scene.Set.Findings.Where(f => rules.Contains(f.Rule.Key))];
            return new Row(
                new Cell(say.Say("tests." + key), say.Say("tests.how-" + key)) { Lettering = Styles.BodyStrong },
                new Cell(say.Say("tests.when-" + key)),
                new Cell(say.One(Amount.Count(made))),
                asked.Length == 0 ? new Cell(say.Say("tests.no-rule")) : new Cell(string.Join("; ", asked.Select(f => Wording.Dotted(OfficeFindings.Body(say, f.Clause.Adopted), f.Clause.Number, OfficeFindings.Asked(say, f.Clause.Adopted, f.Rule.Key))).Distinct())),
                asked.Length == 0 ? new Cell("") : new Cell(string.Join(", ", asked.Select(f => OfficeFindings.Word(say, f.Verdict)).Distinct()), string.Join("; ", asked.Select(f => say.Reason(f.Verdict)).Distinct().Take(2))) { Lettering = Styles.BodyStrong },
                Room(26));
        }

        Block[] blocks =
        [
            new Paragraph(say.Say("tests.note"), Styles.Body),
            new Table(
                [
                    new(say.Say("tests.test")) { Grows = 2 }, new(say.Say("tests.when")) { Grows = 1 }, new(say.Say("tests.made"), Anchor.End), new(say.Say("tests.asked")) { Grows = 1 },
                    new(say.Say("tests.result")) { Grows = 2 }, new(say.Say("tests.signed")) { Grows = 1 },
                ],
                [
                    Test("shrinkage", mix.TestBars.Count, "mix-shrinkage", "test-before-placing"), Test("crushing", mix.Prisms.Count, "cob-strength", "cob-strength-bracing"), Test("rupture", mix.Bricks.Count, "modulus-of-rupture"),
                ]) { Above = 2 },
            new Paragraph(say.Say("tests.laboratory"), Styles.Body) { Above = 3 },
            .. scene.Set.Mix is { } found ? (Block[])[new Paragraph(say.Say("register.strength", ("why", found.Strength.Why), ("divisor", Amount.Number(found.Strength.Divisor))), Styles.Body) { Above = 2 }] : [],
        ];
        return Draft.Flow(new SheetHead("material-tests", say.Say("tests.title")), scene.Portrait, blocks, say);
    }

    private static IEnumerable<Draft> Inspections(Scene scene)
    {
        var (say, house, g) = (scene.Say, scene.House, scene.Geometry);
        var none = say.Say("criteria.not-given");
        string Length(Length? length) => length is { } l ? say.Book.Marked(LengthText.Both(l, say.First)) : none;
        var middle = g.Lifts.Count == 0 ? g.Wall.Top : g.Lifts[g.Lifts.Count / 2].Bottom;
        (string Key, (string, Argument)[] With)[] visits =
        [
            ("footing", [("depth", Length(house.Trench?.Depth)), ("width", Length(house.Trench?.Width)), ("frost", Length(house.Site.FrostDepth))]),
            ("stem", [("top", Length(house.Stem.Top)), ("width", Length(house.Stem.Width)), ("sleeves", g.Embeds.Count(e => e.Lift < 0))]),
            ("foot", [("thickness", Length(Evidence.Length.Nearest(g.Wall.ThicknessAt(g.Wall.Base.Metres))))]),
            ("middle", [("height", Length(middle))]),
            ("heads", [("n", Amount.Count(g.Openings.Count(o => o.Header is not null)))]),
            ("anchors", [("n", Amount.Count(g.Tees.Count)), ("depth", Length(house.Tees?.Depth))]),
            ("beam", [("width", Length(house.BondBeam?.Width)), ("depth", Length(house.BondBeam?.Depth)), ("lap", Length(house.BondBeam?.Lap))]),
            ("frame", [("n", Amount.Count(scene.Set.Roof is { } roof ? RoofPoles.Count(roof) : 0))]),
            ("membrane", []), ("electrical", []), ("final", []),
        ];
        Block[] blocks =
        [
            new Paragraph(say.Say("inspect.note"), Styles.Body),
            new Table(
                [new(""), new(say.Say("inspect.visit")) { Grows = 1 }, new(say.Say("inspect.look")) { Grows = 3 }, new(say.Say("inspect.by")) { Grows = 1 }, new(say.Say("inspect.on")) { Grows = 1 }],
                [.. visits.Select((v, i) => new Row(new Cell(say.One(Amount.Count(i + 1))) { Lettering = Styles.BodyStrong }, new Cell(say.Say("inspect." + v.Key)) { Lettering = Styles.BodyStrong }, new Cell(say.Say("inspect.look-" + v.Key, v.With)) { Tick = true }, Room(26), Room(20)))]) { Above = 2, Pad = 1.4 },
            new Paragraph(say.Say("inspect.photos"), Styles.Body) { Above = 3 },
        ];
        return Draft.Flow(new SheetHead("inspections", say.Say("inspect.title")), scene.Portrait, blocks, say);
    }

    /// <summary>A cell to write in.</summary>
    private static Cell Room(int letters) => new(new string('\u00a0', letters));

    private static IEnumerable<Draft> Request(Scene scene)
    {
        var say = scene.Say;
        string[] evidence = ["drawings", "calculations", "rules", "tests", "specification", "inspections", "fire", "energy", "precedents", "engineer"];
        Row Blank(string key) => new(new Cell(say.Say("request." + key)), new Cell(""));
        Block[] blocks =
        [
            new Paragraph(say.Say("request.note"), Styles.Body),
            new Table([new("") , new("") { Grows = 1 }], [Blank("applicant"), Blank("address"), Blank("parcel"), Blank("permit"), Blank("code")]) { Above = 2, Pad = 2 },
            new Heading(say.Say("request.asked")) { Above = 4 },
            new Paragraph(say.Say("request.asked-1", ("house", scene.House.Name)), Styles.Body) { Above = 1.5 },
            new Paragraph(say.Say("request.asked-2"), Styles.Body) { Above = 1.5 },
            new Heading(say.Say("request.evidence")) { Above = 4 },
            new Table([new("") { Grows = 1 }, new(say.Say("request.sheet")) { Grows = 1 }], [.. evidence.Select(e => new Row(new Cell(say.Say("request." + e)) { Tick = true }, new Cell(say.Say("request.at-" + e))))]) { Above = 1.5 },
            new Heading(say.Say("request.decision")) { Above = 4 },
            new Paragraph(say.Say("request.decision-1"), Styles.Body) { Above = 1.5 },
            new Table([new(""), new("") { Grows = 1 }], [Blank("official"), Blank("decided"), Blank("conditions")]) { Above = 2, Pad = 2.4 },
        ];
        return Draft.Flow(new SheetHead("request", say.Say("request.title")), scene.Portrait, blocks, say);
    }
}
