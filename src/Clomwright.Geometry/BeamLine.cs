using Clomwright.Building;

namespace Clomwright.Geometry;

/// <summary>The line of the bond beam.</summary>
internal static class BeamLine
{
    /// <summary>Offset of its centreline from the inside curve at the wall base, m; the middle of the wall top where there is no bond beam.</summary>
    public static double Of(House house, WallSolid wall)
    {
        var top = wall.Top.Metres;
        var middle = (wall.InsideOffset(top) + wall.OutsideOffset(top)) / 2;
        var offset = house.BondBeam?.Offset.Metres ?? 0;
        return Math.Abs(offset) <= wall.ThicknessAt(top) ? middle + offset : middle;
    }
}
