using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Study.Arrivals;
using Clomwright.Testing;

namespace Clomwright.Study.Tests;

/// <summary>A frame that came in another size. Rank: property; what is said is held against a study of the changed house made from nothing.</summary>
public class ArrivalTests
{
    private static readonly Lazy<HouseStudy> Study = new(() => HouseStudy.Of(Houses.HeronPoint));

    private static Arrival Of(string name, int wider, int higher)
    {
        var drawn = Houses.HeronPoint.Openings.Single(o => o.Name == name);
        return ArrivalOf.Of(Study.Value, name, drawn.Width + Length.FromInches(wider), drawn.Height + Length.FromInches(higher)).Arrival!;
    }

    [Theory]
    [InlineData("tub-window", 2, 4)]
    [InlineData("tub-window", 24, 0)]
    [InlineData("south-window", 14, -2)]
    [InlineData("door", 8, 0)]
    public void Ways_OfAnArrival_SayWhatAFreshStudyOfThemFinds(string name, int wider, int higher)
    {
        var arrival = Of(name, wider, higher);
        Assert.Equal(WayKind.AsItCame, arrival.Ways[0].Kind);
        Assert.Equal(WayKind.Refuse, arrival.Ways[^1].Kind);
        Assert.Equal(name != "door", arrival.Ways.Any(w => w.Kind == WayKind.Sill));
        var before = Bad(Study.Value).ToHashSet();
        Assert.All(arrival.Ways, way =>
        {
            Assert.Equal(way.After, way.Edit?.Apply(Houses.HeronPoint) ?? Houses.HeronPoint);
            var fresh = HouseStudy.Of(way.After);
            Assert.Equal(Bad(fresh).Except(before).Order(), way.Breaks.Select(Mark).Order());
            // What breaks and what changed are together what the study from nothing says otherwise, but for what does not apply before and after.
            var (was, applies) = (Study.Value.Findings.ToHashSet(), Study.Value.Findings.Where(f => f.Verdict is not Verdict.NotApplicable).Select(Mark).ToHashSet());
            Assert.Equal(
                fresh.Findings.Where(f => !was.Contains(f) && (f.Verdict is not Verdict.NotApplicable || applies.Contains(Mark(f)))).Select(Mark).Order(),
                way.Breaks.Concat(way.Changed.Select(c => c.Now)).Select(Mark).Order());
            Assert.All(way.Changed, c => Assert.True(c.Before is null ? !was.Any(f => Mark(f) == Mark(c.Now)) : was.Contains(c.Before) && Mark(c.Before) == Mark(c.Now)));
        });
        Assert.All(arrival.Ways.SkipLast(1), way => Assert.Equal((arrival.Width, arrival.Height), way.After.Openings.Where(o => o.Name == name).Select(o => (o.Width, o.Height)).Single()));
        Assert.True(arrival.Ways.Where(w => w.Kind == WayKind.Shift).All(w => w.Wrong is not null || w.Breaks.Count <= arrival.Ways[0].Breaks.Count + 1));
    }

    /// <summary>Somewhere in a house of six openings a wider frame hurts where it is drawn and none a little further along.</summary>
    [Fact]
    public void AWiderFrame_ThatHurtsWhereItIsDrawn_CanStandElsewhere() => Assert.Contains(
        Houses.HeronPoint.Openings.Where(o => o.Kind != OpeningKind.Door).SelectMany(o => new[] { 4, 8, 12 }.Select(w => Of(o.Name, w, 0))),
        arrival => !arrival.Ways[0].BreaksNothing && arrival.Ways.Any(w => w is { Kind: WayKind.Shift, BreaksNothing: true }));

    [Fact]
    public void Arrival_OfNothingThatCanBe_IsOneSentence()
    {
        var drawn = Houses.HeronPoint.Openings[0];
        Assert.Equal("study.arrived.no-opening", ArrivalOf.Of(Study.Value, "no-such", drawn.Width, drawn.Height).Problem!.Key);
        Assert.Equal("study.arrived.no-size", ArrivalOf.Of(Study.Value, drawn.Name, Length.Zero, drawn.Height).Problem!.Key);
        Assert.Equal("study.arrived.as-drawn", ArrivalOf.Of(Study.Value, drawn.Name, drawn.Width, drawn.Height).Problem!.Key);
    }

    private static IEnumerable<string> Bad(HouseStudy study) => study.Findings.Where(f => f.Verdict is Verdict.FallsShort or Verdict.NotChecked).Select(Mark);

    private static string Mark(Finding finding) => $"{finding.Clause.Adopted} {finding.Rule.Key} {finding.Subject}";
}
