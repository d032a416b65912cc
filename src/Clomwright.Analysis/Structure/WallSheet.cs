using System.Buffers;
using System.Runtime.Intrinsics;
using Clomwright.Numerics.Solid;

namespace Clomwright.Analysis.Structure;

/// <summary>
/// The wall's cob as a sheet of stacks, each a row of cells through the thickness: six numbers a stack, the stresses along, up and in shear at the inside face and at the outside face, as means over a patch.
/// </summary>
/// <remarks>
/// The stress is read in the middle of each cell, where the element is at its best, carried on in a straight line to both faces, and averaged over a patch of a stated length both ways, over what is cob in it
/// and weighted by how much is. Where holes or timber take so much of the patch that less than <see cref="LeastFilled"/> of it is cob it grows, by half at most. A corner of a hole is a point of endless
/// stress in an elastic body: only a mean says something that does not depend on the grid.
/// </remarks>
internal sealed class WallSheet
{
    /// <summary>Numbers for each stack: S, Z and SZ inside, S, Z and SZ outside.</summary>
    public const int Parts = 6;

    /// <summary>Share of a patch that is to be cob.</summary>
    public const double LeastFilled = 0.8;

    private const double MostGrown = 1.5;
    private const double Growth = 0.1;

    private readonly WallBody body;
    private readonly SolidModel model;
    private readonly SolidGrid grid;
    private readonly (int Stack, double Weight)[][] patches;
    private readonly double patch;
    private readonly PatchReach?[] reaches;

    /// <param name="body">The wall.</param>
    /// <param name="patch">Length of a patch both ways, m.</param>
    /// <param name="model">What of it stands; null for all.</param>
    /// <param name="before">A sheet made before; where it lies on the same grid, how far patches reach is taken over from it, and patches of which nothing has changed.</param>
    public WallSheet(WallBody body, double patch, SolidModel? model = null, WallSheet? before = null)
    {
        (this.body, this.model, this.patch, grid) = (body, model ?? body.Model, patch, body.Grid);
        Rows = body.CobRows;
        var known = before is not null && ReferenceEquals(before.grid, grid) && (before.Rows, before.patch) == (Rows, patch) ? before : null;
        reaches = known?.reaches ?? new PatchReach?[1 + (int)Math.Ceiling((MostGrown - 1) / Growth)];
        Count = grid.Around * Rows;
        Share = [.. Enumerable.Range(0, Count).Select(ShareOf)];
        patches = known is null ? new (int, double)[Count][] : [.. known.patches];
        foreach (var column in known is null ? Enumerable.Range(0, grid.Around) : NearWhatChanged(known))
        {
            for (var stack = column * Rows; stack < (column + 1) * Rows; stack++)
            {
                patches[stack] = Share[stack] > 0 ? Patch(stack) : [];
            }
        }
    }

    /// <summary>Columns of which some patch may reach over a stack that holds another share of cob than before.</summary>
    private IEnumerable<int> NearWhatChanged(WallSheet before)
    {
        var changed = Enumerable.Range(0, grid.Around).Select(i => !Share.AsSpan(i * Rows, Rows).SequenceEqual(before.Share.AsSpan(i * Rows, Rows))).ToArray();
        var widest = reaches[^1] ??= ReachOf(reaches.Length - 1);
        return Enumerable.Range(0, grid.Around).Where(i => widest.Columns[i].Any(reached => changed[reached.At]));
    }

    private PatchReach ReachOf(int step) => new(grid, Rows, (1 + step * Growth) * patch);

    /// <summary>Rows of stacks.</summary>
    public int Rows { get; }

    /// <summary>Number of stacks; stack (i, k) has number i Rows + k.</summary>
    public int Count { get; }

    /// <summary>How much of each stack is cob, 0 to 1; 0 where timber is in it.</summary>
    public double[] Share { get; }

    /// <summary>Station of a stack's middle, m.</summary>
    public double StationOf(int stack) => (grid.S[stack / Rows] + grid.S[stack / Rows + 1]) / 2;

