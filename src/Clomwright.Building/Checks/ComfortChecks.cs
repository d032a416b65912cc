using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>How the house is lived in, linings, the floor's edge, glazings and the horizon.</summary>
internal static class ComfortChecks
{
    public static void Of(House house, Checks checks)
    {
        var comfort = house.Comfort;
        checks.Within("comfort.people", Number(comfort.People), 0, 50);
        checks.Within("comfort.airing", Number(comfort.Airing), 0, 20);
        checks.Within("comfort.warm", comfort.Warm, 0, 35);
        checks.Word("comfort.wood", comfort.Wood);
        checks.Within("comfort.stove", comfort.Stove, 0.05, 1);
        checks.Word("comfort.glazing", comfort.Glazing);
        checks.Count("comfort.linings", comfort.Linings.Count, 0, Limits.Items);
        for (var i = 0; i < comfort.Linings.Count; i++)
        {
            Lining($"comfort.linings[{i}]", comfort.Linings[i], checks);
        }

        if (comfort.FloorEdge is { } edge)
        {
            checks.Word("comfort.floorEdge.material", edge.Material);
            checks.Size("comfort.floorEdge.thickness", edge.Thickness, Limits.Thick);
            checks.Size("comfort.floorEdge.depth", edge.Depth, Limits.Thick);
        }

        for (var i = 0; i < house.Openings.Count; i++)
        {
            checks.Word($"openings[{i}].glazing", house.Openings[i].Glazing);
        }

        checks.Count("site.horizon", house.Site.Horizon.Count, 0, Limits.Items);
        for (var i = 0; i < house.Site.Horizon.Count; i++)
        {
            checks.Bearing($"site.horizon[{i}].bearing", house.Site.Horizon[i].Bearing);
            checks.Within($"site.horizon[{i}].angle", house.Site.Horizon[i].Angle, 0, Math.PI / 2);
        }
    }

    private static void Lining(string path, Lining lining, Checks checks)
    {
        checks.Word($"{path}.name", lining.Name);
        checks.Word($"{path}.material", lining.Material);
        checks.Size($"{path}.depth", lining.Depth, Limits.Thick);
        if (lining.From is null != lining.To is null)
        {
            checks.Error(path, "building.lining-ends", ("name", lining.Name));
        }

        if (lining.From is { } from && lining.To is { } to)
        {
            _ = checks.Bearing($"{path}.from", from) & checks.Bearing($"{path}.to", to);
        }

        if (checks.Height($"{path}.bottom", lining.Bottom) & checks.Height($"{path}.top", lining.Top) && lining.Bottom is { } bottom && lining.Top is { } top && top <= bottom)
        {
            checks.Error($"{path}.top", "building.lining-top", ("name", lining.Name));
        }
    }

    private static Amount? Number(double? value) => value is { } number ? Amount.Number(number) : null;
}
