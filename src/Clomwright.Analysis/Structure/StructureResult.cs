using Clomwright.Analysis.Loads;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Structure;

/// <summary>What the wall does as one elastic body under every stage and combination of loads. Stresses in Pa, as means over a patch; compression counts positive where it says so.</summary>
public sealed record StructureResult
{
    /// <summary>How the wall was divided.</summary>
    public required WallDivision Division { get; init; }

    /// <summary>Length of the patch that stresses are means over, along the wall and up it, m.</summary>
    public required double Patch { get; init; }

    /// <summary>Piers, clockwise as geometry lists them.</summary>
    public required Sequence<PierStress> Piers { get; init; }

    /// <summary>Cob under each pole.</summary>
    public required Sequence<LandingStress> Landings { get; init; }

    /// <summary>Cob under the ends of headers.</summary>
    public required Sequence<HeaderStress> Headers { get; init; }

    /// <summary>How it turns when it is pushed.</summary>
    public required WallLayout Layout { get; init; }

    /// <summary>The ground that presses on it; null where it is no higher than its foot.</summary>
    public required SoilPressure? Soil { get; init; }

    /// <summary>Where the elastic wall would have to hold tension above the share, hardest first.</summary>
    public required Sequence<TensionZone> Tension { get; init; }

    /// <summary>Tension above which a zone counts, Pa: a share of the characteristic strength.</summary>
    public required double TensionLevel { get; init; }

    /// <summary>Most tension anywhere in cob, Pa; negative where all of it is pressed together.</summary>
    public required double TensionMost { get; init; }

    /// <summary>How the foot of the wall rests on the stem, which cannot pull.</summary>
    public required BaseContact Base { get; init; }

    /// <summary>The wall's face as it is drawn: the hardest of all cases, stack by stack.</summary>
    public required WallPicture Picture { get; init; }

    /// <summary>Whether the model answers its loads.</summary>
    public required ModelChecks Checks { get; init; }

    /// <summary>Pressure allowed on this cob, slenderness counted, Pa.</summary>
    public required Calculated<double> Allowed { get; init; }

    /// <summary>Cases looked at.</summary>
    public required int Cases { get; init; }

    /// <summary>A load that belongs in the cases and is not known; null when all are.</summary>
    public Message? Missing { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>How.</summary>
    public Sequence<Calculation> Calculations => [Allowed.How, .. Piers.Select(p => p.How)];
}

/// <summary>The grid.</summary>
/// <param name="Around">Cells along the wall.</param>
/// <param name="Up">Rows of cob.</param>
/// <param name="Through">Cells through the thickness.</param>
/// <param name="Unknowns">Equations solved.</param>
/// <param name="Modulus">Young's modulus of cob, Pa.</param>
public sealed record WallDivision(int Around, int Up, int Through, int Unknowns, double Modulus);

/// <summary>One pier.</summary>
public sealed record PierStress
{
    /// <summary><c>pier door|south-window</c>.</summary>
    public required string Address { get; init; }

    /// <summary>Most mean compression over a level section, Pa.</summary>
    public required double MeanMost { get; init; }

    /// <summary>Height of that section, m.</summary>
    public required double MeanAt { get; init; }

    /// <summary>In which case.</summary>
    public required WallCase MeanCase { get; init; }

    /// <summary>Most upright compression of either face, as a mean over a patch, Pa.</summary>
    public required double EdgeMost { get; init; }

    /// <summary>Station of that patch, m.</summary>
    public required double EdgeStation { get; init; }

    /// <summary>Height of it, m.</summary>
    public required double EdgeHeight { get; init; }

    /// <summary>Whether it is on the outside face.</summary>
    public required bool EdgeOutside { get; init; }

    /// <summary>In which case.</summary>
    public required WallCase EdgeCase { get; init; }

    /// <summary>Out of its plane, without tension: where it is used most.</summary>
    public required PierStand Across { get; init; }

    /// <summary>Along itself, without tension: where it is used most.</summary>
    public required PierStand Along { get; init; }

    /// <summary>Foot, middle and head of the pier.</summary>
    public required Sequence<PierLevel> Levels { get; init; }

    /// <summary>Mean compression under the wall alone at the lowest section, Pa.</summary>
    public required double MeanBare { get; init; }

