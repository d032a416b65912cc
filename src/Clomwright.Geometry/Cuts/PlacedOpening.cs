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
    public double Sill => Hole.Outline.Sill;

    public double Head => Hole.Outline.Head;

    /// <summary>Half the rough width, m.</summary>
    public double HalfWidth => Opening.Width.Metres / 2;

    /// <summary>The height at which its jambs are told: its sill, or the wall base where that is higher; the widest place of a round one.</summary>
    public double JambHeight(WallFrame frame) => Math.Max(Hole.Outline.WidestAt, frame.Base);
}
