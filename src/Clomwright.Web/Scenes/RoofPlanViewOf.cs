using System.Globalization;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Web.Scenes;

/// <summary>The roof from above, north up.</summary>
internal sealed class RoofPlanViewOf(HouseGeometry geometry, Sequence<PoleGeometry> poles, Pen pen)
{
    private const int Around = 144;
    private const int Across = 6;

    /// <summary>From the end of a pole to its number, m.</summary>
    private const double Number = 0.24;

    /// <summary>How far inside the wall, and how far beside its pole, the measure at a landing is written, m.</summary>
    private const double LabelInside = 0.17, LabelAside = 0.42;

    private const string WholeRoof = "roof";

    private readonly double inside = geometry.Wall.InsideOffset(geometry.Wall.Top.Metres);
    private readonly double outside = geometry.Wall.OutsideOffset(geometry.Wall.Top.Metres);

    /// <summary>The view.</summary>
    /// <param name="woven">The circle of a reciprocal frame, whose poles lie over each other round a ring; null for other roofs.</param>
    /// <param name="ringRadius">Of a ring that is no reciprocal one, m; 0 for none.</param>
    /// <param name="tightest">The pole that is nearest to what it can carry; null when not known.</param>
    /// <param name="findings">What may point at it.</param>
    public RoofPlanView View(ReciprocalGeometry? woven, double ringRadius, string? tightest, IReadOnlyList<(FindingLine Line, Finding Finding)> findings)
    {
        var house = geometry.House;
        var eave = house.Roof is { } roof ? Ring(outside + roof.Eave.Metres) : null;
        // The last ones first, so that each lies over the one that it rests on.
        var shapes = poles.Reverse().Select(pole => Shape(pole, tightest, findings)).ToList();
        var landings = geometry.Landings.Select(landing => Landing(landing, findings)).ToList();
        var spots = Spots(woven);
        return new RoofPlanView
        {
            Inside = Ring(inside),
            Outside = Ring(outside),
            BondBeam = house.BondBeam is { } beam ? [Ring(Line(beam) - beam.Width.Metres / 2), Ring(Line(beam) + beam.Width.Metres / 2)] : [],
            Eave = eave,
            Openings = [.. geometry.Openings.Select(o => new PlanOpening(o.Opening.Name, Gap(o)))],
            Ring = woven is not null ? Circle(woven.Centre, woven.RingRadius) : ringRadius > 0 ? Circle(geometry.Curve.Centre, ringRadius) : null,
            Poles = shapes,
            Over = woven is not null && poles.Count > 1 ? [Body(poles[^1], (poles[^1].Near + poles[^1].Far) / 2)] : [],
            Landings = landings,
            Marks = [.. findings.Where(f => f.Line.Number is not null).Select(f => new PlanMark(f.Line.Id, spots[f.Finding.Subject]))],
            Extent = Extent([.. shapes.Select(s => s.Butt), .. landings.Select(l => l.LabelAt), .. eave ?? Ring(outside)]),
        };
    }

    /// <summary>Whether a finding has a place in plan. What is said of the roof as a whole is pointed at, at its edge, only where it falls short.</summary>
    public bool IsPlaced(Finding finding, ReciprocalGeometry? woven) =>
        Spots(woven).ContainsKey(finding.Subject) && (finding.Subject != WholeRoof || finding.Verdict is Verdict.FallsShort);

    /// <summary>Where things stand that findings speak of.</summary>
    private Dictionary<string, double[]> Spots(ReciprocalGeometry? woven)
    {
        var spots = new Dictionary<string, double[]>(StringComparer.Ordinal);
        if (geometry.House.Roof is { } roof)
        {
            spots[WholeRoof] = Point(geometry.Curve.At(geometry.Curve.Length * 0.93, outside + roof.Eave.Metres));
        }

        foreach (var tee in geometry.Tees)
        {
            spots[string.Create(CultureInfo.InvariantCulture, $"tee {tee.Number}")] = Point(geometry.Curve.At(tee.Station, outside));
        }

        foreach (var opening in geometry.Openings)
        {
            spots[$"{opening.Opening.Name}/header"] = Point(geometry.Curve.At(geometry.Curve.Wrap(opening.Station), (inside + outside) / 2));
        }

        foreach (var landing in geometry.Landings)
        {
            spots[landing.Name] = Point(landing.Point);
        }

        foreach (var pole in poles)
        {
            spots[Name(pole)] = Point(pole.Foot + pole.TangentDistance * 0.6 * pole.Along);
        }

        if (woven is not null)
        {
            spots["crossings"] = spots["ring"] = spots["poles"] = Point(woven.Centre);
        }

        return spots;
    }

