using System.Globalization;
using Valued = System.Func<System.Collections.Generic.IReadOnlyDictionary<string, double>, double>;

namespace Clomwright.Evidence;

/// <summary>The right-hand side of a printed equation, read so that it can be evaluated again from its printed inputs.</summary>
/// <remarks>
/// Sums, products, powers (<c>^</c> binds to the right and before a minus sign: -2^2 is -4), brackets, decimal numbers, names of
/// symbols, the constant <c>pi</c>, and the functions sqrt sin cos tan asin acos atan exp ln abs min max. Angles are in radians.
/// </remarks>
public sealed class Equation
{
    private readonly Valued value;

    private Equation(Valued value, Sequence<string> symbols) => (this.value, Symbols) = (value, symbols);

    /// <summary>The names of the symbols it uses, each once, in order of appearance.</summary>
    public Sequence<string> Symbols { get; }

    /// <summary>Reads an equation.</summary>
    /// <exception cref="FormatException">It is not written in the grammar above.</exception>
    public static Equation Parse(string text)
    {
        var reader = new Reader(text);
        var value = reader.Sum();
        return reader.IsAtEnd ? new Equation(value, reader.Names.ToSequence()) : throw reader.Wrong();
    }

    /// <summary>Its value.</summary>
    /// <param name="symbols">A value for every one of <see cref="Symbols"/>.</param>
    /// <exception cref="KeyNotFoundException">A symbol has no value.</exception>
    public double Value(IReadOnlyDictionary<string, double> symbols) => value(symbols);

    private sealed class Reader(string text)
    {
        private int at;

        internal List<string> Names { get; } = [];

        internal bool IsAtEnd => Next() == '\0';

        internal FormatException Wrong() => new($"The equation \"{text}\" goes wrong at character {at + 1}.");

        internal Valued Sum()
        {
            var sum = Product();
            while (Next() is '+' or '-')
            {
                var (left, minus) = (sum, text[at++] == '-');
                var right = Product();
                sum = minus ? s => left(s) - right(s) : s => left(s) + right(s);
            }

            return sum;
        }

        private Valued Product()
        {
            var product = Signed();
            while (Next() is '*' or '/')
            {
                var (left, over) = (product, text[at++] == '/');
                var right = Signed();
                product = over ? s => left(s) / right(s) : s => left(s) * right(s);
            }

            return product;
        }

        private Valued Signed()
        {
            if (!Takes('-'))
            {
                return Power();
            }

            var positive = Signed();
            return s => -positive(s);
        }

        private Valued Power()
        {
            var power = Atom();
            if (!Takes('^'))
            {
                return power;
            }

            var exponent = Signed();
            return s => Math.Pow(power(s), exponent(s));
        }

        private Valued Atom()
        {
            if (Takes('('))
            {
                var inside = Sum();
                Expect(')');
                return inside;
            }

            if (Next() is >= '0' and <= '9' or '.')
            {
                var number = Number();
                return _ => number;
            }

            var name = Name();
            if (Takes('('))
            {
                return Call(name);
            }

            if (name == "pi")
            {
                return _ => Math.PI;
            }

            if (!Names.Contains(name))
            {
                Names.Add(name);
            }

            return s => s[name];
        }

        private Valued Call(string name)
        {
            var first = Sum();
            if (name is "min" or "max")
            {
                Expect(',');
                var second = Sum();
                Expect(')');
                return name == "min" ? s => Math.Min(first(s), second(s)) : s => Math.Max(first(s), second(s));
            }

            Expect(')');
            Func<double, double> function = name switch
            {
                "sqrt" => Math.Sqrt,
                "sin" => Math.Sin,
                "cos" => Math.Cos,
                "tan" => Math.Tan,
                "asin" => Math.Asin,
                "acos" => Math.Acos,
                "atan" => Math.Atan,
                "exp" => Math.Exp,
                "ln" => Math.Log,
                "abs" => Math.Abs,
                _ => throw Wrong(),
            };
            return s => function(first(s));
        }

        private double Number()
        {
            var start = at;
            TakeDigits();
            if (at < text.Length && text[at] == '.')
            {
                at++;
                TakeDigits();
            }

            var exponent = at + 1 < text.Length && text[at] is 'e' or 'E' && (char.IsAsciiDigit(text[at + 1]) || text[at + 1] is '+' or '-');
            if (exponent)
            {
                at += 2;
                TakeDigits();
            }

            return double.TryParse(text.AsSpan(start, at - start), NumberStyles.Float, CultureInfo.InvariantCulture, out var number) ? number : throw Wrong();
        }

        private string Name()
        {
            var start = at;
            while (at < text.Length && (char.IsLetter(text[at]) || text[at] == '_' || (at > start && (char.IsAsciiDigit(text[at]) || text[at] == '\''))))
            {
                at++;
            }

            return at > start ? text[start..at] : throw Wrong();
        }

        private void TakeDigits()
        {
            while (at < text.Length && char.IsAsciiDigit(text[at]))
            {
                at++;
            }
        }

        private char Next()
        {
            while (at < text.Length && text[at] == ' ')
            {
                at++;
            }

            return at < text.Length ? text[at] : '\0';
        }

        private bool Takes(char mark)
        {
            var there = Next() == mark;
            at += there ? 1 : 0;
            return there;
        }

        private void Expect(char mark)
        {
            if (!Takes(mark))
            {
                throw Wrong();
            }
        }
    }
}
