using System.Runtime.InteropServices;
using Clomwright.Numerics;

namespace Clomwright.Geometry.Cuts;

/// <summary>A hole right through the wall: an outline carried along a shaft. Volumes are exact integrals between the two curved, leaning faces.</summary>
/// <remarks>
/// At a height z the hole takes from the ring the area int a(share(z), d) dd over the offsets between the faces, where a is the arc
/// between the two jamb lines on the curve offset by d; the volume is the integral of that area over height.
/// </remarks>
internal sealed class Hole
{
    private readonly ArcTable widest;

    public Hole(Shaft shaft, Outline outline, double offsetLeast, double offsetMost)
    {
        Shaft = shaft;
        Outline = outline;
        var kinks = new List<double>();
        shaft.AddKinks(1, kinks);
        widest = new ArcTable(d => shaft.ArcAt(1, d), offsetLeast, offsetMost, kinks);
        Fits = !double.IsNaN(shaft.ArcAt(1, offsetLeast)) && !double.IsNaN(shaft.ArcAt(1, offsetMost));
    }

    public Shaft Shaft { get; }

    public Outline Outline { get; }

    /// <summary>Whether both jambs meet both faces.</summary>
    public bool Fits { get; }

    /// <summary>Cob displaced within a band, m3.</summary>
    public double Volume(Band band)
    {
        if (band.Top <= Outline.Sill || band.Bottom >= Outline.Head)
        {
            return 0;
        }

        var edges = widest.Edges;
        Span<double> cuts = edges.Length < 32 ? stackalloc double[2 * edges.Length] : new double[2 * edges.Length];
        for (var i = 0; i < edges.Length; i++)
        {
            cuts[2 * i] = band.HeightOfInside(edges[i]);
            cuts[2 * i + 1] = band.HeightOfOutside(edges[i]);
        }

        return Outline.Integrate((share, z) => Area(share, band.InsideAt(z), band.OutsideAt(z)), band.Bottom, band.Top, cuts);
    }

    /// <summary>Area that it takes from the inside face within a band, m2.</summary>
    public double InsideFaceArea(Band band) => FaceArea(band, band.InsideAt, band.HeightOfInside, band.InsideTop - band.InsideBottom);

    /// <summary>Area that it takes from the outside face within a band, m2.</summary>
    public double OutsideFaceArea(Band band) => FaceArea(band, band.OutsideAt, band.HeightOfOutside, band.OutsideTop - band.OutsideBottom);

    private double FaceArea(Band band, Func<double, double> offset, Func<double, double> heightOf, double lean)
    {
        if (band.Height <= 0)
        {
            return 0;
        }

        var cuts = new double[widest.Edges.Length];
        for (var i = 0; i < cuts.Length; i++)
        {
            cuts[i] = heightOf(widest.Edges[i]);
        }

        var level = Outline.Integrate((share, z) => share == 1 ? widest.At(offset(z)) : Shaft.ArcAt(share, offset(z)), band.Bottom, band.Top, cuts);
        return Math.Sqrt(1 + lean * lean / (band.Height * band.Height)) * level;
    }

    private double Area(double share, double inside, double outside)
    {
        if (share == 1)
        {
            return GaussRule.Eight.Integrate(widest.At, inside, outside, widest.Edges);
        }

        var kinks = new List<double>();
        Shaft.AddKinks(share, kinks);
        return GaussRule.Eight.Integrate(d => Shaft.ArcAt(share, d), inside, outside, CollectionsMarshal.AsSpan(kinks));
    }
}
