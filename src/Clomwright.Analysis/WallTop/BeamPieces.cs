using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>Cuts the bond beam into straight pieces that follow the curve.</summary>
internal static class BeamPieces
{
    private const double LongestPiece = 2.4;
    private const double Share = 0.2;

    /// <summary>As few equal pieces (by arc) as keep the curve within a fifth of the beam's width of each piece's line, none over 8 ft.</summary>
    public static Sequence<BeamPiece> Of(HouseGeometry geometry)
    {
        if (geometry.House.BondBeam is not { } beam)
        {
            return [];
        }

        var top = geometry.Wall.Top.Metres;
        var offset = (geometry.Wall.InsideOffset(top) + geometry.Wall.OutsideOffset(top)) / 2 + beam.Offset.Metres;
        var curve = geometry.Curve;
        var arc = curve.OffsetLength(offset);
        for (var n = Math.Max(3, (int)Math.Ceiling(arc / LongestPiece)); n <= 400; n++)
        {
            var pieces = Cut(curve, offset, n);
            if (pieces.All(p => Math.Abs(p.Rise) <= Share * beam.Width.Metres))
            {
                return pieces.ToSequence();
            }
        }

        return [];
    }

    private static BeamPiece[] Cut(PlanCurve curve, double offset, int count)
    {
        // Corners at equal steps of the inside curve's own arc stand close enough to equal steps of the beam's.
        double Station(int k) => curve.Length * k / count;
        var corners = Enumerable.Range(0, count).Select(k => curve.At(Station(k), offset)).ToArray();
        return [.. Enumerable.Range(0, count).Select(k =>
        {
            PlanPoint a = corners[k], b = corners[(k + 1) % count], c = corners[(k + 2) % count];
            PlanPoint along = b - a, next = c - b;
            var middle = curve.At((Station(k) + Station(k + 1)) / 2, offset);
            var rise = along.Cross(middle - a) / along.Norm;
            var turn = -Math.Atan2(along.Cross(next), along.Dot(next));
            return new BeamPiece(k + 1, curve.OffsetArc(0, Station(k), offset), curve.OffsetArc(0, Station(k + 1), offset), along.Norm, turn / 2, rise);
        })];
    }
}
