namespace Clomwright.Geometry.Curves;

/// <summary>A curve at one station.</summary>
/// <param name="Station">The station asked for, not wrapped.</param>
/// <param name="Point">In plan.</param>
/// <param name="Tangent">Unit, walking clockwise.</param>
/// <param name="Curvature">1/m, positive where the curve bulges outward.</param>
/// <param name="Heading">Angle that the tangent has turned since the zero mark, radians; grows by 2 pi a lap.</param>
internal readonly record struct CurveFrame(double Station, PlanPoint Point, PlanPoint Tangent, double Curvature, double Heading)
{
    public PlanPoint Normal => new(-Tangent.North, Tangent.East);

    public PlanPoint Offset(double distance) => Point + distance * Normal;

    /// <summary>Arc from here to a later frame, on the curve offset outward by a distance.</summary>
    public double ArcTo(in CurveFrame later, double offset) => later.Station - Station + offset * (later.Heading - Heading);
}
