using System.Text.Json;
using System.Text.Json.Nodes;
using Clomwright.Evidence;
using Clomwright.Files.Forms;
using Clomwright.Files.Shape;
using Clomwright.Testing;
using Json.Schema;

namespace Clomwright.Files.Tests;

/// <summary>The schema and the guide are those of the reader.</summary>
public class PublishedTests
{
    private const string KeysBelow = "## Keys\n\n";

    private static readonly string SchemaText = HouseFileSchema.Text(Phrasebook.English);

    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaText);

    [Fact]
    public void The_schema_in_docs_is_the_reader_s() => Assert.Equal(SchemaText, Published.Read("docs/house-file.schema.json", SchemaText));

    [Fact]
    public void The_tables_in_docs_are_the_reader_s()
    {
        var path = Path.Combine("docs", "house-file.md");
        var guide = File.ReadAllText(Path.Combine(Counts.Root, path)).ReplaceLineEndings("\n");
        var made = guide[..(guide.IndexOf(KeysBelow, StringComparison.Ordinal) + KeysBelow.Length)] + HouseFileGuide.Tables(Phrasebook.English).TrimEnd('\n') + "\n";
        Assert.Equal(made, Published.Read(path, made));
    }

    [Fact]
    public void Every_key_has_words_and_no_words_are_left_of_keys_that_are_gone() =>
        Assert.Equal(
            KeysOf(HouseShape.House.Kind).Distinct().Order(StringComparer.Ordinal),
            Phrasebook.English.Keys.Where(key => key.StartsWith("files.key.", StringComparison.Ordinal)));

    private static IEnumerable<string> KeysOf(Kind kind) => kind switch
    {
        Kind.Thing thing => thing.Keys.Select(k => Meaning.Of(thing.Name, k.Name).Key).Concat(thing.Keys.SelectMany(k => KeysOf(k.Kind))),
        Kind.Union union => union.Cases.SelectMany(c => KeysOf(c.Thing)).Prepend(Meaning.Of(union.Name, union.Key).Key),
        Kind.List list => KeysOf(list.Item),
        Kind.Either either => KeysOf(either.One).Concat(KeysOf(either.Other)),
        _ => [],
    };

    [Fact]
    public void Every_house_written_or_typed_by_hand_is_valid() =>
        Gen.Select(Gen.OneOf(Houses.Plausible, Houses.LongestNames), Gen.Int).ForAll((house, seed) =>
        {
            Assert.True(IsValid(HouseWriter.Write(house)));
            Assert.True(IsValid(Handwriting.Of(house, seed)));
        }, iter: Counts.Of(100, 2_000));

    /// <summary>One value becomes another kind, or one key goes or comes: both refuse it, or neither does.</summary>
    [Fact]
    public void Schema_and_reader_agree_on_keys_and_kinds() =>
        Gen.Select(Houses.Plausible, Gen.Int[0, 100_000], Gen.Int[0, 4]).ForAll((house, pick, change) =>
        {
            var root = JsonNode.Parse(HouseWriter.Write(house))!.AsObject();
            Mutate(root, pick, change);
            var text = root.ToJsonString();
            var refused = HouseDocument.Read(text).Diagnostics.Where(d => d.What.Key.StartsWith("files.", StringComparison.Ordinal) || d.What.Key.StartsWith("evidence.", StringComparison.Ordinal));
            Assert.Equal(IsValid(text), !refused.Any());
        }, iter: Counts.Of(300, 10_000));

    [Theory]
    [InlineData("7'6\"")]
    [InlineData("7′6″")]
    [InlineData("7 ft 6 1/2 in.")]
    [InlineData("0.3 m ")]
    [InlineData("45 cm")]
    public void Every_spelling_of_a_length_that_is_read_is_valid(string length)
    {
        var root = JsonNode.Parse(HouseWriter.Write(Houses.HeronPoint))!;
        root["tees"]!["bar"] = length;
        Assert.Empty(HouseDocument.Read(root.ToJsonString()).Diagnostics);
        Assert.True(IsValid(root.ToJsonString()));
    }

    private static bool IsValid(string text) => Schema.Evaluate(JsonDocument.Parse(text).RootElement).IsValid;

    private static void Mutate(JsonObject root, int pick, int change)
    {
        var objects = Objects(root).ToList();
        var thing = objects[pick % objects.Count];
        var key = thing.Select(m => m.Key).ElementAtOrDefault(pick / objects.Count % Math.Max(1, thing.Count)) ?? "x";
        switch (change)
        {
            case 0:
                thing["unknown"] = 1;
                break;
            case 1:
                thing.Remove(key);
                break;
            case 2:
                thing[key] = new JsonArray(new JsonArray());
                break;
            case 3:
                thing[key] = "nonsense without a unit: ?";
                break;
            default:
                thing[key] = null;
                break;
        }
    }

    private static IEnumerable<JsonObject> Objects(JsonNode? node) => node switch
    {
        JsonObject thing => thing.SelectMany(m => Objects(m.Value)).Prepend(thing),
        JsonArray list => list.SelectMany(Objects),
        _ => [],
    };
}
