using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>What lies between two piers: one opening, or several one above another.</summary>
/// <param name="Width">Between the jambs, m along the inside face at the base.</param>
/// <param name="Openings">In it.</param>
/// <param name="Bearing">How far the longest header rests on each pier, m; nothing without one.</param>
internal sealed record Gap(double Width, OpeningPlace[] Openings, double Bearing)
{
    private Func<double, double> Gross { get; init; } = _ => 0;

    private double Base { get; init; }

    /// <summary>Nothing open.</summary>
    public static Gap None { get; } = new(0, [], 0);

    /// <summary>The lowest sill, m; without an opening there is none.</summary>
    public double Sill => Openings.Length == 0 ? double.PositiveInfinity : Openings.Min(o => o.Sill);

    public static Gap Of(HouseGeometry geometry, double from, double width)
    {
        OpeningPlace[] inside = [.. geometry.Openings.Where(o => geometry.Curve.Wrap(o.Station - from) <= width)];
        return new Gap(width, inside, inside.Max(o => (double?)o.Opening.Header?.Bearing.Metres) ?? 0) { Gross = Tract.Of(geometry, new Span(from, from + width)).Above, Base = geometry.Wall.Base.Metres };
    }

    /// <summary>How far the load of a pier has spread past its jamb at a height: 1 out for 2 down below a sill, or up above a head, never past the middle, m.</summary>
    public double Grown(double height) => Openings.Length == 0 ? Width / 2 : Math.Min(Width / 2, Openings.Min(o => Math.Max(0, Math.Max(o.Sill - height, height - o.Head)) / 2));

    /// <summary>Cob above a height, holes taken out, each evenly over its own height, m3.</summary>
    public double CobAbove(double height)
    {
        var holes = 0.0;
        foreach (var o in Openings)
        {
            var from = From(o);
            holes += o.Volume * Math.Clamp((o.Head - Math.Max(height, from)) / Math.Max(o.Head - from, 1e-9), 0, 1);
        }

        return Math.Max(0, Gross(height) - holes);
    }

    /// <summary>Where the hole in the cob begins.</summary>
    private double From(OpeningPlace opening) => Math.Max(opening.Sill, Base);

    /// <summary>Of that, what stands under the lowest sill, m3.</summary>
    public double CobUnder(double height) => Openings.Length == 0 || height >= Sill ? 0 : Math.Max(0, Gross(height) - Gross(Sill));
}
