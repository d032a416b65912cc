using Clomwright.Geometry.Curves;

namespace Clomwright.Geometry.Solids;

/// <summary>One face of a ring as triangles that fit each other edge to edge: upright lines at every corner of every outline, level rows between.</summary>
/// <remarks>
/// Between two neighbouring lines no outline has a corner, so what is left of the face are pieces between two sloping sides. Each piece takes all points of both lines that lie on it, so that
/// neighbours agree. Lines are counted on over the end of the ring: line n + N is line n one turn later.
/// </remarks>
internal sealed class FaceGrid
{
    /// <summary>Lines nearer together than this are one, m.</summary>
    private const double Same = 1e-6;

    /// <summary>A row keeps this much from a point that is there anyhow, m.</summary>
    private const double Apart = 0.02;

    private readonly PlanCurve curve;
    private readonly Func<double, double> offset;
    private readonly double lean;
    private readonly bool outside;
    private readonly double bottom;
    private readonly double top;
    private readonly double[] stations;
    private readonly CurveFrame[] frames;
    private readonly double[][] heights;
    private readonly List<Piece>[] slabs;
    private readonly FaceLoop[] loops;
    private readonly Dictionary<(FaceLoop Loop, int Side, int Line), double> crossings = [];

    private readonly record struct Piece(double Before, double After);

    /// <param name="curve">The plan curve.</param>
    /// <param name="offset">Of the face at a height, m.</param>
    /// <param name="outside">Whether the solid lies inside of it.</param>
    /// <param name="bottom">m.</param>
    /// <param name="top">m.</param>
    /// <param name="start">Station at which the ring is cut.</param>
    /// <param name="loops">Outlines on this face; told the lines of their corners.</param>
    /// <param name="lines">Upright lines at least.</param>
    /// <param name="row">Height of a row, m; none where it is not above 0.</param>
    public FaceGrid(PlanCurve curve, Func<double, double> offset, bool outside, double bottom, double top, double start, IEnumerable<FaceLoop> loops, int lines, double row)
    {
        (this.curve, this.offset, this.outside, this.bottom, this.top) = (curve, offset, outside, bottom, top);
        lean = top > bottom ? (offset(top) - offset(bottom)) / (top - bottom) : 0;
        this.loops = [.. loops];
        stations = Stations(start, lines);
        frames = [.. stations.Select(s => curve.FrameAt(curve.Wrap(s)))];
        slabs = [.. stations.Select(_ => new List<Piece> { new(bottom, bottom), new(top, top) })];
        var marks = stations.Select(_ => new SortedSet<double> { bottom, top }).ToArray();
        foreach (var loop in this.loops)
        {
            Mark(loop, marks);
        }

        AddRows(marks, row);
        heights = [.. marks.Select(m => m.ToArray())];
    }

    /// <summary>How many lines there are.</summary>
    public int Count => stations.Length;

    /// <summary>Station of a line, growing from turn to turn.</summary>
    public double Station(int line) => stations[Wrapped(line)] + (line - Wrapped(line)) / Count * curve.Length;

    /// <summary>The point of a line at a height.</summary>
    public SpacePoint At(int line, double height) => SpacePoint.Of(frames[Wrapped(line)].Offset(offset(height)), height);

    /// <summary>Where that lies on the unrolled wall.</summary>
    public WallPoint Place(int line, double height) => new(Station(line), height);

    /// <summary>All points of a side of an outline, from its corner to the next one's.</summary>
    public List<(int Line, double Height)> Side(FaceLoop loop, int side)
    {
        var next = (side + 1) % loop.Lines.Length;
        var (from, to) = ((Line: loop.Lines[side], Height: loop.Up[side]), (Line: loop.Lines[next], Height: loop.Up[next]));
        List<(int Line, double Height)> all = [from];
        if (from.Line == to.Line)
        {
            var between = heights[Wrapped(from.Line)].Where(z => z > Math.Min(from.Height, to.Height) && z < Math.Max(from.Height, to.Height)).Select(z => (from.Line, z));
            all.AddRange(to.Height > from.Height ? between : between.Reverse());
        }

        var step = Math.Sign(to.Line - from.Line);
        for (var line = from.Line + step; step != 0 && line != to.Line; line += step)
        {
            all.Add((line, crossings[(loop, side, line)]));
        }

        all.Add(to);
        return all;
    }

