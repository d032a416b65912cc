using System.Globalization;
using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;
using Clomwright.Study;

namespace Clomwright.Papers.Sheets;

/// <summary>Raising the frame: what it bears bare and what it will have to bear, the charlie stick, the order of the poles, and when to stop.</summary>
internal static class RaisingSheet
{
    private static readonly string[] Shown = ["bare", "decked", "soilDry", "soilWet", "soilWetSnow", "oneSided"];

    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Roof is not { } roof)
        {
            return [];
        }

        var say = scene.Say;
        var frame = roof.Reciprocal.Value;
        List<Block> blocks =
        [
            new Cautions(say.Say("caution.title"), [.. ((string[])[frame is null ? "raising-plain" : "raising", frame is null ? "stick-plain" : "stick", "overload", "falls", "lifting"]).Select(c => say.Say("caution." + c))]),
            .. BareAndLoaded(scene, roof),
            .. frame is null ? [] : Stick(scene, frame),
            .. frame is null ? NoOrder(scene, roof) : Order(scene, roof, frame),
            .. StopList(scene, frame is not null),
            .. frame is null ? [] : IfOneFails(scene, frame),
        ];
        return Draft.Flow(new SheetHead("raising", say.Say(frame is null ? "raising.title-plain" : "raising.title")), scene.Portrait, blocks, say);
    }

    private static IEnumerable<Block> BareAndLoaded(Scene scene, RoofResult roof)
    {
        var say = scene.Say;
        yield return new Facts([Use(scene, roof, "bare", "raising.bare"), Use(scene, roof, "soilWetSnow", "raising.loaded")], Styles.Reading) { Above = 4, Across = 2 };
        var stages = RoofPoles.Stages(roof);
        if (stages.Count > 0)
        {
            yield return new Table(
                [
                    new(say.Say("raising.state")) { Grows = 1 }, new(say.Say("raising.load"), Anchor.End), new(say.Say("raising.stress"), Anchor.End),
                    new(say.Say("raising.strength"), Anchor.End), new(say.Say("raising.use"), Anchor.End), new(""),
                ],
                [.. Listed(roof, stages).Select(s => State(scene, roof, s))]) { Above = 2 };
        }

        yield return new Paragraph(say.Say("raising.states-note"), Styles.Small) { Above = 1.5 };
    }

    /// <summary>The usual states, and those in which bending and the forces at crossings are largest, where they are others.</summary>
    private static IEnumerable<RoofStage> Listed(RoofResult roof, IReadOnlyList<RoofStage> stages)
    {
        var known = stages.Where(s => s.Forces.Is).ToList();
        var bent = known.Where(s => RoofPoles.Bending(roof, s.Key).Is).MaxBy(s => RoofPoles.Bending(roof, s.Key).Value!.Use);
        var pressed = roof.Reciprocal.Is ? known.MaxBy(s => s.Forces.Value!.Governing.Max(Math.Abs)) : null;
        return stages.Where(s => Shown.Contains(s.Key) || s.Key == bent?.Key || s.Key == pressed?.Key || (roof.Reciprocal.Is && s.Key == "insideOnly"));
    }

    private static Fact Use(Scene scene, RoofResult roof, string stage, string key)
    {
        var say = scene.Say;
        var label = say.Say(key);
        var bending = RoofPoles.Bending(roof, stage);
        return bending.Value is { } b
            ? new Fact(label, say.Say("raising.share", ("share", Amount.Fraction(b.Use)), ("word", Word(scene, b.Use))),
                say.Say("raising.of", ("stress", new Amount(b.Stress, Dimension.Stress)), ("strength", new Amount(b.Strength, Dimension.Stress))))
            : new Fact(label, say.Say("not-checked"), say.Say(bending.NotChecked!));
    }

    private static string Word(Scene scene, double use) => scene.Say.Say(use > 1 ? "raising.short" : "raising.within");

    private static Row State(Scene scene, RoofResult roof, RoofStage stage)
    {
        var say = scene.Say;
        var name = new Cell(say.Say(StageBending.Named(stage.Key)));
        var bending = RoofPoles.Bending(roof, stage.Key);
        if (stage.Forces.Value is not { } forces || bending.Value is not { } b)
        {
            return new Row(name with { Note = say.Say(bending.NotChecked!) }, "", "", "", new Cell(say.Say("not-checked")) { Lettering = Styles.BodyStrong }, "");
        }

        return new Row(
            name, scene.Cell(new Amount(forces.TotalLoad, Dimension.Force)), scene.Cell(new Amount(b.Stress, Dimension.Stress)), scene.Cell(new Amount(b.Strength, Dimension.Stress)),
            new Cell(say.One(Amount.Fraction(b.Use))) { Lettering = Styles.BodyStrong }, new Cell(Word(scene, b.Use)) { Lettering = b.Use > 1 ? Styles.BodyStrong : Styles.Body });
    }

    private static IEnumerable<Block> Stick(Scene scene, ReciprocalResult frame)
    {
        var say = scene.Say;
        var raising = frame.Raising;
        var stick = frame.Charlie.FirstOrDefault(c => c.Subject == "charlie stick")?.Check;
        yield return new Heading(say.Say("raising.stick"));
        yield return new Facts(
        [
            scene.Fact("raising.stick-cut", Amount.Metres(raising.CharlieLength), Tag.Computed),
            scene.Fact("raising.stick-height", Amount.Metres(raising.CharlieHeight), Tag.Computed),
            scene.Fact("raising.stick-place", Amount.Metres(raising.CharlieDistance), Tag.Computed),
            RoofPoles.Fact(scene, "raising.stick-load", raising.CharlieLoad is { } load ? new Amount(load, Dimension.Force) : null, new Message("analysis.roof.no-timber")),
            scene.Fact("raising.stick-thick", Amount.Metres(FromGeometry.CharlieDiameter), Tag.Assumed),
            scene.Fact("raising.stick-pad", Amount.Metres(FromGeometry.CharliePad), Tag.Assumed),
            RoofPoles.Fact(scene, "raising.stick-carries", stick?.Value?.Demand, stick?.NotChecked ?? new Message("analysis.roof.no-timber")),
            RoofPoles.Fact(scene, "raising.stick-can", stick?.Value?.Capacity, stick?.NotChecked ?? new Message("analysis.roof.no-timber")),
        ], Styles.Heading) { Above = 1.5 };
        yield return new Paragraph(say.Say(frame.Geometry.SideBySide > 1 ? "raising.stick-note-pairs" : "raising.stick-note", ("pole", raising.CharlieUnder)), Styles.Small) { Above = 1.5 };
    }

    private static IEnumerable<Block> Order(Scene scene, RoofResult roof, ReciprocalResult frame)
    {
        var say = scene.Say;
        var poles = RoofPoles.Of(roof).ToDictionary(p => p.Number);
        var (order, pairs) = (frame.Raising.Order, frame.Geometry.SideBySide > 1);
        var (first, next, last) = pairs ? ("raising.do-first-pair", "raising.do-next-pair", "raising.do-last-pair") : ("raising.do-first", "raising.do-next", "raising.do-last");
        yield return new Heading(say.Say("raising.order"));
        yield return new Table(
            [
                new(say.Say("raising.step")), new(say.Say(pairs ? "roof-plan.pair" : "raising.pole")), new(say.Say("raising.do")) { Grows = 1 }, new(say.Say("roof-plan.station"), Anchor.End),
                new(say.Say(pairs ? "raising.people-each" : "raising.people"), Anchor.End), new(say.Say("raising.tied")), new(say.Say("raising.pinned")),
            ],
            [
                .. order.Select((number, i) => new Row(
                    new Cell((i + 1).ToString(CultureInfo.InvariantCulture)),
                    new Cell(number.ToString(CultureInfo.InvariantCulture)) { Lettering = Styles.Heading },
                    new Cell(say.Say(
                        i == 0 ? first : i == order.Count - 1 ? last : next,
                        ("on", frame.Poles[number - 1].RestsOn), ("first", order[0]))),
                    scene.Metres(RoofPoles.Station(scene, poles[number])),
                    new Cell(poles[number].People is { } people ? people.ToString(CultureInfo.InvariantCulture) : say.Say("not-checked")),
                    new Cell("") { Tick = true },
                    new Cell("") { Tick = true })),
            ]) { Above = 1.5 };
        if (pairs)
        {
            yield return new Paragraph(say.Say("raising.pairs"), Styles.Body) { Above = 1.5 };
        }

        yield return new Paragraph(say.Say(pairs ? "raising.order-note-pairs" : "raising.order-note", ("first", order[0]), ("last", order[^1])), Styles.Small) { Above = 1.5 };
    }

    private static IEnumerable<Block> NoOrder(Scene scene, RoofResult roof)
    {
        yield return new Heading(scene.Say.Say("raising.order"));
        yield return RoofPoles.NotChecked(scene, roof.Plain.Is ? new Message("papers.raising.no-order") : RoofPoles.Why(roof)) with { Above = 1.5 };
    }

    /// <summary>Losing one pole: what then has to be held, what is described to hold it, and what to do meanwhile.</summary>
    private static IEnumerable<Block> IfOneFails(Scene scene, ReciprocalResult frame)
    {
        var say = scene.Say;
        yield return new Heading(say.Say("raising.lost"));
        if (frame.Loss.Value is not { } loss)
        {
            yield return RoofPoles.NotChecked(scene, frame.Loss.NotChecked!) with { Above = 1.5 };
            yield break;
        }

        var way = ((Building.Roof.Reciprocal)scene.Geometry.House.Roof!).IfOneFails;
        var (marks, view) = RoofPlan.WithoutOne(scene.Geometry, frame.Geometry, loss, way, 5.5);
        var facts = new Facts(
        [
            frame.Geometry.SideBySide > 1
                ? new Fact(say.Say("raising.lost-pair"), say.One(Amount.Count(loss.WorstPole)), say.Say("raising.lost-orphans", ("pair", loss.Orphan)))
                : new Fact(say.Say("raising.lost-pole"), say.One(Amount.Count(loss.WorstPole)), say.Say("raising.lost-orphan", ("pole", loss.Orphan))),
            scene.Fact("raising.lost-prop", new Amount(loss.PropForce, Dimension.Force), Tag.Computed),
            scene.Fact("raising.lost-sudden", new Amount(loss.SuddenForce, Dimension.Force), Tag.Computed),
            RoofPlanSheet.WayOut(scene, way),
            .. frame.WaysOut.Select(w => w.Check.Value is { } made
                ? new Fact(say.Say("raising.lost-use", ("what", say.Subject(w.Subject))), say.Say("raising.share", ("share", Amount.Fraction(made.Use)), ("word", Word(scene, made.Use))), say.Say(Tag.Computed))
                : new Fact(say.Say("raising.lost-use", ("what", say.Subject(w.Subject))), say.Say("not-checked"), say.Say(w.Check.NotChecked!))),
        ], Styles.Body) { Above = 2, Across = 3 };
        yield return new Stack([new Picture(marks, view), facts, new Paragraph(say.Say(frame.Geometry.SideBySide > 1 ? "raising.lost-note-pairs" : "raising.lost-note"), Styles.Small) { Above = 1.5 }]) { Above = 1.5 };
        foreach (var item in (string[])["out", "stand", "unload", "all"])
        {
            yield return new Paragraph("– " + say.Say("raising.lost-" + item), Styles.Body) { Above = 0.8 };
        }
    }

    private static IEnumerable<Block> StopList(Scene scene, bool ring)
    {
        var say = scene.Say;
        yield return new Heading(say.Say(ring ? "raising.before" : "raising.before-plain"));
        string[] items = ring ? ["caller", "clear", "guyed", "rope", "ties", "pins", "ring", "weather"] : ["caller", "beneath", "props", "seats", "weather"];
        yield return new Table([new("") { Grows = 1 }], [.. items.Select(i => new Row(new Cell(say.Say("raising.before-" + i)) { Tick = true }))]) { Above = 1 };
        yield return new Heading(say.Say("raising.stop"));
        foreach (var item in (string[])[ring ? "move" : "slip", "crack", "wind", "lost", "short"])
        {
            yield return new Paragraph("– " + say.Say("raising.stop-" + item), Styles.Body) { Above = 0.8 };
        }
    }
}
