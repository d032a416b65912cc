namespace Clomwright.Evidence;

/// <summary>What a printed step says that its own symbols do not bear out.</summary>
/// <param name="Step">Key of the step.</param>
/// <param name="What">What does not fit.</param>
public sealed record Mismatch(string Step, Message What);

/// <summary>Checks a calculation by evaluating every equation again from the symbols printed beside it.</summary>
public static class CalculationCheck
{
    /// <summary>Everything that does not fit; empty for a sound calculation.</summary>
    /// <remarks>
    /// Each equation is in the grammar of <see cref="Equation"/>, every symbol it uses is listed once and every listed one is used, its
    /// value is the printed result, and a symbol that an earlier step computed has the value computed there. NaN and infinity fit nothing.
    /// </remarks>
    /// <param name="calculation">The calculation.</param>
    /// <param name="relativeTolerance">Of the larger of the two values; the rounding of one equation is about 1e-15.</param>
    public static Sequence<Mismatch> Mismatches(Calculation calculation, double relativeTolerance = 1e-9)
    {
        var computed = new Dictionary<string, Amount>();
        var mismatches = new List<Mismatch>();
        foreach (var step in calculation.Steps)
        {
            mismatches.AddRange(Of(step, computed, relativeTolerance).Select(what => new Mismatch(step.Key, what)));
            computed[step.Result.Name] = step.Result.Value;
        }

        return mismatches.ToSequence();
    }

    private static IEnumerable<Message> Of(Step step, Dictionary<string, Amount> computed, double tolerance)
    {
        Equation equation;
        try
        {
            equation = Equation.Parse(step.Equation);
        }
        catch (FormatException)
        {
            return [Message.Of("evidence.equation-unreadable", ("equation", step.Equation))];
        }

        var twice = step.Symbols.GroupBy(s => s.Name).Where(g => g.Count() > 1).Select(g => g.Key);
        var missing = equation.Symbols.Except(step.Symbols.Select(s => s.Name)).ToArray();
        var unused = step.Symbols.Select(s => s.Name).Except(equation.Symbols);
        var changed = step.Symbols.Where(s => computed.TryGetValue(s.Name, out var before) && before != s.Value).Select(s => s.Name);
        return twice.Select(name => Message.Of("evidence.symbol-twice", ("symbol", name)))
            .Concat(missing.Select(name => Message.Of("evidence.symbol-missing", ("symbol", name))))
            .Concat(unused.Select(name => Message.Of("evidence.symbol-unused", ("symbol", name))))
            .Concat(changed.Select(name => Message.Of("evidence.symbol-changed", ("symbol", name))))
            .Concat(missing.Length == 0 ? Difference(step, equation, tolerance) : []);
    }

    private static IEnumerable<Message> Difference(Step step, Equation equation, double tolerance)
    {
        var values = step.Symbols.GroupBy(s => s.Name).ToDictionary(g => g.Key, g => g.First().Value.Si);
        var (printed, evaluated) = (step.Result.Value.Si, equation.Value(values));
        var fits = double.IsFinite(printed) && double.IsFinite(evaluated)
            && Math.Abs(printed - evaluated) <= tolerance * Math.Max(Math.Abs(printed), Math.Abs(evaluated));
        return fits ? [] :
        [
            Message.Of(
                "evidence.equation-differs",
                ("equation", step.Equation),
                ("printed", QuantityText.RoundTrip(printed)),
                ("evaluated", QuantityText.RoundTrip(evaluated))),
        ];
    }
}
