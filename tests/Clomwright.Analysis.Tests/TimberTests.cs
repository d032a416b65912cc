using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Members;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Tests;

/// <summary>Timber factors and capacities against printed tables and hand-worked cases.</summary>
public sealed class TimberTests
{
    private const double Psi = 6894.757293168361, Inch = 0.0254, Pound = 4.4482216152605, Foot = 0.3048;

    // Rank published: AF&PA 2001 timber poles supplement, table 5.10: western red cedar, 1350 psi, C_D 1.6, circumference 26 and 22 in.
    [Theory]
    [InlineData(26, 120.21)]
    [InlineData(22, 72.82)]
    public void PoleMoment_OfThePublishedTable_ComesBack(double circumference, double inchKips) =>
        Near.Printed(inchKips, Nds.RoundMoment(1.6 * 1350 * Psi, circumference * Inch / Math.PI) / (1000 * Pound * Inch), 1e-2);

    // Rank published: the same supplement, table 5.11: Pacific coast Douglas fir pile, F_c 1250 psi, C_D 1.15, circumference 16 in.
    [Fact]
    public void PileCompression_OfThePublishedTable_ComesBack()
    {
        var section = NotchedRound.Of(16 * Inch / Math.PI, 0);
        Near.Printed(29.28, 1.15 * 1250 * Psi * section.Area / (1000 * Pound), 1e-2);
    }

    // Rank published form: C_b of NDS 3.10.4; exactly at 6 in it is 1.
    [Theory]
    [InlineData(0.5, 1.75)]
    [InlineData(1, 1.375)]
    [InlineData(2, 1.1875)]
    [InlineData(3, 1.125)]
    [InlineData(4, 1.09375)]
    [InlineData(6, 1)]
    public void BearingArea_ByLength_IsTheTable(double inches, double expected) => Near.Relative(expected, Nds.BearingArea(inches * Inch), 1e-12);

    // Rank analytic: two 2x10 DF-L No.2, C_D 1.15, C_F 1.1 (NDS 2018 supplement), 600 lb/ft over 6 ft, worked by hand in inches and pounds; 2700 and 1337.5 are exact.
    [Fact]
    public void SawnHeader_IsAsWorkedByHand()
    {
        var beam = new RectangularBeam(2 * 1.5 * Inch, 9.25 * Inch);
        var timber = Timber.Piece("douglas-fir-no2", 1.5 * Inch, 9.25 * Inch)!;
        double i2 = Inch * Inch, w = 600 * Pound / Foot, span = 6 * Foot;
        Near.Printed(27.75, beam.Area / i2, 1e-2);
        Near.Printed(42.781, beam.SectionModulus / (i2 * Inch), 1e-3);
        Near.Printed(197.86, beam.SecondMoment / (i2 * i2), 1e-2);
        var bending = timber.Bending.Value * 1.15 * Nds.Size(timber.Form, 9.25 * Inch);
        Near.Printed(1138.5, bending / Psi, 1e-1);
        Near.Printed(4058.9, bending * beam.SectionModulus / (Pound * Foot), 0.1);
        Near.Printed(3829.5, timber.Shear.Value * 1.15 * beam.Area / 1.5 / Pound, 0.1);
        Near.Printed(2700, w * span * span / 8 / (Pound * Foot), 1e-6);
        Near.Printed(757.3, beam.Bending(w * span * span / 8) / Psi, 0.1);
        Near.Printed(97.3, beam.Shear(w * span / 2) / Psi, 0.1);
        Near.Printed(1337.5, w * (span / 2 - 9.25 * Inch) / Pound, 1e-6);
        Near.Printed(0.0553, beam.Sag(w, span, timber.Modulus.Value) / Inch, 1e-4);
    }

    // Rank analytic: C_L for F_bE/F_b* 2 and 5 (NDS 3.3-6).
    [Theory]
    [InlineData(2, 0.95620)]
    [InlineData(5, 0.98784)]
    public void BeamStability_IsAsWorkedByHand(double ratio, double expected) => Near.Printed(expected, Nds.BeamStability(ratio), 1e-5);

