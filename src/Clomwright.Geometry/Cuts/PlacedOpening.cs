using Clomwright.Building;

namespace Clomwright.Geometry.Cuts;

/// <summary>An opening with its hole, before the others are known.</summary>
/// <param name="Opening">Its description.</param>
/// <param name="Index">Its place in the house file's list.</param>
/// <param name="Hole">The hole with its splays.</param>
/// <param name="Rough">The shaft of the rough opening, without splays.</param>
/// <param name="Widest">The widest reach over the whole thickness and height, as stations.</param>
/// <param name="Volumes">Cob displaced lift by lift, m3.</param>
internal sealed record PlacedOpening(Opening Opening, int Index, Hole Hole, Shaft Rough, Span Widest, double[] Volumes)
{
    /// <summary>Cob displaced in each band of the first lift as laid, m3.</summary>
    public required double[] AsLaid { get; init; }

    /// <summary>Area taken from the inside face lift by lift, m2.</summary>
    public required double[] InsideFaces { get; init; }

    /// <summary>Area taken from the outside face lift by lift, m2.</summary>
    public required double[] OutsideFaces { get; init; }

    /// <summary>Whether nothing had to be remarked when it was stood in the wall.</summary>
    public required bool IsSound { get; init; }

    public double Sill => Hole.Outline.Sill;

    public double Head => Hole.Outline.Head;

    /// <summary>Half the rough width, m.</summary>
    public double HalfWidth => Opening.Width.Metres / 2;

    /// <summary>The height at which its jambs are told: its sill, or the wall base where that is higher; the widest place of a round one.</summary>
    public double JambHeight(WallFrame frame) => Math.Max(Hole.Outline.WidestAt, frame.Base);
}
