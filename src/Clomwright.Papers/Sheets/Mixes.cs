using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Papers.Sheets;

/// <summary>Mixes in buckets, in words.</summary>
internal static class Mixes
{
    /// <summary>One batch: <c>1 clay · 3 sand · 1 straw</c>; empty where there is none.</summary>
    public static string Say(Scene scene, PlasterParts? parts)
    {
        if (parts is null)
        {
            return "";
        }

        (string Key, double? Buckets)[] all =
            [("clay", parts.Clay), ("lime", parts.Lime), ("sand", parts.Sand), ("straw", parts.Straw), ("manure", parts.Manure), ("paste", parts.Paste), ("water", parts.Water)];
        return string.Join(" : ", all.Where(p => p.Buckets is > 0).Select(p => Wording.Unbroken($"{scene.Say.One(Amount.Number(p.Buckets!.Value))} {scene.Say.Say("part." + p.Key)}")));
    }

    /// <summary>Whose mix it is where the author gave none; empty where they did.</summary>
    public static string From(Scene scene, Source? source) => source is null ? "" : scene.Say.Say("mix-from", ("source", scene.Say.Book.Title(source)));
}
