using Clomwright.Analysis.Comfort;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Tests.Comfort;

/// <summary>Parts by themselves against the standards' formulas worked apart from this program, and what must hold of any part.</summary>
public sealed class PartTests
{
    private static HeatLayer Layer(double depth, double conductivity, double density = 1600, double capacity = 1000, double vapour = 10) =>
        new("layer", depth, conductivity, density, capacity, vapour, Tag.Given, null);

    private static BuildUp Wall(params HeatLayer[] layers) => new([.. layers], 0.13, 0.04);

    // Rank independent: ISO 6946 worked apart from this program (films 0.13 and 0.04), to the last digit given.
    [Theory]
    [InlineData(0.3, 0.45, 1.195)]
    [InlineData(0.45, 0.45, 0.855)]
    [InlineData(0.6, 0.45, 0.665)]
    [InlineData(0.75, 0.45, 0.544)]
    [InlineData(0.3, 0.6, 1.493)]
    [InlineData(0.45, 0.6, 1.087)]
    [InlineData(0.6, 0.6, 0.855)]
    [InlineData(0.75, 0.6, 0.704)]
    [InlineData(0.3, 0.73, 1.721)]
    [InlineData(0.45, 0.73, 1.272)]
    [InlineData(0.6, 0.73, 1.008)]
    [InlineData(0.75, 0.73, 0.835)]
    public void Transmittance_OfCob(double depth, double conductivity, double expected) => Near.Printed(expected, Wall(Layer(depth, conductivity)).Transmittance, 0.001);

    // Rank independent: as above; lime 25 (0.7), cob 600 (0.6), clay 25 (0.7); cob 300 (0.45) with light earth 300 (0.11) and plasters 25 (0.7).
    [Fact]
    public void Transmittance_OfPlasteredAndLinedCob()
    {
        Near.Printed(1.2414, Wall(Layer(.025, .7), Layer(.6, .6), Layer(.025, .7)).Resistance, 0.0001);
        Near.Printed(0.8055, Wall(Layer(.025, .7), Layer(.6, .6), Layer(.025, .7)).Transmittance, 0.0001);
        Near.Printed(0.2751, Wall(Layer(.025, .7), Layer(.3, .45), Layer(.3, .11), Layer(.025, .7)).Transmittance, 0.0001);
        Near.Printed(0.7596, Wall(Layer(.45, .6)).Factor(0.25), 0.0001);
    }

    // Rank property: of parts side by side the combined resistance lies between both bounds, and is one part's own where all are equal. 1e-12: rounding.
    [Fact]
    public void SideBySide_IsBetweenItsBounds()
    {
        var (cob, timber) = (Wall(Layer(.1, .7), Layer(.3, .6)), Wall(Layer(.1, .13), Layer(.3, .6)));
        Near.Relative(cob.Resistance, SideBySide.Resistance([(0.4, cob), (0.6, cob)]), 1e-12);
        var mixed = SideBySide.Resistance([(0.8, cob), (0.2, timber)]);
        Assert.InRange(mixed, .17 + .1 / (.8 * .7 + .2 * .13) + .5, 1 / (.8 / cob.Resistance + .2 / timber.Resistance));
    }

    // Rank independent: ISO 13786 worked apart from this program, period a day, to the last digits given.
    [Fact]
    public void Concrete_PassesADayOn()
    {
        var part = Wall(Layer(.2, 1.8, 2400));
        var day = DailyHeat.Of(part);
        Near.Printed(3.5573, part.Transmittance, 0.0001);
        Near.Printed(1.8271, day.Transmittance, 0.0001);
        Near.Printed(0.5136, day.Decrement, 0.0001);
        Near.Printed(5.676, day.LagHours, 0.001);
        Near.Printed(5.7043, day.InsideAdmittance.Magnitude, 0.0001);
        Near.Printed(0.948, day.InsideAdmittance.Phase * 12 / Math.PI, 0.001);
        Near.Printed(11.592, day.OutsideAdmittance.Magnitude, 0.001);
        Near.Printed(86.17, day.InsideCapacity / 1000, 0.01);
        Near.Printed(170.87, day.OutsideCapacity / 1000, 0.01);
    }

