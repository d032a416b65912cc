using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Study.Mends;

internal static partial class Candidates
{
    /// <summary>Move the opening on either side away, or take the missing cob out of one of them.</summary>
    private static IEnumerable<Edit> PierWidth(Need need)
    {
        var pier = need.Geometry.Piers.FirstOrDefault(p => p.Address == need.Subject);
        var before = Place(need, pier?.Before);
        var after = Place(need, pier?.After);
        if (pier is null || before is null || after is null)
        {
            return [];
        }

        return
        [
            Moved(need, after, need.Gap.Metres),
            Moved(need, before, -need.Gap.Metres),
            Narrowed(after.Opening, need.Gap),
            Narrowed(before.Opening, need.Gap),
        ];
    }

    private static IEnumerable<Edit> OpeningWidth(Need need) => need.Opening is { } opening ? [Narrowed(opening, opening.Width - need.Limit)] : [];

    /// <summary>Narrow the widest opening by what is too much.</summary>
    private static IEnumerable<Edit> OpeningShare(Need need) =>
        need.House.Openings.OrderByDescending(o => o.Width).Take(2).Where(o => o.Width > need.Gap).Select(o => Narrowed(o, need.Gap));

    private static IEnumerable<Edit> HeaderBearing(Need need) =>
        need.Opening is { Header: { } header } opening
            ?
            [
                new Edit.ChangeOpening(opening.Name, opening with { Header = header with { Bearing = need.Limit } }),
                new Edit.ChangeOpening(opening.Name, opening with { Header = header with { CrossPad = true } }),
            ]
            : [];

    private static IEnumerable<Edit> HeaderThickness(Need need) =>
        need.Opening is { Header: { } header } opening && header.Width > Length.Zero
            ? [new Edit.ChangeOpening(opening.Name, opening with { Header = header with { Pieces = (int)Math.Ceiling((double)need.Limit.Nanometres / header.Width.Nanometres) } })]
            : [];

    /// <summary>Lower the opening, make it less high, or raise the wall.</summary>
    private static IEnumerable<Edit> CobOverHead(Need need)
    {
        if (need.Opening is not { } opening)
        {
            return [];
        }

        var wall = need.House.Wall;
        Edit raise = new Edit.ChangeWall(wall with { Top = wall.Top + need.Gap });
        Edit shorten = new Edit.ResizeOpening(opening.Name, opening.Width, opening.Height - need.Gap);
        return opening.Sill > need.Gap
            ? [new Edit.MoveOpening(opening.Name, opening.Along, opening.Sill - need.Gap), shorten, raise]
            : [shorten, raise];
    }

    private static IEnumerable<Edit> Niche(Need need, Func<Niche, Edit> change) =>
        need.House.Niches.FirstOrDefault(n => n.Name == need.Name) is { } niche ? [change(niche)] : [];

    /// <summary>Move the niche to the middle of each of the wider piers.</summary>
    private static IEnumerable<Edit> NicheElsewhere(Need need) =>
        Niche(need, n => new Edit.RemoveNiche(n.Name)).Any()
            ? need.Geometry.Piers.OrderByDescending(p => p.Narrowest).Take(3)
                .Select(pier => new Edit.MoveNiche(need.Name, Station(need, pier.Span.Middle)))
            : [];

    private static OpeningPlace? Place(Need need, string? name) => need.Geometry.Openings.FirstOrDefault(o => o.Opening.Name == name);

    private static Edit.MoveOpening Moved(Need need, OpeningPlace place, double by) =>
        new(place.Opening.Name, Station(need, place.Station + by));

    private static Along Station(Need need, double metres) => Along.At(need.Up(need.Geometry.Curve.Wrap(metres)));

    private static Edit.ResizeOpening Narrowed(Opening opening, Length by) => new(opening.Name, opening.Width - by, opening.Height);
}
