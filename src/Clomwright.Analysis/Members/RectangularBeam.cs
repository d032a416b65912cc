namespace Clomwright.Analysis.Members;

/// <summary>A rectangular section of one or more pieces side by side. SI.</summary>
/// <param name="Width">All pieces together, m.</param>
/// <param name="Depth">Upright, m.</param>
public readonly record struct RectangularBeam(double Width, double Depth)
{
    /// <summary>m2.</summary>
    public double Area => Width * Depth;

    /// <summary>m3.</summary>
    public double SectionModulus => Width * Depth * Depth / 6;

    /// <summary>m4.</summary>
    public double SecondMoment => Width * Depth * Depth * Depth / 12;

    /// <summary>f_b of a moment, Pa.</summary>
    public double Bending(double moment) => moment / SectionModulus;

    /// <summary>f_v = 3 V/(2 A), Pa.</summary>
    public double Shear(double force) => 1.5 * force / Area;

    /// <summary>5 w L^4/(384 E I): sag at the middle of a simple span under an even load, m.</summary>
    public double Sag(double perMetre, double span, double modulus) => 5 * perMetre * Math.Pow(span, 4) / (384 * modulus * SecondMoment);
}
