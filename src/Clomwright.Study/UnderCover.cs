using Clomwright.Analysis;
using Clomwright.Evidence;

namespace Clomwright.Study;

/// <summary>Work that rain does not stop.</summary>
/// <param name="Key">A task, or a thing to be made: <c>frames</c>, <c>headers</c>, <c>tees</c>, <c>embeds</c>.</param>
/// <param name="Count">How many; null where hours say it.</param>
/// <param name="Hours">Of one person; null where nobody has a number for it.</param>
public sealed record UnderCoverWork(string Key, int? Count, double? Hours)
{
    /// <summary>Whether it waits for a tight roof over it.</summary>
    public bool IsUnderRoof => Key is "floor" or "plaster";
}

/// <summary>What there is to do on a wet day in the whole job.</summary>
/// <param name="Works">In the order of the job.</param>
public sealed record UnderCover(Sequence<UnderCoverWork> Works)
{
    private static readonly string[] Sheltered = ["poles", "floor", "plaster"];

    /// <summary>What a house has of it.</summary>
    internal static UnderCover Of(HouseStudy study)
    {
        var geometry = study.Geometry;
        UnderCoverWork[] made =
        [
            new("frames", geometry.Openings.Count(o => o.Opening.Frame is not null), null), new("headers", geometry.Openings.Count(o => o.Header is not null), null), new("tees", geometry.Tees.Count, null), new("embeds", geometry.Embeds.Count, null),
        ];
        var tasks = study.DaysAsked.Value is { } asked ? Analysis.Days.WorkList.Of(asked.Amounts, asked.Numbers, asked.Crew.Begins) : [];
        return new(made.Where(w => w.Count > 0).Concat(tasks.Where(t => t.Hours > 0 && Sheltered.Contains(t.Key)).Select(t => new UnderCoverWork(t.Key, null, t.Hours))).ToSequence());
    }
}
