namespace Clomwright.Evidence;

/// <summary>A part of an equation, as read: what papers set in type and what is evaluated are this one tree.</summary>
public abstract record Term
{
    private Term()
    {
    }

    /// <summary>A decimal number.</summary>
    /// <param name="Value">Its value.</param>
    /// <param name="Written">As the equation spells it.</param>
    public sealed record Number(double Value, string Written) : Term;

    /// <summary>A symbol, or the constant <c>pi</c>.</summary>
    public sealed record Name(string Symbol) : Term;

    /// <summary>A sum or a difference.</summary>
    public sealed record Sum(Term Left, Term Right, bool Minus) : Term;

    /// <summary>A product.</summary>
    public sealed record Product(Term Left, Term Right) : Term;

    /// <summary>A quotient.</summary>
    public sealed record Quotient(Term Over, Term Under) : Term;

    /// <summary>A term with a minus sign before it.</summary>
    public sealed record Negative(Term Inside) : Term;

    /// <summary>A power.</summary>
    public sealed record Power(Term Base, Term Exponent) : Term;

    /// <summary>One of the known functions of one or two terms.</summary>
    public sealed record Call(string Function, Sequence<Term> Arguments) : Term;
}
