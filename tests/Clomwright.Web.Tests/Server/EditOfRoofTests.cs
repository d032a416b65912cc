using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Testing;
using Clomwright.Web.Editing;

namespace Clomwright.Web.Tests.Server;

/// <summary>From a knob of the roof to an edit of the description. Rank: by hand and property.</summary>
public sealed class EditOfRoofTests
{
    private static readonly House Heron = Houses.HeronPoint;

    private static readonly Roof.Reciprocal Ring = (Roof.Reciprocal)Heron.Roof!;

    [Fact]
    public void Turn_ToAMark_SetsTheValueInTheKnobsOwnSteps()
    {
        Assert.Equal(9, ((Roof.Reciprocal)Apply(new Change.Turn(RoofKnob.Poles, 9))).Poles);
        Assert.Equal(Length.FromInches(31), ((Roof.Reciprocal)Apply(new Change.Turn(RoofKnob.Ring, 31))).RingRadius);
        Assert.Equal(Length.FromInches(28), Apply(new Change.Turn(RoofKnob.Eave, 28)).Eave);
        Assert.Equal(Length.FromInches(7), Apply(new Change.Turn(RoofKnob.Soil, 14)).Layers[^1].Depth);
        Assert.Equal(new Angle(22), Apply(new Change.Turn(RoofKnob.Bearing, 22)).FirstBearing);
    }

    [Fact]
    public void Step_FromBetweenTwoMarks_GoesToTheNextMark()
    {
        var between = Heron with { Roof = Ring with { Eave = Length.FromInches(30) + new Length(Length.PerInch / 4) } };

        Assert.Equal(Length.FromInches(31), Apply(new Change.Step(RoofKnob.Eave, 1), between).Eave);
        Assert.Equal(Length.FromInches(30), Apply(new Change.Step(RoofKnob.Eave, -1), between).Eave);
    }

    [Fact]
    public void Step_InAMetricHouse_IsOfTheMetricTape() => Assert.Equal(
        Length.FromMillimetres(780), Apply(new Change.Step(RoofKnob.Eave, 1), Heron with { Units = UnitSystem.Metric, Roof = Ring with { Eave = Length.FromMillimetres(765) } }).Eave);

    [Fact]
    public void Step_Round_ComesBackToNorth() =>
        Assert.Equal(new Angle(359), Apply(new Change.Step(RoofKnob.Bearing, -1), Heron with { Roof = Ring with { FirstBearing = new Angle(0) } }).FirstBearing);

    [Fact]
    public void Bearing_TurnsListedLandingsWithTheFirst()
    {
        var listed = Heron with { Roof = Ring with { Landings = [.. Enumerable.Range(0, 8).Select(i => new Angle(i * 45 + 3))] } };

        Assert.Equal(new Angle(13), Apply(new Change.Turn(RoofKnob.Bearing, 10), listed).Landings[0]);
    }

    [Fact]
    public void Butt_OfAnEvenPole_TakesTheTipAlong_AndNoTipGrowsPastItsButt()
    {
        Assert.Equal(PoleSize.Even(Length.FromInches(9)), Pole(new Change.Turn(RoofKnob.Butt, 18), Heron));
        var tapered = Heron with { Roof = Ring with { Pole = new PoleSize(Length.FromInches(8), Length.FromInches(6)) } };
        Assert.Equal(new PoleSize(Length.FromInches(9), Length.FromInches(6)), Pole(new Change.Turn(RoofKnob.Butt, 18), tapered));
        Assert.Equal(PoleSize.Even(Length.FromInches(5)), Pole(new Change.Turn(RoofKnob.Butt, 10), tapered));
        Assert.Equal(PoleSize.Even(Length.FromInches(10)), Pole(new Change.Turn(RoofKnob.Tip, 20), tapered));
    }

    [Theory]
    [InlineData("7'6\"", 90)]
    [InlineData("7 ft 6 1/2 in", 90.5)]
    [InlineData("30", 30)]
    public void Set_AsABuilderWrites_IsUnderstood(string text, double inches) =>
        Assert.Equal(Length.Nearest(inches * 0.0254), Apply(new Change.Set(RoofKnob.Eave, text)).Eave);

    [Theory]
    [InlineData("2.3 m", 2300)]
    [InlineData("2300", 2300)]
    public void Set_InAMetricHouse_TakesBareMillimetres(string text, int millimetres) =>
        Assert.Equal(Length.FromMillimetres(millimetres), Apply(new Change.Set(RoofKnob.Eave, text), Heron with { Units = UnitSystem.Metric }).Eave);

    [Fact]
    public void Set_OfTurnAndBearing_IsUnderstood()
    {
        Assert.Equal(Turn.Anticlockwise, ((Roof.Reciprocal)Apply(new Change.Set(RoofKnob.Turn, "anticlockwise"))).Turn);
        Assert.Equal(new Angle(22.5), Apply(new Change.Set(RoofKnob.Bearing, "22.5")).FirstBearing);
    }

