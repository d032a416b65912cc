namespace Clomwright.Web.Scenes;

/// <summary>The unrolled wall seen from one side. Points are [x, y]: metres from the left edge, metres from the finished floor.</summary>
public sealed record FaceView : IAfterAnother
{
    /// <summary>The view that the page has; null where this is a whole one.</summary>
    internal FaceView? Before { get; init; }

    object? IAfterAnother.Before => Before;

    /// <summary>Length of the face.</summary>
    public required double Length { get; init; }

    /// <summary>Where equally spaced stations of the inside face, from zero to the whole ring, are found.</summary>
    public required IReadOnlyList<double> Along { get; init; }

    /// <summary>The ruler along the wall.</summary>
    public required IReadOnlyList<Tick> Ticks { get; init; }

    /// <summary>The cob.</summary>
    public required IReadOnlyList<double[][]> Wall { get; init; }

    /// <summary>The stem.</summary>
    public required IReadOnlyList<double[][]> Stem { get; init; }

    /// <summary>The bond beam.</summary>
    public required IReadOnlyList<double[][]> BondBeam { get; init; }

    /// <summary>Lines between lifts.</summary>
    public required IReadOnlyList<double[][]> LiftLines { get; init; }

    /// <summary>Outside grade, where it is known.</summary>
    public required double? Grade { get; init; }

    /// <summary>Openings.</summary>
    public required IReadOnlyList<OpeningOutline> Openings { get; init; }

    /// <summary>Niches.</summary>
    public required IReadOnlyList<NicheOutline> Niches { get; init; }

    /// <summary>Embeds.</summary>
    public required IReadOnlyList<EmbedMark> Embeds { get; init; }

    /// <summary>Landings of poles and secondaries.</summary>
    public required IReadOnlyList<LandingMark> Landings { get; init; }

    /// <summary>Tees, as lines.</summary>
    public required IReadOnlyList<double[][]> Tees { get; init; }

    /// <summary>Piers.</summary>
    public required IReadOnlyList<PierOutline> Piers { get; init; }

    /// <summary>Where a crew may improvise: left, right, bottom and top of rectangles side by side.</summary>
    public required IReadOnlyList<double[]> Free { get; init; }

    /// <summary>What may be done there, or that there is no such place.</summary>
    public required string FreeSays { get; init; }

    /// <summary>Where findings point.</summary>
    public required IReadOnlyList<FindingMark> Marks { get; init; }
}

/// <summary>An opening's outline, twice where it stands across the zero mark, its header, and the middle of its sill.</summary>
public sealed record OpeningOutline(string Name, IReadOnlyList<double[][]> Outlines, IReadOnlyList<double[][]> Header, double[] Foot);

/// <summary>A niche's outline; near when it is cut from the face looked at.</summary>
public sealed record NicheOutline(string Name, string Label, IReadOnlyList<double[][]> Outlines, bool Near);

/// <summary>An embed.</summary>
public sealed record EmbedMark(string Name, string Address, string Kind, string Label, double[] At, bool Near);

/// <summary>A landing.</summary>
public sealed record LandingMark(string Name, double X, bool Secondary);

/// <summary>A pier as boxes [left, right, bottom, top], two where it stands across the zero mark.</summary>
public sealed record PierOutline(string Address, IReadOnlyList<double[]> Boxes);

/// <summary>Where a finding points, as boxes [left, right, bottom, top].</summary>
public sealed record FindingMark(string Id, IReadOnlyList<double[]> Boxes);

/// <summary>The plan as a small key; points are [east, north].</summary>
public sealed record PlanKey : IAfterAnother
{
    /// <summary>The plan that the page has; null where this is a whole one.</summary>
    internal PlanKey? Before { get; init; }

    object? IAfterAnother.Before => Before;

    /// <summary>The inside face at the wall base.</summary>
    public required double[][] Inside { get; init; }

    /// <summary>The outside face at the wall base.</summary>
    public required double[][] Outside { get; init; }

    /// <summary>The zero mark, across the wall.</summary>
    public required double[][] Zero { get; init; }

    /// <summary>Openings.</summary>
    public required IReadOnlyList<PlanOpening> Openings { get; init; }

    /// <summary>Landings.</summary>
    public required IReadOnlyList<PlanLanding> Landings { get; init; }
}

/// <summary>An opening in plan.</summary>
public sealed record PlanOpening(string Name, double[][] Outline);

/// <summary>A landing in plan.</summary>
public sealed record PlanLanding(double[] At, bool Secondary);
