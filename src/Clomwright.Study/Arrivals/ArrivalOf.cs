using Clomwright.Analysis;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study.Arrivals;

/// <summary>Re-plans an opening for a frame that came in another size: each way is tried by making a new study of the changed house.</summary>
/// <remarks>Findings of the wall's model are not waited for: they come with the next study of the house as it then is.</remarks>
public static class ArrivalOf
{
    private const int Steps = 12;

    /// <summary>Houses tried where none of the steps helps: as it came, to and fro along the wall, up and down with the head where it was.</summary>
    private const int Most = 2 + 4 * Steps;

    /// <summary>What can be done with what came.</summary>
    /// <param name="study">The house as it is drawn.</param>
    /// <param name="name">The opening it was for.</param>
    /// <param name="width">Rough width, above 0.</param>
    /// <param name="height">Rough height, above 0.</param>
    /// <param name="watch">Who waits; null where nobody does.</param>
    /// <returns>The ways, or one sentence why there is nothing to try.</returns>
    /// <exception cref="OperationCanceledException">The one who waited gave up.</exception>
    public static (Arrival? Arrival, Message? Problem) Of(HouseStudy study, string name, Length width, Length height, Watch? watch = null)
    {
        ArgumentNullException.ThrowIfNull(study);
        if (study.House.Openings.FirstOrDefault(o => o.Name == name) is not { } drawn)
        {
            return (null, Message.Of("study.arrived.no-opening", ("name", name), ("names", new Argument.List([.. study.House.Openings.Select(o => new Argument.Text(o.Name))]))));
        }

        if (width <= Length.Zero || height <= Length.Zero)
        {
            return (null, new Message("study.arrived.no-size"));
        }

        if (width == drawn.Width && height == drawn.Height)
        {
            return (null, Message.Of("study.arrived.as-drawn", ("name", name)));
        }

        var (before, tried) = (Marks(study), 0);
        WayOn Try(WayKind kind, Edit edit, Message what)
        {
            watch?.Cancelled.ThrowIfCancellationRequested();
            var after = HouseStudy.Of(edit.Apply(study.House), study.Options, study);
            var way = new WayOn(kind, edit, what, after, Worse(before, after), Wrong(study, after));
            watch?.Tell?.Invoke((double)++tried / Most);
            return way;
        }

        var grid = study.House.Units == UnitSystem.Imperial ? Length.FromInches(1) : Length.FromMillimetres(25);
        // A frame that is described grows with its opening: the gap round it stays.
        var came = drawn with { Width = width, Height = height, Frame = drawn.Frame is { } frame ? frame with { Width = frame.Width + width - drawn.Width, Height = frame.Height + height - drawn.Height } : null };
        Edit With(Opening opening) => new Edit.ChangeOpening(name, opening);
        List<WayOn> ways = [Try(WayKind.AsItCame, With(came), Message.Of("study.arrived.as-it-came", ("name", name), ("width", width), ("height", height)))];
        if (Station(study, name) is { } station)
        {
            ways.Add(Least(Both(grid + grid).Select(by => Try(
                WayKind.Shift,
                With(came with { Along = Along.At(station + by) }),
                Message.Of(by > Length.Zero ? "study.arrived.shift-on" : "study.arrived.shift-back", ("name", name), ("by", Abs(by)))))));
        }

        if (drawn.Kind != OpeningKind.Door)
        {
            // The head where it was drawn comes first: lifts, headers and what stands over them stay as they are.
            var head = drawn.Height - height;
            ways.Add(Least(Both(grid).Prepend(head).Where(by => by != Length.Zero && drawn.Sill + by >= Length.Zero).Distinct().Select(by => Try(
                WayKind.Sill,
                With(came with { Sill = drawn.Sill + by }),
                Message.Of(by > Length.Zero ? "study.arrived.sill-up" : "study.arrived.sill-down", ("name", name), ("by", Abs(by)), ("sill", drawn.Sill + by))))));
        }

        ways.Add(new WayOn(WayKind.Refuse, null, Message.Of("study.arrived.refuse", ("name", name), ("width", drawn.Width), ("height", drawn.Height)), study, [], null));
        return (new Arrival(drawn, width, height, ways.Select(way => way with { Changed = Changed(study, way) }).ToSequence()), null);
    }

    /// <summary>Steps to and fro, the small ones first.</summary>
    private static IEnumerable<Length> Both(Length step) => Enumerable.Range(1, Steps).SelectMany(i => new[] { step * i, step * -i });

    private static Length Abs(Length length) => length < Length.Zero ? Length.Zero - length : length;

    /// <summary>The first that breaks nothing; where none does, the one that breaks least.</summary>
    private static WayOn Least(IEnumerable<WayOn> tried)
    {
        WayOn? least = null;
        foreach (var way in tried)
        {
            if (way.BreaksNothing)
            {
                return way;
            }

            least = least is null || Weight(way) < Weight(least) ? way : least;
        }

        return least!;
    }

    private static int Weight(WayOn way) => way.Breaks.Count + (way.Wrong is null ? 0 : 1000);

    /// <summary>Where it stands along the wall, as a tape reads it.</summary>
    private static Length? Station(HouseStudy study, string name) =>
        study.Geometry.Openings.FirstOrDefault(o => o.Opening.Name == name) is { } place ? place.Opening.Along.Station ?? Length.Nearest(place.Station).RoundedTo(Length.FromMillimetres(1)) : null;

    private static HashSet<(string, string, string)> Marks(HouseStudy study) => [.. Bad(study).Select(Mark)];

    private static IEnumerable<Finding> Bad(HouseStudy study) => study.Findings.Where(f => f.Verdict is Verdict.FallsShort or Verdict.NotChecked);

    private static (string, string, string) Mark(Finding finding) => (finding.Clause.Adopted, finding.Rule.Key, finding.Subject);

    private static Sequence<Finding> Worse(HashSet<(string, string, string)> before, HouseStudy after) => Bad(after).Where(f => !before.Contains(Mark(f))).ToSequence();

    /// <summary>What is said otherwise than before and is not among what breaks. Several findings of one rule on one thing are compared in their order.</summary>
    private static Sequence<ChangedFinding> Changed(HouseStudy study, WayOn way)
    {
        if (ReferenceEquals(way.Study, study))
        {
            return [];
        }

        var known = study.Findings.GroupBy(Mark).ToDictionary(g => g.Key, g => new Queue<Finding>(g));
        return way.Study.Findings
            .Select(now => new ChangedFinding(now, known.GetValueOrDefault(Mark(now))?.TryDequeue(out var was) == true ? was : null))
            .Where(c => c.Now != c.Before && !way.Breaks.Contains(c.Now) && c is not { Now.Verdict: Verdict.NotApplicable, Before: null or { Verdict: Verdict.NotApplicable } })
            .ToSequence();
    }

    private static Message? Wrong(HouseStudy before, HouseStudy after)
    {
        var known = before.Diagnostics.Select(d => d.What).ToHashSet();
        return after.Diagnostics.FirstOrDefault(d => d.Severity == Severity.Error && !known.Contains(d.What))?.What;
    }
}
