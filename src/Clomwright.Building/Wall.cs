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
