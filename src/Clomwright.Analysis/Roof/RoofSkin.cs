using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Roof;

/// <summary>What lies on the poles, as sizes to buy and cut. Areas are on the roof's own surface.</summary>
public sealed record RoofSkin
{
    /// <summary>Deck and layers, m2; over a ring that is decked, its plan area too.</summary>
    public required double Surface { get; init; }

    /// <summary>Taken out of deck and layers round the flue, m2.</summary>
    public double FlueCut { get; init; }

    /// <summary>Deck and layers net of the flue, m2.</summary>
    public double Laid => Surface - FlueCut;

    /// <summary>Sheets side by side, of the widest that can be got; 1 where one piece covers all.</summary>
    public int Sheets { get; init; } = 1;

    /// <summary>Length of the edge board all round, m: on plan round a centre, along the slope over rafters side by side.</summary>
    public required double EaveLength { get; init; }

    /// <summary>Round an open eye, up whose curb the membrane goes, m; 0 where nothing is open.</summary>
    public double CurbLength { get; init; }

    /// <summary>Membrane as developed: the surface, up over the edge board and up the curb, m2.</summary>
    public required double Membrane { get; init; }

    /// <summary>Shorter side of the sheet that covers it in one piece, m.</summary>
    public required double SheetWidth { get; init; }

    /// <summary>Longer side of that sheet, m.</summary>
    public required double SheetLength { get; init; }

    /// <summary>Of that sheet, over what is developed: corners cut off and folds of the cone.</summary>
    public required double SheetWaste { get; init; }

    /// <summary>How membrane and sheet were found.</summary>
    public required Calculation How { get; init; }

    /// <summary>The drip edge, as described or as usual; null where nothing lies on the deck and none is described.</summary>
    public Building.DripEdge? Drip { get; init; }

    /// <summary>What to order for the whole roof.</summary>
    public required Sequence<OrderLine> Orders { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }
}

/// <summary>Sizes of the skin from how the roof lies.</summary>
internal static class RoofSkins
{
    /// <summary>Turned over the top of the edge board, or down over the eave where there is none, m.</summary>
    public const double Turn = 0.1524;

    /// <summary>A drip edge nobody described: 1 in out, 1 in down.</summary>
    public static Building.DripEdge UsualDrip { get; } = new(Length.FromInches(1), Length.FromInches(1));

    /// <summary>Height of the eye's curb, up which the membrane goes, m.</summary>
    public const double Curb = 0.1524;

    /// <summary>Two sheets of membrane lie over each other by this, glued, m: 6 in.</summary>
    public const double Lap = 0.1524;

    /// <summary>n sheets of a width cover n times it less n - 1 laps.</summary>
    public static int Sheets(Building.Roof roof, double across) =>
        roof.SheetRoll is { Metres: > Lap and var roll } && roll < across ? (int)Math.Ceiling((across - Lap) / (roll - Lap) - 1e-9) : 1;

    /// <summary>Points of the eave that a sheet is laid over.</summary>
    private const int Points = 180;

    /// <summary>Skin of poles that lie round a centre.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">As described.</param>
    /// <param name="shares">How the roof lies on its poles.</param>
    /// <param name="ring">Radius of the circle that the poles touch; 0 where they meet, m.</param>
    /// <param name="centre">Of that circle.</param>
    /// <param name="offset">From the inside curve to the eave, m.</param>
    /// <param name="open">The eye has a curb; otherwise it is decked over.</param>
    /// <param name="flue">Where a flue passes; null where none does.</param>
    public static RoofSkin Round(HouseGeometry geometry, Building.Roof roof, IShares shares, double ring, PlanPoint centre, double offset, bool open, FluePlace? flue)
    {
        var slope = shares.Poles.Max(p => p.Slope);
        var laid = Eave(geometry, offset).Select(p => p - centre).Select(v => (ring + Profile(ring, v.Norm, slope)) / v.Norm * v).ToArray();
        var surface = shares.Pressure(p => p.SurfacePerPlan).Sum(l => l.Total) + (open ? 0 : shares.RingArea);
        return Of(roof, shares, surface, geometry.Curve.OffsetLength(offset), open ? 2 * Math.PI * ring : 0, Least(laid), flue);
    }

    /// <summary>Skin of rafters side by side, all of one slope; the eave follows the wall.</summary>
    public static RoofSkin Strips(HouseGeometry geometry, Building.Roof roof, IShares shares, double offset, FluePlace? flue)
    {
        var slope = shares.Poles.Max(p => p.Slope);
        var steep = Math.Sqrt(1 + slope * slope);
        var (sin, cos) = Math.SinCos(roof.FirstBearing.Radians);
        var fall = new PlanPoint(sin, cos);
        var laid = Eave(geometry, offset).Select(p => new PlanPoint(fall.Cross(p), steep * fall.Dot(p))).ToArray();
        var length = laid.Select((p, i) => (laid[(i + 1) % laid.Length] - p).Norm).Sum();
        return Of(roof, shares, steep * geometry.Curve.OffsetArea(offset), length, 0, Box(laid, 0), flue);
    }

    private static IEnumerable<PlanPoint> Eave(HouseGeometry geometry, double offset) =>
        Enumerable.Range(0, Points).Select(k => geometry.Curve.At(k * geometry.Curve.Length / Points, offset));

