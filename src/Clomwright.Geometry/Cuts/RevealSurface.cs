using System.Runtime.InteropServices;
using Clomwright.Building;
using Clomwright.Numerics;

namespace Clomwright.Geometry.Cuts;

/// <summary>The surface of a hole between a face of the wall and a plane square to the shaft: what plaster covers from the face to the frame, or in a niche from the face to its back.</summary>
/// <remarks>
/// The jamb of share s is ruled by level lines of length d(s, z) sqrt(1 + (s k)^2), d from the face to the plane, k the splay's slope. Over a curved head the
/// surface (u, w, z) = (s(z) h(w), w, z) has the element sqrt(1 + (s k)^2 + (s'(z) h)^2) dw dz. Integrated by the outline's own rules, over an arc by angle.
/// </remarks>
internal sealed class RevealSurface
{
    private readonly PlanCurve curve;
    private readonly Shaft shaft;
    private readonly Outline outline;
    private readonly double halfWidth;
    private readonly double slope;
    private readonly double plane;
    private readonly int sense;
    private readonly Func<double, double> offset;
    private readonly double lean;
    private readonly double bottom;
    private readonly double top;

    /// <param name="wall">The wall's faces.</param>
    /// <param name="curve">The plan curve.</param>
    /// <param name="shaft">The hole's axes and splays.</param>
    /// <param name="outline">Seen square on.</param>
    /// <param name="halfWidth">At the plane, m.</param>
    /// <param name="slope">Widening of each jamb from the plane to the face, m per m.</param>
    /// <param name="plane">w of the plane, m.</param>
    /// <param name="face">Which face it runs to.</param>
    public RevealSurface(WallSolid wall, PlanCurve curve, Shaft shaft, Outline outline, double halfWidth, double slope, double plane, Face face)
    {
        (this.curve, this.shaft, this.outline, this.halfWidth, this.slope, this.plane) = (curve, shaft, outline, halfWidth, slope, plane);
        sense = face == Face.Inside ? 1 : -1;
        offset = face == Face.Inside ? wall.InsideOffset : wall.OutsideOffset;
        lean = face == Face.Inside ? wall.InsideTaper.RiseOverRun : -wall.OutsideTaper.RiseOverRun;
        (bottom, top) = (Math.Max(outline.Sill, wall.Base.Metres), Math.Min(outline.Head, wall.Top.Metres));
    }

    /// <summary>Both straight jambs, m2.</summary>
    public double Jambs() => Between(bottom, Math.Min(top, outline.Springing));

    /// <summary>The arc over them, or the whole of a round hole; a flat soffit where the head is straight, m2. None where the head lies above the wall.</summary>
    public double Head() => !outline.IsStraight ? Between(Math.Max(bottom, outline.Springing), top)
        : outline.Head <= top + 1e-12 && top > bottom ? Flat(outline.Head) : 0;

    /// <summary>The level sill, m2; none under a round hole, nor where it lies in the stem.</summary>
    public double Sill() => !outline.IsRound && outline.Sill >= bottom - 1e-12 && top > bottom ? Flat(outline.Sill) : 0;

    /// <summary>What the hole takes from the face, m2.</summary>
    public double Mouth() => top > bottom ? Math.Sqrt(1 + lean * lean) * Finite(outline.Integrate((share, z) => shaft.ArcAt(share, offset(z)), bottom, top, Kinks())) : 0;

    /// <summary>The flat plane itself, m2.</summary>
    public double Back() => top > bottom ? outline.Integrate((share, _) => 2 * share * halfWidth, bottom, top, []) : 0;

    private double Between(double from, double to) =>
        to > from ? Finite(outline.Integrate((share, z) => Strip(-share, z) + Strip(share, z), from, to, Kinks())) : 0;

    /// <summary>Heights at which the depth of the jambs is not smooth.</summary>
    private Span<double> Kinks()
    {
        var kinks = new List<double>();
        if (lean != 0)
        {
            shaft.AddKinks(1, kinks);
            for (var i = 0; i < kinks.Count; i++)
            {
                kinks[i] = (kinks[i] - offset(0)) / lean;
            }
        }

        return CollectionsMarshal.AsSpan(kinks);
    }

    /// <summary>Width of the surface for each metre of height at one side.</summary>
    private double Strip(double share, double height)
    {
        var depth = Depth(share, offset(height));
        var (along, up) = (share * slope, outline.ShareSlopeAt(height));
        double Element(double x)
        {
            var rise = up * (halfWidth + slope * x);
            return Math.Sqrt(1 + along * along + rise * rise);
        }

        return slope == 0 || up == 0 ? depth * Element(0) : GaussRule.Eight.Integrate(Element, 0, depth);
    }

    /// <summary>From the face to the plane along the shaft, at the jamb line of a share.</summary>
    private double Depth(double share, double at) =>
        shaft.Meet(share, at) is { } frame ? Math.Max(0, sense * (plane - shaft.Local(frame.Offset(at)).W)) : double.NaN;

    /// <summary>A level surface across the hole at its full width.</summary>
    private double Flat(double height)
    {
        var at = offset(height);
        var (before, after) = (halfWidth + slope * Depth(-1, at), halfWidth + slope * Depth(1, at));
        var reach = Math.Max(before, after);
        if (!(reach > 0))
        {
            return 0;
        }

        var straight = new Shaft(curve, shaft.Middle.Station, reach, 0, 0, 0, 0);
        var cuts = new List<double> { -halfWidth, halfWidth };
        straight.AddBreaks(at, cuts);
        return Finite(GaussRule.Eight.Integrate(u => Math.Max(0, FaceAt(straight, u, reach, at) - Widened(u)), -before, after, CollectionsMarshal.AsSpan(cuts)));
    }

    private double FaceAt(Shaft straight, double u, double reach, double at) =>
        straight.Meet(u / reach, at) is { } frame ? sense * (plane - straight.Local(frame.Offset(at)).W) : double.NaN;

    /// <summary>How far from the plane the jamb has reached this distance along u.</summary>
    private double Widened(double u) => slope > 0 ? Math.Max(0, (Math.Abs(u) - halfWidth) / slope) : 0;

    /// <summary>Where a face is not met, an error told elsewhere, nothing is counted.</summary>
    private static double Finite(double area) => double.IsFinite(area) ? area : 0;
}
