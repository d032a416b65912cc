using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;

namespace Clomwright.Study.Tests;

/// <summary>Bolts, eye, felt, footings, washes and linings on the one list, counted by hand from Heron Point and changes of it.</summary>
public sealed class HouseOrdersTests
{
    private static OrderLine Line(House house, string key) => HouseStudy.Of(house).Quantities.Orders.Single(o => o.Key == key);

    private static double Length(OrderLine line, string argument) => ((Argument.Quantity)line.Basis.Arguments.Single(a => a.Name == argument).Value).Value.Si / 0.0254;

    // By hand: five bolts in each lap, as many laps as pieces; through 8 in and 2 in for washers and nut.
    [Fact]
    public void LapBolts_AreCounted()
    {
        var study = HouseStudy.Of(Houses.HeronPoint);
        var line = study.Quantities.Orders.Single(o => o.Key == "beam-bolts");
        Assert.Equal(5 * study.WallTop.BeamPieces.Count, line.Order!.Value.Si);
        Assert.Equal(10, Length(line, "length"), 1e-9);
        Assert.Contains(study.Quantities.Assumptions, a => a.Key == "pin-past");
        var bare = Houses.HeronPoint with { BondBeam = Houses.HeronPoint.BondBeam! with { Bolt = null } };
        Assert.Null(Line(bare, "beam-bolts").Order);
        Assert.Equal("analysis.order.no-lap-bolts", Line(bare, "beam-bolts").Basis.Key);
    }

    // By hand: two a tee; through a bond beam of 10 in, and through leg and bar of 4 in side by side.
    [Fact]
    public void TeeBolts_AreTwoATee()
    {
        var line = Line(Houses.HeronPoint, "tee-bolts");
        Assert.Equal(2 * FromBuilding.Of(Houses.HeronPoint).Tees.Count, line.Order!.Value.Si);
        Assert.Equal(12, Length(line, "top"), 1e-9);
        Assert.Equal(10, Length(line, "foot"), 1e-9);
        Assert.Null(Line(Houses.HeronPoint with { Tees = Houses.HeronPoint.Tees! with { Bolt = null } }, "tee-bolts").Order);
    }

    // By hand: once round a ring of 2 1/2 ft; what closes it is one thing of which nothing more is said.
    [Fact]
    public void Eye_HasItsCurb()
    {
        Assert.Equal(2 * Math.PI * 30 * 0.0254, Line(Houses.HeronPoint, "roof-curb").Net!.Value.Si, 1e-3);
        Assert.Equal(1, Line(Houses.HeronPoint, "roof-eye").Net!.Value.Si);
        Assert.Null(Line(Houses.HeronPoint, "roof-eye").Order);
        var closed = Houses.HeronPoint with { Roof = (Roof.Reciprocal)Houses.HeronPoint.Roof! with { Eye = Eye.Closed } };
        Assert.DoesNotContain(HouseStudy.Of(closed).Quantities.Orders, o => o.Key is "roof-curb" or "roof-eye");
    }

    [Fact]
    public void Felt_IsAskedFor_WhereTheMembraneLiesBare()
    {
        var roof = Houses.HeronPoint.Roof!;
        Assert.DoesNotContain(HouseStudy.Of(Houses.HeronPoint).Quantities.Orders, o => o.Key == "roof-felt");
        var line = Line(Houses.HeronPoint with { Roof = roof with { Layers = [.. roof.Layers.Skip(1)] } }, "roof-felt");
        Assert.Null(line.Order);
        Assert.Equal("analysis.order.no-felt", line.Basis.Key);
    }

    // By hand: four passes over the outside face, one of slip over the inside.
    [Fact]
    public void Washes_SayWhatIsCovered_AndNotHowMuchThatTakes()
    {
        var study = HouseStudy.Of(Houses.HeronPoint);
        var wash = study.Quantities.Orders.Single(o => o.Key == "plaster-limewash");
        Assert.Equal(4 * study.Finishes.Of(Face.Outside).Area, wash.Net!.Value.Si, 1e-9);
        Assert.Null(wash.Order);
        Assert.Equal(study.Finishes.Of(Face.Inside).Area, study.Quantities.Orders.Single(o => o.Key == "plaster-slip").Net!.Value.Si, 1e-9);
    }

    [Fact]
    public void Footings_AreCounted_AndTheirDepthIsNotGuessed()
    {
        var posts = Houses.HeronPoint with { Roof = (Roof.Reciprocal)Houses.HeronPoint.Roof! with { IfOneFails = new IfOneFails.Post(Evidence.Length.FromInches(6), Evidence.Length.FromInches(24)) } };
        Assert.Equal(8, Line(posts, "roof-footings").Net!.Value.Si);
        Assert.Null(Line(posts, "roof-footings").Order);
    }

    // What only comfort describes is ordered as measured, with a tenth for waste.
    [Fact]
    public void ACoatThatOnlyComfortKnows_IsOrdered()
    {
        var house = Houses.HeronPoint with { Comfort = new Comfort { Linings = [new Lining("north coat", Face.Outside, "light-earth", Evidence.Length.FromInches(8)) { From = new Angle(290), To = new Angle(70) }] } };
        var line = Line(house, "lining");
        Assert.Equal(LiningPlaces.Of(FromBuilding.Of(house)).Single().Volume, line.Net!.Value.Si, 1e-12);
        Assert.Equal(1.1, line.Order!.Value.Si / line.Net.Value.Si, 1e-12);
        Assert.Equal("analysis.order.lining-mixed", line.Basis.Key);
    }

    // What is counted is ordered whole.
    [Fact]
    public void WhatIsCounted_ComesWhole() => Assert.All(
        HouseStudy.Of(Houses.HeronPoint).Quantities.Orders.Where(o => o.Order is { Dimension: Dimension.Count }), o => Assert.Equal(Math.Round(o.Order!.Value.Si), o.Order.Value.Si));
}
