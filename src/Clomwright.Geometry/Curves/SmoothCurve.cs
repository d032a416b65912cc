namespace Clomwright.Geometry.Curves;

/// <summary>A parametric loop by arc length.</summary>
/// <remarks>The loop is cut into panels short enough that eight Gauss points give each panel's arc length to rounding.</remarks>
internal sealed class SmoothCurve : PlanCurve
{
    private readonly ParametricLoop loop;
    private readonly StationTable table;
    private readonly double[] breaks;
    private readonly double origin;
    private readonly double originHeading;

    public SmoothCurve(ParametricLoop loop) : this(loop, new StationTable(loop, Panels.Of(loop)), loop.Centroid, 0)
    {
    }

    private SmoothCurve(ParametricLoop loop, StationTable table, PlanPoint centre, double origin)
    {
        this.loop = loop;
        this.table = table;
        this.origin = origin;
        Centre = centre;
        Length = table.Length;
        breaks = loop.SeamsAreBreaks ? Seams() : [];
        (ConcavityMax, ConvexityMax) = Panels.CurvatureRange(loop, table.Panels);
        originHeading = Raw(origin).Heading;
    }

    public override double Length { get; }

    public override double Area => loop.Area;

    public override PlanPoint Centre { get; }

    public override double ConcavityMax { get; }

    public override double ConvexityMax { get; }

    internal override ReadOnlySpan<double> Breaks => breaks;

    private protected override int SampleCount => Math.Max(256, 8 * (loop.Seams.Length - 1));

    /// <summary>The same curve sighted from a peg, with its zero mark at a station of this one.</summary>
    public SmoothCurve From(PlanPoint centre, double zeroStation) => new(loop, table, centre, Wrap(origin + zeroStation));

    internal override CurveFrame FrameAt(double station)
    {
        var lap = Math.Floor((origin + station) / Length);
        var frame = Raw(origin + station - lap * Length);
        return frame with { Station = station, Heading = lap * 2 * Math.PI + frame.Heading - originHeading };
    }

    private CurveFrame Raw(double arc)
    {
        ref readonly var panel = ref table.At(arc, out var parameter);
        var (point, first, second) = loop.At(panel.Piece, parameter);
        var speed = first.Norm;
        var tangent = 1 / speed * first;
        var turned = Math.Atan2(tangent.Cross(panel.Tangent), tangent.Dot(panel.Tangent));
        return new CurveFrame(arc, point, tangent, second.Cross(first) / (speed * speed * speed), panel.Heading + turned);
    }

    private double[] Seams()
    {
        var seams = new List<double>();
        var piece = -1;
        foreach (var panel in table.Panels)
        {
            if (panel.Piece != piece)
            {
                piece = panel.Piece;
                seams.Add(Wrap(panel.Start - origin));
            }
        }

        seams.Sort();
        return [.. seams];
    }
}
