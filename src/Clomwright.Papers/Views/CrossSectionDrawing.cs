using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Geometry.Solids;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Views;

/// <summary>An upright cut through the middle of the house: what is cut in heavy lines, what is seen beyond it in thin ones.</summary>
internal sealed class CrossSectionDrawing
{
    private const double GroundBeyond = 0.45;

    private readonly HouseGeometry geometry;
    private readonly CrossSection cut;
    private readonly RoofShell? roof;
    private readonly double k;
    private readonly double stemInside;
    private readonly double stemOutside;
    private readonly Hidden before = new();

    public CrossSectionDrawing(HouseGeometry geometry, CrossSection cut, RoofShell? roof, double paperPerMetre)
    {
        (this.geometry, this.cut, this.roof, k) = (geometry, cut, roof, paperPerMetre);
        (stemInside, stemOutside) = geometry.Stem;
    }

    private double Grade => geometry.House.Site.Grade?.Metres ?? 0;

    private double Base => geometry.Wall.Base.Metres;

    private double Top => geometry.Wall.Top.Metres;

    /// <summary>Draws it, the origin where the centre peg meets the finished floor.</summary>
    /// <returns>Heights worth writing beside it, with what is there.</returns>
    public IReadOnlyList<(double Height, string Key)> Draw(Board board, string name)
    {
        List<(double, string)> levels = [(0, "floor"), (Base, "stem"), (Top, "wall")];
        Foot(board, name);
        Cob(board, name);
        Beam(board, name);
        var post = PostDrawing.Of(geometry, roof);
        if (post is { Top: { } postTop })
        {
            levels.Add((postTop, "post"));
            before.Add(post.Body(At, 0, postTop));
        }

        if (roof is not null)
        {
            levels.AddRange(Roof(board, name));
        }

        if (post is { Top: { } reached })
        {
            board.Add(post.Upright(name + "-post", At, 0, reached));
        }

        foreach (var part in cut.Beyond.GroupBy(l => l.Of.Length > 0 ? "-" + Ids.Opening(l.Of) : "-beyond"))
        {
            var beyond = new Board();
            foreach (var line in part)
            {
                Visible(beyond, [.. line.Points.Select(At)], Weight.Thin);
            }

            board.Add(new Group(name + part.Key, beyond.Marks));
        }

        if (geometry.House.Site.Grade is { } grade)
        {
            levels.Add((grade.Metres, "grade"));
        }

        if (geometry.House.Trench is { } trench)
        {
            levels.Add((Grade - trench.Depth.Metres, "trench"));
        }

        return levels;
    }

    private PaperPoint At(SeenPoint point) => new(point.Across * k, -point.Height * k);

    private PaperPoint At(double across, double height) => new(across * k, -height * k);

    private PaperBox Box(double from, double to, double low, double high) => new(Math.Min(from, to) * k, -high * k, Math.Max(from, to) * k, -low * k);

    private void Visible(Board board, IReadOnlyList<PaperPoint> line, Weight weight)
    {
        foreach (var run in before.Outside(line))
        {
            board.Add(new Stroke(Outline.Through(run), new Pen(weight)));
        }
    }

