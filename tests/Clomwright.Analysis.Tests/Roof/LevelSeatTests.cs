using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;
using Placing = Clomwright.Geometry.FromBuilding;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>Seats cut level into sloping poles.</summary>
public sealed class LevelSeatTests
{
    private static readonly LevelSeat Steep = new(0.025, 0.2, Math.Atan(0.75), 0);

    // Analytic: a pole that rises 3 in 4 straight across a beam 200 mm wide lies 0.6 of it higher over one edge than over the other, square to itself; a cut 25 mm deep in the middle is 85 deep at one edge and ends 85/120 of the way to the other. 1 nm.
    [Fact]
    public void ASteepSeat_EndsBeforeTheInnerEdge()
    {
        Assert.Equal(0.12, Steep.Full, 1e-9);
        Assert.Equal(0.085, Steep.Outer, 1e-9);
        Assert.Equal(-0.035, Steep.Inner, 1e-9);
        Assert.Equal(85.0 / 120, Steep.Reach, 1e-12);
        Assert.Equal(0.1 * 35 / 120, Steep.OffMiddle, 1e-12);
    }

    // Independent: the flat is 2 sqrt(c (d - c)) wide where it is c deep; summed along the pole over as much of the beam as is cut. A deep cut, a short one, one past the middle of the pole, and one hardly sloping. 1e-5 of it.
    [Theory]
    [InlineData(0.07, 0.75, 0)]
    [InlineData(0.025, 0.75, 0)]
    [InlineData(0.09, 0.75, 0.4)]
    [InlineData(0.025, 1e-5, 0.4)]
    public void WhatThePoleLiesOn_IsItsFlatSummedOverTheBeam(double depth, double slope, double skew)
    {
        const double d = 0.2;
        const int n = 200_000;
        var seat = new LevelSeat(depth, 0.2, Math.Atan(slope), skew);
        var sum = Enumerable.Range(0, n).Select(i => seat.Outer - (i + 0.5) / n * seat.Full).Where(c => c > 0).Sum(c => 2 * Math.Sqrt(c * (d - c))) * seat.Run / n;
        Near.Relative(sum, seat.Area(d), 1e-5);
    }

    // Analytic: lying level, it is the flat by the beam's width.
    [Fact]
    public void ALevelPole_LiesOnItsFlatByTheBeam() => Near.Relative(2 * Math.Sqrt(0.025 * 0.175) * 0.25, new LevelSeat(0.025, 0.25, 0, 0).Area(0.2), 1e-12);

    // Independent: bending over the plate is held by what a round keeps under a cut as deep as the seat is at its deepest, and deeper seats are never easier on the pole.
    [Fact]
    public void OverThePlate_ThePoleIsAsThickAsItsSeatLeavesIt()
    {
        MemberCheck before = Plate(0.5);
        foreach (var inches in new[] { 1.0, 2.0, 3.0 })
        {
            var now = Plate(inches);
            Assert.True(now.Use > before.Use, $"{inches} in: {now.Use} after {before.Use}");
            before = now;
        }

        var roof = Of(1);
        var pole = roof.Geometry.Poles[0];
        var (at, cut) = pole.Heel;
        Near.Relative(pole.Seat!.Outer, cut, 1e-12);
        Assert.Equal(-pole.Seat.Run / 2, at, 1e-12);
        var eave = roof.Stage("eaveOnly").Value!;
        Assert.InRange(Math.Abs(eave.MomentAtHeel[0]), 0.3 * Math.Abs(eave.MomentAtPlate[0]), 0.999 * Math.Abs(eave.MomentAtPlate[0]));
        Assert.True(eave.BendingStress[0] >= Math.Abs(eave.MomentAtHeel[0]) / NotchedRound.Of(pole.DiameterAt(at), cut).SectionModulus * (1 - 1e-9));

        static MemberCheck Plate(double inches) => Of(inches).Checks.Single(c => c.Key == "pole-bending-plate").Check.Value!;

        static ReciprocalResult Of(double inches) => FromGeometry.Of(Placing.Of(Houses.HeronPoint with { Roof = Houses.HeronPoint.Roof! with { Seat = new SeatMade { Flat = new Length((long)(inches * Length.PerInch)) } } })).Reciprocal.Value!;
    }

    // Property: a seat so deep that it cuts the pole through gives numbers, and they fall short.
    [Fact]
    public void APoleCutThrough_FallsShort()
    {
        var roof = FromGeometry.Of(Placing.Of(Houses.HeronPoint with { Roof = Houses.HeronPoint.Roof! with { Seat = new SeatMade { Flat = Length.FromInches(9) } } }));
        var plate = roof.Reciprocal.Value!.Checks.Single(c => c.Key == "pole-bending-plate").Check.Value!;
        Assert.True(double.IsFinite(plate.Use) && plate.Use > 1);
        Printed.Holds(roof.Calculations);
    }
}
