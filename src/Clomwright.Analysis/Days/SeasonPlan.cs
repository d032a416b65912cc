using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>What every season of a job has in common.</summary>
internal sealed record SeasonPlan
{
    /// <summary>Who works, and when.</summary>
    public required Crew Crew { get; init; }

    /// <summary>What there is to do.</summary>
    public required JobAmounts Amounts { get; init; }

    /// <summary>Tasks beside the cob.</summary>
    public required Sequence<WorkTask> Tasks { get; init; }

    /// <summary>Cob that one person lays in an hour, m3, once practised.</summary>
    public required double CobAnHour { get; init; }

    /// <summary>Share of that pace on the first day.</summary>
    public required double LearningStart { get; init; }

    /// <summary>Days in which what is missing to it falls to a third (1/e).</summary>
    public required double LearningDays { get; init; }

    /// <summary>Above this height the pace is <see cref="AboveShare"/> of it, m.</summary>
    public required double Shoulder { get; init; }

    /// <summary>Share of the pace above the shoulder.</summary>
    public required double AboveShare { get; init; }

    /// <summary>Rain of a day from which nothing is done that needs a dry one, mm.</summary>
    public required double RainStops { get; init; }

    /// <summary>Mean temperature of a day below which nothing is done that must not freeze, C.</summary>
    public required double ColdStops { get; init; }

    /// <summary>Day from which plaster is planned; null where nobody has said.</summary>
    public DateOnly? PlasterOn { get; init; }

    /// <summary>Whether tarps on frames stand over the wall: rain stops no cob.</summary>
    public bool Tarps { get; init; }

    /// <summary>How many are away on each day from the first; empty where nobody ever is.</summary>
    public Sequence<int> Away { get; init; }

    /// <summary>Who is there on a day, by its number from 0.</summary>
    public int PeopleOn(int day) => Math.Max(0, Crew.People - (day < Away.Count ? Away[day] : 0));

    /// <summary>What was done already; null before anything is written.</summary>
    public JobLog? Log { get; init; }

    /// <summary>Whether a day is one of work.</summary>
    public bool IsWorkDay(DateOnly date) => ((int)date.DayOfWeek + 6) % 7 < Crew.DaysPerWeek;

    /// <summary>Pace of the cob on the n-th day of laying, from 0, at a height, m3 for one person's hour.</summary>
    public double Pace(int day, double height) =>
        CobAnHour * (1 - (1 - LearningStart) * Math.Exp(-day / LearningDays)) * (height > Shoulder ? AboveShare : 1);

    /// <summary>Whether a task is kept for a later date: no pole lands and no plaster goes on before the day that is planned for it, however dry the wall.</summary>
    public bool IsKept(string task, DateOnly date) => date < (task switch { WorkList.Raise => Crew.RoofOn, WorkList.Plaster => PlasterOn, _ => null });
}

/// <summary>What one season draws: factors on paces, 1 where nothing is uncertain.</summary>
/// <param name="Cob">On the pace of the cob, all season.</param>
/// <param name="Tasks">On the pace of every task.</param>
/// <param name="OfDay">On the pace of a day, by its number from 0.</param>
/// <param name="PlasterAfter">Days from the last lift to a wall dry enough for plaster; null where nobody knows.</param>
internal sealed record SeasonDraw(double Cob, Func<int, double> Tasks, Func<int, double> OfDay, int? PlasterAfter)
{
    /// <summary>On the pace of the cob above the shoulder.</summary>
    public double Above { get; init; } = 1;
}
