using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Niches and embeds.</summary>
internal static class RecessChecks
{
    public static void Of(House house, Checks checks)
    {
        for (var i = 0; i < house.Niches.Count; i++)
        {
            Of($"niches[{i}]", house.Niches[i], house, checks);
        }

        for (var i = 0; i < house.Embeds.Count; i++)
        {
            Of($"embeds[{i}]", house.Embeds[i], checks);
        }
    }

    private static void Of(string path, Niche niche, House house, Checks checks)
    {
        checks.Along(path, niche.Along);
        checks.Size($"{path}.width", niche.Width, Limits.Plan);
        checks.Size($"{path}.height", niche.Height, Limits.Height);
        checks.Height($"{path}.sill", niche.Sill);
        var thickest = Math.Max(WallChecks.ThicknessAtBase(house), house.Wall.ThicknessAtTop.Metres);
        if (checks.Size($"{path}.depth", niche.Depth, Limits.Thick) && niche.Depth.Metres >= thickest && thickest > 0)
        {
            checks.Error($"{path}.depth", "building.niche-through", ("depth", new Argument.Exact(niche.Depth)), ("wall", Amount.Metres(thickest)));
        }
    }

    private static void Of(string path, Embed embed, Checks checks)
    {
        checks.Along(path, embed.Along);
        checks.Height($"{path}.height", embed.Height);
        if (checks.Count($"{path}.count", embed.Count, 1, Limits.Items) && embed.Count > 1 && embed.Spacing is null)
        {
            checks.Error($"{path}.count", "building.row-spacing", ("count", embed.Count));
        }

        checks.Size($"{path}.spacing", embed.Spacing, Limits.Plan);
        checks.Size($"{path}.width", embed.Width, Limits.Plan);
        checks.Size($"{path}.size", embed.Size, Limits.Height);
        checks.Size($"{path}.depth", embed.Depth, Limits.Height);
        checks.Word($"{path}.note", embed.Note, Checks.NoteLengthMax);
        if (embed.Anchor is { } anchor)
        {
            Of($"{path}.anchor", anchor, embed, checks);
        }
    }

    private static void Of(string path, StrapAnchor anchor, Embed embed, Checks checks)
    {
        checks.Size($"{path}.depth", anchor.Depth, Limits.Height);
        checks.Size($"{path}.bar", anchor.Bar, Limits.Plan);
        checks.Size($"{path}.thickness", anchor.Thickness, Limits.Thick);
        if (embed.Kind != EmbedKind.Strap)
        {
            checks.Error(path, "building.anchor-of-strap");
        }

        if (anchor.Pull is { } pull && !(pull.Newtons > 0 && double.IsFinite(pull.Newtons)))
        {
            checks.Error($"{path}.pull", "building.anchor-pull");
        }
    }
}
