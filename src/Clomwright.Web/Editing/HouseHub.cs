using Microsoft.AspNetCore.SignalR;

namespace Clomwright.Web.Editing;

/// <summary>What a page asks of an open house. Every other window on the same house is told that it changed.</summary>
internal sealed class HouseHub(OpenHouses houses) : Hub
{
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
