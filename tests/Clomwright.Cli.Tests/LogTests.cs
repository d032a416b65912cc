using Clomwright.Testing;

namespace Clomwright.Cli.Tests;

/// <summary><c>clom log</c>, and <c>clom days</c> with what was written.</summary>
public sealed class LogTests : IDisposable
{
    private readonly OwnFolder folder = new();

    private string House => folder["heron.house.json"];

    private string Record => folder["heron.record.db"];

    public LogTests() => File.Copy(Run.Example("heron-point.house.json"), House);

    public void Dispose() => folder.Dispose();

    private async Task<Run> Log(params string[] arguments) => await Run.Of(["log", House, .. arguments]);

    [Fact]
    public async Task A_day_is_written_said_and_printed()
    {
        var empty = await Log();
        Assert.Equal(0, empty.Code);
        Assert.False(File.Exists(Record));
        var written = await Log("--day", "2027-06-08", "--inches", "9", "--batches", "14", "--people", "7", "--done", "poles", "--stopped", "wall", "--rain", "3 mm", "--note", "first sun");
        Assert.Equal((0, ""), (written.Code, written.Complaints));
        foreach (var said in new[] { "8 June 2027", "9 in", "14 batches", "7 people", "poles", "stopped by the wall", "first sun", "has not come yet" })
        {
            Assert.Contains(said, written.Results, StringComparison.Ordinal);
        }

        var printed = await Log();
        Assert.Contains("2027-06-08", printed.Results, StringComparison.Ordinal);
        Assert.Contains("9 in", printed.Results, StringComparison.Ordinal);
        Assert.All(printed.Results.Split('\n'), line => Assert.True(line.TrimEnd().Length <= 80, line));
        Assert.Equal(File.ReadAllText(Run.Example("heron-point.house.json")), File.ReadAllText(House));
    }

    [Fact]
    public async Task A_correction_keeps_what_is_not_said_anew_and_the_entry_it_replaces()
    {
        await Log("--day", "2027-05-18", "--inches", "9", "--batches", "14");
        var second = await Log("--day", "2027-05-18", "--inches", "8");
        Assert.Equal(2, second.Code);
        Assert.Contains("18 May 2027 is written already", second.Complaints, StringComparison.Ordinal);
        var corrected = await Log("--correct", "2027-05-18", "--raised", "20 cm");
        Assert.Equal((0, ""), (corrected.Code, corrected.Complaints));
        Assert.Contains("14 batches", corrected.Results, StringComparison.Ordinal);
        Assert.Contains("one more corrected or struck out", (await Log()).Results, StringComparison.Ordinal);
        Assert.Equal(0, (await Log("--strike", "2027-05-18", "--why", "another house")).Code);
        Assert.Contains("0 entries", (await Log()).Results, StringComparison.Ordinal);
    }

    /// <summary>One sentence, exit code 2, and nothing written.</summary>
    [Theory]
    [InlineData("no day", "--day", "8 June", "--inches", "9")]
    [InlineData("nothing is said", "--day", "2027-05-18")]
    [InlineData("did you mean stem", "--done", "stemm")]
    [InlineData("there is no lift 40", "--lift", "40")]
    [InlineData("is no number", "--people", "seven")]
    [InlineData("nothing that ends a day", "--stopped", "sun", "--inches", "2")]
    [InlineData("does not rise", "--inches", "90")]
    [InlineData("no entry and no day", "--correct", "2027-05-01", "--inches", "3")]
    [InlineData("nobody is named", "--inches", "3", "--by", " ")]
    public async Task What_is_wrong_is_said(string sentence, params string[] arguments)
    {
        var run = await Log(arguments);
        Assert.Equal((2, ""), (run.Code, run.Results));
        Assert.Contains(sentence, run.Complaints, StringComparison.Ordinal);
        Assert.Single(run.Complaints.Trim().Split('\n'));
        Assert.False(File.Exists(Record));
    }

    [Fact]
    public async Task What_is_no_record_is_left_alone()
    {
        File.WriteAllText(Record, "these are notes of mine, on the record of a song; long enough to be looked at as a file of a hundred letters and more");
        var run = await Log("--inches", "3");
        Assert.Equal(2, run.Code);
        Assert.StartsWith("these are notes", File.ReadAllText(Record), StringComparison.Ordinal);
    }

    /// <summary>Property: a crew that lays half of what was planned is told so and told a later day, from the day after the last written one.</summary>
    [Fact]
    public async Task Days_learn_from_the_log()
    {
        var before = await Run.Of("days", House);
        Assert.Contains("planning values", before.Results, StringComparison.Ordinal);
        for (var day = 1; day <= 4; day++)
        {
            Assert.Equal(0, (await Log("--day", $"2027-06-0{day}", "--inches", "2", "--people", "8")).Code);
        }

        var after = await Run.Of("days", House, "--today", "2027-06-05");
        Assert.Equal(0, after.Code);
        Assert.Contains("4 days are written up to 4 June 2027", after.Results, StringComparison.Ordinal);
        Assert.All(after.Results.Split('\n'), line => Assert.True(line.TrimEnd().Length <= 80, line));
        string Top(Run run) => run.Results.Split('\n').First(l => l.StartsWith("top of the cob", StringComparison.OrdinalIgnoreCase))[36..46];
        Assert.True(string.CompareOrdinal(Top(after), Top(before)) > 0, $"{Top(before)} before, {Top(after)} after.");
        var figures = await Run.Of("figures", House, "--json");
        Assert.Contains("\"readings\"", figures.Results, StringComparison.Ordinal);
    }
}
