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

    /// <summary>How long a page waits for the opening that it has just let go itself; another page that holds one is not waited for longer.</summary>
    private static readonly TimeSpan WaitForHand = TimeSpan.FromSeconds(2);

    /// <summary>Opens a house, or looks again at one that is open.</summary>
    public async Task<HouseAnswer> Open(string key, Sight sight)
    {
        await Groups.AddToGroupAsync(Context.ConnectionId, key, Context.ConnectionAborted);
        return On(key, house => house.Look(sight));
    }

    /// <summary>Changes a house. Changes of one gesture are taken back together.</summary>
    public Task<HouseAnswer> Change(string key, string gesture, Change change, Sight sight) => Tell(key, house => house.Change(gesture, change, sight));

    /// <summary>The same for one of many quick changes: of the wall's findings only those are sent that the page, which has the wall of a revision, has not.</summary>
    public Task<HouseAnswer> Drag(string key, string gesture, Change change, Sight sight, long since) => Tell(key, house => house.Change(gesture, change, sight, since));

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
        var (study, revision) = await house.After(-1, cancellation);
        var scene = await Task.Run(
            () =>
            {
                house.Rest(study);
                return StressSceneOf.Scene(study, revision, sight == Sight.Outside ? Face.Outside : Face.Inside, Phrasebook.English);
            },
            cancellation);
        yield return new StressAnswer(scene, null);
    }

    /// <summary>What the wall carries while an opening is in hand: a picture for the house as it is each time one is ready, never for one that is no more. Ends, with all it holds, when the page lets go.</summary>
    public async IAsyncEnumerable<LiveAnswer> Live(string key, string opening, Sight sight, [EnumeratorCancellation] CancellationToken cancellation)
    {
        if (houses.Find(key, out _) is not { } house)
        {
            yield break;
        }

        if (!await house.Hand.WaitAsync(WaitForHand, cancellation))
        {
            yield break;
        }

        try
        {
            using var hand = await Task.Run(() => house.Take(opening), CancellationToken.None);
            for (var seen = -1L; hand is not null;)
            {
                (var study, seen) = await house.After(seen, cancellation);
                var revision = seen;
                if (await Task.Run(() => hand.Now(study, revision, sight == Sight.Outside ? Face.Outside : Face.Inside), CancellationToken.None) is not { } picture)
                {
                    yield break;
                }

                yield return picture;
            }
        }
        finally
        {
            house.Hand.Release();
        }
    }

    /// <summary>The push at which the house falls: first how far the search is, then what was found. Given up when the page lets go or the house changes.</summary>
    public async IAsyncEnumerable<FallAnswer> Fall(string key, [EnumeratorCancellation] CancellationToken cancellation)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            yield return new FallAnswer(0, null, trouble);
            yield break;
        }

        var run = house.Fall;
        try
        {
            while (!run.Done.IsCompleted)
            {
                yield return new FallAnswer(run.Share, null, null);
                await Task.WhenAny(run.Done, Task.Delay(LookAgain, cancellation));
                cancellation.ThrowIfCancellationRequested();
            }
        }
        finally
        {
            if (!run.Done.IsCompleted)
            {
                house.GiveUp(run);
            }
        }

        if (run.Done.IsCompletedSuccessfully)
        {
            yield return new FallAnswer(1, await Task.Run(() => FallSceneOf.Scene(run.Study, Phrasebook.English), cancellation), null);
        }
        else if (run.Done.Exception?.InnerException is { } broken)
        {
            throw broken;
        }
    }

    /// <summary>When the job would be done: first how far the seasons are drawn, then the picture. Ends without one when the house changes meanwhile.</summary>
    public async IAsyncEnumerable<DaysAnswer> Days(string key, [EnumeratorCancellation] CancellationToken cancellation)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            yield return new DaysAnswer(0, null, trouble);
            yield break;
        }

        var run = house.Days;
        while (!run.Done.IsCompleted)
        {
            yield return new DaysAnswer(run.Share, null, null);
            await Task.WhenAny(run.Done, Task.Delay(LookAgain, cancellation));
            cancellation.ThrowIfCancellationRequested();
        }

        if (run.Done.IsCompletedSuccessfully)
        {
            var known = await run.Done;
            // The bands at once; who does what is searched for some seconds longer.
            yield return new DaysAnswer(1, await Task.Run(() => ForecastSceneOf.Scene(run.Study, known, null, Phrasebook.English), cancellation), null);
            yield return new DaysAnswer(1, await Task.Run(() => ForecastSceneOf.Scene(run.Study, known, DateOnly.FromDateTime(DateTime.Now), Phrasebook.English), cancellation), null);
        }
        else if (run.Done.Exception?.InnerException is { } broken)
        {
            throw broken;
        }
    }

    /// <summary>What other ways and weeks would bring: first how far that is tried, then what was found. Given up when the page lets go or the house changes.</summary>
    public async IAsyncEnumerable<ChoicesAnswer> Choices(string key, [EnumeratorCancellation] CancellationToken cancellation)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            yield return new ChoicesAnswer(0, null, trouble);
            yield break;
        }

        var run = house.Choices;
        try
        {
            while (!run.Done.IsCompleted)
            {
                yield return new ChoicesAnswer(run.Share, null, null);
                await Task.WhenAny(run.Done, Task.Delay(LookAgain, cancellation));
                cancellation.ThrowIfCancellationRequested();
            }
        }
        finally
        {
            if (!run.Done.IsCompleted)
            {
                house.GiveUp(run);
            }
        }

        if (run.Done.IsCompletedSuccessfully)
        {
            yield return new ChoicesAnswer(1, ForecastSceneOf.Choices(run.Study, await run.Done, Phrasebook.English), null);
        }
        else if (run.Done.Exception?.InnerException is { } broken)
        {
            throw broken;
        }
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
