using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>An upright cut through the house at the centre peg.</summary>
public sealed record CrossSection
{
    /// <summary>Unit vector in plan from the plane to the viewer; what lies on the other side of the plane is seen.</summary>
    public required PlanPoint Toward { get; init; }

    /// <summary>Where the drawing has its zero: the centre peg.</summary>
    public required PlanPoint Origin { get; init; }

    /// <summary>The cob that is cut, as areas that lie on one another, bottom up: what an opening takes is left out.</summary>
    public required Sequence<Sequence<SeenPoint>> Cob { get; init; }

    /// <summary>The edges of the cob that is cut.</summary>
    public required Sequence<(SeenPoint From, SeenPoint To)> Edges { get; init; }

    /// <summary>Rims on the inside face beyond the plane, and the foot and top of that face.</summary>
    public required Sequence<SeenLine> Beyond { get; init; }

    /// <summary>Unit vector in plan to the viewer's right.</summary>
    public PlanPoint Right => new(-Toward.North, Toward.East);

    /// <summary>A point in space as it is drawn.</summary>
    public SeenPoint Project(PlanPoint point, double height) => new((point - Origin).Dot(Right), height);
}
