using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The cob wall.</summary>
/// <param name="Top">Height of the top of the cob, under the bond beam.</param>
/// <param name="ThicknessAtTop">Normal to the inside curve.</param>
/// <param name="OutsideTaper">How much the outside face leans into the wall going up, horizontal over vertical.</param>
/// <param name="InsideTaper">How much the inside face leans into the wall going up.</param>
public sealed record Wall(Length Top, Length ThicknessAtTop, Slope OutsideTaper = default, Slope InsideTaper = default);

/// <summary>How a lift is laid.</summary>
public enum LiftMethod
{
    /// <summary>Stiff cob tossed up and stitched, 6 to 18 in.</summary>
    Tossed,

    /// <summary>Forked up and trodden, about 2 ft.</summary>
    Forked,

    /// <summary>Between boards.</summary>
    Formed,
}

/// <summary>The lifts, planned once. Days may split a lift into placings but never renumber it.</summary>
public sealed record LiftPlan
{
    /// <summary>Equal heights from the stem up, the last one taking what is left.</summary>
    public Length? Height { get; init; }

    /// <summary>The tops of the lifts in turn, instead of equal heights; the last is the wall top.</summary>
    public Sequence<Length> Tops { get; init; }

    /// <summary>How they are laid.</summary>
    public LiftMethod Method { get; init; } = LiftMethod.Tossed;
}

/// <summary>The timber ring on the wall top.</summary>
/// <param name="Width">Across the wall.</param>
/// <param name="Depth">Upright.</param>
/// <param name="Offset">Of its centreline from the middle of the wall top, outward positive.</param>
/// <param name="Material">Key of a timber in the data files.</param>
public sealed record BondBeam(Length Width, Length Depth, Length Offset, string Material = "douglas-fir-no2");

/// <summary>T-shaped timber anchors that hold the bond beam down.</summary>
/// <param name="Spacing">Along the bond beam.</param>
/// <param name="Depth">From the wall top to the underside of the bar.</param>
/// <param name="Bar">Length of the buried cross bar along the wall.</param>
public sealed record Tees(Length Spacing, Length Depth, Length Bar);

/// <summary>Which face of the wall.</summary>
public enum Face
{
    /// <summary>The room side.</summary>
    Inside,

    /// <summary>The weather side.</summary>
    Outside,
}

/// <summary>A plaster or wash on a face.</summary>
/// <param name="Face">Which face.</param>
/// <param name="Material">Key of a finish: <c>earth-plaster</c>, <c>lime-plaster</c>, <c>cement-plaster</c>, <c>closed-paint</c>.</param>
/// <param name="Depth">Total thickness; null where it is a wash.</param>
public sealed record Finish(Face Face, string Material, Length? Depth = null);
