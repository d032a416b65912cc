using System.Text.Json;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Study;
using Clomwright.Testing;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Tests.Scenes;

/// <summary>From a study to the drawn roof. Rank: property, against the results that it is drawn from; closed forms where named.</summary>
public sealed class RoofSceneTests
{
    /// <summary>Coordinates are rounded to a tenth of a millimetre.</summary>
    private const double Rounding = 1e-4;

    private static readonly Roof.Reciprocal Ring = (Roof.Reciprocal)Houses.HeronPoint.Roof!;

    [Fact]
    public void Poles_InPlan_AreEachDrawnOnce_AndTheLastAgainOverTheFirst()
    {
        var scene = Of(Houses.HeronPoint);

        Assert.Equal("reciprocal", scene.Kind);
        Assert.Equal(["1", "2", "3", "4", "5", "6", "7", "8"], scene.Plan.Poles.Select(pole => pole.Number).Order());
        Assert.Single(scene.Plan.Over);
        Assert.Equal(8, scene.Plan.Landings.Count(landing => !landing.Secondary && landing.Margin is not null));
        Assert.Single(scene.Plan.Poles, pole => pole.Tightest);
    }

    [Fact]
    public void Ring_InPlan_IsTouchedByEveryPolesMiddle()
    {
        var study = HouseStudy.Of(Houses.HeronPoint);
        var centre = study.Roof.Reciprocal.Value!.Geometry.Centre;
        foreach (var pole in Of(Houses.HeronPoint).Plan.Poles)
        {
            // Closed form: the distance of a line from a point. The middle of an outline's ends is on the pole's own line.
            var (ax, ay) = Middle(pole.Outline[0], pole.Outline[^1]);
            var (bx, by) = Middle(pole.Outline[1], pole.Outline[^2]);
            var away = Math.Abs((bx - ax) * (ay - centre.North) - (ax - centre.East) * (by - ay)) / Math.Sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
            Assert.Equal(Ring.RingRadius.Metres, away, 3 * Rounding);
        }
    }

    [Fact]
    public void Section_OfAPole_HasItsOwnPitchThicknessAndLayers()
    {
        var study = HouseStudy.Of(Houses.HeronPoint);
        var pole = study.Roof.Reciprocal.Value!.Geometry.Poles[0];
        var section = Of(Houses.HeronPoint).Section!;

        var slope = (section.Pole[1][1] - section.Pole[0][1]) / (section.Pole[1][0] - section.Pole[0][0]);
        Assert.Equal(pole.Slope, slope, 1e-3);
        Assert.Equal(5, section.Layers.Count);
        // The deck lies on the pole and each layer on the one before; upright, a depth d on a slope of beta is d / cos(beta).
        Assert.Equal(0.0254 * 4 / pole.PitchCosine, section.Layers[^1].Outline[3][1] - section.Layers[^1].Outline[0][1], 2 * Rounding);
        Assert.Equal(section.Pole[3][1], section.Layers[0].Outline[0][1], 2 * Rounding);
        Assert.Equal(2, section.Crossings.Count);
    }

    [Fact]
    public void Stages_InTheScene_AreThoseOfTheResult_AndWhatIsNotKnownSaysSo()
    {
        var study = HouseStudy.Of(Houses.HeronPoint);
        var scene = Of(Houses.HeronPoint);
        Assert.Equal(study.Roof.Reciprocal.Value!.Stages.Select(s => s.Key), scene.Stages.Select(s => s.Key));
        foreach (var (stage, line) in study.Roof.Reciprocal.Value!.Stages.Zip(scene.Stages))
        {
            Assert.Equal(stage.Forces.Value!.Governing.Min() < 0, line.Opens);
            Assert.Equal(StageBending.Of(study.Roof.Reciprocal.Value!, stage.Key).Value!.Use > 1 ? "short" : "met", line.Standing);
        }

        var noSnow = Of(Houses.HeronPoint with { Site = Houses.HeronPoint.Site with { GroundSnow = null } });
        var unknown = noSnow.Stages.Single(s => s.Key == "soilWetSnow");
        Assert.Equal(("unchecked", null), (unknown.Standing, unknown.Crossing));
        Assert.False(string.IsNullOrWhiteSpace(unknown.NotChecked));
    }

    [Fact]
    public void DeeperSoil_MakesTheTightestTighter_UntilItFallsShort()
    {
        double last = 0;
        foreach (var inches in (int[])[4, 8, 12, 16])
        {
            var tightest = Of(WithSoil(inches)).Tightest;
            Assert.Equal(5, tightest.Count);
            Assert.True(tightest[0].Share >= last);
            last = tightest[0].Share;
        }

        Assert.Equal("short", Of(WithSoil(16)).Tightest[0].Standing);
    }