    /// <summary>Station of the middle of what is cob in a stack, m: where a jamb cuts it, on the cob's side.</summary>
    public double CobStationOf(int stack)
    {
        var (i, k) = (stack / Rows, stack % Rows);
        var shift = Enumerable.Range(0, grid.Through).Select(j => grid.Cell(i, k, j)).Where(IsCob).Select(c => model.Cells[c].Cut?.Middle.X ?? 0).DefaultIfEmpty(0).Average();
        return StationOf(stack) + shift * (grid.S[i + 1] - grid.S[i]) / 2;
    }

    /// <summary>Height of a stack's middle, m.</summary>
    public double HeightOf(int stack) => (grid.Z[stack % Rows] + grid.Z[stack % Rows + 1]) / 2;

    /// <summary>The means over patches for the stresses of an answer.</summary>
    public double[] Means(CellStress stress)
    {
        var raw = ArrayPool<double>.Shared.Rent(Parts * Count);
        Fill(raw, stress);
        var means = Means(raw);
        ArrayPool<double>.Shared.Return(raw);
        return means;
    }

    /// <summary>The stresses at both faces, stack by stack, before they are averaged.</summary>
    public double[] Raw(CellStress stress)
    {
        var raw = new double[Parts * Count];
        Fill(raw, stress);
        return raw;
    }

    private void Fill(double[] raw, CellStress stress)
    {
        for (var stack = 0; stack < Count; stack++)
        {
            if (Share[stack] > 0)
            {
                Faces(stress, stack, raw.AsSpan(Parts * stack, Parts));
            }
        }
    }

    /// <summary>The means over patches of what stands at both faces.</summary>
    public double[] Means(double[] raw)
    {
        var means = new double[Parts * Count];
        for (var stack = 0; stack < Count; stack++)
        {
            var (first, second, third) = (Vector128<double>.Zero, Vector128<double>.Zero, Vector128<double>.Zero);
            foreach (var (other, weight) in patches[stack])
            {
                ref var from = ref raw[Parts * other];
                first += weight * Vector128.LoadUnsafe(ref from);
                second += weight * Vector128.LoadUnsafe(ref from, 2);
                third += weight * Vector128.LoadUnsafe(ref from, 4);
            }

            ref var to = ref means[Parts * stack];
            first.StoreUnsafe(ref to);
            second.StoreUnsafe(ref to, 2);
            third.StoreUnsafe(ref to, 4);
        }

        return means;
    }

    private bool IsCob(int cell) => model.Cells[cell].IsSolid && !body.IsTimber(cell);

    private double ShareOf(int stack)
    {
        var (share, i, k) = (0.0, stack / Rows, stack % Rows);
        for (var j = 0; j < grid.Through; j++)
        {
            var cell = grid.Cell(i, k, j);
            if (model.Cells[cell].IsSolid && !IsCob(cell))
            {
                return 0;
            }

            share += IsCob(cell) ? model.Cells[cell].Share / grid.Through : 0;
        }

        return share;
    }

    /// <summary>How fast the upright stress of a stack changes outward, Pa for each share of the thickness; 0 where one layer is left.</summary>
    public double SlopeOf(CellStress stress, int stack)
    {
        Span<double> faces = stackalloc double[Parts];
        double first = double.NaN, last = 0;
        for (var j = 0; j < grid.Through; j++)
        {
            var cell = grid.Cell(stack / Rows, stack % Rows, j);
            if (stress[cell] is not null)
            {
                var (t, half) = (Place(cell, j), (grid.T[j + 1] - grid.T[j]) / 2);
                first = double.IsNaN(first) ? t - half : first;
                last = t + half;
            }
        }

        if (double.IsNaN(first))
        {
            return 0;
        }

        Faces(stress, stack, faces);
        return (faces[4] - faces[1]) / (last - first);
    }

