using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Geometry.Curves;

/// <summary>Makes the curve of a plan. A plan that cannot be built gives an error and a circle of like extent, so that the rest can still be computed.</summary>
internal static class PlanCurves
{
    /// <summary>Nothing in a house is longer than this, m.</summary>
    public const double SizeMax = 1000;

    /// <summary>A plan path with more points than this is no drawing by hand.</summary>
    private const int PointsMax = 400;

    /// <summary>Diameter of the circle that stands in where the plan says nothing usable, m.</summary>
    private const double StandIn = 4;

    public static PlanCurve Of(Plan plan, Remarks remarks)
    {
        var bearing = Finite(plan.Bearing, "plan.bearing", remarks);
        switch (plan)
        {
            case Plan.Round round:
                return Sighted(ArcCurve.Circle(Size(round.InsideDiameter, "plan.insideDiameter", remarks) / 2), default, plan, remarks);
            case Plan.Oval oval:
            {
                var length = Size(oval.InsideLength, "plan.insideLength", remarks);
                var width = Size(oval.InsideWidth, "plan.insideWidth", remarks);
                if (Math.Max(length, width) > 20 * Math.Min(length, width))
                {
                    remarks.Error("plan.insideWidth", Message.Of("geometry.oval-too-flat", ("length", oval.InsideLength), ("width", oval.InsideWidth)));
                    return Sighted(ArcCurve.Circle(StandInRadius(length, width)), default, plan, remarks);
                }

                return Sighted(new SmoothCurve(new EllipseLoop(length, width, bearing)), default, plan, remarks);
            }

            case Plan.RoundedRectangle rectangle:
            {
                var length = Size(rectangle.InsideLength, "plan.insideLength", remarks);
                var width = Size(rectangle.InsideWidth, "plan.insideWidth", remarks);
                return Sighted(ArcCurve.RoundedRectangle(length, width, CornerRadius(rectangle, length, width, remarks), bearing), default, plan, remarks);
            }

            default:
                return OfPath((Plan.Path)plan, remarks);
        }
    }

    private static PlanCurve OfPath(Plan.Path path, Remarks remarks)
    {
        var points = PathPoints(path, remarks);
        if (points.Count < 3 || points.Count > PointsMax)
        {
            remarks.Error("plan.points", points.Count < 3
                ? Message.Of("geometry.path-too-few-points", ("count", points.Count))
                : Message.Of("geometry.path-too-many-points", ("most", PointsMax)));
            return Circle(points, path, remarks);
        }

        var loop = new SplineLoop(points);
        if (loop.Area < 0)
        {
            points.Reverse();
            loop = new SplineLoop(points);
        }

        if (Crossings.First(Corners(loop)) is { } place)
        {
            remarks.Error("plan.points", Message.Of("geometry.path-crosses-itself", ("east", Amount.Metres(place.East)), ("north", Amount.Metres(place.North))));
            return Circle(points, path, remarks);
        }

        var curve = new SmoothCurve(loop);
        if (!(curve.Area > 1e-4 * curve.Length * curve.Length))
        {
            remarks.Error("plan.points", new Message("geometry.path-encloses-nothing"));
            return Circle(points, path, remarks);
        }

        return Sighted(curve, loop.Centroid, path, remarks);
    }

    private static List<PlanPoint> PathPoints(Plan.Path path, Remarks remarks)
    {
        var points = new List<PlanPoint>();
        for (var i = 0; i < path.Points.Count && points.Count <= PointsMax; i++)
        {
            var point = new PlanPoint(path.Points[i].East.Metres, path.Points[i].North.Metres);
            if (Math.Abs(point.East) > SizeMax || Math.Abs(point.North) > SizeMax)
            {
                remarks.Error($"plan.points[{i}]", Message.Of("geometry.too-far", ("most", Amount.Metres(SizeMax))));
            }
            else if (points.Exists(p => (p - point).Norm < 0.001))
            {
                remarks.Error($"plan.points[{i}]", new Message("geometry.path-point-twice"));
            }
            else
            {
                points.Add(point);
            }
        }

        return points;
    }

