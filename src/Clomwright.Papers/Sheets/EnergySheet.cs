using Clomwright.Analysis.Comfort;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>Heat of the house for the office: what each part loses, the statement of a trade between parts with the office's own limits to write in, the year, and what it leans on.</summary>
internal static class EnergySheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        if (scene.Set.Comfort is not { } comfort)
        {
            return [];
        }

        var say = scene.Say;
        List<Block> blocks =
        [
            Numbers(scene, comfort),
            new Heading(say.Say("comfort.by-part")) { Above = 3 }, Warmth.Bars(scene, comfort),
            new Heading(say.Say("energy.trade")) { Above = 4 }, new Paragraph(say.Say("energy.trade-what"), Styles.Body) { Above = 1.5 }, Trade(scene, comfort), new Paragraph(say.Say("energy.trade-note"), Styles.Small) { Above = 1.5 },
            new Heading(say.Say("energy.parts")) { Above = 4 }, Parts(scene, comfort),
            new Heading(say.Say("energy.windows")) { Above = 4 }, Windows(scene, comfort),
            new Heading(say.Say("energy.edges")) { Above = 4 }, Edges(scene, comfort), new Paragraph(say.Say("energy.edges-note"), Styles.Small) { Above = 1 },
            .. Year(scene, comfort),
            .. Lined(scene, comfort),
            new Heading(say.Say("energy.leans-on")) { Above = 4 }, LeansOn(scene, comfort),
        ];
        return Draft.Flow(new SheetHead("energy", say.Say("energy.title")), scene.Portrait, blocks, say);
    }

    private static Facts Numbers(Scene scene, ComfortResult comfort)
    {
        var wall = comfort.Parts.FirstOrDefault(p => p.Kind == PartKind.Wall);
        return new Facts(
            [
                scene.Fact("energy.loss", new Amount(comfort.Loss, Dimension.HeatLoss), Tag.Computed),
                scene.Fact("energy.floor-area", new Amount(comfort.FloorArea, Dimension.Area), Tag.Computed),
                .. wall is null ? (Fact[])[] : [scene.Fact("energy.wall-r", new Amount(wall.Part.Resistance, Dimension.Resistance), Tag.Computed)],
                comfort.Year.Value is { } year ? scene.Fact("energy.heat", new Amount(year.Heated.Heat, Dimension.Energy), Tag.Computed)
                    : new Fact(scene.Say.Say("energy.heat"), scene.Say.Say("not-checked"), scene.Say.Say(comfort.Year.NotChecked!)),
            ],
            Styles.Heading);
    }

    /// <summary>Area times transmittance of what stands as designed, beside blanks for the office's limits.</summary>
    private static Table Trade(Scene scene, ComfortResult comfort)
    {
        var say = scene.Say;
        Row Line(string name, double area, double loss) => new(
            new Cell(name), scene.Cell(new Amount(area, Dimension.Area)), scene.Cell(new Amount(loss / area, Dimension.Transmittance)), scene.Cell(new Amount(loss, Dimension.HeatLoss)), new Cell("............"), new Cell("............"));
        double Loss(PartKind kind) => comfort.Losses.First(l => l.Kind == kind).Loss;
        double Area(PartKind kind) => comfort.Parts.Where(p => p.Kind == kind).Sum(p => p.Area);
        var (windows, wanted) = (comfort.Windows.Sum(w => w.Area), new List<Row>());
        foreach (var kind in (PartKind[])[PartKind.Wall, PartKind.Stem, PartKind.Roof])
        {
            if (Area(kind) > 0)
            {
                wanted.Add(Line(say.Say("comfort.part." + kind.ToString().ToLowerInvariant()), Area(kind), Loss(kind)));
            }
        }

        wanted.Add(Line(say.Say("comfort.part.floor"), comfort.FloorArea, Loss(PartKind.Floor)));
        if (windows > 0)
        {
            wanted.Add(Line(say.Say("comfort.part.openings"), windows, Loss(PartKind.Openings)));
        }

        wanted.Add(new Row(new Cell(say.Say("comfort.part.edges")), "–", "–", scene.Cell(new Amount(Loss(PartKind.Edges), Dimension.HeatLoss)), "–", new Cell("............")));
        wanted.Add(new Row(
            new Cell(say.Say("energy.sum")) { Lettering = Styles.BodyStrong }, "", "", scene.Cell(new Amount(comfort.Loss - Loss(PartKind.Air), Dimension.HeatLoss)), "", new Cell("............")) { Ruled = true });
        return new Table(
            [
                new(say.Say("energy.part")) { Grows = 1 }, new(say.Say("energy.area"), Anchor.End), new(say.Say("energy.u"), Anchor.End), new(say.Say("energy.ua"), Anchor.End),
                new(say.Say("energy.limit-u"), Anchor.End), new(say.Say("energy.limit-ua"), Anchor.End),
            ],
            [.. wanted]) { Above = 1.5, Pad = 0.4 };
    }

    private static Table Parts(Scene scene, ComfortResult comfort)
    {
        var say = scene.Say;
        string Name(string layer) => layer switch { "cob" => say.Say("foundation.cob"), "deck" => say.Say("schedule.deck"), _ => say.Material(layer) };
        string Layers(BuildUp part) => string.Join(", ", part.Layers.Select(l => $"{Name(l.Name)} {say.One(Amount.Metres(l.Depth))} ({say.One(new Amount(l.Conductivity, Dimension.Conductivity))})"));
        return new Table(
            [new(say.Say("energy.part")), new(say.Say("energy.layers")) { Grows = 1 }, new(say.Say("energy.r"), Anchor.End), new(say.Say("energy.u"), Anchor.End), new(say.Say("energy.lag"), Anchor.End), new(say.Say("energy.decrement"), Anchor.End)],
            [
                .. comfort.Parts.Select(p => new Row(
                    new Cell(string.Join(" + ", p.Linings.Prepend(say.Say("comfort.name." + p.Key)))) { Lettering = Styles.BodyStrong }, new Cell(Layers(p.Part)), scene.Cell(new Amount(p.Part.Resistance, Dimension.Resistance)), scene.Cell(new Amount(p.Part.Transmittance, Dimension.Transmittance)),
                    new Cell(say.One(new Amount(p.Day.LagHours * 3600, Dimension.Time))), new Cell(say.One(Amount.Fraction(p.Day.Decrement))))),
                new Row(new Cell(say.Say("comfort.part.floor")) { Lettering = Styles.BodyStrong }, new Cell(say.Say("energy.floor-how", ("dimension", Amount.Metres(comfort.Ground.Dimension)))), new Cell("–"), scene.Cell(new Amount(comfort.Ground.Transmittance, Dimension.Transmittance)), "–", "–"),
            ]) { Above = 1.5, Pad = 0.4 };
    }

    private static Table Windows(Scene scene, ComfortResult comfort)
    {
        var say = scene.Say;
        return new Table(
            [new(say.Say("energy.opening")) { Grows = 1 }, new(say.Say("energy.area"), Anchor.End), new(say.Say("energy.glass"), Anchor.End), new(say.Say("energy.u"), Anchor.End), new(say.Say("energy.sun"), Anchor.End), new(say.Say("energy.sun-year"), Anchor.End)],
            [
                .. comfort.Windows.Select((w, i) => new Row(
                    new Cell(w.Opening), scene.Cell(new Amount(w.Area, Dimension.Area)), scene.Cell(new Amount(w.Glass, Dimension.Area)), scene.Cell(new Amount(w.Transmittance, Dimension.Transmittance)),
                    new Cell(w.Glass > 0 ? say.One(Amount.Fraction(w.Sun)) : "–"), comfort.Year.Value is { } year && w.Glass > 0 ? scene.Cell(new Amount(year.Glass[i].Gain, Dimension.Energy)) : new Cell("–"))),
            ]) { Above = 1.5, Pad = 0.4 };
    }

    private static Table Edges(Scene scene, ComfortResult comfort)
    {
        var say = scene.Say;
        return new Table(
            [new(say.Say("energy.edge")) { Grows = 1 }, new(say.Say("energy.length"), Anchor.End), new(say.Say("energy.psi"), Anchor.End), new(say.Say("energy.coupling"), Anchor.End), new(say.Say("energy.lowest"), Anchor.End)],
            [.. comfort.Edges.Select(e => new Row(new Cell(say.Say("comfort.edge." + e.Key)), scene.Metres(e.Length), scene.Cell(new Amount(e.Loss, Dimension.Conductivity)), scene.Cell(new Amount(e.Coupling, Dimension.Conductivity)), new Cell(say.One(Amount.Number(e.Lowest)))))]) { Above = 1.5, Pad = 0.4 };
    }

    private static IEnumerable<Block> Year(Scene scene, ComfortResult comfort)
    {
        var say = scene.Say;
        yield return new Heading(say.Say("energy.year")) { Above = 4 };
        if (comfort.Year.Value is not { } year)
        {
            yield return RoofPoles.NotChecked(scene, comfort.Year.NotChecked!) with { Above = 1.5 };
            yield break;
        }

        Row Line(string key, Func<MonthComfort, Amount> of, RunResult run) => new([new Cell(say.Say(key)) { Lettering = Styles.BodyStrong }, .. run.Months.Select(m => new Cell(say.One(of(m))))]);
        yield return new Paragraph(say.Say(
            "energy.year-what", ("warm", new Amount(year.Warm, Dimension.Temperature)), ("airing", Amount.Number(comfort.Airing)), ("simple", new Amount(year.Simple, Dimension.Energy)), ("peak", new Amount(year.Heated.Peak, Dimension.Power))), Styles.Body) { Above = 1.5 };
        yield return new Table(
            [new("") { Grows = 1 }, .. year.Heated.Months.Select(m => new Column(say.Say("month-short." + m.Number), Anchor.End))],
            [
                Line("energy.outside", m => new Amount(m.Outside, Dimension.Temperature), year.Heated),
                Line("energy.inside-free", m => new Amount(m.Felt, Dimension.Temperature), year.Free),
                Line("energy.month-heat", m => Amount.Number(Math.Round(m.Heat / 3.6e6)), year.Heated),
                Line("energy.month-sun", m => Amount.Number(Math.Round(m.Sun / 3.6e6)), year.Heated),
            ]) { Above = 1.5, Pad = 0.4, Lettering = Styles.Small };
    }

    private static IEnumerable<Block> Lined(Scene scene, ComfortResult comfort)
    {
        if (comfort.Lined.Count == 0)
        {
            yield break;
        }

        var say = scene.Say;
        yield return new Heading(say.Say("energy.lined")) { Above = 4 };
        yield return new Table(
            [new(say.Say("energy.part")) { Grows = 1 }, new(say.Say("energy.lined-most"), Anchor.End), new(say.Say("energy.lined-left"), Anchor.End)],
            [.. comfort.Lined.Select(l => new Row(new Cell(l.Name), new Cell(say.One(Amount.Number(l.Most)) + " kg/m²"), new Cell(say.One(Amount.Number(l.Left)) + " kg/m²")))]) { Above = 1.5, Pad = 0.4 };
        yield return new Paragraph(say.Say("energy.lined-note"), Styles.Small) { Above = 1 };
    }

    private static Table LeansOn(Scene scene, ComfortResult comfort)
    {
        var say = scene.Say;
        return new Table(
            [new(say.Say("drying.what-assumed")) { Grows = 1 }, new(say.Say("drying.value"), Anchor.End), new(say.Say("drying.key"))],
            [
                .. comfort.Assumptions.GroupBy(a => a.Source).OrderBy(g => g.Count()).SelectMany(g => g.Select(a =>
                    new Row(new Cell(say.Say(a.What)), new Cell(say.Say(a.Value)) { Lettering = Styles.BodyStrong }, new Cell(a.Key) { Lettering = Styles.Small }))
                    .Prepend(new Row(new Cell(say.Say(g.Key)) { Lettering = Styles.SmallStrong }) { Ruled = true })),
            ]) { Above = 1.5, Pad = 0.35 };
    }
}
