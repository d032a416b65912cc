using Clomwright.Analysis.Foundation;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;
using Placing = Clomwright.Geometry.FromBuilding;
using RoofOf = Clomwright.Analysis.Roof.FromGeometry;

namespace Clomwright.Analysis.Tests.Foundation;

/// <summary>The foundation of placed houses.</summary>
public sealed class FoundationTests
{
    private static FoundationResult Of(House house)
    {
        var geometry = Placing.Of(house);
        var result = FromWall.Of(geometry, RoofOf.Of(geometry));
        Printed.Holds(result.Calculations);
        Printed.HaveWords(result.Assumptions);
        return result;
    }

    // Rank analytic: the round wall as a ring of revolution (Pappus) and the stem's middle line, worked here; no openings, no roof, plumb faces. 1e-9: same arithmetic in another order.
    [Fact]
    public void PlumbRoundWall_WeighsAsItsRing()
    {
        var house = Houses.Round(Length.FromFeet(16)) with
        {
            Openings = [], Roof = null, BondBeam = null, Finishes = [], Wall = new Wall(Length.FromMillimetres(2400), Length.FromMillimetres(400)),
            Stem = new Stem(Length.FromMillimetres(500), Length.FromMillimetres(200)), Trench = new Trench(Length.FromMillimetres(600), Length.FromMillimetres(600), Length.FromMillimetres(-1000)),
            Site = new Site { Grade = Length.FromMillimetres(-300), SoilBearing = new Stress(100_000) },
        };
        var result = Of(house);
        var strip = result.Stages[0].Strips.Value!.Strips.Single();
        Near.Relative(1800 * 9.80665 * 0.4 * 2.2, strip.OnStem, 1e-9);
        Assert.Equal(0, strip.StemEccentricity, 1e-12);
        Near.Relative(strip.OnStem / 0.4, strip.StemPressure.Value!.Value, 1e-9);
        var total = strip.OnStem + 2400 * 9.80665 * 0.5 * 0.5 + 19_600 * 0.6 * 0.6;
        Near.Relative(total / 0.6, result.Ground.Value!.Demand.Si, 1e-9);
        var run = Math.PI * (8 * 0.3048 + 0.2);
        Near.Relative(run, result.Drain.Value!.Run, 1e-9);
        Assert.Equal(0.1, result.Drain.Value.Available, 1e-12);
        Near.Relative(run / 96, result.Drain.Value.Needed, 1e-9);

        // Stem moved outward under the wall by 40 mm: contact stays the wall's, the trench sees the offset.
        var moved = Of(house with { Stem = house.Stem with { InsideOffset = Length.FromMillimetres(10) } }).Stages[0].Strips.Value!.Strips.Single();
        Near.Relative(moved.OnStem * 0.04 / (moved.OnStem + (2400 * 9.80665 * 0.25) + (19_600 * 0.36)) / 0.6, moved.TrenchEccentricity.Value!.Value, 1e-9);
    }

    // Rank property: each heavier stage presses more; all of a roof comes down.
    [Fact]
    public void HeronPoint_PressesMoreInEachStage()
    {
        var result = Of(Houses.HeronPoint);
        Assert.True(result.Ground.Is && result.Stem.Is && result.Frost.Is && result.Drain.Is, $"{result.Ground.NotChecked?.Key} {result.Stem.NotChecked?.Key}");
        var loads = result.Stages.Select(s => s.Strips.Value!.Hardest.OnStem).ToArray();
        Assert.Equal(loads.Order(), loads);
        Assert.True(result.Frost.Value!.Use < 1 && result.Drain.Value!.Available > result.Drain.Value.Needed && result.Drain.Value.UnitSlip is null);
        Assert.True(result.Ground.Value!.Use is > 0.3 and < 1, $"{result.Ground.Value}");
    }

    // Rank published: 1/4 in per ten feet is quoted where 1/4 in per foot is meant.
    [Fact]
    public void FallForEachFoot_LaidForEachTen_IsSaid()
    {
        var heron = Houses.HeronPoint;
        var slip = Of(heron with { Trench = heron.Trench! with { Outlet = new Length(Length.PerInch * -73 / 2) } }).Drain.Value!;
        Assert.True(slip.Available < slip.Needed);
        Assert.Equal("analysis.foundation.unit-slip", slip.UnitSlip?.Key);
    }

    [Fact]
    public void WhatIsNotGiven_IsNotChecked()
    {
        var heron = Houses.HeronPoint;
        var bare = Of(heron with { Site = heron.Site with { FrostDepth = null, SoilBearing = null, GroundSnow = null } });
        Assert.Equal("analysis.foundation.no-frost", bare.Frost.NotChecked!.Key);
        Assert.Equal("analysis.foundation.no-bearing", bare.Ground.NotChecked!.Key);
        Assert.NotNull(bare.Missing);
        Assert.Equal("analysis.foundation.no-outlet", Of(heron with { Trench = heron.Trench! with { Outlet = null } }).Drain.NotChecked!.Key);
        Assert.Equal("analysis.foundation.stem-strength", Of(heron with { Stem = heron.Stem with { Material = "dry-stone" } }).Stem.NotChecked!.Key);
    }

    // Rank published: IBC table 1806.2 in its metric column, 575, 192, 144, 96, 72 kPa; half a kPa: the table's rounding.
    [Fact]
    public void PresumptiveBearing_IsTheTable() =>
        Assert.All(GroundClass.All.Zip([575.0, 192, 144, 96, 72]), x => Near.Printed(x.Second, x.First.Pressure.Value / 1000, 1));

    // Rank property: any house gives numbers or reasons, and what is printed holds.
    [Fact]
    public void AnyPlausibleHouse_GivesNumbersOrReasons() => Houses.Plausible.Sample(house => { Of(house); }, iter: Counts.Of(30, 1000));
}
