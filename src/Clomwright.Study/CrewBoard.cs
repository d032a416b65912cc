using Clomwright.Analysis;
using Clomwright.Analysis.Days;
using Clomwright.Evidence;

namespace Clomwright.Study;

/// <summary>A work day as a day board shows it.</summary>
/// <param name="Day">What it is for.</param>
/// <param name="Posts">How many people each kind of work asks for; the same in both halves.</param>
/// <param name="Shift">Place of its first half among the shifts of the rota; null where nobody is named or it is later than planned for.</param>
public sealed record BoardDay(PlannedDay Day, Sequence<RotaPost> Posts, int? Shift);

/// <summary>Who does what, day by day.</summary>
/// <param name="Days">Work days from the first.</param>
/// <param name="Rota">Who stands where; or why nobody is put to anything.</param>
/// <param name="Assumptions">How a crew is shared out, where nobody said.</param>
public sealed record CrewBoard(Sequence<BoardDay> Days, Known<RotaResult> Rota, Sequence<Assumption> Assumptions)
{
    /// <summary>The days of the week of a date; of the first week after it that has any; of the last week where none has.</summary>
    public Sequence<BoardDay> Week(DateOnly date)
    {
        static DateOnly Monday(DateOnly day) => day.AddDays(-(((int)day.DayOfWeek + 6) % 7));
        var week = Days.Where(d => d.Day.Date >= Monday(date)).Select(d => (DateOnly?)Monday(d.Day.Date)).FirstOrDefault() ?? (Days.Count > 0 ? Monday(Days[^1].Day.Date) : date);
        return Days.Where(d => Monday(d.Day.Date) == week).ToSequence();
    }

    /// <summary>The board of a house; or why there is none.</summary>
    /// <param name="study">Of the house.</param>
    /// <param name="planner">Puts people to posts; the plain plan where none is given.</param>
    internal static Known<CrewBoard> Of(HouseStudy study, Func<RotaQuestion, RotaResult>? planner)
    {
        if (study.DaysAsked.Value is not { } asked || study.DaysPlanned.Value is not { } planned)
        {
            return study.DaysAsked.NotChecked!;
        }

        var numbers = RotaNumbers.Of(study.House.Assumed);
        var question = CrewDays.Of(asked, planned, numbers);
        Known<RotaResult> rota = question.Value is { } named ? (planner ?? PlainRota.Of)(named) : question.NotChecked!;
        var shifts = rota.Value?.Asked.Shifts ?? [];
        return new CrewBoard(
            planned.Days.Select((day, i) => new BoardDay(day, 2 * i < shifts.Count ? shifts[2 * i].Posts : CrewDays.PostsOf(asked, day, day.People, numbers), 2 * i < shifts.Count ? 2 * i : null)).ToSequence(),
            rota, numbers.Assumed(RotaNumbers.Keys.Where(k => k.StartsWith("rota-", StringComparison.Ordinal))));
    }
}
