using Clomwright.Evidence;

namespace Clomwright.Analysis.Tests;

/// <summary>What is printed must be true: every equation gives its result from its own symbols, and every symbol has words and, where it is no computed one, a source.</summary>
internal static class Printed
{
    public static void Holds(IEnumerable<Calculation> calculations)
    {
        foreach (var calculation in calculations)
        {
            Assert.Contains(calculation.Title.Key, Phrasebook.English.Keys);
            // 1e-9: the same arithmetic in another order of operations.
            Assert.Empty(CalculationCheck.Mismatches(calculation, 1e-9).Select(m => $"{calculation.Key}/{m.Step}: {Phrasebook.English.Say(m.What, UnitSystem.Metric)}"));
            foreach (var symbol in calculation.Steps.SelectMany(s => s.Symbols.Append(s.Result)))
            {
                Assert.Contains(symbol.What.Key, Phrasebook.English.Keys);
                Assert.True(symbol.Tag is Tag.Given or Tag.Computed || symbol.Source is not null, $"{calculation.Key}: {symbol.Name} has no source");
            }
        }
    }

    public static void HaveWords(IEnumerable<Assumption> assumptions) =>
        Assert.All(assumptions, a => Assert.Contains(a.What.Key, Phrasebook.English.Keys));
}
