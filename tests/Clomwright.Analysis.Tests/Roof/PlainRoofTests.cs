using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;
using Placing = Clomwright.Geometry.FromBuilding;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>Radial, shed and gable roofs against statics worked by hand.</summary>
public sealed class PlainRoofTests
{
    private static readonly Site Site = new() { Loads = "asce7-16", GroundSnow = new Stress(1500), WindSpeed = new Speed(45), Exposure = "B" };
    private static readonly PoleSize Pole = PoleSize.Even(Length.FromMillimetres(180));
    private static readonly Sequence<Layer> Soil = [new Layer("soil", Length.FromMillimetres(100), "ordinary-earth")];

    private static House Round(Building.Roof roof) => Houses.Round(Length.FromMillimetres(5000)) with
    {
        Site = Site, Roof = roof with { Deck = Length.FromMillimetres(25), Layers = Soil },
    };

    private static Building.Roof Radial(bool post) => new Building.Roof.Radial(12, Pole, new Slope(0.35)) { Eave = Length.FromMillimetres(600), CentrePost = post, RingRadius = Length.FromMillimetres(200) };

    private static RoofResult Of(House house) => FromGeometry.Of(Placing.Of(house));

    private static RoofForces Snow(PlainResult roof, Func<RoofForces, Sequence<double>> list, int index, out double value)
    {
        RoofForces with = roof.Stage("soilWetSnow").Value!, without = roof.Stage("soilWet").Value!;
        value = list(with)[index] - list(without)[index];
        return with;
    }

    private static House Long(int inches, int bearing) => Houses.RoundedRectangle(Length.FromFeet(20), Length.FromFeet(14), Length.FromFeet(3)) with
    {
        Site = Site, BondBeam = new BondBeam(Length.FromInches(10), Length.FromInches(8), Length.Zero),
        Roof = new Building.Roof.Shed(Pole, Length.FromInches(inches), new Slope(0.1)) { Eave = Length.FromFeet(2), FirstBearing = new Angle(bearing), Deck = Length.FromMillimetres(25), Layers = Soil },
    };

