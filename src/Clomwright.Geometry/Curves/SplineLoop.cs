using Clomwright.Numerics;

namespace Clomwright.Geometry.Curves;

/// <summary>The periodic C2 cubic spline over chord length through points given clockwise.</summary>
internal sealed class SplineLoop : ParametricLoop
{
    private readonly PeriodicCubicSpline east;
    private readonly PeriodicCubicSpline north;
    private readonly double[] seams;

    public SplineLoop(IReadOnlyList<PlanPoint> points)
    {
        var n = points.Count;
        double[] spans = new double[n], x = new double[n], y = new double[n];
        seams = new double[n + 1];
        for (var i = 0; i < n; i++)
        {
            spans[i] = (points[(i + 1) % n] - points[i]).Norm;
            (x[i], y[i]) = (points[i].East, points[i].North);
            seams[i + 1] = seams[i] + spans[i];
        }

        east = new PeriodicCubicSpline(spans, x);
        north = new PeriodicCubicSpline(spans, y);
        (Area, Centroid) = AreaAndCentroid(points[0]);
    }

    public override ReadOnlySpan<double> Seams => seams;

    public override bool SeamsAreBreaks => true;

    public override double Area { get; }

    public override PlanPoint Centroid { get; }

    public override (PlanPoint Point, PlanPoint First, PlanPoint Second) At(int piece, double parameter)
    {
        var distance = parameter - seams[piece];
        var x = east.At(piece, distance);
        var y = north.At(piece, distance);
        return (new PlanPoint(x.Value, y.Value), new PlanPoint(x.First, y.First), new PlanPoint(x.Second, y.Second));
    }

    /// <summary>Green's theorem about one of the points; the integrands are polynomials of degree 5 and 8, so eight Gauss points are exact.</summary>
    private (double Area, PlanPoint Centroid) AreaAndCentroid(PlanPoint about)
    {
        double area = 0, momentEast = 0, momentNorth = 0;
        var rule = GaussRule.Eight;
        for (var piece = 0; piece < east.Count; piece++)
        {
            var half = (seams[piece + 1] - seams[piece]) / 2;
            for (var k = 0; k < rule.Nodes.Length; k++)
            {
                var (point, first, _) = At(piece, seams[piece] + half * (1 + rule.Nodes[k]));
                var arm = point - about;
                var swept = -rule.Weights[k] * half * arm.Cross(first);
                area += swept / 2;
                momentEast += arm.East * swept / 3;
                momentNorth += arm.North * swept / 3;
            }
        }

        return (area, area == 0 ? about : about + new PlanPoint(momentEast / area, momentNorth / area));
    }
}
