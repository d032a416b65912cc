using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Study.Mends;

internal static partial class Candidates
{
    /// <summary>Turn the whole ring of poles to where its nearest landing is farthest from an opening.</summary>
    private static IEnumerable<Edit> PoleSeat(Need need)
    {
        var best = Turning.Best(need.Geometry);
        return best is { } turn ? [new Edit.TurnRoof(Angle.FromRadians(turn.Rotation))] : [];
    }

    private static IEnumerable<Edit> Tees(Need need, Func<Tees, Tees> change) =>
        need.House.Tees is { } tees ? [new Edit.ChangeTees(change(tees))] : [];

    private static IEnumerable<Edit> Eave(Need need) =>
        need.House.Roof is { } roof ? [new Edit.ChangeRoof(roof with { Eave = need.Limit })] : [];

    /// <summary>Raise the stem, with the wall on it or within the same wall top.</summary>
    private static IEnumerable<Edit> StemHeight(Need need)
    {
        var raised = new Edit.ChangeStem(need.House.Stem with { Top = need.House.Stem.Top + need.Gap });
        var wall = need.House.Wall;
        return [raised, new Edit.Several([raised, new Edit.ChangeWall(wall with { Top = wall.Top + need.Gap })])];
    }

    /// <summary>Thicken the wall at the top (and the stem under it), or build it less high.</summary>
    private static IEnumerable<Edit> Slenderness(Need need)
    {
        var (wall, stem) = (need.House.Wall, need.House.Stem);
        var height = (wall.Top - stem.Top).Metres;
        var thickness = need.Up(height / need.Comparison.Limit.Si);
        var thicker = thickness - wall.ThicknessAtTop;
        return
        [
            new Edit.ChangeWall(wall with { ThicknessAtTop = thickness }),
            new Edit.Several([new Edit.ChangeWall(wall with { ThicknessAtTop = thickness }), new Edit.ChangeStem(stem with { Width = stem.Width + thicker })]),
            new Edit.ChangeWall(wall with { Top = wall.Top - need.Up(height - need.Comparison.Limit.Si * wall.ThicknessAtTop.Metres) }),
        ];
    }

    /// <summary>Thicken the wall, and the stem with it, by as much as the pressure is too high, and once more by half of that: it brings its own weight.</summary>
    private static IEnumerable<Edit> ThickerWall(Need need)
    {
        var (wall, stem) = (need.House.Wall, need.House.Stem);
        foreach (var more in (double[])[1, 1.5])
        {
            var thickness = need.Stock(wall.ThicknessAtTop.Metres * (1 + more * (need.Ratio - 1)));
            yield return new Edit.Several([new Edit.ChangeWall(wall with { ThicknessAtTop = thickness }), new Edit.ChangeStem(stem with { Width = stem.Width + (thickness - wall.ThicknessAtTop) })]);
        }
    }

    /// <summary>Less of what is deepest on the roof: by as much as the pressure is too high and, as the roof brings only part of it, by twice and four times that; never under half.</summary>
    private static IEnumerable<Edit> LighterRoof(Need need)
    {
        if (need.House.Roof is not { Layers.Count: > 0 } roof)
        {
            return [];
        }

        var most = roof.Layers.Max(layer => layer.Depth);
        var at = roof.Layers.ToList().FindIndex(layer => layer.Depth == most);
        return ((double[])[1, 2, 4]).Select(times => need.Up(most.Metres * times * (1 - 1 / need.Ratio))).Where(less => less.Metres <= most.Metres / 2).Select(less => most - less).Distinct()
            .Select(depth => new Edit.ChangeRoof(roof with { Layers = roof.Layers.Select((layer, i) => i == at ? layer with { Depth = depth } : layer).ToSequence() }));
    }

    private static IEnumerable<Edit> BottleSpacing(Need need) =>
        need.House.Embeds.FirstOrDefault(e => e.Name == need.Name) is { Spacing: { } spacing } row
            ? [new Edit.ChangeEmbed(row.Name, row with { Spacing = spacing + need.Gap })]
            : [];

    /// <summary>Change every coat of the face for earth plaster.</summary>
    private static IEnumerable<Edit> SealedFace(Need need)
    {
        var face = need.Subject == "inside face" ? Face.Inside : Face.Outside;
        var others = need.House.Finishes.Where(f => f.Face != face);
        return [new Edit.ChangeFinishes([.. others, new Finish(face, "earth-plaster")])];
    }
}
