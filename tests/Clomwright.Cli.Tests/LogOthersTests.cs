using Clomwright.Building;
using Clomwright.Record;
using Clomwright.Testing;

namespace Clomwright.Cli.Tests;

/// <summary><c>clom log</c> beside days of work: tests, what came, what was measured in the wall. Rank: by hand.</summary>
public sealed class LogOthersTests : IDisposable
{
    private readonly OwnFolder folder = new();

    private string House => folder["heron.house.json"];

    private SiteRecord Record => new SqliteRecord(folder["heron.record.db"]).Read().Record;

    public LogOthersTests() => File.Copy(Run.Example("heron-point.house.json"), House);

    public void Dispose() => folder.Dispose();

    private async Task<Run> Log(params string[] arguments) => await Run.Of(["log", House, .. arguments]);

    [Fact]
    public async Task A_test_a_delivery_and_a_measure_are_written_corrected_and_sent_twice_as_one()
    {
        string[] test = ["--test", "leak test", "--of", "roof", "--result", "dry after two days", "--day", "2027-06-20", "--by", "Ada", "--id", "leak-00001"];
        Assert.Contains("leak test of roof: dry after two days", (await Log(test)).Results, StringComparison.Ordinal);
        Assert.Equal(0, (await Log(test)).Code);
        Assert.Equal(0, (await Log("--came", "sand", "--amount", "8 yd3", "--as-ordered", "no", "--day", "2027-06-02")).Code);
        Assert.Equal(0, (await Log("--measured", "tub-window", "--measure", "width", "--found", "36 1/8", "--day", "2027-06-03", "--id", "built-00001")).Code);
        Assert.Equal(3, Record.Entries.Count);
        Assert.Contains(Record.Entries, e => e.What is Seen.Delivery { AsOrdered: false, Amount: "8 yd3" });

        // A correction keeps what is not said anew.
        Assert.Equal(0, (await Log("--correct", "built-00001", "--found", "92 cm")).Code);
        var built = Assert.IsType<Seen.AsBuilt>(Record.Standing[^1].What);
        Assert.Equal((new DateOnly(2027, 6, 3), "tub-window", Measured.Width, 0.92), (built.Date, built.Part, built.What, built.Found.Metres));
        Assert.Equal(0, (await Log("--correct", "leak-00001", "--result", "wet at the flue")).Code);
        Assert.Contains("wet at the flue", (await Log()).Results, StringComparison.Ordinal);
    }

    /// <summary>One sentence, exit code 2, and nothing written.</summary>
    [Theory]
    [InlineData("two entries", "--test", "bar", "--came", "sand")]
    [InlineData("did you mean tub-window", "--measured", "tub-windoww", "--measure", "width", "--found", "36")]
    [InlineData("nothing that is measured", "--measured", "tub-window", "--measure", "colour", "--found", "36")]
    [InlineData("--measure is missing", "--measured", "tub-window", "--found", "36")]
    [InlineData("belongs to", "--result", "dry")]
    [InlineData("neither yes nor no", "--came", "sand", "--amount", "8", "--as-ordered", "perhaps")]
    [InlineData("200", "--test", "bar", "--of", "bar 3")]
    public async Task What_is_wrong_is_said(string sentence, params string[] arguments)
    {
        var run = await Log(arguments);
        Assert.Equal((2, ""), (run.Code, run.Results));
        Assert.Contains(sentence, run.Complaints, StringComparison.Ordinal);
        Assert.Single(run.Complaints.Trim().Split('\n'));
        Assert.False(File.Exists(folder["heron.record.db"]));
    }
}