    /// <summary>How the mean was made.</summary>
    public required Calculation How { get; init; }
}

/// <summary>One level section of a pier, each number the hardest of all cases.</summary>
/// <param name="Height">m.</param>
/// <param name="Area">Of cob, m2.</param>
/// <param name="Mean">Most mean compression, Pa.</param>
/// <param name="Edge">Most upright compression of a patch in this row, Pa.</param>
public readonly record struct PierLevel(double Height, double Area, double Mean, double Edge);

/// <summary>Whether a pier passes its forces on without tension, at one level in one case.</summary>
/// <param name="Mode"><c>tipping</c>: how far the force stands off the middle, m; <c>sliding</c> and <c>cracking</c>: the force along a level cut, N.</param>
/// <param name="Asked">How far off, or how hard.</param>
/// <param name="Holds">What it stands.</param>
/// <param name="Load">What presses there, N; negative where it pulls.</param>
/// <param name="Height">Of the section, m.</param>
/// <param name="Thickness">Of the wall there, m.</param>
/// <param name="Area">Of cob there, m2.</param>
/// <param name="Case">In which case.</param>
public sealed record PierStand(string Mode, double Asked, double Holds, double Load, double Height, double Thickness, double Area, WallCase Case)
{
    /// <summary>What is asked over what it stands.</summary>
    public double Use => Holds > 0 ? Asked / Holds : Asked > 0 ? double.PositiveInfinity : 0;
}

/// <summary>Cob under an end of a header.</summary>
/// <param name="Opening">Name of the opening.</param>
/// <param name="Left">Whether it is the end before the opening, clockwise: the left one seen from inside.</param>
/// <param name="Pressure">Most upright compression of either face just under it, as a mean over a patch, Pa.</param>
/// <param name="Case">In which case.</param>
public sealed record HeaderStress(string Opening, bool Left, double Pressure, WallCase Case);

/// <summary>Cob under a pole.</summary>
/// <param name="Name">Of the landing.</param>
/// <param name="Pressure">Most upright compression of the top row of cob, as a mean over a patch, Pa.</param>
/// <param name="Case">In which case.</param>
/// <param name="Spread">Length of wall top over which half of that is still reached in that case, m.</param>
public sealed record LandingStress(string Name, double Pressure, WallCase Case, double Spread);

/// <summary>A stretch of cob where tension is above the level.</summary>
/// <param name="Station">Of the hardest patch, m.</param>
/// <param name="Height">Of it, m.</param>
/// <param name="Outside">Whether it is on the outside face.</param>
/// <param name="Tension">There, Pa.</param>
/// <param name="Angle">Of the tension from the level along the wall, radians; a crack runs square to it.</param>
/// <param name="Area">Of the zone on the wall's face, m2.</param>
/// <param name="From">Station where it begins, m.</param>
/// <param name="To">Where it ends, m; may pass the ring's length.</param>
/// <param name="Bottom">Its lowest row, m.</param>
/// <param name="Top">Its highest, m.</param>
/// <param name="Case">In which case.</param>
public sealed record TensionZone(double Station, double Height, bool Outside, double Tension, double Angle, double Area, double From, double To, double Bottom, double Top, WallCase Case)
{
    /// <summary>What it is nearest to: the name of an opening, or null.</summary>
    public string? Near { get; init; }
}

/// <summary>How the foot of the wall rests on the stem.</summary>
/// <param name="Pulling">Cases in which a foot that could pull would do so somewhere.</param>
/// <param name="Resolved">Of these, how many were solved again with a foot that lets go: those that govern anything, and the hardest pull.</param>
/// <param name="LiftedMost">Largest share of the foot that then lets go.</param>
/// <param name="LiftedCase">In which case; null where none lets go.</param>
/// <param name="Standing">False when a case was found in which no foot holds the wall.</param>
public sealed record BaseContact(int Pulling, int Resolved, double LiftedMost, WallCase? LiftedCase, bool Standing);

/// <summary>What the answers must fulfil whatever the model.</summary>
/// <param name="ReactionError">Reactions against loads, the worst of all unit loads, as a share of them.</param>
/// <param name="Residual">Largest force out of balance at a node, as a share of the largest force.</param>
/// <param name="Reciprocity">Work of each load on the displacements of another, both ways (Betti), as a share.</param>
public sealed record ModelChecks(double ReactionError, double Residual, double Reciprocity);

/// <summary>The wall's cob as a sheet of stacks for drawing. Stack (i, k) has number i Up + k.</summary>
public sealed record WallPicture
{
    /// <summary>Stations of the lines between stacks, m.</summary>
    public required Sequence<double> Stations { get; init; }

    /// <summary>Heights of the lines between rows, m.</summary>
    public required Sequence<double> Heights { get; init; }

    /// <summary>How much of each stack is cob; 0 in openings and where timber lies.</summary>
    public required Sequence<double> Share { get; init; }

    /// <summary>Most principal compression of either face, Pa; 0 without cob.</summary>
    public required Sequence<double> Compression { get; init; }

    /// <summary>Most principal tension of either face, Pa; 0 without cob.</summary>
    public required Sequence<double> Tension { get; init; }

    /// <summary>Rows of stacks.</summary>
    public int Up => Heights.Count - 1;
}
