using Clomwright.Geometry.Curves;

namespace Clomwright.Geometry.Cuts;

/// <summary>
/// A right prism through the wall along the outward normal at a station, with splays. Local axes: u along the tangent (clockwise), w along
/// the outward normal, both from the middle on the inside curve.
/// </summary>
/// <remarks>
/// Half width at depth w: h + tan(inside splay) (w_i - w) on the room side of the frame, h between w_i and w_o, h + tan(outside splay)
/// (w - w_o) on the weather side. An arched or round outline is stretched along u with the half width; heights stay. A jamb line is
/// u = share * (half width at w), share -1 to 1.
/// </remarks>
internal sealed class Shaft
{
    private const double LeastSlant = 0.02;
    private readonly PlanCurve curve;
    private readonly double halfWidth;
    private readonly double insideSlope;
    private readonly double outsideSlope;
    private readonly double frameInside;
    private readonly double frameOutside;
    private readonly CurveFrame[] before;
    private readonly CurveFrame[] after;

    public Shaft(PlanCurve curve, double station, double halfWidth, double insideSlope, double outsideSlope, double frameInside, double frameOutside)
    {
        this.curve = curve;
        this.halfWidth = halfWidth;
        this.insideSlope = insideSlope;
        this.outsideSlope = outsideSlope;
        this.frameInside = frameInside;
        this.frameOutside = frameOutside;
        Middle = curve.FrameAt(station);
        before = Walk(-1);
        after = Walk(1);
    }

    /// <summary>Where it stands on the inside curve.</summary>
    public CurveFrame Middle { get; }

    /// <summary>Where the frame's inside face stands, w in m; without a frame the line at which the reveals begin.</summary>
    public double FrameInside => frameInside;

    /// <summary>Where the frame's outside face stands, w in m.</summary>
    public double FrameOutside => frameOutside;

    /// <summary>Local coordinates of a point in plan.</summary>
    public (double U, double W) Local(PlanPoint point)
    {
        var away = point - Middle.Point;
        return (away.Dot(Middle.Tangent), away.Dot(Middle.Normal));
    }

    /// <summary>A point in plan from local coordinates.</summary>
    public PlanPoint Plan(double u, double w) => Middle.Point + u * Middle.Tangent + w * Middle.Normal;

    public double HalfWidthAt(double w) =>
        halfWidth + insideSlope * Math.Max(0, frameInside - w) + outsideSlope * Math.Max(0, w - frameOutside);

    /// <summary>Where the jamb line of a share meets the curve offset outward by a distance: the frame at the foot of the normal, or null where it never does.</summary>
    public CurveFrame? Meet(double share, double offset)
    {
        if (share == 0)
        {
            return Middle;
        }

        // The miss is measured so that it is negative at the middle and grows toward the jamb.
        var side = Math.Sign(share);
        var walk = side > 0 ? after : before;
        var reached = Array.FindIndex(walk, frame => Miss(frame).Value >= 0);
        if (reached < 0)
        {
            return null;
        }

        double low = reached == 0 ? Middle.Station : walk[reached - 1].Station, high = walk[reached].Station;
        var station = Middle.Station + share * HalfWidthAt(offset) / Math.Max(0.2, 1 + offset * Middle.Curvature);
        for (var round = 0; round < 80; round++)
        {
            if (!((station - low) * side >= 0 && (high - station) * side >= 0))
            {
                station = (low + high) / 2;
            }

            var frame = curve.FrameAt(station);
            var (value, slope) = Miss(frame);
            if (value > 0)
            {
                high = station;
            }
            else
            {
                low = station;
            }

            var step = -value / slope;
            if (Math.Abs(step) <= 1e-9 * halfWidth)
            {
                // The error left after one more Newton step is of the order of the square of this one.
                return curve.FrameAt(station + step);
            }

            station += step;
        }

        return curve.FrameAt(station);

        (double Value, double Slope) Miss(in CurveFrame frame)
        {
            var (u, w) = Local(frame.Offset(offset));
            var widening = w < frameInside ? -insideSlope : w > frameOutside ? outsideSlope : 0;
            var stretch = 1 + offset * frame.Curvature;
            var value = u - share * HalfWidthAt(w);
            var slope = stretch * (frame.Tangent.Dot(Middle.Tangent) - share * widening * frame.Tangent.Dot(Middle.Normal));
            return (side * value, side * slope);
        }
    }

