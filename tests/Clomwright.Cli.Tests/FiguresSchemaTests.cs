using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Clomwright.Testing;
using Json.Schema;

namespace Clomwright.Cli.Tests;

/// <summary>The published schema of the figures: made from the table of keys, which other tests hold to the program both ways. The reader is JsonSchema.Net; rank: independent.</summary>
public partial class FiguresSchemaTests
{
    private static readonly JsonSerializerOptions Written = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static string Made { get; } = Of(File.ReadAllText(Path.Combine(Counts.Root, "docs", "figures.md")));

    [Fact]
    public void Schema_InDocs_IsThatOfTheTableOfKeys() => Assert.Equal(Made, Published.Read("docs/figures.schema.json", Made));

    [Fact]
    public async Task Figures_OfEveryExample_FollowTheSchema()
    {
        var schema = JsonSchema.FromText(Made);
        foreach (var example in Run.Examples())
        {
            var run = await FiguresTests.Figures(example);
            Assert.True(schema.Evaluate(JsonDocument.Parse(run.Results).RootElement).IsValid, example);
        }
    }

    /// <summary>A schema that takes everything would be none.</summary>
    [Theory]
    [InlineData("""{ "roof": { "pitch": { "value": 0.3, "unit": "rad", "tag": "computed", "source": "x" } } }""", true)]
    [InlineData("""{ "roof": { "pitch": { "value": null, "notChecked": "no roof" } } }""", true)]
    [InlineData("""{ "roof": { "value": null, "notChecked": "no roof" } }""", true)]
    [InlineData("""{ "roof": { "pitch": { "value": null } } }""", false)]
    [InlineData("""{ "roof": { "pitch": { "value": 0.3 } } }""", false)]
    [InlineData("""{ "roof": { "pitch": [] } }""", false)]
    [InlineData("""{ "geometry": { "lifts": [ { "volume": "much" } ] } }""", true)]
    [InlineData("""{ "geometry": { "lifts": { "volume": 1 } } }""", false)]
    public void Schema_TakesAndRefuses(string figures, bool taken) => Assert.Equal(taken, JsonSchema.FromText(Made).Evaluate(JsonDocument.Parse(figures).RootElement).IsValid);

    private static string Of(string table)
    {
        var root = new JsonObject();
        foreach (Match row in Row().Matches(table))
        {
            var unit = row.Groups["unit"].Value.Trim();
            Place(root, row.Groups["key"].Value.Replace("[i]", ".[i]", StringComparison.Ordinal).Split('.'), row.Groups["what"].Value.Trim() + (unit.Length > 0 ? $" ({unit})" : ""));
        }

        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Figures of a Clomwright house",
            ["description"] = "What clom figures FILE --json prints. Keys are added freely and never renamed; docs/figures.md tells what each is.",
            ["$defs"] = new JsonObject
            {
                ["number"] = Thing("value:number", "unit:string", "tag:word", "source:string"),
                ["missing"] = Thing("value:null", "notChecked:string"),
                ["figure"] = new JsonObject { ["anyOf"] = new JsonArray(Ref("number"), Ref("missing"), new JsonObject { ["type"] = new JsonArray("string", "boolean") }) },
            },
        };
        foreach (var (key, value) in Node(root)["anyOf"]![1]!.AsObject().ToArray())
        {
            schema[key] = value!.DeepClone();
        }

        return schema.ToJsonString(Written) + "\n";
    }

    /// <summary>A node of keys: its own description under the empty key, its parts under theirs.</summary>
    private static void Place(JsonObject node, ReadOnlySpan<string> keys, string what)
    {
        if (keys.IsEmpty)
        {
            node[""] = what;
            return;
        }

        var part = node[keys[0]] as JsonObject ?? new JsonObject();
        node[keys[0]] = part;
        Place(part, keys[1..], what);
    }

    private static JsonObject Node(JsonObject node)
    {
        var parts = node.Where(p => p.Key.Length > 0).Select(p => KeyValuePair.Create(p.Key, (JsonNode?)Node(p.Value!.AsObject()))).ToArray();
        if (parts.Length == 0)
        {
            return new JsonObject { ["$ref"] = "#/$defs/figure", ["description"] = node[""]!.GetValue<string>() };
        }

        var named = parts.Where(p => p.Key is not "[i]" && p.Key[0] != '<').ToArray();
        var thing = new JsonObject { ["type"] = parts[0].Key == "[i]" ? "array" : "object" };
        if (named.Length > 0)
        {
            thing["properties"] = new JsonObject(named);
        }

        if (parts.FirstOrDefault(p => p.Key == "[i]").Value is { } item)
        {
            thing["items"] = item;
        }
        else if (parts.FirstOrDefault(p => p.Key[0] == '<').Value is { } any)
        {
            thing["additionalProperties"] = any;
        }

        return new JsonObject { ["anyOf"] = new JsonArray(Ref("missing"), thing) };
    }

    private static JsonObject Ref(string name) => new() { ["$ref"] = $"#/$defs/{name}" };

    private static JsonObject Thing(params string[] keys) => new()
    {
        ["type"] = "object",
        ["properties"] = new JsonObject(keys.Select(key => key.Split(':')).Select(k => KeyValuePair.Create(k[0], (JsonNode?)(k[1] == "word"
            ? new JsonObject { ["enum"] = new JsonArray("measured", "assumed", "practice", "code", "given", "computed") }
            : new JsonObject { ["type"] = k[1] })))),
        ["required"] = new JsonArray([.. keys.Select(key => (JsonNode)key.Split(':')[0])]),
    };

    [GeneratedRegex(@"^\| `(?<key>[^`]+)` \| (?<what>.*?) \|(?<unit>[^|]*)\|$", RegexOptions.Multiline)]
    private static partial Regex Row();
}
