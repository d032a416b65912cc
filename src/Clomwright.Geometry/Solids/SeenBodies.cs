using Clomwright.Evidence;

namespace Clomwright.Geometry.Solids;

/// <summary>A line in space that may be seen: an edge of a body, or one that lies on none.</summary>
/// <param name="Of">What it belongs to.</param>
/// <param name="Points">Straight from each to the next.</param>
public sealed record SpaceLine(string Of, Sequence<SpacePoint> Points);

/// <summary>A line of a projected drawing that is seen, all of it.</summary>
/// <param name="Of">Name of the body, or what a line among them belongs to.</param>
/// <param name="Points">Straight from each to the next; two or more.</param>
public sealed record SeenBodyLine(string Of, Sequence<SeenPoint> Points);

/// <summary>Closed bodies as lines of a parallel projection: sharp edges, and outlines where a rounded face turns away; what lies behind a body is left out.</summary>
/// <remarks>
/// Each straight piece is held against every triangle that faces the viewer and lies before it: within the triangle's outline the difference of nearness runs evenly along the piece, so where it is
/// hidden is a span with known ends and nothing is sampled. An outline is an edge between a triangle that faces the viewer and one that does not, where the body bulges; the triangles that meet at
/// its own corners cannot hide it. Points are those of the bodies: on the true faces, straight between.
/// </remarks>
public static class SeenBodies
{
    /// <summary>A triangle hides what lies this much behind it, m: more than rounding, less than the thinnest thing that is drawn.</summary>
    private const double Behind = 1e-6;

    private const int Cells = 96;

    /// <summary>What is seen of bodies, and of lines among them.</summary>
    /// <param name="bodies">Each closed.</param>
    /// <param name="lines">Further lines.</param>
    /// <param name="from">The projection.</param>
    /// <param name="ground">Nothing lower is seen, m; none where null.</param>
    public static Sequence<SeenBodyLine> Of(IReadOnlyList<SolidMesh> bodies, IReadOnlyList<SpaceLine> lines, Projection from, double? ground = null)
    {
        ArgumentNullException.ThrowIfNull(bodies);
        ArgumentNullException.ThrowIfNull(lines);
        Corners[] meshes = [.. bodies.Select(b => new Corners(b, from))];
        var before = new Before([.. meshes.SelectMany(m => m.Facing())]);
        List<SeenBodyLine> seen = [];
        foreach (var mesh in meshes)
        {
            seen.AddRange(mesh.Body.Edges.SelectMany(e => Visible(mesh.Body.Name, e, from, before, ground, null)));
            seen.AddRange(mesh.Outlines().SelectMany(o => Visible(mesh.Body.Name, [o.From, o.To], from, before, ground, o)));
        }

        seen.AddRange(lines.SelectMany(l => Visible(l.Of, l.Points, from, before, ground, null)));
        return seen.ToSequence();
    }

    private static IEnumerable<SeenBodyLine> Visible(string of, Sequence<SpacePoint> line, Projection from, Before before, double? ground, (SpacePoint From, SpacePoint To)? own)
    {
        List<SeenPoint> run = [];
        for (var i = 0; i + 1 < line.Count; i++)
        {
            var (a, b) = (line[i], line[i + 1]);
            var (p, q) = (from.Project(a), from.Project(b));
            foreach (var (start, end) in before.Free(p, from.Nearness(a), q, from.Nearness(b), OverGround(a.Up, b.Up, ground), own))
            {
                if (run.Count > 0 && start > 0)
                {
                    yield return new SeenBodyLine(of, run.ToSequence());
                    run = [];
                }

                if (run.Count == 0)
                {
                    run.Add(Between(p, q, start));
                }

                run.Add(Between(p, q, end));
                if (end < 1)
                {
                    yield return new SeenBodyLine(of, run.ToSequence());
                    run = [];
                }
            }

            if (run.Count > 0 && run[^1] != q)
            {
                yield return new SeenBodyLine(of, run.ToSequence());
                run = [];
            }
        }

        if (run.Count > 1)
        {
            yield return new SeenBodyLine(of, run.ToSequence());
        }

        static SeenPoint Between(SeenPoint p, SeenPoint q, double t) => t <= 0 ? p : t >= 1 ? q : new(p.Across + t * (q.Across - p.Across), p.Height + t * (q.Height - p.Height));
    }

    /// <summary>The span of a straight piece that lies over the ground.</summary>
    private static (double From, double To) OverGround(double a, double b, double? ground)
    {
        if (ground is not { } level || (a >= level && b >= level))
        {
            return (0, 1);
        }

        var at = (level - a) / (b - a);
        return a < level && b < level ? (1, 0) : a < level ? (at, 1) : (0, at);
    }

