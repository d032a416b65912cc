using Clomwright.Analysis.Members;
using Clomwright.Evidence;

namespace Clomwright.Analysis.WallByHand;

/// <summary>The wall while it is built: what its foot carries at every lift, the wind that it stands by itself, and a pole that drops on it.</summary>
public sealed record GreenWall
{
    /// <summary>Bottom up.</summary>
    public required Sequence<GreenLift> Lifts { get; init; }

    /// <summary>The wall at its full height and free, in the wind of the site: away from its ends, and at a free end.</summary>
    public required Sequence<CheckedMember> Free { get; init; }

    /// <summary>Height of wall over its base above which it is braced away from its ends, m; null where it stands to its top, or where the wind is not known.</summary>
    public required double? BraceMiddle { get; init; }

    /// <summary>The same at a free end: the jamb of a door, a day's edge.</summary>
    public required double? BraceEnd { get; init; }

    /// <summary>The heaviest pole that drops on the wall at its full height.</summary>
    public required CheckedMember PoleDrop { get; init; }

    /// <summary>How.</summary>
    public required Sequence<Calculation> Calculations { get; init; }
}

/// <summary>The wall when one lift is on.</summary>
/// <param name="Number">From 1 at the bottom.</param>
/// <param name="Height">Of the wall over its base, m.</param>
/// <param name="Pressure">Greatest pressure of the wet cob on the foot or the sill of a pier, Pa.</param>
/// <param name="Strength">Compressive strength that the cob there must have by then, the safety of the method counted, Pa.</param>
/// <param name="Water">Water content to which it must have dried by then; that of cob as laid where that carries it.</param>
/// <param name="TipsMiddle">Gust that tips the wall away from its ends, m/s.</param>
/// <param name="TipsEnd">Gust that tips a free end, m/s; null while the ring is closed.</param>
/// <param name="Leave">Gust at which people leave its lee, m/s; null for a wall too low to hurt.</param>
/// <param name="LeaveFresh">The same on the day that a lift is laid, m/s.</param>
public sealed record GreenLift(
    int Number, double Height, double Pressure, double Strength, double Water, double TipsMiddle, double? TipsEnd, double? Leave, double? LeaveFresh);
