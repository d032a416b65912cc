using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>A seat cut level into a sloping pole over the whole width of a bond beam: deeper at the beam's outer edge than at its inner. Square to the pole, m.</summary>
/// <remarks>
/// The pole runs w/cos(psi) over a beam w wide, psi the angle in plan between pole and the wall's normal, and its underside rises by sin(beta) square to itself for each metre of that: depths at the two edges are c +/- w sin(beta)/(2 cos(psi)), c the depth at the beam's middle.
/// </remarks>
/// <param name="Outer">Depth at the outer edge.</param>
/// <param name="Inner">Depth at the inner edge; less than nothing where a cut so shallow does not reach it.</param>
/// <param name="Full">Depth at the outer edge of the shallowest cut that reaches the inner one.</param>
public sealed record LevelSeat(double Outer, double Inner, double Full)
{
    private const double LeastCosine = 0.2;

    /// <summary>The seat of a pole.</summary>
    /// <param name="geometry">For the wall's normal at its landing.</param>
    /// <param name="pole">Which pole.</param>
    /// <param name="width">Of the bond beam, m.</param>
    /// <param name="depth">At the beam's middle, m.</param>
    public static LevelSeat Of(HouseGeometry geometry, PoleGeometry pole, double width, double depth)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(pole);
        var landing = geometry.Landings.MinBy(l => (l.Point - pole.Foot).Norm);
        var cosine = landing is null ? 1 : Math.Max(LeastCosine, Math.Abs(geometry.Curve.Normal(landing.Station).Dot(pole.Along)));
        var rise = width / cosine * pole.Slope * pole.PitchCosine;
        return new LevelSeat(depth + rise / 2, depth - rise / 2, rise);
    }
}
