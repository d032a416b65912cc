using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;
using Placing = Clomwright.Geometry.FromBuilding;
using RoofOf = Clomwright.Analysis.Roof.FromGeometry;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>A doubled frame takes the room of two poles in every place. Rank analytic: 8 in poles laid side by side, measured from the line where they touch.</summary>
public sealed class PairTests
{
    private const double Pole = 8 * 0.0254;

    private static RoofResult Of(IfOneFails? way) =>
        RoofOf.Of(Placing.Of(Houses.HeronPoint with { Roof = (Building.Roof.Reciprocal)Houses.HeronPoint.Roof! with { IfOneFails = way } }));

    [Fact]
    public void TwoSideBySide_LeaveLessRing_AndLessRoomForTheFlue()
    {
        var (pairs, singles) = (Of(new IfOneFails.Doubled()), Of(null));
        Near.Relative(2 * 30 * 0.0254 - 2 * Pole, pairs.Reciprocal.Value!.Geometry.ClearOpening, 1e-12);
        Near.Relative(2 * 30 * 0.0254 - Pole, singles.Reciprocal.Value!.Geometry.ClearOpening, 1e-12);
        Assert.Equal(singles.Flue!.Nearest, pairs.Flue!.Nearest);
        Near.Relative(Pole / 2, singles.Flue.Gap - pairs.Flue.Gap, 1e-9);
    }

    [Fact]
    public void TwoSideBySide_AreAsWideAsTwo_AndTouchAlongTheMiddleLine()
    {
        var pole = Of(new IfOneFails.Doubled()).Reciprocal.Value!.Geometry.Poles[0];
        var outline = pole.OutlineFrom(-pole.EaveReach, 2);
        Near.Relative(2 * Pole, (outline[0] - outline[^1]).Norm, 1e-12);
        Near.Relative(pole.EaveReach + pole.Far + pole.Tail, (outline[3] - outline[4]).Norm, 1e-12);
        Assert.Equal(0, (outline[4] - pole.Foot).Norm - pole.Far - pole.Tail, 1e-12);
        Near.Relative(Pole, (pole.OutlineFrom(0, 1)[0] - pole.OutlineFrom(0, 1)[^1]).Norm, 1e-12);
    }

    [Fact]
    public void Orders_CountEveryPole_AndEveryPin()
    {
        var lines = Of(new IfOneFails.Doubled()).Skin!.Orders;
        Assert.Equal(16, lines.Single(l => l.Key == "roof-poles").Order!.Value.Si);
        Assert.Equal(16, lines.Single(l => l.Key == "roof-pins").Order!.Value.Si);
        Assert.Equal(16, lines.Single(l => l.Key == "roof-seat-bolts").Order!.Value.Si);
    }
}
