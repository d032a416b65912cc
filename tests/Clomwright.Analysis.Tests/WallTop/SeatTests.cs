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

/// <summary>Where poles press on the wall top, and how hard.</summary>
public sealed class SeatTests
{
    private static (HouseGeometry Geometry, RoofResult Roof, WallTopResult Top) Of(House house)
    {
        var geometry = Placing.Of(house);
        var roof = RoofOf.Of(geometry);
        return (geometry, roof, FromRoof.Of(geometry, roof));
    }

    private static House Round => Houses.Round(Length.FromFeet(18)) with
    {
        Site = new Site { Loads = "asce7-16", GroundSnow = new Stress(1500), WindSpeed = new Speed(45), Exposure = "B" },
        BondBeam = new BondBeam(Length.FromInches(10), Length.FromInches(4), Length.Zero),
        Openings = [],
        Roof = new Building.Roof.Reciprocal(8, Length.FromInches(33), PoleSize.Even(Length.FromInches(8))) { Eave = Length.FromInches(24), Deck = Length.FromInches(1), Layers = [new Layer("soil", Length.FromInches(6), "ordinary-earth")] },
    };

    // Rank analytic: on a circle of radius R a seat at the angle a from the middle of a piece of half-angle h lies R (cos a - cos h) outside its chord.
    [Fact]
    public void RiseAtASeat_OnACircle_IsTheSagittaThere()
    {
        var (geometry, _, top) = Of(Round);
        var top0 = geometry.Wall.Top.Metres;
        var radius = Length.FromFeet(9).Metres + (geometry.Wall.InsideOffset(top0) + geometry.Wall.OutsideOffset(top0)) / 2;
        Assert.Equal(8, top.Seats.Count);
        foreach (var (seat, landing) in top.Seats.Zip(geometry.Landings.Where(l => !l.Secondary)))
        {
            var piece = top.BeamPieces[seat.Piece - 1];
            var half = (piece.To - piece.From) / radius / 2;
            var away = landing.Station / geometry.Curve.Length * 2 * Math.PI - (piece.From + piece.To) / 2 / radius;
            Assert.Equal(radius * (Math.Cos(away) - Math.Cos(half)), seat.Rise, 1e-6);
            Assert.Equal(seat.OffMiddle - seat.Rise, seat.OffCentre, 1e-12);
        }
    }

    // Rank property: what the beam is moved outward comes off what its pieces lie inside.
    [Fact]
    public void OffsetAndRise_AddUp()
    {
        var moved = Of(Round with { BondBeam = Round.BondBeam! with { Offset = Length.FromInches(1) } }).Top.Seats;
        Assert.All(moved, s => Assert.Equal(0.0254 - s.Rise + s.OffMiddle, s.OffCentre, 1e-12));
    }

    // Rank analytic: a seat 1 in deep over the middle of 10 in of beam in a pole at the angle psi to the wall's normal is that deep and half of 10 in sin(beta)/cos(psi) more at the outer edge; what it does not reach inside moves the force outward by its half.
    [Fact]
    public void AShortSeat_PressesOutsideTheMiddleOfTheBeam()
    {
        var (_, roof, top) = Of(Round);
        var pole = roof.Reciprocal.Value!.Geometry.Poles[0];
        var psi = Math.Asin(Length.FromInches(33).Metres / pole.PlateRadius);
        var slope = Math.Sin(pole.Pitch) / Math.Cos(psi);
        Assert.True(slope * 5 > 1, "the seat reaches all of the beam: nothing is shown");
        Assert.All(top.Seats, s => Assert.Equal(0.0254 * (10 - (5 + 1 / slope)) / 2, s.OffMiddle, 1e-6));
    }

