using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>A rotation of the whole ring of landings.</summary>
/// <param name="Rotation">Clockwise, radians; the smallest of those that are as good.</param>
/// <param name="FirstBearing">The roof's new first bearing.</param>
/// <param name="Before">Least distance between a landing and the edge of an opening before, m along the inside face at the wall base; 0 when one is over an opening.</param>
/// <param name="After">The same distance after; no rotation makes it larger.</param>
/// <param name="OverBefore">How many landings are over an opening before.</param>
/// <param name="OverAfter">How many after; no rotation leaves fewer.</param>
public sealed record RoofTurn(double Rotation, Angle FirstBearing, double Before, double After, int OverBefore, int OverAfter);
