using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

internal static partial class IrcCob
{
    private static Sequence<Ruling> SeismicGate(HouseGeometry house, Amount category)
    {
        var site = house.House.Site;
        if (SeismicCategory.Within(site, (int)category.Si) is not { } comparisons)
        {
            return [Ruling.NotChecked("site", "seismic-category-unknown")];
        }

        var found = Message.Of("rules.note.seismic-category", ("category", SeismicCategory.Of(site)!));
        return [new Ruling("site", comparisons.Count > 0 ? Require.All(comparisons.AsSpan()) : new Verdict.Met(found)).Noting(found)];
    }

    /// <summary>The wall alone, without the roof: where it is too high already, nothing else need be known.</summary>
    private static Sequence<Ruling> WallTopOverGrade(HouseGeometry house, Amount most) =>
        house.House.Site.Grade is { } grade
            ? [new Ruling("wall", Require.AtMost(house.Wall.Top - grade, most))]
            : [Ruling.NotChecked("wall", "no-grade")];

    private static Sequence<Ruling> ThicknessLeast(HouseGeometry house, Amount least)
    {
        var thinnest = Math.Min(house.Wall.ThicknessAt(house.Wall.Base.Metres), house.Wall.ThicknessAtTop.Metres);
        return [new Ruling("wall", Require.AtLeast(Exactly.Metres(thinnest), least))];
    }

    private static Sequence<Ruling> ThicknessMost(HouseGeometry house, Amount most)
    {
        var (bottom, top) = (house.Wall.Base.Metres, house.Wall.Top.Metres);
        var thickest = Math.Max(house.Wall.ThicknessAt(bottom + (top - bottom) / 3), house.Wall.ThicknessAtTop.Metres);
        return [new Ruling("wall", Require.AtMost(Exactly.Metres(thickest), most))];
    }

    private static Sequence<Ruling> WindSpeed(HouseGeometry house, Amount most) =>
        house.House.Site.WindSpeed is { } speed
            ? [new Ruling("site", Require.AtMost(speed, most))]
            : [Ruling.NotChecked("site", "no-wind-speed")];

    private static Sequence<Ruling> GroundSnow(HouseGeometry house, Amount most) =>
        house.House.Site.GroundSnow is { } snow
            ? [new Ruling("site", Require.AtMost(new Amount(snow.Pascals, Dimension.AreaLoad), most))]
            : [Ruling.NotChecked("site", "no-ground-snow")];
}
