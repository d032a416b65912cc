using System.Text.Json;
using System.Text.Json.Nodes;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Tests;

/// <summary>What a page has of the wall after an answer, put together as the page does it: what is not in the answer, or null in a list, stands as it stood.</summary>
internal static class KeptScene
{
    public static JsonSerializerOptions Json { get; } = Made();

    /// <summary>The scene of an answer, whole.</summary>
    /// <param name="sent">As it was sent.</param>
    /// <param name="before">What the page had; null where it had none.</param>
    public static JsonObject Whole(JsonObject sent, JsonObject? before)
    {
        if (before is null || sent["since"] is null)
        {
            return Copy(sent);
        }

        var whole = Joined(Copy(sent), before);
        whole["view"] = sent["view"] is JsonObject view ? Joined(Copy(view), before["view"]!.AsObject()) : before["view"]!.DeepClone();
        whole["plan"] = sent["plan"] is JsonObject plan ? Joined(Copy(plan), before["plan"]!.AsObject()) : before["plan"]!.DeepClone();
        var (had, fresh) = (before["findings"]!.AsArray(), sent["findings"]!.AsArray());
        whole["findings"] = new JsonArray([.. sent["order"]!.AsArray().Select(place => (int)place! is var at and >= 0 ? had[at]!.DeepClone() : fresh[-1 - (int)place!]!.DeepClone())]);
        (whole["order"], whole["since"]) = (null, null);
        return whole;
    }

    /// <summary>The same as a scene.</summary>
    public static Scene Read(JsonObject whole) => whole.Deserialize<Scene>(Json)!;

    private static JsonObject Joined(JsonObject sent, JsonObject before)
    {
        foreach (var (name, was) in before)
        {
            if (!sent.ContainsKey(name))
            {
                sent[name] = was?.DeepClone();
            }
            else if (sent[name] is JsonArray now && was is JsonArray then && now.Count == then.Count)
            {
                for (var i = 0; i < now.Count; i++)
                {
                    now[i] ??= then[i]?.DeepClone();
                }
            }
        }

        return sent;
    }

    private static JsonObject Copy(JsonObject node) => node.DeepClone().AsObject();

    private static JsonSerializerOptions Made()
    {
        var json = new JsonSerializerOptions();
        WebJson.Apply(json);
        return json;
    }
}
