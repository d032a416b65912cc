using Clomwright.Evidence;

namespace Clomwright.Geometry.Solids;

/// <summary>Collects the triangles of one solid.</summary>
internal sealed class MeshMaker
{
    private readonly List<SpacePoint> points = [];
    private readonly List<SpacePoint> normals = [];
    private readonly List<WallPoint> places = [];
    private readonly List<int> triangles = [];
    private readonly List<Sequence<SpacePoint>> edges = [];
    private readonly List<Sequence<SpacePoint>> joints = [];

    /// <summary>Adds a corner with its normal and tells its place.</summary>
    public int Corner(SpacePoint point, SpacePoint normal, WallPoint place = default)
    {
        points.Add(point);
        normals.Add(normal);
        places.Add(place);
        return points.Count - 1;
    }

    /// <summary>Adds a triangle of corners told before.</summary>
    public void Triangle(int a, int b, int c)
    {
        if (points[a] != points[b] && points[b] != points[c] && points[c] != points[a])
        {
            triangles.AddRange([a, b, c]);
        }
    }

    /// <summary>Adds a triangle with its own normal.</summary>
    public void Flat((SpacePoint Point, WallPoint Place) a, (SpacePoint Point, WallPoint Place) b, (SpacePoint Point, WallPoint Place) c)
    {
        if (a.Point == b.Point || b.Point == c.Point || c.Point == a.Point)
        {
            return;
        }

        var normal = (b.Point - a.Point).Cross(c.Point - a.Point).Unit;
        triangles.AddRange([Corner(a.Point, normal, a.Place), Corner(b.Point, normal, b.Place), Corner(c.Point, normal, c.Place)]);
    }

    /// <summary>Adds a triangle with its own normal.</summary>
    public void Flat(SpacePoint a, SpacePoint b, SpacePoint c) => Flat((a, default), (b, default), (c, default));

    /// <summary>Adds a flat convex piece, anticlockwise seen from outside.</summary>
    public void Fan(IReadOnlyList<SpacePoint> ring)
    {
        for (var i = 1; i + 1 < ring.Count; i++)
        {
            Flat(ring[0], ring[i], ring[i + 1]);
        }
    }

    /// <summary>Adds a line in ink.</summary>
    public void Edge(IEnumerable<SpacePoint> line) => edges.Add(line.ToSequence());

    /// <summary>Adds a line between lifts.</summary>
    public void Joint(IEnumerable<SpacePoint> line) => joints.Add(line.ToSequence());

    /// <summary>Adds the body between a convex ring and the same ring moved; the ring turns anticlockwise seen from where it moves to.</summary>
    public void Prism(IReadOnlyList<SpacePoint> ring, SpacePoint way)
    {
        SpacePoint[] far = [.. ring.Select(p => p + way)];
        Fan([.. ring.Reverse()]);
        Fan(far);
        for (var i = 0; i < ring.Count; i++)
        {
            var next = (i + 1) % ring.Count;
            Flat(ring[i], ring[next], far[next]);
            Flat(ring[i], far[next], far[i]);
            if (ring.Count <= 6)
            {
                Edge([ring[i], far[i]]);
            }
        }

        Edge([.. ring, ring[0]]);
        Edge([.. far, far[0]]);
    }

    /// <summary>Adds a round body along an axis, tapering evenly.</summary>
    public void Round(SpacePoint from, SpacePoint to, double radiusFrom, double radiusTo, int sides)
    {
        var axis = (to - from).Unit;
        var across = (Math.Abs(axis.Up) < 0.9 ? new SpacePoint(0, 0, 1) : new SpacePoint(1, 0, 0)).Cross(axis).Unit;
        var other = axis.Cross(across);
        var lean = (radiusFrom - radiusTo) / Math.Max(1e-12, (to - from).Norm);
        SpacePoint[] ways = [.. Enumerable.Range(0, sides).Select(i => Math.SinCos(2 * Math.PI * i / sides)).Select(a => a.Cos * across + a.Sin * other)];
        SpacePoint[] near = [.. ways.Select(w => from + radiusFrom * w)], far = [.. ways.Select(w => to + radiusTo * w)];
        (int Near, int Far)[] corners = [.. ways.Select((w, i) => (w + lean * axis).Unit is var n ? (Corner(near[i], n), Corner(far[i], n)) : default)];
        for (var i = 0; i < sides; i++)
        {
            var next = (i + 1) % sides;
            Triangle(corners[i].Near, corners[next].Near, corners[next].Far);
            Triangle(corners[i].Near, corners[next].Far, corners[i].Far);
        }

        Fan([.. near.Reverse()]);
        Fan(far);
        Edge([.. near, near[0]]);
        Edge([.. far, far[0]]);
    }

    /// <summary>The solid; null where anything of it is no number.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="part">What it stands for.</param>
    /// <param name="placed">Whether the places are told.</param>
    public SolidMesh? Done(string name, SolidPart part, bool placed = false) => triangles.Count == 0 || !points.TrueForAll(p => p.IsFinite) ? null : new SolidMesh
    {
        Name = name, Part = part, Points = points.ToSequence(), Normals = normals.ToSequence(), Triangles = triangles.ToSequence(),
        Places = placed ? places.ToSequence() : [], Edges = edges.ToSequence(), Joints = joints.ToSequence(),
    };
}
