using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Study;

namespace Clomwright.Papers.Views;

/// <summary>One elevation: the house square on as seen from afar, hidden lines left out, with the ground, heights and the letters of its openings.</summary>
internal sealed class ElevationDrawing
{
    private const double GroundBeyond = 0.45;
    private const int EdgeSteps = 360;

    private readonly HouseGeometry geometry;
    private readonly Elevation seen;
    private readonly RoofShell? roof;
    private readonly double k;
    private readonly Hidden before = new();

    public ElevationDrawing(HouseGeometry geometry, Elevation seen, RoofShell? roof, double paperPerMetre) =>
        (this.geometry, this.seen, this.roof, k) = (geometry, seen, roof, paperPerMetre);

    /// <summary>Draws it, the origin where the centre peg meets the finished floor.</summary>
    /// <param name="board">Where to.</param>
    /// <param name="name">Begins the ids of its groups.</param>
    /// <param name="letter">The letter of an opening.</param>
    /// <returns>Heights worth writing beside it, with what is there.</returns>
    public IReadOnlyList<(double Height, string Key)> Draw(Board board, string name, Func<OpeningPlace, string> letter)
    {
        List<(double, string)> levels = [(0, "floor"), (geometry.Wall.Base.Metres, "stem"), (geometry.Wall.Top.Metres, "wall")];
        if (roof is not null)
        {
            levels.AddRange(Roof(board, name));
        }

        var wall = new Board();
        foreach (var part in seen.Lines.GroupBy(l => l.Of.Length > 0 ? "-" + Ids.Opening(l.Of) : l.Part is SeenPart.Stem ? "-stem" : "-cob"))
        {
            var inner = new Board();
            foreach (var line in part)
            {
                Visible(inner, [.. line.Points.Select(At)], line.Part is SeenPart.Frame ? Weight.Thin : Weight.Medium);
            }

            wall.Add(new Group(name + part.Key, inner.Marks));
        }

        board.Add(new Group(name + "-wall", wall.Marks));
        before.Add([.. seen.Silhouette.Select(At)]);
        if (roof is not null)
        {
            Poles(board, name, far: true);
        }

        var letters = new Board();
        Letters(letters, letter);
        board.Add(new Group(name + "-letters", letters.Marks));
        levels.AddRange(Ground(board, name));
        return levels;
    }

    private PaperPoint At(SeenPoint point) => new(point.Across * k, -point.Height * k);

    private PaperPoint At(PlanPoint at, double height) => At(seen.Project(at, height));

    private void Visible(Board board, IReadOnlyList<PaperPoint> line, Weight weight)
    {
        foreach (var run in before.Outside(line))
        {
            board.Add(new Stroke(Outline.Through(run), new Pen(weight)));
        }
    }

    /// <summary>From what hides to what is hidden: edge, the surface and its upper outline, the poles under it that stand on the near side, the bond beam.</summary>
    private IEnumerable<(double, string)> Roof(Board board, string name)
    {
        var inner = new Board();
        var edge = roof!.Edge(EdgeSteps).ToArray();
        foreach (var run in NearRuns(edge))
        {
            PaperPoint[] low = [.. run.Select(e => At(e.At, e.Under))], high = [.. run.Select(e => At(e.At, e.Top))];
            PaperPoint[] band = [.. low, .. high.Reverse()];
            inner.Add(new Stroke(Outline.Polygon(band), new Pen(Weight.Medium)));
            before.Add(band);
        }

        board.Add(new Group(name + "-edge", inner.Marks));
        var surface = new Board();
        var facets = roof.Facets().Select(f => f.Corners.Select(c => At(c.Plan, c.Up + f.Covering)).ToArray()).ToArray();
        var top = Envelope(facets);
        Visible(surface, top, Weight.Medium);
        foreach (var f in facets)
        {
            before.Add([f[0], f[1], f[2]]);
            before.Add([f[0], f[2], f[3]]);
        }

        if (top.Count > 1)
        {
            before.Add([.. top, new(top[^1].X, Math.Max(top[0].Y, top[^1].Y)), new(top[0].X, Math.Max(top[0].Y, top[^1].Y))]);
        }

        Poles(board, name, far: false);
        board.Add(new Group(name + "-roof", surface.Marks));
        var beam = new Board();
        Beam(beam);
        board.Add(new Group(name + "-beam", beam.Marks));
        return [(edge.Min(e => e.Under), "eave"), (-top.Min(p => p.Y) / k, "highest")];
    }

    /// <summary>The parts of the edge that look toward the viewer.</summary>
    private IEnumerable<IReadOnlyList<RoofEdgePoint>> NearRuns(RoofEdgePoint[] edge)
    {
        bool Near(int i) => (edge[(i + 1) % edge.Length].At - edge[i % edge.Length].At) is var step && new PlanPoint(-step.North, step.East).Dot(seen.Toward) > 0;
        var start = Enumerable.Range(0, edge.Length).FirstOrDefault(i => !Near(i) && Near(i + 1), -1);
        if (start < 0)
        {
            yield break;
        }

        List<RoofEdgePoint> run = [];
        for (var i = start + 1; i <= start + edge.Length; i++)
        {
            if (Near(i))
            {
                run.Add(edge[i % edge.Length]);
                continue;
            }

            if (run.Count > 0)
            {
                yield return [.. run, edge[i % edge.Length]];
            }

            run = [];
        }
    }

