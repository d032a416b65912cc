using System.Text.Json;
using Clomwright.Files;
using Clomwright.Study;
using Clomwright.Web.Editing;

namespace Clomwright.Web.Tests.Server;

/// <summary>What is rehearsed before a hand comes. Rank: by hand.</summary>
public sealed class RehearsalTests
{
    private readonly Rehearsal rehearsal = new(Json());

    /// <summary>As many moves are made as were asked for, none when somebody works, and the house stays what it is.</summary>
    [Fact]
    public void Moves_AreMade_UntilSomebodyWorks()
    {
        using var folder = new HouseFolderCopy();
        var study = Study(folder);
        var house = study.House;

        Assert.Equal(12, rehearsal.Move(study, 12, () => true));
        var asked = 0;
        Assert.Equal(3, rehearsal.Move(study, 12, () => ++asked <= 3));
        Assert.Equal(house, study.House);
        Assert.Equal(house, Study(folder).House);
    }

    /// <summary>The same for pictures of the stress.</summary>
    [Fact]
    public void Pictures_AreMade_UntilSomebodyWorks()
    {
        using var folder = new HouseFolderCopy();
        var study = Study(folder);
        var solved = study.Structure.Value!;

        Assert.Equal(2, Rehearsal.Follow(study, solved, 2, () => true));
        Assert.Equal(0, Rehearsal.Follow(study, solved, 2, () => false));
    }

    /// <summary>Where nothing can be moved there is nothing left to rehearse.</summary>
    [Fact]
    public void HouseWithoutOpenings_IsDoneAtOnce()
    {
        using var folder = new HouseFolderCopy();
        var bare = HouseStudy.Of(Study(folder).House with { Openings = [] });
        Assert.Equal(7, rehearsal.Move(bare, 7, () => throw new InvalidOperationException("asked")));
    }

    private static HouseStudy Study(HouseFolderCopy folder) => HouseStudy.Of(HouseDocument.Read(File.ReadAllBytes(folder.HouseFile)).House!);

    private static JsonSerializerOptions Json()
    {
        var json = new JsonSerializerOptions();
        WebJson.Apply(json);
        return json;
    }
}
