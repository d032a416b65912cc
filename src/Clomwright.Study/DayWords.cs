using Clomwright.Analysis.Days;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study;

/// <summary>A day of the site record in words, and what of it does not fit the house.</summary>
public static class DayWords
{
    /// <summary>What can be finished, by key: the tasks of the job that have anything to do, in order, and the cob.</summary>
    /// <param name="study">Of the house.</param>
    public static Sequence<string> Tasks(HouseStudy study)
    {
        ArgumentNullException.ThrowIfNull(study);
        var keys = study.DaysAsked.Value is { } asked ? WorkList.Of(asked.Amounts, asked.Numbers, WorkBegins.Trench).Where(t => t.Hours > 0).Select(t => t.Key) : WorkList.Keys;
        return [.. keys, DaysResult.WallTop];
    }

    /// <summary>What a task is called.</summary>
    /// <param name="task">Its key.</param>
    public static Message Task(string task) => WorkList.Keys.Contains(task) || task == DaysResult.WallTop ? new Message($"analysis.task.{task}") : Message.Of("study.record.other-task", ("task", task));

    /// <summary>One sentence on what of a day does not fit the house; null where all does.</summary>
    /// <param name="study">Of the house.</param>
    /// <param name="day">As somebody wrote it.</param>
    public static Message? Wrong(HouseStudy study, Seen.Day day)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(day);
        var tasks = Tasks(study);
        var lifts = study.Geometry.Lifts.Count;
        return day.Done.FirstOrDefault(task => !tasks.Contains(task)) is { } unknown
                ? Message.Of("study.record.no-such-task", ("task", OneLine.Of(unknown)), ("near", Nearest.To(unknown, tasks)), ("tasks", new Argument.List(tasks.Select(t => (Argument)t).ToSequence())))
            : day.Lift > lifts ? Message.Of("study.record.no-such-lift", ("lift", day.Lift.Value), ("lifts", lifts))
            : null;
    }

    /// <summary>One sentence on what of an entry does not fit the house; null where all does.</summary>
    /// <param name="study">Of the house.</param>
    /// <param name="what">As somebody wrote it.</param>
    public static Message? Wrong(HouseStudy study, Seen what)
    {
        ArgumentNullException.ThrowIfNull(study);
        return what switch
        {
            Seen.Day day => Wrong(study, day),
            Seen.AsBuilt built when !Parts(study.House).Contains(built.Part) => Parts(study.House) is { Count: > 0 } parts
                ? Message.Of("study.record.no-such-part", ("part", OneLine.Of(built.Part)), ("near", Nearest.To(built.Part, parts))) : new Message("study.record.no-parts"),
            _ => null,
        };
    }

    /// <summary>Names of what can be measured in the wall: openings, niches, embeds.</summary>
    /// <param name="house">The house.</param>
    public static Sequence<string> Parts(House house)
    {
        ArgumentNullException.ThrowIfNull(house);
        return house.Openings.Select(o => o.Name).Concat(house.Niches.Select(n => n.Name)).Concat(house.Embeds.Select(e => e.Name)).ToSequence();
    }

    /// <summary>What is measured of a part.</summary>
    /// <param name="what">Which.</param>
    public static Message Measure(Measured what) => new($"study.record.measured-{what.ToString().ToLowerInvariant()}");

    /// <summary>What a day says, in one line.</summary>
    /// <param name="day">The day.</param>
    public static Message Of(Seen.Day day)
    {
        ArgumentNullException.ThrowIfNull(day);
        List<Message?> said =
        [
            day.Raised is { } raised ? Message.Of("study.record.raised", ("raised", raised)) : null,
            day.Lift is { } lift ? Message.Of("study.record.lift", ("lift", lift)) : null,
            day.Batches is { } batches ? Message.Of("study.record.batches", ("n", Amount.Number(batches))) : null,
            day.People is { } people ? Message.Of("study.record.people", ("n", people)) : null,
            day.Hours is { } hours ? Message.Of("study.record.hours", ("hours", Amount.Number(hours))) : null,
            day.Stopped == StoppedBy.Evening ? null : Message.Of("study.record.stopped", ("by", Stop(day.Stopped))),
            day.Done.Count > 0 ? Message.Of("study.record.done", ("tasks", new Argument.List(day.Done.Select(t => (Argument)Task(t)).ToSequence()))) : null,
            day.Weather?.Rain is { } rain ? Message.Of("study.record.rain", ("rain", rain)) : null,
            day.Weather?.High is { } high ? Message.Of("study.record.high", ("high", high.Amount)) : null,
            day.Weather?.Low is { } low ? Message.Of("study.record.low", ("low", low.Amount)) : null,
            day.Who.Count > 0 ? Message.Of("study.record.who", ("who", new Argument.List(day.Who.Select(w => (Argument)w).ToSequence()))) : null,
            day.Notes is { } notes ? Message.Of("study.record.notes", ("notes", OneLine.Of(notes))) : null,
        ];
        return said.OfType<Message>().Aggregate((all, next) => Message.Of("study.record.and", ("first", all), ("next", next)));
    }

    /// <summary>What any entry says, in one line.</summary>
    /// <param name="what">The entry.</param>
    public static Message Of(Seen what) => what switch
    {
        Seen.Day day => Of(day),
        Seen.Tested t => Message.Of("study.record.tested", ("date", t.Date), ("test", t.Test), ("of", t.Of), ("result", t.Result)),
        Seen.AsBuilt b => Message.Of("study.record.as-built", ("date", b.Date), ("part", b.Part), ("what", Measure(b.What)), ("found", new Argument.Exact(b.Found))),
        Seen.Delivery d => Message.Of("study.record.delivery", ("date", d.Date), ("what", d.What), ("amount", d.Amount)),
        Seen.Issue i => Message.Of("study.record.issue", ("date", i.Date), ("revision", i.Revision), ("to", i.To)),
        Seen.Struck s => Message.Of("study.record.struck", ("why", s.Why)),
        _ => throw new ArgumentOutOfRangeException(nameof(what)),
    };

    /// <summary>How far the ring is by a record; null where nothing is written or the wall's lifts are not known.</summary>
    /// <param name="study">Of the house.</param>
    /// <param name="record">What was seen.</param>
    public static Message? Height(HouseStudy study, SiteRecord record)
    {
        ArgumentNullException.ThrowIfNull(study);
        return study.DaysAsked.Value is { } asked && JobLog.Of(record, asked.Crew with { Start = JobLog.StartOf(record, asked.Crew) }, asked.Amounts, DateOnly.MinValue) is { } log
            ? Message.Of("study.record.height", ("lifts", Amount.Number(Math.Round(log.Height, 2))), ("of", study.Geometry.Lifts.Count)) : null;
    }

    /// <summary>What ended the laying.</summary>
    /// <param name="stopped">The cause.</param>
    public static Message Stop(StoppedBy stopped) => stopped switch
    {
        StoppedBy.Wall => new Message("study.record.by-wall"),
        StoppedBy.Rain => new Message("study.record.by-rain"),
        StoppedBy.Cold => new Message("study.record.by-cold"),
        StoppedBy.Other => new Message("study.record.by-other"),
        _ => new Message("study.record.by-evening"),
    };
}
