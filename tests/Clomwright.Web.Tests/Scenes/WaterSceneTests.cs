using Clomwright.Analysis;
using Clomwright.Analysis.Drying;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Study;
using Clomwright.Testing;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Tests.Scenes;

/// <summary>From a drying run to the sheet of water. Rank: property, against the results that it is drawn from.</summary>
public sealed class WaterSceneTests
{
    private static readonly HouseStudy Study = HouseStudy.Of(Houses.HeronPoint);

    private static readonly Lazy<DryingResult> Drying = new(() => Study.Drying.Value!);

    private static readonly Lazy<WaterScene> Scene = new(() => WaterSceneOf.Scene(Study, Study.Drying, Face.Inside, Phrasebook.English));

    [Fact]
    public void EveryLiftOfEveryBay_HasTheWaterOfTheMiddleCaseToAWholeHundredth()
    {
        var scene = Scene.Value;
        Assert.Equal(Drying.Value.Middle.Lifts.Count, scene.Lifts.Count(lift => lift.Shown is not null));
        foreach (var (lift, laid) in scene.Lifts.Zip(Drying.Value.Middle.Lifts))
        {
            Assert.Equal(Drying.Value.Bays.Count, lift.Cells.Count);
            foreach (var (cell, bay) in lift.Cells.Zip(laid.Bays))
            {
                Assert.Equal(Math.Max(1, bay.Water.Count), cell.Water.Length);
                Assert.All(bay.Water.Zip(cell.Water), pair => Assert.Equal(pair.First, Read(pair.Second), 0.005 + 1e-9));
            }
        }
    }

    [Fact]
    public void Wall_GrowsLiftByLift_AndALiftIsFirmBeforeTheNextIsLaidOnIt()
    {
        var lifts = Scene.Value.Lifts;
        Assert.Equal(0, lifts[0].Shown);
        Assert.Equal(lifts.Select(lift => lift.Shown).Order(), lifts.Select(lift => lift.Shown));
        foreach (var (below, above) in lifts.Zip(lifts.Skip(1)))
        {
            Assert.All(below.Cells, cell => Assert.True(cell.Firm <= above.Shown));
            Assert.Equal(below.Top, above.Bottom);
        }
    }

    [Fact]
    public void EveryDay_HasItsNameAndWhatItSays_AndTheNamesCountFromTheStart()
    {
        var scene = Scene.Value;
        Assert.Equal(scene.Days.Count, scene.Says.Count);
        Assert.All(scene.Says, says => Assert.False(string.IsNullOrWhiteSpace(says)));
        Assert.All(scene.Lifts.Where(lift => lift.Shown is not null), lift => Assert.Contains(lift.Laid, scene.Days[lift.Shown!.Value], StringComparison.OrdinalIgnoreCase));
        Assert.Contains("1 June 2027", scene.Days[0], StringComparison.Ordinal);
        Assert.Contains("11 June 2027", scene.Days[10], StringComparison.Ordinal);
    }

    [Fact]
    public void Stretches_SeenFromOutside_AreMirrored()
    {
        var outside = WaterSceneOf.Scene(Study, Study.Drying, Face.Outside, Phrasebook.English);
        Assert.Equal(Scene.Value.Bays.Select(bay => bay.Name), outside.Bays.Select(bay => bay.Name));
        var (first, last) = (Middle(Scene.Value.Bays[0]), Middle(Scene.Value.Bays[^2]));
        Assert.Equal(first < last, Middle(outside.Bays[0]) > Middle(outside.Bays[^2]));
    }

    [Fact]
    public void WithoutAClimate_NothingIsShown_AndItSaysWhy()
    {
        var nowhere = HouseStudy.Of(Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { Climate = null } });
        var scene = WaterSceneOf.Scene(nowhere, nowhere.Drying, Face.Inside, Phrasebook.English);
        Assert.False(string.IsNullOrWhiteSpace(scene.NotChecked));
        Assert.Empty(scene.Days);
        Assert.Empty(scene.Lifts);
    }

    [Fact]
    public void OneWhoWaits_IsToldHowFarItIs_GetsTheSameAnswer_AndMayGiveUp()
    {
        var told = new List<double>();
        var study = HouseStudy.Of(Houses.HeronPoint);
        var answer = study.DryingFor(new Watch(told.Add, TestContext.Current.CancellationToken));
        Assert.Equal(told.Order(), told);
        Assert.Equal(1, told[^1], 1e-12);
        Assert.Same(answer.Value, study.Drying.Value);
        Assert.Equal(Drying.Value.RoofAfter, answer.Value!.RoofAfter);

        using var gone = new CancellationTokenSource();
        var other = HouseStudy.Of(Houses.HeronPoint);
        Assert.Throws<OperationCanceledException>(() => other.DryingFor(new Watch(_ => gone.Cancel(), gone.Token)));
    }

    private static double Read(char value) => (value - '0') / 100.0;

    private static double Middle(WaterBay bay) => (bay.Boxes[0][0] + bay.Boxes[0][1]) / 2;
}
