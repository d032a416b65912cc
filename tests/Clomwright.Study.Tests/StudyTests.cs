using System.Runtime.CompilerServices;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;
using Clomwright.Testing;

namespace Clomwright.Study.Tests;

/// <summary>Ranks: property throughout.</summary>
public class StudyTests
{
    /// <summary>Analytic: a ring of n equal pieces round a circle of radius R, w wide: each is cut to its chord 2 R sin(pi/n), both mitres w tan(pi/n) and a lap; so much is ordered, with its waste.</summary>
    [Fact]
    public void BondBeam_IsOrderedByItsPieces()
    {
        Length width = Length.FromInches(10), lap = Length.FromInches(12);
        var study = HouseStudy.Of(Houses.Round(Length.FromFeet(14)) with { BondBeam = new BondBeam(width, Length.FromInches(8), Length.Zero) { Lap = lap } });
        var (wall, pieces) = (study.Geometry.Wall, study.WallTop.BeamPieces);
        var radius = Length.FromFeet(7).Metres + (wall.InsideOffset(wall.Top.Metres) + wall.OutsideOffset(wall.Top.Metres)) / 2;
        var half = Math.PI / pieces.Count;
        var net = pieces.Count * (2 * radius * Math.Sin(half) + width.Metres * Math.Tan(half) + lap.Metres);
        var line = study.Quantities.Orders.Single(o => o.Key == "bond-beam");
        Assert.Equal(net, line.Net!.Value.Si, 1e-9);
        Assert.Equal(net * (1 + line.Waste), line.Order!.Value.Si, 1e-9);
    }

    /// <summary>Taking passes over from an earlier study never changes an answer.</summary>
    [Fact]
    public void AStudyFromAnEarlierOneEqualsAFreshOne() =>
        Gen.Select(Houses.Plausible, Houses.Plausible).ForAll((first, second) =>
        {
            var earlier = HouseStudy.Of(first);
            _ = earlier.Findings;
            foreach (var next in new[] { second, first with { Name = "other", Site = second.Site }, first with { Mix = second.Mix }, first with { Openings = second.Openings, Tees = null } })
            {
                var fresh = HouseStudy.Of(next);
                var carried = HouseStudy.Of(next, StudyOptions.Quick, earlier);
                Assert.Equal(fresh.Geometry.Measures, carried.Geometry.Measures);
                Assert.Equal(fresh.Roof.Assumptions, carried.Roof.Assumptions);
                Assert.Equal(fresh.Findings, carried.Findings);
                Assert.Equal(fresh.Quantities.Batches, carried.Quantities.Batches);
                Assert.Equal(fresh.Diagnostics, carried.Diagnostics);
            }
        }, iter: Counts.Of(20, 500));

    /// <summary>What is told to a hand is what a fresh study tells of where everything stands, what was told before of all else, and, of an unchanged house, all of it in the same order.</summary>
    [Fact]
    public void FindingsInHand_AreFreshWherePlacesTellThem_AndThoseOfBeforeElsewhere() =>
        Gen.Select(Houses.Plausible, Houses.Plausible).ForAll((house, other) =>
        {
            var rested = HouseStudy.Of(house);
            Assert.Equal(rested.Findings, rested.FindingsInHand(rested.Findings));

            var moved = HouseStudy.Of(house with { Openings = other.Openings }, StudyOptions.Quick, rested);
            var inHand = moved.FindingsInHand(rested.Findings);
            Assert.Equal(moved.Findings.Where(f => !RuleBook.ReadsResults(f)), inHand.Where(f => !RuleBook.ReadsResults(f)));
            Assert.All(inHand.Where(RuleBook.ReadsResults), held => Assert.Contains(held, rested.Findings));
        }, iter: Counts.Of(20, 500));

    /// <summary>A house that is changed all day is studied thousands of times: of those long before none is kept, the last few may be.</summary>
    [Fact]
    public void StudiesLongBeforeALastOne_AreLetGo()
    {
        var (last, before) = StudiedAgainAndAgain();
        GC.Collect();
        GC.WaitForPendingFinalizers();
        GC.Collect();
        Assert.All(before[..^3], gone => Assert.False(gone.IsAlive));
        GC.KeepAlive(last);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static (HouseStudy Last, WeakReference[] Before) StudiedAgainAndAgain()
    {
        var house = StarterHouse.Make();
        var last = HouseStudy.Of(house);
        var before = new List<WeakReference>();
        for (var i = 1; i <= 8; i++)
        {
            _ = last.Findings;
            before.Add(new WeakReference(last));
            last = HouseStudy.Of(house with { Name = $"house {i}" }, StudyOptions.Quick, last);
        }

        return (last, [.. before]);
    }

    /// <summary>Whatever the house, there is a study of it.</summary>
    [Fact]
    public void EveryHouseHasAStudy() =>
        Houses.Plausible.ForAll(house =>
        {
            var study = HouseStudy.Of(house);
            Assert.Equal(study.Findings.Count, study.Tally.Met + study.Tally.Short + study.Tally.NotChecked + study.Tally.NeedsJudgement + study.Tally.NotApplicable);
            _ = FiguresOf.House(study);
            _ = study.SettingOut;
        }, iter: Counts.Of(6, 2_000));

    /// <summary>The equations behind the numbers give the numbers again from their own symbols.</summary>
    [Fact]
    public void EveryCalculationEvaluatesToItsOwnResult()
    {
        const double relative = 1e-9; // both sides are the same few operations on doubles, in another order
        foreach (var calculation in HouseStudy.Of(Houses.HeronPoint).Calculations)
        {
            Assert.Empty(CalculationCheck.Mismatches(calculation, relative));
        }
    }

    [Fact]
    public void StarterHouse_Study_FallsShortOfNothing()
    {
        var study = HouseStudy.Of(StarterHouse.Make());
        Assert.Empty(study.Diagnostics);
        Assert.Equal(0, study.Tally.Short);
    }
}
