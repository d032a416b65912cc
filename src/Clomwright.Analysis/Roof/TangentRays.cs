using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>How far plate and eave lie along the tangents of the ring circle, for tangents touching it anywhere.</summary>
/// <remarks>
/// Every point of the roof outside the ring lies on exactly one tangent that leads to it the way the frame turns; at distance u from its touching point the
/// tangents of an angle d(tau) share the plan area u du d(tau). The curves are sampled and joined by straight lines; a circle is exact.
/// </remarks>
internal sealed class TangentRays
{
    private const int Samples = 360;

    private readonly (double Touch, double Distance)[] plate;
    private readonly (double Touch, double Distance)[] eave;

    private TangentRays((double, double)[] plate, (double, double)[] eave)
    {
        this.plate = plate;
        this.eave = eave;
    }

    /// <summary>The rays of a plan; null when part of the plate lies inside the ring.</summary>
    public static TangentRays? Of(PlanCurve curve, PlanPoint centre, double ringRadius, double turn, double plateOffset, double eaveOffset) =>
        Table(curve, centre, ringRadius, turn, plateOffset) is { } plate && Table(curve, centre, ringRadius, turn, eaveOffset) is { } eave ? new(plate, eave) : null;

    /// <summary>Distance from a touching point (bearing, radians) to the plate line, m.</summary>
    public double ToPlate(double touch) => At(plate, touch);

    /// <summary>Distance from a touching point to the eave, m.</summary>
    public double ToEave(double touch) => At(eave, touch);

    private static (double, double)[]? Table(PlanCurve curve, PlanPoint centre, double ringRadius, double turn, double offset)
    {
        var table = new (double Touch, double Distance)[Samples];
        for (var k = 0; k < Samples; k++)
        {
            var v = curve.At(k * curve.Length / Samples, offset) - centre;
            var radius = v.Norm;
            if (!(radius > ringRadius))
            {
                return null;
            }

            table[k] = (Wrap(Math.Atan2(v.East, v.North) + turn * Math.Acos(ringRadius / radius)), Math.Sqrt(radius * radius - ringRadius * ringRadius));
        }

        Array.Sort(table, (a, b) => a.Touch.CompareTo(b.Touch));
        return table;
    }

    private static double At((double Touch, double Distance)[] table, double touch)
    {
        var t = Wrap(touch);
        int low = 0, high = table.Length;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (table[middle].Touch <= t)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        var before = table[(low + table.Length - 1) % table.Length];
        var after = table[low % table.Length];
        var span = Wrap(after.Touch - before.Touch);
        return span == 0 ? before.Distance : before.Distance + (after.Distance - before.Distance) * Wrap(t - before.Touch) / span;
    }

    private static double Wrap(double angle) => angle - 2 * Math.PI * Math.Floor(angle / (2 * Math.PI));
}
