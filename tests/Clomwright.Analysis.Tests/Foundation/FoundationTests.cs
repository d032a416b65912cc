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
        var house = Plumb;
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
        var loads = result.Stages.Where(s => s.Key != "combined").Select(s => s.Strips.Value!.Hardest.OnStem).ToArray();
        Assert.Equal(loads.Order(), loads);
        Assert.Equal("combined", result.Ground.Value!.Stage);
        Assert.All(result.Stages.Where(s => s.Key == "combined"), s => Assert.NotEqual("", s.Combination));
        Assert.Equal(result.Ground.Value.Demand.Si, result.Hardest.Value!.GroundPressure.Value!.Value);
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

    // Rank analytic: stem moved so that the load comes down a known way off: at the foot N d/((N + G_s) b_s); the middle third of each joint by its own width. 1e-9: the same arithmetic in another order.
    [Fact]
    public void ALoadOffTheMiddle_IsThatShareOfEachJoint()
    {
        var plumb = Plumb with { Stem = Plumb.Stem with { InsideOffset = Length.FromMillimetres(10) } };
        var joints = Of(plumb).Joints.ToDictionary(j => j.Joint, j => j.Check.Value!.Demand.Si);
        const double inside = 8 * 0.3048; // the wall's own middle line is shorter than the stem's
        var (n, stem, stone) = (1800 * 9.80665 * 0.4 * 2.2 * (inside + 0.2) / (inside + 0.24), 2400 * 9.80665 * 0.25, 19_600 * 0.36);
        Assert.Equal(0, joints["cob on stem"], 1e-12);
        Near.Relative(n * 0.04 / (n + stem) / 0.5, joints["stem foot"], 1e-9);
        Near.Relative(n * 0.04 / (n + stem + stone) / 0.6, joints["trench"], 1e-9);
    }

    // Rank analytic: a beam 500 by 200 mm of 2400 kg/m3 in the trench: stone 400 mm deep spreads from 500 to 600 mm.
    [Fact]
    public void AGradeBeam_WeighsAndSpreads()
    {
        var house = Plumb with { Trench = Plumb.Trench! with { Width = Length.FromMillimetres(1000), GradeBeam = new GradeBeam(Length.FromMillimetres(550), Length.FromMillimetres(200)) } };
        const double width = 0.55 + 0.4;
        var total = 1800 * 9.80665 * 0.4 * 2.2 + 2400 * 9.80665 * (0.5 * 0.5 + 0.55 * 0.2) + 19_600 * width * 0.4;
        Near.Relative(total / width, Of(house).Ground.Value!.Demand.Si, 1e-9);
        Assert.Equal("analysis.foundation.grade-beam", Of(house with { Trench = house.Trench with { GradeBeam = new GradeBeam(Length.FromMillimetres(450), Length.FromMillimetres(200)) } }).Ground.NotChecked!.Key);
    }

    // Rank analytic: k 0.8 BTU/(h ft F), 100 pcf at 15 %, n 0.7, 210 K days = 378 F days, 100 days, 50 F, by hand in customary units: Stefan 2.1689 ft, lambda 0.89346, Berggren 1.9378 ft.
    [Fact]
    public void FrostIsEstimated_FromTheWinters_AndNeverInPlaceOfTheGivenDepth()
    {
        var site = Houses.HeronPoint.Site with { FrostDepth = null, Freezing = new Freezing(210, 100, new Temperature(10)) };
        var result = Of(Houses.HeronPoint with { Site = site });
        Near.Printed(2.1689, result.FrostEstimate.Value!.Stefan / 0.3048, 1e-3);
        Near.Printed(1.9378, result.FrostEstimate.Value.Berggren / 0.3048, 1e-3);
        Assert.Equal("analysis.foundation.frost-estimate", result.Frost.NotChecked!.Key);
        Assert.Equal("analysis.foundation.always-frozen", Of(Houses.HeronPoint with { Site = site with { Freezing = new Freezing(2100, 200, new Temperature(-1)) } }).FrostEstimate.NotChecked!.Key);
    }

    // Rank analytic: c 5 kPa, 28 degrees, 18 kN/m3, 0.6 wide and 0.9 m deep, Meyerhof: 427.9 kPa by hand, a third of it 142.6. Hansen and Vesic are further apart than the rounding.
    [Fact]
    public void CapacitiesStandSideBySide()
    {
        var house = Plumb with
        {
            Site = Plumb.Site with { Soil = new Soil { Class = "sand", Friction = new Angle(28), Cohesion = new Stress(5000), Density = new Density(18_000 / 9.80665) } },
            Trench = Plumb.Trench! with { Depth = Length.FromMillimetres(900) },
        };
        var ground = Of(house).Capacities;
        Near.Printed(142.6, ground.Computed.Value!.Meyerhof / 1000, 0.1);
        Assert.True(ground.Computed.Value.Hansen < ground.Computed.Value.Meyerhof && ground.Computed.Value.Meyerhof < ground.Computed.Value.Vesic);
        Assert.Equal(100_000, ground.Given);
        Assert.True(ground.AboveTable); // 2000 psf are 95.8 kPa
        Assert.Equal("analysis.foundation.class", Of(house with { Site = house.Site with { Soil = new Soil { Class = "bog" } } }).Capacities.Presumptive.NotChecked!.Key);
    }

    // Rank analytic: a given fall of 1 in 48 over half the ring and 6 m beyond.
    [Fact]
    public void ADrainLaidAtAGivenFall_NeedsThatDropToItsOutlet()
    {
        var drain = Of(Plumb with { Trench = Plumb.Trench! with { Fall = new Slope(1.0 / 48), OutletRun = Length.FromMillimetres(6000) } }).Drain.Value!;
        Near.Relative((Math.PI * (8 * 0.3048 + 0.2) + 6) / 48, drain.Needed, 1e-9);
        Assert.Equal(1.0 / 48, drain.Slope);
        Assert.Single(FromWall.Remarks(Placing.Of(Plumb with { Trench = Plumb.Trench! with { Fall = new Slope(1.0 / 480) } })), d => d is { Path: "trench.fall", Severity: Severity.Warning });
    }

    // Rank analytic: a stem of stone laid dry, 500 mm high over grade and as wide.
    [Fact]
    public void AStemLaidDry_HasItsSlenderness_AndNoPressureButTheGivenOne()
    {
        var dry = Of(Plumb with { Stem = Plumb.Stem with { Material = "dry-stone" } });
        Assert.Equal(1, dry.DryStem!.Value, 1e-12);
        Assert.False(dry.Stem.Is);
        Assert.Null(Of(Plumb).DryStem);
        var given = Of(Plumb with { Stem = Plumb.Stem with { Material = "dry-stone", AllowedPressure = new Stress(150_000) } }).Stem.Value!;
        Assert.Equal(150_000, given.Capacity.Si);
        Assert.Null(given.From);
    }

    // Rank analytic: a shed's upper wall, raised by pitch times span and as thick as the wall top, comes down under the upper ends and nowhere else.
    [Fact]
    public void AShed_BringsDownItsRaisedWall()
    {
        var house = Houses.HeronPoint with { Roof = new Clomwright.Building.Roof.Shed(PoleSize.Even(Length.FromInches(8)), Length.FromInches(48), new Slope(0.1)) { Eave = Length.FromInches(24), Layers = Houses.HeronPoint.Roof!.Layers, Deck = Length.FromInches(2) } };
        var geometry = Placing.Of(house);
        var roof = RoofOf.Of(geometry);
        var result = FromWall.Of(geometry, roof);
        var strips = result.Stages.First(s => s.Key == "soilWet").Strips.Value!.Strips;
        var plain = roof.Plain.Value!;
        var place = plain.Places[0];
        var landings = geometry.Landings.Where(l => !l.Secondary).ToArray();
        var high = landings.MinBy(l => (l.Point - (place.Foot + place.Far * place.Along)).Norm)!;
        var reaction = plain.Stage("soilWet").Value!.PlateReaction[Array.IndexOf(landings, high)];
        var strip = strips.Single(s => s.Subject == high.Name);
        var beam = house.BondBeam!.Width.Metres * house.BondBeam.Depth.Metres * 5500;
        Near.Relative(beam + reaction / strip.Length + 1800 * 9.80665 * 0.1 * place.Far * house.Wall.ThicknessAtTop.Metres, strip.Roof, 1e-9);
    }

    private static House Plumb => Houses.Round(Length.FromFeet(16)) with
    {
        Openings = [], Roof = null, BondBeam = null, Finishes = [], Wall = new Wall(Length.FromMillimetres(2400), Length.FromMillimetres(400)),
        Stem = new Stem(Length.FromMillimetres(500), Length.FromMillimetres(200)), Trench = new Trench(Length.FromMillimetres(600), Length.FromMillimetres(600), Length.FromMillimetres(-1000)),
        Site = new Site { Grade = Length.FromMillimetres(-300), SoilBearing = new Stress(100_000) },
    };

    // Rank published: IBC table 1806.2 in its metric column, 575, 192, 144, 96, 72 kPa; half a kPa: the table's rounding.
    [Fact]
    public void PresumptiveBearing_IsTheTable() =>
        Assert.All(GroundClass.All.Zip([575.0, 192, 144, 96, 72]), x => Near.Printed(x.Second, x.First.Pressure.Value / 1000, 1));

    // Rank property: any house gives numbers or reasons, and what is printed holds.
    [Fact]
    public void AnyPlausibleHouse_GivesNumbersOrReasons() => Houses.Plausible.ForAll(house => { Of(house); }, iter: Counts.Of(15, 1000));
}
