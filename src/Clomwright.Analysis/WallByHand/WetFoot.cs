using Clomwright.Analysis.Members;
using Clomwright.Evidence;

namespace Clomwright.Analysis.WallByHand;

/// <summary>What is left when the bottom of the wall is soaked: numbers by water content and by depth of softened skin, never one factor.</summary>
public sealed record WetFoot
{
    /// <summary>Of the soaked part, m.</summary>
    public required double Height { get; init; }

    /// <summary>w_L of the earth.</summary>
    public required double LiquidLimit { get; init; }

    /// <summary>w_P of the earth.</summary>
    public required double PlasticLimit { get; init; }

    /// <summary>Water content at rest with the air.</summary>
    public required double Rest { get; init; }

    /// <summary>As the piers are listed.</summary>
    public required Sequence<WetPier> Piers { get; init; }

    /// <summary>Address of the pier that has least to spare.</summary>
    public required string Worst { get; init; }

    /// <summary>Of that pier, soaked through, from rest to the liquid limit.</summary>
    public required Sequence<WetPoint> Curve { get; init; }

    /// <summary>Each pier soaked through to its plastic limit.</summary>
    public required Sequence<CheckedMember> Checks { get; init; }
}

/// <summary>One water content.</summary>
/// <param name="Water">Share of the dry mass.</param>
/// <param name="Strength">Compressive, Pa.</param>
/// <param name="Margin">Strength over what presses; 1 is the end.</param>
public sealed record WetPoint(double Water, double Strength, double Margin);

/// <summary>One pier with its foot soaked.</summary>
/// <param name="Address">The pier.</param>
/// <param name="Load">On its foot, N.</param>
/// <param name="Pressure">On the part centred under the load, Pa.</param>
/// <param name="WaterGone">Water content of the whole foot at which nothing is left.</param>
/// <param name="WaterSafe">At which the safety of a soaked foot is left.</param>
/// <param name="SkinGone">Depth softened on the face that the load leans to, or on both, at which nothing is left, m.</param>
/// <param name="SkinSafe">At which that safety is left, m.</param>
/// <param name="SkinSafeOther">The same on the other face alone, m.</param>
/// <param name="Lost">With all of this pier's foot gone: dry strength over what presses on the worse of both neighbours, half of it each; null where there are not two.</param>
public sealed record WetPier(
    string Address, double Load, double Pressure, double WaterGone, double WaterSafe, double SkinGone, double SkinSafe, double SkinSafeOther, double? Lost);
