using Clomwright.Evidence;

namespace Clomwright.Analysis.Loads;

/// <summary>Wind on a house, Pa square to the surfaces, as characteristic loads of an edition. On the roof down and inward are positive.</summary>
/// <remarks>The house is taken as a hipped one of the same slope with the plan's width across the wind: no table exists for low conical roofs.</remarks>
public sealed record WindLoad
{
    /// <summary>Whose numbers these are.</summary>
    public required LoadEdition Edition { get; init; }

    /// <summary>q_h or q_p: velocity pressure at the height of the roof, direction factor included.</summary>
    public required double Velocity { get; init; }

    /// <summary>Most suction on the windward half of the roof, inside pressure pushing up.</summary>
    public required double WindwardUp { get; init; }

    /// <summary>Most suction on the leeward half with it.</summary>
    public required double LeewardUp { get; init; }

    /// <summary>On the windward eaves: suction above and pressure under them together.</summary>
    public required double EaveUp { get; init; }

    /// <summary>Most push on the windward half, inside suction pulling down.</summary>
    public required double WindwardDown { get; init; }

    /// <summary>On the leeward half with it.</summary>
    public required double LeewardDown { get; init; }

    /// <summary>On the windward wall with inside suction.</summary>
    public required double WallIn { get; init; }

    /// <summary>On the leeward or side wall with inside pressure; negative is outward.</summary>
    public required double WallOut { get; init; }

    /// <summary>On windward and leeward walls together, along the wind: pressure inside pushes both ways and cancels.</summary>
    public required double WallsAcross { get; init; }

    /// <summary>Across a wall that stands free while it is built, without a roof.</summary>
    public required double FreeWall { get; init; }

    /// <summary>How.</summary>
    public required Sequence<Calculation> How { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }
}

/// <summary>What wind depends on, from the house.</summary>
/// <param name="MeanHeight">Mean height of the roof above the ground, m.</param>
/// <param name="Slope">Mean slope of the roof, radians.</param>
/// <param name="Width">Of the roofed plan along the wind, m.</param>
/// <param name="Elevation">Of the ground above sea level, m.</param>
public readonly record struct WindShape(double MeanHeight, double Slope, double Width, double Elevation);

/// <summary>Wind on houses.</summary>
public static class WindOnHouse
{
    /// <summary>Wind pressures, or why they are not known.</summary>
    /// <param name="speed">Basic speed with its edition.</param>
    /// <param name="exposure">B, C or D in ASCE 7; 0, I, II, III or IV in EN 1991-1-4.</param>
    /// <param name="shape">The house.</param>
    public static Known<WindLoad> Of(BasicWind speed, string? exposure, WindShape shape) =>
        speed.Edition == LoadEdition.En1990 ? WindEn.Of(speed, exposure, shape) : WindAsce.Of(speed, exposure, shape);
}
