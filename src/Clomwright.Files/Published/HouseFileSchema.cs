using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Clomwright.Evidence;
using Clomwright.Files.Forms;
using Clomwright.Files.Shape;

namespace Clomwright.Files;

/// <summary>The house file as a JSON Schema (draft 2020-12), made from the table of keys that the reader uses.</summary>
/// <remarks>
/// Every file that the reader takes without a complaint is valid. A valid file can still be wrong in ways a schema cannot say: a size
/// below zero, a name given twice, a wall top under the stem.
/// </remarks>
public static class HouseFileSchema
{
    private static readonly JsonSerializerOptions Layout = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    /// <summary>The text of the schema, descriptions in the words of a phrasebook.</summary>
    public static string Text(Phrasebook words)
    {
        var definitions = new SortedDictionary<string, JsonNode?>(StringComparer.Ordinal);
        var root = new Writer(words, definitions).Of((Kind.Thing)HouseShape.House.Kind);
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "House file of Clomwright, format " + HouseShape.Format,
        };
        foreach (var (key, value) in root.ToArray())
        {
            root.Remove(key);
            schema[key] = value;
        }

        schema["$defs"] = new JsonObject(definitions);
        return schema.ToJsonString(Layout) + "\n";
    }

    private sealed class Writer(Phrasebook words, SortedDictionary<string, JsonNode?> definitions)
    {
        private JsonObject Of(Kind kind) => kind switch
        {
            Kind.Text => new JsonObject { ["type"] = "string" },
            Kind.Date => new JsonObject { ["type"] = "string", ["pattern"] = "^\\d{4}-\\d{2}-\\d{2}$" },
            Kind.Number => new JsonObject { ["type"] = "number" },
            Kind.Whole => new JsonObject { ["type"] = "integer" },
            Kind.Truth => new JsonObject { ["type"] = "boolean" },
            Kind.Format format => new JsonObject { ["const"] = format.Newest },
            Kind.Word word => new JsonObject { ["enum"] = new JsonArray([.. word.Words.Select(w => JsonValue.Create(w))]) },
            Kind.Quantity quantity => Defined(Quantities.Word(quantity.Dimension), () => Of(quantity.Dimension)),
            Kind.Position => Defined("position", () => new JsonObject
            {
                ["type"] = "array", ["items"] = Of(new Kind.Quantity(Dimension.Length)), ["minItems"] = 2, ["maxItems"] = 2,
            }),
            Kind.List list => new JsonObject { ["type"] = "array", ["items"] = Of(list.Item) },
            Kind.Either either => new JsonObject { ["anyOf"] = new JsonArray(Of(either.One), Of(either.Other)) },
            Kind.Union union => Defined(union.Name, () => new JsonObject
            {
                ["oneOf"] = new JsonArray([.. union.Cases.Select(c => Of(c.Thing, (union.Key, c.Word)))]),
            }),
            Kind.Thing thing => Defined(thing.Name, () => Of(thing)),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

        private JsonObject Defined(string name, Func<JsonObject> definition)
        {
            if (definitions.TryAdd(name, null))
            {
                definitions[name] = definition();
            }

            return new JsonObject { ["$ref"] = "#/$defs/" + name };
        }

        public JsonObject Of(Kind.Thing thing, (string Key, string Word)? decidedBy = null)
        {
            var properties = new JsonObject();
            var required = new JsonArray();
            if (decidedBy is var (deciding, word))
            {
                properties[deciding] = new JsonObject { ["const"] = word, ["description"] = words.Say(Meaning.Of(thing.Name, deciding), UnitSystem.Imperial) };
                required.Add(deciding);
            }

            foreach (var key in thing.Keys)
            {
                var property = Of(key.Kind);
                property["description"] = words.Say(Meaning.Of(thing.Name, key.Name), UnitSystem.Imperial);
                if (key.Default is { } token)
                {
                    property["default"] = JsonNode.Parse(token);
                }

                properties[key.Name] = property;
                if (key.Required)
                {
                    required.Add(key.Name);
                }
            }

            var schema = new JsonObject { ["type"] = "object", ["properties"] = properties, ["required"] = required, ["additionalProperties"] = false };
            if (thing.ExactlyOne.Count > 0)
            {
                schema["allOf"] = new JsonArray([.. thing.ExactlyOne.Select(pair => new JsonObject { ["oneOf"] = new JsonArray(Requires(pair.One), Requires(pair.Other)) })]);
            }

            return schema;
        }

        private static JsonObject Requires(string key) => new() { ["required"] = new JsonArray(key) };

        /// <summary>A text with a digit that ends in a unit of the dimension, whatever stands before it; slopes are written in too many ways to say how they end.</summary>
        private JsonObject Of(Dimension dimension)
        {
            var spellings = Units.Of(dimension).SelectMany(unit => unit.Others.Prepend(unit.Symbol)).Select(Regex.Escape).Select(s => s.Replace("\\ ", " ", StringComparison.Ordinal));
            var marks = dimension == Dimension.Length ? "|[″“”′‘’]" : "";
            return new JsonObject
            {
                ["type"] = "string",
                ["description"] = words.Say(new Message($"files.kind.{Quantities.Word(dimension)}"), UnitSystem.Imperial),
                ["pattern"] = dimension == Dimension.Slope ? "\\d" : $"[\\d½¼¾⅛⅜⅝⅞⅓⅔].*(?:{string.Join('|', spellings)}{marks})\\.?\\s*$",
            };
        }
    }
}
