using System.Text.Json;
using System.Text.Json.Nodes;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Web.Editing;
using Clomwright.Web.Scenes;
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

    /// <summary>
    /// Rank independent: the findings that a page keeps and those it is sent are together those that one that asks for all gets, but for computed ones, which are those of the last whole answer while the opening is in hand;
    /// a page that has findings nobody remembers gets all.
    /// </summary>
    [Fact]
    public async Task OfADraggedOpening_OnlyWhatIsNewIsSent_AndWhatIsComputedWaits()
    {
        var rested = (await Ask("Open")).Scene!;
        var (has, edition) = (JsonSerializer.SerializeToNode(rested, KeptScene.Json)!.AsObject(), rested.Edition);
        for (var step = 1; step <= 4; step++)
        {
            var sent = (await Drag("drag-1", 5.0 + 0.1 * step, edition))["state"]!["scene"]!.AsObject();
            var all = (await Ask("Open")).Scene!;
            Assert.Equal(edition, (long?)sent["since"]);
            Assert.True(sent["findings"]!.AsArray().Count < all.Findings.Count / 2, $"{sent["findings"]!.AsArray().Count} of {all.Findings.Count} were sent");
            has = KeptScene.Whole(sent, has);
            var scene = KeptScene.Read(has);
            edition = scene.Edition;
            Assert.Equal((true, false), (scene.InHand, all.InHand));
            Assert.Equal(Told(all, computed: false), Told(scene, computed: false));
            Assert.Equal(Told(rested, computed: true), Told(scene, computed: true));
            Assert.Equal(JsonSerializer.Serialize(all.View with { Marks = [] }, KeptScene.Json), JsonSerializer.Serialize(scene.View with { Marks = [] }, KeptScene.Json));
            rested = all;
        }

        static IEnumerable<string> Told(Scene scene, bool computed) =>
            scene.Findings.Where(f => f.Computed == computed).Select(f => JsonSerializer.Serialize(f with { Number = null })).Order(StringComparer.Ordinal);

        var stranger = (await Drag("drag-2", 5.0, -7))["state"]!["scene"]!.AsObject();
        Assert.Null(stranger["order"]);
        Assert.True(KeptScene.Read(stranger).Findings.Count > 100);
    }

    /// <summary>Rank property: a move within a step of the grid leaves the house as it is, and a page that has it is told no more than that; a page that has not, or looks from the other side, gets all.</summary>
    [Fact]
    public async Task AMoveWithinAStep_SaysOnlyThatNothingChanged()
    {
        var edition = (await Ask("Open")).Scene!.Edition;
        var (at, told, revision) = (5.0, 0L, 0L);
        JsonObject within;
        do
        {
            // What is found of the house is worked out beside the hand: where that came between two moves it is told with the second, and the next pair is asked.
            at += 0.1;
            Assert.True(at < 6, "no move within a step was answered as such");
            var first = await Drag("drag-1", at, edition);
            (told, revision) = ((long)first["state"]!["scene"]!["edition"]!, (long)first["state"]!["revision"]!);
            Assert.True((bool)first["state"]!["scene"]!["inHand"]!);
            within = await Drag("drag-1", at + 1e-4, told);
        }
        while (within["state"] is not null);

        Assert.Equal(HouseAnswer.AsShown, within.Deserialize<HouseAnswer>(KeptScene.Json));

        Assert.NotNull((await Drag("drag-1", at + 1e-4, edition))["state"]!["scene"]);
        Assert.Equal("outside", (string?)(await Drag("drag-1", at + 1e-4, told, Sight.Outside))["state"]!["scene"]!["face"]);

        var further = await Drag("drag-1", at + 0.1, told);
        Assert.True((long)further["state"]!["revision"]! > revision);
        await Ask("Undo");
        Assert.NotNull((await Drag("drag-1", at + 0.1, (long)further["state"]!["scene"]!["edition"]!))["state"]);
    }

    /// <summary>An answer as it is sent: of the wall only what the page has not.</summary>
    private Task<JsonObject> Drag(string gesture, double station, long since, Sight sight = Sight.Inside) =>
        hub.InvokeAsync<JsonObject>("Drag", HouseFolderCopy.Key, gesture, new { kind = "move", opening = "tub-window", station }, sight, since);

    /// <summary>Rank property: solving the wall is given up when the house becomes another, and the next who asks gets that of the new house.</summary>
    [Fact]
    public async Task SolvingTheWall_IsGivenUp_WhenTheHouseChanges()
    {
        await Ask("Open");
        long? solved = null;
        await foreach (var answer in hub.StreamAsync<StressAnswer>("Stress", HouseFolderCopy.Key, Sight.Inside))
        {
            solved = answer.Scene?.Revision ?? solved;
            if (answer.Scene is null)
            {
                await Ask("Change", $"drag-{Guid.NewGuid()}", new { kind = "move", opening = "tub-window", station = 5.0 });
            }
        }

        Assert.Null(solved);
        var now = (await Ask("Open")).Revision;
        await foreach (var answer in hub.StreamAsync<StressAnswer>("Stress", HouseFolderCopy.Key, Sight.Inside))
        {
            solved = answer.Scene?.Revision ?? solved;
        }

        Assert.Equal(now, solved);
    }

    /// <summary>Rank property: while an opening is in hand pictures come for the house as it is, small, and when the page lets go the next may take one; without a wall solved before there is none, which is said.</summary>
    [Fact]
    public async Task AnOpeningInHand_IsFollowed_AndLetGo()
    {
        await Ask("Open");
        var unsolved = Assert.Single(await Pictures(1));
        Assert.True(unsolved is { Picture: null, NotFollowed: not null });
        await foreach (var _ in hub.StreamAsync<StressAnswer>("Stress", HouseFolderCopy.Key, Sight.Inside))
        {
        }

        var seen = await Pictures(2);
        Assert.Equal(2, seen.Count);
        Assert.True(seen[1].Revision > seen[0].Revision);
        Assert.NotEqual(seen[0].Picture!.Field.Pressed, seen[1].Picture!.Field.Pressed);
        Assert.True(System.Text.Json.JsonSerializer.SerializeToUtf8Bytes(seen[1]).Length < 20_000);
        Assert.NotEmpty(await Pictures(1));
        // On the door it is not in the wall: it says so, and is followed again once it is back.
        var door = (await Ask("Open")).Scene!.Openings.First(o => o.Kind == "door").Station;
        await Ask("Change", "drag-4", new { kind = "move", opening = "tub-window", station = door });
        var back = await Pictures(2);
        Assert.Equal((true, false), (back[0].NotFollowed is not null, back[1].NotFollowed is not null));
        Assert.NotNull(back[1].Picture);

        async Task<List<LiveAnswer>> Pictures(int most)
        {
            var found = new List<LiveAnswer>();
            using var letGo = new CancellationTokenSource();
            await foreach (var picture in hub.StreamAsync<LiveAnswer>("Live", HouseFolderCopy.Key, "tub-window", Sight.Inside, letGo.Token))
            {
                found.Add(picture);
                if (found.Count == most)
                {
                    await letGo.CancelAsync();
                    break;
                }

                await Ask("Change", "drag-3", new { kind = "move", opening = "tub-window", station = 5.0 + 0.1 * found.Count });
            }

            return found;
        }
    }

    /// <summary>Rank property: the search for the fall tells how far it is, and a page that lets go of it ends it.</summary>
    [Fact]
    public async Task TheSearchForTheFall_IsStopped_AndBegunAgain()
    {
        await Ask("Open");
        for (var time = 0; time < 2; time++)
        {
            using var letGo = new CancellationTokenSource();
            await foreach (var answer in hub.StreamAsync<FallAnswer>("Fall", HouseFolderCopy.Key, letGo.Token))
            {
                await letGo.CancelAsync();
                Assert.Null(answer.Scene);
                Assert.InRange(answer.Share, 0, 1);
                break;
            }
        }
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
