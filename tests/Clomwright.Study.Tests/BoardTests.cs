using Clomwright.Analysis.Days;
using Clomwright.Building;

namespace Clomwright.Study.Tests;

/// <summary>Planned days, the board of a crew, and what a host has ready.</summary>
public sealed class BoardTests
{
    private static readonly House House = StarterHouse.Make() with { Site = StarterHouse.Make().Site with { Climate = "portland-or" } };

    private static readonly HouseStudy Study = HouseStudy.Of(House);

    private static HouseStudy Named(params CrewMember[] members) => HouseStudy.Of(House with { Crew = House.Crew! with { Members = [.. members] } });

    /// <summary>Property: work days only, never more hours than the people there have, the tasks' hours as the forecast has them, the cob before the beam, and no later than the middle of the drawn seasons.</summary>
    [Fact]
    public void Planned_days_do_all_the_work_and_lose_none()
    {
        var (days, forecast) = (Study.DaysPlanned.Value!.Days, Study.Days.Value!);
        Assert.All(days, d => Assert.True(d.Works.Sum(w => w.Hours) <= d.People * d.Hours + 1e-9));
        Assert.All(days, d => Assert.InRange((int)d.Date.DayOfWeek, 1, House.Crew!.DaysPerWeek));
        // Hours to a millionth: sums of the same numbers in another order.
        Assert.All(forecast.Tasks.Where(t => t.Key != "plaster"), t => Assert.Equal(t.Hours, days.SelectMany(d => d.Works).Where(w => w.Task == t.Key).Sum(w => w.Hours), 1e-6));
        DateOnly Last(string task) => days.Last(d => d.Works.Any(w => w.Task == task)).Date;
        Assert.True(Last(PlannedWork.Cob) < Last(WorkList.Beam));
        Assert.True(Last(WorkList.Raise) <= forecast.Start.AddDays(forecast.Mark(WorkList.Raise)!.Days.P50!.Value));
        Assert.Equal(Enumerable.Range(0, Study.Geometry.Lifts.Count), days.Where(d => d.Closes).Select(d => d.Lift!.Value));
    }

    /// <summary>Property: a day planned for the roof, five weeks later than the wall asks, is kept by plan, forecast and host's list; without a day the plan says that none is there.</summary>
    [Fact]
    public void The_day_planned_for_the_roof_is_kept()
    {
        DateOnly Raised(HouseStudy s) => s.DaysPlanned.Value!.Days.First(d => d.Works.Any(w => w.Task == WorkList.Raise)).Date;
        var free = HouseStudy.Of(House with { Crew = House.Crew! with { RoofOn = null } });
        var kept = HouseStudy.Of(House with { Crew = House.Crew! with { RoofOn = Raised(free).AddDays(35) } });
        Assert.Equal(kept.House.Crew!.RoofOn, Raised(kept));
        Assert.True(kept.Days.Value!.Start.AddDays(kept.Days.Value!.Mark(WorkList.Raise)!.Days.P10!.Value) >= kept.House.Crew.RoofOn);
        Assert.Equal(free.Host.Value!.WorkDays, kept.Host.Value!.WorkDays);
        Assert.Equal(("study.days.roof-kept", "study.days.roof-unsaid"), (RoofDay.Of(kept.House)[0].Key, RoofDay.Of(free.House)[0].Key));
        Assert.Empty(RoofDay.Of(House with { Roof = null }));
    }

    /// <summary>Analytic: four people of whom one is away on the second day are three on it, in the plan and in every season.</summary>
    [Fact]
    public void Who_is_away_works_no_hour()
    {
        var second = House.Crew!.Start.AddDays(1);
        var study = Named([.. Enumerable.Range(0, 4).Select(i => new CrewMember($"P{i}") { Knows = [CrewSkill.Mixing], Away = i == 0 ? [second] : [] })]);
        Assert.Equal(3, study.DaysPlanned.Value!.Days.Single(d => d.Date == second).People);
        Assert.All(study.DaysPlanned.Value!.Days.Where(d => d.Date != second), d => Assert.Equal(4, d.People));
        var rota = study.BoardBy().Value!.Rota.Value!;
        Assert.DoesNotContain(rota.Places, p => p.Person == 0 && rota.Asked.Shifts[p.Shift].Date == second);
    }

    /// <summary>Property: without names the board says how many and why nobody is named; with them everybody who is there stands at one post or is spare.</summary>
    [Fact]
    public void A_board_is_there_with_names_and_without()
    {
        var board = Study.BoardBy().Value!;
        Assert.Equal("analysis.rota.nobody-named", board.Rota.NotChecked!.Key);
        Assert.All(board.Days.Where(d => d.Day.Works.All(w => w.Task != WorkList.Raise)), d => Assert.True(d.Posts.Sum(p => p.People) <= d.Day.People));
        var named = Named([.. Enumerable.Range(0, 4).Select(i => new CrewMember($"P{i}") { Knows = i == 0 ? [CrewSkill.Mixing] : [] })]).BoardBy().Value!;
        var rota = named.Rota.Value!;
        Assert.All(Enumerable.Range(0, rota.Asked.Shifts.Count), n => Assert.Equal(4, rota.Places.Count(p => p.Shift == n) + rota.Spare(n).Count));
    }

    /// <summary>By hand: the week of a Wednesday is that from its Monday; before the work the first, after it the last.</summary>
    [Fact]
    public void A_week_goes_from_Monday()
    {
        var board = Study.BoardBy().Value!;
        var days = board.Days.Select(d => d.Day.Date).ToList();
        // 1 June 2027 is a Tuesday.
        Assert.Equal([new DateOnly(2027, 6, 1), new DateOnly(2027, 6, 2), new DateOnly(2027, 6, 3), new DateOnly(2027, 6, 4)], board.Week(new DateOnly(2027, 6, 2)).Select(d => d.Day.Date));
        Assert.Equal(board.Week(new DateOnly(2027, 6, 1)), board.Week(new DateOnly(2026, 1, 1)));
        Assert.Contains(days[^1], board.Week(new DateOnly(2040, 1, 1)).Select(d => d.Day.Date));
    }

    /// <summary>By hand, from the assumed numbers: four of the crew and two who host eat three meals, drink 5 L and wash with 20 L each; one toilet to fifteen. Materials are there fourteen days before they are first used.</summary>
    [Fact]
    public void A_host_knows_what_and_by_when()
    {
        var host = Study.Host.Value!;
        Assert.Equal((6, 18, 1), (host.People, host.Meals, host.Toilets));
        Assert.Equal(0.030, host.Drinking, 1e-12);
        Assert.Equal(0.120, host.Washing, 1e-12);
        Assert.Equal(host.Start.AddDays(-7), host.SiteReady);
        Assert.All(host.Lines, l => Assert.Equal((l.Needed ?? host.Start).AddDays(-14), l.By));
        Assert.Equal(host.Start, host.Lines.First(l => l.Line.Key == "straw").Needed);
    }
}
