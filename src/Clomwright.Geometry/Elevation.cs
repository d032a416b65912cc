using Clomwright.Evidence;
using Clomwright.Geometry.Solids;

namespace Clomwright.Geometry;

/// <summary>What a line of an elevation belongs to.</summary>
public enum SeenPart
{
    /// <summary>Outline of the stem, from the ground up.</summary>
    Stem,

    /// <summary>Outline of the cob: its foot, its top, and its sides where it turns away.</summary>
    Wall,

    /// <summary>Rim of an opening where it meets the outside face.</summary>
    Rim,

    /// <summary>What stands in an opening: its frame, or where the frame would stand.</summary>
    Frame,

    /// <summary>Rim of an opening or a niche on the inside face, in a section.</summary>
    InsideRim,
}

/// <summary>A point of a projected drawing: metres to the right of the centre peg as the viewer sees it, and up the sheet (above the finished floor, where the viewer looks level).</summary>
public readonly record struct SeenPoint(double Across, double Height);

/// <summary>A line that is seen, all of it.</summary>
/// <param name="Part">What it belongs to.</param>
/// <param name="Of">Name of the opening; empty for the wall and the stem.</param>
/// <param name="Points">Straight from each to the next; two or more.</param>
public sealed record SeenLine(SeenPart Part, string Of, Sequence<SeenPoint> Points);

/// <summary>The wall and its stem as seen from afar, square to an upright sheet: what lies behind cob is left out.</summary>
public sealed record Elevation
{
    /// <summary>Unit vector in plan from the house to the viewer.</summary>
    public required PlanPoint Toward { get; init; }

    /// <summary>Where the drawing has its zero: the centre peg.</summary>
    public required PlanPoint Origin { get; init; }

    /// <summary>What is seen.</summary>
    public required Sequence<SeenLine> Lines { get; init; }

    /// <summary>The outer edge of everything, from the ground at the left up and round to the ground at the right.</summary>
    public required Sequence<SeenPoint> Silhouette { get; init; }

    /// <summary>Unit vector in plan to the viewer's right.</summary>
    public PlanPoint Right => Level.Right;

    private Projection Level => new(Toward, 0, Origin);

    /// <summary>A point in space as it is drawn.</summary>
    public SeenPoint Project(PlanPoint point, double height) => Level.Project(SpacePoint.Of(point, height));
}
