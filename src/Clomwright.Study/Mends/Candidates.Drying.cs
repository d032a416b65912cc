using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study.Mends;

internal static partial class Candidates
{
    private static readonly Length Least = Length.FromInches(4);

    /// <summary>Equal lifts as low as the mix at its wettest stands, rounded down.</summary>
    private static IEnumerable<Edit> LowerLifts(Need need)
    {
        if (need.Study.Fresh.Value?.Today.Low is not { } stands)
        {
            return [];
        }

        var grain = need.House.Units == UnitSystem.Imperial ? Length.FromInches(1) : Length.FromMillimetres(20);
        var height = new Length((long)Math.Floor(stands * 1e9 / grain.Nanometres) * grain.Nanometres);
        return height >= Least ? [new Edit.ChangeLifts(new LiftPlan { Height = height, Method = need.House.Lifts.Method })] : [];
    }

    /// <summary>The day by which a slow wall carries the roof; else the day by which a fast one does, and a person looks.</summary>
    private static IEnumerable<Edit> LaterRoof(Need need) =>
        Days(need, m => [m.Slow.Roof, m.Fast.Roof]).Select(day => new Edit.ChangeCrew(need.House.Crew! with { RoofOn = day }));

    /// <summary>The same for plaster, put off into a month that is mild enough.</summary>
    private static IEnumerable<Edit> LaterPlaster(Need need) => Days(need, m => [m.Slow.Plaster, m.Fast.Plaster]).Select(day => Plastered(need, InSeason(need, day))).Distinct();

    /// <summary>The first day of the next month in which the plaster may be laid.</summary>
    private static IEnumerable<Edit> PlasterInSeason(Need need) =>
        FinishOf(need)?.Start is { } start && InSeason(need, new DateOnly(start.Year, start.Month, 1).AddMonths(1)) is var day ? [Plastered(need, day)] : [];

    /// <summary>The day itself where its month is mild, else the first of the next that is.</summary>
    private static DateOnly InSeason(Need need, DateOnly day) =>
        FinishOf(need) is not { } finish || need.Study.Finishes.Of(finish.Face).Season.Value is not { Months.Count: > 0 } season || season.Months.Contains(day.Month) ? day
            : Enumerable.Range(1, 12).Select(i => new DateOnly(day.Year, day.Month, 1).AddMonths(i)).First(d => season.Months.Contains(d.Month));

    private static Finish? FinishOf(Need need) => need.House.Finishes.FirstOrDefault(f => $"{f.Face.ToString().ToLowerInvariant()} face" == need.Subject);

    /// <summary>The whole work begun on the first of another month, the nearest first; the roof's day goes with it.</summary>
    private static IEnumerable<Edit> AnotherStart(Need need) => need.House.Crew is not { } crew ? []
        : Enumerable.Range(1, 11).Select(months => new DateOnly(crew.Start.Year, crew.Start.Month, 1).AddMonths(months))
            .Select(start => (Edit)new Edit.ChangeCrew(crew with { Start = start, RoofOn = crew.RoofOn?.AddDays(start.DayNumber - crew.Start.DayNumber) }));

    private static Edit.ChangeFinishes Plastered(Need need, DateOnly day) =>
        new(need.House.Finishes.Select(f => $"{f.Face.ToString().ToLowerInvariant()} face" == need.Subject ? f with { Start = day } : f).ToSequence());

    private static IEnumerable<DateOnly> Days(Need need, Func<Analysis.Drying.DryingMilestones, double?[]> of) =>
        need.Study.Milestones.Value is { } m ? of(m).OfType<double>().Distinct().Select(days => m.Start.AddDays((int)Math.Ceiling(days))) : [];
}
