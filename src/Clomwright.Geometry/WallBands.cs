using Clomwright.Building;

namespace Clomwright.Geometry;

/// <summary>Slices of the wall as trimmed, as laid, and of the stem under it.</summary>
internal static class WallBands
{
    /// <summary>The wall between two heights, as trimmed.</summary>
    public static Band Trimmed(WallSolid wall, double bottom, double top) =>
        new(bottom, Math.Max(bottom, top), wall.InsideOffset(bottom), wall.InsideOffset(top), wall.OutsideOffset(bottom), wall.OutsideOffset(top));

    /// <summary>Offsets of the stem's two faces.</summary>
    public static (double Inside, double Outside) Stem(Stem stem, WallSolid wall)
    {
        var inside = -(stem.InsideOffset?.Metres ?? (stem.Width.Metres - wall.ThicknessAt(wall.Base.Metres)) / 2);
        return (inside, inside + stem.Width.Metres);
    }

    /// <summary>The first lift as laid: it fills the stem's width where that is wider than the wall. Cut where a face passes the stem's.</summary>
    public static IEnumerable<Band> AsLaid(Stem stem, WallSolid wall, Band lift)
    {
        var (inside, outside) = Stem(stem, wall);
        double[] cuts = [lift.Bottom, lift.HeightOfInside(inside), lift.HeightOfOutside(outside), lift.Top];
        var places = cuts.Where(z => z >= lift.Bottom && z <= lift.Top).Order().ToArray();
        for (var i = 1; i < places.Length; i++)
        {
            var part = lift.Within(places[i - 1], places[i]);
            if (part.Height > 0)
            {
                yield return part with
                {
                    InsideBottom = Math.Min(part.InsideBottom, inside),
                    InsideTop = Math.Min(part.InsideTop, inside),
                    OutsideBottom = Math.Max(part.OutsideBottom, outside),
                    OutsideTop = Math.Max(part.OutsideTop, outside),
                };
            }
        }
    }
}
