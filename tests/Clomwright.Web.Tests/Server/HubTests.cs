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
        Assert.Equal(6, opened.Scene!.Openings.Count);

        var moved = await Ask("Change", "drag-1", new { kind = "move", opening = "tub-window", station = 5.0 });
        Assert.False(moved.Saved);
        Assert.True(moved.CanUndo);
        Assert.True(moved.Revision > opened.Revision);
        Assert.Equal(opened.Scene!.View.Openings.Count, moved.Scene!.View.Openings.Count);

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
        var answer = await hub.InvokeAsync<HouseAnswer>("Open", key, "inside");
        Assert.Null(answer.State);
        Assert.False(string.IsNullOrWhiteSpace(answer.Trouble));
    }

    [Fact]
    public async Task HouseThatCannotBeRead_GivesOneSentenceAndStaysAsItWas()
    {
        var path = Path.Combine(folder.Path, "broken.house.json");
        await File.WriteAllTextAsync(path, "{ \"format\": 1, ");
        var answer = await hub.InvokeAsync<HouseAnswer>("Open", "broken", "inside");
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

    [Fact]
    public async Task KnobTurnedAndPulledFurther_IsOneStepBack_AndTheFileChangesInOneLine()
    {
        var before = await File.ReadAllLinesAsync(folder.HouseFile);
        var opened = await Ask(Sight.Roof, "Open");
        Assert.Null(opened.Scene);
        Assert.Equal("4 in", Knob(opened, "soil").Text);

        await Ask(Sight.Roof, "Change", "knob-1", new { kind = "turn", knob = "soil", at = 10 });
        var turned = await Ask(Sight.Roof, "Change", "knob-1", new { kind = "step", knob = "soil", steps = 2 });
        Assert.Equal("6 in", Knob(turned, "soil").Text);

        Assert.Equal("4 in", Knob(await Ask(Sight.Roof, "Undo"), "soil").Text);
        await Ask(Sight.Roof, "Redo");
        Assert.True((await Ask(Sight.Roof, "Save")).Saved);
        var after = await File.ReadAllLinesAsync(folder.HouseFile);
        Assert.Equal(before.Length, after.Length);
        var changed = before.Zip(after).Single(pair => pair.First != pair.Second);
        Assert.Equal(changed.First.Replace("\"4 in\"", "\"6 in\"", StringComparison.Ordinal), changed.Second);
    }

    [Fact]
    public async Task NonsenseInAKnob_ChangesNothingAndSaysWhyAtThatKnob()
    {
        var opened = await Ask(Sight.Roof, "Open");
        var refused = await Ask(Sight.Roof, "Change", "knob-1", new { kind = "set", knob = "eave", text = "as far as it goes" });
        Assert.Equal(opened.Revision, refused.Revision);
        Assert.Equal(RoofKnob.Eave, refused.Refusal?.Knob);
        Assert.Contains("as far as it goes", refused.Refusal?.Sentence);
    }

    private static Web.Scenes.KnobCard Knob(HouseState state, string key) => state.Roof!.Knobs.Single(knob => knob.Key == key);

    private static object Written(string text) => new { kind = "write", opening = "door", field = "width", text };

    private Task<HouseState> Ask(string what, params object[] with) => Ask(Sight.Inside, what, with);

    private async Task<HouseState> Ask(Sight sight, string what, params object[] with)
    {
        var answer = await hub.InvokeCoreAsync<HouseAnswer>(what, [HouseFolderCopy.Key, .. with, sight]);
        Assert.Null(answer.Trouble);
        return answer.State!;
    }
}
