namespace Clomwright.Cli.Tests;

/// <summary>A frame in another size at the command line. Rank: property.</summary>
public class ArrivedTests
{
    [Fact]
    public async Task Arrived_Taken_ChangesOnlyTheOpeningInTheFile()
    {
        using var folder = new OwnFolder();
        var file = folder["mine.house.json"];
        File.Copy(Run.Example("heron-point.house.json"), file);
        var before = await File.ReadAllLinesAsync(file);
        var asked = await Run.Of("arrived", file, "--opening", "tub-window", "--width", "30 in", "--height", "42 in");
        Assert.Equal((0, ""), (asked.Code, asked.Complaints));
        Assert.Equal(before, await File.ReadAllLinesAsync(file));

        var taken = await Run.Of("arrived", file, "--opening", "tub-window", "--width", "30 in", "--height", "42 in", "--take", "as-it-came");
        Assert.Equal((0, ""), (taken.Code, taken.Complaints));
        var changed = (await File.ReadAllLinesAsync(file)).Except(before).ToArray();
        Assert.InRange(changed.Length, 1, 3);
        Assert.All(changed, line => Assert.True(line.Contains("30 in", StringComparison.Ordinal) || line.Contains("42 in", StringComparison.Ordinal) || line.Contains("3 ft 6 in", StringComparison.Ordinal) || line.Contains("\"frame\"", StringComparison.Ordinal), line));
    }

    [Theory]
    [InlineData("no-such", "30 in", "42 in", null)]
    [InlineData("tub-window", "thirty", "42 in", null)]
    [InlineData("tub-window", "30 in", "0 in", null)]
    [InlineData("tub-window", "30 in", "42 in", "glue")]
    [InlineData("door", "38 in", "80 in", "sill")]
    public async Task Arrived_Wrong_IsOneSentenceAndWritesNothing(string opening, string width, string height, string? take)
    {
        using var folder = new OwnFolder();
        var file = folder["mine.house.json"];
        File.Copy(Run.Example("heron-point.house.json"), file);
        var before = await File.ReadAllBytesAsync(file);
        var run = await Run.Of(["arrived", file, "--opening", opening, "--width", width, "--height", height, .. take is null ? [] : (string[])["--take", take]]);
        Assert.Equal(2, run.Code);
        Assert.Equal(1, run.Complaints.Count(c => c == '\n'));
        Assert.Equal(before, await File.ReadAllBytesAsync(file));
    }
}
