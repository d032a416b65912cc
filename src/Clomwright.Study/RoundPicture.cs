using Clomwright.Analysis.Roof;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Geometry.Solids;

namespace Clomwright.Study;

/// <summary>The house in the round as a still drawing of lines: wall with its openings, stem, bond beam and poles, and the edge of the deck.</summary>
/// <param name="Corner">The corner that the viewer stands at: <c>south-east</c>.</param>
/// <param name="From">The projection.</param>
/// <param name="Lines">What is seen; headers, tees and what is built in are left out.</param>
public sealed record RoundPicture(string Corner, Projection From, Sequence<SeenBodyLine> Lines)
{
    /// <summary>Of a line of the deck's edge.</summary>
    public const string Deck = "deck";

    /// <summary>Of a line where the stem meets the ground or the floor.</summary>
    public const string Ground = "ground";

    private const int GroundSteps = 192;

    /// <summary>The line where a stem meets the ground keeps this clear of its face, which is flat between two points of a curve, m.</summary>
    private const double Clear = 0.004;

    private static readonly (string Key, double Bearing)[] Corners = [("south-east", 3 * Math.PI / 4), ("south-west", 5 * Math.PI / 4), ("north-east", Math.PI / 4), ("north-west", 7 * Math.PI / 4)];

    /// <summary>From above the corner that the most of its openings face, in the isometric projection.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">Its roof worked out; null without one.</param>
    public static RoundPicture Of(HouseGeometry geometry, RoofResult? roof)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var (key, bearing) = Corners.MaxBy(c => Facing(geometry, new PlanPoint(Math.Sin(c.Bearing), Math.Cos(c.Bearing))));
        var from = Projection.From(bearing, Projection.Isometric, geometry.Curve.Centre);
        var frame = roof is null ? new RoofShape([], []) : RoofSolids.Of(geometry, roof);
        SolidMesh[] bodies = [.. HouseSolids.Of(geometry).Where(s => s.Part is SolidPart.Wall or SolidPart.Stem or SolidPart.BondBeam or SolidPart.Leaf or SolidPart.Glass), .. frame.Solids];
        var grade = Math.Min(geometry.House.Site.Grade?.Metres ?? 0, geometry.Wall.Base.Metres);
        SpaceLine[] lines = [.. frame.Deck.Select(d => new SpaceLine(Deck, d)), new(Ground, Round(geometry, geometry.Stem.Outside + Clear, grade)), new(Ground, Round(geometry, geometry.Stem.Inside - Clear, Math.Max(grade, 0)))];
        return new RoundPicture(key, from, SeenBodies.Of(bodies, lines, from, grade));
    }

    /// <summary>How much of the openings faces a viewer, m2.</summary>
    private static double Facing(HouseGeometry geometry, PlanPoint toward) =>
        geometry.Openings.Sum(o => o.Opening.Width.Metres * o.Opening.Height.Metres * Math.Max(0, o.Normal.Dot(toward)));

    private static Sequence<SpacePoint> Round(HouseGeometry geometry, double offset, double height) =>
        Enumerable.Range(0, GroundSteps + 1).Select(i => SpacePoint.Of(geometry.Curve.At(geometry.Curve.Length * (i % GroundSteps) / GroundSteps, offset), height)).ToSequence();
}
