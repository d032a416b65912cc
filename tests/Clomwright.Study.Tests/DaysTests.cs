using Clomwright.Analysis;
using Clomwright.Analysis.Days;
using Clomwright.Building;

namespace Clomwright.Study.Tests;

/// <summary>The days of a whole house.</summary>
public sealed class DaysTests
{
    private static readonly HouseStudy Study = HouseStudy.Of(StarterHouse.Make() with { Site = StarterHouse.Make().Site with { Climate = "portland-or" } });

    private static DaysQuestion Question => Study.DaysAsked.Value! with { Seasons = 60 };

    /// <summary>Property: numbers come by place, so threads change nothing.</summary>
    [Fact]
    public void Days_DoNotDependOnThreads()
    {
        var (one, two) = (FromDrying.Of(Question with { Threads = 1 }), FromDrying.Of(Question with { Threads = 2 }));
        Assert.Equal(one.Milestones, two.Milestones);
        Assert.Equal(one.Lifts, two.Lifts);
        Assert.Equal(one.FrostRisk, two.FrostRisk);
    }

    /// <summary>Property: bands are in order, lifts follow one another, and the job is done with its last mark.</summary>
    [Fact]
    public void Marks_FollowOneAnother()
    {
        var days = FromDrying.Of(Question);
        Assert.Equal(Study.Geometry.Lifts.Count, days.Lifts.Count);
        Assert.All(days.Milestones, m => Assert.True(m.Days.P10 <= m.Days.P50 && m.Days.P50 <= m.Days.P90));
        Assert.All(days.Lifts.Zip(days.Lifts.Skip(1)), pair => Assert.True(pair.First.Closed.P50 < pair.Second.Closed.P50));
        Assert.Equal(days.Lifts[^1].Closed, days.Mark("wall-top")!.Days);
        Assert.True(days.Mark("wall-top")!.Days.P50 < days.Mark("beam")!.Days.P50 && days.Mark("beam")!.Days.P50 < days.Mark("raise")!.Days.P50);
        Assert.Equal(days.Milestones.Max(m => m.Days.P90), days.Finish.P90);
    }

    /// <summary>Property, in the same drawn weather: more people are never later at the wall's top by the median, and a crew that begins with the trench is later.</summary>
    [Fact]
    public void More_people_are_not_later_and_a_trench_takes_time()
    {
        int? Top(DaysQuestion asked) => FromDrying.Of(asked).Mark("wall-top")!.Days.P50;
        var (asked, planned) = (Question, Top(Question));
        Assert.True(Top(asked with { Crew = asked.Crew with { People = 2 * asked.Crew.People } }) <= planned);
        Assert.True(Top(asked with { Crew = asked.Crew with { Begins = WorkBegins.Trench } }) > planned);
    }

    /// <summary>Property: who gives up is heard, and the next who asks is answered.</summary>
    [Fact]
    public void Giving_up_is_heard()
    {
        using var stop = new CancellationTokenSource();
        var told = 0.0;
        Assert.ThrowsAny<OperationCanceledException>(() => FromDrying.Of(Question with { Seasons = 100_000 }, new Watch(share => { told = share; stop.Cancel(); }, stop.Token)));
        Assert.InRange(told, 1e-6, 0.1);
        Assert.NotNull(FromDrying.Of(Question with { Seasons = 5 }));
    }

    /// <summary>A house of which nobody says who builds it says so.</summary>
    [Fact]
    public void Without_a_crew_nothing_is_foretold() =>
        Assert.Equal("analysis.days.no-crew", HouseStudy.Of(StarterHouse.Make() with { Crew = null }).Days.NotChecked!.Key);
}
