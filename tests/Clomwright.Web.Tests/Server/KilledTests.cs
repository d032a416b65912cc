using System.Diagnostics;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Testing;
using Clomwright.Web.Editing;
using Microsoft.AspNetCore.SignalR.Client;
using Microsoft.Extensions.DependencyInjection;

namespace Clomwright.Web.Tests.Server;

/// <summary>The program is killed while a house is changed. Rank property: the house file is whole and as it was saved, and of the changes none older than a second is gone. A promise by the clock: kept apart from tests that take the machine from it.</summary>
[Collection(nameof(ByTheClock))]
public sealed class KilledTests(ITestOutputHelper output)
{
    private static readonly TimeSpan MayBeGone = TimeSpan.FromSeconds(1);

    [Fact]
    public async Task AProgramThatIsKilled_LosesAtMostTheLastSecond_AndBreaksNoFile()
    {
        using var folder = new HouseFolderCopy();
        var random = new Random((int)Counts.Seed);
        var before = await File.ReadAllBytesAsync(folder.HouseFile);
        for (var round = 0; round < Counts.Of(2, 10); round++)
        {
            var made = await ChangeUntilKilled(folder.Path, TimeSpan.FromMilliseconds(1400 + random.Next(600)));
            Assert.Equal(before, await File.ReadAllBytesAsync(folder.HouseFile));
            Assert.All(HouseFolder.Open(folder.Path).Folder!.List(), name => Assert.NotNull(HouseFolder.Open(folder.Path).Folder!.Read(name).Reading.House));

            var killed = made.Killed;
            var least = made.Changes.Last(change => change.At < killed - MayBeGone).Sill;
            var kept = await Kept(folder);
            Assert.InRange(kept.Sill.Nanometres, least.Nanometres, made.Changes[^1].Sill.Nanometres);
            Assert.True(kept.CanUndo);
            output.WriteLine($"Round {round}: {made.Changes.Count} changes, the last {(killed - made.Changes[^1].At).TotalMilliseconds:0} ms before the kill; kept up to {kept.Sill}, at least {least} had to be.");
        }
    }

    /// <summary>A workbench of this process finds what the killed one kept; then the change is taken back, so that the next round begins as this one did.</summary>
    private static async Task<(Length Sill, bool CanUndo)> Kept(HouseFolderCopy folder)
    {
        await using var workbench = await folder.Start();
        await using var hub = Hub(workbench.Address);
        await hub.StartAsync();
        var state = (await hub.InvokeAsync<HouseAnswer>("Open", HouseFolderCopy.Key, Sight.Inside)).State!;
        Assert.True(LengthText.TryParse(state.Scene!.Openings.Single(o => o.Name == "tub-window").Fields.Sill, out var sill, out _));
        await hub.InvokeAsync<HouseAnswer>("Undo", HouseFolderCopy.Key, Sight.Inside);
        return (sill, state.CanUndo);
    }

    private static async Task<(List<(DateTime At, Length Sill)> Changes, DateTime Killed)> ChangeUntilKilled(string folder, TimeSpan after)
    {
        await using var program = await RunningProgram.On(folder);
        await using var hub = Hub(program.Address);
        await hub.StartAsync();
        await hub.InvokeAsync<HouseAnswer>("Open", HouseFolderCopy.Key, Sight.Inside);
        var changes = new List<(DateTime, Length)>();
        var clock = Stopwatch.StartNew();
        // On a busy machine a change takes long: one at least has to be old enough to be kept.
        for (var inches = 30; clock.Elapsed < after || changes.Count < 3 || DateTime.UtcNow - changes[0].Item1 < 1.2 * MayBeGone; inches++)
        {
            // A sixteenth up each time, so that the later change has the higher sill.
            var sill = new Length(Length.PerInch * 30 + Length.PerInch / 16 * inches);
            await hub.InvokeAsync<HouseAnswer>("Change", HouseFolderCopy.Key, $"write-{inches}", new { kind = "write", opening = "tub-window", field = "sill", text = LengthText.Written(sill, UnitSystem.Imperial) }, Sight.Earth);
            changes.Add((DateTime.UtcNow, sill));
        }

        program.Process.Kill(entireProcessTree: true);
        var killed = DateTime.UtcNow;
        await program.Process.WaitForExitAsync();
        return (changes, killed);
    }

    internal static HubConnection Hub(Uri address) => new HubConnectionBuilder()
        .WithUrl(new Uri(address, "/hub"), http => http.Headers["Origin"] = address.GetLeftPart(UriPartial.Authority))
        .AddJsonProtocol(json => WebJson.Apply(json.PayloadSerializerOptions))
        .Build();
}

/// <summary>Tests of promises by the clock: they run when all others have run.</summary>
[CollectionDefinition(nameof(ByTheClock), DisableParallelization = true)]
public sealed class ByTheClock;
