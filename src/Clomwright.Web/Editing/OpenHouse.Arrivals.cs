using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Study.Arrivals;

namespace Clomwright.Web.Editing;

/// <content>A frame that came in another size: the ways to go on are tried beside everything else, and one of them is taken as a change like any other.</content>
internal sealed partial class OpenHouse
{
    private LongRun<(Arrival? Arrival, Message? Problem)>? arrival;

    /// <summary>Begins to try the ways to go on with what came; what was being tried is given up.</summary>
    /// <param name="opening">The opening it was for.</param>
    /// <param name="width">Rough width, as it was written.</param>
    /// <param name="height">Rough height, as it was written.</param>
    /// <returns>The run and of which revision it is; or one sentence why there is none, and the blank it is about.</returns>
    public (LongRun<(Arrival? Arrival, Message? Problem)>? Run, long Revision, string? Trouble, string? Blank) Arrive(string opening, string width, string height)
    {
        lock (gate)
        {
            TakeNewFile();
            var bare = history.Now.Units == UnitSystem.Imperial ? Units.Inch : Units.Millimetre;
            if (!LengthText.TryParse(width, bare, out var wide, out var problem))
            {
                return (null, revision, Say(problem!), "width");
            }

            if (!LengthText.TryParse(height, bare, out var high, out problem))
            {
                return (null, revision, Say(problem!), "height");
            }

            arrival?.Cancel();
            arrival = new(study, (of, watch) => ArrivalOf.Of(of, opening, wide, high, watch));
            return (arrival, revision, null, null);
        }
    }

    /// <summary>The edit of a way that was tried on the house as it is now; null and the reason where it was not.</summary>
    private Edit? EditOfWay(Change.TakeWay taken, out Message? reason)
    {
        var found = arrival is { Done.IsCompletedSuccessfully: true } run && ReferenceEquals(run.Study, study) ? run.Done.Result.Arrival : null;
        var way = found?.Drawn.Name == taken.Opening ? found.Ways.FirstOrDefault(w => string.Equals(w.Kind.ToString(), taken.Way, StringComparison.OrdinalIgnoreCase)) : null;
        reason = way switch
        {
            null => new Message("web.arrived.tried-on-another"),
            { Wrong: { } wrong } => Message.Of("web.arrived.not-taken", ("why", wrong)),
            { Edit: null } => new Message("web.arrived.nothing-to-change"),
            _ => null,
        };
        return reason is null ? way!.Edit : null;
    }
}
