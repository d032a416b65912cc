using Clomwright.Analysis;
using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Members;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>Trench, stem and the foot of the wall to scale, with what comes down on them and what they may carry.</summary>
internal static class FoundationSheet
{
    private const double LabelWidth = 52;
    private const double WidestLabel = 96;
    private const double LabelGap = 8;

    /// <summary>By how many usual scales the drawing may be smaller than would fit: rather one than a second sheet with the last lines.</summary>
    private static readonly int[] Smaller = [0, 1];

    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Foundation is not { } foundation)
        {
            return [];
        }

        return Draft.Fewest(Smaller, steps => Of(scene, foundation, steps));
    }

    private static IEnumerable<Draft> Of(Scene scene, FoundationResult foundation, int steps)
    {
        var say = scene.Say;
        var content = SheetFrame.Content(scene.Portrait);
        var fits = DrawingScale.Fitting(say.First, s =>
        {
            var d = new FoundationDrawing(scene.Geometry, s.PaperPerMetre);
            return d.Right - d.Left + LabelGap + LabelWidth <= content.Width && d.Foot - d.Top + 6 <= content.Height * 0.5;
        });
        var scale = DrawingScale.Usual(say.First).SkipWhile(s => s != fits).Take(steps + 1).Last();
        var drawing = new FoundationDrawing(scene.Geometry, scale.PaperPerMetre);
        var board = new Board();
        // As wide as there is room for, so that few of the names take two lines.
        PartLabels.Name(board, drawing.Draw(board, say), drawing.Right + LabelGap, Math.Min(WidestLabel, content.Width - (drawing.Right - drawing.Left) - LabelGap));
        var view = board.Marks.Bounds().Inset(-1);
        List<Block> blocks =
        [
            new Picture(board.Marks, view),
            new Paragraph(say.Say("foundation.note"), Styles.Small) { Above = 1.5 },
            Posts.Foot(scene, scale.PaperPerMetre) is { } post ? new Beside(new Stack([Cautions(scene)]), new Stack([post]), 0.66) { Above = 2 } : Cautions(scene),
            new Heading(say.Say("foundation.loads")),
            Loads(scene, foundation),
            .. Why(scene, foundation).Select(w => new Paragraph(w, Styles.Small) { Above = 1 }),
            .. foundation.Missing is { } missing ? (Block[])[RoofPoles.NotChecked(scene, missing) with { Above = 2 }] : [],
            .. Beneath([.. Capacities(scene, foundation)], [.. Sleeves(scene)]),
        ];
        return Draft.Flow(new SheetHead("foundation", say.Say("foundation.title"), Clock.Drawing, say.Say(scale.Label)), scene.Portrait, blocks, say);
    }

    /// <summary>What the ground may bear and what goes through the stem, beside each other.</summary>
    private static IEnumerable<Block> Beneath(Block[] ground, Block[] sleeves) =>
        ground.Length > 0 && sleeves.Length > 0 ? [new Beside(new Stack(ground), new Stack(sleeves)) { Above = 3 }] : [.. ground, .. sleeves];

    private static Cautions Cautions(Scene scene) => new(scene.Say.Say("caution.title"), [.. Hazards(scene).Select(h => scene.Say.Say(h))]);

    private static IEnumerable<string> Hazards(Scene scene)
    {
        yield return "caution.services";
        yield return "caution.trench";
        if (scene.House.Stem.Material is "mortared-stone" or "block" || scene.House.Trench?.GradeBeam is not null)
        {
            yield return "caution.mortar";
        }

        yield return "caution.stone";
    }

    private static Table Loads(Scene scene, FoundationResult foundation)
    {
        var say = scene.Say;
        return new Table(
            [
                new(say.Say("foundation.what")) { Grows = 1 }, new(say.Say("foundation.asked"), Anchor.End), new(say.Say("foundation.allowed"), Anchor.End), new(say.Say("foundation.used"), Anchor.End),
                new(say.Say("foundation.under")), new(""),
            ],
            [
                Line(scene, "foundation.on-stem", "raising.within", foundation.Stem, 1, foundation.Missing),
                Line(scene, "foundation.on-ground", "foundation.bears", foundation.Ground, 1, foundation.Missing),
                .. foundation.Joints.Select(j => Line(scene, Joint(j.Joint), "foundation.in-third", j.Check, 1.0 / 6, foundation.Missing)),
                .. Posts.Footing(scene.Set.Roof) is { } post ? (Row[])[Post(scene, post.Check)] : [],
                Line(scene, "foundation.frost", "foundation.deeper", foundation.Frost, 1, null),
            ]) { Above = 1.5 };
    }

    /// <summary>Why rows of the table are not checked, each once, under it.</summary>
    private static IEnumerable<string> Why(Scene scene, FoundationResult foundation)
    {
        var say = scene.Say;
        (string Key, Known<FoundationCheck> Check)[] all = [("foundation.on-stem", foundation.Stem), ("foundation.on-ground", foundation.Ground), .. foundation.Joints.Select(j => (Joint(j.Joint), j.Check)), ("foundation.frost", foundation.Frost)];
        if (Posts.Footing(scene.Set.Roof) is { Check: { Is: false } post })
        {
            return [.. Told(), $"{say.Say("foundation.on-post-footing")}: {say.Say("not-checked")}: {say.Say(post.NotChecked!)}"];
        }

        return Told();

        IEnumerable<string> Told() => all.Where(c => !c.Check.Is).GroupBy(c => say.Say(c.Check.NotChecked!)).Select(why => $"{string.Join(", ", why.Select(c => say.Say(c.Key)))}: {say.Say("not-checked")}: {why.Key}");
    }

    private static string Joint(string joint) => joint switch
    {
        "cob on stem" => "foundation.joint-cob-on-stem",
        "stem foot" => "foundation.joint-stem-foot",
        _ => "foundation.joint-trench",
    };

    private static Row Line(Scene scene, string key, string within, Known<FoundationCheck> known, double share, Message? missing)
    {
        var say = scene.Say;
        if (known.Value is not { } check)
        {
            return new Row(say.Say(key), "", "", "", "", new Cell(say.Say("not-checked")) { Lettering = Styles.BodyStrong });
        }

        var stage = check.Stage.Length == 0 ? ""
            : check.Combination.Length > 0 ? check.Combination : say.Say(new Message("study.stage." + string.Concat(check.Stage.Select(c => char.IsUpper(c) ? $"-{char.ToLowerInvariant(c)}" : c.ToString()))));
        var allowed = new Amount(check.Capacity.Si * share, check.Capacity.Dimension);
        var isShort = check.Demand.Si > allowed.Si * (1 + 1e-12);
        return new Row(
            new Cell(say.Say(key)),
            scene.Cell(check.Demand) with { Lettering = Styles.BodyStrong },
            scene.Cell(allowed),
            new Cell(say.One(Amount.Fraction(check.Demand.Si / allowed.Si))),
            check.Demand.Dimension == Dimension.Fraction ? new Cell(stage.Length == 0 ? "" : Wording.Dotted(say.Subject(check.Subject), stage)) : new Cell(stage.Length == 0 ? "" : say.Subject(check.Subject), stage),
            isShort ? new Cell(say.Say("raising.short")) { Lettering = Styles.BodyStrong }
                : missing is not null ? new Cell(say.Say("not-checked")) { Lettering = Styles.BodyStrong }
                : new Cell(say.Say(within)));
    }

    /// <summary>What the roof brings down on the footing under its post, without what post and footing weigh.</summary>
    private static Row Post(Scene scene, Known<MemberCheck> known)
    {
        var say = scene.Say;
        if (known.Value is not { } check)
        {
            return new Row(say.Say("foundation.on-post-footing"), "", "", "", "", new Cell(say.Say("not-checked")) { Lettering = Styles.BodyStrong });
        }

        var stage = check.Sense[(check.Sense.LastIndexOf('/') + 1)..];
        return new Row(
            new Cell(say.Say("foundation.on-post-footing")), scene.Cell(check.Demand) with { Lettering = Styles.BodyStrong }, scene.Cell(check.Capacity), new Cell(say.One(Amount.Fraction(check.Use))),
            new Cell(say.Subject("post footing"), say.Say(StageBending.Named(stage))),
            check.Use > 1 + 1e-12 ? new Cell(say.Say("raising.short")) { Lettering = Styles.BodyStrong } : new Cell(say.Say("foundation.bears")));
    }

    private static IEnumerable<Block> Capacities(Scene scene, FoundationResult foundation)
    {
        var (say, ground) = (scene.Say, foundation.Capacities);
        List<Fact> facts = [];
        if (ground.Given is { } given)
        {
            facts.Add(scene.Fact("foundation.given", new Amount(given, Dimension.Stress), Tag.Given));
        }

        if (ground.Presumptive.Value is { } table)
        {
            facts.Add(new Fact(say.Say("foundation.table", ("class", new Argument.Material(table.Key))), say.One(new Amount(table.Pressure.Value, Dimension.Stress)), Wording.Dotted(say.Other(new Amount(table.Pressure.Value, Dimension.Stress)), say.Say(table.Pressure.Source))));
        }

        if (ground.Computed.Value is { } computed)
        {
            facts.Add(scene.Fact("foundation.formula", new Amount(computed.Least, Dimension.Stress), Tag.Computed));
        }

        if (foundation.FrostEstimate.Value is { } frost)
        {
            facts.Add(scene.Fact("foundation.frost-estimate", Amount.Metres(frost.Berggren), Tag.Computed));
        }

        if (facts.Count > 0)
        {
            yield return new Stack([new Facts(facts, Styles.BodyStrong) { Across = 4 }, new Paragraph(say.Say("foundation.side-by-side"), Styles.Small) { Above = 1.5 }]) { Above = 3 };
        }
    }

    /// <summary>What is built into the stem, goes through it or under it; masons set it, before any lift.</summary>
    private static IEnumerable<Block> Sleeves(Scene scene)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        var low = StemContents.Of(g);
        Row[] rows =
        [
            .. low.Embeds.OrderBy(e => e.Station).Select(e => Row(
                scene, e.Embed.Kind is EmbedKind.Sleeve or EmbedKind.Pipe ? e.Embed.Note ?? "" : Wording.Dotted(say.Say("embed." + e.Embed.Kind.ToString().ToLowerInvariant()), e.Embed.Note ?? ""),
                e.Address, e.Station, e.Height, e.Embed.Width)),
            .. low.Deadmen.Select(d => Row(scene, say.Say("foundation.blocks"), $"{scene.Letter(d.Opening)}  {d.Opening.Opening.Name}", d.Opening.Station, d.Height, null)),
        ];
        if (rows.Length == 0)
        {
            yield break;
        }

        yield return new Heading(say.Say("foundation.sleeves"));
        yield return new Table(
            [
                new(say.Say("foundation.sleeve")) { Grows = 1 }, new(say.Say("foundation.station"), Anchor.End), new(say.Say("foundation.height"), Anchor.End), new(say.Say("foundation.below-grade"), Anchor.End), new(say.Say("foundation.size"), Anchor.End),
            ],
            rows) { Above = 1.5 };
        yield return new Paragraph(say.Say("foundation.sleeves-note"), Styles.Small) { Above = 1.5 };
    }

    private static Row Row(Scene scene, string note, string name, double station, double height, Length? width)
    {
        var (say, site) = (scene.Say, scene.House.Site);
        return new(
            new Cell(name, note) { Tick = true },
            scene.Metres(station),
            scene.Metres(height),
            site.Grade is not { } grade ? new Cell(say.Say("not-known"))
                : height < grade.Metres ? scene.Metres(grade.Metres - height, site.FrostDepth is { } frost && grade.Metres - height < frost.Metres ? say.Say("foundation.in-frost") : "")
                : new Cell(say.Say("foundation.above")),
            width is { } size ? scene.Cell(size) : new Cell(say.Say("not-known")));
    }
}
