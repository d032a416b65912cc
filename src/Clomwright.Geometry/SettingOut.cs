using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>What the crew needs to mark the house on the ground.</summary>
public sealed record SettingOut
{
    /// <summary>Where the centre peg stands.</summary>
    public required PlanPoint Centre { get; init; }

    /// <summary>The first of two fixed pegs outside the wall.</summary>
    public required PlanPoint PegA { get; init; }

    /// <summary>The second of two fixed pegs outside the wall.</summary>
    public required PlanPoint PegB { get; init; }

    /// <summary>Distance between the two pegs, m.</summary>
    public required double PegDistance { get; init; }

    /// <summary>Marks on the inside face at the wall base: the zero mark, jambs, and points between.</summary>
    public required Sequence<SettingOutMark> Marks { get; init; }

    /// <summary>Lines on the ground that run beside the inside face at the wall base all round.</summary>
    public Sequence<SettingOutLine> Lines { get; init; }

    /// <summary>For a round house whose centre cannot be reached: the chord between neighbouring numbered points, to which a fixed triangle is cut; null otherwise.</summary>
    public CircleChord? Jig { get; init; }
}

/// <summary>A line on the ground beside the inside face at the wall base.</summary>
/// <param name="Key">Permanent key: <c>wall-inside</c>, <c>wall-outside</c>, <c>stem-inside</c>, <c>stem-outside</c>, <c>trench-inside</c>, <c>trench-outside</c>.</param>
/// <param name="Offset">Outward from the inside face at the wall base, m; negative toward the room.</param>
/// <param name="Length">All round, m.</param>
public sealed record SettingOutLine(string Key, double Offset, double Length);

/// <summary>One mark on the ground. Lengths in m, bearings in radians clockwise from north.</summary>
/// <param name="Name">Address of what it is: <c>zero</c>, <c>door/jamb 1</c> (the first one clockwise), <c>point 3</c>.</param>
/// <param name="Station">Along the inside face from the zero mark.</param>
/// <param name="Point">In plan.</param>
/// <param name="Bearing">From the centre peg.</param>
/// <param name="FromCentre">From the centre peg.</param>
/// <param name="FromA">Tape from peg A.</param>
/// <param name="FromB">Tape from peg B.</param>
/// <param name="ErrorAlong">Standard error along the line from A to B for a tape error of 5 mm each, m.</param>
/// <param name="ErrorAcross">Standard error square to the line from A to B, for a tape error of 5 mm each, m.</param>
public sealed record SettingOutMark(string Name, double Station, PlanPoint Point, double Bearing, double FromCentre, double FromA, double FromB, double ErrorAlong, double ErrorAcross);

/// <summary>Both faces at one height, row by row round the wall.</summary>
/// <param name="Height">From the finished floor, m.</param>
/// <param name="Rows">Clockwise from the zero mark.</param>
public sealed record OffsetTable(double Height, Sequence<OffsetRow> Rows)
{
    /// <summary>Whether both faces are circles about the centre peg, so that one row says all.</summary>
    public bool IsRound { get; init; }
}

/// <summary>Both faces on one ray from the centre peg (for a round house the same radius all round).</summary>
/// <param name="Bearing">From the centre peg, radians clockwise from north.</param>
/// <param name="Station">Where the ray meets the inside face at the base.</param>
/// <param name="Inside">Distance from the centre peg to the inside face at this height, m.</param>
/// <param name="Outside">Distance from the centre peg to the outside face at this height, m.</param>
public sealed record OffsetRow(double Bearing, double Station, double Inside, double Outside);