    // Rank independent: as above, cob of 0.6 W/(m K), 1600 kg/m3, 1000 J/(kg K).
    [Theory]
    [InlineData(.3, 1.4925, .3589, .2405, 10.57, 64.63)]
    [InlineData(.45, 1.0870, .0820, .0754, 16.21, 59.71)]
    [InlineData(.6, .8547, .0187, .0219, 21.85, 59.35)]
    public void Cob_PassesADayOn(double depth, double steady, double passed, double decrement, double lag, double kept)
    {
        var part = Wall(Layer(depth, .6));
        var day = DailyHeat.Of(part);
        Near.Printed(steady, part.Transmittance, 0.0001);
        Near.Printed(passed, day.Transmittance, 0.0001);
        Near.Printed(decrement, day.Decrement, 0.0001);
        Near.Printed(lag, day.LagHours, 0.01);
        Near.Printed(kept, day.InsideCapacity / 1000, 0.01);
    }

    // Rank analytic: deep in a thick wall each metre turns the swing by one over the depth of the swing, whole turns counted: 600 mm of 0.45 W/(m K) lags by more than a day. 1e-3: what the far
    // face still throws back. Rank property: the matrix keeps its determinant of 1, and a very long period is steady.
    [Fact]
    public void ThickCob_LagsMoreThanADay()
    {
        var part = Wall(Layer(.6, .45));
        var day = DailyHeat.Of(part);
        var depth = Math.Sqrt(.45 * 86400 / (Math.PI * 1600 * 1000));
        Near.Relative(.1 / depth * 12 / Math.PI, DailyHeat.Of(Wall(Layer(.7, .45))).LagHours - day.LagHours, 1e-3);
        Assert.InRange(day.LagHours, 24, 26);
        Assert.Equal(1, (day.Z11 * day.Z22 - day.Z12 * day.Z21).Real, 1e-9);
        Near.Relative(part.Transmittance, DailyHeat.Of(part, 1e12).Transmittance, 1e-6);
    }

    // Rank independent: ISO 13370 worked apart from this program: 48 m2 and 28 m in clay, 10 by 10 m well insulated in sand (the other branch).
    [Fact]
    public void Floor_LosesToTheGround()
    {
        var thin = new GroundHeat(48, 28, .6, 1.5, .1875, .17, .04);
        Near.Printed(3.4286, thin.Dimension, 0.0001);
        Near.Printed(1.1963, thin.Thickness, 0.0001);
        Near.Printed(.5773, thin.Transmittance, 0.0001);
        var thick = new GroundHeat(100, 40, .3, 2, 2.5, .17, .04);
        Near.Printed(5.72, thick.Thickness, 0.01);
        Near.Printed(.2498, thick.Transmittance, 0.0001);
    }

    // Rank property: edge insulation only takes off, and the deeper and better the more; without it nothing changes.
    [Fact]
    public void FloorEdge_OnlySaves()
    {
        var bare = new GroundHeat(20, 16, .5, 1.5, .2, .17, .04);
        GroundHeat With(double r, double d) => bare with { EdgeResistance = r, EdgeDepth = d };
        Assert.Equal(bare.Transmittance, With(2, 0).Transmittance);
        Assert.True(With(1, .6).Transmittance < bare.Transmittance && With(2, .6).Transmittance < With(1, .6).Transmittance && With(2, 1).Transmittance < With(2, .6).Transmittance);
        Assert.True(With(2, 1).Swing < bare.Swing);
    }

