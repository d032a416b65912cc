using Clomwright.Building;
using Clomwright.Geometry;

namespace Clomwright.Web.Scenes;

/// <summary>One face of the wall laid flat, cut at the zero mark: from inside clockwise runs to the right, from outside to the left.</summary>
internal sealed class WallStrip
{
    private readonly PlanCurve curve;
    private readonly Face face;
    private readonly double offset;

    public WallStrip(HouseGeometry geometry, Face face)
    {
        (curve, this.face) = (geometry.Curve, face);
        offset = face == Face.Inside ? 0 : geometry.Wall.OutsideOffset(geometry.Wall.Base.Metres);
        FaceLength = curve.OffsetLength(offset);
    }

    public double FaceLength { get; }

    public double Arc(double station)
    {
        var turns = Math.Floor(station / curve.Length);
        return turns * FaceLength + curve.OffsetArc(0, station - turns * curve.Length, offset);
    }

    public double X(double arc) => face == Face.Inside ? arc : FaceLength - arc;

    public IEnumerable<Span> Parts(Span stations)
    {
        var (from, to) = (Arc(stations.From), Arc(stations.To));
        for (var turn = Math.Ceiling(-to / FaceLength - 1e-9); from + turn * FaceLength < FaceLength - 1e-9; turn++)
        {
            var (a, b) = (Math.Max(0, from + turn * FaceLength), Math.Min(FaceLength, to + turn * FaceLength));
            if (b - a > 1e-9)
            {
                yield return new Span(a, b);
            }
        }
    }

    public Span OnFace(OpeningPlace opening) => face == Face.Inside ? opening.Inside : opening.Outside;
}
