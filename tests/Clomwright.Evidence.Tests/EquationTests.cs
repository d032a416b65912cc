using Clomwright.Testing;

namespace Clomwright.Evidence.Tests;

public class EquationTests
{
    private static readonly Source Mechanics = new("mechanics", "Elementary mechanics", Surety.Derived);

    // Rank: independent, against the same arithmetic done by the compiler and System.Math. Same operations in the same order, so equal to the bit.
    public static TheoryData<string, double> Cases => new()
    {
        { "2", 2 },
        { " 2 + 3 * 4 ", 14 },
        { "(2 + 3) * 4", 20 },
        { "2 - 3 - 4", -5 },
        { "2 / 4 / 8", 2.0 / 4 / 8 },
        { "-2^2", -4 },
        { "2^3^2", 512 },
        { "2^-1", 0.5 },
        { "--2", 2 },
        { "2*-3", -6 },
        { ".5 + 1.5e-3", 0.5 + 1.5e-3 },
        { "1E+2", 100 },
        { "W*x/s", 1.5 * 2.25 / 0.7 },
        { "s^2 + W", 0.7 * 0.7 + 1.5 },
        { "r_t'*2", 6 },
        { "γ*x", 17 * 2.25 },
        { "pi*x^2/4", Math.PI * Math.Pow(2.25, 2) / 4 },
        { "sqrt(x)", Math.Sqrt(2.25) },
        { "sin(x) + cos(x)*tan(x)", Math.Sin(2.25) + Math.Cos(2.25) * Math.Tan(2.25) },
        { "asin(s) + acos(s) - atan(s)", Math.Asin(0.7) + Math.Acos(0.7) - Math.Atan(0.7) },
        { "exp(ln(x))", Math.Exp(Math.Log(2.25)) },
        { "min(x, s) - max(x, abs(-W))", 0.7 - 2.25 },
    };

    private static readonly Dictionary<string, double> Symbols = new() { ["W"] = 1.5, ["x"] = 2.25, ["s"] = 0.7, ["r_t'"] = 3, ["γ"] = 17 };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Value_OfAnEquation_IsWhatMathSays(string text, double expected) =>
        // One rounding apart where Math.Pow(s, 2) is not s * s.
        Assert.Equal(expected, Equation.Parse(text).Value(Symbols), 1e-15 * Math.Max(1, Math.Abs(expected)));

    [Theory]
    [InlineData("")]
    [InlineData("2 +")]
    [InlineData("(2")]
    [InlineData("2)")]
    [InlineData("2 x")]
    [InlineData("2..5")]
    [InlineData("1.5.2")]
    [InlineData("1e+")]
    [InlineData("cosine(2)")]
    [InlineData("min(2)")]
    [InlineData("sin(2, 3)")]
    [InlineData("x = 2")]
    [InlineData("'x")]
    public void Parse_OutsideTheGrammar_IsRefused(string text) => Assert.Throws<FormatException>(() => Equation.Parse(text));

    [Fact]
    public void Symbols_AreListedOnceInOrder()
    {
        Assert.Equal<Sequence<string>>(["W", "x", "s"], Equation.Parse("W*x/s + x*pi").Symbols);
        Assert.Throws<KeyNotFoundException>(() => Equation.Parse("lambda").Value(Symbols));
    }

    [Fact]
    public void RandomSumsOfProductsHaveTheValueOfTheirOwnArithmetic()
    {
        var term = Gen.Select(Gen.Double[-100, 100], Gen.Double[0.1, 100], Gen.OneOf(Gen.Const('*'), Gen.Const('/')));
        term.Array[1, 8].ForAll(
            terms =>
            {
                var text = string.Join(" + ", terms.Select(t => FormattableString.Invariant($"{t.Item1:R}{t.Item3}{t.Item2:R}")));
                var expected = terms.Select(t => t.Item3 == '*' ? t.Item1 * t.Item2 : t.Item1 / t.Item2).Aggregate((a, b) => a + b);
                return Equation.Parse(text).Value(Symbols) == expected;
            },
            iter: Counts.Of(1_000, 100_000));
    }

    [Fact]
    public void Mismatches_SoundCalculation_HasNone()
    {
        var calculation = new Calculation("crossing-force", new Message("t"),
        [
            Step("moment", "W*x", [Symbol("W", new Force(1200)), Symbol("x", Amount.Metres(1.5))], "M", new(1800, Dimension.Moment)),
            Step("force", "M/s", [Symbol("M", new(1800, Dimension.Moment)), Symbol("s", Amount.Metres(0.6))], "P", new(3000, Dimension.Force)),
        ]);
        Assert.Equal([], CalculationCheck.Mismatches(calculation, 1e-12));
        Assert.Equal(new Amount(3000, Dimension.Force), calculation.Result);
    }

    [Theory]
    [InlineData("W*", 1800, "evidence.equation-unreadable")]
    [InlineData("W*x", 1801, "evidence.equation-differs")]
    [InlineData("W*x", double.NaN, "evidence.equation-differs")]
    [InlineData("W*x/0", 1800, "evidence.equation-differs")]
    [InlineData("W*y", 1800, "evidence.symbol-missing")]
    [InlineData("W*1.5", 1800, "evidence.symbol-unused")]
    public void Mismatches_UnsoundStep_IsNamed(string equation, double printed, string key)
    {
        var calculation = new Calculation("m", new Message("t"),
            [Step("moment", equation, [Symbol("W", new Force(1200)), Symbol("x", Amount.Metres(1.5))], "M", new(printed, Dimension.Moment))]);
        var mismatches = CalculationCheck.Mismatches(calculation);
        Assert.Contains(mismatches, m => m.Step == "moment" && m.What.Key == key);
        Assert.DoesNotContain('[', Phrasebook.English.Say(mismatches[0].What, UnitSystem.Metric));
    }

    [Fact]
    public void Mismatches_SymbolTwiceOrChanged_IsNamed()
    {
        var first = Step("a", "W*2", [Symbol("W", Amount.Number(3)), Symbol("W", Amount.Number(3))], "M", Amount.Number(6));
        var second = Step("b", "M*2", [Symbol("M", Amount.Number(7))], "P", Amount.Number(14));
        var keys = CalculationCheck.Mismatches(new Calculation("m", new Message("t"), [first, second])).Select(m => (m.Step, m.What.Key));
        Assert.Equal([("a", "evidence.symbol-twice"), ("b", "evidence.symbol-changed")], keys);
    }

    private static Symbol Symbol(string name, Amount value) => new(name, new Message("t"), value, Tag.Computed);

    private static Step Step(string key, string equation, Sequence<Symbol> symbols, string result, Amount value) =>
        new(key, equation, symbols, Symbol(result, value), Mechanics);
}
