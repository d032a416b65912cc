namespace Clomwright.Evidence;

/// <summary>One typed argument of a <see cref="Message"/>.</summary>
public abstract record Argument
{
    private Argument()
    {
    }

    /// <summary>The author's own word: a name, a key of the house file, an address.</summary>
    public sealed record Text(string Value) : Argument;

    /// <summary>The subject of a finding or a check: our parts of it are words, the author's names stay.</summary>
    public sealed record Subject(string Value) : Argument;

    /// <summary>A material by its key in the data files: said in words where there are any, else as it was written.</summary>
    public sealed record Material(string Value) : Argument;

    /// <summary>A source by its title: a work as it is printed, what is ours in words; see <see cref="Phrasebook.Title"/>.</summary>
    public sealed record Work(Source Value) : Argument;

    /// <summary>A quantity, printed in both unit systems and rounded to what a tape or scale can read.</summary>
    public sealed record Quantity(Amount Value) : Argument;

    /// <summary>A length exactly as it can be written, not rounded to a tape.</summary>
    public sealed record Exact(Length Value) : Argument;

    /// <summary>A date.</summary>
    public sealed record Date(DateOnly Value) : Argument;

    /// <summary>Another message inside this one.</summary>
    public sealed record Nested(Message Value) : Argument;

    /// <summary>Several arguments, listed.</summary>
    public sealed record List(Sequence<Argument> Items) : Argument;

    /// <summary>A name or key.</summary>
    public static implicit operator Argument(string value) => new Text(value);

    /// <summary>A source by its title.</summary>
    public static implicit operator Argument(Source value) => new Work(value);

    /// <summary>A quantity.</summary>
    public static implicit operator Argument(Amount value) => new Quantity(value);

    /// <summary>A written length.</summary>
    public static implicit operator Argument(Length value) => new Quantity(value);

    /// <summary>An angle.</summary>
    public static implicit operator Argument(Angle value) => new Quantity(value);

    /// <summary>A count.</summary>
    public static implicit operator Argument(int value) => new Quantity(Amount.Count(value));

    /// <summary>A date.</summary>
    public static implicit operator Argument(DateOnly value) => new Date(value);

    /// <summary>A message inside a message.</summary>
    public static implicit operator Argument(Message value) => new Nested(value);
}
