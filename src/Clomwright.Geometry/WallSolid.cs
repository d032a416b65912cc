using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Geometry;

/// <summary>The wall between its two faces. Offsets are outward from the inside curve at the wall base, m; heights from the finished floor, m.</summary>
/// <remarks>A positive taper leans its face into the wall going up: the inside face moves outward, the outside face inward.</remarks>
public sealed record WallSolid
{
    /// <summary>Height of the stem's top, where the cob begins, exact.</summary>
    public required Length Base { get; init; }

    /// <summary>Height of the wall top, exact.</summary>
    public required Length Top { get; init; }

    /// <summary>Thickness at the top, exact.</summary>
    public required Length ThicknessAtTop { get; init; }

    /// <summary>Taper of the inside face.</summary>
    public required Slope InsideTaper { get; init; }

    /// <summary>Taper of the outside face.</summary>
    public required Slope OutsideTaper { get; init; }

    /// <summary>Offset of the inside face at a height.</summary>
    public double InsideOffset(double height) => InsideTaper.RiseOverRun * (height - Base.Metres);

    /// <summary>Offset of the outside face at a height.</summary>
    public double OutsideOffset(double height) =>
        ThicknessAtTop.Metres + InsideTaper.RiseOverRun * (Top - Base).Metres + OutsideTaper.RiseOverRun * (Top.Metres - height);

    /// <summary>Thickness normal to the inside curve at a height.</summary>
    public double ThicknessAt(double height) => OutsideOffset(height) - InsideOffset(height);
}
