namespace Clomwright.Geometry;

/// <summary>Tables of both faces at a height, measured from the centre peg: radii of a round house, distances along bearings for others.</summary>
public static class OffsetTables
{
    /// <summary>Rows of a house that is not round.</summary>
    public const int RowsUsual = 24;

    private const int RowsMost = 720;

    /// <summary>Both faces at a height from the finished floor, m, on rays at equal bearings clockwise from the zero mark.</summary>
    /// <param name="geometry">The house.</param>
    /// <param name="height">From the finished floor, m; the faces are carried on straight above and below the cob.</param>
    /// <param name="rows">How many rays; null takes one for a house that is round about its peg and <see cref="RowsUsual"/> otherwise.</param>
    /// <remarks>A ray that meets the inside face more than once has a row for each meeting; one that meets nothing has none.</remarks>
    public static OffsetTable At(HouseGeometry geometry, double height, int? rows = null)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var curve = geometry.Curve;
        var count = Math.Clamp(rows ?? (curve.IsRoundAboutCentre ? 1 : RowsUsual), 1, RowsMost);
        var zero = curve.BearingOf(curve.At(0));
        var (inside, outside) = (geometry.Wall.InsideOffset(height), geometry.Wall.OutsideOffset(height));
        var table = new List<OffsetRow>();
        for (var i = 0; i < count; i++)
        {
            var bearing = (zero + 2 * Math.PI * i / count) % (2 * Math.PI);
            var insideMeets = curve.StationsAt(bearing, inside);
            var outsideMeets = curve.StationsAt(bearing, outside);
            foreach (var station in i == 0 ? [0] : curve.StationsAt(bearing))
            {
                if (Nearest(curve, insideMeets, station) is { } near && Nearest(curve, outsideMeets, station) is { } far)
                {
                    table.Add(new OffsetRow(bearing, station, FromCentre(curve, near, inside), FromCentre(curve, far, outside)));
                }
            }
        }

        return new OffsetTable(height, Evidence.Sequence.ToSequence(table)) { IsRound = curve.IsRoundAboutCentre };
    }

    private static double? Nearest(PlanCurve curve, IReadOnlyList<double> stations, double station) =>
        stations.Count == 0 ? null : stations.MinBy(s => Math.Abs(Math.IEEERemainder(s - station, curve.Length)));

    private static double FromCentre(PlanCurve curve, double station, double offset) => (curve.At(station, offset) - curve.Centre).Norm;
}