    [Theory]
    [InlineData(RoofKnob.Eave, "wide")]
    [InlineData(RoofKnob.Eave, "-3 in")]
    [InlineData(RoofKnob.Eave, "")]
    [InlineData(RoofKnob.Soil, "0 in")]
    [InlineData(RoofKnob.Poles, "2")]
    [InlineData(RoofKnob.Poles, "8.5")]
    [InlineData(RoofKnob.Poles, "1e9")]
    [InlineData(RoofKnob.Turn, "widdershins")]
    [InlineData(RoofKnob.Bearing, "north")]
    [InlineData(RoofKnob.Pitch, "4 in 12")]
    public void Set_OfWhatNoRoofCanHave_GivesOneReasonWithWords(RoofKnob knob, string text)
    {
        Assert.Null(EditOf.Change(new Change.Set(knob, text), Heron, _ => 1, out var reason));
        Assert.DoesNotContain("[", Phrasebook.English.Say(reason!, UnitSystem.Imperial));
    }

    [Fact]
    public void Set_ThatLeavesOtherPartsWrong_IsNotTaken()
    {
        // A notch of 4 in and a pole of 3 in: the description itself says that this cannot be.
        var notched = Heron with { Roof = Ring with { Notch = Length.FromInches(4) } };
        Assert.Null(EditOf.Change(new Change.Set(RoofKnob.Butt, "3 in"), notched, _ => 1, out var reason));
        Assert.Equal("building.notch", reason?.Key);
    }

    [Fact]
    public void HouseWithoutARoof_HasNoKnobs()
    {
        Assert.Empty(RoofKnobs.Of(Heron with { Roof = null }));
        Assert.Null(EditOf.Change(new Change.Step(RoofKnob.Poles, 1), Heron with { Roof = null }, _ => 1, out var reason));
        Assert.Equal("web.knob.none", reason?.Key);
    }

    [Fact]
    public void EveryKindOfRoof_HasItsOwnKnobs()
    {
        Assert.Equal(["Poles", "Butt", "Tip", "Ring", "Eave", "Soil", "Bearing", "Turn"], Keys(Ring));
        Assert.Equal(["Poles", "Butt", "Tip", "Pitch", "Eave", "Bearing"], Keys(new Roof.Radial(6, Ring.Pole, new Slope(0.3)) { Eave = Ring.Eave, CentrePost = true }));
        Assert.Equal(["Poles", "Butt", "Tip", "Ring", "Pitch", "Eave", "Bearing"], Keys(new Roof.Radial(6, Ring.Pole, new Slope(0.3)) { Eave = Ring.Eave }));
        Assert.Equal(["Butt", "Tip", "Spacing", "Pitch", "Eave", "Bearing"], Keys(new Roof.Shed(Ring.Pole, Length.FromInches(24), new Slope(0.1)) { Eave = Ring.Eave }));
        Assert.Equal(["Butt", "Tip", "Spacing", "Pitch", "Eave", "Bearing"], Keys(new Roof.Gable(Ring.Pole, Length.FromInches(24), new Slope(0.1)) { Eave = Ring.Eave }));
    }

    [Fact]
    public void AnyTurnOfAnyKnob_IsWrittenInTheRoofsOwnLinesAndReadsBack()
    {
        var document = HouseDocument.Of(Heron);
        Gen.Select(Gen.Int[0, RoofKnobs.Of(Heron).Count - 1].Select(i => RoofKnobs.Of(Heron)[i].Key), Gen.Int[-40, 400]).ForAll(
            (knob, at) =>
            {
                if (EditOf.Change(new Change.Turn(knob, at), Heron, _ => 1, out _) is not { } edit)
                {
                    return;
                }

                var after = document.With(edit.Apply(Heron));
                Assert.Equal(edit.Apply(Heron), HouseDocument.Read(after.ToBytes()).House);
                var (was, now) = (document.Text.Split('\n'), after.Text.Split('\n'));
                var roof = Array.FindIndex(was, line => line.Contains("\"roof\"", StringComparison.Ordinal));
                Assert.Equal(was[..roof], now[..roof]);
                Assert.True(was.Except(now).Count() <= 1, $"{knob} at {at} changed more than a line");
            },
            iter: Counts.Of(100, 3_000));
    }

    private static List<string> Keys(Roof roof) => [.. RoofKnobs.Of(Heron with { Roof = roof }).Select(knob => knob.Key.ToString())];

    private static PoleSize Pole(Change change, House house) => ((Roof.Reciprocal)Apply(change, house)).Pole;

    private static Roof Apply(Change change, House? house = null)
    {
        var edit = EditOf.Change(change, house ?? Heron, _ => 2.5, out var reason);
        Assert.True(edit is not null, reason?.Key);
        return edit.Apply(house ?? Heron).Roof!;
    }
}
