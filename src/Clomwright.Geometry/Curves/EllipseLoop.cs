namespace Clomwright.Geometry.Curves;

/// <summary>An ellipse about the drawing origin, its long axis along a bearing: p = a cos(tau) e1 + b sin(tau) e2.</summary>
internal sealed class EllipseLoop(double length, double width, double bearing) : ParametricLoop
{
    private static readonly double[] Quarters = [0, Math.PI / 2, Math.PI, 3 * Math.PI / 2, 2 * Math.PI];
    private readonly PlanPoint along = length / 2 * new PlanPoint(Math.Sin(bearing), Math.Cos(bearing));
    private readonly PlanPoint across = width / 2 * new PlanPoint(Math.Cos(bearing), -Math.Sin(bearing));

    public override ReadOnlySpan<double> Seams => Quarters;

    public override bool SeamsAreBreaks => false;

    public override double Area { get; } = Math.PI * length * width / 4;

    public override PlanPoint Centroid => default;

    public override (PlanPoint Point, PlanPoint First, PlanPoint Second) At(int piece, double parameter)
    {
        var (sin, cos) = Math.SinCos(parameter);
        var point = cos * along + sin * across;
        return (point, cos * across - sin * along, -1 * point);
    }
}