    /// <summary>A triangle that faces the viewer: its corners as drawn with their nearness.</summary>
    private readonly record struct Facing(SeenPoint A, SeenPoint B, SeenPoint C, double NearA, double Across, double Up, SpacePoint First, SpacePoint Second, SpacePoint Third)
    {
        public double Nearness(double across, double height) => NearA + Across * (across - A.Across) + Up * (height - A.Height);

        public bool Touches((SpacePoint From, SpacePoint To) line) => At(line.From) || At(line.To);

        private bool At(SpacePoint point) => First == point || Second == point || Third == point;
    }

    /// <summary>The corners of a body as drawn.</summary>
    private sealed class Corners(SolidMesh body, Projection from)
    {
        private readonly SeenPoint[] drawn = [.. body.Points.Select(p => from.Project(p))];
        private readonly SpacePoint[] points = [.. body.Points];
        private readonly int[] triangles = [.. body.Triangles];

        public SolidMesh Body => body;

        public IEnumerable<Facing> Facing()
        {
            for (var i = 0; i + 2 < triangles.Length; i += 3)
            {
                var (a, b, c) = (triangles[i], triangles[i + 1], triangles[i + 2]);
                var twice = Twice(a, b, c);
                if (twice < 1e-9)
                {
                    continue;
                }

                var near = from.Nearness(points[a]);
                var (nb, nc) = (from.Nearness(points[b]) - near, from.Nearness(points[c]) - near);
                var (bx, by, cx, cy) = (drawn[b].Across - drawn[a].Across, drawn[b].Height - drawn[a].Height, drawn[c].Across - drawn[a].Across, drawn[c].Height - drawn[a].Height);
                yield return new Facing(drawn[a], drawn[b], drawn[c], near, (nb * cy - nc * by) / twice, (nc * bx - nb * cx) / twice, points[a], points[b], points[c]);
            }
        }

        /// <summary>Edges where the body bulges and turns away, that are not drawn as sharp ones.</summary>
        public IEnumerable<(SpacePoint From, SpacePoint To)> Outlines()
        {
            HashSet<(SpacePoint, SpacePoint)> sharp = [];
            foreach (var edge in body.Edges)
            {
                for (var i = 0; i + 1 < edge.Count; i++)
                {
                    sharp.Add((edge[i], edge[i + 1]));
                    sharp.Add((edge[i + 1], edge[i]));
                }
            }

            Dictionary<(SpacePoint, SpacePoint), int> facing = [];
            for (var i = 0; i + 2 < triangles.Length; i += 3)
            {
                if (Twice(triangles[i], triangles[i + 1], triangles[i + 2]) > 0)
                {
                    for (var k = 0; k < 3; k++)
                    {
                        facing[(points[triangles[i + k]], points[triangles[i + (k + 1) % 3]])] = i;
                    }
                }
            }

            for (var i = 0; i + 2 < triangles.Length; i += 3)
            {
                if (Twice(triangles[i], triangles[i + 1], triangles[i + 2]) > 0)
                {
                    continue;
                }

                for (var k = 0; k < 3; k++)
                {
                    var (a, b, far) = (points[triangles[i + k]], points[triangles[i + (k + 1) % 3]], points[triangles[i + (k + 2) % 3]]);
                    if (facing.TryGetValue((b, a), out var other) && !sharp.Contains((a, b)) && Normal(other).Dot(far - a) < -1e-12)
                    {
                        yield return (a, b);
                    }
                }
            }
        }

        private double Twice(int a, int b, int c) =>
            (drawn[b].Across - drawn[a].Across) * (drawn[c].Height - drawn[a].Height) - (drawn[b].Height - drawn[a].Height) * (drawn[c].Across - drawn[a].Across);

        private SpacePoint Normal(int i) => (points[triangles[i + 1]] - points[triangles[i]]).Cross(points[triangles[i + 2]] - points[triangles[i]]);
    }

    /// <summary>All facing triangles, found by the cell of the drawing that they reach into.</summary>
    private sealed class Before
    {
        private readonly Facing[] all;
        private readonly List<int>[] cells = [.. Enumerable.Range(0, Cells * Cells).Select(_ => new List<int>())];
        private readonly int[] asked;
        private readonly (double Left, double Low, double Wide, double Tall) box;
        private int question;