    /// <summary>Adds the face to a solid.</summary>
    public void AddTo(MeshMaker mesh)
    {
        var known = new Dictionary<(int Line, double Height), int>();
        for (var slab = 0; slab < Count; slab++)
        {
            Piece[] sides = [.. slabs[slab].OrderBy(p => p.Before + p.After)];
            for (var i = 0; i + 1 < sides.Length; i += 2)
            {
                if (sides[i] != sides[i + 1])
                {
                    Zip(slab, sides[i], sides[i + 1]);
                }
            }
        }

        int Corner(int line, double height)
        {
            if (!known.TryGetValue((line, height), out var corner))
            {
                var n = frames[Wrapped(line)].Normal;
                var normal = outside ? new SpacePoint(n.East, n.North, -lean) : new SpacePoint(-n.East, -n.North, lean);
                known.Add((line, height), corner = mesh.Corner(At(line, height), normal.Unit, Place(line, height)));
            }

            return corner;
        }

        void Zip(int slab, Piece low, Piece high)
        {
            var left = Between(slab, low.Before, high.Before);
            var right = Between(slab + 1, low.After, high.After);
            int i = 0, j = 0;
            while (i + 1 < left.Length || j + 1 < right.Length)
            {
                var (a, b) = (Corner(slab, left[i]), Corner(slab + 1, right[j]));
                var goLeft = j + 1 == right.Length || (i + 1 < left.Length && left[i + 1] + left[i] <= right[j + 1] + right[j]);
                var c = goLeft ? Corner(slab, left[++i]) : Corner(slab + 1, right[++j]);
                if (outside)
                {
                    mesh.Triangle(a, c, b);
                }
                else
                {
                    mesh.Triangle(a, b, c);
                }
            }
        }
    }

    /// <summary>Lines along the face at a height, broken at the outlines.</summary>
    public IEnumerable<SpacePoint[]> Level(double height)
    {
        List<SpacePoint> run = [];
        for (var slab = 0; slab <= Count; slab++)
        {
            var at = slab % Count;
            Piece[] sides = [.. slabs[at].OrderBy(p => p.Before + p.After)];
            var solid = slab < Count && Enumerable.Range(0, sides.Length / 2).Any(i => (sides[2 * i].Before + sides[2 * i].After) / 2 <= height && (sides[2 * i + 1].Before + sides[2 * i + 1].After) / 2 >= height);
            if (solid)
            {
                run.AddRange(run.Count == 0 ? [At(slab, height), At(slab + 1, height)] : [At(slab + 1, height)]);
            }
            else if (run.Count > 0)
            {
                yield return [.. run];
                run = [];
            }
        }
    }

    private double[] Between(int line, double low, double high) => [.. heights[Wrapped(line)].Where(z => z >= low && z <= high)];

    private int Wrapped(int line) => (line % Count + Count) % Count;

    private double[] Stations(double start, int lines)
    {
        var ring = curve.Length;
        var wanted = Enumerable.Range(0, lines).Select(i => ring * i / lines)
            .Concat(loops.SelectMany(l => l.Along).Select(s => s - start - Math.Floor((s - start) / ring) * ring)).Concat(curve.Breaks.ToArray().Select(b => curve.Wrap(b - start)))
            .Where(s => ring - s > Same).Order();
        List<double> all = [];
        foreach (var s in wanted)
        {
            if (all.Count == 0 || s - all[^1] > Same)
            {
                all.Add(s);
            }
        }

        return [.. all.Select(s => start + s)];
    }

    /// <summary>The line of a station, counted on over turns.</summary>
    private int LineOf(double station)
    {
        var turn = (int)Math.Floor((station - stations[0]) / curve.Length);
        var s = station - turn * curve.Length;
        var found = Array.BinarySearch(stations, s);
        found = found >= 0 ? found : ~found;
        var after = found < Count ? stations[found] : stations[0] + curve.Length;
        var before = found > 0 ? stations[found - 1] : double.NegativeInfinity;
        return turn * Count + (after - s <= s - before ? found : found - 1);
    }

    private void Mark(FaceLoop loop, SortedSet<double>[] marks)
    {
        for (var n = 0; n < loop.Lines.Length; n++)
        {
            loop.Lines[n] = LineOf(loop.Along[n]);
            marks[Wrapped(loop.Lines[n])].Add(loop.Up[n]);
        }

        for (var n = 0; n < loop.Lines.Length; n++)
        {
            var next = (n + 1) % loop.Lines.Length;
            var (a, b) = loop.Lines[n] <= loop.Lines[next] ? (n, next) : (next, n);
            var (from, to) = (loop.Lines[a], loop.Lines[b]);
            var before = loop.Up[a];
            for (var line = from; line < to; line++)
            {
                var after = line + 1 == to ? loop.Up[b] : loop.Up[a] + (loop.Up[b] - loop.Up[a]) * ((Station(line + 1) - Station(from)) / (Station(to) - Station(from)));
                if (line + 1 < to)
                {
                    crossings[(loop, n, line + 1)] = after;
                    marks[Wrapped(line + 1)].Add(after);
                }

                slabs[Wrapped(line)].Add(new(before, after));
                before = after;
            }
        }
    }

    private void AddRows(SortedSet<double>[] marks, double row)
    {
        var count = row > 0 ? (int)Math.Clamp(Math.Round((top - bottom) / row), 1, 60) : 1;
        for (var k = 1; k < count; k++)
        {
            var z = bottom + (top - bottom) * k / count;
            foreach (var line in marks)
            {
                if (line.GetViewBetween(z - Apart, z + Apart).Count == 0)
                {
                    line.Add(z);
                }
            }
        }
    }
}
