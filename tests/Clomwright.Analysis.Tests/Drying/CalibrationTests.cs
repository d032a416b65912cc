using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Drying;

/// <summary>Blocks of the house file take the place of what was assumed.</summary>
public sealed class CalibrationTests
{
    private const double Truth = 3e-8;
    private static readonly DryingNumbers Usual = DryingNumbers.Of([new("drying-dry-density", 1500)]);

    /// <summary>A block 100 mm thick and 200 mm both ways, or its half with one face open, of made-up earth in the room that is assumed.</summary>
    private static DryingBlock Block(int openFaces, double diffusivity = Truth)
    {
        var thin = new TestBlock(.1, .04, 6, Usual["drying-block-temperature"], Usual["drying-block-humidity"], Enumerable.Range(0, 13).Select(i => (2.0 * i, 6 * 1.24)).ToSequence(), .01);
        var masses = BlockCalibration.Masses(thin, WallRun.EarthOf(Usual) with { DiffusivityFull = diffusivity }, .24, 6);
        var half = openFaces == 1 ? .5 : 1;
        return new DryingBlock(Length.FromMillimetres(openFaces == 1 ? 50 : 100), Length.FromMillimetres(200), Length.FromMillimetres(200), openFaces)
        {
            DryMass = new Mass(half * 6),
            Weighings = thin.Weighings.Select((w, i) => new Weighing(w.Day + 1, new Mass(half * (i == 0 ? w.Mass : masses[i - 1])))).ToSequence(),
        };
    }

    // Rank property: exact weighings of made-up earth give that earth back, whole or half. 3 %: differences of a step-controlled run.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void ABlockOfTheHouseFile_GivesItsEarthBack(int openFaces)
    {
        var reading = Assert.Single(BlockReadings.Of(new Building.Mix { Blocks = [Block(openFaces)] }, Usual));
        Near.Relative(Truth, reading.Fit.Value!.Diffusivity, .03);
        var measured = BlockReadings.Diffusivity([reading], Usual)!;
        Assert.True(measured.Slow < Truth && Truth < measured.Fast);
        Assert.True(measured.Fast / measured.Slow < 4, "what is assumed spans a factor of four");
    }

    // Rank property: two blocks that differ leave a wider band than two alike, and the mean lies between them.
    [Fact]
    public void BlocksThatDiffer_WidenTheBand()
    {
        KnownNumber Of(params double[] truths) => BlockReadings.Diffusivity(BlockReadings.Of(new Building.Mix { Blocks = truths.Select(t => Block(2, t)).ToSequence() }, Usual), Usual)!;
        var (alike, apart) = (Of(Truth, Truth), Of(Truth, 3 * Truth));
        Assert.True(apart.Fast / apart.Slow > 1.5 * alike.Fast / alike.Slow);
        Assert.InRange(apart.Middle, Truth, 3 * Truth);
        Assert.True(alike.Fast / alike.Slow < Of(Truth).Fast / Of(Truth).Slow);
    }

    // Rank property: what cannot be read says why and measures nothing.
    [Fact]
    public void ABlockThatCannotBeRead_SaysWhy()
    {
        string Why(DryingBlock block) => BlockReadings.Of(new Building.Mix { Blocks = [block] }, Usual)[0].Fit.NotChecked!.Key;
        Assert.Equal("analysis.drying.block-not-dry", Why(Block(2) with { DryMass = null }));
        Assert.Equal("analysis.drying.block-faces", Why(Block(2) with { OpenFaces = 6 }));
        Assert.Equal("analysis.drying.block-few", Why(Block(2) with { Weighings = Block(2).Weighings.Take(3).ToSequence() }));
        Assert.Equal("analysis.left-out.mix", Why(Block(2) with { Trial = "Z" }));
        Assert.Null(BlockReadings.Diffusivity(BlockReadings.Of(new Building.Mix { Blocks = [Block(6)] }, Usual), Usual));
    }

    // Rank property: in the whole house the number measured takes the assumption's place, and what the author says comes before it.
    [Fact]
    public void TheHouse_ReadsItsBlocks()
    {
        // The block holds 1500 kg of dry earth in a cubic metre, and so does this wall.
        var house = Houses.HeronPoint with { Mix = Houses.HeronPoint.Mix with { Blocks = [Block(2)] }, Assumed = [new("drying-dry-density", 1500)] };
        var drying = FromWeather.Of(FromBuilding.Of(house), FromSite.Of(house.Site)).Value!;
        Assert.Equal("drying-diffusivity", Assert.Single(drying.Known, k => k.Tag == Tag.Measured).Key);
        Near.Relative(Truth, drying.Diffusivity.Middle!.Value, .03);
        Assert.DoesNotContain(drying.Assumptions, a => a.Key == "drying-diffusivity");
        Assert.Contains(drying.Assumptions, a => a.Key == "drying-block-humidity");
        Sequence<AssumedNumber> said = [new("drying-diffusivity", 9e-8)];
        Assert.All(Enum.GetValues<DryingCase>(), way => Assert.Equal(9e-8, DryingNumbers.Of(said, way, drying.Known)["drying-diffusivity"]));
    }
}
