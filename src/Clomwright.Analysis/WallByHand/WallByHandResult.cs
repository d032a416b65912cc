using Clomwright.Analysis.Members;
using Clomwright.Evidence;

namespace Clomwright.Analysis.WallByHand;

/// <summary>The wall worked by hand: piers as columns, what tips or slides it, the green wall, the wet foot. Numbers, never a verdict.</summary>
public sealed record WallByHandResult
{
    /// <summary>Piers clockwise as geometry lists them; the whole ring as one where nothing is open.</summary>
    public required Sequence<PierByHand> Piers { get; init; }

    /// <summary>Each pier against falling out or in, free at its top and held there.</summary>
    public required Sequence<CheckedMember> OutOfPlane { get; init; }

    /// <summary>Each pier against its share of what shakes or blows along it, the weakest of rocking, sliding and cracking across.</summary>
    public required Sequence<CheckedMember> InPlane { get; init; }

    /// <summary>What each pier holds along itself where it is used most.</summary>
    public required Sequence<PierAlong> Along { get; init; }

    /// <summary>Each joint between lifts against sliding.</summary>
    public required Sequence<CheckedMember> Joints { get; init; }

    /// <summary>The whole house against turning over its outer edge.</summary>
    public required CheckedMember Overturning { get; init; }

    /// <summary>A metre of wall against ground that is higher than its foot on one side: turning and sliding; none where the ground is lower.</summary>
    public required Sequence<CheckedMember> Soil { get; init; }

    /// <summary>While it is built.</summary>
    public required GreenWall Green { get; init; }

    /// <summary>With its foot soaked.</summary>
    public required WetFoot Wet { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>How.</summary>
    public Sequence<Calculation> Calculations =>
    [
        .. Piers.SelectMany(p => new[] { p.Mean.How, p.Edge.How }).OfType<Calculation>(),
        .. OutOfPlane.Concat(InPlane).Concat(Joints).Append(Overturning).Concat(Soil).Select(m => m.How).OfType<Calculation>(),
        .. Green.Calculations, .. Wet.Checks.Select(m => m.How).OfType<Calculation>(),
    ];
}

/// <summary>A pier as a column.</summary>
public sealed record PierByHand
{
    /// <summary>As geometry addresses it; <c>wall</c> for the whole ring.</summary>
    public required string Address { get; init; }

    /// <summary>Level cuts, each in the state that uses it most: <c>head</c>, <c>middle</c>, <c>sill</c>, <c>foot</c>, then what spreads under each pole that lands on it.</summary>
    public required Sequence<CutStress> Cuts { get; init; }

    /// <summary>Every combination and stage.</summary>
    public required Sequence<PierState> States { get; init; }

    /// <summary>Mean pressure against what is allowed, bent and slender.</summary>
    public required CheckedMember Mean { get; init; }

    /// <summary>Pressure at the edge against what is allowed.</summary>
    public required CheckedMember Edge { get; init; }
}

/// <summary>A level cut and what comes down on it.</summary>
/// <param name="Where"><c>head</c>, <c>middle</c>, <c>sill</c>, <c>foot</c>, or the name of a pole.</param>
/// <param name="Height">m from the finished floor.</param>
/// <param name="Width">b along the wall, m.</param>
/// <param name="Thickness">t, m.</param>
/// <param name="Area">A: what is left of it, m2.</param>
/// <param name="Combination">That uses it most.</param>
/// <param name="Sense">Its pattern or stage.</param>
/// <param name="Load">N, N.</param>
/// <param name="Mean">N/A, Pa.</param>
/// <param name="Edge">Greatest pressure where nothing pulls, Pa.</param>
/// <param name="Across">e: where N comes down from the middle of the thickness, m outward.</param>
/// <param name="Along">e_b: from the middle of the width, m clockwise.</param>
/// <param name="Reduction">What bending and slenderness leave of the strength.</param>
/// <param name="Allowed">Of mean pressure, Pa.</param>
public sealed record CutStress(
    string Where, double Height, double Width, double Thickness, double Area, string Combination, string Sense, double Load, double Mean, double Edge, double Across, double Along, double Reduction, double Allowed)
{
    /// <summary>Mean pressure over what is allowed.</summary>
    public double Use => Mean / Allowed;
}

/// <summary>A pier in one combination or stage.</summary>
/// <param name="Combination">Its factors.</param>
/// <param name="Sense">Its pattern or stage.</param>
/// <param name="Load">On the cut at its sill, N.</param>
/// <param name="Mean">There, Pa.</param>
/// <param name="Use">The most that any of its cuts is used.</param>
public sealed record PierState(string Combination, string Sense, double Load, double Mean, double Use);

/// <summary>What a pier holds along itself.</summary>
/// <param name="Address">The pier.</param>
/// <param name="Mode"><c>rocking</c>, <c>sliding</c> or <c>cracking</c>: the weakest.</param>
/// <param name="Rocking">N.</param>
/// <param name="Sliding">N.</param>
/// <param name="Cracking">N.</param>
/// <param name="Share">Of the whole force that comes to it, N.</param>
public sealed record PierAlong(string Address, string Mode, double Rocking, double Sliding, double Cracking, double Share);
