using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>Everything that is built into the wall, lift by lift, with room for where it really went: whoever drills, wires or hangs a shelf later looks here first.</summary>
internal static class EmbedRegister
{
    public static IEnumerable<Draft> Of(Scene scene) => Draft.Fewest(Styles.Tapes, numbers => Of(scene, numbers));

    private static IEnumerable<Draft> Of(Scene scene, Lettering numbers)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        List<Row> rows = [];
        void Group(string title, Row[] set)
        {
            if (set.Length > 0)
            {
                rows.Add(new Row(new Cell(title) { Lettering = Styles.BodyStrong }) { Ruled = true });
                rows.AddRange(set);
            }
        }

        var stem = StemContents.Of(g);
        Group(say.Say("register-set.stem", ("top", g.Wall.Base)), [.. Rows(scene, new LiftContents(stem.Embeds, [], [], stem.Deadmen), numbers, "register-set.block-")]);
        foreach (var lift in g.Lifts)
        {
            Group(say.Say("register-set.lift", ("n", lift.Number), ("top", lift.Top)), [.. Rows(scene, LiftContents.Of(g, lift), numbers, "register-set.deadman-")]);
        }

        List<Block> blocks =
        [
            new Paragraph(say.Say("register-set.note"), Styles.Body),
            rows.Count == 0 ? new Paragraph(say.Say("register-set.none"), Styles.BodyStrong) { Above = 2 } : Columns(say, rows) with { Above = 2 },
            Added(say) with { Above = 4 },
            Care(say),
        ];
        return Draft.Flow(new SheetHead("embed-register", say.Say("register-set.title"), Clock.Wall), scene.Portrait, blocks, say);
    }

    /// <summary>Empty lines, for people who have no file yet.</summary>
    public static IEnumerable<Draft> Blank(Wording say, PaperSize paper) => Draft.Flow(new SheetHead("embed-register-blank", say.Say("register-set.title"), Clock.Wall), paper.Portrait(),
    [
        new Paragraph(say.Say("register-set.note"), Styles.Body),
        Columns(say, [.. Enumerable.Range(0, 20).Select(_ => new Row("", Dots.Cell(26), Dots.Cell(12), Dots.Cell(12), Dots.Cell(12), Dots.Cell(12), Dots.Cell(10), Dots.Cell(8)))]) with { Above = 2, Pad = 1.9 },
        Care(say),
    ], say);

    private static Cautions Care(Wording say) => new(say.Say("caution.title"), [say.Say("caution.wire"), say.Say("register-set.drill")]) { Above = 4 };

    private static Table Columns(Wording say, IReadOnlyList<Row> rows) => new(
        [
            new(""), new(say.Say("register-set.what")) { Grows = 1 }, new(say.Say("register-set.height"), Anchor.End), new(say.Say("register-set.station"), Anchor.End),
            new(say.Say("register-set.height-built")), new(say.Say("register-set.station-built")), new(say.Say("register-set.date-by")), new(say.Say("register-set.photo")),
        ],
        rows) { Pad = 0.8 };

    /// <summary>What was set in that no drawing shows.</summary>
    private static Table Added(Wording say) =>
        Columns(say, [new Row(new Cell(say.Say("register-set.added")) { Lettering = Styles.BodyStrong }), .. Enumerable.Range(0, 4).Select(_ => new Row("", Dots.Cell(26), "", "", Dots.Cell(12), Dots.Cell(12), Dots.Cell(10), Dots.Cell(8)))]) with { Pad = 1.6 };

    /// <summary>The rows of one lift or of the stem, in the order in which they come.</summary>
    private static IEnumerable<Row> Rows(Scene scene, LiftContents here, Lettering numbers, string beside)
    {
        var (say, g) = (scene.Say, scene.Geometry);
        var embeds = here.Embeds.Select(e => (e.Height, e.Station, Row: Line(scene, numbers, StripEmbeds.Number(e), Name(scene, e), Kind(scene, e), e.Height, e.Station)));
        var niches = here.Niches.Select(n => (n.Bottom, n.Station, Row: Line(scene, numbers, StripHoles.Sign(g, n), n.Niche.Name, say.Say("register-set.niche"), n.Bottom, n.Station)));
        var tees = here.Tees.Select(t => (t.BarHeight, t.Station, Row: Line(scene, numbers, $"T{t.Number}", say.Say("register-set.tee", ("n", t.Number)), t.Pole is { } pole ? say.Subject(pole) : "", t.BarHeight, t.Station)));
        var frames = here.Deadmen.SelectMany(d => ((string[])["left", "right"])
            .Select(side => (d.Height, d.Opening.Station, Row: Line(scene, numbers, scene.Letter(d.Opening), say.Say(beside + side), d.Opening.Opening.Name, d.Height, null))));
        return embeds.Concat(niches).Concat(tees).Concat(frames).OrderBy(r => r.Item1).ThenBy(r => r.Item2).Select(r => r.Row);
    }

    /// <summary>One of a row is told by its place in it.</summary>
    private static string Name(Scene scene, EmbedPlace e)
    {
        var row = scene.Geometry.Embeds.Where(x => x.Index == e.Index).ToList();
        return row.Count == 1 ? e.Embed.Name : scene.Say.Say("register-set.one-of", ("name", e.Embed.Name), ("n", row.IndexOf(e) + 1), ("count", row.Count));
    }

    private static string Kind(Scene scene, EmbedPlace e) => Wording.Dotted(
        scene.Say.Say("embed." + e.Embed.Kind.ToString().ToLowerInvariant()), scene.Say.Say("face." + (e.Embed.Through ? "through" : e.Embed.Face.ToString().ToLowerInvariant())), e.Embed.Note ?? "");

    private static Row Line(Scene scene, Lettering numbers, string sign, string name, string what, double height, double? station) => new(
        new Cell(sign) { Tick = true, Lettering = Styles.BodyStrong },
        new Cell(name, what),
        scene.Metres(height) with { Lettering = numbers },
        station is { } s ? scene.Metres(s) with { Lettering = numbers } : new Cell(""),
        Dots.Cell(12), Dots.Cell(12), Dots.Cell(10), Dots.Cell(8));
}