    // Rank independent: ISO 13788 worked apart from this program: 20 C and 60 % inside, 0 C and 85 % outside; clay plaster, cob, lime; film 0.25. Nothing gathers.
    [Fact]
    public void DryWall_PassesVapourOn()
    {
        var part = new BuildUp([Layer(.02, .7, vapour: 8), Layer(.5, .6, vapour: 11), Layer(.02, .7, vapour: 12)], .25, .04);
        Near.Printed(1.1805, part.Resistance, 0.0001);
        var air = Condensation.Of(part, 20, .6 * Condensation.Saturation(20), 0, .85 * Condensation.Saturation(0));
        Assert.Empty(air.Planes);
        Near.Printed(15.76, air.Temperatures[0], 0.01);
        Near.Printed(15.28, air.Temperatures[1], 0.01);
        Near.Printed(1.16, air.Temperatures[2], 0.01);
        Near.Printed(1378.2, air.Pressures[1], 0.1);
        Near.Printed(554.9, air.Pressures[2], 0.1);
        Near.Printed(1735.4, Condensation.Saturation(air.Temperatures[1]), 0.5);
        Near.Printed(664.1, Condensation.Saturation(air.Temperatures[2]), 0.5);
        Near.Printed(.0776, air.Flow * 30 * 86400, 0.0001);
    }

    // Rank property: insulation inside cold cob gathers water at its cold face, as much as comes in less what goes on; what lies nowhere passes saturation.
    [Fact]
    public void LinedInside_GathersWater()
    {
        var part = new BuildUp([Layer(.1, .04, vapour: 1.5), Layer(.45, .7, vapour: 10)], .13, .04);
        var (inside, outside) = (.6 * Condensation.Saturation(20), .85 * Condensation.Saturation(-5));
        var air = Condensation.Of(part, 20, inside, -5, outside);
        var plane = Assert.Single(air.Planes);
        Assert.Equal(1, plane.Face);
        var wet = Condensation.Saturation(plane.Temperature);
        Near.Relative(2e-10 * ((inside - wet) / .15 - (wet - outside) / 4.5), plane.Rate, 1e-9);
        Assert.All(air.Pressures.Zip(air.Temperatures), p => Assert.True(p.First <= Condensation.Saturation(p.Second) + 1e-6));
    }

    // Rank independent: ISO 13790 annex C, one hour worked apart from this program (A_f 48, A_m 144, C_m 12.48 MJ/K, H_w 11.2, H_op 83.6, H_ve 20, 5 C outside, 200 W people, 600 W sun, mass 18 C before).
    [Fact]
    public void SimpleHour_IsTheWorkedOne()
    {
        var house = new SimpleHour(48, 144, 12.48e6, 11.2, 83.6, 20);
        var hour = house.Step(18, 5, 200, 600, 0);
        Near.Printed(17.783, hour.After, 0.001);
        Near.Printed(17.840, hour.Surface, 0.001);
        Near.Printed(17.635, hour.Air, 0.001);
        Near.Printed(17.779, hour.Felt, 0.001);
        Near.Printed(1103.7, house.Needed(18, 5, 200, 600, 20), 0.1);
    }

    // Rank property: earth is the better the lighter; its conductivity runs through the table's values and stands still beyond its ends. Every material has sources that the project knows.
    [Fact]
    public void Earth_FollowsItsTable()
    {
        Assert.Equal(.73, ThermalMaterial.OfEarth(1600).Value, 1e-12);
        Assert.Equal(.66, ThermalMaterial.OfEarth(1500).Value, 1e-12);
        Assert.Equal(.17, ThermalMaterial.OfEarth(300).Value, 1e-12);
        Assert.Equal(1.1, ThermalMaterial.OfEarth(2400).Value, 1e-12);
        Assert.All(ThermalMaterial.Keys, k => Assert.True(ThermalMaterial.Find(k)!.Wet.Value >= ThermalMaterial.Find(k)!.Conductivity.Value));
        Assert.All(ThermalMaterial.GlazingKeys, k => Assert.InRange(ThermalMaterial.Glass(k)!.Sun.Value, .3, .9));
    }
}
