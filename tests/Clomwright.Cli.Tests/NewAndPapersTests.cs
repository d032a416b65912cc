using System.Text;
using Clomwright.Building;
using Clomwright.Papers.Revisions;
using Clomwright.Record;

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

    /// <summary>Property: letters follow one another in the record; a set that could not be written is struck out and its letter is not given again; without --issue nothing is written to the record.</summary>
    [Fact]
    public async Task Papers_HandedOut_CarryTheNextLetter()
    {
        using var folder = new OwnFolder();
        var house = folder["my.house.json"];
        Assert.Equal(0, (await Run.Of("new", house)).Code);
        SiteRecord Record() => new SqliteRecord(SqliteRecord.Beside(house)).Read().Record;
        var first = await Run.Of("papers", house, "--out", folder["a"], "--issue", "--by", "Ada", "--to", "the crew");
        Assert.Equal((0, ""), (first.Code, first.Complaints));
        var issue = Assert.Single(Record().Issues);
        Assert.Equal(("A", "the crew", Run.Today), (issue.Revision, issue.To, issue.Date));
        Assert.Empty(issue.Drawn.Where(s => s.Part != "templates").Select(s => s.Key).Except(Directory.GetFiles(folder["a"], "*.svg").Select(f => Path.GetFileNameWithoutExtension(f))));
        Assert.Empty(((string[])["cover", "plan", "lift-1", "title-sheet", "calculations", "templates"]).Except(issue.Drawn.Select(s => s.Key)));
        Assert.Contains("revision A", File.ReadAllText(Path.Combine(folder["a"], "plan.svg")), StringComparison.Ordinal);

        File.WriteAllText(folder["taken"], "a file");
        Assert.Equal(2, (await Run.Of("papers", house, "--out", folder["taken"], "--issue")).Code);
        Assert.Equal("A", Assert.Single(Record().Issues).Revision);

        var text = File.ReadAllText(house);
        Assert.Contains("\"lamp\"", text, StringComparison.Ordinal);
        File.WriteAllText(house, text.Replace("\"lamp\"", "\"candle\"", StringComparison.Ordinal));
        var draft = await Run.Of("papers", house, "--out", folder["b"]);
        Assert.Equal((0, ""), (draft.Code, draft.Complaints));
        Assert.Single(Record().Issues);
        Assert.Contains("Changed since A", draft.Results, StringComparison.Ordinal);
        Assert.Contains("The wall unrolled, inside", draft.Results, StringComparison.Ordinal);
        Assert.Contains("not issued", File.ReadAllText(Path.Combine(folder["b"], "unrolled-inside.svg")), StringComparison.Ordinal);
        Assert.Contains("changed since A", File.ReadAllText(Path.Combine(folder["b"], "unrolled-inside.svg")), StringComparison.Ordinal);
        Assert.Equal("C", Letters.Next(Record()));
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

    [Theory]
    [InlineData("dxf", "  0\nSECTION\n")]
    [InlineData("glb", "glTF")]
    [InlineData("xlsx", "PK")]
    [InlineData("csv", "What,")]
    public async Task Export_Format_WritesAFileOfIt_AndTheSameEachTime(string format, string begins)
    {
        using var folder = new OwnFolder();
        Assert.Equal(0, (await Run.Of("new", folder["my.house.json"])).Code);
        foreach (var name in (string[])["a", "b"])
        {
            var run = await Run.Of("export", folder["my.house.json"], "--as", format, "--out", folder[name]);
            Assert.Equal((0, ""), (run.Code, run.Complaints));
        }

        Assert.StartsWith(begins, Encoding.Latin1.GetString(File.ReadAllBytes(folder["a"])), StringComparison.Ordinal);
        Assert.Equal(File.ReadAllBytes(folder["a"]), File.ReadAllBytes(folder["b"]));
    }

    [Theory]
    [InlineData("pdf", "orders")]
    [InlineData("csv", "poems")]
    public async Task Export_UnknownFormatOrTable_IsOneSentence(string format, string table)
    {
        using var folder = new OwnFolder();
        var run = await Run.Of("export", Run.Examples().First(), "--as", format, "--of", table, "--out", folder["a"]);
        Assert.Equal(2, run.Code);
        Assert.StartsWith("There is no ", run.Complaints, StringComparison.Ordinal);
        Assert.Single(run.Complaints.TrimEnd().Split('\n'));
        Assert.False(File.Exists(folder["a"]));
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
