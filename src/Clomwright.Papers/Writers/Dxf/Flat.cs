using Clomwright.Papers.Drawing;

namespace Clomwright.Papers.Writers.Dxf;

/// <summary>A display list as other programs take it: straight lines, solid areas and text, each on the layer of what it belongs to, with nothing under white paper.</summary>
internal sealed class Flat
{
    /// <summary>Straight pieces for each curve: a quarter of a circle of 1 m radius keeps within 0.08 mm.</summary>
    public const int Steps = 64;

    /// <summary>Layers by how ids begin, the longest first.</summary>
    private static readonly (string Id, string Layer)[] Layers =
    [
        .. new[]
        {
            ("cob", "cob"), ("wall", "cob"), ("stem", "stem"), ("opening-", "openings"), ("niche-", "niches"), ("embed-", "embeds"), ("header-", "headers"), ("landing-", "poles"), ("pole", "poles"), ("post", "poles"),
            ("bond-beam", "bond beam"), ("beam", "bond beam"), ("tee", "tees"), ("lift", "lifts"), ("eave", "roof"), ("drip", "roof"), ("flue", "roof"), ("deck", "roof"), ("trench", "trench"), ("grade-beam", "trench"),
            ("ground", "ground"), ("grade", "ground"), ("zero-mark", "setting out"), ("north", "setting out"), ("mark", "setting out"), ("peg", "setting out"), ("arc-scale", "measures"), ("pier-", "measures"), ("roof", "roof"), ("edge", "roof"), ("layer", "roof"), ("floor", "floor"), ("beyond", "beyond"), ("letter", "measures"), ("level", "measures"),
        }.OrderByDescending(p => p.Item1.Length),
    ];

    private static readonly string[] Views =
        [.. new[] { "elevation-north-", "elevation-east-", "elevation-south-", "elevation-west-", "section-along-", "section-across-", "plan-", "section-", "foundation-", "roof-", "floor-" }.OrderByDescending(v => v.Length)];

    private readonly List<Line> lines = [];
    private readonly List<(Outline Area, string Layer)> solids = [];
    private readonly List<Text> texts = [];

    /// <summary>Layers that drawings stand on, in order.</summary>
    public static IReadOnlyList<string> AllLayers { get; } = [.. Layers.Select(l => l.Layer).Append("drawing").Append("hatching").Append("words").Distinct().Order(StringComparer.Ordinal)];

    /// <summary>What is drawn of a display list.</summary>
    public Flat(IEnumerable<Mark> marks)
    {
        foreach (var mark in marks)
        {
            Add(mark, "drawing", []);
        }
    }

    /// <summary>Lines, in drawing order.</summary>
    public IReadOnlyList<Line> Lines => lines;

    /// <summary>Black areas.</summary>
    public IReadOnlyList<(Outline Area, string Layer)> Solids => solids;

    /// <summary>Text.</summary>
    public IReadOnlyList<Text> Texts => texts;

    private void Add(Mark mark, string layer, Cutting[] clips)
    {
        switch (mark)
        {
            case Stroke s:
                Add(s, layer, clips);
                break;
            case Fill { Tone: Tone.Ink } f:
                solids.Add((f.Outline, layer));
                break;
            case Fill f:
                Cover(new Cutting(f.Outline));
                break;
            case Text { Words.Length: > 0 } t:
                texts.Add(t);
                break;
            case Group g:
                var own = LayerOf(g.Id) ?? layer;
                Cutting[] within = g.Clip is { } clip ? [.. clips, new Cutting(clip)] : clips;
                foreach (var part in g.Marks)
                {
                    Add(part, own, within);
                }

                break;
            case Composite c:
                var kind = c switch { DimensionLine or ScaleBar => "measures", Hatch => "hatching", _ => layer };
                foreach (var part in c.Parts)
                {
                    Add(part, kind, clips);
                }

                break;
        }
    }

    private void Add(Stroke stroke, string layer, Cutting[] clips)
    {
        foreach (var piece in stroke.Outline.Apart())
        {
            var points = piece.Pieces(Steps)[0];
            var closed = piece.Segments[^1].Verb == Verb.Close;
            IEnumerable<Line> kept = [new Line(closed && points.Count > 1 ? [.. points.SkipLast(1)] : points, closed, stroke.Pen, layer)];
            foreach (var clip in clips)
            {
                kept = kept.SelectMany(l => clip.Keep(l, inside: true));
            }

            lines.AddRange(kept.Where(l => l.Points.Count > 1));
        }
    }

    /// <summary>White paper over what was drawn before. Text under it does not happen: labels stand on top.</summary>
    private void Cover(Cutting paper)
    {
        Line[] before = [.. lines];
        lines.Clear();
        lines.AddRange(before.SelectMany(l => paper.Keep(l, inside: false)));
        solids.RemoveAll(s => paper.Box.Holds(s.Area.Bounds) && paper.Holds(s.Area.Bounds.Centre));
    }

    private static string? LayerOf(string id)
    {
        var plain = Views.Where(v => id.StartsWith(v, StringComparison.Ordinal)).Select(v => id[v.Length..]).FirstOrDefault() ?? id;
        return Layers.Where(l => plain.StartsWith(l.Id, StringComparison.Ordinal)).Select(l => l.Layer).FirstOrDefault();
    }
}
