namespace Clomwright.Cli.Tests;

/// <summary>Exit codes are the contract of design section 4; ranks: property.</summary>
public class CheckTests
{
    public static TheoryData<string> Examples() => [.. Run.Examples().Select(file => Path.GetFileName(file)!)];

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Check_Example_FallsShortOfNothingAndSaysWhatIsNotChecked(string name)
    {
        var run = await Run.Of("check", Run.Example(name));
        Assert.Equal("", run.Complaints);
        Assert.True(run.Code is 0 or 3, run.Results);
        Assert.Matches(@"\d+ met, 0 short, \d+ NOT CHECKED", run.Results);
        Assert.DoesNotMatch(@"\[[a-z]+\.[a-z.-]+\]", run.Results);
    }

    /// <summary>A deep check says how far it is and takes the line away; stopped it says so, answers 2 and has written nothing; so do the papers. Where nobody looks nothing is said on the way.</summary>
    [Fact]
    public async Task Check_Deep_TellsHowFarItIs_AndStops()
    {
        using var folder = new OwnFolder();
        var (run, progress) = await Run.Watched(said => said.Contains(" 5 %", StringComparison.Ordinal), "check", Run.Examples().First(), "--deep");
        Assert.Equal(2, run.Code);
        Assert.Equal("", run.Results);
        Assert.Contains("Stopped", run.Complaints, StringComparison.Ordinal);
        Assert.Contains("0 %", progress, StringComparison.Ordinal);
        Assert.EndsWith("\r", progress, StringComparison.Ordinal);

        (run, _) = await Run.Watched(said => said.Contains(" 2 %", StringComparison.Ordinal), "papers", Run.Examples().First(), "--deep", "--out", folder["papers"]);
        Assert.Equal(2, run.Code);
        Assert.False(Directory.Exists(folder["papers"]));

        (run, progress) = await Run.Watched(_ => false, "check", Run.Examples().First());
        Assert.Equal("", progress);
        Assert.True(run.Code is 0 or 3);
    }

    [Fact]
    public async Task Check_HouseThatFallsShort_Answers1AndOffersATriedMend()
    {
        using var folder = new OwnFolder();
        var text = File.ReadAllText(Run.Examples().First());
        var narrow = System.Text.RegularExpressions.Regex.Replace(text, "\"bearing\": \"12 in\"", "\"bearing\": \"6 in\"");
        Assert.NotEqual(text, narrow);
        File.WriteAllText(folder["narrow.house.json"], narrow);
        var run = await Run.Of("check", folder["narrow.house.json"]);
        Assert.Equal(1, run.Code);
        Assert.Contains("would mend it (tried)", run.Results, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("{ \"format\": 99 }")]
    [InlineData("")]
    public async Task Check_WrongInput_Answers2InOneSentence(string text)
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["bad.house.json"], text);
        var run = await Run.Of("check", folder["bad.house.json"]);
        Assert.Equal(2, run.Code);
        Assert.Equal("", run.Results);
        Assert.Single(run.Complaints.Trim().Split('\n'));
        Assert.Contains("bad.house.json", run.Complaints, StringComparison.Ordinal);
        Assert.Single(Directory.GetFiles(folder.Path));
    }

    [Fact]
    public async Task Check_OpeningOfWrongSize_NamesThePlaceAndLine()
    {
        using var folder = new OwnFolder();
        var lines = File.ReadAllText(Run.Examples().First()).Replace("\"width\": \"3 ft\"", "\"width\": \"-3 ft\"", StringComparison.Ordinal);
        File.WriteAllText(folder["negative.house.json"], lines);
        var run = await Run.Of("check", folder["negative.house.json"]);
        Assert.Equal(2, run.Code);
        Assert.Matches(@"line \d+, openings\[\d+\]\.width: ", run.Complaints);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("chek", "x")]
    [InlineData("papers", "x.house.json")]
    [InlineData("figures", "nowhere.house.json")]
    public async Task AnyVerb_TypedWrong_Answers2(params string[] arguments)
    {
        var run = await Run.Of(arguments);
        Assert.Equal(2, run.Code);
        Assert.NotEqual("", run.Complaints);
    }
}
