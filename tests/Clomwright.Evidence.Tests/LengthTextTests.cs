using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Evidence.Tests;

public class LengthTextTests
{
    // Rank: published. 1 in = 25.4 mm exactly (international yard and pound agreement, 1959; NIST SP 811 (2008), B.8). Exact, no tolerance.
    [Theory]
    [InlineData("12 in", 304_800_000)]
    [InlineData("12in", 304_800_000)]
    [InlineData("12 in.", 304_800_000)]
    [InlineData("12 inches", 304_800_000)]
    [InlineData("-12 in", -304_800_000)]
    [InlineData("−12 in", -304_800_000)]
    [InlineData("0 in", 0)]
    [InlineData("1 in", 25_400_000)]
    [InlineData("1/64 in", 396_875)]
    [InlineData("3/8 in", 9_525_000)]
    [InlineData("0.25 in", 6_350_000)]
    [InlineData(".25 in", 6_350_000)]
    [InlineData("6 1/2 in", 165_100_000)]
    [InlineData("6-1/2 in", 165_100_000)]
    [InlineData("6½ in", 165_100_000)]
    [InlineData("7 ft", 2_133_600_000)]
    [InlineData("7 feet", 2_133_600_000)]
    [InlineData("2.5 ft", 762_000_000)]
    [InlineData("7 ft 6 in", 2_286_000_000)]
    [InlineData("7ft6in", 2_286_000_000)]
    [InlineData("7'6\"", 2_286_000_000)]
    [InlineData("7'-6\"", 2_286_000_000)]
    [InlineData("7′ 6″", 2_286_000_000)]
    [InlineData("7’6”", 2_286_000_000)]
    [InlineData("7'6''", 2_286_000_000)]
    [InlineData("-7'6\"", -2_286_000_000)]
    [InlineData("7' 6 1/2\"", 2_298_700_000)]
    [InlineData("7 ft 6 1/2 in", 2_298_700_000)]
    [InlineData("7 ft 1/2 in", 2_146_300_000)]
    [InlineData("2.3 m", 2_300_000_000)]
    [InlineData("45 cm", 450_000_000)]
    [InlineData("2300 mm", 2_300_000_000)]
    [InlineData("0.000001 mm", 1)]
    public void Reading_BuildersForm_IsExact(string text, long nanometres)
    {
        Assert.True(LengthText.TryParse(text, out var value, out var problem));
        Assert.Null(problem);
        Assert.Equal(nanometres, value.Nanometres);
    }

    [Theory]
    [InlineData("", "evidence.length-unreadable")]
    [InlineData("  ", "evidence.length-unreadable")]
    [InlineData("-", "evidence.length-unreadable")]
    [InlineData("wide", "evidence.length-unreadable")]
    [InlineData("3/0 in", "evidence.length-unreadable")]
    [InlineData("--3 in", "evidence.length-unreadable")]
    [InlineData("NaN m", "evidence.length-unreadable")]
    [InlineData("7 ft -6 in", "evidence.length-unreadable")]
    [InlineData("2 300 mm", "evidence.length-unit-missing")]
    [InlineData("12", "evidence.length-unit-missing")]
    [InlineData("2.3", "evidence.length-unit-missing")]
    [InlineData("12 furlongs", "evidence.length-unit-unknown")]
    [InlineData("12 MM", "evidence.length-unit-unknown")]
    [InlineData("1e3 mm", "evidence.length-unit-unknown")]
    [InlineData("6 in 7 ft", "evidence.length-parts")]
    [InlineData("2 ft 30 cm", "evidence.length-parts")]
    [InlineData("1 ft 2 in 3 in", "evidence.length-parts")]
    [InlineData("7'6", "evidence.length-parts")]
    [InlineData("2,3 m", "evidence.number-comma")]
    [InlineData("99999999999999 m", "evidence.length-too-long")]
    [InlineData("1/3 in", "evidence.length-not-exact")]
    [InlineData("0.0000001 mm", "evidence.length-not-exact")]
    public void Reading_Unreadable_SaysWhatIsWrong(string text, string key)
    {
        Assert.False(LengthText.TryParse(text, out var value, out var problem));
        Assert.Equal(Length.Zero, value);
        Assert.Equal(key, problem!.Key);
    }

    [Theory]
    [InlineData("1/3 in", "21/64 in", "8 mm")]
    [InlineData("-1/3 in", "-21/64 in", "-8 mm")]
    [InlineData("7 ft 6 1/3 in", "7 ft 6 21/64 in", "2.294 m")]
    [InlineData("1/3 m", "13 1/8 in", "333 mm")]
    public void Reading_NotExact_OffersTheNearest(string text, string inches, string millimetres)
    {
        Assert.False(LengthText.TryParse(text, out _, out var problem));
        Assert.Equal([new("text", text), new("inches", inches), new("millimetres", millimetres)], problem!.Arguments);
    }

    [Fact]
    public void Reading_BareNumber_TakesTheUnitShown()
    {
        Assert.True(LengthText.TryParse("2300", Units.Millimetre, out var metric, out _));
        Assert.Equal(Length.FromMillimetres(2300), metric);
        Assert.True(LengthText.TryParse("7'6", Units.Millimetre, out var feet, out _));
        Assert.Equal(Length.FromFeet(7, 6), feet);
        Assert.True(LengthText.TryParse("6 1/2", Units.Inch, out var inches, out _));
        Assert.Equal(new Length(165_100_000), inches);
        Assert.True(LengthText.TryParse("2 m", Units.Inch, out var metres, out _));
        Assert.Equal(Length.FromMillimetres(2000), metres);
    }