    /// <summary>Poles from their eave end to their seat: the end as the ellipse that a round end is, the sides at half its thickness.</summary>
    private void Poles(Board board, string name, bool far)
    {
        foreach (var pole in roof!.Poles.Where(p => (p.Foot - seen.Origin).Dot(seen.Toward) < 0 == far).OrderByDescending(p => (p.Foot - p.EaveReach * p.Along).Dot(seen.Toward)))
        {
            var inner = new Board();
            foreach (var side in roof.SideBySide > 1 ? (double[])[-0.5, 0.5] : [0])
            {
                var aside = side * pole.Butt * new PlanPoint(-pole.Along.North, pole.Along.East);
                var (end, seat) = (At(pole.Foot - pole.EaveReach * pole.Along + aside, roof.Axis(pole, -pole.EaveReach)), At(pole.Foot + aside, roof.Axis(pole, 0)));
                var body = Body(end, pole.DiameterAt(-pole.EaveReach) / 2 * k, seat, pole.DiameterAt(0) / 2 * k, Math.Abs(pole.Along.Dot(seen.Toward)) * pole.PitchCosine, out var round);
                Visible(inner, [.. body, body[0]], Weight.Thin);
                Visible(inner, [.. round, round[0]], Weight.Thin);
                before.Add(body);
                before.Add(round);
            }

            board.Add(new Group(string.Create(CultureInfo.InvariantCulture, $"{name}-pole-{pole.Number}"), inner.Marks));
        }

        // The end of a pole is a circle square to its axis: as drawn it is narrowed along the axis by the cosine between axis and line of sight.
        static PaperPoint[] Body(PaperPoint end, double endHalf, PaperPoint seat, double seatHalf, double narrowed, out PaperPoint[] round)
        {
            var axis = seat - end;
            var length = Math.Max(axis.Norm, 1e-9);
            var along = 1 / length * axis;
            var across = new PaperPoint(-along.Y, along.X);
            round = [.. Enumerable.Range(0, 32).Select(i => Math.SinCos(2 * Math.PI * i / 32)).Select(a => end + endHalf * a.Cos * across + endHalf * narrowed * a.Sin * along)];
            return [end + endHalf * across, seat + seatHalf * across, seat - seatHalf * across, end - endHalf * across];
        }
    }

    private void Beam(Board board)
    {
        if (geometry.House.BondBeam is not { } beam || seen.Silhouette.Count < 6)
        {
            return;
        }

        var (t, k0) = (geometry.Wall.Top.Metres, geometry.Wall.OutsideOffset(geometry.Wall.Top.Metres));
        var out1 = (geometry.Wall.InsideOffset(t) + k0) / 2 + beam.Offset.Metres + beam.Width.Metres / 2;
        var (left, right) = (seen.Silhouette[3].Across + (k0 - out1), seen.Silhouette[4].Across - (k0 - out1));
        PaperPoint[] box = [At(new SeenPoint(left, t)), At(new SeenPoint(left, roof!.BeamTop)), At(new SeenPoint(right, roof.BeamTop)), At(new SeenPoint(right, t))];
        Visible(board, box, Weight.Thin);
        before.Add(box);
    }

    /// <summary>The upper outline of facets: at each place across, the highest edge there.</summary>
    internal static IReadOnlyList<PaperPoint> Envelope(IReadOnlyList<PaperPoint[]> facets)
    {
        var edges = facets.SelectMany(f => f.Select((p, i) => (From: p, To: f[(i + 1) % f.Length]))).ToArray();
        if (edges.Length == 0)
        {
            return [];
        }

        var (left, right) = (edges.Min(e => e.From.X), edges.Max(e => e.From.X));
        double[] places = [.. edges.Select(e => e.From.X).Concat(Enumerable.Range(0, 401).Select(i => left + (right - left) * i / 400)).Distinct().Order()];
        return
        [
            .. places.Select(x => new PaperPoint(x, edges.Where(e => Math.Min(e.From.X, e.To.X) <= x && x <= Math.Max(e.From.X, e.To.X)).Select(e =>
                Math.Abs(e.To.X - e.From.X) < 1e-9 ? Math.Min(e.From.Y, e.To.Y) : e.From.Y + (x - e.From.X) / (e.To.X - e.From.X) * (e.To.Y - e.From.Y)).DefaultIfEmpty(double.NaN).Min()))
                .Where(p => !double.IsNaN(p.Y)),
        ];
    }

    private void Letters(Board board, Func<OpeningPlace, string> letter)
    {
        foreach (var place in geometry.Openings)
        {
            double[] rim = [.. seen.Lines.Where(l => l.Of == place.Opening.Name).SelectMany(l => l.Points).Select(p => p.Across)];
            if (rim.Length == 0 || (rim.Max() - rim.Min()) * k < 6.5)
            {
                continue;
            }

            var at = At(new SeenPoint((rim.Max() + rim.Min()) / 2, (Math.Max(place.Sill, 0) + place.Head) / 2));
            board.Add(new Fill(Outline.Circle(at, 2.5), Tone.Paper));
            board.Add(new Stroke(Outline.Circle(at, 2.5), new Pen(Weight.Thin)));
            board.Say(letter(place), at.X, at.Y + Styles.BodyStrong.Digits / 2, Styles.BodyStrong, Anchor.Middle);
        }
    }

    private IEnumerable<(double, string)> Ground(Board board, string name)
    {
        var grade = geometry.House.Site.Grade;
        var height = grade?.Metres ?? 0;
        var (left, right) = (seen.Silhouette.Min(p => p.Across) - GroundBeyond, seen.Silhouette.Max(p => p.Across) + GroundBeyond);
        board.Add(new Group(name + "-ground", [new Stroke(Outline.Line(left * k, -height * k, right * k, -height * k), new Pen(Weight.Bold, grade is null ? Dash.Dashed : Dash.Solid))]));
        return grade is null ? [] : [(height, "grade")];
    }
}
