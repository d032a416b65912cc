using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Views;

namespace Clomwright.Papers.Sheets;

/// <summary>A section through the wall, and beside it the storey pole: every height that is marked on a stick at the wall.</summary>
internal static class SectionSheet
{
    private const double PoleGap = 9;
    private const double PoleWidth = 5;
    private const double LabelsGap = 5;
    private const double WhatWidth = 54;

    public static IEnumerable<Draft> Of(Scene scene)
    {
        var say = scene.Say;
        var content = SheetFrame.Content(scene.Portrait);
        var marks = Marks(scene);
        var notes = new Paragraph(say.Say("section.note"), Styles.Small);
        var room = content.Height - notes.Height(content.Width) - 3;
        DrawingScale Fitting(Lettering heights) => DrawingScale.Fitting(say.First, s =>
        {
            var d = new SectionDrawing(scene.Geometry, s.PaperPerMetre);
            return d.Right - d.Left + PoleGap + PoleWidth + LabelsGap + marks.Max(m => LabelWidth(heights, m)) <= content.Width && d.Y(d.Lowest) - d.Y(d.Highest) + 44 <= room;
        });

        // Larger heights where the drawing need not be smaller for them.
        var scale = Fitting(Styles.BodyStrong);
        var heights = Fitting(Styles.Tape).PaperPerMetre >= scale.PaperPerMetre ? Styles.Tape : Styles.BodyStrong;
        var section = new SectionDrawing(scene.Geometry, scale.PaperPerMetre) { Book = say.Book };
        var board = new Board();
        section.Draw(board, say.First);
        Pole(board, scene, section, marks, heights);
        var view = board.Marks.Bounds().Inset(-1);
        var head = new SheetHead("section", say.Say("section.title"), Clock.Drawing, say.Say(scale.Label));
        return Draft.Flow(head, scene.Portrait, [new Picture(board.Marks, view), notes, .. Floor(scene)], say);
    }

    private static IEnumerable<Block> Floor(Scene scene)
    {
        var layers = scene.House.Floor.Layers;
        if (layers.Count > 0)
        {
            var list = layers.Reverse().Select(l => l.Depth == Length.Zero ? l.Name : $"{l.Name} {scene.Say.Say((Amount)l.Depth)}");
            yield return new Paragraph(scene.Say.Say("section.floor", ("layers", string.Join(", ", list))), Styles.Small) { Above = 1.5 };
        }
    }

    /// <summary>Heights and what is there, from the ground up.</summary>
    internal static IReadOnlyList<(double Height, string What, bool Strong)> Marks(Scene scene)
    {
        var (g, say) = (scene.Geometry, scene.Say);
        List<(double Height, string What, bool Strong)> marks = [(0, say.Say("pole.floor"), true), (g.Wall.Base.Metres, say.Say("pole.stem"), false)];
        if (g.House.Site.Grade is { } grade)
        {
            marks.Add((grade.Metres, say.Say("pole.grade"), false));
        }

        marks.AddRange(g.Lifts.SkipLast(1).Select(l => (l.Top.Metres, say.Say("pole.lift", ("n", l.Number)), false)));
        marks.Add((g.Wall.Top.Metres, say.Say("pole.top"), true));
        if (g.House.BondBeam is { } beam)
        {
            marks.Add((g.Wall.Top.Metres + beam.Depth.Metres, say.Say("pole.beam"), false));
        }

        Together("pole.sill", g.Openings.Where(o => o.Sill > 0).Select(o => (o.Sill, scene.Letter(o))));
        Together("pole.head", g.Openings.Select(o => (o.Head, scene.Letter(o))));
        Together("pole.header", g.Openings.Where(o => o.Header is not null).Select(o => (o.Header!.Top, scene.Letter(o))));
        Together("pole.niche", g.Niches.Select(n => (n.Bottom, StripHoles.Sign(g, n))));
        marks.AddRange(g.Tees.Select(t => (t.BarHeight, say.Say("pole.tee"), false)).Distinct());
        return
        [
            .. marks.GroupBy(m => Math.Round(m.Height, 4)).OrderBy(m => m.Key)
                .Select(m => (m.First().Height, string.Join(", ", m.Select(x => x.What).Distinct()), m.Any(x => x.Strong))),
        ];

        void Together(string key, IEnumerable<(double Height, string Sign)> things) => marks.AddRange(
            things.GroupBy(t => Math.Round(t.Height, 4)).Select(t => (t.First().Height, say.Say(key, ("of", string.Join(", ", t.Select(x => x.Sign)))), false)));
    }

    private static double LabelWidth(Lettering heights, (double Height, string What, bool Strong) mark) =>
        Column(heights) + Math.Min(WhatWidth, What(mark.What).WidthOf(mark.What)) + 2;

    /// <summary>How what is at a mark is written: where much is at one height smaller, rather than cut.</summary>
    private static Lettering What(string words) => Styles.Body.WidthOf(words) > WhatWidth ? Styles.Small : Styles.Body;

    /// <summary>Width of the column of heights.</summary>
    private static double Column(Lettering heights) => heights.WidthOf("10 ft 10 3/4 in") + Styles.Small.WidthOf("10 ft 10 3/4 in") + 5;

    private static void Pole(Board board, Scene scene, SectionDrawing section, IReadOnlyList<(double Height, string What, bool Strong)> marks, Lettering heights)
    {
        var say = scene.Say;
        var left = section.Right + PoleGap;
        var (top, bottom) = (section.Y(Math.Max(section.Highest, marks.Max(m => m.Height))) - 3, section.Y(Math.Min(0, marks.Min(m => m.Height))) + 3);
        board.Rectangle(new PaperBox(left, top, left + PoleWidth, bottom), Weight.Heavy);
        var wanted = marks.Select(m => section.Y(m.Height)).ToArray();
        var room = Math.Max(Styles.Body.Leading + 0.9, heights.Leading + 0.2);
        var middles = Spreading.Apart(wanted, [.. marks.Select(_ => room)], double.NegativeInfinity, double.PositiveInfinity);
        var x = left + PoleWidth + LabelsGap;
        for (var i = 0; i < marks.Count; i++)
        {
            var (y, at) = (wanted[i], middles[i]);
            board.Line(left, y, left + PoleWidth, y, marks[i].Strong ? Weight.Bold : Weight.Medium);
            board.Add(new Stroke(Outline.Through(new(left + PoleWidth, y), new(left + PoleWidth + 0.8, y), new(x - 0.8, at)), new Pen(Weight.Hair)));
            board.Say(say.Book.Tape(marks[i].Height, say.First), x, at + heights.Digits / 2, heights);
            board.Say(say.Book.Tape(marks[i].Height, say.Second), x + heights.WidthOf("10 ft 10 3/4 in") + 2, at + heights.Digits / 2, Styles.Small);
            board.Say(Wrapping.Shortened(marks[i].What, What(marks[i].What), WhatWidth), x + Column(heights), at + heights.Digits / 2, What(marks[i].What));
        }
    }
}
