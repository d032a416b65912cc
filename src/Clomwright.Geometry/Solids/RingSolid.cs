using Clomwright.Evidence;

namespace Clomwright.Geometry.Solids;

/// <summary>A ring of wall between two faces with holes and recesses cut from it, as a closed body.</summary>
internal static class RingSolid
{
    /// <summary>Adds it to a solid.</summary>
    /// <param name="mesh">Where to.</param>
    /// <param name="curve">The plan curve.</param>
    /// <param name="ring">Bottom, top and both faces.</param>
    /// <param name="holes">What is cut from it.</param>
    /// <param name="lines">Upright lines of each face at least.</param>
    /// <param name="row">Height of a row of triangles, m; 0 for one row.</param>
    /// <param name="joints">Heights at which lifts meet, m.</param>
    public static void Add(MeshMaker mesh, PlanCurve curve, Band ring, IReadOnlyList<RingHole> holes, int lines, double row, IEnumerable<double> joints)
    {
        var start = Start(curve, holes);
        var inside = new FaceGrid(curve, ring.InsideAt, false, ring.Bottom, ring.Top, start, holes.Select(h => h.Inside).OfType<FaceLoop>(), lines, row);
        var outside = new FaceGrid(curve, ring.OutsideAt, true, ring.Bottom, ring.Top, start, holes.Select(h => h.Outside).OfType<FaceLoop>(), lines, row);
        inside.AddTo(mesh);
        outside.AddTo(mesh);
        foreach (var hole in holes)
        {
            Reveals(mesh, inside, outside, hole);
        }

        Level(mesh, inside, outside, holes, ring.Bottom, up: false);
        Level(mesh, inside, outside, holes, ring.Top, up: true);
        foreach (var height in joints)
        {
            foreach (var line in inside.Level(height).Concat(outside.Level(height)))
            {
                mesh.Joint(line);
            }
        }
    }

    /// <summary>Where the ring is cut: the middle of the widest stretch without a hole, the zero mark where there is none.</summary>
    private static double Start(PlanCurve curve, IReadOnlyList<RingHole> holes)
    {
        var spans = holes.SelectMany(h => new[] { h.Inside, h.Outside }).OfType<FaceLoop>().Select(l => (From: curve.Wrap(l.Along.Min()), Width: l.Along.Max() - l.Along.Min())).OrderBy(s => s.From).ToArray();
        if (spans.Length == 0)
        {
            return 0;
        }

        var (reach, best, widest) = (spans.Max(s => s.From + s.Width) - curve.Length, 0.0, 0.0);
        foreach (var span in spans.Append((From: spans[0].From + curve.Length, Width: 0.0)))
        {
            if (span.From - reach > widest)
            {
                (widest, best) = (span.From - reach, curve.Wrap((span.From + reach) / 2));
            }

            reach = Math.Max(reach, span.From + span.Width);
        }

        return best;
    }

    private static void Reveals(MeshMaker mesh, FaceGrid inside, FaceGrid outside, RingHole hole)
    {
        var corners = hole.IsCut.Length;
        var planes = hole.Between[0].Length;
        var rows = (hole.Inside is null ? 0 : 1) + planes + (hole.Outside is null ? 0 : 1);
        for (var side = 0; side < corners; side++)
        {
            if (hole.IsCut[side])
            {
                continue;
            }

            var before = Row(0, side);
            for (var row = 1; row < rows; row++)
            {
                var after = Row(row, side);
                Zip(mesh, before, after);
                before = after;
            }
        }

        // A recess is closed by its back; each row of corners is an edge to see.
        if (hole.Inside is null || hole.Outside is null)
        {
            SpacePoint[] back = [.. hole.Between.Select(b => b[0].Point!.Value)];
            mesh.Fan(hole.Inside is null ? back : [.. back.Reverse()]);
        }

        for (var row = 0; row < rows; row++)
        {
            List<SpacePoint> line = [];
            for (var side = 0; side < corners; side++)
            {
                if (hole.IsCut[side])
                {
                    Ink(line);
                    line = [];
                    continue;
                }

                line.AddRange(Row(row, side).Select(p => p.Point).Skip(line.Count == 0 ? 0 : 1));
            }

            Ink(line);
        }

        void Ink(List<SpacePoint> line)
        {
            if (line.Count > 1)
            {
                mesh.Edge(line);
            }
        }

        (SpacePoint Point, WallPoint Place)[] Row(int row, int side)
        {
            if (row == 0 && hole.Inside is { } near)
            {
                return [.. inside.Side(near, side).Select(p => (inside.At(p.Line, p.Height), inside.Place(p.Line, p.Height)))];
            }

            return row == rows - 1 && hole.Outside is { } far
                ? [.. outside.Side(far, side).Select(p => (outside.At(p.Line, p.Height), outside.Place(p.Line, p.Height)))]
                : [Plane(row, side), Plane(row, (side + 1) % corners)];
        }

        (SpacePoint Point, WallPoint Place) Plane(int row, int corner)
        {
            var (loop, grid) = hole.Inside is { } near ? (near, inside) : (hole.Outside!, outside);
            var between = hole.Between[corner][row - (hole.Inside is null ? 0 : 1)];
            if (between.Point is null && !between.AtInside)
            {
                (loop, grid) = (hole.Outside!, outside);
            }

            return (between.Point ?? grid.At(loop.Lines[corner], loop.Up[corner]), grid.Place(loop.Lines[corner], loop.Up[corner]));
        }
    }

