using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Drying;

/// <summary>Cuts the ring into stretches that face one way.</summary>
internal static class Bays
{
    private const double TurnMax = Math.PI / 3;
    private const int WithoutOpenings = 8;

    public static Sequence<DryingBay> Of(HouseGeometry geometry)
    {
        var curve = geometry.Curve;
        IEnumerable<(string Address, double From, double To)> spans = geometry.Piers.Count > 0
            ? geometry.Piers.Where(p => p.Span.To > p.Span.From).Select(p => (p.Address, p.Span.From, p.Span.To))
            : Enumerable.Range(0, WithoutOpenings).Select(i => ($"arc {i + 1}", i * curve.Length / WithoutOpenings, (i + 1) * curve.Length / WithoutOpenings));
        return spans.SelectMany(s =>
        {
            var pieces = Math.Clamp((int)Math.Ceiling(Math.Abs(curve.Turning(s.From, s.To)) / TurnMax), 1, WithoutOpenings);
            return Enumerable.Range(0, pieces).Select(i =>
            {
                var (from, to) = (s.From + i * (s.To - s.From) / pieces, s.From + (i + 1) * (s.To - s.From) / pieces);
                return Between(curve, i == 0 ? s.Address : $"{s.Address} #{i + 1}", from, to);
            });
        }).ToSequence();
    }

    /// <summary>A stretch, which faces the way its middle does.</summary>
    public static DryingBay Between(PlanCurve curve, string address, double from, double to)
    {
        var normal = curve.Normal((from + to) / 2);
        var azimuth = Math.Atan2(normal.East, normal.North);
        return new(address, from, to, azimuth < 0 ? azimuth + 2 * Math.PI : azimuth);
    }
}
