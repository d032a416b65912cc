using Clomwright.Geometry;

namespace Clomwright.Analysis.Foundation;

/// <summary>A stretch of the stem that carries the whole roof or one pole.</summary>
/// <param name="Subject"><c>wall</c> or a pole.</param>
/// <param name="Pole">Index among the poles; -1 for the whole ring.</param>
/// <param name="Length">That carries, along the stem's middle line, m; not above zero where openings take all of it.</param>
/// <param name="OverOpenings">Cob between the heads of the openings that take some of it and the wall top, m3.</param>
/// <remarks>
/// A load spreads 2 down to 1 out to each side, down to the stem's top, as far as half-way to the next pole. An opening takes its width out of the stretch, less
/// what closes again below its sill at the same spread: what would come down through it comes down beside it, with the cob over it.
/// </remarks>
internal sealed record Strip(string Subject, int Pole, double Length, double OverOpenings)
{
    public static IEnumerable<Strip> Of(HouseGeometry geometry, double line)
    {
        var ring = geometry.Curve.Length;
        yield return Made(geometry, "wall", -1, 0, ring, line);
        var poles = geometry.Landings.Where(l => !l.Secondary).ToArray();
        var spread = (geometry.Wall.Top - geometry.Wall.Base).Metres / 2;
        for (var i = 0; i < poles.Length; i++)
        {
            var station = poles[i].Station;
            var (back, on) = (ring, ring);
            foreach (var other in poles.Where((_, k) => k != i))
            {
                var ahead = geometry.Curve.Wrap(other.Station - station);
                (back, on) = (Math.Min(back, ring - ahead), Math.Min(on, ahead));
            }

            yield return Made(geometry, poles[i].Name, i, station - Math.Min(spread, back / 2), station + Math.Min(spread, on / 2), line);
        }
    }

    private static Strip Made(HouseGeometry geometry, string subject, int pole, double from, double to, double line)
    {
        var length = geometry.Curve.OffsetArc(from, to, line);
        var (gaps, cob) = (0.0, 0.0);
        foreach (var place in geometry.Openings)
        {
            var closes = Math.Max(0, place.Sill - geometry.Wall.Base.Metres);
            var half = (place.Widest.Width - closes) / 2;
            if (half <= 0)
            {
                continue;
            }

            var middle = from + geometry.Curve.Wrap(place.Widest.Middle - from);
            foreach (var turn in (double[])[middle - geometry.Curve.Length, middle, middle + geometry.Curve.Length])
            {
                var (low, high) = (Math.Max(from, turn - half), Math.Min(to, turn + half));
                if (high > low)
                {
                    var gap = geometry.Curve.OffsetArc(low, high, line);
                    var height = Math.Max(0, geometry.Wall.Top.Metres - place.Head);
                    gaps += gap;
                    cob += gap * height * geometry.Wall.ThicknessAt(place.Head + height / 2);
                }
            }
        }

        return new Strip(subject, pole, length - gaps, cob);
    }
}
