using Clomwright.Analysis.Anchorage;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.WallTop;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;
using Placing = Clomwright.Geometry.FromBuilding;
using RoofOf = Clomwright.Analysis.Roof.FromGeometry;

namespace Clomwright.Analysis.Tests.WallTop;

/// <summary>Bond beam, tees as timber, and the way sideways.</summary>
public sealed class BeamAndPathTests
{
    private const double Pound = 4.4482216152605;

    private static (HouseGeometry Geometry, RoofResult Roof, WallTopResult Top) Of(House house)
    {
        var geometry = Placing.Of(house);
        var roof = RoofOf.Of(geometry);
        return (geometry, roof, FromRoof.Of(geometry, roof));
    }

    private static MemberCheck Check(Sequence<CheckedMember> checks, string key, string? subject = null)
    {
        var found = checks.First(c => c.Key == key && (subject is null || c.Subject == subject));
        Assert.True(found.Check.Is, found.Check.NotChecked?.Key);
        return found.Check.Value!;
    }

    // Rank published (second-hand): IBC 2109, 1 in bolt embedded 21 in in adobe, 500 lb; a hair less in either way is the row below it.
    [Fact]
    public void EarthDowel_IsThePublishedRow()
    {
        Near.Relative(500, EarthDowel.Within(0.0254, 21 * 0.0254)!.Shear.Value / Pound, 1e-12);
        Assert.Equal("7/8 in", EarthDowel.Within(0.0254 - 1e-5, 21 * 0.0254)!.Key);
        Assert.Equal("7/8 in", EarthDowel.Within(0.0254, 21 * 0.0254 - 1e-5)!.Key);
        Assert.Null(EarthDowel.Within(0.0254, 0.3));
    }

    // Rank analytic: the pull of the fallback ring over one half of the beam less a hole, T/((b - D) d/2), and the lap of 5 bolts of 1/2 in: (14 + 16) D = 15 in.
    [Fact]
    public void BondBeam_HoldsTheFallbackRingInItsLaps()
    {
        var (_, roof, top) = Of(Houses.HeronPoint);
        var pull = roof.Reciprocal.Value!.Joints.Value!.HoopTension;
        Near.Relative(pull / (9.5 * 4 * 0.0254 * 0.0254), Check(top.Beam, "bond-beam-tension").Demand.Si, 1e-9);
        Near.Relative(15 * 0.0254, Check(top.Beam, "bond-beam-lap").Demand.Si, 1e-9);
        Assert.Equal(pull, Check(top.Beam, "bond-beam-bolts").Demand.Si);
        Printed.Holds(top.Calculations);
        Printed.HaveWords(top.Assumptions);
    }

    // Rank property: joints that may slip pull no less than pinned ones.
    [Fact]
    public void SlippingJoints_PullNoLess() => Assert.True(
        Check(Of(Houses.HeronPoint with { Roof = ((Building.Roof.Reciprocal)Houses.HeronPoint.Roof!) with { Joint = PoleJoint.Notched } }).Top.Beam, "bond-beam-bolts").Demand.Si
        >= Check(Of(Houses.HeronPoint).Top.Beam, "bond-beam-bolts").Demand.Si);

