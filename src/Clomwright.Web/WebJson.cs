using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Clomwright.Web.Scenes;

namespace Clomwright.Web;

/// <summary>How the server and the page write to each other.</summary>
internal static class WebJson
{
    /// <summary>Camel case, and nothing but what the contract names.</summary>
    public static void Apply(JsonSerializerOptions json)
    {
        json.PropertyNamingPolicy = JsonNamingPolicy.CamelCase;
        json.AllowOutOfOrderMetadataProperties = true;
        json.NumberHandling = JsonNumberHandling.Strict;
        json.MaxDepth = 16;
        json.TypeInfoResolver = (json.TypeInfoResolver ?? new DefaultJsonTypeInfoResolver()).WithAddedModifier(WithoutWhatIsThere.Modify);
    }
}

/// <summary>One sentence why a request was not answered.</summary>
internal sealed record Trouble([property: JsonPropertyName("trouble")] string Sentence);
