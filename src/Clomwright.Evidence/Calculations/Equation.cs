namespace Clomwright.Evidence;

/// <summary>The right-hand side of a printed equation, read so that it can be evaluated again from its printed inputs.</summary>
/// <remarks>
/// Sums, products, powers (<c>^</c> binds to the right and before a minus sign: -2^2 is -4), brackets, decimal numbers, names of
/// symbols, the constant <c>pi</c>, and the functions sqrt sin cos tan asin acos atan exp ln abs min max. Angles are in radians.
/// </remarks>
public sealed class Equation
{
    private Equation(Term term, Sequence<string> symbols) => (Term, Symbols) = (term, symbols);

    /// <summary>How it is built.</summary>
    public Term Term { get; }

    /// <summary>The names of the symbols it uses, each once, in order of appearance.</summary>
    public Sequence<string> Symbols { get; }

    /// <summary>Reads an equation.</summary>
    /// <exception cref="FormatException">It is not written in the grammar above.</exception>
    public static Equation Parse(string text)
    {
        var reader = new EquationReader(text);
        var term = reader.Sum();
        return reader.IsAtEnd ? new Equation(term, reader.Names.ToSequence()) : throw reader.Wrong();
    }

    /// <summary>Its value.</summary>
    /// <param name="symbols">A value for every one of <see cref="Symbols"/>.</param>
    /// <exception cref="KeyNotFoundException">A symbol has no value.</exception>
    public double Value(IReadOnlyDictionary<string, double> symbols)
    {
        ArgumentNullException.ThrowIfNull(symbols);
        return Of(Term);

        double Of(Term term) => term switch
        {
            Term.Number number => number.Value,
            Term.Name { Symbol: "pi" } => Math.PI,
            Term.Name name => symbols[name.Symbol],
            Term.Sum { Minus: true } sum => Of(sum.Left) - Of(sum.Right),
            Term.Sum sum => Of(sum.Left) + Of(sum.Right),
            Term.Product product => Of(product.Left) * Of(product.Right),
            Term.Quotient quotient => Of(quotient.Over) / Of(quotient.Under),
            Term.Negative negative => -Of(negative.Inside),
            Term.Power power => Math.Pow(Of(power.Base), Of(power.Exponent)),
            Term.Call call => Called(call),
            _ => throw new ArgumentOutOfRangeException(nameof(term)),
        };

        double Called(Term.Call call)
        {
            var first = Of(call.Arguments[0]);
            return call.Function switch
            {
                "min" => Math.Min(first, Of(call.Arguments[1])),
                "max" => Math.Max(first, Of(call.Arguments[1])),
                "sqrt" => Math.Sqrt(first),
                "sin" => Math.Sin(first),
                "cos" => Math.Cos(first),
                "tan" => Math.Tan(first),
                "asin" => Math.Asin(first),
                "acos" => Math.Acos(first),
                "atan" => Math.Atan(first),
                "exp" => Math.Exp(first),
                "ln" => Math.Log(first),
                "abs" => Math.Abs(first),
                _ => throw new ArgumentOutOfRangeException(nameof(call)),
            };
        }
    }
}