    /// <summary>The rectangle of least area round points, whichever way it is turned.</summary>
    private static (double Width, double Length) Least(PlanPoint[] points) =>
        Enumerable.Range(0, 45).Select(k => Box(points, k * Math.PI / 90)).MinBy(b => b.Width * b.Length);

    /// <summary>The rectangle round points, turned by an angle; wider by what lies between two points of a circle.</summary>
    private static (double Width, double Length) Box(PlanPoint[] points, double turned)
    {
        var (sin, cos) = Math.SinCos(turned);
        var axis = new PlanPoint(sin, cos);
        var between = 1 / Math.Cos(Math.PI / Points);
        double a = between * (points.Max(axis.Dot) - points.Min(axis.Dot)), b = between * (points.Max(axis.Cross) - points.Min(axis.Cross));
        return (Math.Min(a, b), Math.Max(a, b));
    }

    /// <summary>Length of the roof's line from its ring out to a radius, m along it: the surface is swept by a straight pole that touches the ring.</summary>
    /// <remarks>With u from the touching point along the pole, r = sqrt(u^2 + r_t^2) and z falls by u tan(beta); Simpson over 64 pieces.</remarks>
    public static double Profile(double ring, double radius, double slope)
    {
        const int pieces = 64;
        var end = Math.Sqrt(Math.Max(0, radius * radius - ring * ring));
        double sum = 0;
        for (var k = 0; k <= pieces; k++)
        {
            var u = end * k / pieces;
            var squared = u * u + ring * ring;
            var cosine = squared > 0 ? u * u / squared : 1;
            sum += (k == 0 || k == pieces ? 1 : k % 2 == 1 ? 4 : 2) * Math.Sqrt(cosine + slope * slope);
        }

        return sum * end / (3 * pieces);
    }

    private static RoofSkin Of(Building.Roof roof, IShares shares, double surface, double eave, double curb, (double Width, double Length) box, FluePlace? flue)
    {
        var up = roof.EdgeBoard?.Metres ?? 0;
        var practice = Sources.Get("common-practice");
        var mechanics = Sources.Get("mechanics");
        var sheet = new Worksheet("roof-membrane");
        var edge = Worksheet.Given("h_e", "edge-board-height", up, Dimension.Length);
        var turn = Worksheet.Assumed("t", "membrane-turn", Turn, Dimension.Length, practice);
        var area = sheet.Step("membrane-area", "A_m", "A_s + E*(h_e + t) + C*h_c", surface + eave * (up + Turn) + curb * Curb, Dimension.Area, mechanics,
            Worksheet.Computed("A_s", "roof-surface", surface, Dimension.Area), Worksheet.Computed("E", "eave-length", eave, Dimension.Length), edge, turn,
            Worksheet.Computed("C", "curb-length", curb, Dimension.Length), Worksheet.Assumed("h_c", "curb-height", Curb, Dimension.Length, practice));
        var wide = box.Width + 2 * (up + Turn);
        var @long = box.Length + 2 * (up + Turn);
        var b = sheet.Step("sheet-width", "b", "w + 2*(h_e + t)", wide, Dimension.Length, mechanics, Worksheet.Computed("w", "skin-width", box.Width, Dimension.Length), edge, turn);
        var l = sheet.Step("sheet-length", "l", "m + 2*(h_e + t)", @long, Dimension.Length, mechanics, Worksheet.Computed("m", "skin-length", box.Length, Dimension.Length), edge, turn);
        var waste = wide * @long / area.Value.Si - 1;
        sheet.Step("sheet-waste", "s", "b*l/A_m - 1", waste, Dimension.Fraction, mechanics, b, l, area);
        var skin = new RoofSkin
        {
            Surface = surface, FlueCut = flue?.Cut ?? 0, Sheets = Sheets(roof, Math.Min(wide, @long)), EaveLength = eave, CurbLength = curb, Membrane = area.Value.Si, SheetWidth = wide, SheetLength = @long, SheetWaste = waste, How = sheet.Done, Orders = [], Drip = roof.Drip ?? (roof.Layers.Count > 0 ? UsualDrip : null),
            Assumptions =
            [
                .. roof.SheetRoll is null ? (Sequence<Assumption>)[] : [new Assumption("membrane-lap", new Message("analysis.assumed.membrane-lap"), Amount.Metres(Lap), practice)],
                .. roof is { Drip: null, Layers.Count: > 0 }
                    ? (Sequence<Assumption>)[new Assumption("drip-out", new Message("analysis.assumed.drip-out"), UsualDrip.Out, practice), new Assumption("drip-down", new Message("analysis.assumed.drip-down"), UsualDrip.Down, practice)]
                    : [],
                new Assumption("membrane-turn", new Message("analysis.assumed.membrane-turn"), Amount.Metres(Turn), practice),
                .. curb > 0 ? (Sequence<Assumption>)[new Assumption("curb-height", new Message("analysis.assumed.curb-height"), Amount.Metres(Curb), practice)] : [],
            ],
        };
        var orders = RoofOrders.Of(roof, shares.Poles, skin);
        return skin with { Orders = orders.Lines, Assumptions = [.. skin.Assumptions, .. orders.Assumptions] };
    }
}
