using System.Collections.Concurrent;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Steps;

/// <summary>Collects the steps of one calculation while the numbers are computed.</summary>
/// <param name="key">Of the calculation.</param>
/// <param name="kept">False while only the numbers are asked for, to find the hardest of many cases: then nothing is put down.</param>
internal sealed class Worksheet(string key, bool kept = true)
{
    private static readonly ConcurrentDictionary<string, Message> Known = new(StringComparer.Ordinal);

    private readonly List<Step> steps = [];

    /// <summary>Puts one step down and hands its value on as a symbol of the steps that follow.</summary>
    /// <param name="step">Permanent key of the step; also the word for what it computes.</param>
    /// <param name="symbol">The symbol computed.</param>
    /// <param name="equation">Right-hand side over the symbols.</param>
    /// <param name="value">What it comes to, computed beside this call; a test evaluates the equation and compares.</param>
    /// <param name="dimension">Of the value.</param>
    /// <param name="source">Whose equation it is.</param>
    /// <param name="symbols">Every symbol of the equation.</param>
    public Symbol Step(string step, string symbol, string equation, double value, Dimension dimension, Source source, params ReadOnlySpan<Symbol> symbols)
    {
        var result = new Symbol(symbol, Word(step), new Amount(value, dimension), Tag.Computed);
        if (kept)
        {
            steps.Add(new Step(step, equation, Sequence.Create(symbols), result, source));
        }

        return result;
    }

    /// <summary>The calculation so far.</summary>
    public Calculation Done => new(key, new Message($"analysis.calculation.{key}"), steps.ToSequence());

    /// <summary>A symbol the author of the house gave.</summary>
    public static Symbol Given(string symbol, string word, double value, Dimension dimension) => new(symbol, Word(word), new Amount(value, dimension), Tag.Given);

    /// <summary>A symbol computed elsewhere.</summary>
    public static Symbol Computed(string symbol, string word, double value, Dimension dimension) => new(symbol, Word(word), new Amount(value, dimension), Tag.Computed);

    /// <summary>A number of a code.</summary>
    public static Symbol Code(string symbol, string word, double value, Dimension dimension, Source source) => new(symbol, Word(word), new Amount(value, dimension), Tag.Code, source);

    /// <summary>A number with its own tag and source.</summary>
    public static Symbol Cited(string symbol, string word, Cited<double> value, Dimension dimension) => new(symbol, Word(word), new Amount(value.Value, dimension), value.Tag, value.Source);

    /// <summary>A number that is on the record as an assumption.</summary>
    public static Symbol Assumed(string symbol, string word, double value, Dimension dimension, Source source) => new(symbol, Word(word), new Amount(value, dimension), Tag.Assumed, source);

    private static Message Word(string word) => Known.GetOrAdd(word, static w => new Message($"analysis.symbol.{w}"));
}
