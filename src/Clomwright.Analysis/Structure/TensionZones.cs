using Clomwright.Geometry;

namespace Clomwright.Analysis.Structure;

/// <summary>Gathers neighbouring stacks in tension into zones.</summary>
internal static class TensionZones
{
    private const int Most = 12;

    public static IEnumerable<TensionZone> Of(HouseGeometry geometry, WallBody body, WallSheet sheet, Envelope envelope, WallCase[] cases, double level)
    {
        var seen = new bool[sheet.Count];
        var zones = new List<TensionZone>();
        for (var stack = 0; stack < sheet.Count; stack++)
        {
            if (!seen[stack] && In(stack))
            {
                zones.Add(Zone(Connected(stack)));
            }
        }

        return zones.OrderByDescending(z => z.Tension).Take(Most);

        bool In(int stack) => sheet.Share[stack] > 0 && envelope.Tension[stack] > level;

        List<int> Connected(int from)
        {
            var (found, open) = (new List<int>(), new Stack<int>([from]));
            seen[from] = true;
            while (open.TryPop(out var stack))
            {
                found.Add(stack);
                var (i, k) = (stack / sheet.Rows, stack % sheet.Rows);
                foreach (var (di, dk) in ((int, int)[])[(-1, 0), (1, 0), (0, -1), (0, 1)])
                {
                    var (ni, nk) = ((i + di + body.Grid.Around) % body.Grid.Around, k + dk);
                    var next = ni * sheet.Rows + nk;
                    if (nk >= 0 && nk < sheet.Rows && !seen[next] && In(next))
                    {
                        seen[next] = true;
                        open.Push(next);
                    }
                }
            }

            return found;
        }

        TensionZone Zone(List<int> stacks)
        {
            var (grid, curve) = (body.Grid, geometry.Curve);
            var worst = stacks.MaxBy(s => envelope.Tension[s]);
            var columns = stacks.Select(s => s / sheet.Rows).Distinct().Order().ToArray();
            var (from, to) = Reach(columns, grid.Around);
            var (station, height) = (sheet.CobStationOf(worst), sheet.HeightOf(worst));
            var near = geometry.Openings.Select(o => (o.Opening.Name, Away: Away(o))).Where(o => o.Away < 0.6).OrderBy(o => o.Away).Select(o => o.Name).FirstOrDefault();
            return new TensionZone(
                station, height, envelope.TensionOutside[worst], envelope.Tension[worst], envelope.TensionAngle[worst],
                stacks.Sum(s => sheet.Share[s] * (grid.S[s / sheet.Rows + 1] - grid.S[s / sheet.Rows]) * (grid.Z[s % sheet.Rows + 1] - grid.Z[s % sheet.Rows])),
                grid.S[from], to < from ? grid.S[to + 1] + curve.Length : grid.S[to + 1], grid.Z[stacks.Min(s => s % sheet.Rows)], grid.Z[stacks.Max(s => s % sheet.Rows) + 1],
                cases[envelope.TensionCase[worst]]) { Near = near };

            double Away(OpeningPlace o)
            {
                var along = Math.Max(0, Math.Abs(Math.IEEERemainder(station - o.Widest.Middle, curve.Length)) - o.Widest.Width / 2);
                var up = Math.Max(0, Math.Max(o.Sill - height, height - o.Head));
                return Math.Max(along, up);
            }
        }
    }

    /// <summary>First and last column of a zone on a ring: it begins after its widest gap.</summary>
    private static (int From, int To) Reach(int[] columns, int around)
    {
        var widest = Enumerable.Range(0, columns.Length).MaxBy(i => (columns[(i + 1) % columns.Length] - columns[i] + around - 1) % around);
        return (columns[(widest + 1) % columns.Length], columns[widest]);
    }
}