    [Fact]
    public void ThinPolesUnderDeepSoil_FallShort_InTheListAndOnThePole()
    {
        var thin = Of(WithSoil(12) with { Roof = (Roof.Reciprocal)WithSoil(12).Roof! with { Pole = PoleSize.Even(Length.FromInches(6)) } });
        Assert.Contains(thin.Findings, f => f.Standing == "short" && f.Subject.StartsWith("pole", StringComparison.Ordinal));
        Assert.Contains(thin.Plan.Poles, pole => pole.Standing == "short");
        Assert.Contains(thin.Stages, stage => stage is { Key: "soilWet", Standing: "short" });
        Assert.Equal("met", thin.Stages.Single(stage => stage.Key == "bare").Standing);
    }

    [Fact]
    public void Marks_StandForNumberedFindings_AndNothingMissingCountsAsMet()
    {
        var scene = Of(WithSoil(16));
        Assert.Equal(scene.Findings.Where(f => f.Number is not null).Select(f => f.Id), scene.Plan.Marks.Select(m => m.Id));
        Assert.Equal(scene.Totals.Unchecked, scene.Findings.Count(f => f.Standing == "unchecked"));
        Assert.Contains(scene.Findings, f => f.Standing == "unchecked" && f.Title.Contains("pole on pole", StringComparison.Ordinal));
    }

    [Fact]
    public void ImpossibleFrame_SaysWhy_AndTheKnobsAreStillThere()
    {
        var scene = Of(Houses.HeronPoint with { Roof = Ring with { RingRadius = Length.FromFeet(20) } });
        Assert.False(string.IsNullOrWhiteSpace(scene.Trouble));
        Assert.Empty(scene.Plan.Poles);
        Assert.Null(scene.Section);
        Assert.Contains(scene.Knobs, knob => knob.Key == "ring");
    }

    [Theory]
    [InlineData("radial")]
    [InlineData("shed")]
    [InlineData("gable")]
    public void PlainRoofs_AreDrawnWithTheirOwnKnobsAndStages(string kind)
    {
        Roof roof = kind switch
        {
            "radial" => new Roof.Radial(8, Ring.Pole, new Slope(0.3)) { Eave = Ring.Eave, CentrePost = true, Deck = Ring.Deck, Layers = Ring.Layers },
            "shed" => new Roof.Shed(Ring.Pole, Length.FromInches(30), new Slope(0.1)) { Eave = Ring.Eave, Deck = Ring.Deck, Layers = Ring.Layers },
            _ => new Roof.Gable(Ring.Pole, Length.FromInches(30), new Slope(0.3)) { Eave = Ring.Eave, Deck = Ring.Deck, Layers = Ring.Layers },
        };
        var scene = Of(Houses.HeronPoint with { Roof = roof });
        Assert.Equal(kind, scene.Kind);
        Assert.Null(scene.Trouble);
        Assert.NotEmpty(scene.Plan.Poles);
        Assert.Empty(scene.Plan.Over);
        Assert.NotEmpty(scene.Stages);
        Assert.Contains(scene.Knobs, knob => knob.Key == "pitch");
        Assert.Equal(2, scene.Section!.Support.Length);
    }

    [Fact]
    public void AnyRoof_HoweverSilly_GivesASceneThatCanBeSent() =>
        Gen.Select(Houses.Plausible, Gen.Int[-400, 3000].Select(mm => Length.FromMillimetres(mm)), Gen.Int[0, 45], Gen.Int[0, 6]).ForAll(
            (house, length, count, what) =>
            {
                Roof? roof = what switch
                {
                    0 => Ring with { RingRadius = length, Poles = count },
                    1 => Ring with { Pole = PoleSize.Even(length) },
                    2 => Ring with { Eave = length },
                    3 => Ring with { Layers = Ring.Layers.Select(l => l with { Depth = length }).ToSequence(), Poles = count },
                    4 => new Roof.Radial(count, Ring.Pole, new Slope(length.Metres)) { Eave = length },
                    5 => new Roof.Shed(Ring.Pole, length, new Slope(length.Metres)) { Eave = length },
                    _ => null,
                };
                JsonSerializer.Serialize(Of(house with { Roof = roof }), JsonSerializerOptions.Web);
            },
            iter: Counts.Of(60, 2_000));

    private static House WithSoil(int inches) => Houses.HeronPoint with { Roof = Ring with { Layers = Ring.Layers.With(Ring.Layers.Count - 1, Ring.Layers[^1] with { Depth = Length.FromInches(inches) }) } };

    private static (double X, double Y) Middle(double[] a, double[] b) => ((a[0] + b[0]) / 2, (a[1] + b[1]) / 2);

    private static RoofScene Of(House house)
    {
        var study = HouseStudy.Of(house);
        return RoofSceneOf.Scene(study, Phrasebook.English, study.Diagnostics);
    }
}
