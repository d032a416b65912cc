using Clomwright.Analysis.Drying;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Tests.Drying;

/// <summary>What a house's own tests tell drying in place of assumptions.</summary>
public sealed class MeasuredCobTests
{
    private static double Of(MeasuredCob cob, string key, DryingCase way = DryingCase.Middle, params AssumedNumber[] said) =>
        DryingNumbers.Of(said.ToSequence(), way, cob.Numbers(LiftMethod.Tossed, said.ToSequence()))[key];

    private static double Index(MeasuredCob cob) => Of(cob, "drying-liquid-limit") - Of(cob, "drying-plastic-limit");

    // Rank published: Skempton 1953, the plasticity index is in proportion to clay (from memory); rank analytic: soil alone keeps its limits.
    [Fact]
    public void SandThinsPlasticity_InProportion()
    {
        var soil = new MeasuredCob { SoilLimits = (.42, .20), ClayOfSoil = 1 };
        Assert.Equal(.42, Of(soil, "drying-liquid-limit"), 1e-12);
        Assert.Equal(.20, Of(soil, "drying-plastic-limit"), 1e-12);
        Assert.Equal(Index(soil) / 2, Index(soil with { ClayOfSoil = .5 }), 1e-12);
        Assert.All(soil.Numbers(LiftMethod.Tossed, []), k => Assert.Equal(Tag.Computed, k.Tag));
    }

    // Rank analytic: with limits and water both known the cob is laid at that water; without limits too, because the limits are told by it.
    [Fact]
    public void TheRecipesWater_IsTheWaterLaid()
    {
        double Laid(MeasuredCob cob) => WallRun.LaidWater(DryingNumbers.Of([], DryingCase.Middle, cob.Numbers(LiftMethod.Forked, [])), LiftMethod.Forked);
        Assert.Equal(.22, Laid(new() { SoilLimits = (.42, .20), ClayOfSoil = .5, Water = .22 }), 1e-12);
        var felt = new MeasuredCob { Index = new(.10, null), Water = .22 };
        Assert.Equal(.22, Laid(felt), 1e-12);
        Assert.Equal(.10, Index(felt), 1e-12);
        Assert.All(felt.Numbers(LiftMethod.Forked, []), k => Assert.True(k.Tag == Tag.Assumed && k.Assumption is not null));
        Printed.HaveWords(felt.Numbers(LiftMethod.Forked, []).Select(k => k.Assumption!).ToSequence());
        // Without a recipe nothing is told but the density as laid, which follows from that of dried cob.
        Assert.Equal(["drying-dry-density"], new MeasuredCob { Index = new(.10, null) }.Numbers(LiftMethod.Forked, []).Select(k => k.Key));
    }

    // Rank analytic: what was weighed dry has shrunk; as laid it is lighter, and its pores hold the wettest case's water.
    [Fact]
    public void ADriedSpecimen_IsLaidLighter()
    {
        foreach (var (weighed, water) in new[] { (1600, .22), (1900, .24), (1500, .2) })
        {
            var cob = new MeasuredCob { DryDensity = weighed, Index = new(.10, null), Water = water };
            var numbers = DryingNumbers.Of([], DryingCase.Slow, cob.Numbers(LiftMethod.Tossed, []));
            Assert.True(numbers["drying-dry-density"] < weighed);
            Assert.True(WallRun.LaidWater(numbers, LiftMethod.Tossed) < WallRun.EarthOf(numbers).Full);
        }
    }

    // Rank property: specimens give the strength, weaker on the slow side; what the house file says comes first, for limits with the water that tells them.
    [Fact]
    public void MeasuredStrength_AndTheFilesOwnWord()
    {
        var cob = new MeasuredCob { Strength = (800e3, 600e3), Index = new(.10, null), Water = .22 };
        Assert.Equal(800e3, Of(cob, "drying-dry-strength"));
        Assert.Equal(600e3, Of(cob, "drying-dry-strength", DryingCase.Slow));
        Assert.Equal(5e5, Of(cob, "drying-dry-strength", DryingCase.Slow, new AssumedNumber("drying-dry-strength", 5e5)));
        Assert.Equal(.3, Of(cob, "drying-liquidity-tossed", DryingCase.Middle, new AssumedNumber("drying-liquidity-tossed", .3)));
        Assert.Equal(.18, Of(cob, "drying-plastic-limit", DryingCase.Middle, new AssumedNumber("drying-liquidity-tossed", .3)));
        Assert.DoesNotContain(DryingNumbers.Of([], DryingCase.Middle, cob.Numbers(LiftMethod.Tossed, [])).Assumptions, a => a.Key == "drying-dry-strength");
        Assert.Contains(DryingNumbers.Of([], DryingCase.Middle, cob.Numbers(LiftMethod.Tossed, [])).Assumptions, a => a.What.Key == "analysis.assumed.drying-plastic-limit-felt");
    }

    // Rank property: a key that nothing is assumed under names its nearest neighbour; one written twice says so.
    [Fact]
    public void AnUnknownKey_NamesTheNearest()
    {
        var house = Testing.Houses.HeronPoint with { Assumed = [new("drying-wnd", .3), new("drying-wind", .3), new("drying-wind", .4)] };
        var found = AssumedKeys.Remarks(house);
        Assert.Equal(["assumed[0].key", "assumed[2].key"], found.Select(d => d.Path));
        Assert.Equal(Message.Of("analysis.assumed-unknown", ("key", "drying-wnd"), ("nearest", "drying-wind")), found[0].What);
        Assert.Equal("analysis.assumed-twice", found[1].What.Key);
        Assert.All(found, d => Assert.Contains(d.What.Key, Phrasebook.English.Keys));
    }
}
