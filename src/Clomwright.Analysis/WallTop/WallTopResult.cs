using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>What the roof asks of the top of the wall: headers, tees, pole seats and bond beam.</summary>
public sealed record WallTopResult
{
    /// <summary>Each header: bending, shear and bearing on cob.</summary>
    public required Sequence<CheckedMember> Headers { get; init; }

    /// <summary>Both ends of every header that is computed, with the bearing that each asks.</summary>
    public required Sequence<HeaderEnd> HeaderEnds { get; init; }

    /// <summary>Each tee against the uplift that comes to it.</summary>
    public required Sequence<CheckedMember> Tees { get; init; }

    /// <summary>Each strap that is to hold down: its cob and its pull, or why it is not counted.</summary>
    public required Sequence<CheckedMember> Straps { get; init; }

    /// <summary>Tees and straps that share the uplift, by station.</summary>
    public required Sequence<HoldDown> HoldDowns { get; init; }

    /// <summary>Where each pole sits on its straight piece of bond beam; none without poles or bond beam.</summary>
    public required Sequence<PoleSeat> Seats { get; init; }

    /// <summary>Pressure on the cob under each pole.</summary>
    public required Sequence<CheckedMember> Bearing { get; init; }

    /// <summary>The farthest that a seat lies from the middle of the wall top, as a share of the thickness there; a sixth is the edge of the middle third. Without poles that of the bond-beam line.</summary>
    public required double SeatEccentricity { get; init; }

    /// <summary>Pieces of the bond beam on the curve; none without a bond beam.</summary>
    public required Sequence<BeamPiece> BeamPieces { get; init; }

    /// <summary>The bond beam as timber: pull, laps and their bolts, bending between tees.</summary>
    public required Sequence<CheckedMember> Beam { get; init; }

    /// <summary>Sideways from the roof to the stem: beam on cob, cob on stem, and the wall against falling outward.</summary>
    public required Sequence<CheckedMember> Lateral { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>How.</summary>
    public Sequence<Calculation> Calculations =>
        [.. Headers.Concat(Tees).Concat(Straps).Concat(Bearing).Concat(Beam).Concat(Lateral).Select(m => m.How).OfType<Calculation>()];
}

/// <summary>One end of a header on the cob, in its hardest combination.</summary>
/// <param name="Opening">Name of the opening.</param>
/// <param name="Left">Whether it is the left end, seen from inside.</param>
/// <param name="Force">What presses there with all the cob above it counted, N.</param>
/// <param name="Needed">Length of bearing at which it presses with what the cob is allowed, m; null where no length does, because the cob above alone presses too hard.</param>
public sealed record HeaderEnd(string Opening, bool Left, double Force, double? Needed)
{
    /// <summary>Of the force, what comes from poles, N.</summary>
    public required double Poles { get; init; }

    /// <summary>From middle to middle of the bearings, m.</summary>
    public required double Span { get; init; }

    /// <summary>What would press there if the cob above arched, N; null where there is too little above to arch.</summary>
    public required double? Arched { get; init; }

    /// <summary>Length of bearing for that, m; null without arching, or where no length does.</summary>
    public required double? NeededArched { get; init; }

    /// <summary>The combination that governs.</summary>
    public required Combination Combination { get; init; }

    /// <summary>Its pattern.</summary>
    public required string Sense { get; init; }
}

/// <summary>A tee or a strap that holds the roof down to the cob over its bar.</summary>
/// <param name="Subject">Its address: <c>tee 3</c>, or the strap's.</param>
/// <param name="Station">Foot of the normal on the inside curve, m.</param>
/// <param name="Depth">From the wall top to the underside of its bar, m.</param>
/// <param name="Bar">Length of the bar along the wall, m.</param>
/// <param name="BarHeight">Height of the underside of the bar, m.</param>
public sealed record HoldDown(string Subject, double Station, double Depth, double Bar, double BarHeight)
{
    /// <summary>Whether its bar lies in whole cob.</summary>
    public bool InSolidCob { get; init; } = true;

    /// <summary>The strap; null for a tee.</summary>
    public Embed? Strap { get; init; }
}

/// <summary>One straight piece of the bond beam. Its line keeps within a fifth of the beam's width of the curve.</summary>
/// <param name="Number">From 1, clockwise from the zero mark.</param>
/// <param name="From">Station along the bond-beam centreline where it begins, m.</param>
/// <param name="To">Where it ends, m.</param>
/// <param name="Chord">Length of its centreline from mitre to mitre, m.</param>
/// <param name="Mitre">Angle to cut off square at its far end: half the turn to the next piece, radians.</param>
/// <param name="Rise">How far the curve bulges past its centreline at the middle, m.</param>
public sealed record BeamPiece(int Number, double From, double To, double Chord, double Mitre, double Rise)
{
    /// <summary>From the joint at its far end to the nearest edge of an opening or side of a tee's leg, m; 0 over one.</summary>
    public double Reach { get; init; }

    /// <summary>Where its centreline begins, in plan.</summary>
    public PlanPoint Corner { get; init; }

    /// <summary>Its longer edge, m: its middle line and what both mitres add on that side.</summary>
    public double Longest { get; init; }

    /// <summary>What to cut it to, m: the longer edge and half a lap past each mitre line; as long as the edge where no lap is described.</summary>
    public double CutTo { get; init; }
}

/// <summary>Where a pole presses on the wall top.</summary>
/// <param name="Pole">Its name.</param>
/// <param name="Piece">Number of the piece of bond beam under it.</param>
/// <param name="Rise">How far the curve of the bond beam bulges past the straight piece there, m.</param>
/// <param name="OffCentre">From the middle of the wall top to the middle of what the pole lies on, m; positive outward.</param>
/// <param name="Thickness">Of the wall top, m.</param>
public sealed record PoleSeat(string Pole, int Piece, double Rise, double OffCentre, double Thickness)
{
    /// <summary>Of that, from the middle of the beam, m: a short seat leaves its far edge free.</summary>
    public double OffMiddle { get; init; }

    /// <summary>Off-centre over thickness.</summary>
    public double Share => Math.Abs(OffCentre) / Thickness;
}
