using System.Text.RegularExpressions;
using Clomwright.Testing;

namespace Clomwright.Architecture.Tests;

/// <summary>Habits of the code that a test can hold.</summary>
public partial class HouseStyleTests
{
    private const int LongestFile = 400;

    private static readonly string[] EmptySuffixes = ["Manager", "Helper", "Helpers", "Util", "Utils", "Service", "Processor", "Data", "Info", "Common", "Core", "Base", "Impl"];

    public static TheoryData<string> AllRooms() => [.. Rooms.Declared()];

    [Theory]
    [MemberData(nameof(AllRooms))]
    public void FilesStayAboutOneThing(string room)
    {
        Assert.DoesNotContain(Rooms.CodeFiles(room), file => File.ReadLines(file).Count() > LongestFile);
    }

    [Theory]
    [MemberData(nameof(AllRooms))]
    public void TypesAreNamedForWhatTheyAre(string room)
    {
        var names = Rooms.CodeFiles(room).SelectMany(file => TypeName().Matches(File.ReadAllText(file)).Select(m => m.Groups[1].Value));
        Assert.DoesNotContain(names, name => EmptySuffixes.Any(suffix => name.EndsWith(suffix, StringComparison.Ordinal)));
    }

    /// <summary>A stage is entered through one file, named for the border it crosses.</summary>
    [Fact]
    public void EveryStageHasOneDoor()
    {
        Assert.Equal(["FromBuilding.cs"], Doors(Path.Combine(Rooms.Source, "Clomwright.Geometry")));
        var analysis = Path.Combine(Rooms.Source, "Clomwright.Analysis");
        foreach (var stage in Directory.GetDirectories(analysis).Where(folder => Directory.GetFiles(folder, "*Result.cs").Length > 0))
        {
            Assert.Single(Doors(stage));
        }
    }

    /// <summary>A formula in a shell is a defect.</summary>
    [Fact]
    public void ShellsHoldNoEngineering()
    {
        foreach (var file in Rooms.Shells.SelectMany(Rooms.CodeFiles))
        {
            Assert.False(Formula().IsMatch(File.ReadAllText(file)), $"{Path.GetFileName(file)} computes: move the formula to the room it belongs to.");
        }
    }

    [Fact]
    public void EveryRoomSaysWhatItHolds()
    {
        foreach (var room in Rooms.Declared())
        {
            Assert.True(File.Exists(Path.Combine(Rooms.Source, $"Clomwright.{room}", "README.md")), $"{room} has no README.md.");
        }
    }

    [Fact]
    public void DecisionsAreNumbered()
    {
        var files = Directory.GetFiles(Path.Combine(Counts.Root, "docs", "decisions"), "*.md").Select(Path.GetFileName).Order(StringComparer.Ordinal).ToArray();
        Assert.NotEmpty(files);
        Assert.All(files, name => Assert.Matches("^[0-9]{4}-[a-z0-9-]+\\.md$", name));
    }

    private static IEnumerable<string?> Doors(string folder) =>
        Directory.GetFiles(folder, "From*.cs").Select(Path.GetFileName);

    [GeneratedRegex(@"\b(?:class|struct|record|enum|interface)\s+(?:struct\s+|class\s+)?([A-Z][A-Za-z0-9]*)")]
    private static partial Regex TypeName();

    [GeneratedRegex(@"\bMath\.(?:Sqrt|Sin|Cos|Tan|Atan2?|Pow|Exp|Log|PI)\b")]
    private static partial Regex Formula();
}
