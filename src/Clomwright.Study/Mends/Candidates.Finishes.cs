using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study.Mends;

internal static partial class Candidates
{
    /// <summary>Cut the leaf shorter.</summary>
    private static IEnumerable<Edit> ShorterLeaf(Need need) => need.Opening is { Leaf: { } leaf } door
        ? [new Edit.ChangeOpening(door.Name, door with { Leaf = leaf with { Bottom = leaf.Bottom + need.Gap } })]
        : [];

    /// <summary>Bring the rough sill up to the finished floor; the head stays.</summary>
    private static IEnumerable<Edit> SillOnFloor(Need need) => need.Opening is { } door && door.Height > need.Gap
        ? [new Edit.ChangeOpening(door.Name, door with { Sill = need.Limit, Height = door.Height - need.Gap })]
        : [];

    /// <summary>A thicker drain layer; the ground is dug deeper for it.</summary>
    private static IEnumerable<Edit> ThickerDrain(Need need)
    {
        var layers = need.House.Floor.Layers;
        var at = layers.ToList().FindIndex(l => l.Role == FloorRole.Drain);
        return at < 0 ? [] : [new Edit.ChangeFloor(need.House.Floor with { Layers = layers.Select((l, i) => i == at ? l with { Depth = l.Depth + need.Gap } : l).ToSequence() })];
    }

    /// <summary>Thin the lowest earth while something of it is left, else cut the ground away outside.</summary>
    private static IEnumerable<Edit> EarthOverGrade(Need need)
    {
        var layers = need.House.Floor.Layers;
        var at = layers.ToList().FindIndex(l => l.Role is FloorRole.Base);
        if (at >= 0 && layers[at].Depth > need.Gap + Length.FromInches(2))
        {
            yield return new Edit.ChangeFloor(need.House.Floor with { Layers = layers.Select((l, i) => i == at ? l with { Depth = l.Depth - need.Gap } : l).ToSequence() });
        }

        if (need.House.Site.Grade is { } grade)
        {
            yield return new Edit.ChangeSite(need.House.Site with { Grade = grade - need.Gap });
        }
    }

    /// <summary>The same thickness in more passes.</summary>
    private static IEnumerable<Edit> ThinnerCoats(Need need)
    {
        Coat Thin(Coat coat)
        {
            var passes = Math.Max(1, (int)Math.Ceiling(coat.Depth.Metres / need.Limit.Metres - 1e-9));
            return coat with { Depth = new Length(coat.Depth.Nanometres / passes), Passes = coat.Passes * passes };
        }

        return need.House.Finishes.Any(f => f.Coats.Any(c => c.Depth > need.Limit))
            ? [new Edit.ChangeFinishes(need.House.Finishes.Select(f => f with { Depth = null, Coats = f.Coats.Select(c => f.Material.StartsWith("lime", StringComparison.Ordinal) == need.IsLime ? Thin(c) : c).ToSequence() }).ToSequence())]
            : [];
    }

    /// <summary>Lath that laps as far as is asked.</summary>
    private static IEnumerable<Edit> LongerLap(Need need) =>
        [new Edit.ChangeFinishes(need.House.Finishes.Select(f => f.Lath is { } lath && lath.Lap < need.Limit ? f with { Lath = lath with { Lap = need.Limit } } : f).ToSequence())];
}
