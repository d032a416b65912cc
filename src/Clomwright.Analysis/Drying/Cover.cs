using Clomwright.Analysis.Steps;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Drying;

/// <summary>What it takes to cover a wall that has no roof yet. Lengths in m, areas in m2.</summary>
public sealed record WallCover
{
    /// <summary>Along the outside face at the wall base.</summary>
    public required double Run { get; init; }

    /// <summary>How wide and how much sheet when each lift is the topmost; bottom up.</summary>
    public required Sequence<CoverAtLift> Lifts { get; init; }

    /// <summary>Height of the line that carries the sheet over the finished wall, from the finished floor.</summary>
    public required double Ridge { get; init; }

    /// <summary>Lowest that the outer edge hangs, from the finished floor.</summary>
    public required double OuterEdge { get; init; }

    /// <summary>Between ties along an edge.</summary>
    public required double TieSpacing { get; init; }

    /// <summary>Ties along one edge; there are two edges.</summary>
    public required int TiesEachEdge { get; init; }

    /// <summary>What one tie holds in the wind named, with the cover over the whole wall, N.</summary>
    public required double Pull { get; init; }

    /// <summary>That wind, m/s.</summary>
    public required double Wind { get; init; }

    /// <summary>How high the line of the sheet stands over the cob.</summary>
    public required double Over { get; init; }

    /// <summary>How far a sheet laps the next and is wasted, as a share.</summary>
    public required double Lap { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>How the numbers of the finished wall were made.</summary>
    public required Calculation How { get; init; }

    /// <summary>Over the whole wall: what to order.</summary>
    public CoverAtLift Whole => Lifts[^1];
}

/// <summary>The cover when a lift is the topmost.</summary>
/// <param name="Number">The lift, from 1.</param>
/// <param name="Width">Across, from the inner edge over the line to the outer edge.</param>
/// <param name="Area">All round, laps counted.</param>
public readonly record struct CoverAtLift(int Number, double Width, double Area);

/// <summary>Measures the cover of a wall: a sheet hung over a line above its top, free of the faces so that air moves.</summary>
public static class Cover
{
    private const double AirDensity = 1.25;

    /// <summary>The cover; or why there is none.</summary>
    /// <param name="geometry">The placed house.</param>
    public static Known<WallCover> Of(HouseGeometry geometry)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var (wall, house) = (geometry.Wall, geometry.House);
        if (geometry.Lifts.Count == 0 || wall.Top <= wall.Base || !(wall.ThicknessAt(wall.Base.Metres) > 0))
        {
            return new Message("analysis.drying.no-wall");
        }

        var n = DryingNumbers.Of(house.Assumed);
        var run = geometry.Curve.OffsetLength(wall.OutsideOffset(wall.Base.Metres));
        var (below, inside, over, lap, spacing) = (n["drying-cover-below"], n["drying-cover-inside"], n["drying-cover-over"], n["drying-cover-lap"], n["drying-cover-ties"]);
        if (!(spacing > 0))
        {
            return new Message("analysis.drying.no-ties");
        }

        var (wind, factor) = (n["drying-cover-wind"], n["drying-cover-pull"]);
        double Width(LiftSlice lift) => (lift.Top - wall.Base).Metres + below + 2 * over + wall.ThicknessAt(lift.Top.Metres) + inside;
        var lifts = geometry.Lifts.Select(l => new CoverAtLift(l.Number, Width(l), run * Width(l) * (1 + lap))).ToSequence();
        var whole = lifts[^1];
        var top = geometry.Lifts[^1];
        var sheet = new Worksheet("wall-cover");
        var said = house.Assumed.Select(a => a.Key).ToHashSet(StringComparer.Ordinal);
        Symbol Number(string symbol, string key, Dimension dimension) => said.Contains(key)
            ? Worksheet.Given(symbol, key["drying-".Length..], n[key], dimension)
            : Worksheet.Assumed(symbol, key["drying-".Length..], n[key], dimension, DryingNumbers.SourceOf(key));
        var width = sheet.Step("cover-width", "b", "H + o + 2*a + t + i", whole.Width, Dimension.Length, Sources.Get("wall-geometry"),
            Worksheet.Computed("H", "cover-height", (top.Top - wall.Base).Metres, Dimension.Length), Number("o", "drying-cover-below", Dimension.Length),
            Number("a", "drying-cover-over", Dimension.Length), Worksheet.Computed("t", "cover-thickness", wall.ThicknessAt(top.Top.Metres), Dimension.Length),
            Number("i", "drying-cover-inside", Dimension.Length));
        sheet.Step("cover-area", "A", "L*b*(1 + l)", whole.Area, Dimension.Area, Sources.Get("wall-geometry"),
            Worksheet.Computed("L", "cover-run", run, Dimension.Length), width, Number("l", "drying-cover-lap", Dimension.Fraction));
        var pull = factor * AirDensity * wind * wind / 2 * spacing * whole.Width / 2;
        sheet.Step("cover-tie", "F", "c*r*v^2/2*s*b/2", pull, Dimension.Force, Sources.Get("mechanics"),
            Number("c", "drying-cover-pull", Dimension.Number), Worksheet.Assumed("r", "cover-air", AirDensity, Dimension.Density, Sources.Get("mechanics")),
            Number("v", "drying-cover-wind", Dimension.Speed), Number("s", "drying-cover-ties", Dimension.Length), width);
        return new WallCover
        {
            Run = run, Lifts = lifts, Ridge = wall.Top.Metres + over, OuterEdge = wall.Base.Metres - below, TieSpacing = spacing, TiesEachEdge = (int)Math.Ceiling(run / spacing - 1e-9), Pull = pull,
            Wind = wind, Over = over, Lap = lap, Assumptions = n.AssumptionsOf("drying-cover-"), How = sheet.Done,
        };
    }
}