    /// <summary>Joins two rows of points that run the same way; seen with the first nearer, the solid lies on the left of both.</summary>
    private static void Zip(MeshMaker mesh, (SpacePoint Point, WallPoint Place)[] near, (SpacePoint Point, WallPoint Place)[] far)
    {
        int i = 0, j = 0;
        while (i + 1 < near.Length || j + 1 < far.Length)
        {
            var goNear = j + 1 == far.Length || (i + 1 < near.Length && (i + 1) * (far.Length - 1) <= (j + 1) * (near.Length - 1));
            if (goNear)
            {
                mesh.Flat(near[i], far[j], near[i + 1]);
                i++;
            }
            else
            {
                mesh.Flat(near[i], far[j], far[j + 1]);
                j++;
            }
        }
    }

    /// <summary>Closes the ring at its bottom or top, between the holes that are cut off there.</summary>
    private static void Level(MeshMaker mesh, FaceGrid inside, FaceGrid outside, IReadOnlyList<RingHole> holes, double height, bool up)
    {
        RingHole[] cut = [.. holes.Where(h => (up ? h.Top : h.Bottom) is not null).OrderBy(h => inside.Station(Lines(h).Inside.First))];
        if (cut.Length == 0)
        {
            Strip([.. Enumerable.Range(0, inside.Count + 1)], [.. Enumerable.Range(0, outside.Count + 1)]);
            return;
        }

        for (var n = 0; n < cut.Length; n++)
        {
            var (here, next) = (Lines(cut[n]), Lines(cut[(n + 1) % cut.Length]));
            var (from, to) = ((here.Inside.Second, here.Outside.Second), (Ahead(here.Inside.Second, next.Inside.First, inside.Count), Ahead(here.Outside.Second, next.Outside.First, outside.Count)));
            Strip([.. Enumerable.Range(from.Item1, to.Item1 - from.Item1 + 1)], [.. Enumerable.Range(from.Item2, to.Item2 - from.Item2 + 1)]);
            End(cut[(n + 1) % cut.Length], next, first: true);
            End(cut[n], here, first: false);
        }

        ((int First, int Second) Inside, (int First, int Second) Outside) Lines(RingHole hole)
        {
            var (first, second) = (up ? hole.Top : hole.Bottom)!.Value;
            return ((hole.Inside!.Lines[first], hole.Inside.Lines[second]), (hole.Outside!.Lines[first], hole.Outside.Lines[second]));
        }

        static int Ahead(int from, int to, int count) => to + (int)Math.Ceiling((from - to) / (double)count) * count;

        void Strip(int[] near, int[] far)
        {
            int i = 0, j = 0;
            while (i + 1 < near.Length || j + 1 < far.Length)
            {
                var goNear = j + 1 == far.Length || (i + 1 < near.Length && inside.Station(near[i + 1]) + inside.Station(near[i]) <= outside.Station(far[j + 1]) + outside.Station(far[j]));
                var (a, b) = (In(near[i]), Out(far[j]));
                var c = goNear ? In(near[++i]) : Out(far[++j]);
                if (up)
                {
                    mesh.Flat(a, c, b);
                }
                else
                {
                    mesh.Flat(a, b, c);
                }
            }

            mesh.Edge(near.Select(l => inside.At(l, height)));
            mesh.Edge(far.Select(l => outside.At(l, height)));
        }

        void End(RingHole hole, ((int First, int Second) Inside, (int First, int Second) Outside) lines, bool first)
        {
            var (one, two) = (up ? hole.Top : hole.Bottom)!.Value;
            var (near, far) = first ? (In(lines.Inside.First), Out(lines.Outside.First)) : (In(lines.Inside.Second), Out(lines.Outside.Second));
            (SpacePoint, WallPoint)[] ring = [near, .. hole.Between[first ? one : two].Where(b => b.Point is not null).Select(b => (b.Point!.Value, near.Item2)), far];
            for (var k = 1; k + 1 < ring.Length; k++)
            {
                if (up == first)
                {
                    mesh.Flat(ring[0], ring[k], ring[k + 1]);
                }
                else
                {
                    mesh.Flat(ring[0], ring[k + 1], ring[k]);
                }
            }
        }

        (SpacePoint Point, WallPoint Place) In(int line) => (inside.At(line, height), inside.Place(line, height));

        (SpacePoint Point, WallPoint Place) Out(int line) => (outside.At(line, height), outside.Place(line, height));
    }
}
