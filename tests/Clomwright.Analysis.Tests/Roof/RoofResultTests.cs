using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;
using Placing = Clomwright.Geometry.FromBuilding;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>Whole roofs, from a house to forces.</summary>
public sealed class RoofResultTests
{
    private static readonly House Round = Houses.Round(Length.FromMillimetres(5000)) with
    {
        Site = new Site { Loads = "asce7-16", GroundSnow = new Stress(1500), WindSpeed = new Speed(47), Exposure = "B" },
        Roof = new Building.Roof.Reciprocal(12, Length.FromMillimetres(800), PoleSize.Even(Length.FromMillimetres(180)))
        {
            Eave = Length.FromMillimetres(600), Deck = Length.FromMillimetres(25), EdgeBoard = Length.FromMillimetres(250), Eye = Eye.Glazed,
            Layers = [new Layer("membrane", Length.FromMillimetres(1), "epdm"), new Layer("soil", Length.FromMillimetres(150), "ordinary-earth")],
        },
    };

    private static RoofResult Of(House house) => FromGeometry.Of(Placing.Of(house));

    private static RoofForces Stage(RoofResult roof, string key) => roof.Reciprocal.Value!.Stage(key).Value!;

    // Rank analytic: on a circle the frame is the closed form, and even snow on plan is W = q pi R_e^2/n (ring included) with its exact first moment.
    [Fact]
    public void RoundHouse_HasTheClosedFormGeometryAndSnow()
    {
        var roof = Of(Round);
        var frame = roof.Reciprocal.Value!.Geometry;
        double plate = 2.5 + 0.3556 / 2, eave = 2.5 + 0.3556 + 0.6;
        Near.Relative(UniformReciprocal.Pitch(12, 0.8, 0.18)!.Value, frame.MeanPitch, 1e-9);
        Near.Relative(plate, frame.Poles[0].PlateRadius, 1e-9);
        Near.Relative(Math.Sqrt(eave * eave - 0.64) - Math.Sqrt(plate * plate - 0.64), frame.Poles[0].EaveReach, 1e-9);

        var snow = roof.Snow.Value!.Balanced;
        RoofForces with = Stage(roof, "soilWetSnow"), without = Stage(roof, "soilWet");
        Near.Relative(snow * Math.PI * eave * eave / 12, with.Load[0] - without.Load[0], 1e-9);
        var moment = UniformReciprocal.PlateMoment(12, plate, eave, 0.8, 0.8, snow) + snow * Math.PI * 0.64 / 12 * frame.Poles[0].TangentDistance;
        Near.Relative(moment, with.LoadMoment[0] - without.LoadMoment[0], 1e-9);
        Near.Relative(with.LoadMoment[0] / UniformReciprocal.Side(12, 0.8), with.CrossingForce[0], 1e-9);
    }

    // Rank independent: weight of a layer of even thickness on the hyperboloid, integrated here by radius.
    [Fact]
    public void RoundHouse_CarriesSoilOnTheRoofsOwnSurface()
    {
        var roof = Of(Round);
        var frame = roof.Reciprocal.Value!.Geometry;
        double t = frame.Poles[0].Slope, ring = 0.8, eave = 2.5 + 0.3556 + 0.6, area = 0;
        const int steps = 200_000;
        for (var k = 0; k < steps; k++)
        {
            // By distance along the tangent, where the integrand is smooth.
            var u = (k + 0.5) * Math.Sqrt(eave * eave - ring * ring) / steps;
            area += 2 * Math.PI * Math.Sqrt(u * u * (1 + t * t) + t * t * ring * ring) * Math.Sqrt(eave * eave - ring * ring) / steps;
        }

        var soil = Stage(roof, "soilWet").TotalLoad - Stage(roof, "decked").TotalLoad - EdgeBoard(roof);
        // 1e-4: two Gauss points a piece of pole, where the surface steepens at the ring.
        Near.Relative(roof.LayersWet.Value!.Value * area, soil, 1e-4);
        var dry = Stage(roof, "soilDry").TotalLoad - Stage(roof, "decked").TotalLoad - EdgeBoard(roof);
        Near.Relative(roof.LayersDry.Value!.Value / roof.LayersWet.Value.Value, dry / soil, 1e-9);

        static double EdgeBoard(RoofResult roof) => 33.6 * 157.0874638 * 0.25 * 0.05 * 2 * Math.PI * (2.5 + 0.3556 + 0.6);
    }

