using Clomwright.Analysis.Drying;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Days;

/// <summary>Cuts the ring into quarters that a crew goes round, each facing its own way.</summary>
public static class Sectors
{
    private const int Count = 4;
    private const int Samples = 180;

    /// <summary>The quarters, from the zero mark.</summary>
    public static Sequence<DryingBay> Of(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var length = geometry.Curve.Length;
        return Enumerable.Range(0, Count).Select(i => Bays.Between(geometry.Curve, $"quarter {i + 1}", i * length / Count, (i + 1) * length / Count)).ToSequence();
    }

    /// <summary>The cob of each lift in each quarter, m3: the lift's, shared by how much of its arc at mid-height is no opening.</summary>
    public static Sequence<Sequence<double>> Cob(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        return geometry.Lifts.Select(lift =>
        {
            var height = (lift.Bottom.Metres + lift.Top.Metres) / 2;
            var solid = new double[Count];
            for (var n = 0; n < Samples; n++)
            {
                var station = (n + 0.5) * geometry.Curve.Length / Samples;
                solid[Count * n / Samples] += geometry.Openings.Any(o => o.Sill < height && height < o.Head && geometry.Curve.Wrap(station - o.Inside.From) <= o.Inside.Width) ? 0 : 1;
            }

            var all = solid.Sum();
            return solid.Select(s => all > 0 ? lift.LaidVolume * s / all : 0).ToSequence();
        }).ToSequence();
    }

    /// <summary>The quarter of a station.</summary>
    public static int At(HouseGeometry geometry, double station)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        return Math.Clamp((int)(Count * geometry.Curve.Wrap(station) / geometry.Curve.Length), 0, Count - 1);
    }
}
