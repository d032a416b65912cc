using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>What the crew needs to mark the house on the ground, from a centre peg or from two pegs outside the wall.</summary>
public static class SettingOuts
{
    /// <summary>Standard error of one tape that errors are told for, m.</summary>
    public const double TapeError = 0.005;

    /// <summary>Clear of everything that is dug or built, m: room for the crew to pass a peg.</summary>
    private const double Clear = 1;

    /// <summary>Numbered points stand no farther apart than this, m (2 ft).</summary>
    private const double PointSpacing = 0.6096;

    /// <summary>Pegs, marks and lines of a house.</summary>
    public static SettingOut Of(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var curve = geometry.Curve;
        var lines = Lines(geometry);
        var (a, b) = Pegs(geometry, lines.Max(l => l.Offset));
        var apart = (b - a).Norm;
        var parts = Parts(curve);
        return new SettingOut
        {
            Centre = curve.Centre,
            PegA = a,
            PegB = b,
            PegDistance = apart,
            Marks = Stations(geometry).OrderBy(m => m.Station).Select(m => Mark(m.Name, m.Station)).ToSequence(),
            Lines = lines,
            Jig = curve.IsRoundAboutCentre ? CircleChord.OfParts(curve.Length / (2 * Math.PI), parts) : null,
        };

        SettingOutMark Mark(string name, double station)
        {
            var point = curve.At(station);
            var (first, second) = ((point - a).Norm, (point - b).Norm);
            var found = TwoPegs.Of(apart, first, second, TapeError);
            return new SettingOutMark(name, station, point, curve.BearingOf(point), (point - curve.Centre).Norm, first, second, found.ErrorAlong, found.ErrorAcross);
        }
    }

    private static int Parts(PlanCurve curve) => Math.Max(8, (int)Math.Ceiling(curve.Length / PointSpacing));

    /// <summary>The zero mark and the numbered points, clockwise.</summary>
    internal static IEnumerable<(string Name, double Station)> Points(HouseGeometry geometry)
    {
        var (curve, parts) = (geometry.Curve, Parts(geometry.Curve));
        return Enumerable.Range(0, parts).Select(i => (i == 0 ? "zero" : FormattableString.Invariant($"point {i}"), i * curve.Length / parts));
    }

    private static IEnumerable<(string Name, double Station)> Stations(HouseGeometry geometry)
    {
        var curve = geometry.Curve;
        foreach (var point in Points(geometry))
        {
            yield return point;
        }

        foreach (var place in geometry.Openings)
        {
            var rough = new Shaft(curve, place.Station, place.Opening.Width.Metres / 2, 0, 0, 0, 0);
            if (rough.Meet(-1, 0) is { } from && rough.Meet(1, 0) is { } to)
            {
                yield return ($"{place.Opening.Name}/jamb 1", curve.Wrap(from.Station));
                yield return ($"{place.Opening.Name}/jamb 2", curve.Wrap(to.Station));
            }
        }
    }

    private static Sequence<SettingOutLine> Lines(HouseGeometry geometry)
    {
        var (house, wall, curve) = (geometry.House, geometry.Wall, geometry.Curve);
        var lines = new List<SettingOutLine> { Line("wall-inside", 0), Line("wall-outside", wall.OutsideOffset(wall.Base.Metres)) };
        if (house.Stem.Width.Nanometres > 0)
        {
            var stem = WallBands.Stem(house.Stem, wall);
            lines.AddRange([Line("stem-inside", stem.Inside), Line("stem-outside", stem.Outside)]);
            if (house.Trench is { Width.Nanometres: > 0 } trench)
            {
                var middle = (stem.Inside + stem.Outside) / 2;
                lines.AddRange([Line("trench-inside", middle - trench.Width.Metres / 2), Line("trench-outside", middle + trench.Width.Metres / 2)]);
            }
        }

        return lines.ToSequence();

        SettingOutLine Line(string key, double offset) => new(key, offset, curve.OffsetLength(offset));
    }

    /// <summary>Both pegs on a line along the plan's bearing, clear of the outermost line on its left side, where the centre is seen from them at a right angle.</summary>
    private static (PlanPoint A, PlanPoint B) Pegs(HouseGeometry geometry, double outermost)
    {
        var curve = geometry.Curve;
        var bearing = geometry.House.Plan.Bearing.Radians;
        var (sin, cos) = Math.SinCos(double.IsFinite(bearing) ? Math.IEEERemainder(bearing, 2 * Math.PI) : 0);
        var along = new PlanPoint(sin, cos);
        var left = new PlanPoint(-cos, sin);
        var reach = double.NegativeInfinity;
        foreach (var frame in curve.Samples)
        {
            reach = Math.Max(reach, left.Dot(frame.Offset(outermost) - curve.Centre));
        }

        var away = reach + Clear;
        return (curve.Centre + away * left - away * along, curve.Centre + away * left + away * along);
    }
}
