using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

/// <summary>Timber of openings, tees and parts of the drain, counted by hand from the description of Heron Point, in inches.</summary>
public sealed class OpeningOrdersTests
{
    private const double Inch = 0.0254;

    private static Sequence<OrderLine> Orders(House house) => Quantities.Of(FromBuilding.Of(house)).Orders;

    private static double Net(House house, string key) => Orders(house).Single(o => o.Key == key && o.Net is not null).Net!.Value.Si / Inch;

    // By hand: jambs as high as the frame, head and sill between jambs of 1 1/2 in; the door 35 x 78, two windows 25 x 38, one 23 x 38; all of 1 1/2 by 6.
    [Fact]
    public void Frames_AreOrderedByTheirPieces()
    {
        Assert.Equal(2 * 78 + 2 * 32 + 2 * (2 * 38 + 2 * 22) + 2 * 38 + 2 * 20, Net(Houses.HeronPoint, "frame-timber"), 1e-9);
        var line = Orders(Houses.HeronPoint).Single(o => o.Key == "frame-timber" && o.Net is not null);
        Assert.Equal(1.1, line.Order!.Value.Si / line.Net!.Value.Si, 1e-12);
        Assert.Equal("timber", line.Supplier);
    }

    // By hand: three across and two corner to corner inside each of the four frames.
    [Fact]
    public void Battens_BraceEveryFrame()
    {
        double Corner(double wide, double high) => 2 * Math.Sqrt(wide * wide + high * high);
        Assert.Equal(3 * (32 + 22 + 22 + 20) + Corner(32, 75) + 2 * Corner(22, 35) + Corner(20, 35), Net(Houses.HeronPoint, "brace-battens"), 1e-9);
    }

    // By hand: two under each of two headers that lie 20 in under the wall's top, where 5 % of taper make 15 in of 14.
    [Fact]
    public void Pads_AreAsLongAsTheWallIsThick() => Assert.Equal(4 * 15, Net(Houses.HeronPoint, "cross-pads"), 1e-9);

    // The arch has no frame; the moon is glass in the cob and wants none.
    [Fact]
    public void AnOpeningWithoutAFrame_IsSaidAndNotGuessed()
    {
        var line = Orders(Houses.HeronPoint).Single(o => o.Key == "frame-timber" && o.Net is null);
        Assert.Null(line.Order);
        Assert.Equal(new Argument.Text("west-arch"), line.What.Arguments.Single(a => a.Name == "names").Value);
        Assert.Equal("geometry.basis.no-frame", line.Basis.Key);
    }

    // By hand: a leg of 24 in and through 8 in of bond beam, a bar of 10 in.
    [Fact]
    public void Tees_SayWhatTheyAreCutFrom()
    {
        var geometry = FromBuilding.Of(Houses.HeronPoint);
        var whole = Orders(Houses.HeronPoint).Single(o => o.Key == "tees").Basis.Arguments.Single(a => a.Name == "whole").Value;
        Assert.Equal(geometry.Tees.Count * (24 + 8 + 10) * Inch, ((Argument.Quantity)whole).Value.Si, 1e-9);
        var unsized = Houses.HeronPoint with { Tees = Houses.HeronPoint.Tees! with { Timber = null } };
        Assert.Equal("geometry.basis.tees-unsized", Orders(unsized).Single(o => o.Key == "tees").Basis.Key);
    }

    [Fact]
    public void Drain_HasOneJunctionAndOneEnd_WhereItGoesSomewhere()
    {
        Assert.Equal(1, Orders(Houses.HeronPoint).Single(o => o.Key == "drain-junction").Order!.Value.Si);
        Assert.Equal(1, Orders(Houses.HeronPoint).Single(o => o.Key == "drain-end").Order!.Value.Si);
        Assert.DoesNotContain(Orders(Houses.HeronPoint with { Trench = Houses.HeronPoint.Trench! with { OutletRun = null } }), o => o.Key is "drain-junction" or "drain-end");
    }
}
