using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Geometry.Tests;

public sealed class TurningTests
{
    private static readonly Gen<Roof> Ring = Gen.Select(Gen.Int[3, 14], Gen.Int[0, 2], Gen.Double[0, 360]).Select((poles, between, first) =>
        (Roof)new Roof.Reciprocal(poles, Length.FromFeet(1), PoleSize.Even(Length.FromInches(6)))
        {
            Eave = Length.FromFeet(2), FirstBearing = new Angle(Math.Round(first)), Secondaries = between == 0 ? null : new Secondaries(between, Length.FromInches(4)),
        });

    [Fact]
    public void BestTurn_OfAnyPlausibleHouse_IsAsGoodAsTheBestOfManySamples() =>
        // Independent: the distance is sampled at many rotations over a whole turn; the best of them is at most the answer, and no more below it than one step can bring.
        Gen.Select(Houses.Plausible, Ring, Gen.Bool).ForAll((plain, roof, clearHeaders) =>
        {
            var g = FromBuilding.Of(plain with { Roof = roof });
            var turn = Turning.Best(g, clearHeaders);
            if (turn is null)
            {
                Assert.Empty(g.Openings);
                return;
            }

            var samples = Counts.Of(500, 100_000);
            var best = Enumerable.Range(0, samples).Max(i => Turning.Distance(g, 2 * Math.PI * i / samples, clearHeaders));
            var widestStep = 2 * Math.PI / samples * g.Curve.Length;
            Assert.InRange(turn.After, best - 1e-9, best + widestStep);
            Assert.Equal(turn.After, Turning.Distance(g, turn.Rotation, clearHeaders));
            Assert.Equal(turn.Before, Turning.Distance(g, 0, clearHeaders));
            Assert.True(turn.OverAfter <= turn.OverBefore);
        }, iter: Counts.Of(20, 500));

    [Fact]
    public void BestTurn_TwoOppositeWindowsAndFourPoles_PutsPolesHalfwayBetween()
    {
        // Analytic: windows at north and south, four poles: 45 degrees off both, so the distance is an eighth of the ring less half a window's arc.
        var roof = new Roof.Radial(4, PoleSize.Even(Length.FromInches(6)), new Slope(0.3)) { Eave = Length.FromFeet(2), FirstBearing = new Angle(10) };
        var house = Houses.Round(Length.FromMillimetres(4000)) with
        {
            Roof = roof, Openings = [Houses.Window("n", 0, Length.FromMillimetres(800), Length.FromInches(30)), Houses.Window("s", 180, Length.FromMillimetres(800), Length.FromInches(30))],
        };
        var turn = Turning.Best(FromBuilding.Of(house))!;
        Assert.Equal(35 * Math.PI / 180, turn.Rotation, 1e-12);
        Assert.Equal(45, turn.FirstBearing.Degrees, 1e-10);
        Assert.Equal(2 * (Math.PI / 4 - Math.Asin(0.2)), turn.After, 1e-12);
        Assert.Equal(0, turn.Before);
        Assert.Equal(2, turn.OverBefore);
    }

    [Fact]
    public void TurnedRoof_PlacedAgain_HasTheDistancePromised() =>
        Gen.Select(Houses.PlausibleOval, Ring).ForAll((plain, roof) =>
        {
            var house = plain with { Roof = roof };
            if (Turning.Best(FromBuilding.Of(house)) is { } turn)
            {
                var turned = FromBuilding.Of(house with { Roof = roof with { FirstBearing = turn.FirstBearing } });
                Assert.Equal(turn.After, Turning.Distance(turned, 0), 1e-9);
            }
        }, iter: Counts.Of(20, 500));

    [Fact]
    public void RoofThatCannotTurn_HasNoTurn()
    {
        var house = Houses.HeronPoint;
        Assert.Null(Turning.Best(FromBuilding.Of(house with { Roof = null })));
        Assert.Null(Turning.Best(FromBuilding.Of(house with { Openings = [] })));
        Assert.Null(Turning.Best(FromBuilding.Of(house with { Roof = new Roof.Shed(PoleSize.Even(Length.FromInches(6)), Length.FromFeet(2), new Slope(0.2)) { Eave = Length.FromFeet(2) } })));
    }
}
