using System.Runtime.CompilerServices;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Study;
using Clomwright.Web.Scenes;
using Microsoft.AspNetCore.SignalR;

namespace Clomwright.Web.Editing;

/// <summary>What a page asks of an open house. Every other window on the same house is told that it changed.</summary>
internal sealed class HouseHub(OpenHouses houses) : Hub
{
    /// <summary>How long a page waits for the opening that it has just let go itself; another page that holds one is not waited for longer.</summary>
    private static readonly TimeSpan WaitForHand = TimeSpan.FromSeconds(2);

    /// <summary>Opens a house, or looks again at one that is open.</summary>
    public async Task<HouseAnswer> Open(string key, Sight sight)
    {
        await Groups.AddToGroupAsync(Context.ConnectionId, key, Context.ConnectionAborted);
        return On(key, house =>
        {
            houses.Rehearsal?.On(house);
            return house.Look(sight);
        });
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
    public IAsyncEnumerable<WaterAnswer> Water(string key, Sight sight, CancellationToken cancellation)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            return new[] { new WaterAnswer(0, null, trouble) }.ToAsyncEnumerable();
        }

        var run = house.Drying;
        return run.Told<WaterAnswer>(share => new(share, null, null), [known => new(1, WaterSceneOf.Scene(run.Study, known, FaceOf(sight), Words.Book), null)], null, cancellation);
    }

    /// <summary>What the wall carries: nothing while the model is solved, then the picture. Solved beside everything else; no change waits for it, and it ends without one when the house changes meanwhile.</summary>
    public IAsyncEnumerable<StressAnswer> Stress(string key, Sight sight, CancellationToken cancellation)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            return new[] { new StressAnswer(null, trouble) }.ToAsyncEnumerable();
        }

        var (run, revision) = house.Stress;
        return run.Told<StressAnswer>(_ => new(null, null),
            [
                known =>
                {
                    house.Rest(known);
                    if (known.Value is { } solved)
                    {
                        houses.Rehearsal?.OnStress(house, solved);
                    }

                    return new(StressSceneOf.Scene(run.Study, revision, FaceOf(sight), Words.Book), null);
                },
            ], null, cancellation);
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

        WallInHand? hand = null;
        try
        {
            for (var seen = -1L; ;)
            {
                (var study, seen) = await house.After(seen, cancellation);
                var revision = seen;
                yield return await Task.Run(() => Now(study, revision), CancellationToken.None);
            }
        }
        finally
        {
            hand?.Dispose();
            house.Hand.Release();
        }

        // What could not be taken in hand where it was may be once it has moved.
        LiveAnswer Now(HouseStudy study, long revision)
        {
            var taken = hand ?? house.Take(study, opening);
            hand = taken.Value;
            return hand?.Now(study, revision, FaceOf(sight)) ?? WallInHand.NotTaken(study, revision, taken.NotChecked!);
        }
    }

    /// <summary>The push at which the house falls: first how far the search is, then what was found. Given up when the page lets go or the house changes.</summary>
    public IAsyncEnumerable<FallAnswer> Fall(string key, CancellationToken cancellation)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            return new[] { new FallAnswer(0, null, trouble) }.ToAsyncEnumerable();
        }

        var run = house.Fall;
        return run.Told<FallAnswer>(share => new(share, null, null), [_ => new(1, FallSceneOf.Scene(run.Study, Words.Book), null)], () => house.GiveUp(run), cancellation);
    }

    /// <summary>What can be done with a frame that came in another size: first how far the ways are tried, then the ways. Given up when the page lets go or the house changes.</summary>
    public IAsyncEnumerable<ArrivedAnswer> Arrived(string key, string opening, string width, string height, CancellationToken cancellation)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            return new[] { new ArrivedAnswer(0, null, trouble, null) }.ToAsyncEnumerable();
        }

        var (run, revision, wrong, blank) = house.Arrive(opening, width, height);
        return run is null ? new[] { new ArrivedAnswer(0, null, wrong, blank) }.ToAsyncEnumerable() : run.Told<ArrivedAnswer>(share => new(share, null, null, null),
            [
                known => known.Arrival is { } arrival
                    ? new(1, ArrivedSceneOf.Scene(run.Study, arrival, revision, DateOnly.FromDateTime(DateTime.Now), Words.Book), null, null)
                    : new(1, null, Words.Book.Say(known.Problem!, run.Study.House.Units), "width"),
            ], run.Cancel, cancellation);
    }

    /// <summary>When the job would be done: first how far the seasons are drawn, then the picture. Ends without one when the house changes meanwhile.</summary>
    public IAsyncEnumerable<DaysAnswer> Days(string key, CancellationToken cancellation)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            return new[] { new DaysAnswer(0, null, trouble) }.ToAsyncEnumerable();
        }

        var run = house.Days;
        return run.Told<DaysAnswer>(share => new(share, null, null),
            [
                // The bands at once; who does what is searched for some seconds longer.
                known => new(1, ForecastSceneOf.Scene(run.Study, known, null, Words.Book), null),
                known => new(1, ForecastSceneOf.Scene(run.Study, known, DateOnly.FromDateTime(DateTime.Now), Words.Book), null),
            ], null, cancellation);
    }

    /// <summary>What other ways and weeks would bring: first how far that is tried, then what was found. Given up when the page lets go or the house changes.</summary>
    public IAsyncEnumerable<ChoicesAnswer> Choices(string key, CancellationToken cancellation)
    {
        if (houses.Find(key, out var trouble) is not { } house)
        {
            return new[] { new ChoicesAnswer(0, null, trouble) }.ToAsyncEnumerable();
        }

        var run = house.Choices;
        return run.Told<ChoicesAnswer>(share => new(share, null, null), [known => new(1, ForecastSceneOf.Choices(run.Study, known, Words.Book), null)], () => house.GiveUp(run), cancellation);
    }

    private static Face FaceOf(Sight sight) => sight == Sight.Outside ? Face.Outside : Face.Inside;

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