    [Fact]
    public void EveryLengthReadsBackFromItsWrittenText()
    {
        var lengths = Gen.OneOf(
            Gen.Long.Select(n => new Length(n)),
            Gen.Long[-100_000, 100_000].Select(n => Length.FromMillimetres(n)),
            Gen.Long[-100_000, 100_000].Select(n => new Length(n * Length.PerInch / 64)));
        Gen.Select(lengths, Gen.Bool).ForAll(
            (length, metric) =>
            {
                var text = LengthText.Written(length, metric ? UnitSystem.Metric : UnitSystem.Imperial);
                return LengthText.TryParse(text, out var back, out _) && back == length;
            },
            iter: Counts.Of(5_000, 1_000_000));
    }

    [Theory]
    [InlineData(long.MinValue)]
    [InlineData(long.MaxValue)]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(-1)]
    public void Writing_Extremes_ReadBack(long nanometres)
    {
        Assert.True(LengthText.TryParse(LengthText.Written(new(nanometres)), out var back, out _));
        Assert.Equal(nanometres, back.Nanometres);
    }

    [Fact]
    public void NoTextMakesReadingThrow()
    {
        var marks = Gen.Char["0123456789 '\"./-−½″inftmc,eE"].Array[0, 30].Select(c => new string(c));
        Gen.OneOf(marks, Gen.String[0, 200]).ForAll(
            text => LengthText.TryParse(text, out _, out var problem) == (problem is null),
            iter: Counts.Of(5_000, 1_000_000));
    }

    [Theory]
    [InlineData("14 in", "14 in", "356 mm")]
    [InlineData("12 in", "12 in", "304.8 mm")]
    [InlineData("24 in", "2 ft", "609.6 mm")]
    [InlineData("98 in", "8 ft 2 in", "2.4892 m")]
    [InlineData("2.3 m", "2.3 m", "2.3 m")]
    [InlineData("45 cm", "450 mm", "450 mm")]
    [InlineData("50 in", "4 ft 2 in", "1.27 m")]
    [InlineData("0 mm", "0 in", "0 mm")]
    public void Writing_ChoosesTheFriendlierSystem(string text, string imperial, string metric)
    {
        var value = Parsed(text);
        Assert.Equal(imperial, LengthText.Written(value));
        var asked = LengthText.Written(value, UnitSystem.Metric);
        Assert.Equal(value.Nanometres % Length.PerMillimetre == 0 ? metric : imperial, asked);
    }

    [Theory]
    [InlineData(2.29235, "7 ft 6 1/4 in", "2.29 m")]
    [InlineData(2.286, "7 ft 6 in", "2.285 m")]
    [InlineData(0.3556, "14 in", "355 mm")]
    [InlineData(0.6095, "2 ft", "610 mm")]
    [InlineData(0.6090, "2 ft", "610 mm")]
    [InlineData(0.6063, "23 3/4 in", "605 mm")]
    [InlineData(-0.001, "0 in", "0 mm")]
    [InlineData(-0.3, "-11 3/4 in", "-300 mm")]
    [InlineData(double.NaN, "?", "?")]
    [InlineData(double.PositiveInfinity, "?", "?")]
    public void Tape_ComputedLength_IsWhatATapeReads(double metres, string imperial, string metric)
    {
        Assert.Equal(imperial, LengthText.Tape(metres, UnitSystem.Imperial));
        Assert.Equal(metric, LengthText.Tape(metres, UnitSystem.Metric));
        Assert.Equal($"{imperial} ({metric})", LengthText.Both(metres, UnitSystem.Imperial));
        Assert.Equal($"{metric} ({imperial})", LengthText.Both(metres, UnitSystem.Metric));
    }

    [Fact]
    public void Tape_AnotherStep_IsKept()
    {
        Assert.Equal("7 ft 6 1/16 in", LengthText.Tape(2.2876, UnitSystem.Imperial, new Length(Length.PerInch / 16)));
        Assert.Equal("2.288 m", LengthText.Tape(2.2876, UnitSystem.Metric, Length.FromMillimetres(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthText.Tape(1, UnitSystem.Imperial, Length.FromMillimetres(1)));
    }

    [Fact]
    public void TapeIsNeverFurtherThanHalfAStep()
    {
        Gen.Double[-50, 50].ForAll(
            metres =>
            {
                var imperial = Parsed(LengthText.Tape(metres, UnitSystem.Imperial));
                var metric = Parsed(LengthText.Tape(metres, UnitSystem.Metric));
                // Half of 1/4 in and of 5 mm, and the half nanometre of Length.Nearest.
                return Math.Abs(imperial.Metres - metres) <= 0.003175 + 1e-9 && Math.Abs(metric.Metres - metres) <= 0.0025 + 1e-9;
            },
            iter: Counts.Of(2_000, 200_000));
    }

    private static Length Parsed(string text) =>
        LengthText.TryParse(text, out var value, out var problem) ? value : throw new ArgumentException(problem!.Key, nameof(text));
}
