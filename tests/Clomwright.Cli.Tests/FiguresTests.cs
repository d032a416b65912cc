using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.RegularExpressions;
using Clomwright.Testing;

namespace Clomwright.Cli.Tests;

/// <summary>The tree of figures is a contract: keys that others rely on are there, in SI units, with tag and source.</summary>
public partial class FiguresTests
{
    /// <summary>Each example is run once, whoever asks first.</summary>
    private static readonly ConcurrentDictionary<string, Lazy<Task<Run>>> Runs = new(StringComparer.Ordinal);

    internal static Task<Run> Figures(string example) => Runs.GetOrAdd(example, file => new Lazy<Task<Run>>(() => Run.Of("figures", file, "--json"))).Value;

    private static Task<Run> Deep(string example) => Run.Of("figures", example, "--json", "--deep");

    [Theory]
    [InlineData("geometry.wall.grossVolume", "m3")]
    [InlineData("geometry.wall.netVolume", "m3")]
    [InlineData("geometry.area.inside", "m2")]
    [InlineData("geometry.area.outside", "m2")]
    [InlineData("geometry.faceArea.inside", "m2")]
    [InlineData("geometry.faceArea.outside", "m2")]
    [InlineData("geometry.lifts[0].volume", "m3")]
    [InlineData("geometry.lifts[0].bottom", "m")]
    [InlineData("geometry.lifts[0].top", "m")]
    [InlineData("geometry.piers[0].width.inside", "m")]
    [InlineData("geometry.piers[0].width.middle", "m")]
    [InlineData("geometry.piers[0].width.outside", "m")]
    [InlineData("geometry.piers[0].width.narrowest", "m")]
    [InlineData("roof.pitch", "rad")]
    [InlineData("roof.ringSide", "m")]
    [InlineData("roof.poleLength", "m")]
    [InlineData("roof.stages.soilWet.crossingForce[0]", "N")]
    [InlineData("roof.stages.soilWet.plateReaction[0]", "N")]
    [InlineData("roof.stages.soilWet.bendingStress", "Pa")]
    [InlineData("drying.lifts[0].daysToNext.low", "days")]
    [InlineData("drying.lifts[0].daysToNext.high", "days")]
    [InlineData("quantities.batches", "")]
    [InlineData("quantities.lifts[0].risePerBatch", "m")]
    public async Task Figures_Example_HasTheKeysOthersRelyOn(string path, string unit)
    {
        var run = await Figures(Run.Examples().First());
        Assert.Equal(0, run.Code);
        using var json = JsonDocument.Parse(run.Results);
        var figure = At(json.RootElement, path);
        Assert.True(figure.GetProperty("value").GetDouble() > 0 || path.EndsWith("bottom", StringComparison.Ordinal));
        Assert.Equal(unit, figure.GetProperty("unit").GetString());
        Assert.NotEqual("", figure.GetProperty("tag").GetString());
        Assert.NotEqual("", figure.GetProperty("source").GetString());
    }

    [Fact]
    public async Task Figures_Example_PiersSayWhatTheyStandBetween()
    {
        var run = await Figures(Run.Examples().First());
        using var json = JsonDocument.Parse(run.Results);
        Assert.Equal(2, At(json.RootElement, "geometry.piers[0].between").GetArrayLength());
    }

    /// <summary>Every key of the trees of all examples, and of one whose layers nobody knows, whose ground is high and of which a day is written, stands in docs/figures.md, and nothing else does.</summary>
    [Fact]
    public async Task EveryKeyIsDocumented()
    {
        var keys = new SortedSet<string>(StringComparer.Ordinal);
        using var folder = new OwnFolder();
        var unknown = folder["unknown-soil.house.json"];
        var text = File.ReadAllText(Run.Example("heron-point.house.json"));
        Assert.Contains("\"ordinary-earth\"", text, StringComparison.Ordinal);
        await File.WriteAllTextAsync(unknown, text.Replace("\"ordinary-earth\"", "\"unheard-of-earth\"", StringComparison.Ordinal).Replace("\"grade\": \"-12 in\"", "\"grade\": \"1 ft\"", StringComparison.Ordinal));
        Assert.Equal(0, (await Run.Of("log", unknown, "--day", "2027-05-19", "--inches", "4")).Code);
        foreach (var example in Run.Examples().Append(unknown))
        {
            // One deep answer shows the keys that only a deep one has.
            var run = await (example == Run.Examples().First() ? Deep(example) : Figures(example));
            using var json = JsonDocument.Parse(run.Results);
            Collect(json.RootElement, "", keys);
        }

        var documented = DocumentedKey().Matches(File.ReadAllText(Path.Combine(Counts.Root, "docs", "figures.md"))).Select(m => m.Groups[1].Value).ToHashSet();
        var found = keys.Select(key => Stage().Replace(key, "roof.stages.<stage>")).ToHashSet();
        Assert.Empty(found.Except(documented));
        Assert.Empty(documented.Except(found));
    }

    private static void Collect(JsonElement node, string path, SortedSet<string> keys)
    {
        switch (node.ValueKind)
        {
            case JsonValueKind.Object when node.TryGetProperty("value", out _):
                keys.Add(path);
                break;
            case JsonValueKind.Object:
                foreach (var member in node.EnumerateObject())
                {
                    Collect(member.Value, path.Length == 0 ? member.Name : $"{path}.{member.Name}", keys);
                }

                break;
            case JsonValueKind.Array:
                foreach (var item in node.EnumerateArray())
                {
                    Collect(item, $"{path}[i]", keys);
                }

                break;
            default:
                keys.Add(path);
                break;
        }
    }

    private static JsonElement At(JsonElement node, string path) => PathStep().Matches(path).Aggregate(node, (at, step) =>
        step.Groups[1].Success ? at[int.Parse(step.Groups[1].Value)] : at.GetProperty(step.Value));

    [GeneratedRegex(@"^\| `([^`]+)` \|", RegexOptions.Multiline)]
    private static partial Regex DocumentedKey();

    [GeneratedRegex(@"^roof\.stages\.[A-Za-z]+")]
    private static partial Regex Stage();

    [GeneratedRegex(@"\[(\d+)\]|[A-Za-z]+")]
    private static partial Regex PathStep();
}
