using Clomwright.Building;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>A seat cut level into a sloping pole over a bond beam: deeper at the beam's lower edge than at its upper, which a shallow cut does not reach. Depths square to the pole, m.</summary>
/// <remarks>
/// The pole runs w/cos(psi) over a beam w wide, psi the angle in plan between pole and the wall's normal, and its underside rises by sin(beta) square to itself for each metre of that: depths at the two edges are c +/- w sin(beta)/(2 cos(psi)), c the depth at the beam's middle. The level plane cuts a
/// round of diameter d in part of an ellipse: seen along the pole that is the circle's segment between both depths, so the pole lies on (S(outer) - S(inner))/sin(beta), S(c) the segment c deep.
/// </remarks>
/// <param name="Depth">At the beam's middle.</param>
/// <param name="Width">Of the bond beam, m.</param>
/// <param name="Pitch">beta: slope of the pole, radians.</param>
/// <param name="Skew">psi: in plan between pole and the wall's normal, radians.</param>
public sealed record LevelSeat(double Depth, double Width, double Pitch, double Skew)
{
    private const double LeastCosine = 0.2;

    /// <summary>How deep the flat is cut where nobody says: 1 in.</summary>
    public const double Usual = 0.0254;

    /// <summary>How much of a pole counts as cut away at most: a seat that cuts it through leaves next to nothing, and what is asked of that falls short.</summary>
    private const double MostCut = 0.95;

    /// <summary>The seat of a pole on the bond beam; null without one.</summary>
    /// <param name="geometry">For the wall's normal where the pole lands, the beam, and how seats are made.</param>
    /// <param name="landing">Where it sits, in plan.</param>
    /// <param name="pole">Which pole.</param>
    public static LevelSeat? Of(HouseGeometry geometry, PlanPoint landing, PoleGeometry pole)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(pole);
        if (geometry.House.BondBeam is not { } beam)
        {
            return null;
        }

        var nearest = geometry.Landings.MinBy(l => (l.Point - landing).Norm);
        var cosine = nearest is null ? 1 : Math.Clamp(Math.Abs(geometry.Curve.Normal(nearest.Station).Dot(pole.Along)), LeastCosine, 1);
        return new LevelSeat(DepthOf(geometry.House.Roof?.Seat), beam.Width.Metres, pole.Pitch, Math.Acos(cosine));
    }

    /// <summary>A pole with the seat of its foot.</summary>
    internal static PoleGeometry On(HouseGeometry geometry, PoleGeometry pole) => pole with { Seat = Of(geometry, pole.Foot, pole) };

    /// <summary>How deep the flat of a seat is cut at the beam's middle, m.</summary>
    public static double DepthOf(SeatMade? seat) => seat?.Flat?.Metres ?? Usual;

    /// <summary>Over the beam along the pole, in plan.</summary>
    public double Run => Width / Math.Cos(Skew);

    /// <summary>Depth at the outer edge of the shallowest cut that reaches the inner one.</summary>
    public double Full => Run * Math.Sin(Pitch);

    /// <summary>Depth at the beam's lower edge: the outer one under an eave.</summary>
    public double Outer => Depth + Full / 2;

    /// <summary>Depth at its other edge; less than nothing where a cut so shallow does not reach it.</summary>
    public double Inner => Depth - Full / 2;

    /// <summary>Share of the beam's width that the cut reaches.</summary>
    public double Reach => Inner >= 0 ? 1 : Outer / Full;

    /// <summary>From the beam's middle to the middle of what the pole lies on, toward its lower end.</summary>
    public double OffMiddle => Width * (1 - Reach) / 2;

    /// <summary>Of a pole of a diameter, what counts as cut away where the seat is so deep.</summary>
    public static double Counted(double diameter, double depth) => Math.Min(depth, MostCut * diameter);

    /// <summary>What a pole of a diameter lies on, m2.</summary>
    public double Area(double diameter) => IsLevel
        ? SeatCheck.Flat(diameter, Depth) * Run
        : (Segment(diameter, Outer) - Segment(diameter, Inner)) / Math.Sin(Pitch);

    /// <summary>Whether the pole lies so level that the seat is as deep at both edges.</summary>
    public bool IsLevel => Full < 1e-6;

    /// <summary>Of a round, the segment so deep, m2.</summary>
    private static double Segment(double diameter, double depth)
    {
        double r = diameter / 2, c = Math.Clamp(depth, 0, diameter);
        return r * r * Math.Acos(1 - c / r) - (r - c) * Math.Sqrt(c * (diameter - c));
    }
}
