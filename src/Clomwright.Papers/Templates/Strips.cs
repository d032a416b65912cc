using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Papers.Sheets;

namespace Clomwright.Papers.Templates;

/// <summary>Narrow templates: the wedge that is taped to a level, the storey pole, and the strip for the stick that swings from the centre peg.</summary>
internal static class Strips
{
    /// <summary>Width of a marked strip, mm.</summary>
    private const double StripWidth = 64;

    private const double StickWidth = 14;

    /// <summary>Room for what a mark is, mm.</summary>
    private const double LabelWidth = StripWidth - StickWidth - 6;

    /// <summary>The thin end of a wedge, mm: what a saw can still leave.</summary>
    private const double ThinEnd = 12;

    public static IEnumerable<Template> Of(Scene scene) => [.. Wedges(scene), StoreyPole(scene), RadiusStrip(scene)];

    /// <summary>A wedge for each face that leans: as long as a common level, wider at the top where the face leans away from it.</summary>
    private static IEnumerable<Template> Wedges(Scene scene)
    {
        var (say, wall) = (scene.Say, scene.Geometry.Wall);
        foreach (var face in Enum.GetValues<Face>())
        {
            var taper = (face == Face.Inside ? wall.InsideTaper : wall.OutsideTaper).RiseOverRun;
            if (Math.Abs(taper) < 1e-6)
            {
                continue;
            }

            var length = LevelLength(say.First);
            var gain = 1000 * length.Metres * taper;
            var (thick, thin) = (ThinEnd + Math.Abs(gain), ThinEnd);
            var (top, bottom) = taper > 0 ? (thick, thin) : (thin, thick);
            double x = Template.Margin, y = Template.Margin, high = 1000 * length.Metres;
            yield return new Template(
                face == Face.Inside ? "taper-inside" : "taper-outside", say.Say("template.taper-" + face.ToString().ToLowerInvariant()),
                [
                    say.Say("template.use-taper", ("length", length), ("thin", Amount.Metres(thin / 1000)), ("thick", Amount.Metres(thick / 1000)), ("taper", (Amount)new Slope(Math.Abs(taper)))),
                    say.Say(face == Face.Inside ? "template.use-taper-inside" : "template.use-taper-outside"), say.Say("template.use-taper-check"),
                ],
                thick + 2 * Template.Margin, high + 2 * Template.Margin,
                Outline.Polygon(new(x, y), new(x + top, y), new(x + bottom, y + high), new(x, y + high)))
            {
                Labels =
                [
                    new Text(say.Say("template.up"), new PaperPoint(x + 2, y + 3 + Styles.Body.Digits), Styles.Body),
                    new Text(say.Say("template.level-side"), new PaperPoint(x + 4, y + high / 2 + 20), Styles.Body, Anchor.Start, -90),
                ],
            };
        }
    }

    private static Length LevelLength(UnitSystem units) => units == UnitSystem.Imperial ? Length.FromFeet(3) : Length.FromMillimetres(900);

    /// <summary>Every height of the section, true to size, to glue on a stick.</summary>
    private static Template StoreyPole(Scene scene)
    {
        var marks = SectionSheet.Marks(scene);
        var (low, high) = (Math.Min(0, marks.Min(m => m.Height)), marks.Max(m => m.Height));
        return Marked("storey-pole", scene.Say.Say("template.storey-pole"), [scene.Say.Say("template.use-pole"), scene.Say.Say("template.use-pole-care")], high - low,
            [.. marks.Select(m => (high - m.Height, scene.Say.One(Amount.Metres(m.Height)), m.What, m.Strong))]);
    }

    /// <summary>Both faces at every level of the wall, measured outward from the inside face at the wall base; for a round house with the radius from the peg.</summary>
    private static Template RadiusStrip(Scene scene)
    {
        var (say, wall, round) = (scene.Say, scene.Geometry.Wall, scene.Geometry.Curve.IsRoundAboutCentre);
        var radius = round ? scene.Geometry.Curve.Length / (2 * Math.PI) : 0;
        (double Height, string Name)[] levels = [.. RadiusSheet.Levels(scene)];
        var all = levels.SelectMany(l => new[] { (l.Name, At: wall.InsideOffset(l.Height), Face: Face.Inside), (l.Name, At: wall.OutsideOffset(l.Height), Face: Face.Outside) })
            .GroupBy(m => (m.Face, Math.Round(m.At, 5))).OrderBy(m => m.Key.Item2)
            .Select(m => (m.First().At, m.Key.Face, Names: m.Count() == levels.Length ? say.Say("template.all-heights") : string.Join(", ", m.Select(x => x.Name)))).ToArray();
        var first = Math.Min(0, all.Min(m => m.At));
        return Marked("radius-strip", say.Say(round ? "template.radius-strip" : "template.offset-strip"),
            [round ? say.Say("template.use-radius", ("radius", Amount.Metres(radius))) : say.Say("template.use-offset"), say.Say("template.use-strip")], Math.Max(0, all.Max(m => m.At)) - first,
            [.. all.Select(m => (m.At - first, say.One(Amount.Metres(radius + m.At)), Wording.Dotted(say.Say("face." + m.Face.ToString().ToLowerInvariant()), m.Names), Math.Abs(m.At) < 1e-9))]);
    }

    /// <summary>A strip with a mark across it at each distance from its top, m; labels are moved apart where they would touch.</summary>
    private static Template Marked(string key, string title, Sequence<string> uses, double length, IReadOnlyList<(double From, string Value, string What, bool Strong)> marks)
    {
        var height = Styles.Reading.Leading + Styles.Body.Leading + 1.2;
        var pad = Math.Max(Template.Margin, height);
        double left = Template.Margin, right = left + StickWidth, high = 1000 * length + 2 * pad;
        double[] at = [.. marks.Select(m => pad + 1000 * m.From)];
        var room = marks.Count * height > high - 2 ? (high - 2) / marks.Count : height;
        var middles = Spreading.Apart(at, [.. marks.Select(_ => room)], 1, high - 1);
        List<Mark> lines = [new Stroke(Outline.Rectangle(new PaperBox(left, pad - 6, right, high - pad + 6)), new Pen(Weight.Thin))];
        List<Text> labels = [];
        List<Outline> edge = [];
        var x = right + 5;
        for (var i = 0; i < marks.Count; i++)
        {
            edge.Add(Outline.Line(left, at[i], right, at[i]));
            if (marks[i].Strong)
            {
                lines.Add(new Fill(Outline.Polygon(new(left, at[i]), new(left - 2.5, at[i] - 1.5), new(left - 2.5, at[i] + 1.5))));
            }

            lines.Add(new Stroke(Outline.Through(new(right, at[i]), new(right + 1, at[i]), new(x - 1, middles[i])), new Pen(Weight.Hair)));
            var top = middles[i] - height / 2;
            labels.Add(new Text(marks[i].Value, new PaperPoint(x, top + Styles.Reading.Ascent()), Styles.Reading));
            var what = Styles.Body.WidthOf(marks[i].What) > LabelWidth ? Styles.Small : Styles.Body;
            labels.Add(new Text(Wrapping.Shortened(marks[i].What, what, LabelWidth), new PaperPoint(x, top + Styles.Reading.Leading + what.Ascent()), what));
        }

        return new Template(key, title, uses, StripWidth + 2 * Template.Margin, high, Outline.Of(edge)) { Lines = lines.ToSequence(), Labels = labels.ToSequence() };
    }
}
