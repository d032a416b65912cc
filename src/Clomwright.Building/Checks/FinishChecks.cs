using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Plasters, test panels, the floor's layers and door leaves.</summary>
internal static class FinishChecks
{
    private const double BucketsMost = 1000;

    public static void Of(House house, Checks checks)
    {
        var panels = Panels(house.TestPanels, checks);
        checks.Count("finishes", house.Finishes.Count, 0, Limits.Items);
        for (var i = 0; i < house.Finishes.Count; i++)
        {
            Finish($"finishes[{i}]", house.Finishes[i], panels, checks);
        }

        Floor(house.Floor, checks);
        for (var i = 0; i < house.Openings.Count; i++)
        {
            if (house.Openings[i] is { Leaf: { } leaf } opening)
            {
                Leaf($"openings[{i}].leaf", leaf, opening, checks);
            }
        }
    }

    private static HashSet<string> Panels(Sequence<TestPanel> panels, Checks checks)
    {
        checks.Count("testPanels", panels.Count, 0, Limits.Items);
        var names = new HashSet<string>();
        for (var i = 0; i < panels.Count; i++)
        {
            var (path, panel) = ($"testPanels[{i}]", panels[i]);
            checks.Word($"{path}.material", panel.Material);
            checks.Size($"{path}.depth", panel.Depth, Limits.Thick);
            checks.Word($"{path}.tester", panel.Tester);
            checks.Word($"{path}.note", panel.Note, Checks.NoteLengthMax);
            Parts($"{path}.parts", panel.Parts, checks);
            if (checks.Word($"{path}.name", panel.Name) && !names.Add(panel.Name))
            {
                checks.Error($"{path}.name", "building.panel-twice", ("name", panel.Name));
            }
        }

        return names;
    }

    private static void Finish(string path, Finish finish, HashSet<string> panels, Checks checks)
    {
        checks.Word($"{path}.material", finish.Material);
        var deep = checks.Size($"{path}.depth", finish.Depth, Limits.Thick);
        checks.Count($"{path}.coats", finish.Coats.Count, 0, Limits.Items);
        for (var i = 0; i < finish.Coats.Count; i++)
        {
            deep &= Coat($"{path}.coats[{i}]", finish.Coats[i], panels, checks);
        }

        var coats = finish.Coats.Aggregate(Length.Zero, (sum, coat) => sum + coat.Depth);
        if (deep && finish is { Depth: { } depth, Coats.Count: > 0 } && depth != coats)
        {
            checks.Warning($"{path}.depth", "building.coats-sum", ("depth", new Argument.Exact(depth)), ("coats", new Argument.Exact(coats)));
        }

        if (finish.Lath is { } lath)
        {
            checks.Word($"{path}.lath.material", lath.Material);
            _ = checks.NotNegative($"{path}.lath.lap", lath.Lap) && checks.NotAbove($"{path}.lath.lap", lath.Lap, Limits.Thick);
        }
    }

    private static bool Coat(string path, Coat coat, HashSet<string> panels, Checks checks)
    {
        checks.Word($"{path}.material", coat.Material);
        checks.Count($"{path}.passes", coat.Passes, 1, 20);
        if (coat.Parts is { } parts)
        {
            Parts($"{path}.parts", parts, checks);
        }

        if (checks.Word($"{path}.panel", coat.Panel) && coat.Panel is { } panel && !panels.Contains(panel))
        {
            checks.Error($"{path}.panel", "building.panel-unknown", ("name", panel), ("names", new Argument.List(panels.Order(StringComparer.Ordinal).Select(n => (Argument)n).ToSequence())));
        }

        return coat.Role is CoatRole.Slip or CoatRole.Wash
            ? checks.NotNegative($"{path}.depth", coat.Depth) && checks.NotAbove($"{path}.depth", coat.Depth, Limits.Thick)
            : checks.Size($"{path}.depth", coat.Depth, Limits.Thick);
    }

    private static void Parts(string path, PlasterParts parts, Checks checks)
    {
        (string Key, double? Buckets)[] all =
            [("clay", parts.Clay), ("lime", parts.Lime), ("sand", parts.Sand), ("straw", parts.Straw), ("manure", parts.Manure), ("paste", parts.Paste), ("water", parts.Water)];
        foreach (var (key, buckets) in all)
        {
            checks.Within($"{path}.{key}", buckets is { } number ? Amount.Number(number) : null, 0, BucketsMost);
        }

        if (all.All(p => p.Buckets is null or 0))
        {
            checks.Error(path, "building.parts-none");
        }
    }

    private static void Floor(Floor floor, Checks checks)
    {
        checks.Count("floor.layers", floor.Layers.Count, 0, Limits.Items);
        for (var i = 0; i < floor.Layers.Count; i++)
        {
            var (path, layer) = ($"floor.layers[{i}]", floor.Layers[i]);
            checks.Word($"{path}.name", layer.Name);
            checks.Word($"{path}.material", layer.Material);
            _ = layer.Role == FloorRole.Damp
                ? checks.NotNegative($"{path}.depth", layer.Depth) && checks.NotAbove($"{path}.depth", layer.Depth, Limits.Thick)
                : checks.Size($"{path}.depth", layer.Depth, Limits.Thick);
            if (layer.Parts is { } parts)
            {
                Parts($"{path}.parts", parts, checks);
            }

            if (i > 0 && layer.Role is FloorRole.Drain && floor.Layers[i - 1].Role is FloorRole.Base or FloorRole.Finish)
            {
                checks.Warning($"{path}.role", "building.floor-order", ("layer", layer.Name), ("below", floor.Layers[i - 1].Name));
            }
        }

        if (floor.Oil is { } oil)
        {
            checks.Word("floor.oil.material", oil.Material);
            checks.Count("floor.oil.coats", oil.Coats, 1, 20);
        }
    }

    private static void Leaf(string path, DoorLeaf leaf, Opening opening, Checks checks)
    {
        if (opening.Kind != OpeningKind.Door)
        {
            checks.Error(path, "building.leaf-no-door", ("name", opening.Name));
        }

        checks.Height($"{path}.bottom", leaf.Bottom);
        checks.Height($"{path}.step", leaf.Step);
    }
}