        public Before(Facing[] all)
        {
            (this.all, asked) = (all, new int[all.Length]);
            var (left, low) = (all.Select(f => Least(f.A.Across, f.B.Across, f.C.Across)).DefaultIfEmpty(0).Min(), all.Select(f => Least(f.A.Height, f.B.Height, f.C.Height)).DefaultIfEmpty(0).Min());
            var (right, high) = (all.Select(f => Most(f.A.Across, f.B.Across, f.C.Across)).DefaultIfEmpty(1).Max(), all.Select(f => Most(f.A.Height, f.B.Height, f.C.Height)).DefaultIfEmpty(1).Max());
            box = (left, low, Math.Max(right - left, 1e-6), Math.Max(high - low, 1e-6));
            for (var i = 0; i < all.Length; i++)
            {
                var f = all[i];
                foreach (var cell in Reached(Least(f.A.Across, f.B.Across, f.C.Across), Most(f.A.Across, f.B.Across, f.C.Across), Least(f.A.Height, f.B.Height, f.C.Height), Most(f.A.Height, f.B.Height, f.C.Height)))
                {
                    cells[cell].Add(i);
                }
            }
        }

        private static double Least(double a, double b, double c) => Math.Min(a, Math.Min(b, c));

        private static double Most(double a, double b, double c) => Math.Max(a, Math.Max(b, c));

        private IEnumerable<int> Reached(double left, double right, double low, double high)
        {
            int Column(double across) => Math.Clamp((int)((across - box.Left) / box.Wide * Cells), 0, Cells - 1);
            int Row(double height) => Math.Clamp((int)((height - box.Low) / box.Tall * Cells), 0, Cells - 1);
            for (var row = Row(low); row <= Row(high); row++)
            {
                for (var column = Column(left); column <= Column(right); column++)
                {
                    yield return row * Cells + column;
                }
            }
        }

        /// <summary>The spans of a straight piece, from 0 at its beginning to 1 at its end, that nothing hides.</summary>
        public IEnumerable<(double From, double To)> Free(SeenPoint p, double nearP, SeenPoint q, double nearQ, (double From, double To) within, (SpacePoint From, SpacePoint To)? own)
        {
            question++;
            List<(double From, double To)> hidden = [];
            foreach (var cell in Reached(Math.Min(p.Across, q.Across), Math.Max(p.Across, q.Across), Math.Min(p.Height, q.Height), Math.Max(p.Height, q.Height)))
            {
                foreach (var i in cells[cell])
                {
                    if (asked[i] != question)
                    {
                        asked[i] = question;
                        if ((own is not { } line || !all[i].Touches(line)) && Hides(all[i], p, nearP, q, nearQ) is { } span)
                        {
                            hidden.Add(span);
                        }
                    }
                }
            }

            var at = within.From;
            foreach (var (start, end) in hidden.OrderBy(h => h.From))
            {
                if (start > at + 1e-9 && at < within.To)
                {
                    yield return (at, Math.Min(start, within.To));
                }

                at = Math.Max(at, end);
            }

            if (at < within.To - 1e-9)
            {
                yield return (at, within.To);
            }
        }

        private static (double From, double To)? Hides(in Facing f, SeenPoint p, double nearP, SeenPoint q, double nearQ)
        {
            var (from, to) = (0.0, 1.0);
            if (!Cut(f.A, f.B, p, q, ref from, ref to) || !Cut(f.B, f.C, p, q, ref from, ref to) || !Cut(f.C, f.A, p, q, ref from, ref to))
            {
                return null;
            }

            // The triangle's nearness less that of the piece, evenly from its beginning to its end.
            var (first, last) = (f.Nearness(p.Across, p.Height) - nearP - Behind, f.Nearness(q.Across, q.Height) - nearQ - Behind);
            if (first <= 0 && last <= 0)
            {
                return null;
            }

            if (first <= 0)
            {
                from = Math.Max(from, first / (first - last));
            }
            else if (last <= 0)
            {
                to = Math.Min(to, first / (first - last));
            }

            return to - from > 1e-9 ? (from, to) : null;
        }

        /// <summary>Keeps what lies left of a side of the triangle; false where nothing does.</summary>
        private static bool Cut(SeenPoint a, SeenPoint b, SeenPoint p, SeenPoint q, ref double from, ref double to)
        {
            double Left(SeenPoint at) => (b.Across - a.Across) * (at.Height - a.Height) - (b.Height - a.Height) * (at.Across - a.Across);
            var (first, last) = (Left(p), Left(q));
            if (first <= 0 && last <= 0)
            {
                return false;
            }

            if (first < 0)
            {
                from = Math.Max(from, first / (first - last));
            }
            else if (last < 0)
            {
                to = Math.Min(to, first / (first - last));
            }

            return to > from;
        }
    }
}
