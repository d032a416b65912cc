using Clomwright.Analysis.Members;
using Clomwright.Analysis.WallByHand;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>The wall worked by hand for the office: pier by pier, what tips and slides it, while it is built, and with a soaked foot; each table names the calculations that its equations stand in.</summary>
internal static class WallByHandSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.WallByHand is not { } hand)
        {
            return [];
        }

        var say = scene.Say;
        List<Block> blocks =
        [
            new Paragraph(say.Say("hand.note"), Styles.Body),
            new Heading(say.Say("hand.piers")) { Above = 3 }, Piers(scene, hand), See(scene, "pier-load", "pier-edge"),
            new Heading(say.Say("hand.pushed")) { Above = 4 }, Pushed(scene, hand), .. Asked(scene), new Paragraph(say.Say("hand.over"), Styles.Body) { Above = 1 }, See(scene, "wall-free", "wall-held", "wall-in-plane", "lift-joint", "house-overturning"),
            new Heading(say.Say("hand.green")) { Above = 4 }, Green(scene, hand.Green), See(scene, "green-wall", "free-wall", "pole-drop"),
            new Heading(say.Say("hand.wet")) { Above = 4 }, Wet(scene, hand.Wet), Curve(scene, hand.Wet), See(scene, "wet-foot"),
        ];
        return Draft.Flow(new SheetHead("wall-by-hand", say.Say("hand.title")), scene.Portrait, blocks, say);
    }

    /// <summary>Shares of the table of pushes that are over the whole: how many of how many, and the most.</summary>
    public static SharesOver Over(Scene scene) =>
        SharesOver.In(scene.Set.WallByHand is { } hand ? hand.OutOfPlane.Concat(hand.InPlane).Concat(hand.Joints).Append(hand.Overturning).Select(m => m.Check.Value?.Use).OfType<double>() : []);

    private static IEnumerable<Block> Asked(Scene scene)
    {
        if (Over(scene) is { Count: > 0 } over)
        {
            yield return new Paragraph(scene.Say.Say("hand.over-count", ("over", over.Count), ("count", over.Of), ("most", Amount.Fraction(Math.Round(over.Most, 2)))), Styles.BodyStrong) { Above = 1.5 };
        }
    }

    /// <summary>Where the equations stand.</summary>
    private static Paragraph See(Scene scene, params string[] calculations) => new(
        scene.Say.Say("hand.see", ("calculations", new Argument.List(calculations.Select(c => (Argument)new Message($"analysis.calculation.{c}")).ToSequence()))), Styles.Small) { Above = 1.5 };

    private static Table Piers(Scene scene, WallByHandResult hand)
    {
        var say = scene.Say;
        List<Row> rows = [];
        foreach (var pier in hand.Piers)
        {
            var hardest = pier.Cuts.MaxBy(c => c.Use)!;
            var first = true;
            foreach (var cut in pier.Cuts.Where(c => c.Where is "head" or "sill" or "foot" || c == hardest))
            {
                rows.Add(new Row(
                    new Cell(first ? say.Between(pier.Address) : "") { Lettering = Styles.BodyStrong },
                    new Cell(Where(say, cut), say.One(Amount.Metres(cut.Height))),
                    scene.Cell(Amount.Metres(cut.Width)), scene.Cell(new Amount(cut.Load, Dimension.Force)), scene.Cell(new Amount(cut.Mean, Dimension.Stress)),
                    new Cell(say.One(Amount.Metres(Math.Abs(cut.Across))), say.One(Amount.Metres(Math.Abs(cut.Along)))),
                    scene.Cell(new Amount(cut.Allowed, Dimension.Stress)), new Cell(say.One(Amount.Fraction(cut.Use))) { Lettering = Styles.BodyStrong }, scene.Cell(new Amount(cut.Edge, Dimension.Stress)),
                    new Cell(State(say, cut.Combination, cut.Sense))) { Ruled = first });
                first = false;
            }
        }

        return new Table(
            [
                new(say.Say("hand.pier")) { Grows = 1 }, new(say.Say("hand.cut")), new(say.Say("hand.width"), Anchor.End), new(say.Say("hand.load"), Anchor.End), new(say.Say("hand.mean"), Anchor.End),
                new(say.Say("hand.off"), Anchor.End), new(say.Say("hand.allowed"), Anchor.End), new(say.Say("hand.used"), Anchor.End), new(say.Say("hand.edge"), Anchor.End), new(say.Say("hand.by")) { Grows = 0.6 },
            ],
            rows) { Above = 1.5, Pad = 0.5 };
    }

    private static string Where(Wording say, CutStress cut) => cut.Where is "head" or "middle" or "sill" or "foot" ? say.Say("hand.cut-" + cut.Where) : say.Subject(cut.Where);

    private static string State(Wording say, string combination, string sense) =>
        sense.StartsWith("stage/", StringComparison.Ordinal)
            ? sense.Count(c => c == '/') == 1 ? say.Say(new Message("study.stage." + string.Concat(sense["stage/".Length..].Select(c => char.IsUpper(c) ? $"-{char.ToLowerInvariant(c)}" : c.ToString())))) : say.Say("hand.laying")
            : combination;

    private static Table Pushed(Scene scene, WallByHandResult hand)
    {
        var say = scene.Say;
        return new Table(
            [new(say.Say("hand.what")) { Grows = 1 }, new(say.Say("hand.asked"), Anchor.End), new(say.Say("hand.holds"), Anchor.End), new(say.Say("hand.used"), Anchor.End), new(say.Say("hand.by")), new(say.Say("hand.mode"))],
            [
                .. hand.OutOfPlane.Select(m => Line(scene, Plain(say, m.Subject), m)),
                .. hand.InPlane.Select(m => Line(scene, say.Say("hand.along", ("pier", Plain(say, m.Subject))), m, hand.Along.FirstOrDefault(a => a.Address == m.Subject) is { } a ? say.Say(new Message($"study.mode.{a.Mode}")) : "")),
                .. hand.Joints.Select(m => Line(scene, say.Say("hand.joint", ("joint", say.Subject(m.Subject))), m)),
                Line(scene, say.Say("hand.turning"), hand.Overturning),
            ]) { Above = 1.5, Pad = 0.4 };
    }

    /// <summary>A pier and how it stands, without the word for a pier.</summary>
    private static string Plain(Wording say, string subject) => subject.Split(", ", 2) is [var pier, var how] ? $"{say.Between(pier)}, {say.Subject(how)}" : say.Between(subject);

    private static Row Line(Scene scene, string what, CheckedMember member, string mode = "")
    {
        var say = scene.Say;
        return member.Check.Value is { } check
            ? new Row(new Cell(what), scene.Cell(check.Demand), scene.Cell(check.Capacity), new Cell(say.One(Amount.Fraction(check.Use))) { Lettering = Styles.BodyStrong }, new Cell(check.Combination), new Cell(mode))
            : new Row(new Cell(what, say.Say(member.Check.NotChecked!)), "", "", new Cell(say.Say("not-checked")) { Lettering = Styles.BodyStrong }, "", "");
    }

    private static Table Green(Scene scene, GreenWall green)
    {
        var say = scene.Say;
        Cell Gust(double? speed) => speed is { } v ? scene.Cell(new Amount(v, Dimension.Speed)) : new Cell("–");
        return new Table(
            [
                new(say.Say("hand.lift")),
                .. ((string[])["hand.high", "hand.presses", "hand.must-carry", "hand.water", "hand.tips", "hand.tips-end", "hand.leave", "hand.leave-fresh"]).Select(k => new Column(say.Say(k), Anchor.End) { Grows = 1 }),
            ],
            [
                .. green.Lifts.Select(l => new Row(
                    new Cell($"{l.Number}") { Lettering = Styles.BodyStrong }, scene.Metres(l.Height), scene.Cell(new Amount(l.Pressure, Dimension.Stress)), scene.Cell(new Amount(l.Strength, Dimension.Stress)),
                    new Cell(say.One(Amount.Fraction(l.Water))), Gust(l.TipsMiddle), Gust(l.TipsEnd), Gust(l.Leave), Gust(l.LeaveFresh))),
                new Row(new Cell(Brace(scene, green))) { Ruled = true },
            ]) { Above = 1.5, Pad = 0.4 };
    }

    /// <summary>From where the free wall is braced in the wind of the site.</summary>
    public static string Brace(Scene scene, GreenWall green)
    {
        var say = scene.Say;
        if (green.Free.FirstOrDefault(f => !f.Check.Is) is { } unknown)
        {
            return Wording.Dotted(say.Say("not-checked"), say.Say(unknown.Check.NotChecked!));
        }

        Amount Over(double height) => Amount.Metres(scene.Geometry.Wall.Base.Metres + height);
        return (green.BraceEnd, green.BraceMiddle) switch
        {
            ({ } end, { } middle) => say.Say("hand.brace-both", ("end", Over(end)), ("middle", Over(middle))),
            ({ } end, null) => say.Say("hand.brace-end", ("end", Over(end))),
            (null, { } middle) => say.Say("hand.brace-middle", ("middle", Over(middle))),
            _ => say.Say("hand.brace-none"),
        };
    }

    private static Table Wet(Scene scene, WetFoot wet)
    {
        var say = scene.Say;
        return new Table(
            [
                new(say.Say("hand.pier")) { Grows = 1 }, new(say.Say("hand.load"), Anchor.End), new(say.Say("hand.presses"), Anchor.End), new(say.Say("hand.water-safe"), Anchor.End), new(say.Say("hand.water-gone"), Anchor.End),
                new(say.Say("hand.skin-safe"), Anchor.End), new(say.Say("hand.skin-gone"), Anchor.End), new(say.Say("hand.lost"), Anchor.End),
            ],
            [.. wet.Piers.Select(p => new Row(
                new Cell(say.Between(p.Address)) { Lettering = Styles.BodyStrong }, scene.Cell(new Amount(p.Load, Dimension.Force)), scene.Cell(new Amount(p.Pressure, Dimension.Stress)), new Cell(say.One(Amount.Fraction(p.WaterSafe))),
                new Cell(say.One(Amount.Fraction(p.WaterGone))), scene.Metres(p.SkinSafe), scene.Metres(p.SkinGone), new Cell(p.Lost is { } lost ? say.One(Amount.Number(Math.Round(lost, 2))) : "–")))]) { Above = 1.5, Pad = 0.4 };
    }

    private static Table Curve(Scene scene, WetFoot wet)
    {
        var say = scene.Say;
        return new Table(
            [new(say.Say("hand.curve", ("pier", say.Between(wet.Worst)))) { Grows = 1 }, .. wet.Curve.Select(p => new Column(say.One(Amount.Fraction(p.Water)), Anchor.End))],
            [
                new Row([new Cell(say.Say("hand.curve-strength")), .. wet.Curve.Select(p => scene.Cell(new Amount(p.Strength, Dimension.Stress)))]),
                new Row([new Cell(say.Say("hand.curve-margin")), .. wet.Curve.Select(p => new Cell(say.One(Amount.Number(Math.Round(p.Margin, 2)))) { Lettering = Styles.BodyStrong })]),
            ]) { Above = 3, Pad = 0.4 };
    }
}