    /// <summary>Arc from jamb to jamb on the curve offset outward by a distance; NaN where a jamb misses it.</summary>
    public double ArcAt(double share, double offset) =>
        Meet(-share, offset) is { } from && Meet(share, offset) is { } to ? from.ArcTo(to, offset) : double.NaN;

    /// <summary>The corners in plan of the jamb line of a share, from one offset to a larger one; empty where it misses either.</summary>
    public List<PlanPoint> JambLine(double share, double inside, double outside)
    {
        if (Meet(share, inside) is not { } near || Meet(share, outside) is not { } far)
        {
            return [];
        }

        var corners = new List<PlanPoint> { near.Offset(inside) };
        var (from, to) = (Local(corners[0]).W, Local(far.Offset(outside)).W);
        if (insideSlope != 0 && frameInside > from && frameInside < to)
        {
            corners.Add(Plan(share * halfWidth, frameInside));
        }

        if (outsideSlope != 0 && frameOutside > from && frameOutside < to)
        {
            corners.Add(Plan(share * halfWidth, frameOutside));
        }

        corners.Add(far.Offset(outside));
        return corners;
    }

    /// <summary>Offsets at which the arc from jamb to jamb is not smooth: where a jamb line passes the frame or the normal at a break of the curve.</summary>
    public void AddKinks(double share, List<double> offsets)
    {
        for (var side = -1; side <= 1; side += 2)
        {
            if (insideSlope != 0)
            {
                AddFrame(side * share, frameInside, offsets);
            }

            if (outsideSlope != 0)
            {
                AddFrame(side * share, frameOutside, offsets);
            }

            AddJambBreaks(side * share, offsets);
        }
    }

    /// <summary>Distances along u at which the face of an offset is not smooth.</summary>
    public void AddBreaks(double offset, List<double> along)
    {
        foreach (var place in curve.Breaks)
        {
            if (IsNear(place))
            {
                along.Add(Local(curve.At(place, offset)).U);
            }
        }
    }

    private void AddFrame(double share, double w, List<double> offsets)
    {
        var point = Plan(share * halfWidth, w);
        var foot = curve.FootOf(point, Middle.Station + share * halfWidth);
        if (!double.IsNaN(foot))
        {
            var frame = curve.FrameAt(foot);
            offsets.Add((point - frame.Point).Dot(frame.Normal));
        }
    }

    private void AddJambBreaks(double share, List<double> offsets)
    {
        foreach (var place in curve.Breaks)
        {
            if (!IsNear(place))
            {
                continue;
            }

            var frame = curve.FrameAt(place);
            var (u, w) = Local(frame.Point);
            var (du, dw) = (frame.Normal.Dot(Middle.Tangent), frame.Normal.Dot(Middle.Normal));
            offsets.Add((share * (halfWidth + insideSlope * (frameInside - w)) - u) / (du + share * insideSlope * dw));
            offsets.Add((share * halfWidth - u) / du);
            offsets.Add((share * (halfWidth + outsideSlope * (w - frameOutside)) - u) / (du - share * outsideSlope * dw));
        }
    }

    private bool IsNear(double place)
    {
        var lap = Math.Round((Middle.Station - place) / curve.Length) * curve.Length;
        return before.Length > 0 && after.Length > 0 && place + lap >= before[^1].Station && place + lap <= after[^1].Station;
    }

    /// <summary>Frames away from the middle to one side until the curve turns square to the shaft.</summary>
    private CurveFrame[] Walk(int side)
    {
        var step = curve.Length / 128;
        var frames = new List<CurveFrame>();
        for (var i = 1; i < 64; i++)
        {
            var next = curve.FrameAt(Middle.Station + side * i * step);
            if (next.Tangent.Dot(Middle.Tangent) < LeastSlant)
            {
                break;
            }

            frames.Add(next);
        }

        return [.. frames];
    }
}
