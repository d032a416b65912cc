using Clomwright.Evidence;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>What is looked at every year so that the house stands: for whoever lives in it.</summary>
internal static class YearlyCareSheet
{
    public static IEnumerable<Draft> Of(Scene scene)
    {
        var (say, house) = (scene.Say, scene.House);
        List<Row> rows = [];
        void Part(string key, params IEnumerable<string> lines)
        {
            rows.Add(new Row(new Cell(say.Say(key)) { Lettering = Styles.BodyStrong }) { Ruled = true });
            rows.AddRange(lines.Select(l => new Row(new Cell(l), new Cell("") { Tick = true }, new Cell("") { Tick = true }, Dots.Cell(34))));
        }

        Part("care.roof",
        [
            say.Say("care.roof-after"), .. scene.Set.Quantities.Orders.Any(o => o is { Key: "roof-soil", Supplier: "earth" }) ? (string[])[say.Say("care.roof-plants")] : [],
            house.Roof is { Layers.Count: > 0 } ? say.Say("care.roof-edge") : say.Say("care.roof-cover"),
            .. house.Roof is { Overflow: not null } ? (string[])[say.Say("care.roof-overflow")] : [], say.Say("care.roof-drip"), say.Say(house.Roof is Building.Roof.Reciprocal ? "care.roof-under" : "care.roof-under-plain"),
        ]);
        Part("care.foot",
        [
            say.Say("care.foot-soil", ("stem", scene.Geometry.Wall.Base)), say.Say("care.foot-splash"), say.Say("care.foot-plants"), say.Say("care.foot-rodents"),
            .. house.Trench is { Outlet: not null } trench ? (string[])[trench.OutletBearing is { } bearing ? say.Say("care.foot-outlet-at", ("bearing", (Amount)bearing)) : say.Say("care.foot-outlet")] : [],
        ]);
        Part("care.wall", say.Say("care.wall-cracks"), say.Say("care.wall-plaster"), say.Say("care.wall-sills"), say.Say("care.wall-frames"), say.Say("care.wall-wood"), say.Say("care.wall-bees"));
        Part("care.inside", say.Say("care.inside-mould"), say.Say("care.inside-floor"), say.Say("care.inside-pipes"), say.Say("care.inside-air"));
        Part("care.fire", [say.Say("care.fire-alarms"), .. house.Stove is not null || house.Roof?.Flue is not null || house.Comfort.Stove is not null ? (string[])[say.Say("care.fire-flue"), say.Say("care.fire-stove")] : [], say.Say("care.fire-wires")]);
        return Draft.Flow(new SheetHead("yearly-care", say.Say("care.title"), Clock.Wall), scene.Portrait,
        [
            new Paragraph(say.Say("care.how"), Styles.Body),
            new Facts([new Fact(say.Say("care.year"), ""), new Fact(say.Say("care.by"), ""), new Fact(say.Say("care.spring-on"), ""), new Fact(say.Say("care.autumn-on"), "")], Styles.Body) { Above = 2 },
            new Beside(
                new Stack(
                [
                    new Heading(say.Say("care.never")),
                    new Table([new("") { Grows = 1 }], [.. ((string[])["care.never-cement", "care.never-seal", "care.never-soil", "care.never-cut", "care.never-roof"]).Select(k => new Row(new Cell("– " + say.Say(k))))]) { Above = 0.8, Pad = 0.3 },
                ]),
                new Stack([new Cautions(say.Say("caution.title"), [say.Say("care.ladder"), say.Say("caution.soaked"), say.Say("cracks.noise"), say.Say("caution.sealed"), say.Say("caution.mould")])]),
                0.4) { Above = 3 },
            new Table([new(say.Say("care.look")) { Grows = 1 }, new(say.Say("care.spring")), new(say.Say("care.autumn")), new(say.Say("care.found"))], rows) { Above = 2, Pad = 0.55 },
        ], say);
    }
}
