using Clomwright.Evidence;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests;

/// <summary>What is printed must be true: every equation gives its result from its own symbols, and every symbol has words.</summary>
internal static class Printed
{
    public static void Holds(IEnumerable<Calculation> calculations)
    {
        foreach (var calculation in calculations)
        {
            Assert.Contains(calculation.Title.Key, Phrasebook.English.Keys);
            foreach (var step in calculation.Steps)
            {
                // 1e-9: the same arithmetic in another order of operations.
                var value = Arithmetic.Of(step);
                Assert.True(
                    Math.Abs(value - step.Result.Value.Si) <= 1e-9 * Math.Max(Math.Abs(value), 1e-9) || value.Equals(step.Result.Value.Si),
                    $"{calculation.Key}/{step.Key}: {step.Equation} is {value:R}, printed {step.Result.Value.Si:R}");
                foreach (var symbol in step.Symbols.Append(step.Result))
                {
                    Assert.Contains(symbol.What.Key, Phrasebook.English.Keys);
                    Assert.True(symbol.Tag is Tag.Given or Tag.Computed || symbol.Source is not null, $"{calculation.Key}/{step.Key}: {symbol.Name} has no source");
                }
            }
        }
    }

    public static void HaveWords(IEnumerable<Assumption> assumptions) =>
        Assert.All(assumptions, a => Assert.Contains(a.What.Key, Phrasebook.English.Keys));
}
