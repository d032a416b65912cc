using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Web.Editing;
using Microsoft.AspNetCore.SignalR.Client;
using Microsoft.Extensions.DependencyInjection;

namespace Clomwright.Web.Tests.Server;

/// <summary>Editing over the hub, as the page does it. Rank: by hand.</summary>
public sealed class HubTests : IAsyncLifetime
{
    private readonly HouseFolderCopy folder = new();
    private RunningWorkbench workbench = null!;
    private HubConnection hub = null!;

    public async ValueTask InitializeAsync()
    {
        workbench = await folder.Start();
        hub = new HubConnectionBuilder()
            .WithUrl(new Uri(workbench.Address, "/hub"), http => http.Headers["Origin"] = workbench.Address.GetLeftPart(UriPartial.Authority))
            .AddJsonProtocol(json => WebJson.Apply(json.PayloadSerializerOptions))
            .Build();
        await hub.StartAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await hub.DisposeAsync();
        await workbench.DisposeAsync();
        folder.Dispose();
    }

    [Fact]
    public async Task House_ChangedTakenBackAndSaved_IsInTheFile()
    {
        var opened = await Ask("Open");
        Assert.True(opened.Saved);
        Assert.Equal("Heron Point bath house", opened.Name);
        Assert.Equal(6, opened.Scene.Openings.Count);

        var moved = await Ask("Change", "drag-1", new { kind = "move", opening = "tub-window", station = 5.0 });
        Assert.False(moved.Saved);
        Assert.True(moved.CanUndo);
        Assert.True(moved.Revision > opened.Revision);
        Assert.Equal(opened.Scene.Views.Inside.Openings.Count, moved.Scene.Views.Inside.Openings.Count);

        var back = await Ask("Undo");
        Assert.True(back.Saved);
        Assert.True(back.CanRedo);

        await Ask("Redo");
        Assert.True((await Ask("Save")).Saved);
        var read = HouseDocument.Read(await File.ReadAllBytesAsync(folder.HouseFile)).House!;
        Assert.Equal(Along.At(Length.FromInches(197)), read.Openings.Single(o => o.Name == "tub-window").Along);
    }

    [Fact]
    public async Task FileChangedByAnotherProgram_IsNotOverwritten()
    {
        await Ask("Open");
        await Ask("Change", "drag-1", new { kind = "move", opening = "tub-window", station = 5.0 });
        var theirs = (await File.ReadAllTextAsync(folder.HouseFile)).Replace("Heron Point bath house", "Heron Point tea house", StringComparison.Ordinal);
        await File.WriteAllTextAsync(folder.HouseFile, theirs);

        var refused = await Ask("Save");

        Assert.False(refused.Saved);
        Assert.NotNull(refused.Refusal);
        Assert.Equal(theirs, await File.ReadAllTextAsync(folder.HouseFile));
    }

    [Fact]
    public async Task Nonsense_ChangesNothingAndSaysWhy()
    {
        var opened = await Ask("Open");
        var refused = await Ask("Change", "write-1", Written("seven apples"));
        Assert.Equal(opened.Revision, refused.Revision);
        Assert.Equal(OpeningField.Width, refused.Refusal?.Field);
        Assert.Contains("seven apples", refused.Refusal?.Sentence);
    }

    [Theory]
    [InlineData("../heron-point")]
    [InlineData("heron-point.house.json")]
    [InlineData("/etc/passwd")]
    [InlineData("")]
    [InlineData("nowhere")]
    public async Task KeyThatIsNoHouseOfTheFolder_GivesOneSentence(string key)
    {
        var answer = await hub.InvokeAsync<HouseAnswer>("Open", key);
        Assert.Null(answer.State);
        Assert.False(string.IsNullOrWhiteSpace(answer.Trouble));
    }

    [Fact]
    public async Task HouseThatCannotBeRead_GivesOneSentenceAndStaysAsItWas()
    {
        var path = Path.Combine(folder.Path, "broken.house.json");
        await File.WriteAllTextAsync(path, "{ \"format\": 1, ");
        var answer = await hub.InvokeAsync<HouseAnswer>("Open", "broken");
        Assert.Null(answer.State);
        Assert.False(string.IsNullOrWhiteSpace(answer.Trouble));
        Assert.Equal("{ \"format\": 1, ", await File.ReadAllTextAsync(path));
    }

    [Fact]
    public async Task OversizedMessage_EndsTheLineAndNothingElse()
    {
        await Ask("Open");
        await Assert.ThrowsAnyAsync<Exception>(() => Ask("Change", "write-1", Written(new string('7', 2 * Workbench.RequestBytesMax))));
        await hub.StopAsync();
        await hub.StartAsync();
        Assert.True((await Ask("Open")).Saved);
    }

    private static object Written(string text) => new { kind = "write", opening = "door", field = "width", text };

    private async Task<HouseState> Ask(string what, params object[] with)
    {
        var answer = await hub.InvokeCoreAsync<HouseAnswer>(what, [HouseFolderCopy.Key, .. with]);
        Assert.Null(answer.Trouble);
        return answer.State!;
    }
}
