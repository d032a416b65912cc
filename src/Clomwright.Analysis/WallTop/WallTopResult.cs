using Clomwright.Analysis.Members;
using Clomwright.Evidence;

namespace Clomwright.Analysis.WallTop;

/// <summary>What the roof asks of the top of the wall: headers, tees, pole seats and bond beam.</summary>
public sealed record WallTopResult
{
    /// <summary>Each header: bending, shear and bearing on cob.</summary>
    public required Sequence<CheckedMember> Headers { get; init; }

    /// <summary>Each tee against the uplift that comes to it.</summary>
    public required Sequence<CheckedMember> Tees { get; init; }

    /// <summary>Off-centre of the bond-beam line from the middle of the wall top, as a share of the thickness there; a sixth is the edge of the middle third.</summary>
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
        [.. Headers.Concat(Tees).Concat(Beam).Concat(Lateral).Select(m => m.How).OfType<Calculation>()];
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
}