    private PoleShape Shape(PoleGeometry pole, string? tightest, IReadOnlyList<(FindingLine Line, Finding Finding)> findings)
    {
        var name = Name(pole);
        var isTightest = name == tightest;
        var standing = FindingLines.Worst(findings.Where(f => f.Finding.Subject == name).Select(f => f.Finding.Verdict));
        var number = pole.Number.ToString(CultureInfo.InvariantCulture);
        return new PoleShape(number, pen.Say(isTightest ? "web.roof.pole-tightest" : "web.roof.pole", ("pole", number)), Body(pole, -pole.EaveReach), Point(pole.Foot - (pole.EaveReach + Number) * pole.Along), standing, isTightest);
    }

    private LandingShape Landing(Landing landing, IReadOnlyList<(FindingLine Line, Finding Finding)> findings)
    {
        var seat = findings.FirstOrDefault(f => f.Finding.Rule.Key == "pole-seat" && f.Finding.Subject == landing.Name).Finding;
        var away = seat?.Verdict switch
        {
            Verdict.Met { Comparisons: [var first, ..] } => first.Provided,
            Verdict.FallsShort { Comparisons: [var first, ..] } => first.Provided,
            // A person is asked about a pair: how far the nearer of its poles stands.
            Verdict.NeedsJudgement { Question: { Key: "rules.ask.pair-seat" } ask } => ask.Arguments.Select(given => given.Value).OfType<Argument.Quantity>().Select(given => (Amount?)given.Value).MinBy(given => given!.Value.Si),
            _ => (Amount?)null,
        };
        var label = geometry.Curve.At(geometry.Curve.Wrap(landing.Station + Aside(landing)), inside - LabelInside);
        return new LandingShape(Point(landing.Point), landing.Secondary, away is { } amount ? pen.Short(amount) : null, Point(label), FindingLines.Standing(seat?.Verdict ?? new Verdict.NotApplicable(new Message("web.roof.none"))));
    }

    /// <summary>Along the wall to the side that the pole does not lean to, so that its measure can be read, m.</summary>
    private double Aside(Landing landing)
    {
        var pole = poles.Count == 0 ? null : poles.MinBy(p => (p.Foot - landing.Point).Norm);
        return pole is null || geometry.Curve.Tangent(landing.Station).Dot(pole.Along) < 1e-6 ? LabelAside : -LabelAside;
    }

    private static string Name(PoleGeometry pole) => string.Create(CultureInfo.InvariantCulture, $"pole {pole.Number}");

    private double Line(BondBeam beam) => (inside + outside) / 2 + beam.Offset.Metres;

    private double[][] Ring(double offset) =>
        [.. Enumerable.Range(0, Around).Select(i => Point(geometry.Curve.At(geometry.Curve.Length * i / Around, offset)))];

    private static double[][] Circle(PlanPoint centre, double radius) =>
        [.. PlanPoint.Circle(centre, radius, Around / 2).Select(Point)];

    private double[][] Gap(OpeningPlace opening) =>
    [
        .. Enumerable.Range(0, Across + 1).Select(i => Point(geometry.Curve.At(Between(opening.Inside, i), inside))),
        .. Enumerable.Range(0, Across + 1).Select(i => Point(geometry.Curve.At(Between(opening.Outside, Across - i), outside))),
    ];

    private static double Between(Span span, int i) => span.From + (span.To - span.From) * i / Across;

    /// <summary>A pole from a distance inward to its inner end, in its own thickness and taper.</summary>
    private double[][] Body(PoleGeometry pole, double from) => [.. pole.OutlineFrom(from, geometry.House.Roof?.SideBySide ?? 1).Select(Point)];

    private static double[] Extent(IReadOnlyList<double[]> points) => [points.Min(p => p[0]), points.Max(p => p[0]), points.Min(p => p[1]), points.Max(p => p[1])];

    private static double[] Point(PlanPoint point) => Pen.Point(point.East, point.North);
}
