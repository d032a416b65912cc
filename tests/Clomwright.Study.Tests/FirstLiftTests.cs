using Clomwright.Analysis.Days;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study.Tests;

/// <summary>Drying begins with the first lift, not with the first spade.</summary>
public sealed class FirstLiftTests
{
    private static House Make(WorkBegins begins)
    {
        var house = StarterHouse.Make();
        return house with { Site = house.Site with { Climate = "portland-or" }, Crew = house.Crew! with { Begins = begins, RoofOn = new DateOnly(2027, 9, 1) } };
    }

    /// <summary>Analytic: with the stem there it is the first day of work.</summary>
    [Fact]
    public void With_a_stem_it_is_the_first_day()
    {
        var study = HouseStudy.Of(Make(WorkBegins.Wall));
        Assert.Equal(study.House.Crew!.Start, study.FirstLift);
        Assert.Equal(study.House.Crew.Start, study.Drying.Value!.Start);
    }

    /// <summary>Property: a trench takes longer than a stem, and drying, its milestones and the notes of findings begin with the day of the lift.</summary>
    [Fact]
    public void With_trench_or_stem_to_build_it_is_later_and_everything_about_drying_begins_there()
    {
        var (stem, trench) = (HouseStudy.Of(Make(WorkBegins.Stem)), HouseStudy.Of(Make(WorkBegins.Trench)));
        Assert.True(stem.FirstLift > stem.House.Crew!.Start);
        Assert.True(trench.FirstLift > stem.FirstLift);
        Assert.Equal(trench.FirstLift, trench.Drying.Value!.Start);
        Assert.Equal(trench.FirstLift, trench.Milestones.Value!.Start);
        var landing = trench.Findings.Single(f => f.Rule.Key == "roof-landing");
        Assert.Contains(landing.Notes, note => note.Key == "study.demand.first-lift");
    }

    /// <summary>Independent: the middle of the first lift's own forecast, which draws the cob too, begins with the same stem; the lift is closed no earlier than its first day.</summary>
    [Fact]
    public void It_is_no_later_than_the_first_lift_closes()
    {
        var study = HouseStudy.Of(Make(WorkBegins.Trench));
        Assert.InRange(study.FirstLift!.Value.DayNumber - study.House.Crew!.Start.DayNumber, 5, study.Days.Value!.Lifts[0].Closed.P50!.Value);
    }

    /// <summary>Property: where the climate is not known nothing is taken for the day.</summary>
    [Fact]
    public void Without_a_climate_nobody_can_tell()
    {
        var house = Make(WorkBegins.Trench);
        var study = HouseStudy.Of(house with { Site = house.Site with { Climate = null } });
        Assert.Null(study.FirstLift);
        Assert.False(study.Drying.Is);
    }

    /// <summary>Property: rain that is foretold for the only days in question stops dry work on them in every season, and the plan of the days says so.</summary>
    [Fact]
    public void What_is_foretold_takes_the_place_of_drawn_weather()
    {
        var house = Make(WorkBegins.Stem);
        var start = house.Crew!.Start;
        var wet = Enumerable.Range(0, 14).Select(d => new SiteDay(start.AddDays(d), new Temperature(15), new Temperature(9), Length.FromMillimetres(12))).ToSequence();
        var rained = HouseStudy.Of(house with { Site = house.Site with { Forecast = wet } });
        var stem = rained.Days.Value!.Mark(WorkList.Stem)!.Days;
        Assert.True(stem.P10 >= 14);
        Assert.True(HouseStudy.Of(house).Days.Value!.Mark(WorkList.Stem)!.Days.P10 < 14);
        Assert.All(rained.DaysPlanned.Value!.Days.Where(d => d.Date < start.AddDays(14)), d => Assert.True(d.IsStopped && d.Works.All(w => w.Task is "poles" or "rubble")));
    }
}
