using Clomwright.Analysis.Members;
using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Testing;
using Placing = Clomwright.Geometry.FromBuilding;

namespace Clomwright.Analysis.Tests.Roof;

/// <summary>Poles held against their timber.</summary>
public sealed class PoleChecksTests
{
    private static House House(double poleInches, double soilInches, double snowPsf = 30, double notch = 0, string species = "douglas-fir-pole", string loads = "asce7-16") =>
        Houses.Round(Length.FromFeet(20)) with
        {
            Site = new Site { Loads = loads, GroundSnow = new Stress(snowPsf * 47.88), WindSpeed = new Speed(45), Exposure = loads == "en1990" ? "II" : "B", SeismicSds = 0.3 },
            BondBeam = new BondBeam(Length.FromInches(10), Length.FromInches(4), Length.Zero, loads == "en1990" ? "c24" : "douglas-fir-no2"),
            Roof = new Building.Roof.Reciprocal(12, Length.FromInches(36), PoleSize.Even(Inches(poleInches)))
            {
                Eave = Length.FromInches(24), Deck = Length.FromInches(1), EdgeBoard = Length.FromInches(8), Eye = Eye.Glazed, Species = species, Notch = Inches(notch),
                Layers = soilInches > 0 ? [new Layer("soil", Inches(soilInches), "ordinary-earth")] : [],
            },
        };

    private static Length Inches(double inches) => new((long)(inches * Length.PerInch));

    private static ReciprocalResult Of(House house) => FromGeometry.Of(Placing.Of(house)).Reciprocal.Value!;

    private static MemberCheck Check(ReciprocalResult roof, string key) => roof.Checks.Single(c => c.Key == key).Check.Value!;

    // Rank property: a 6 in frame that passes bare fails under wet soil and snow, and says by how much.
    [Fact]
    public void SixInchPoles_PassBareAndFailUnderWetSoilAndSnow()
    {
        var roof = Of(House(6, 8, 50));
        var bare = roof.Stage("bare").Value!.BendingStress.Max();
        var loaded = roof.Stage("soilWetSnow").Value!.BendingStress.Max();
        var allowed = Timber.Pole("douglas-fir-pole")!.Bending.Value;
        Assert.True(bare < 0.9 * allowed && loaded > 1.15 * allowed, $"{bare / allowed:F2} {loaded / allowed:F2}");
        Assert.True(Check(roof, "pole-bending-crossing").Use > 1);
        Assert.True(Check(roof, "pole-bending-crossing").Needed!.Value.Si > 0.1524);
    }

    // Rank property: more soil, thinner poles or deeper notches never make a check easier.
    [Theory]
    [InlineData("pole-bending-crossing")]
    [InlineData("pole-stub")]
    [InlineData("pole-shear")]
    public void HarderCases_UseMore(string key)
    {
        var plain = Check(Of(House(8, 4, notch: 1)), key).Use;
        Assert.True(Check(Of(House(8, 8, notch: 1)), key).Use > plain);
        Assert.True(Check(Of(House(8, 4, 60, notch: 1)), key).Use > plain);
        Assert.True(Check(Of(House(8, 4, notch: 1.5)), key).Use > plain);
    }

    // Rank independent: the hardest bending check is the largest moment over section and allowable stress, looked for here again over all combinations.
    [Fact]
    public void BendingCheck_IsTheHardestOfAllCombinations()
    {
        var roof = Of(House(8, 6));
        var check = Check(roof, "pole-bending-crossing");
        var section = Math.PI * Math.Pow(roof.Geometry.Poles[0].DiameterAt(roof.Geometry.Poles[0].Near), 3) / 32;
        var worst = roof.Combined.States.Max(s => s.Forces.MomentAtNear.Max(Math.Abs) / section / (2050 * 6894.757293168361 * Nds.Duration(s.Combination)));
        Near.Relative(worst, check.Use, 1e-9);
        Assert.Contains(roof.Combined.States, s => s.Combination.Key == "D");
        Assert.All(roof.Combined.States, s => Near.Relative(s.Forces.TotalLoad, s.Forces.PlateReaction.Sum(), 1e-9));
    }

    // Rank property: soil alone is permanent: with little snow the combination D governs by its duration factor 0.9.
    [Fact]
    public void SoilAlone_GovernsWhereSnowIsLight() => Assert.Equal("D", Check(Of(House(8, 8, 0.5)), "pole-bending-plate").Combination);

    [Fact]
    public void BarePoles_TouchInAPointAndAskForASaddle()
    {
        var bare = Of(House(8, 6)).Checks.Single(c => c.Key == "pole-crossing-bearing").Check;
        Assert.Equal("analysis.members.crossing-bare", bare.NotChecked!.Key);
        Assert.True(Check(Of(House(8, 6, notch: 1)), "pole-crossing-bearing").Use > 0);
    }

    [Fact]
    public void EuropeanTimber_NeedsEuropeanLoads()
    {
        Assert.All(Of(House(8, 6, species: "c24-pole")).Checks, c => Assert.Equal("analysis.members.systems", c.Check.NotChecked!.Key));
        var european = Of(House(8, 6, notch: 1, species: "c24-pole", loads: "en1990"));
        Assert.All(european.Checks, c => Assert.True(c.Check.Is, c.Key));
        Assert.Contains("1.35D", Check(european, "pole-bending-crossing").Combination, StringComparison.Ordinal);
    }

    [Fact]
    public void UnknownTimberOrLoads_AreNotChecked()
    {
        Assert.All(Of(House(8, 6, species: "larch-pole")).Checks, c => Assert.False(c.Check.Is));
        var noSite = Of(House(8, 6) with { Site = new Site() });
        Assert.True(noSite.Combined.Missing.Count > 0);
        Assert.All(noSite.Combined.States, s => Assert.Equal("D", s.Combination.Key));
    }

    // Rank property: wind lifts a bare deck and not a planted roof; what the bond beam must hold is the largest lift of any combination.
    [Fact]
    public void Uplift_IsTheLargestLiftOfAnyCombination()
    {
        var roof = Of(House(8, 6) with { Site = new Site { Loads = "asce7-16", GroundSnow = new Stress(1000), WindSpeed = new Speed(75), Exposure = "D" } });
        var lift = roof.Combined.States.Where(s => s.Sense == "up").Max(s => -s.Forces.PlateReaction.Min());
        Near.Relative(lift, roof.Uplift.Max(), 1e-12);
        Assert.True(lift > 0);
        Assert.All(roof.Combined.States.Where(s => s.Sense == "even"), s => Assert.True(s.Forces.PlateReaction.Min() > 0));
    }

    // Rank property: every equation printed for the poles holds, in both systems.
    [Fact]
    public void EveryPrintedPoleEquation_Holds()
    {
        foreach (var house in new[] { House(8, 6), House(8, 6, notch: 1), House(7, 3, notch: 0.5, species: "c24-pole", loads: "en1990"), Houses.HeronPoint })
        {
            Printed.Holds(FromGeometry.Of(Placing.Of(house)).Calculations);
        }
    }
}
