namespace Clomwright.Geometry;

/// <summary>A level slice of a ring whose two faces are offsets of the plan curve that change evenly with height. Heights and offsets in m.</summary>
internal readonly record struct Band(double Bottom, double Top, double InsideBottom, double InsideTop, double OutsideBottom, double OutsideTop)
{
    public double Height => Top - Bottom;

    public double InsideAt(double height) => Between(InsideBottom, InsideTop, height);

    public double OutsideAt(double height) => Between(OutsideBottom, OutsideTop, height);

    /// <summary>The part between two heights.</summary>
    public Band Within(double bottom, double top)
    {
        var (low, high) = (Math.Max(Bottom, bottom), Math.Min(Top, top));
        return high > low ? new Band(low, high, InsideAt(low), InsideAt(high), OutsideAt(low), OutsideAt(high)) : this with { Top = Bottom };
    }

    /// <summary>Volume round the whole ring: the area between the offsets is quadratic in height, so Simpson's rule is exact.</summary>
    public double Volume(PlanCurve curve)
    {
        var middle = (Bottom + Top) / 2;
        return Height / 6 * (Area(curve, Bottom) + 4 * Area(curve, middle) + Area(curve, Top));
    }

    /// <summary>Height at which the inside face has an offset; NaN for a plumb face.</summary>
    public double HeightOfInside(double offset) => Bottom + (offset - InsideBottom) / (InsideTop - InsideBottom) * Height;

    /// <summary>Height at which the outside face has an offset; NaN for a plumb face.</summary>
    public double HeightOfOutside(double offset) => Bottom + (offset - OutsideBottom) / (OutsideTop - OutsideBottom) * Height;

    private double Area(PlanCurve curve, double height)
    {
        var (inside, outside) = (InsideAt(height), OutsideAt(height));
        return (outside - inside) * (curve.Length + Math.PI * (outside + inside));
    }

    private double Between(double atBottom, double atTop, double height) =>
        Height > 0 ? atBottom + (atTop - atBottom) * (height - Bottom) / Height : atBottom;
}
