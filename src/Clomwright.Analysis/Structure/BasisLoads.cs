using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.Structure;

/// <summary>The loads of which every case is a sum, each at unit size, as forces on the nodes; worked out when asked for.</summary>
/// <remarks>
/// Inertia of wall and roof along x (east) and y (north) and as a twist about the plan's centre: an earthquake from any direction is a sum of them. Wind comes from twelve
/// directions; on the half that faces it the wall is pushed in, on the other half drawn out, and what falls on openings goes half to each jamb.
/// </remarks>
internal sealed class BasisLoads
{
    public const int WindDirections = 12;

    private readonly WallBody body;
    private readonly HouseGeometry geometry;
    private readonly Landing[] landings;
    private readonly UnitLoads loads = new();
    private readonly Sequence<double> seats;
    private readonly KeptLoads kept;
    private readonly NodalShares shares;
    private readonly Lazy<int[]> insideFaces, outsideFaces;
    private readonly Lazy<PlanPoint[]> outward;
    private readonly Lazy<double[,]> more;
    private readonly Lazy<double> twistMoment;
    private readonly Lazy<double[]> rowWeights;

    /// <param name="body">What they act on.</param>
    /// <param name="seatOffsets">How far off the middle of the wall top each pole sits, m outward.</param>
    /// <param name="wind">At the site; null where it is not known.</param>
    /// <param name="thrust">Horizontal directions in which rafters push their landings, landing by landing; empty where none does.</param>
    /// <param name="soil">What the ground beside the wall pushes with; null where it is no higher than its foot.</param>
    /// <param name="kept">What is kept of the same grid from one body to the next; null forms it anew.</param>
    public BasisLoads(WallBody body, Sequence<double> seatOffsets, WindLoad? wind, Sequence<PlanPoint> thrust = default, SoilPressure? soil = null, KeptLoads? kept = null)
    {
        (this.body, geometry, seats, this.kept) = (body, body.Geometry, seatOffsets, kept ?? new KeptLoads(body.Grid));
        shares = this.kept.Shares;
        landings = [.. geometry.Landings.Where(l => !l.Secondary)];
        outward = new(() => [.. Enumerable.Range(0, body.Grid.Around).Select(i => geometry.Curve.Normal((body.Grid.S[i] + body.Grid.S[i + 1]) / 2))]);
        (insideFaces, outsideFaces) = (new(() => Faces(CellSide.Inside)), new(() => Faces(CellSide.Outside)));
        var down = new Vector3(0, 0, -UsUnits.Gravity);
        Cob = Add(() => Loading.Inertia(body.Grid, Loading.Masses(body.CobAlone, shares), _ => down));
        Timber = Add(() => Loading.Inertia(body.Grid, Loading.Masses(body.TimberAlone, shares), _ => down));
        Plaster = Add(PlasterWeight);
        var centre = geometry.Curve.Centre;
        var low = geometry.Wall.Base.Metres;
        var masses = new Lazy<double[]>(() => Loading.Masses(body.Model, shares));
        WallX = Add(() => Loading.Inertia(body.Grid, masses.Value, p => new Vector3(p.Z - low, 0, 0)));
        WallY = Add(() => Loading.Inertia(body.Grid, masses.Value, p => new Vector3(0, p.Z - low, 0)));
        WallTwist = Add(() => Loading.Inertia(body.Grid, masses.Value, p => (p.Z - low) * new Vector3(-(p.Y - centre.North), p.X - centre.East, 0)));
        twistMoment = new(() => Moment(loads[WallTwist]));
        Press = Enumerable.Range(0, landings.Length).Select(i => Add(() => OnTop(i, seatOffsets, new Vector3(0, 0, -1)))).ToArray();
        Pull = Enumerable.Range(0, landings.Length).Select(i => Add(() => AtTee(i, seatOffsets))).ToArray();
        var spread = landings.Sum(l => (l.Point - centre).Dot(l.Point - centre));
        RoofX = Add(() => Sideways(_ => new Vector3(1.0 / landings.Length, 0, 0)));
        RoofY = Add(() => Sideways(_ => new Vector3(0, 1.0 / landings.Length, 0)));
        RoofTwist = Add(() => Sideways(l => 1 / spread * new Vector3(-(l.Point.North - centre.North), l.Point.East - centre.East, 0)));
        more = new(OpeningShares);
        Wind = wind is null ? [] : [.. Enumerable.Range(0, WindDirections).Select(d => Add(() => WindFrom(2 * Math.PI * d / WindDirections, wind)))];
        Thrust = [.. thrust.Take(landings.Length).Select((direction, i) => Add(() => OnTop(i, seatOffsets, new Vector3(direction.East, direction.North, 0))))];
        Soil = soil is null ? [] : [.. Enumerable.Range(0, WindDirections).Select(d => Add(() => SoilFrom(2 * Math.PI * d / WindDirections, soil)))];
        rowWeights = new(() => [.. Enumerable.Range(0, body.Grid.Up + 1).Select(RowWeight)]);
    }

