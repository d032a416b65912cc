namespace Clomwright.Analysis.Anchorage;

/// <summary>IRC 2018 table R802.11: uplift of light roofs at their connections, Exposure B, as published. For comparison only: a living roof usually holds itself down.</summary>
public static class UpliftTable
{
    private const double PoundPerFoot = 4.4482216152605 / 0.3048;

    private static readonly double[] Spans = [12, 18, 24, 28, 32, 36];
    private static readonly double[] Speeds = [110, 115, 120, 130, 140];

    // lb per connection at 12 in spacing, that is lb/ft; rows by span, columns by speed; roof slope under 5:12, then 5:12 and over.
    private static readonly double[][] Low = [[48, 59, 70, 95, 122], [59, 74, 89, 122, 157], [71, 89, 108, 149, 192], [79, 99, 121, 167, 216], [86, 109, 134, 185, 240], [94, 120, 146, 203, 264]];
    private static readonly double[][] Steep = [[43, 53, 64, 88, 113], [52, 66, 81, 112, 146], [62, 79, 98, 137, 178], [69, 88, 109, 153, 200], [75, 97, 120, 170, 222], [82, 106, 132, 186, 244]];

    /// <summary>Uplift along the wall, N/m: the next printed span and speed up; null beyond the table.</summary>
    /// <param name="spanFeet">Width of the roof, ft.</param>
    /// <param name="speedMph">Basic wind speed, mph.</param>
    /// <param name="slope">Rise over run.</param>
    public static double? PerMetre(double spanFeet, double speedMph, double slope)
    {
        var row = Array.FindIndex(Spans, s => s >= spanFeet);
        var column = Array.FindIndex(Speeds, s => s >= speedMph);
        return row < 0 || column < 0 ? null : (slope < 5.0 / 12 ? Low : Steep)[row][column] * PoundPerFoot;
    }
}
