using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Steps;
using Clomwright.Analysis.Structure;
using Clomwright.Evidence;
using Clomwright.Numerics.Frames;
using Clomwright.Numerics.Solid;
using WallTopOf = Clomwright.Analysis.WallTop.FromRoof;

namespace Clomwright.Analysis.WallTrials;

/// <summary>The wall as it rises: each lift's wet weight comes on a body as stiff as it then is, and what it does adds to what was there.</summary>
/// <remarks>
/// Stiffness is the same multiple of the strength as of dry cob, d sigma = E(t) d epsilon: cob that stiffens later does not undo what it had sunk before. A lift is the rows of cells whose middle lies in it, and weighs
/// what the lift weighs. Whether the fresh lift stands by itself is asked elsewhere: from the second on the lifts under it are read.
/// </remarks>
internal sealed class RisingWall(TrialWall wall, WallDryness dryness, double dry)
{
    private readonly WallBody body = wall.Body;
    private readonly SolidGrid grid = wall.Body.Grid;

    public (Sequence<RisingLift> Lifts, Sequence<OpeningSag> Sags)? Of()
    {
        var lifts = wall.Geometry.Lifts;
        var rows = Enumerable.Range(0, grid.Up).Select(wall.LiftOf).ToArray();
        var found = new List<RisingLift>();
        var raw = new double[WallSheet.Parts * grid.Around * body.CobRows];
        var (sills, heads) = (Markers(sill: true), Markers(sill: false));
        var carried = 0.0;
        for (var n = 0; n < dryness.Stages.Count; n++)
        {
            var height = Enumerable.Range(0, body.CobRows).Where(k => rows[k] == n).Sum(k => grid.Z[k + 1] - grid.Z[k]);
            var real = (lifts[n].Top - lifts[n].Bottom).Metres + carried;
            if (height <= 0)
            {
                carried = real;
                continue;
            }

            carried = 0;
            var stage = dryness.Stages[n];
            var model = wall.Model(Standing(rows, n, stage), pushesOnly: false);
            var weight = WallTopOf.WetCob / (TakeDown.CobDensity * UsUnits.Gravity) * real / height;
            var heavy = model with { Cells = model.Cells.Select((cell, fill) => fill with { Weight = rows[grid.Position(cell).K] == n ? weight : 0 }) };
            var load = Loading.Weight(heavy, new Vector3(0, 0, -UsUnits.Gravity));
            if (wall.Solve(model, [load]) is not { } solved)
            {
                return null;
            }

            var sheet = wall.Sheet(model);
            var more = sheet.Raw(solved.Stresses[0]);
            for (var i = 0; i < raw.Length; i++)
            {
                raw[i] += more[i];
            }

            foreach (var marker in sills.Concat(heads).Where(m => m.Lift < n))
            {
                marker.Sunk -= solved.Answers[0].Displacement.At(marker.Node).Z;
            }

            found.Add(Read(n, stage, sheet, rows));
        }

        return (found.ToSequence(), wall.Geometry.Openings.Select((o, i) => new OpeningSag(
            o.Opening.Name, Sunk(sills, i), heads.Where(m => m.Opening == i && m.Middle).Select(m => m.Sunk).DefaultIfEmpty(0).First(), Sunk([.. heads.Where(m => !m.Middle)], i))).ToSequence());

        static double Sunk(IReadOnlyList<Marker> markers, int opening) => markers.Where(m => m.Opening == opening).Select(m => m.Sunk).DefaultIfEmpty(0).Average();

        RisingLift Read(int n, DrynessStage stage, WallSheet sheet, int[] rowLifts)
        {
            var means = sheet.Means(raw);
            PressedPlace? worst = null, foot = null;
            for (var stack = 0; stack < sheet.Count; stack++)
            {
                if (sheet.Share[stack] <= 0)
                {
                    continue;
                }

                var bay = TrialWall.BayOf(grid, dryness.Bays, wall.Geometry.Curve.Length, stack / sheet.Rows);
                var place = new PressedPlace(sheet.CobStationOf(stack), sheet.HeightOf(stack), Hardest.Pressure(means, stack), stage.Strength[rowLifts[stack % sheet.Rows]][bay]);
                worst = (n == 0 || rowLifts[stack % sheet.Rows] < n) && (worst is null || place.Margin < worst.Margin) ? place : worst;
                foot = stack % sheet.Rows == 0 && (foot is null || place.Pressure > foot.Pressure) ? place : foot;
            }

            return new RisingLift(n + 1, (lifts[n].Top - lifts[0].Bottom).Metres, stage.Day, foot ?? worst!, worst!, dryness.Safety);
        }
    }

    /// <summary>What stands when a lift is on: rows above are nothing, the others as stiff as they have dried.</summary>
    private SolidCells Standing(int[] rows, int lift, DrynessStage stage)
    {
        var bays = Enumerable.Range(0, grid.Around).Select(i => TrialWall.BayOf(grid, dryness.Bays, wall.Geometry.Curve.Length, i)).ToArray();
        var above = Region.Of(new GridBox(grid.S[0], grid.S[^1], 0, grid.Z[^1] + 1, -1, 2));
        var none = SolidCells.Uniform(grid, new CellFill(0)).Without(grid, above)[0];
        var least = 1e6 / body.Modulus;
        return body.Model.Cells.Select((cell, fill) =>
        {
            var (i, k, _) = grid.Position(cell);
            return rows[k] < 0 || rows[k] > lift ? none
                : body.IsTimber(cell) ? fill
                : fill with { Stiffness = Math.Max(least, Math.Min(1, stage.Strength[rows[k]][bays[i]] / dry)) };
        });
    }

    private List<Marker> Markers(bool sill)
    {
        var found = new List<Marker>();
        for (var o = 0; o < wall.Geometry.Openings.Count; o++)
        {
            var opening = wall.Geometry.Openings[o];
            var (height, low, top) = (sill ? opening.Sill : opening.Head, wall.Geometry.Wall.Base.Metres, wall.Geometry.Wall.Top.Metres);
            if (height <= low + 1e-9 || height >= top - 1e-9)
            {
                continue;
            }

            var row = Enumerable.Range(0, body.CobRows + 1).MinBy(k => Math.Abs(grid.Z[k] - height));
            var lift = wall.LiftOf(Math.Clamp(sill ? row - 1 : row, 0, body.CobRows - 1));
            found.Add(new Marker(o, Node(opening.Station, row), lift, Middle: true));
            if (!sill)
            {
                found.Add(new Marker(o, Node(opening.Widest.From, row), lift, Middle: false));
                found.Add(new Marker(o, Node(opening.Widest.To, row), lift, Middle: false));
            }
        }

        return found;
    }

    private int Node(double station, int row) =>
        grid.Node(Enumerable.Range(0, grid.Around).MinBy(i => Math.Abs(Math.IEEERemainder(grid.S[i] - station, grid.S[^1] - grid.S[0]))), row, grid.Through / 2);

    /// <summary>A node that is followed from when its lift stands.</summary>
    private sealed record Marker(int Opening, int Node, int Lift, bool Middle)
    {
        public double Sunk { get; set; }
    }
}