    public IReadOnlyList<NodalLoad> All => loads;

    /// <summary>Works all of them out now.</summary>
    public void MakeAll()
    {
        for (var unit = 0; unit < loads.Count; unit++)
        {
            _ = loads[unit];
        }
    }

    /// <summary>Cob as it stands.</summary>
    public int Cob { get; }

    /// <summary>Headers and bond beam.</summary>
    public int Timber { get; }

    /// <summary>Plaster on both faces.</summary>
    public int Plaster { get; }

    /// <summary>All of the wall accelerated along x by 1/s2 for every metre above its base.</summary>
    public int WallX { get; }

    /// <summary>The same along y.</summary>
    public int WallY { get; }

    /// <summary>The same round the plan's centre, for every metre from it.</summary>
    public int WallTwist { get; }

    /// <summary>Moment of <see cref="WallTwist"/> about the plan's centre, N m.</summary>
    public double TwistMoment => twistMoment.Value;

    /// <summary>1 N along x, shared by all landings.</summary>
    public int RoofX { get; }

    /// <summary>The same along y.</summary>
    public int RoofY { get; }

    /// <summary>1 N m about the plan's centre, shared by all landings.</summary>
    public int RoofTwist { get; }

    /// <summary>1 N down at each landing.</summary>
    public int[] Press { get; }

    /// <summary>1 N up at each landing, taken by the tee under it where there are tees.</summary>
    public int[] Pull { get; }

    /// <summary>Wind from bearings of 0, 30, ... degrees at the pressures given.</summary>
    public int[] Wind { get; }

    /// <summary>1 N at each landing in the direction in which its rafter pushes it; none where no rafter pushes.</summary>
    public int[] Thrust { get; }

    /// <summary>The ground at rest against the half of the wall that faces 0, 30, ... degrees; none where it is no higher than the wall's foot.</summary>
    public int[] Soil { get; }

    /// <summary>Moment of a unit load about the plan's centre, east to north, N m.</summary>
    public double MomentOf(int unit) => Moment(loads[unit]);

    /// <summary>Weight that shakes at every level of nodes, N.</summary>
    public double[] RowWeights => rowWeights.Value;

    /// <summary>A force at a landing, spread over its seat.</summary>
    public NodalLoad At(int landing, Vector3 force) => OnTop(landing, seats, force);

    private int Add(Func<NodalLoad> make) => loads.Add(make);

    private double RowWeight(int row)
    {
        var sum = 0.0;
        for (var i = 0; i < body.Grid.Around; i++)
        {
            for (var j = 0; j <= body.Grid.Through; j++)
            {
                var node = body.Grid.Node(i, row, j);
                sum -= loads[Cob].At(node).Z + loads[Timber].At(node).Z + loads[Plaster].At(node).Z;
            }
        }

        return sum;
    }

    private double Moment(NodalLoad load)
    {
        var (sum, centre) = (0.0, geometry.Curve.Centre);
        for (var node = 0; node < body.Grid.Nodes; node++)
        {
            var (force, point) = (load.At(node), body.Grid.Point(node));
            sum += (point.X - centre.East) * force.Y - (point.Y - centre.North) * force.X;
        }

        return sum;
    }

    private NodalLoad PlasterWeight()
    {
        var load = Loading.None(body.Grid);
        foreach (var (face, side) in new[] { (Face.Inside, CellSide.Inside), (Face.Outside, CellSide.Outside) })
        {
            var depth = geometry.House.Finishes.Where(f => f.Face == face).Sum(f => f.Thickness?.Metres ?? 0);
            if (depth > 0)
            {
                var weight = new Vector3(0, 0, -depth * TakeDown.PlasterDensity * UsUnits.Gravity);
                load += Loading.Traction(body.Model, shares, side, side == CellSide.Inside ? insideFaces.Value : outsideFaces.Value, weight);
            }
        }

        return load;
    }

    /// <summary>The cells of cob that are outermost on a side of the wall.</summary>
    private int[] Faces(CellSide side)
    {
        var found = new List<int>(body.Grid.Around * body.CobRows);
        for (var i = 0; i < body.Grid.Around; i++)
        {
            for (var k = 0; k < body.CobRows; k++)
            {
                var (first, last) = (body.Grid.Cell(i, k, 0), body.Grid.Cell(i, k, body.Grid.Through - 1));
                var (cell, inward) = side == CellSide.Inside ? (first, 1) : (last, -1);
                while (cell >= first && cell <= last && !body.Model.Cells[cell].IsSolid)
                {
                    cell += inward;
                }

                if (cell >= first && cell <= last)
                {
                    found.Add(cell);
                }
            }
        }

        return [.. found];
    }