    // Rank property: eave and inside together are the whole, the order of bands ends in the whole, and every state balances.
    [Fact]
    public void States_AddUpAndBalance() => Assert.All([Of(Round), Of(Houses.HeronPoint)], roof =>
    {
        var frame = roof.Reciprocal.Value!;
        double[] eave = [.. Stage(roof, "eaveOnly").LoadMoment], inside = [.. Stage(roof, "insideOnly").LoadMoment], wet = [.. Stage(roof, "soilWet").LoadMoment];
        Assert.All(frame.Stages, s => Assert.True(s.Forces.Is, s.Key));
        Assert.All(frame.Stages, s => Near.Relative(s.Forces.Value!.TotalLoad, s.Forces.Value.PlateReaction.Sum(), 1e-9));
        foreach (var order in new[] { frame.FromRing.Value!, frame.FromEave.Value! })
        {
            var last = order.Steps[^1].Forces;
            for (var i = 0; i < wet.Length; i++)
            {
                Near.Relative(wet[i], last.LoadMoment[i], 1e-9);
                Near.Relative(Stage(roof, "soilWet").CrossingForce[i], last.CrossingForce[i], 1e-9);
            }
        }

        // Both patterns stand on the boarded deck, so their sum has it twice.
        for (var i = 0; i < wet.Length; i++)
        {
            var boarded = frame.FromRing.Value!.Steps[0].Forces.LoadMoment[i];
            Assert.True(eave[i] < inside[i] && boarded > eave[i]);
        }

        Printed.Holds(roof.Calculations);
        Printed.HaveWords(roof.Assumptions);
    });

    // Rank property: turning the house, or mirroring plan and turn, changes no force.
    [Fact]
    public void TurnedRoof_HasTheSameForces()
    {
        var turned = Of(Round with { Roof = Round.Roof! with { FirstBearing = new Angle(77) } });
        var mirrored = Of(Round with { Roof = (Building.Roof.Reciprocal)Round.Roof! with { Turn = Turn.Anticlockwise } });
        foreach (var key in new[] { "bare", "soilWet", "soilWetSnow", "ponded" })
        {
            Near.Relative(Stage(Of(Round), key).CrossingForce[0], Stage(turned, key).CrossingForce[0], 1e-9);
            Near.Relative(Stage(Of(Round), key).CrossingForce[0], Stage(mirrored, key).CrossingForce[5], 1e-9);
        }
    }

    [Fact]
    public void MissingThings_AreNotCheckedOneByOne()
    {
        var noSnow = Of(Round with { Site = new Site() }).Reciprocal.Value!;
        Assert.Equal("analysis.loads.no-edition", noSnow.Stage("soilWetSnow").NotChecked!.Key);
        Assert.True(noSnow.Stage("soilWet").Is);
        var odd = Of(Round with { Roof = Round.Roof! with { Layers = [new Layer("moss", Length.FromMillimetres(50), "moss")] } }).Reciprocal.Value!;
        Assert.Equal("analysis.roof.layer-unknown", odd.Stage("soilWet").NotChecked!.Key);
        Assert.True(odd.Stage("decked").Is);
        var larch = Of(Round with { Roof = Round.Roof! with { Species = "larch-pole" } }).Reciprocal.Value!;
        Assert.Equal("analysis.roof.species-unknown", larch.Stage("bare").NotChecked!.Key);
        Assert.True(larch.Geometry.MeanPitch > 0);
        Assert.Equal("analysis.roof.none", Of(Round with { Roof = null }).Reciprocal.NotChecked!.Key);
    }

    // Rank property: a small ring under a deep eave opens when soil goes on from the outside; the order from the ring outward, or a larger ring, keeps it shut.
    [Fact]
    public void DeepEaveAndSmallRing_OpenFromTheEaveAndNotFromTheRing()
    {
        var deep = Of(Round with { Roof = (Building.Roof.Reciprocal)Round.Roof! with { Eave = Length.FromMillimetres(1100), RingRadius = Length.FromMillimetres(600) } }).Reciprocal.Value!;
        Assert.True(deep.FromEave.Value!.Opens);
        Assert.True(deep.FromEave.Value.Steps[0].Forces.CrossingForce[0] < 0);
        Assert.False(deep.FromRing.Value!.Opens);
        Assert.True(deep.Stage("eaveOnly").Value!.Opened.Count > 0);
        Assert.NotNull(deep.Joints.Value!.PinTensionStage);
    }

