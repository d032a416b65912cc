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
        return Enumerable.Range(0, Count).Select(i =>
        {
            var normal = geometry.Curve.Normal((i + 0.5) * length / Count);
            var azimuth = Math.Atan2(normal.East, normal.North);
            return new DryingBay($"quarter {i + 1}", i * length / Count, (i + 1) * length / Count, azimuth < 0 ? azimuth + 2 * Math.PI : azimuth);
        }).ToSequence();
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
                solid[Count * n / Samples] += geometry.Openings.Any(o => o.Sill < height && height < o.Head && Covers(o.Inside, station, geometry.Curve.Length)) ? 0 : 1;
            }

            var all = solid.Sum();
            return solid.Select(s => all > 0 ? lift.LaidVolume * s / all : 0).ToSequence();
        }).ToSequence();
    }

    /// <summary>The quarter of a station.</summary>
    public static int At(HouseGeometry geometry, double station)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var turn = station / geometry.Curve.Length;
        return Math.Clamp((int)(Count * (turn - Math.Floor(turn))), 0, Count - 1);
    }

    private static bool Covers(Span span, double station, double length)
    {
        var from = span.From - Math.Floor((span.From - station) / length + 1) * length;
        return station - from <= span.To - span.From || station + length - from <= span.To - span.From;
    }
}
