using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>The house on a few sheets for an insurer, a lender or the next owner: what it is made of, how it was proved, who looked, and where the rest is kept. It praises nothing.</summary>
internal static class PassportSheet
{
    private static readonly string[] Visits = ["trench", "stem", "wall", "anchors", "beam", "frame", "membrane", "power", "flue", "final"];

    public static IEnumerable<Draft> Of(Scene scene)
    {
        var (say, g, house) = (scene.Say, scene.Geometry, scene.House);
        List<Block> blocks =
        [
            new Paragraph(say.Say("passport.how"), Styles.Body),
            new Facts(
            [
                scene.Fact("plan.inside-area", new Area(g.Measures.InsideArea), Tag.Computed),
                scene.Fact("plan.outside-area", new Area(g.Measures.OutsideArea), Tag.Computed),
                scene.Fact("passport.volume", new Volume(g.Measures.NetVolume), Tag.Computed),
                scene.Fact("passport.wall-top", house.Wall.Top, Tag.Given),
            ], Styles.Heading) { Above = 3 },
            new Heading(say.Say("passport.made")) { Above = 4 },
            new Table([new(""), new(say.Say("passport.drawn")) { Grows = 1 }, new(say.Say("passport.built")) { Grows = 1 }], [.. Made(scene)]) { Above = 1, Pad = 0.9 },
            new Heading(say.Say("passport.proved")) { Above = 4 },
            .. Proved(scene),
            new Heading(say.Say("passport.looked")) { Above = 4 },
            new Table(
                [new(say.Say("passport.visit")) { Grows = 2 }, new(say.Say("daily.date")) { Grows = 1 }, new(say.Say("passport.who")) { Grows = 2 }, new(say.Say("passport.result")) { Grows = 2 }],
                [.. Visits.Select(v => new Row(new Cell(say.Say("passport.visit-" + v)), Dots.Cell(10), Dots.Cell(22), Dots.Cell(22)))]) { Above = 1, Pad = 0.9 },
            // The back of the sheet, whole: where the papers are, who answers, and what is promised.
            new Stack(
            [
                new Heading(say.Say("passport.kept")),
                new Table(
                    [new("") { Grows = 2 }, new(say.Say("passport.place")) { Grows = 1 }],
                    [.. ((string[])["permit", "engineer", "tests", "register", "map", "photos", "log", "changes", "care", "warranty"]).Select(k => new Row(new Cell(say.Say("passport.kept-" + k)) { Tick = true }, Dots.Cell(34)))]) { Above = 1, Pad = 0.6 },
                new Facts([.. ((string[])["passport.owner", "passport.builder", "passport.finished", "passport.next"]).Select(k => new Fact(say.Say(k), ""))], Styles.Body) { Above = 4 },
                new Cautions(say.Say("caution.title"), [say.Say("passport.no-promise"), say.Say("caution.not-checked"), say.Say("passport.no-fire")]) { Above = 4 },
            ]) { Above = 4 },
        ];
        return Draft.Flow(new SheetHead("passport", say.Say("passport.title"), Clock.Wall), scene.Portrait, blocks, say);
    }

    /// <summary>What the drawing says, and a line for what was built otherwise.</summary>
    private static IEnumerable<Row> Made(Scene scene)
    {
        var (say, g, house) = (scene.Say, scene.Geometry, scene.House);
        Row Line(string key, string drawn) => new(new Cell(say.Say("passport." + key)) { Lettering = Styles.BodyStrong }, new Cell(drawn), Dots.Cell(34));
        yield return Line("ground", house.Trench is { } trench ? say.Say("passport.trench-of", ("width", trench.Width), ("depth", trench.Depth)) : say.Say("passport.not-described"));
        yield return Line("stem", say.Say("passport.stem-of", ("width", house.Stem.Width), ("top", house.Stem.Top), ("material", new Argument.Material(house.Stem.Material)), ("damp", house.Stem.DampBreak is { } damp ? say.Material(damp) : say.Say("passport.not-described"))));
        yield return Line("wall", say.Say("passport.wall-of", ("base", Amount.Metres(g.Wall.ThicknessAt(g.Wall.Base.Metres))), ("top", g.Wall.ThicknessAtTop), ("lifts", g.Lifts.Count)));
        yield return Line("openings", say.Say("passport.openings-of", ("count", g.Openings.Count)));
        yield return Line("beam", house.BondBeam is { } beam ? say.Say("passport.beam-of", ("width", beam.Width), ("depth", beam.Depth), ("tees", g.Tees.Count)) : say.Say("passport.not-described"));
        yield return Line("roof", house.Roof is { } roof ? Wording.Dotted([say.Say("passport.roof-of", ("poles", scene.Set.Roof is { } made && RoofPoles.Of(made).Count > 0 ? RoofPoles.Count(made) : g.Landings.Count(l => !l.Secondary)), ("eave", roof.Eave)), .. roof.Layers.Select(l => $"{l.Name} {say.One(l.Depth)}")]) : say.Say("passport.not-described"));
        yield return Line("finish", house.Finishes.Count > 0 ? string.Join(", ", house.Finishes.Select(f => say.Say("passport.finish-of", ("face", new Message("papers.face." + f.Face.ToString().ToLowerInvariant())), ("material", new Argument.Material(f.Material))))) : say.Say("passport.not-described"));
    }

    private static IEnumerable<Block> Proved(Scene scene)
    {
        var say = scene.Say;
        Verdicts counts = new(scene.Set.Findings);
        yield return new Facts(
        [
            scene.Set.Mix?.Strength is { } strength ? scene.Fact("register.characteristic", new Amount(strength.Characteristic, Dimension.Stress), strength.Tag) : scene.Unknown("register.characteristic", "not-known"),
            new Fact(say.Say("passport.specimens"), say.One(Amount.Count(scene.Set.Mix?.Register.Specimens.Count(s => s.Counts) ?? 0)), say.Say("passport.specimens-note")),
            new Fact(say.Say("passport.met"), say.One(Amount.Count(counts.Met)), say.Say("passport.met-note", ("short", counts.Short), ("open", counts.Open))),
        ], Styles.Heading) { Above = 1, Across = 3 };
        yield return new Paragraph(say.Say("passport.rules", ("bodies", OfficeFindings.Bodies(scene))), Styles.Small) { Above = 1.5 };
    }

    /// <summary>How many rules are met, fall short, and wait for somebody.</summary>
    private sealed record Verdicts(Sequence<Finding> Findings)
    {
        public int Met => Findings.Count(f => f.Verdict is Verdict.Met);

        public int Short => Findings.Count(f => f.Verdict is Verdict.FallsShort);

        public int Open => Findings.Count(f => f.Verdict is Verdict.NotChecked or Verdict.NeedsJudgement);
    }
}