    // Rank property: the pole that is computed under a number is the one that lands under it, whichever way the roof falls.
    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(180)]
    [InlineData(217)]
    public void Rafters_HaveTheNumbersOfTheirLandings(int bearing)
    {
        var geometry = Placing.Of(Long(48, bearing));
        var poles = FromGeometry.Of(geometry).Plain.Value!.Places;
        Assert.True(poles.Count >= 3);
        Assert.All(poles, p => Assert.Equal(0, (p.Foot - geometry.Landings.Single(l => l.Name == $"pole {p.Number} low").Point).Norm, 1e-9));
    }

    // Rank by hand: rafters across a length of 20 ft inside, its walls as thick as they are at the top and an eave of 2 ft beyond, from the outermost line: half the spacing is what that one is reckoned with.
    [Theory]
    [InlineData(66)]
    [InlineData(114)]
    public void ADeck_ThatReachesFurtherThanItsOutermostRafterIsReckonedWith_IsNotChecked(int inches)
    {
        var geometry = Placing.Of(Long(inches, 0) with { Plan = new Plan.RoundedRectangle(Length.FromFeet(20), Length.FromFeet(14), Length.FromFeet(3)) { Bearing = new Angle(90) } });
        var roof = FromGeometry.Of(geometry);
        var end = Length.FromFeet(12).Metres + geometry.Wall.OutsideOffset(geometry.Wall.Top.Metres);
        var outermost = roof.Plain.Value!.Places.Max(p => Math.Abs(p.Foot.East - geometry.Curve.Centre.East));
        var check = roof.Supports.Single(c => c.Key == "roof-ends").Check;
        if (end - outermost > Length.FromInches(inches).Metres / 2)
        {
            Assert.Equal("analysis.roof-ends.beyond", check.NotChecked!.Key);
        }
        else
        {
            Assert.Equal(end - outermost, check.Value!.Demand.Si, 1e-3);
            Assert.Equal(Length.FromInches(inches).Metres / 2, check.Value.Capacity.Si, 1e-12);
        }
    }

    // Rank analytic: rafters that rise b tan(beta) from wall to wall lie that far over a level bond beam; nothing carries them there unless the rise is less than a seat lets them in.
    [Theory]
    [InlineData(0.5)]
    [InlineData(0.002)]
    public void UpperEnds_OverALevelBondBeam_AreNotChecked(double slope)
    {
        var shed = (Building.Roof.Shed)Long(48, 0).Roof!;
        var roof = FromGeometry.Of(Placing.Of(Long(48, 0) with { Roof = shed with { Pitch = new Slope(slope), Pole = PoleSize.Even(Length.FromInches(8)) } }));
        var rises = roof.Plain.Value!.Places.Select(p => p.Far * slope).ToArray();
        var check = roof.Supports.Single(c => c.Key == "high-ends").Check;
        if (slope > 0.1)
        {
            Assert.Equal("analysis.high-ends.open", check.NotChecked!.Key);
            Assert.Equal(rises.Max(), ((Argument.Quantity)check.NotChecked.Arguments.Single(a => a.Name == "high").Value).Value.Si, 1e-9);
        }
        else
        {
            Assert.Equal(rises.Max(), check.Value!.Demand.Si, 1e-9);
            Assert.Equal(0.0254 * Math.Sqrt(1 + slope * slope), check.Value.Capacity.Si, 1e-9);
        }
    }

    // Rank analytic: even snow q on a cone over a circle: one of n wedges carries q pi R_e^2/n; about the plate its moment is q (2 pi/n) (R_w R_e^2/2 - R_e^3/3).
    [Fact]
    public void CentrePost_CarriesItsShareOfEveryWedge()
    {
        var result = Of(Round(Radial(post: true)));
        var roof = result.Plain.Value!;
        var q = result.Snow.Value!.Balanced;
        double plate = 2.5 + 0.3556 / 2, eave = 2.5 + 0.3556 + 0.6;
        var moment = q * 2 * Math.PI / 12 * (plate * eave * eave / 2 - eave * eave * eave / 3);
        Snow(roof, f => f.CrossingForce, 0, out var inner);
        Near.Relative(moment / plate, inner, 1e-9);
        Snow(roof, f => f.PlateReaction, 0, out var outer);
        Near.Relative(q * Math.PI * eave * eave / 12 - moment / plate, outer, 1e-9);
        Assert.Equal(0, roof.Thrust);
        Assert.Equal("post", roof.Kind);
        Assert.True(roof.InnerLoad >= 12 * inner);
    }

    // Rank analytic: without a post the same wedge leans on a ring: H = M/z, hoop H/(2 sin(pi/n)), and the plate carries all of the weight.
    [Fact]
    public void CompressionRing_PushesThePlateOutward()
    {
        var result = Of(Round(Radial(post: false)));
        var roof = result.Plain.Value!;
        Snow(roof, f => f.PlateSidewaysInSpace, 3, out var thrust);
        Snow(roof, f => f.LoadMoment, 3, out var moment);
        Near.Relative(moment / (0.35 * (2.5 + 0.3556 / 2 - 0.2)), thrust, 1e-9);
        Near.Relative(roof.Thrust / (2 * Math.Sin(Math.PI / 12)), roof.Hoop, 1e-9);
        var wet = roof.Stage("soilWet").Value!;
        Near.Relative(wet.TotalLoad, wet.PlateReaction.Sum(), 1e-9);
        Assert.Equal(0, wet.CrossingForce.Max(Math.Abs), 1e-6);
    }

    // Rank analytic: a shed rafter over the middle of a circle, even snow: strip spacing x length; reactions by the lever rule about the two walls, eaves alike.
    [Fact]
    public void ShedRafter_SharesBetweenItsWalls()
    {
        var result = Of(Round(new Building.Roof.Shed(Pole, Length.FromMillimetres(600), new Slope(0.2)) { Eave = Length.FromMillimetres(600) }));
        var roof = result.Plain.Value!;
        var wet = roof.Stage("soilWet").Value!;
        Near.Relative(wet.TotalLoad, wet.PlateReaction.Sum(), 1e-9);
        var middle = roof.Rafters.MaxBy(r => r.Span)!;
        double span = 2 * (2.5 + 0.3556 / 2), eave = 0.3556 / 2 + 0.6;
        Near.Relative(span, middle.Span, 1e-6);
        // 1e-4: where the line leaves the eave circle is found on a polygon of 720 sides.
        var q = result.Snow.Value!.Balanced;
        var all = roof.Stage("soilWetSnow").Value!.PlateReaction.Zip(wet.PlateReaction, (a, b) => a - b).Max();
        Near.Relative(q * 0.6 * (span + 2 * eave) / 2, all, 1e-4);
        Assert.Equal(0, roof.Thrust);
    }

    // Rank analytic: two equal legs under an even load thrust H = w b^2/(2 z) - w e^2/(2 z) with an eave e each, and pass nothing upright at the ridge.
    [Fact]
    public void GableLegs_LeanOnEachOther()
    {
        var result = Of(Round(new Building.Roof.Gable(Pole, Length.FromMillimetres(600), new Slope(0.5)) { Eave = Length.FromMillimetres(600) }));
        var roof = result.Plain.Value!;
        var w = result.Snow.Value!.Balanced * 0.6;
        double b = 2.5 + 0.3556 / 2, e = 0.3556 / 2 + 0.6;
        var pushes = roof.Stage("soilWetSnow").Value!.PlateSidewaysInSpace.Zip(roof.Stage("soilWet").Value!.PlateSidewaysInSpace, (x, y) => x - y);
        Near.Relative((w * b * b / 2 - w * e * e / 2) / (0.5 * b), pushes.Max(), 1e-4);
        Assert.Equal(0, roof.Stage("soilWet").Value!.CrossingForce.Max(Math.Abs), 1e-3);
        Assert.True(roof.Stage("oneSided").Value!.CrossingForce.Max(Math.Abs) > 100);
        Printed.Holds(result.Calculations);
    }

    // Rank property: the larger of the poles' rafters is named by span; more soil never uses less; every check is a number or a reason.
    [Fact]
    public void MoreSoil_UsesMore()
    {
        double Use(long mm) => Of(Round(Radial(post: true)) with { Roof = Radial(post: true) with { Layers = [new Layer("soil", Length.FromMillimetres(mm), "ordinary-earth")] } })
            .Plain.Value!.Checks.Single(c => c.Key == "rafter-bending").Check.Value!.Use;
        Assert.True(Use(200) > Use(100) && Use(100) > Use(50));
    }

    [Fact]
    public void RoofWithoutPitch_SaysSo() =>
        Assert.Equal("analysis.roof.no-pitch", Of(Round(new Building.Roof.Shed(Pole, Length.FromMillimetres(600), new Slope(0)) { Eave = Length.FromMillimetres(300) })).Plain.NotChecked!.Key);

    // Rank independent: the same sum by hand from the forces of the state that governs: NDS 3.9-3 with C_P of 3.7.1 on the square of equal area; EN 1995 6.3.2 (6.23) with k_c (beta_c 0.2).
    [Theory]
    [InlineData("asce7-16", "douglas-fir-pole")]
    [InlineData("en1990", "c24-pole")]
    public void RafterBentAndPressed_IsAsWorkedByHand(string edition, string species)
    {
        var roof = Of(Round(Radial(post: false) with { Species = species }) with { Site = Site with { Loads = edition, Exposure = edition == "en1990" ? "II" : "B", SeismicSds = 0 } }).Plain.Value!;
        var made = roof.Checks.Single(c => c.Key == "rafter-combined");
        var check = made.Check.Value!;
        var number = int.Parse(made.Subject.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);
        var place = roof.Places[number - 1];
        var state = roof.Combined.States.First(s => s.Combination.Key == check.Combination && s.Sense == check.Sense);
        double d = 0.18, area = Math.PI * d * d / 4, length = place.Far / Math.Cos(place.Pitch), side = d * Math.Sqrt(Math.PI) / 2;
        var along = state.Forces.PlateReaction[number - 1] * Math.Sin(place.Pitch) + state.Forces.PlateSidewaysInSpace[number - 1] * Math.Cos(place.Pitch);
        var bent = state.Forces.BendingStress[number - 1];
        var timber = Timber.Pole(species)!;
        double use;
        if (edition == "en1990")
        {
            var k = Ec5.Duration(state.Combination) / 1.3;
            var relative = length / (d / 4) / Math.PI * Math.Sqrt(21e6 / 7.4e9);
            var half = 0.5 * (1 + 0.2 * (relative - 0.3) + relative * relative);
            var kc = 1 / (half + Math.Sqrt(half * half - relative * relative));
            use = along / area / (kc * 21e6 * k) + bent / (24e6 * k);
        }
        else
        {
            var cd = Nds.Duration(state.Combination);
            double fc = timber.Compression.Value * cd, euler = 0.822 * timber.LeastModulus.Value / Math.Pow(length / side, 2), ratio = (1 + euler / fc) / 1.7;
            var cp = ratio - Math.Sqrt(ratio * ratio - euler / fc / 0.85);
            use = Math.Pow(along / area / (fc * cp), 2) + bent / (timber.Bending.Value * cd * Nds.RoundSize(d) * (1 - along / area / euler));
        }

        Near.Relative(use, check.Demand.Si, 1e-9);
        Printed.Holds([check.How]);
    }

    // Rank property: every action is held in every stage, in both systems of timber; what stands up wet with snow in a stage is factored against timber of EN 1995 (EN 1990: 1.5, else 1.35).
    [Theory]
    [InlineData("asce7-16", "douglas-fir-pole", 1, 1)]
    [InlineData("en1990", "c24-pole", 1.5, 1.35)]
    public void Stages_AreHeldInBothSystems(string edition, string species, double snow, double lasting)
    {
        var roof = Of(Round(Radial(post: true) with { Species = species }) with { Site = Site with { Loads = edition, Exposure = edition == "en1990" ? "II" : "B" },
            BondBeam = new BondBeam(Length.FromMillimetres(250), Length.FromMillimetres(100), Length.Zero) { Material = edition == "en1990" ? "c24" : "douglas-fir-no2" } }).Plain.Value!;
        Assert.Equal(["rafter-bending", "rafter-shear", "rafter-combined", "pole-seat", "rafter-sag"], roof.StageChecks.Select(c => c.Key));
        Assert.All(roof.StageChecks, c => Assert.True(c.Check.Is, c.Key));
        var system = species == "c24-pole" ? TimberSystem.En : TimberSystem.Nds;
        Assert.Equal(snow, StageStates.Factor("soilWetSnow", system));
        Assert.Equal(lasting, StageStates.Factor("soilWet", system));
        var bending = roof.StageChecks[0].Check.Value!;
        var key = bending.Sense[StageStates.Prefix.Length..];
        Near.Relative(StageStates.Factor(key, system) * roof.Stage(key).Value!.BendingStress.Max(), bending.Demand.Si, 1e-12);
        Printed.Holds(roof.StageChecks.Select(c => c.How!));
    }

    // Rank analytic: a round d with a flat c deep is 2 sqrt(dc - c^2) wide there; the seat is that by the beam, and the force across the grain of the weaker.
    [Fact]
    public void Seat_IsTheFlatByTheBeam()
    {
        Near.Relative(2 * Math.Sqrt(0.09 * 0.09 - Math.Pow(0.09 - 0.0254, 2)), SeatCheck.Flat(0.18), 1e-12);
        Assert.Equal(0, SeatCheck.Flat(0.02));
    }
}