    // Rank analytic: Hankinson, 1350 and 625 psi at 30 degrees; the ends of the range are the two values.
    [Fact]
    public void Hankinson_At30Degrees_IsAsWorkedByHand()
    {
        Near.Printed(1046.5, Nds.AtAngle(1350, 625, Math.PI / 6), 1e-1);
        Near.Relative(1350, Nds.AtAngle(1350, 625, 0), 1e-12);
        Near.Relative(625, Nds.AtAngle(1350, 625, Math.PI / 2), 1e-12);
        Near.Relative(Nds.AtAngle(1350, 625, 0.7), Ec5.AtAngle(1350, 625, 0.7), 1e-12);
    }

    // Rank analytic: EN 1995-1-1, C24, k_mod 0.9, gamma_M 1.3; k_h of 100 and 120 mm.
    [Fact]
    public void C24_InShortTermLoad_IsAsWorkedByHand()
    {
        var c24 = Timber.Piece("c24", 0.1, 0.2)!;
        Near.Printed(16.615, Ec5.Design(c24.Bending.Value, 0.9) / 1e6, 1e-3);
        Near.Printed(2.769, Ec5.Design(c24.Shear.Value, 0.9) / 1e6, 1e-3);
        Near.Printed(1.0845, Ec5.Depth(0.1), 1e-4);
        Near.Printed(1.0456, Ec5.Depth(0.12), 1e-4);
        Assert.Equal(1, Ec5.Depth(0.15));
    }

    // Rank published: NDS table 2.3.2 durations by the shortest load of a combination; soil alone is permanent.
    [Theory]
    [InlineData("D", 0.9)]
    [InlineData("D + S", 1.15)]
    [InlineData("D + Lr", 1.25)]
    [InlineData("D + 0.6W", 1.6)]
    [InlineData("D + 0.45W + 0.75S", 1.6)]
    public void Duration_IsThatOfTheShortestLoad(string key, double expected) =>
        Assert.Equal(expected, Nds.Duration(Combinations.Of(LoadEdition.Asce716, LoadForm.AllowableStress).Single(c => c.Key == key)));

    // Rank property: a notch at an end costs shear by the cube of what is left of a rectangle (A_n and d_n/d squared).
    [Fact]
    public void EndNotch_CostsShear() => Near.Relative(2.0 / 3 * 1e6 * 0.01 * 0.5 * 0.25, Nds.NotchedShear(1e6, 0.01 * 0.5, 0.5), 1e-12);

    // Rank property: every row of the table has sensible values in SI and names its sources.
    [Fact]
    public void EveryTimber_HasSensibleValues() => Assert.All(Timber.All, t =>
    {
        Assert.InRange(t.Bending.Value, 3e6, 35e6);
        Assert.InRange(t.Shear.Value, 0.8e6, 5e6);
        Assert.InRange(t.AcrossGrain.Value, 1.5e6, 5e6);
        Assert.InRange(t.Modulus.Value, 6e9, 15e9);
        Assert.InRange(t.LeastModulus.Value / t.Modulus.Value, 0.3, 0.7);
        Assert.InRange(t.Weight.Value, 3000, 6000);
        Assert.NotEqual(Surety.Missing, t.Bending.Source.Surety);
    });

    // Rank published: weights of round timber, AWC 1992: Douglas fir-larch 33.6 pcf = 5.28 kN/m3.
    [Fact]
    public void DouglasFirPole_WeighsAsPublished() => Near.Printed(5.28, Timber.Pole("douglas-fir-pole")!.Weight.Value / 1000, 1e-2);

    [Fact]
    public void Pieces_AreReadFromTheTableForTheirSize()
    {
        Assert.Equal(TimberForm.Dimension, Timber.Piece("douglas-fir-no2", 1.5 * Inch, 9.25 * Inch)!.Form);
        Assert.Equal(TimberForm.Beam, Timber.Piece("douglas-fir-no2", 5.5 * Inch, 9.5 * Inch)!.Form);
        Assert.Equal(TimberForm.Post, Timber.Piece("douglas-fir-no2", 5 * Inch, 6 * Inch)!.Form);
        Assert.Null(Timber.Piece("hem-fir-no2", 5.5 * Inch, 9.5 * Inch));
        Assert.Null(Timber.Pole("larch-pole"));
    }
}
