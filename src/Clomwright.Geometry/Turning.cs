using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>Turns the ring of rafters so that its landings, secondaries too, keep as far from openings as they can.</summary>
/// <remarks>
/// Turning adds the same angle to every landing's bearing. A landing nearer than D to an opening is one whose turned bearing lies between
/// the bearings of the stations D before and D after it, so each pair of landing and opening forbids an interval of angles that only grows
/// with D. The largest D at which some angle is still free is found by halving; the free angle left there is the answer, exact to rounding
/// on every plan that the centre peg sees all round.
/// </remarks>
public static class Turning
{
    private const int Halvings = 60;

    /// <summary>The best rotation of a reciprocal or radial roof; null where there is no such roof, no opening, or the peg does not see the whole bond beam.</summary>
    /// <param name="geometry">The house.</param>
    /// <param name="clearHeaders">Whether to keep clear of header ends as well as openings.</param>
    public static RoofTurn? Best(HouseGeometry geometry, bool clearHeaders = false)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        if (geometry.House.Roof is not (Roof.Reciprocal or Roof.Radial) || geometry.Landings.Count == 0 || geometry.Openings.Count == 0)
        {
            return null;
        }

        var ring = new BearingRing(geometry.Curve, BeamLine.Of(geometry.House, geometry.Wall));
        if (!ring.SeesAllRound)
        {
            return null;
        }

        var holes = Holes(geometry, clearHeaders);
        var length = geometry.Curve.Length;
        var period = geometry.House.Roof.Landings.Count > 0 ? 2 * Math.PI : 2 * Math.PI / geometry.Landings.Count(l => !l.Secondary);
        var bearings = geometry.Landings.Select(l => ring.BearingAt(l.Station)).ToArray();
        var fewest = Forbidden.Of(ring, bearings, holes, 0, length, period).Fewest();
        double apart = 0, tooFar = length;
        for (var i = 0; i < Halvings && fewest.Count == 0; i++)
        {
            var middle = (apart + tooFar) / 2;
            (apart, tooFar) = Forbidden.Of(ring, bearings, holes, middle, length, period).Fewest().Count == 0 ? (middle, tooFar) : (apart, middle);
        }

        var rotation = Forbidden.Of(ring, bearings, holes, apart, length, period).Fewest().Angle;
        return new RoofTurn(
            rotation, new Angle(Wrapped(geometry.House.Roof.FirstBearing.Degrees + rotation * 180 / Math.PI)),
            Distance(geometry, 0, clearHeaders), Distance(geometry, rotation, clearHeaders), Over(geometry, 0, clearHeaders), Over(geometry, rotation, clearHeaders));
    }

    /// <summary>Least distance between a landing and the edge of an opening after turning the ring by an angle (radians clockwise), m along the inside face at the wall base; 0 when one is over an opening.</summary>
    public static double Distance(HouseGeometry geometry, double rotation, bool clearHeaders = false) =>
        Math.Max(0, Gaps(geometry, rotation, clearHeaders).DefaultIfEmpty(double.PositiveInfinity).Min());

    private static int Over(HouseGeometry geometry, double rotation, bool clearHeaders) => Gaps(geometry, rotation, clearHeaders).Count(gap => gap < 0);

    /// <summary>For each landing the distance to the nearest hole; negative over one.</summary>
    private static IEnumerable<double> Gaps(HouseGeometry geometry, double rotation, bool clearHeaders)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var ring = new BearingRing(geometry.Curve, BeamLine.Of(geometry.House, geometry.Wall));
        var holes = Holes(geometry, clearHeaders);
        foreach (var landing in geometry.Landings)
        {
            var station = rotation == 0 ? landing.Station : ring.StationAt(ring.BearingAt(landing.Station) + rotation);
            yield return holes.Min(hole => Math.Abs(Math.IEEERemainder(station - hole.Middle, geometry.Curve.Length)) - hole.Width / 2);
        }
    }

    private static Span[] Holes(HouseGeometry geometry, bool clearHeaders) =>
        [.. geometry.Openings.Select(o => o.Widest), .. clearHeaders ? geometry.Openings.Where(o => o.Header is not null).Select(o => o.Header!.Span) : []];

    private static double Wrapped(double degrees) => degrees - 360 * Math.Floor(degrees / 360);
}
