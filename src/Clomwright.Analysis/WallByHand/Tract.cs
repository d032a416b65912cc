using Clomwright.Geometry;

namespace Clomwright.Analysis.WallByHand;

/// <summary>A stretch of the whole wall, nothing open in it.</summary>
/// <param name="Wall">The wall.</param>
/// <param name="Width">On the inside face at the base, m.</param>
/// <param name="Turning">How far the wall turns along it, radians.</param>
internal readonly record struct Tract(WallSolid Wall, double Width, double Turning)
{
    public static Tract Of(HouseGeometry geometry, Span span) => new(
        geometry.Wall, span.Width, span.Width >= geometry.Curve.Length * (1 - 1e-12) ? 2 * Math.PI : geometry.Curve.Turning(span.From, span.To));

    /// <summary>Arc at an offset from the inside curve, m.</summary>
    public double Arc(double offset) => Width + offset * Turning;

    /// <summary>Cob above a height, m3: the level area is quadratic in height, so Simpson's rule is exact.</summary>
    public double Above(double height)
    {
        var (low, top) = (Math.Clamp(height, Wall.Base.Metres, Wall.Top.Metres), Wall.Top.Metres);
        return (top - low) / 6 * (Area(low) + 4 * Area((low + top) / 2) + Area(top));
    }

    private double Area(double z)
    {
        var (inside, outside) = (Wall.InsideOffset(z), Wall.OutsideOffset(z));
        return Width * (outside - inside) + Turning * (outside * outside - inside * inside) / 2;
    }
}
