using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study.Mends;

internal static partial class Candidates
{
    /// <summary>Move or narrow the openings beside the pier until it is as wide as the pressure asks, or make the wall as thick.</summary>
    private static IEnumerable<Edit> WiderPier(Need need)
    {
        var pier = need.Geometry.Piers.FirstOrDefault(p => p.Address == need.Subject);
        var (before, after) = (Place(need, pier?.Before), Place(need, pier?.After));
        if (!Sensible(need))
        {
            return [];
        }

        if (pier is null || before is null || after is null)
        {
            return ThickerAllUp(need);
        }

        var by = need.Up(pier.WidthMiddle * (need.Ratio - 1));
        return
        [
            Moved(need, after, by.Metres), Moved(need, before, -by.Metres),
            .. new[] { after, before }.Where(o => o.Opening.Width > by + by).Select(o => Narrowed(o.Opening, by)),
            .. ThickerAllUp(need),
            .. new[] { after, before }.Where(o => o.Opening.Sill > need.House.Stem.Top + by).Select(o => new Edit.MoveOpening(o.Opening.Name, o.Opening.Along, o.Opening.Sill - by)),
        ];
    }

    /// <summary>Thicken the wall with its stem as the ratio asks, then a little more; or build it less high.</summary>
    private static IEnumerable<Edit> ThickerAllUp(Need need)
    {
        if (!Sensible(need))
        {
            return [];
        }

        var (wall, stem) = (need.House.Wall, need.House.Stem);
        return
        [
            .. new[] { Math.Sqrt(need.Ratio), need.Ratio }.Select(k => Thick(need.Up(wall.ThicknessAtTop.Metres * k))),
            new Edit.ChangeWall(wall with { Top = stem.Top + Length.Nearest((wall.Top - stem.Top).Metres / Math.Sqrt(need.Ratio)).RoundedTo(need.StockStep) }),
        ];

        Edit Thick(Length thickness) => new Edit.Several([
            new Edit.ChangeWall(wall with { ThicknessAtTop = thickness }), new Edit.ChangeStem(stem with { Width = stem.Width + (thickness - wall.ThicknessAtTop) })]);
    }
}