    private static PlanPoint[] Corners(SplineLoop loop)
    {
        const int Steps = 12;
        var corners = new List<PlanPoint>();
        for (var piece = 0; piece + 1 < loop.Seams.Length; piece++)
        {
            for (var i = 0; i < Steps; i++)
            {
                corners.Add(loop.At(piece, loop.Seams[piece] + (loop.Seams[piece + 1] - loop.Seams[piece]) * i / Steps).Point);
            }
        }

        return [.. corners];
    }

    private static PlanCurve Circle(List<PlanPoint> points, Plan plan, Remarks remarks)
    {
        var radius = points.Count < 2
            ? StandIn / 2
            : StandInRadius(points.Max(p => p.East) - points.Min(p => p.East), points.Max(p => p.North) - points.Min(p => p.North));
        return Sighted(ArcCurve.Circle(radius), default, plan, remarks);
    }

    private static double StandInRadius(double length, double width) => Math.Max(0.5, (length + width) / 4);

    /// <summary>The curve with its peg and zero mark.</summary>
    private static PlanCurve Sighted(PlanCurve curve, PlanPoint centroid, Plan plan, Remarks remarks)
    {
        var centre = centroid;
        if (plan.Centre is { } given)
        {
            var peg = new PlanPoint(given.East.Metres, given.North.Metres);
            if (Encloses(curve, peg))
            {
                centre = peg;
            }
            else
            {
                remarks.Error("plan.centre", new Message("geometry.centre-outside"));
            }
        }

        var bearing = Finite(plan.ZeroBearing, "plan.zeroBearing", remarks);
        var pegged = From(curve, centre, 0);
        var meets = pegged.StationsAt(bearing);
        if (meets.Count > 1)
        {
            remarks.Error("plan.zeroBearing", Message.Of("geometry.zero-bearing-meets-twice", ("bearing", plan.ZeroBearing), ("times", meets.Count)));
        }
        else if (meets.Count == 0)
        {
            remarks.Error("plan.zeroBearing", Message.Of("geometry.bearing-meets-never", ("bearing", plan.ZeroBearing)));
        }

        return meets.Count == 0 ? pegged : From(curve, centre, meets[0]);
    }

    private static PlanCurve From(PlanCurve curve, PlanPoint centre, double station) =>
        curve is ArcCurve arcs ? arcs.From(centre, station) : ((SmoothCurve)curve).From(centre, station);

    private static bool Encloses(PlanCurve curve, PlanPoint point)
    {
        var turned = 0.0;
        var samples = curve.Samples;
        for (var i = 0; i < samples.Length; i++)
        {
            var a = samples[i].Point - point;
            var b = samples[(i + 1) % samples.Length].Point - point;
            turned += Math.Atan2(b.Cross(a), b.Dot(a));
        }

        return turned > Math.PI;
    }

    private static double CornerRadius(Plan.RoundedRectangle plan, double length, double width, Remarks remarks)
    {
        var radius = plan.CornerRadius.Metres;
        var most = Math.Min(length, width) / 2;
        if (radius > 0 && radius <= most)
        {
            return radius;
        }

        remarks.Error("plan.cornerRadius", Message.Of("geometry.corner-radius", ("radius", plan.CornerRadius), ("most", Amount.Metres(most))));
        return radius > most ? most : most / 10;
    }

    private static double Size(Length size, string path, Remarks remarks)
    {
        if (size.Metres is > 0 and <= SizeMax)
        {
            return size.Metres;
        }

        remarks.Error(path, Message.Of("geometry.size-out-of-range", ("size", size), ("most", Amount.Metres(SizeMax))));
        return StandIn;
    }

    private static double Finite(Angle angle, string path, Remarks remarks)
    {
        if (double.IsFinite(angle.Degrees))
        {
            return Math.IEEERemainder(angle.Radians, 2 * Math.PI);
        }

        remarks.Error(path, new Message("geometry.not-a-number"));
        return 0;
    }
}
