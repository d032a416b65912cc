using System.Text;
using Clomwright.Building;
using Clomwright.Testing;

namespace Clomwright.Files.Tests;

/// <summary>Nothing is ever lost or half-written.</summary>
public class SavingTests
{
    private static readonly byte[] Old = Encoding.UTF8.GetBytes("the old file\n");
    private static readonly byte[] New = Encoding.UTF8.GetBytes("the new file, which is longer\n");

    public static TheoryData<string> EveryStep() => [.. Enum.GetNames<SaveStep>()];

    /// <summary>The machine stops at a step: what is on the disk at that moment is looked at, before any tidying up runs.</summary>
    [Theory]
    [MemberData(nameof(EveryStep))]
    public void The_machine_stops_while_saving_leaves_the_old_file_or_the_new(string step)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder["a.house.json"], Old);
        byte[]? atThatMoment = null;
        WholeFile.Replace(folder["a.house.json"], Old, New, passed =>
        {
            if (passed == Enum.Parse<SaveStep>(step))
            {
                atThatMoment = File.ReadAllBytes(folder["a.house.json"]);
            }
        });
        Assert.Equal(Enum.Parse<SaveStep>(step) < SaveStep.Renamed ? Old : New, atThatMoment);
    }

    [Theory]
    [MemberData(nameof(EveryStep))]
    public void Something_goes_wrong_while_saving_leaves_one_whole_file_and_nothing_beside_it(string step)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder["a.house.json"], Old);
        var problem = WholeFile.Replace(folder["a.house.json"], Old, New, passed =>
        {
            if (passed == Enum.Parse<SaveStep>(step))
            {
                throw new IOException("disk full");
            }
        });
        Assert.Equal("files.not-writable", problem!.What.Key);
        Assert.Equal(Enum.Parse<SaveStep>(step) < SaveStep.Renamed ? Old : New, File.ReadAllBytes(folder["a.house.json"]));
        Assert.Equal(["a.house.json"], Directory.GetFiles(folder.Path).Select(Path.GetFileName));
    }

    /// <summary>What nobody can make again is on the disk before it is said to be; what can be made again is whole, and waits for nothing.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_file_put_over_another_is_whole_at_every_step_and_waits_for_the_disk_where_asked(bool toDisk)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder["kept"], Old);
        List<SaveStep> steps = [];
        Assert.Null(WholeFile.Put(folder["kept"], New, toDisk, passed =>
        {
            steps.Add(passed);
            Assert.Equal(passed < SaveStep.Renamed ? Old : New, File.ReadAllBytes(folder["kept"]));
        }));
        Assert.Equal(Enum.GetValues<SaveStep>().Where(s => toDisk || s is not (SaveStep.Flushed or SaveStep.FolderFlushed)), steps);
    }

    [Theory]
    [MemberData(nameof(EveryStep))]
    public void A_new_file_is_there_whole_or_not_at_all(string step)
    {
        using var folder = new TemporaryFolder();
        var there = false;
        WholeFile.Create(folder["a.house.json"], New, passed => there = passed == Enum.Parse<SaveStep>(step) ? File.Exists(folder["a.house.json"]) : there);
        Assert.Equal(Enum.Parse<SaveStep>(step) >= SaveStep.Renamed, there);
        Assert.Equal(New, File.ReadAllBytes(folder["a.house.json"]));
    }

    [Fact]
    public void Saving_keeps_the_permissions_of_the_file()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Windows has no file mode.");
            return;
        }

        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder["a.house.json"], Old);
        const UnixFileMode mode = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead;
        File.SetUnixFileMode(folder["a.house.json"], mode);
        Assert.Null(WholeFile.Replace(folder["a.house.json"], Old, New));
        Assert.Equal(mode, File.GetUnixFileMode(folder["a.house.json"]));
    }

    [Fact]
    public void Saving_through_a_link_keeps_the_link()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Links need rights on Windows.");
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder["real.house.json"], Old);
        File.CreateSymbolicLink(folder["link.house.json"], folder["real.house.json"]);
        Assert.Null(WholeFile.Replace(folder["link.house.json"], Old, New));
        Assert.Equal(New, File.ReadAllBytes(folder["real.house.json"]));
        Assert.NotNull(new FileInfo(folder["link.house.json"]).LinkTarget);
    }

    [Fact]
    public void A_house_is_made_edited_saved_and_read_again()
    {
        using var folder = new TemporaryFolder();
        var (file, problem) = HouseFile.Create(folder["a.house.json"], Houses.HeronPoint);
        Assert.Null(problem);
        var edited = new Edit.MoveOpening("door", Along.At(new Evidence.Angle(120))).Apply(Houses.HeronPoint);
        (file, problem) = file!.Save(file.Document.With(edited));
        Assert.Null(problem);
        Assert.Equal(edited, HouseFile.Read(folder["a.house.json"]).House);
        Assert.Equal(edited, file!.Document.House);
    }

    [Fact]
    public void A_file_changed_by_somebody_else_is_not_saved_over()
    {
        using var folder = new TemporaryFolder();
        var file = HouseFile.Create(folder["a.house.json"], Houses.HeronPoint).File!;
        File.AppendAllText(folder["a.house.json"], " ");
        var (saved, problem) = file.Save(file.Document.With(Houses.HeronPoint with { Name = "Other" }));
        Assert.Null(saved);
        Assert.Equal($"{folder["a.house.json"]} has been changed by somebody else since it was opened; open it again, or save under another name", Sentence.Of(problem!));
        Assert.EndsWith("}\n ", File.ReadAllText(folder["a.house.json"]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_house_is_never_written_over_another_file()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllBytes(folder["a.house.json"], Old);
        Assert.Equal("files.exists", HouseFile.Create(folder["a.house.json"], Houses.HeronPoint).Problem!.What.Key);
        Assert.Equal(Old, File.ReadAllBytes(folder["a.house.json"]));
    }

    [Fact]
    public void A_file_that_is_gone_is_not_made_again_by_saving()
    {
        using var folder = new TemporaryFolder();
        var file = HouseFile.Create(folder["a.house.json"], Houses.HeronPoint).File!;
        File.Delete(folder["a.house.json"]);
        Assert.Equal("files.gone", file.Save(file.Document).Problem!.What.Key);
        Assert.Empty(Directory.GetFiles(folder.Path));
    }

    [Fact]
    public void A_missing_file_a_folder_and_a_missing_folder_get_one_sentence()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal([$"{folder["none.house.json"]} is not there; check the name"], HouseFile.Read(folder["none.house.json"]).Diagnostics.Select(Sentence.Of));
        Assert.Single(HouseFile.Read(folder.Path).Diagnostics);
        Assert.Equal("files.no-folder", HouseFile.Create(folder["none/a.house.json"], Houses.HeronPoint).Problem!.What.Key);
    }
}
