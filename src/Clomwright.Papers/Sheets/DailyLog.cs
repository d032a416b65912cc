using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>Two lines a day: what rate, forecast, inspector and next owner are told from.</summary>
internal static class DailyLog
{
    public static IEnumerable<Draft> Of(Wording say, PaperSize paper, string key = "daily-log") => Draft.Flow(new SheetHead(key, say.Say("daily.title"), Clock.Wall), paper.Portrait(),
    [
        new Paragraph(say.Say("daily.how"), Styles.Body),
        new Table(
            [
                new(say.Say("daily.date")) { Grows = 2 }, new(say.Say("daily.people")) { Grows = 1 }, new(say.Say("daily.hours")) { Grows = 1 }, new(say.Say("daily.batches")) { Grows = 1 }, new(say.Say("daily.lift")) { Grows = 1 },
                new(say.Say("daily.height")) { Grows = 2 }, new(say.Say("daily.rain")) { Grows = 1 }, new(say.Say("daily.low-high")) { Grows = 2 }, new(say.Say("daily.photos")) { Grows = 1 }, new(say.Say("daily.by")) { Grows = 1 },
            ],
            [
                .. Enumerable.Range(0, 12).SelectMany(i => (Row[])
                [
                    new Row("", "", "", "", "", "", "", "", "", "") { Ruled = i > 0 },
                    new Row(new Cell(say.Say("daily.remarks")) { Lettering = Styles.Small }),
                ]),
            ]) { Above = 3, Pad = 3 },
    ], say);
}

/// <summary>Which pictures to take before something is covered, a tape in each.</summary>
internal static class PhotoList
{
    /// <summary>A frame is braced, a pane set straight in the cob lies in a groove, an arch stands on its form.</summary>
    private static string Kind(Opening opening) => opening.Kind == OpeningKind.Glass ? "glass" : opening.Frame is null ? "form" : "frame";

    public static IEnumerable<Draft> Of(Scene scene)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        List<Row> rows = [];
        void Part(string key, IEnumerable<string> what)
        {
            string[] lines = [.. what];
            if (lines.Length > 0)
            {
                rows.Add(new Row(new Cell(say.Say(key)) { Lettering = Styles.BodyStrong }) { Ruled = true });
                rows.AddRange(lines.Select(l => new Row(new Cell(l) { Tick = true }, Dots.Cell(16), Dots.Cell(16), Dots.Cell(16))));
            }
        }

        Part("photos.ground", [say.Say("photos.pegs"), .. scene.House.Trench is null ? (string[])[] : [say.Say("photos.trench"), say.Say("photos.drain"), say.Say("photos.outlet")], StemContents.Of(g).Listed is > 0 and var low ? say.Say("photos.stem-with", ("count", low)) : say.Say("photos.stem"), say.Say("photos.damp")]);
        Part("photos.tests", [say.Say("photos.bars"), say.Say("photos.prisms"), say.Say("photos.mix")]);
        Part("photos.wall", g.Lifts.Select(l =>
        {
            var things = LiftContents.Of(g, l).Listed;
            return things == 0 ? say.Say("photos.lift", ("n", l.Number)) : say.Say("photos.lift-with", ("n", l.Number), ("count", things));
        }));
        Part("photos.openings", g.Openings.Select(o => say.Say("photos.opening-" + Kind(o.Opening), ("letter", scene.Letter(o)), ("name", o.Opening.Name))));
        Part("photos.top", [.. scene.House.Tees is null ? (string[])[] : [say.Say("photos.tees")], .. scene.House.BondBeam is null ? (string[])[] : [say.Say("photos.beam")]]);
        if (scene.House.Roof is not null)
        {
            Part("photos.roof", [say.Say("photos.poles"), say.Say(scene.House.Roof is Building.Roof.Reciprocal ? "photos.crossings" : "photos.upper"), say.Say("photos.deck"), say.Say("photos.membrane"), say.Say("photos.edge")]);
        }

        Part("photos.services", [say.Say("photos.wires"), say.Say("photos.pipes"), say.Say("photos.flue")]);
        return Draft.Flow(new SheetHead("photo-list", say.Say("photos.title"), Clock.Wall), scene.Portrait,
        [
            new Paragraph(say.Say("photos.how"), Styles.Body),
            new Table([new(say.Say("photos.what")) { Grows = 1 }, new(say.Say("daily.date")), new(say.Say("photos.number")), new(say.Say("daily.by"))], rows) { Above = 2, Pad = 0.7 },
            new Paragraph(say.Say("photos.keep"), Styles.Small) { Above = 2 },
        ], say);
    }
}