    /// <summary>The straight line through the layers, by least squares weighted with what is solid, at both faces.</summary>
    private void Faces(CellStress stress, int stack, Span<double> faces)
    {
        double weight = 0, middle = 0, square = 0;
        Span<double> mean = stackalloc double[3];
        Span<double> turn = stackalloc double[3];
        mean.Clear();
        turn.Clear();
        double first = double.NaN, last = 0;
        for (var j = 0; j < grid.Through; j++)
        {
            var cell = grid.Cell(stack / Rows, stack % Rows, j);
            if (stress[cell] is not { } there)
            {
                continue;
            }

            var (w, t) = (model.Cells[cell].Share, Place(cell, j));
            (weight, middle, square) = (weight + w, middle + w * t, square + w * t * t);
            (mean[0], mean[1], mean[2]) = (mean[0] + w * there.S, mean[1] + w * there.Z, mean[2] + w * there.SZ);
            (turn[0], turn[1], turn[2]) = (turn[0] + w * t * there.S, turn[1] + w * t * there.Z, turn[2] + w * t * there.SZ);
            var half = (grid.T[j + 1] - grid.T[j]) / 2;
            first = double.IsNaN(first) ? t - half : first;
            last = t + half;
        }

        middle /= weight;
        var spread = square / weight - middle * middle;
        for (var part = 0; part < 3; part++)
        {
            var m = mean[part] / weight;
            var slope = spread > 1e-9 ? (turn[part] / weight - m * middle) / spread : 0;
            faces[part] = m + slope * (first - middle);
            faces[3 + part] = m + slope * (last - middle);
        }
    }

    private double Place(int cell, int j)
    {
        var reference = model.Cells[cell].Cut?.Middle.Z ?? 0;
        return (grid.T[j] + grid.T[j + 1]) / 2 + reference * (grid.T[j + 1] - grid.T[j]) / 2;
    }

    private (int Stack, double Weight)[] Patch(int stack)
    {
        for (var step = 0; ; step++)
        {
            var found = Within(stack, reaches[step] ??= ReachOf(step));
            var filled = found.Sum(f => f.Weight);
            if (filled >= LeastFilled * patch * patch || 1 + step * Growth > MostGrown - Growth / 2)
            {
                return filled > 0 ? [.. found.Select(f => (f.Stack, f.Weight / filled))] : [(stack, 1)];
            }
        }
    }

    private List<(int Stack, double Weight)> Within(int stack, PatchReach reach)
    {
        var found = new List<(int Stack, double Weight)>();
        foreach (var (k, high) in reach.Rows[stack % Rows])
        {
            foreach (var (i, along) in reach.Columns[stack / Rows])
            {
                if (Share[i * Rows + k] is > 0 and var share)
                {
                    found.Add((i * Rows + k, along * high * share));
                }
            }
        }

        return found;
    }
}

/// <summary>How far a patch round the middle of each column, and of each row, of a sheet reaches over others of them, m.</summary>
internal sealed class PatchReach
{
    /// <param name="grid">The wall's.</param>
    /// <param name="rows">Rows of the sheet.</param>
    /// <param name="length">Of the patch both ways, m.</param>
    public PatchReach(SolidGrid grid, int rows, double length)
    {
        var (half, ring) = (length / 2, grid.S[^1] - grid.S[0]);
        Columns = [.. Enumerable.Range(0, grid.Around).Select(at => Reached(grid.Around, other =>
        {
            var middle = (grid.S[at] + grid.S[at + 1]) / 2;
            var shift = Math.Round((middle - (grid.S[other] + grid.S[other + 1]) / 2) / ring) * ring;
            return Overlap(grid.S[other] + shift, grid.S[other + 1] + shift, middle - half, middle + half);
        }))];
        Rows = [.. Enumerable.Range(0, rows).Select(at => Reached(rows, other =>
        {
            var middle = (grid.Z[at] + grid.Z[at + 1]) / 2;
            return Overlap(grid.Z[other], grid.Z[other + 1], middle - half, middle + half);
        }))];
    }

    /// <summary>For each column those within reach, with the length of each that is.</summary>
    public (int At, double Length)[][] Columns { get; }

    /// <summary>The same for rows.</summary>
    public (int At, double Length)[][] Rows { get; }

    private static (int At, double Length)[] Reached(int count, Func<int, double> overlap) =>
        [.. Enumerable.Range(0, count).Select(other => (At: other, Length: overlap(other))).Where(r => r.Length > 0)];

    private static double Overlap(double a, double b, double from, double to) => Math.Max(0, Math.Min(b, to) - Math.Max(a, from));
}