    // Rank analytic: one person at the ring adds P_w lambda^k/(1 - lambda^n) down the ring; one at the eave end takes from every crossing.
    [Fact]
    public void OnePersonOnOnePole_IsFeltAllRoundTheRing()
    {
        var roof = Of(Round);
        var pole = roof.Reciprocal.Value!.Geometry.Poles[0];
        RoofForces alone = Stage(roof, "decked"), ring = Stage(roof, "workerRing"), eave = Stage(roof, "workerEave");
        double[] added = [.. ring.CrossingForce.Zip(alone.CrossingForce, (a, b) => a - b).OrderDescending()];
        for (var k = 0; k < 12; k++)
        {
            Near.Relative(1334.466 * pole.TangentDistance / pole.Far * CyclicEquilibrium.Influence(pole.Ratio, 12, k), added[k], 1e-5);
        }

        Assert.All(eave.CrossingForce.Zip(alone.CrossingForce, (a, b) => a - b), change => Assert.True(change < 0));
    }

    // Rank analytic: the pole cards are the lengths along the slope, the raising runs against the carrying, and the stick stands under the near crossing.
    [Fact]
    public void CardsAndRaising_FollowTheFrame()
    {
        var result = Of(Round).Reciprocal.Value!;
        var pole = result.Geometry.Poles[0];
        var card = result.Poles[0];
        Near.Relative((pole.EaveReach + pole.Far) / Math.Cos(pole.Pitch), card.Length, 1e-12);
        Near.Relative(pole.EaveReach / Math.Cos(pole.Pitch), card.SeatMark, 1e-12);
        Assert.Equal(2, card.RestsOn);
        Assert.Equal([1, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2], result.Raising.Order);
        var bare = result.Stage("bare").Value!;
        var axis = Length.FromFeet(8, 2).Metres + 0.09 / Math.Cos(pole.Pitch);
        Near.Relative(axis + pole.Near * pole.Slope - 0.09 / Math.Cos(pole.Pitch), result.Raising.CharlieHeight, 1e-12);
        Near.Relative(bare.CrossingForce[0] * (1 - Math.Pow(pole.Ratio, 12)) / pole.Ratio, result.Raising.CharlieLoad!.Value, 1e-9);
        Near.Relative(5280.0 / 9.80665 * 1.5 * Math.PI / 4 * 0.18 * 0.18 * card.CutLength, card.Mass!.Value, 1e-3);
    }

    // Rank property: any plausible house gives a roof or a reason, its printed equations hold, and every known state balances.
    [Fact]
    public void AnyPlausibleHouse_GivesARoofOrAReason() => Houses.Plausible.ForAll(
        house =>
        {
            var roof = Of(house);
            Printed.Holds(roof.Calculations);
            foreach (var stage in roof.Reciprocal.Value?.Stages ?? [])
            {
                if (stage.Forces.Value is { } forces)
                {
                    Assert.Equal(forces.TotalLoad, forces.PlateReaction.Sum(), 1e-9 * forces.CrossingForce.Sum(Math.Abs));
                    Assert.All(forces.BendingStress, s => Assert.True(double.IsFinite(s) && s >= 0));
                }
            }
        },
        iter: Counts.Of(30, 1000));

    // Rank analytic: a notch to the middle leaves half a circle: A pi r^2/2, I (pi/8 - 8/(9 pi)) r^4.
    [Fact]
    public void HalfNotchedPole_IsAHalfCircle()
    {
        var half = NotchedRound.Of(0.2, 0.1);
        Near.Relative(Math.PI * 0.01 / 2, half.Area, 1e-12);
        Near.Relative((Math.PI / 8 - 8 / (9 * Math.PI)) * 1e-4, half.SecondMoment, 1e-12);
        Near.Relative(half.SecondMoment / (0.1 * (1 - 4 / (3 * Math.PI))), half.SectionModulus, 1e-12);
        Near.Relative(Math.PI * 1e-3 / 4, NotchedRound.Of(0.2, 0).SectionModulus, 1e-12);
        Near.Relative(NotchedRound.Of(0.2, 0).SecondMoment, NotchedRound.Of(0.2, 1e-9).SecondMoment, 1e-6);
        Assert.Equal(0, NotchedRound.Of(0.2, 0.2).Area);
    }

    [Fact]
    public void SnowAndWind_OfTheExampleHouse_AreKnown()
    {
        var roof = Of(Houses.HeronPoint);
        Assert.Equal(LoadEdition.Asce716, roof.Snow.Value!.Edition);
        Assert.True(roof.Wind.Value!.WindwardUp < 0);
    }
}
