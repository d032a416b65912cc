using Clomwright.Testing;

namespace Clomwright.Files.Tests;

/// <summary>Nothing outside the chosen folder is read or written.</summary>
public class HouseFolderTests
{
    private static readonly string Text = HouseWriter.Write(Houses.HeronPoint);

    [Fact]
    public void Houses_of_the_folder_are_listed_read_made_and_saved()
    {
        using var temporary = new TemporaryFolder();
        File.WriteAllText(temporary["b.house.json"], Text);
        File.WriteAllText(temporary["notes.txt"], "no house");
        var folder = HouseFolder.Open(temporary.Path).Folder!;
        Assert.Null(folder.Create("a.house.json", Houses.HeronPoint).Problem);
        Assert.Equal(["a.house.json", "b.house.json"], folder.List());
        var (file, reading) = folder.Read("b.house.json");
        Assert.Equal(Houses.HeronPoint, reading.House);
        var renamed = Houses.HeronPoint with { Name = "Renamed" };
        Assert.Null(folder.Save(file!, file!.Document.With(renamed)).Problem);
        Assert.Equal(renamed, folder.Read("b.house.json").Reading.House);
    }

    [Theory]
    [InlineData("../outside.house.json")]
    [InlineData("..\\outside.house.json")]
    [InlineData("inner/../../outside.house.json")]
    [InlineData("./a.house.json")]
    [InlineData("/etc/a.house.json")]
    [InlineData("//server/share/a.house.json")]
    [InlineData("C:\\a.house.json")]
    [InlineData("C:a.house.json")]
    [InlineData("a.house.json:stream.house.json")]
    [InlineData("con.house.json")]
    [InlineData("Com1.house.json")]
    [InlineData(".hidden.house.json")]
    [InlineData("inner//a.house.json")]
    [InlineData("a\0.house.json")]
    [InlineData("a\n.house.json")]
    [InlineData("a.house.json ")]
    [InlineData("a.txt")]
    [InlineData("")]
    [InlineData(".house.json")]
    public void A_name_that_is_not_plain_is_refused(string name)
    {
        using var temporary = new TemporaryFolder();
        Directory.CreateDirectory(temporary["chosen/inner"]);
        File.WriteAllText(temporary["outside.house.json"], Text);
        var folder = HouseFolder.Open(temporary["chosen"]).Folder!;
        var (file, reading) = folder.Read(name);
        Assert.Null(file);
        Assert.Equal("files.name", Assert.Single(reading.Diagnostics).What.Key);
        Assert.Equal("files.name", folder.Create(name, Houses.HeronPoint).Problem!.What.Key);
        Assert.Equal(["outside.house.json"], Directory.GetFiles(temporary.Path, "*", SearchOption.AllDirectories).Select(Path.GetFileName));
    }

    [Fact]
    public void A_link_that_leads_out_is_refused()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Links need rights on Windows.");
        using var temporary = new TemporaryFolder();
        Directory.CreateDirectory(temporary["chosen"]);
        Directory.CreateDirectory(temporary["secret"]);
        File.WriteAllText(temporary["secret/s.house.json"], Text);
        File.CreateSymbolicLink(temporary["chosen/file.house.json"], temporary["secret/s.house.json"]);
        File.CreateSymbolicLink(temporary["chosen/relative.house.json"], "../secret/s.house.json");
        File.CreateSymbolicLink(temporary["chosen/dangling.house.json"], temporary["secret/new.house.json"]);
        Directory.CreateSymbolicLink(temporary["chosen/inner"], temporary["secret"]);
        File.CreateSymbolicLink(temporary["chosen/round.house.json"], "round.house.json");
        var folder = HouseFolder.Open(temporary["chosen"]).Folder!;
        foreach (var name in (string[])["file.house.json", "relative.house.json", "dangling.house.json", "inner/s.house.json", "round.house.json"])
        {
            Assert.Equal("files.outside", Assert.Single(folder.Read(name).Reading.Diagnostics).What.Key);
            Assert.Equal("files.outside", folder.Create(name, Houses.HeronPoint).Problem!.What.Key);
        }

        Assert.Empty(folder.List());
        Assert.Equal(["s.house.json"], Directory.GetFiles(temporary["secret"]).Select(Path.GetFileName));
    }

    [Fact]
    public void A_file_swapped_for_a_link_after_reading_is_not_saved_through()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Links need rights on Windows.");
        using var temporary = new TemporaryFolder();
        Directory.CreateDirectory(temporary["chosen"]);
        File.WriteAllText(temporary["chosen/a.house.json"], Text);
        File.WriteAllText(temporary["outside.house.json"], Text);
        var folder = HouseFolder.Open(temporary["chosen"]).Folder!;
        var file = folder.Read("a.house.json").File!;
        File.Delete(temporary["chosen/a.house.json"]);
        File.CreateSymbolicLink(temporary["chosen/a.house.json"], temporary["outside.house.json"]);
        Assert.Equal("files.outside", folder.Save(file, file.Document.With(Houses.HeronPoint with { Name = "X" })).Problem!.What.Key);
        Assert.Equal(Text, File.ReadAllText(temporary["outside.house.json"]));
    }

    [Fact]
    public void A_file_of_another_folder_is_not_saved_here()
    {
        using var temporary = new TemporaryFolder();
        Directory.CreateDirectory(temporary["chosen"]);
        var other = HouseFile.Create(temporary["other.house.json"], Houses.HeronPoint).File!;
        var folder = HouseFolder.Open(temporary["chosen"]).Folder!;
        Assert.Equal("files.name", folder.Save(other, other.Document).Problem!.What.Key);
    }

    [Fact]
    public void The_chosen_folder_may_itself_be_a_link()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Links need rights on Windows.");
        using var temporary = new TemporaryFolder();
        Directory.CreateDirectory(temporary["real"]);
        File.WriteAllText(temporary["real/a.house.json"], Text);
        Directory.CreateSymbolicLink(temporary["link"], temporary["real"]);
        Assert.Equal(Houses.HeronPoint, HouseFolder.Open(temporary["link"]).Folder!.Read("a.house.json").Reading.House);
    }

    [Fact]
    public void A_folder_that_is_not_there_gets_one_sentence()
    {
        using var temporary = new TemporaryFolder();
        Assert.Equal("files.no-folder", HouseFolder.Open(temporary["none"]).Problem!.What.Key);
    }
}
