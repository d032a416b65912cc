using Clomwright.Building;
using Clomwright.Testing;
using Json.Schema;

namespace Clomwright.Files.Tests;

/// <summary>The example houses are whole, typed by hand, and ours.</summary>
public class ExamplesTests
{
    private static readonly string Folder = Path.Combine(Counts.Root, "examples");

    public static TheoryData<string> EveryExample() => [.. Directory.GetFiles(Folder, "*" + HouseFile.Extension).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    [Fact]
    public void There_are_three() => Assert.Equal(3, EveryExample().Count);

    [Theory]
    [MemberData(nameof(EveryExample))]
    public void An_example_is_read_without_a_complaint_and_valid(string name)
    {
        var (document, house, diagnostics) = HouseFile.Read(Path.Combine(Folder, name));
        Assert.Empty(diagnostics.Select(Sentence.Of));
        Assert.Equal(house!.Id + HouseFile.Extension, name);
        Assert.StartsWith("Invented: no such house", house.Notes, StringComparison.Ordinal);
        var schema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Counts.Root, "docs", "house-file.schema.json")));
        Assert.True(schema.Evaluate(System.Text.Json.JsonDocument.Parse(document!.Text).RootElement).IsValid);
    }

    [Theory]
    [MemberData(nameof(EveryExample))]
    public void An_example_is_a_full_house(string name)
    {
        var house = HouseFile.Read(Path.Combine(Folder, name)).House!;
        Assert.InRange(house.Openings.Count, 6, 20);
        Assert.InRange(house.Niches.Count, 2, 20);
        Assert.InRange(house.Embeds.Count, 10, 40);
        Assert.InRange(house.Roof!.Layers.Count, 4, 10);
        Assert.InRange(house.Mix.Prisms.Count, 5, 20);
        Assert.NotNull(house.Mix.Batch);
        Assert.NotNull(house.Crew);
        Assert.NotNull(house.BondBeam);
        Assert.NotNull(house.Tees);
        Assert.NotNull(house.Trench?.Outlet);
    }

    [Fact]
    public void Heron_Point_is_the_house_that_the_tests_use()
    {
        var house = HouseFile.Read(Path.Combine(Folder, "heron-point.house.json")).House!;
        Assert.Equal(HouseWriter.Write(Houses.HeronPoint), HouseWriter.Write(house));
        Assert.Equal(Houses.HeronPoint, house);
    }

    [Theory]
    [MemberData(nameof(EveryExample))]
    public void Moving_a_window_in_an_example_changes_one_line(string name)
    {
        var document = HouseFile.Read(Path.Combine(Folder, name)).Document!;
        var moved = document.With(new Edit.MoveOpening(document.House!.Openings[2].Name, Along.At(new Evidence.Angle(200))).Apply(document.House));
        Assert.Single(document.Text.Split('\n').Zip(moved.Text.Split('\n')), lines => lines.First != lines.Second);
    }
}