    /// <summary>Trench, stem and floor on both sides, and the ground.</summary>
    private void Foot(Board board, string name)
    {
        var inner = CrossSections.Meets(geometry, cut, stemInside);
        var outer = CrossSections.Meets(geometry, cut, stemOutside);
        if (inner.Count < 2 || outer.Count < 2)
        {
            return;
        }

        List<Mark> trenches = [], stems = [], ground = [], floor = [];
        var bottom = Math.Min(Grade, Base - 0.05);
        foreach (var (near, far) in ((double, double)[])[(inner[0], outer[0]), (inner[^1], outer[^1])])
        {
            if (geometry.House.Trench is { } trench)
            {
                var spread = Math.Abs(far - near) / geometry.House.Stem.Width.Metres;
                var (middle, half) = ((near + far) / 2, trench.Width.Metres / 2 * spread);
                var stones = Box(middle - half, middle + half, Grade - trench.Depth.Metres, Grade);
                trenches.AddRange([new Stroke(Stones.In(stones, Math.Max(1.2, 0.09 * k)), new Pen(Weight.Hair)), new Stroke(Outline.Rectangle(stones), new Pen(Weight.Medium))]);
            }

            var stem = Box(near, far, bottom, StemTop(near, far));
            stems.AddRange([new Fill(Outline.Rectangle(stem), Tone.Paper), new Hatch(Outline.Rectangle(stem), -45, 1.3, new Pen(Weight.Hair)), new Stroke(Outline.Rectangle(stem), new Pen(Weight.Heavy))]);
            var side = Math.Sign(far);
            ground.Add(new Stroke(Outline.Line(At(far, Grade), At(far + side * GroundBeyond, Grade)), new Pen(Weight.Bold)));
        }

        var top = 0.0;
        foreach (var layer in geometry.House.Floor.Layers.Reverse())
        {
            var depth = layer.Depth.Metres;
            floor.Add(new Stroke(Outline.Line(At(inner[0], top), At(inner[^1], top)), new Pen(top == 0 ? Weight.Heavy : Weight.Thin)));
            top -= depth;
        }

        floor.Add(new Stroke(Outline.Line(At(inner[0], top), At(inner[^1], top)), new Pen(top == 0 ? Weight.Heavy : Weight.Thin)));
        board.Add(new Group(name + "-trench", [.. trenches]));
        board.Add(new Group(name + "-stem", [.. stems]));
        board.Add(new Group(name + "-ground", [.. ground]));
        board.Add(new Group(name + "-floor", [.. floor]));
    }

    /// <summary>Top of the stem where it is cut: the sill of an opening that reaches down into it.</summary>
    private double StemTop(double near, double far)
    {
        var stands = cut.Cob.Any(p => p[0].Height <= Base + 1e-6 && Math.Sign(p[0].Across) == Math.Sign(far) && p[1].Across - p[0].Across > 0.01);
        if (stands)
        {
            return Base;
        }

        var middle = cut.Origin + (near + far) / 2 * cut.Right;
        return geometry.Openings.Where(o => o.Sill < Base && (middle - o.Middle).Norm < o.Opening.Width.Metres / 2 + geometry.House.Stem.Width.Metres).Select(o => o.Sill).DefaultIfEmpty(Base).Min();
    }

    private void Cob(Board board, string name)
    {
        List<Mark> marks = [];
        foreach (var piece in cut.Cob)
        {
            PaperPoint[] corners = [.. piece.Select(At)];
            marks.Add(new Hatch(Outline.Polygon(corners), 45, 1.5, new Pen(Weight.Hair)));
            before.Add(corners);
        }

        marks.AddRange(cut.Edges.Select(e => new Stroke(Outline.Line(At(e.From), At(e.To)), new Pen(Weight.Heavy))));
        board.Add(new Group(name + "-cob", [.. marks]));
    }

    private void Beam(Board board, string name)
    {
        if (geometry.House.BondBeam is not { } beam)
        {
            return;
        }

        var middle = (geometry.Wall.InsideOffset(Top) + geometry.Wall.OutsideOffset(Top)) / 2 + beam.Offset.Metres;
        var (inner, outer) = (CrossSections.Meets(geometry, cut, middle - beam.Width.Metres / 2), CrossSections.Meets(geometry, cut, middle + beam.Width.Metres / 2));
        if (inner.Count < 2 || outer.Count < 2)
        {
            return;
        }

        List<Mark> marks = [];
        foreach (var (a, b) in ((double, double)[])[(inner[0], outer[0]), (inner[^1], outer[^1])])
        {
            var box = Box(a, b, Top, Top + beam.Depth.Metres);
            marks.AddRange([new Stroke(Outline.Of(Outline.Line(box.Left, box.Top, box.Right, box.Bottom), Outline.Line(box.Left, box.Bottom, box.Right, box.Top)), new Pen(Weight.Hair)), new Stroke(Outline.Rectangle(box), new Pen(Weight.Medium))]);
            before.Add([new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)]);
        }

