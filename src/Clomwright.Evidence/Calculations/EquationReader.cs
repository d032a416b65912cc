using System.Globalization;

namespace Clomwright.Evidence;

/// <summary>Reads the text of an equation from left to right, one method for each level of its grammar.</summary>
internal sealed class EquationReader(string text)
{
    private int at;

    /// <summary>Symbols met so far, each once.</summary>
    public List<string> Names { get; } = [];

    /// <summary>Nothing is left to read.</summary>
    public bool IsAtEnd => Next() == '\0';

    /// <summary>What to throw where the text goes wrong.</summary>
    public FormatException Wrong() => new($"The equation \"{text}\" goes wrong at character {at + 1}.");

    /// <summary>The widest level: terms added and taken away.</summary>
    public Term Sum()
    {
        var sum = Product();
        while (Next() is '+' or '-')
        {
            var minus = text[at++] == '-';
            sum = new Term.Sum(sum, Product(), minus);
        }

        return sum;
    }

    private Term Product()
    {
        var product = Signed();
        while (Next() is '*' or '/')
        {
            product = text[at++] == '/' ? new Term.Quotient(product, Signed()) : new Term.Product(product, Signed());
        }

        return product;
    }

    private Term Signed() => Takes('-') ? new Term.Negative(Signed()) : Power();

    private Term Power()
    {
        var power = Atom();
        return Takes('^') ? new Term.Power(power, Signed()) : power;
    }

    private Term Atom()
    {
        if (Takes('('))
        {
            var inside = Sum();
            Expect(')');
            return inside;
        }

        if (Next() is >= '0' and <= '9' or '.')
        {
            return Number();
        }

        var name = Name();
        if (Takes('('))
        {
            return Call(name);
        }

        if (name != "pi" && !Names.Contains(name))
        {
            Names.Add(name);
        }

        return new Term.Name(name);
    }

    private Term.Call Call(string name)
    {
        var first = Sum();
        if (name is "min" or "max")
        {
            Expect(',');
            var second = Sum();
            Expect(')');
            return new Term.Call(name, [first, second]);
        }

        Expect(')');
        return name is "sqrt" or "sin" or "cos" or "tan" or "asin" or "acos" or "atan" or "exp" or "ln" or "abs" ? new Term.Call(name, [first]) : throw Wrong();
    }

    private Term.Number Number()
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

        return double.TryParse(text.AsSpan(start, at - start), NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? new Term.Number(number, text[start..at])
            : throw Wrong();
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