    /// <summary>A force on the bond beam, or on the wall top, where a pole lands: over the width of its seat, as far off the middle as its straight piece of beam lies.</summary>
    private NodalLoad OnTop(int landing, Sequence<double> seatOffsets, Vector3 force)
    {
        const double seat = 0.2;
        var wall = geometry.Wall;
        var thickness = wall.ThicknessAt(wall.Top.Metres);
        var (from, to) = body.BeamThrough;
        var middle = Math.Clamp(seatOffsets.Count > landing ? 0.5 + seatOffsets[landing] / thickness : (from + to) / 2, from + 0.01, to - 0.01);
        var half = Math.Min(middle - from, to - middle);
        var station = landings[landing].Station;
        return kept.OnTop(body.Model, new GridBox(station - seat / 2, station + seat / 2, 0, 0, middle - half, middle + half), force);
    }

    private NodalLoad AtTee(int landing, Sequence<double> seatOffsets)
    {
        var up = new Vector3(0, 0, 1);
        if (geometry.Tees.Count == 0)
        {
            return OnTop(landing, seatOffsets, up);
        }

        var station = landings[landing].Station;
        var tee = geometry.Tees.MinBy(t => Math.Abs(Math.IEEERemainder(t.Station - station, geometry.Curve.Length)))!;
        var height = Math.Max(geometry.Wall.Base.Metres, tee.BarHeight);
        return body.Model.Cells[body.Grid.Locate(tee.Station, height, 0.5).Cell] is { IsSolid: true }
            ? Loading.Point(body.Model, tee.Station, height, 0.5, up)
            : OnTop(landing, seatOffsets, up);
    }

    /// <summary>A level force at every landing, spread as what presses on it.</summary>
    private NodalLoad Sideways(Func<Landing, Vector3> force)
    {
        if (landings.Length == 0)
        {
            return Loading.None(body.Grid);
        }

        NodalLoad[] press = [.. Press.Select(unit => loads[unit])];
        var east = NodalLoad.Sum(press, [.. landings.Select(l => -force(l).X)]);
        var north = NodalLoad.Sum(press, [.. landings.Select(l => -force(l).Y)]);
        return east.Turned(up => new Vector3(up.Z, 0, 0)) + north.Turned(up => new Vector3(0, up.Z, 0));
    }

    /// <summary>Which cells around the wall look towards a bearing.</summary>
    private bool[] Faced(double bearing)
    {
        var (sin, cos) = Math.SinCos(bearing);
        return [.. outward.Value.Select(normal => normal.East * sin + normal.North * cos > 0)];
    }

    private NodalLoad WindFrom(double bearing, WindLoad wind)
    {
        var faced = Faced(bearing);
        return Loading.Pressure(body.Model, shares, CellSide.Outside, outsideFaces.Value, cell =>
            body.Grid.Position(cell) is var (i, k, _) ? (faced[i] ? wind.WallIn : wind.WallOut) * (1 + more.Value[i, k]) : 0);
    }

    /// <summary>The pressure in the middle of each cell; the top of the ground goes into the cell that it lies in by its share.</summary>
    private NodalLoad SoilFrom(double bearing, SoilPressure soil)
    {
        var faced = Faced(bearing);
        var low = geometry.Wall.Base.Metres;
        return Loading.Pressure(body.Model, shares, CellSide.Outside, outsideFaces.Value, cell =>
        {
            var (i, k, _) = body.Grid.Position(cell);
            var (bottom, top) = (body.Grid.Z[k], body.Grid.Z[k + 1]);
            return soil.Grade <= bottom || !faced[i] ? 0
                : soil.Force(Math.Max(low, bottom), Math.Min(soil.Grade, top)) / (top - bottom) * (1 + more.Value[i, k]);
        });
    }

    /// <summary>What openings add to the cells beside them, as a share of the pressure there: in every row the area that is missing goes half to each side, over two cells.</summary>
    private double[,] OpeningShares()
    {
        var grid = body.Grid;
        var more = new double[grid.Around, grid.Up];
        for (var k = 0; k < body.CobRows; k++)
        {
            var solid = Enumerable.Range(0, grid.Around).Select(i => Enumerable.Range(0, grid.Through).Max(j => body.Model.Cells[grid.Cell(i, k, j)].Share)).ToArray();
            for (var i = 0; i < grid.Around; i++)
            {
                var missing = (1 - solid[i]) * (grid.S[i + 1] - grid.S[i]);
                if (missing < 1e-9)
                {
                    continue;
                }

                foreach (var step in (int[])[-1, 1])
                {
                    var beside = Beside(solid, i, step);
                    var length = beside.Sum(n => grid.S[n + 1] - grid.S[n]);
                    foreach (var n in beside)
                    {
                        more[n, k] += missing / 2 / length;
                    }
                }
            }
        }

        return more;
    }

    /// <summary>The nearest two whole cells on one side; none all round a row that is nowhere whole.</summary>
    private static int[] Beside(double[] solid, int from, int step)
    {
        var count = solid.Length;
        for (var n = 1; n < count; n++)
        {
            var i = ((from + step * n) % count + count) % count;
            var next = ((i + step) % count + count) % count;
            if (solid[i] > 1 - 1e-9)
            {
                return solid[next] > 1 - 1e-9 ? [i, next] : [i];
            }
        }

        return [];
    }
}
