using Clomwright.Geometry;

namespace Clomwright.Analysis.Structure;

/// <summary>What every case makes hardest: the sheet's envelope, the sections of the piers and the tops of wall under poles.</summary>
internal sealed class Hardest
{
    private readonly WallSheet sheet;
    private readonly PierSections[] piers;
    private readonly int[] landings;

    /// <param name="sheet">Where stress is read.</param>
    /// <param name="piers">Whose sections are followed.</param>
    /// <param name="landings">Of the poles.</param>
    /// <param name="ends">Of the headers.</param>
    /// <param name="use">How hard each pier is used without tension.</param>
    public Hardest(WallSheet sheet, PierSections[] piers, Landing[] landings, HeaderSeat[] ends, PierUse use)
    {
        (Ends, Use) = (ends, use);
        (EndPressure, EndCase) = (new double[ends.Length], new int[ends.Length]);
        Array.Fill(EndPressure, double.NegativeInfinity);
        (this.sheet, this.piers) = (sheet, piers);
        Sheet = new Envelope(sheet);
        this.landings = Array.ConvertAll(landings, l => Nearest(sheet, l.Station));
        var sections = piers.Sum(p => p.Rows.Length);
        (Mean, MeanCase) = (new double[sections], new int[sections]);
        Array.Fill(Mean, double.NegativeInfinity);
        (Bearing, BearingCase) = (new double[landings.Length], new int[landings.Length]);
        Array.Fill(Bearing, double.NegativeInfinity);
    }

    public Envelope Sheet { get; }

    /// <summary>Most mean compression of each section, pier after pier, Pa.</summary>
    public double[] Mean { get; }

    public int[] MeanCase { get; }

    /// <summary>Most upright compression of either face under each landing, Pa.</summary>
    public double[] Bearing { get; }

    public int[] BearingCase { get; }

    /// <summary>Stack at the top of the wall under each landing; -1 where the top is nowhere cob.</summary>
    public IReadOnlyList<int> Tops => landings;

    /// <summary>Ends of headers on cob.</summary>
    public HeaderSeat[] Ends { get; }

    /// <summary>Most upright compression of either face under each of them, Pa.</summary>
    public double[] EndPressure { get; }

    public int[] EndCase { get; }

    /// <summary>Where the forces of each pier stand.</summary>
    public PierUse Use { get; }

    /// <summary>Takes one case in.</summary>
    public void Take(int number, double[] field, double[] forces)
    {
        Sheet.Take(number, field);
        Use.Take(number, forces);
        for (var i = 0; i < Ends.Length; i++)
        {
            if (Pressure(field, Ends[i].Stack) > EndPressure[i])
            {
                (EndPressure[i], EndCase[i]) = (Pressure(field, Ends[i].Stack), number);
            }
        }

        var at = 0;
        foreach (var pier in piers)
        {
            foreach (var area in pier.Areas)
            {
                if (area > 0 && -forces[PierSections.Parts * at] / area > Mean[at])
                {
                    (Mean[at], MeanCase[at]) = (-forces[PierSections.Parts * at] / area, number);
                }

                at++;
            }
        }

        for (var i = 0; i < landings.Length; i++)
        {
            if (landings[i] >= 0 && Pressure(field, landings[i]) > Bearing[i])
            {
                (Bearing[i], BearingCase[i]) = (Pressure(field, landings[i]), number);
            }
        }
    }

    /// <summary>Takes in what later cases made of the same wall.</summary>
    public void Take(Hardest later)
    {
        Sheet.Take(later.Sheet);
        Use.Take(later.Use);
        Keep(EndPressure, EndCase, later.EndPressure, later.EndCase);
        Keep(Mean, MeanCase, later.Mean, later.MeanCase);
        Keep(Bearing, BearingCase, later.Bearing, later.BearingCase);
    }

    private static void Keep(double[] most, int[] number, double[] later, int[] laterNumber)
    {
        for (var i = 0; i < most.Length; i++)
        {
            if (later[i] > most[i])
            {
                (most[i], number[i]) = (later[i], laterNumber[i]);
            }
        }
    }

    /// <summary>Upright compression of the harder face, Pa.</summary>
    public static double Pressure(double[] field, int stack) => -Math.Min(field[WallSheet.Parts * stack + 1], field[WallSheet.Parts * stack + 4]);

    /// <summary>Length of wall top over which a pressure of at least half that at a stack is reached, m.</summary>
    public double Spread(double[] field, int stack, double[] widths)
    {
        var (half, count) = (Pressure(field, stack) / 2, widths.Length);
        if (!(half > 0))
        {
            return 0;
        }

        var (column, row) = (stack / sheet.Rows, stack % sheet.Rows);
        var length = widths[column];
        foreach (var step in (int[])[-1, 1])
        {
            for (var n = 1; n < count; n++)
            {
                var i = ((column + step * n) % count + count) % count;
                if (sheet.Share[i * sheet.Rows + row] <= 0 || Pressure(field, i * sheet.Rows + row) < half)
                {
                    break;
                }

                length += widths[i];
            }
        }

        return Math.Min(length, widths.Sum());
    }

    /// <summary>The stack of cob at the top of the wall nearest to a station; -1 where the top is nowhere cob.</summary>
    public static int Nearest(WallSheet sheet, double station)
    {
        var columns = sheet.Count / sheet.Rows;
        var ring = sheet.StationOf(sheet.Count - 1) + (sheet.StationOf(sheet.Rows) - sheet.StationOf(0)) / 2;
        var column = Enumerable.Range(0, columns).MinBy(i => Math.Abs(Math.IEEERemainder(sheet.StationOf(i * sheet.Rows) - station, ring)));
        for (var row = sheet.Rows - 1; row >= 0; row--)
        {
            if (sheet.Share[column * sheet.Rows + row] > 0)
            {
                return column * sheet.Rows + row;
            }
        }

        return -1;
    }
}