        board.Add(new Group(name + "-beam", [.. marks]));
    }

    /// <summary>Deck and layers where they are cut, and the poles beyond.</summary>
    private IEnumerable<(double, string)> Roof(Board board, string name)
    {
        List<Mark> marks = [];
        var highest = double.NegativeInfinity;
        var lowest = double.PositiveInfinity;
        foreach (var (corners, covering) in roof!.Facets())
        {
            foreach (var triangle in (SpacePoint[][])[[corners[0], corners[1], corners[2]], [corners[0], corners[2], corners[3]]])
            {
                SeenPoint[] ends = [.. Crossings(triangle)];
                if (ends.Length != 2)
                {
                    continue;
                }

                PaperPoint[] band = [At(ends[0]), At(ends[1]), At(ends[1].Across, ends[1].Height + covering), At(ends[0].Across, ends[0].Height + covering)];
                (highest, lowest) = (Math.Max(highest, ends.Max(e => e.Height) + covering), Math.Min(lowest, ends.Min(e => e.Height)));
                marks.AddRange([new Hatch(Outline.Polygon(band), 0, 0.9, new Pen(Weight.Hair)), new Stroke(Outline.Line(band[0], band[1]), new Pen(Weight.Medium)), new Stroke(Outline.Line(band[3], band[2]), new Pen(Weight.Medium))]);
                before.Add(band);
            }
        }

        board.Add(new Group(name + "-roof", [.. marks]));
        var poles = new Board();
        foreach (var pole in roof.Poles.OrderByDescending(p => p.Foot.Dot(cut.Toward)))
        {
            if (Behind(pole) is not var (from, to) || to - from < 0.05)
            {
                continue;
            }

            var (a, b) = (Axis(pole, from), Axis(pole, to));
            var along = 1 / Math.Max((b - a).Norm, 1e-9) * (b - a);
            var across = new PaperPoint(-along.Y, along.X);
            var (ra, rb) = (pole.DiameterAt(from) / 2 * k, pole.DiameterAt(to) / 2 * k);
            PaperPoint[] body = [a + ra * across, b + rb * across, b - rb * across, a - ra * across];
            Visible(poles, [.. body, body[0]], Weight.Thin);
            before.Add(body);
        }

        // Tips that stand over the ring are higher than the deck.
        highest = roof.Poles.SelectMany(p => (double[])[-p.EaveReach, p.Far + p.Tail], (p, along) => roof.Over(p, along)).Append(highest).Max();
        board.Add(new Group(name + "-poles", poles.Marks));
        return double.IsInfinity(lowest) ? [] : [(highest, "highest"), (lowest, "eave")];
    }

    private PaperPoint Axis(PoleGeometry pole, double along) => At(cut.Project(pole.Foot + along * pole.Along, roof!.Axis(pole, along)));

    /// <summary>The stretch of a pole beyond the plane, m from its foot.</summary>
    private (double From, double To)? Behind(PoleGeometry pole)
    {
        var (from, to) = (-pole.EaveReach, pole.Far + pole.Tail);
        double Depth(double along) => (pole.Foot + along * pole.Along - cut.Origin).Dot(cut.Toward);
        var (a, b) = (Depth(from), Depth(to));
        if (a >= 0 && b >= 0)
        {
            return null;
        }

        var at = a == b ? from : from + (to - from) * a / (a - b);
        return (a < 0, b < 0) switch { (true, true) => (from, to), (true, false) => (from, at), _ => (at, to) };
    }

    private IEnumerable<SeenPoint> Crossings(SpacePoint[] triangle)
    {
        for (var i = 0; i < 3; i++)
        {
            var (p, q) = (triangle[i], triangle[(i + 1) % 3]);
            var (a, b) = ((p.Plan - cut.Origin).Dot(cut.Toward), (q.Plan - cut.Origin).Dot(cut.Toward));
            if (a > 0 != b > 0)
            {
                var t = a / (a - b);
                var at = p + t * (q - p);
                yield return cut.Project(at.Plan, at.Up);
            }
        }
    }
}
