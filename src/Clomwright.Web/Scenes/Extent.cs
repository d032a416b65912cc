using Clomwright.Building;

namespace Clomwright.Web.Scenes;

/// <summary>How far down and up the drawing of the wall reaches, m from the finished floor.</summary>
internal static class Extent
{
    private const double BelowGround = 0.12;

    /// <summary>A little below the outside ground, or below the floor where the ground is not known.</summary>
    public static double Bottom(House house) => Math.Min(house.Site.Grade?.Metres ?? 0, 0) - BelowGround;

    /// <summary>The top of the bond beam, or of an opening that was put too high for the wall: it is shown where it was put.</summary>
    public static double Top(House house) => house.Openings.Select(opening => (opening.Sill + opening.Height).Metres).Append((house.Wall.Top + (house.BondBeam?.Depth ?? default)).Metres).Max();
}
