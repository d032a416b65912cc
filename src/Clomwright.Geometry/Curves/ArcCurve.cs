namespace Clomwright.Geometry.Curves;

/// <summary>A closed curve of straight lines and circular arcs that join without a corner, exact in closed form.</summary>
internal sealed class ArcCurve : PlanCurve
{
    private readonly Element[] elements;
    private readonly double[] breaks;
    private readonly double origin;
    private readonly double originHeading;

    private ArcCurve(Element[] elements, PlanPoint centre, double origin)
    {
        this.elements = elements;
        this.origin = origin;
        Centre = centre;
        var last = elements[^1];
        Length = last.Start + last.Length;
        Area = elements.Sum(e => e.Area());
        ConcavityMax = Math.Max(0, -elements.Min(e => e.Curvature));
        ConvexityMax = Math.Max(0, elements.Max(e => e.Curvature));
        originHeading = ElementAt(origin).HeadingAt(origin);
        breaks = elements.Length == 1 ? [] : [.. elements.Select(e => Wrap(e.Start - origin)).Order()];
    }

    public override double Length { get; }

    public override double Area { get; }

    public override PlanPoint Centre { get; }

    public override double ConcavityMax { get; }

    public override double ConvexityMax { get; }

    public override bool IsRoundAboutCentre => elements.Length == 1 && Centre.Norm == 0;

    internal override ReadOnlySpan<double> Breaks => breaks;

    /// <summary>A circle about the drawing origin.</summary>
    public static ArcCurve Circle(double radius) =>
        new([new Element(0, 2 * Math.PI * radius, new PlanPoint(0, radius), Math.PI / 2, 1 / radius, 0)], default, 0);

    /// <summary>A rectangle with round corners about the drawing origin, its long axis along a bearing.</summary>
    public static ArcCurve RoundedRectangle(double length, double width, double radius, double bearing)
    {
        // Walked clockwise, so forward along the left-hand side as seen looking along the bearing.
        var (along, across) = (length / 2, width / 2);
        var (lineLong, lineShort) = (length - 2 * radius, width - 2 * radius);
        var pieces = new List<Element>();
        var start = 0.0;
        var heading = 0.0;
        var point = Turned(-along + radius, across, bearing);
        for (var side = 0; side < 4; side++)
        {
            var line = side % 2 == 0 ? lineLong : lineShort;
            Add(line, 0);
            Add(radius * Math.PI / 2, 1 / radius);
        }

        return new ArcCurve([.. pieces], default, 0);

        void Add(double size, double curvature)
        {
            if (size <= 0)
            {
                return;
            }

            var piece = new Element(start, size, point, bearing + heading, curvature, heading);
            pieces.Add(piece);
            point = piece.PointAt(start + size);
            heading += curvature == 0 ? 0 : Math.PI / 2;
            start += size;
        }
    }

    /// <summary>The same curve sighted from a peg, with its zero mark at a station of this one.</summary>
    public ArcCurve From(PlanPoint centre, double zeroStation) => new(elements, centre, Wrap(origin + zeroStation));

    internal override CurveFrame FrameAt(double station)
    {
        var lap = Math.Floor((origin + station) / Length);
        var raw = origin + station - lap * Length;
        var element = ElementAt(raw);
        var heading = lap * 2 * Math.PI + element.HeadingAt(raw) - originHeading;
        return new CurveFrame(station, element.PointAt(raw), element.TangentAt(raw), element.Curvature, heading);
    }

    private static PlanPoint Turned(double along, double left, double bearing)
    {
        var (sin, cos) = Math.SinCos(bearing);
        return new PlanPoint(along * sin - left * cos, along * cos + left * sin);
    }

    private Element ElementAt(double raw)
    {
        for (var i = elements.Length - 1; i > 0; i--)
        {
            if (raw >= elements[i].Start)
            {
                return elements[i];
            }
        }

        return elements[0];
    }

    /// <summary>A line or an arc. <paramref name="Bearing"/> is the direction of travel at its start; its curvature is positive when it turns clockwise.</summary>
    private readonly record struct Element(double Start, double Length, PlanPoint Point, double Bearing, double Curvature, double Heading)
    {
        public double HeadingAt(double raw) => Heading + Curvature * (raw - Start);

        public PlanPoint TangentAt(double raw)
        {
            var (sin, cos) = Math.SinCos(Bearing + Curvature * (raw - Start));
            return new PlanPoint(sin, cos);
        }

        public PlanPoint PointAt(double raw)
        {
            var x = raw - Start;
            if (Curvature == 0)
            {
                return Point + x * TangentAt(raw);
            }

            var half = Curvature * x / 2;
            var chord = 2 * Math.Sin(half) / Curvature;
            var (s, c) = Math.SinCos(Bearing + half);
            return Point + chord * new PlanPoint(s, c);
        }

        /// <summary>Its share of the enclosed area by Green's theorem about the drawing origin.</summary>
        public double Area()
        {
            var end = PointAt(Start + Length);
            var triangle = -Point.Cross(end) / 2;
            if (Curvature == 0)
            {
                return triangle;
            }

            var angle = Curvature * Length;
            return triangle + (angle - Math.Sin(angle)) / (2 * Curvature * Curvature);
        }
    }
}