    // Rank analytic: R over the width that presses evenly and the flat of a pole 8 in thick cut 1 in, 2 sqrt(8 - 1) in, with 4 in more on either side at 45 degrees; and the weight of the beam, 5500 N/m3 over 4 in.
    [Fact]
    public void PressureUnderAPole_IsWorkedByHand()
    {
        var (_, roof, top) = Of(Round);
        foreach (var (check, i) in top.Bearing.Select((c, i) => (c, i)))
        {
            var even = 0.254 - 2 * top.Seats[i].OffMiddle;
            var force = roof.Combined.States.Where(s => !s.Combination.DeadIsLeast).Max(s => s.Forces.PlateReaction[i]);
            Near.Relative(force / ((2 * Math.Sqrt(7) + 8) * 0.0254 * even) + 5500 * 0.1016 * 0.254 / even, check.Check.Value!.Demand.Si, 1e-9);
            Assert.Equal(80_000, check.Check.Value.Capacity.Si);
        }

        Printed.Holds(top.Calculations);
    }

    // Rank property: without a bond beam, or with a load unknown, no pressure is a number.
    [Fact]
    public void WhatIsNotThere_IsNotChecked()
    {
        Assert.All(Of(Round with { BondBeam = null }).Top.Bearing, c => Assert.Equal("analysis.members.no-beam", c.Check.NotChecked!.Key));
        Assert.Empty(Of(Round with { Roof = null }).Top.Bearing);
    }

    // Rank analytic: EN 1995, larch replaced by C24 (rho_k = 420/1.2 = 350): lap of 4 bolts of 12 mm 2*84 + 3*60 = 348 mm; f_t,0,d of the beam 0.6 f_t,0,k/1.3; a tee's leg, bar and bolt have numbers.
    [Fact]
    public void TimberOfEuropeanClasses_IsChecked()
    {
        var house = Round with
        {
            Site = new Site { Loads = "en1990", GroundSnow = new Stress(600), WindSpeed = new Speed(24), Exposure = "II", Elevation = Length.FromMillimetres(140_000), Latitude = 52 },
            BondBeam = new BondBeam(Length.FromMillimetres(250), Length.FromMillimetres(100), Length.Zero, "c24") { Lap = Length.FromMillimetres(350), Bolt = Length.FromMillimetres(12), Bolts = 4 },
            Tees = new Tees(Length.FromMillimetres(1200), Length.FromMillimetres(600), Length.FromMillimetres(600)) { Timber = Length.FromMillimetres(100), Bolt = Length.FromMillimetres(12), Material = "c24" },
            Roof = ((Building.Roof.Reciprocal)Round.Roof!) with { Species = "c24-pole" },
        };
        var (_, roof, top) = Of(house);
        MemberCheck Check(Sequence<CheckedMember> checks, string key)
        {
            var found = checks.First(c => c.Key == key);
            Assert.True(found.Check.Is, $"{key} {found.Check.NotChecked?.Key}");
            return found.Check.Value!;
        }

        var timber = Timber.Piece("c24", 0.25, 0.1)!;
        var pull = roof.Reciprocal.Value!.Joints.Value!.HoopTension;
        Near.Relative(0.348, Check(top.Beam, "bond-beam-lap").Demand.Si, 1e-9);
        Near.Relative(1.5 * pull / (0.238 * 0.05), Check(top.Beam, "bond-beam-tension").Demand.Si, 1e-9);
        Near.Relative(0.6 * timber.Tension!.Value / 1.3, Check(top.Beam, "bond-beam-tension").Capacity.Si, 1e-9);
        var one = DowelEn.SingleShear(0.012, 0.05, DowelEn.Bearing(350, 0.012), 400e6);
        Near.Relative(0.6 * DowelEn.Effective(4, 5) * one / 1.3, Check(top.Beam, "bond-beam-bolts").Capacity.Si, 1e-9);
        Near.Relative(1.1 / 1.3 * Math.Min(DowelEn.SingleShear(0.012, 0.1, DowelEn.Bearing(350, 0.012), 400e6), 2 * DowelEn.DoubleShear(0.012, 0.075, 0.1, DowelEn.Bearing(350, 0.012), 400e6)), Check(top.Tees, "tee-bolt").Capacity.Si, 1e-9);
        Assert.True(Check(top.Tees, "tee-leg").Capacity.Si > 0 && Check(top.Tees, "tee-bar").Capacity.Si > 0 && Check(top.Beam, "bond-beam-bending").Capacity.Si > 0);
        Printed.Holds(top.Calculations);
    }

}
