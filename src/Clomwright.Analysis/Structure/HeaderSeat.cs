using Clomwright.Geometry;

namespace Clomwright.Analysis.Structure;

/// <summary>An end of a header on the cob under it.</summary>
/// <param name="Opening">Name of the opening.</param>
/// <param name="Left">Whether it is the end before the opening, clockwise: the left one seen from inside.</param>
/// <param name="Stack">The highest stack of cob under the middle of the bearing.</param>
internal sealed record HeaderSeat(string Opening, bool Left, int Stack)
{
    /// <summary>Both ends of every header that lies on cob.</summary>
    public static IEnumerable<HeaderSeat> Of(HouseGeometry geometry, WallSheet sheet)
    {
        foreach (var opening in geometry.Openings.Where(o => o.Header is not null))
        {
            var (header, jambs) = (opening.Header!, opening.Widest);
            foreach (var (left, from, to) in new[] { (true, header.Span.From, jambs.From), (false, jambs.To, header.Span.To) })
            {
                if (to - from > 1e-6 && Under(sheet, geometry.Curve.Length, (from + to) / 2, header.Bottom) is { } stack)
                {
                    yield return new HeaderSeat(opening.Opening.Name, left, stack);
                }
            }
        }
    }

    private static int? Under(WallSheet sheet, double ring, double station, double bottom)
    {
        var columns = Enumerable.Range(0, sheet.Count / sheet.Rows).OrderBy(i => Math.Abs(Math.IEEERemainder(sheet.StationOf(i * sheet.Rows) - station, ring))).Take(3);
        foreach (var column in columns)
        {
            for (var row = sheet.Rows - 1; row >= 0; row--)
            {
                var stack = column * sheet.Rows + row;
                if (sheet.HeightOf(stack) < bottom && sheet.Share[stack] > 0)
                {
                    return stack;
                }
            }
        }

        return null;
    }
}
