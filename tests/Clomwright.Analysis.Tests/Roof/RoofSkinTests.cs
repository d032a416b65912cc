using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;
using Placing = Clomwright.Geometry.FromBuilding;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>Sizes of the skin against cones, rectangles and polygons. Shares for waste are common practice and only checked to be said.</summary>
public sealed class RoofSkinTests
{
    private const double Sums = 1e-9; // Gauss points on cones and planes are exact up to rounding
    private static readonly PoleSize Pole = PoleSize.Even(Length.FromMillimetres(180));
    private static readonly Layer Rubber = new("liner", Length.FromMillimetres(1), "epdm");

    private static RoofResult Of(Building.Roof roof, params Layer[] layers) => FromGeometry.Of(Placing.Of(Houses.Round(Length.FromMillimetres(5000)) with
    {
        Roof = roof with { Deck = Length.FromMillimetres(25), EdgeBoard = Length.FromMillimetres(150), Layers = layers.ToSequence() },
    }));

    private static OrderLine Line(RoofResult roof, string key) => roof.Skin!.Orders.Single(o => o.Key == key);

    // Rank analytic: a cone of slope t over a circle of radius R has the surface pi R^2 sqrt(1 + t^2) and the slant R sqrt(1 + t^2); the membrane adds a band all round.
    [Fact]
    public void Cone_HasItsSurfaceSlantAndBand()
    {
        var roof = Of(new Building.Roof.Radial(12, Pole, new Slope(0.35)) { Eave = Length.FromMillimetres(600), CentrePost = true }, Rubber, new Layer("soil", Length.FromMillimetres(100), "ordinary-earth"));
        var (skin, eave, steep) = (roof.Skin!, 2.5 + 0.3556 + 0.6, Math.Sqrt(1 + 0.35 * 0.35));
        Near.Relative(Math.PI * eave * eave * steep, skin.Surface, Sums);
        Near.Relative(2 * Math.PI * eave, skin.EaveLength, Sums);
        Near.Relative(Math.PI * eave * eave * steep + 2 * Math.PI * eave * (0.15 + 0.1524), skin.Membrane, Sums);
        Near.Relative(2 * (eave * steep + 0.15 + 0.1524), skin.SheetWidth, 2e-4); // 180 points round the eave: within 1 - cos(1 degree)
        Near.Relative(skin.SheetWidth * skin.SheetLength, Line(roof, "roof-membrane").Order!.Value.Si, Sums);
        Near.Relative(0.1 * skin.Surface, Line(roof, "roof-soil").Net!.Value.Si, Sums);
        Near.Relative(0.125 * skin.Surface, Line(roof, "roof-soil").Order!.Value.Si, Sums);
        Near.Relative(2 * Math.PI * eave, Line(roof, "roof-edge-board").Net!.Value.Si, Sums);
    }

    // Rank analytic: a plane of slope t over a circle is an ellipse with half axes R and R sqrt(1 + t^2); its girth by Ramanujan's second formula.
    [Fact]
    public void Shed_IsAnEllipse()
    {
        var roof = Of(new Building.Roof.Shed(Pole, Length.FromMillimetres(600), new Slope(0.25)) { Eave = Length.FromMillimetres(600) }, Rubber);
        double a = 2.5 + 0.3556 + 0.6, b = a * Math.Sqrt(1 + 0.25 * 0.25), h = Math.Pow((a - b) / (a + b), 2);
        Near.Relative(Math.PI * a * b, roof.Skin!.Surface, Sums);
        Near.Relative(Math.PI * (a + b) * (1 + 3 * h / (10 + Math.Sqrt(4 - 3 * h))), roof.Skin.EaveLength, 2e-4); // chords between 180 points
        Near.Relative(2 * a + 2 * 0.3024, roof.Skin.SheetWidth, 2e-4);
        Near.Relative(2 * b + 2 * 0.3024, roof.Skin.SheetLength, 2e-4);
    }

    // Rank analytic: poles that lie flat make a flat ring R - r wide; poles that meet in the middle make a straight cone.
    [Theory]
    [InlineData(0.7, 3.5, 0, 2.8)]
    [InlineData(0, 3.5, 0.75, 3.5 * 1.25)]
    public void Profile_IsStraightWhereItMust(double ring, double radius, double slope, double expected) =>
        Near.Relative(expected, RoofSkins.Profile(ring, radius, slope), ring == 0 ? 1e-12 : 1e-4); // Simpson meets a kink at the ring when flat

    // Rank property: between the ring and the eave no way along the roof is shorter than the straight one in space.
    [Fact]
    public void Profile_IsNotShorterThanTheStraightLine()
    {
        var drop = 0.4 * Math.Sqrt(3.5 * 3.5 - 0.7 * 0.7);
        Assert.InRange(RoofSkins.Profile(0.7, 3.5, 0.4), Math.Sqrt(2.8 * 2.8 + drop * drop), 2.8 + drop);
    }

    // Rank analytic: equal poles cross in a polygon of n sides 2 r tan(pi/n) on plan, each longer by the pitch; a pin goes through what lies between the two axes and half of each pole.
    [Fact]
    public void Strap_GoesRoundThePolygon_AndPinThroughBothPoles()
    {
        var frame = WorkedFrame.Geometry;
        var pole = frame.Poles[0];
        Near.Relative(12 * 2 * frame.RingRadius * Math.Tan(Math.PI / 12) / pole.PitchCosine + 0.3048, RoofOrders.StrapLength(frame.Poles), Sums);
        Near.Relative(0.12 + 0.2 + 0.0508, RoofOrders.PinLength(frame.Poles), 1e-6); // the frame's ring is found to this
    }

    // Rank property: one pin a crossing; what is not described is not ordered by guess, and says why.
    [Fact]
    public void WhatIsNotDescribed_IsNotKnown()
    {
        var bare = new Building.Roof.Reciprocal(12, Length.FromMillimetres(700), Pole) { Eave = Length.FromMillimetres(600), Eye = Eye.Glazed };
        var roof = Of(bare, new Layer("soil", Length.FromMillimetres(100), "ordinary-earth"), new Layer("odd", Length.FromMillimetres(10), "no-such-thing"));
        Assert.Equal("analysis.order.no-membrane", Line(roof, "roof-membrane").Basis.Key);
        Assert.Null(Line(roof, "roof-membrane").Order);
        Assert.Null(Line(roof, "roof-pins").Order);
        Assert.Null(Line(roof, "roof-layer").Order);
        var pinned = Of(bare with { Pin = new Pin(Length.FromMillimetres(20)) }, Rubber);
        Assert.Equal(12, Line(pinned, "roof-pins").Order!.Value.Si);
        Assert.Equal(12, Line(pinned, "roof-poles").Order!.Value.Si);
        Near.Relative(pinned.Skin!.Surface + pinned.Skin.EaveLength * 0.3024 + 2 * Math.PI * 0.7 * 0.1524, pinned.Skin.Membrane, Sums);
    }
}