    // Rank analytic: a tee under T has T/(a (a - D)) in its leg and T B/8 in its bar with (a - D) a^2/6 left of it. A light roof in a storm lifts.
    [Fact]
    public void Tee_AsTimber_IsWorkedByHand()
    {
        var house = Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { WindSpeed = new Speed(85), Exposure = "D" } };
        var (_, _, top) = Of(house);
        var hardest = top.Tees.Where(t => t.Key == "tee-uplift").MaxBy(t => t.Check.Value!.Demand.Si)!;
        var pull = hardest.Check.Value!.Demand.Si;
        Assert.True(pull > 0);
        const double a = 4 * 0.0254, d = 0.0127;
        Near.Relative(pull / (a * (a - d)), Check(top.Tees, "tee-leg", hardest.Subject).Demand.Si, 1e-9);
        Near.Relative(pull * 10 * 0.0254 / 8 / ((a - d) * a * a / 6), Check(top.Tees, "tee-bar", hardest.Subject).Demand.Si, 1e-9);
        Near.Relative(pull, Check(top.Tees, "tee-bolt", hardest.Subject).Demand.Si, 1e-9);
        Printed.Holds(top.Calculations);
    }

    // Rank property: a bolt that comes too near the edge it pulls toward is no check: 5/8 in in a beam 4 in deep.
    [Fact]
    public void BoltNearTheEdge_IsNotChecked() => Assert.Equal(
        "analysis.walltop.bolt-edge",
        Of(Houses.HeronPoint with { Tees = Houses.HeronPoint.Tees! with { Bolt = new Length(Length.PerInch * 5 / 8) } }).Top.Tees.First(t => t.Key == "tee-bolt").Check.NotChecked!.Key);

    // Rank analytic: keys hold n p h w, one for each whole spacing of the ring without the door; a damp break without keys is not checked.
    [Fact]
    public void CobOnStem_IsHeldByItsKeys()
    {
        var (geometry, _, top) = Of(Houses.HeronPoint);
        var door = geometry.Openings.Where(o => o.Sill <= geometry.Wall.Base.Metres).Sum(o => o.Widest.Width);
        var held = Check(top.Lateral, "lateral-path", "cob on stem");
        Near.Relative(Math.Floor((geometry.Curve.Length - door) / (30 * 0.0254)) * 80_000 * 6 * 9 * 0.0254 * 0.0254, held.Capacity.Si, 1e-9);
        Assert.Equal("analysis.walltop.slip-plane", Of(Houses.HeronPoint with { Stem = Houses.HeronPoint.Stem with { Keys = null } }).Top.Lateral.Single(l => l.Subject == "cob on stem").Check.NotChecked!.Key);
    }

    // Rank analytic: 0.7 max(0.4 S_DS, 0.2) k_a I W of the upper half wall beats 0.6 of the wind here; worked from thickness, height and the demand's own stretch.
    [Fact]
    public void WallOutward_IsItsUpperHalf()
    {
        var (geometry, _, top) = Of(Houses.HeronPoint);
        var check = Check(top.Lateral, "lateral-path", "wall outward");
        Assert.Equal("0.6D + 0.7E", check.Combination);
        double low = geometry.Wall.Base.Metres, high = geometry.Wall.Top.Metres;
        var mean = (geometry.Wall.ThicknessAt(low) + geometry.Wall.ThicknessAt(high)) / 2;
        var width = 2 * Math.Sqrt(geometry.Curve.OffsetArea(geometry.Wall.OutsideOffset(low)) / Math.PI);
        var perMetre = 0.7 * 0.2 * (1 + width / 0.3048 / 100) * 1800 * 9.80665 * mean * (high - low) / 2;
        var own = check.How.Steps[^1].Symbols.Single(s => s.Name == "l").Value.Si;
        Near.Relative(perMetre * own, check.Demand.Si, 1e-9);
    }

    // Rank property: where the wall has room the laps stand over cob and beside no leg; the pieces still close the ring.
    [Fact]
    public void Laps_StandClear_WhereThereIsRoom()
    {
        var house = Houses.Round(Length.FromFeet(18)) with
        {
            BondBeam = new BondBeam(Length.FromInches(10), Length.FromInches(4), Length.Zero) { Lap = Length.FromInches(12), Bolt = new Length(Length.PerInch / 2) },
            Openings = [Houses.Door("door", 90)],
        };
        var (geometry, _, top) = Of(house);
        Assert.All(top.BeamPieces, p => Assert.True(p.Reach >= 0.1524 - 1e-9, $"{p.Number} {p.Reach}"));
        var offset = (geometry.Wall.InsideOffset(geometry.Wall.Top.Metres) + geometry.Wall.OutsideOffset(geometry.Wall.Top.Metres)) / 2;
        Assert.Equal(geometry.Curve.OffsetLength(offset), top.BeamPieces.Sum(p => p.To - p.From), 1e-9);
        Assert.Equal(2 * Math.PI, top.BeamPieces.Sum(p => 2 * p.Mitre), 1e-9);
    }

    // Rank property: a measured strength of the cob, passed in, is what headers are held against, with its tag.
    [Fact]
    public void MeasuredStrength_IsTheHeadersCapacity()
    {
        var geometry = Placing.Of(Houses.HeronPoint);
        var top = FromRoof.Of(geometry, RoofOf.Of(geometry), new Settled<double>(200_000, null));
        var check = Check(top.Headers, "header-bearing");
        Assert.Equal(200_000, check.Capacity.Si);
        Assert.Contains(check.How.Steps.SelectMany(s => s.Symbols), s => s.Tag == Tag.Measured);
        Assert.DoesNotContain(top.Assumptions, a => a.Key == "cob-bearing");
    }

    // Rank analytic: sag in time K 5 M L^2/(48 E I) of a header away from poles is 1.5 times 5 w L^4/(384 E I) under its cob.
    [Fact]
    public void HeaderSag_AwayFromPoles_IsTheHandbookSag()
    {
        var (geometry, _, top) = Of(Houses.HeronPoint);
        var check = Check(top.Headers, "header-sag", "door/header");
        var moment = check.How.Steps[0].Symbols.Single(s => s.Name == "M").Value.Si;
        var header = geometry.Openings.Single(o => o.Opening.Name == "door").Header!;
        var span = 0.9144 + 0.3048;
        var beam = new RectangularBeam(header.TotalWidth, 0.1524);
        Near.Relative(1.5 * beam.Sag(8 * moment / (span * span), span, 1.3e6 * 6894.757293168361), check.Demand.Si, 1e-6);
    }

    // Rank property: whatever the house, every check is a number or a reason, and what is printed holds.
    [Fact]
    public void AnyPlausibleHouse_GivesNumbersOrReasons() => Houses.Plausible.ForAll(
        house =>
        {
            var (_, _, top) = Of(house with { BondBeam = house.BondBeam is { } b ? b with { Lap = Length.FromInches(12), Bolt = new Length(Length.PerInch / 2) } : null });
            Printed.Holds(top.Calculations);
            Assert.All([.. top.Beam, .. top.Lateral], c => Assert.True(!c.Check.Is || (double.IsFinite(c.Check.Value!.Use) && c.Check.Value.Use >= 0), c.Key));
        },
        iter: Counts.Of(12, 500));
}
