using System.Text;

namespace Clomwright.Cli.Tests;

public class NewAndPapersTests
{
    [Fact]
    public async Task New_EmptyPlace_WritesAHouseThatFallsShortOfNothing()
    {
        using var folder = new OwnFolder();
        Assert.Equal(0, (await Run.Of("new", folder["my.house.json"])).Code);
        var check = await Run.Of("check", folder["my.house.json"]);
        Assert.True(check.Code is 0 or 3, check.Results + check.Complaints);
    }

    [Fact]
    public async Task New_FileThere_LeavesItAsItIs()
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["my.house.json"], "mine");
        var run = await Run.Of("new", folder["my.house.json"]);
        Assert.Equal(2, run.Code);
        Assert.Equal("mine", File.ReadAllText(folder["my.house.json"]));
    }

    [Fact]
    public async Task Papers_Example_WritesSiteOfficeAndTemplatesAsPdfAndEverySheetAsSvg()
    {
        using var folder = new OwnFolder();
        var run = await Run.Of("papers", Run.Examples().First(), "--out", folder["out"], "--date", "2027-06-01");
        Assert.Equal("", run.Complaints);
        Assert.Equal(0, run.Code);
        var pdfs = Directory.GetFiles(folder["out"], "*.pdf").Order().ToArray();
        Assert.Equal(3, pdfs.Length);
        Assert.EndsWith("-office.pdf", pdfs[0], StringComparison.Ordinal);
        Assert.EndsWith("-site.pdf", pdfs[1], StringComparison.Ordinal);
        Assert.EndsWith("-templates.pdf", pdfs[2], StringComparison.Ordinal);
        Assert.All(pdfs, pdf => Assert.Equal("%PDF-", Encoding.ASCII.GetString(File.ReadAllBytes(pdf)[..5])));
        var sheets = Directory.GetFiles(folder["out"], "*.svg");
        Assert.True(sheets.Length > 10);
        Assert.All(sheets, sheet => Assert.StartsWith("<svg", File.ReadAllText(sheet), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("--date", "tomorrow")]
    [InlineData("--paper", "napkin")]
    public async Task Papers_WrongOption_WritesNothing(string option, string value)
    {
        using var folder = new OwnFolder();
        var run = await Run.Of("papers", Run.Examples().First(), "--out", folder["out"], option, value);
        Assert.Equal(2, run.Code);
        Assert.False(Directory.Exists(folder["out"]));
    }

    [Fact]
    public async Task Papers_WrongHouse_WritesNothing()
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["bad.house.json"], "{ \"wall\": 3 }");
        var run = await Run.Of("papers", folder["bad.house.json"], "--out", folder["out"]);
        Assert.Equal(2, run.Code);
        Assert.False(Directory.Exists(folder["out"]));
    }
}
