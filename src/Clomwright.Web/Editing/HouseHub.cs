using System.Runtime.CompilerServices;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Web.Scenes;
using Microsoft.AspNetCore.SignalR;

namespace Clomwright.Web.Editing;

/// <summary>What a page asks of an open house. Every other window on the same house is told that it changed.</summary>
internal sealed class HouseHub(OpenHouses houses) : Hub
{
    private static readonly TimeSpan LookAgain = TimeSpan.FromMilliseconds(120);

    /// <summary>Opens a house, or looks again at one that is open.</summary>
    public async Task<HouseAnswer> Open(string key, Sight sight)
    {
        await Groups.AddToGroupAsync(Context.ConnectionId, key, Context.ConnectionAborted);
        return On(key, house => house.Look(sight));
    }

    /// <summary>Changes a house. Changes of one gesture are taken back together.</summary>
    public Task<HouseAnswer> Change(string key, string gesture, Change change, Sight sight) => Tell(key, house => house.Change(gesture, change, sight));

    /// <summary>Takes the last step back.</summary>
    public Task<HouseAnswer> Undo(string key, Sight sight) => Tell(key, house => house.Undo(sight));

    /// <summary>Puts the last step taken back again.</summary>
    public Task<HouseAnswer> Redo(string key, Sight sight) => Tell(key, house => house.Redo(sight));

    /// <summary>Writes the house to its file.</summary>
    public Task<HouseAnswer> Save(string key, Sight sight) => Tell(key, house => house.Save(sight));

    /// <summary>Takes the file as another program left it.</summary>
    public Task<HouseAnswer> Reload(string key, Sight sight) => Tell(key, house => house.Reload(sight));

    /// <summary>How the wall dries: first how far that is worked out, then the picture. Ends without one when the house changes meanwhile.</summary>
    public async IAsyncEnumerable<WaterAnswer> Water(string key, Sight sight, [EnumeratorCancellation] CancellationToken cancellation)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            yield return new WaterAnswer(0, null, trouble);
            yield break;
        }

        var run = house.Drying;
        while (!run.Done.IsCompleted)
        {
            yield return new WaterAnswer(run.Share, null, null);
            await Task.WhenAny(run.Done, Task.Delay(LookAgain, cancellation));
            cancellation.ThrowIfCancellationRequested();
        }

        if (run.Done.IsCompletedSuccessfully)
        {
            var scene = WaterSceneOf.Scene(run.Study, await run.Done, sight == Sight.Outside ? Face.Outside : Face.Inside, Phrasebook.English);
            yield return new WaterAnswer(1, scene, null);
        }
        else if (run.Done.Exception?.InnerException is { } broken)
        {
            throw broken;
        }
    }

    /// <summary>What the wall carries: nothing while the model is solved, then the picture. Solved beside everything else; no change waits for it.</summary>
    public async IAsyncEnumerable<StressAnswer> Stress(string key, Sight sight, [EnumeratorCancellation] CancellationToken cancellation)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            yield return new StressAnswer(null, trouble);
            yield break;
        }

        yield return new StressAnswer(null, null);
        var study = house.Now.Study;
        var scene = await Task.Run(() => StressSceneOf.Scene(study, sight == Sight.Outside ? Face.Outside : Face.Inside, Phrasebook.English), cancellation);
        yield return new StressAnswer(scene, null);
    }

    private async Task<HouseAnswer> Tell(string key, Func<OpenHouse, HouseAnswer> act)
    {
        var answer = On(key, act);
        if (answer.State is { } state)
        {
            await Clients.OthersInGroup(key).SendAsync("changed", state.Revision, Context.ConnectionAborted);
        }

        return answer;
    }

    private HouseAnswer On(string key, Func<OpenHouse, HouseAnswer> act) =>
        houses.Find(key, out var trouble) is { } house ? act(house) : new HouseAnswer(null, trouble);
}
