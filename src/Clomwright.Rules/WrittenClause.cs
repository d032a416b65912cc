using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>One clause of a body of rules as the data files write it: what it asks, never what a house answers.</summary>
public sealed record WrittenClause
{
    /// <summary>Our rule.</summary>
    public required Rule Rule { get; init; }

    /// <summary>What findings are stamped with.</summary>
    public required Clause Clause { get; init; }

    /// <summary>How provided and limit are compared; null for a clause that compares nothing.</summary>
    public ComparisonWord? Word { get; init; }

    /// <summary>The number asked; null where there is none or where it is missing.</summary>
    public Limit? Limit { get; init; }

    /// <summary>What the number measures, for reading a limit that somebody enters; null for a clause without a number.</summary>
    public Dimension? Measures { get; init; }

    /// <summary>A gate: outside it the whole body of rules has nothing to say.</summary>
    public bool Gate { get; init; }

    /// <summary>The question to a person, or the reason why nothing is computed; null for a computed clause.</summary>
    public Message? Says { get; init; }

    /// <summary>What else is in circulation.</summary>
    public Sequence<Rival> Rivals { get; init; }

    /// <summary>The clause has a number, and we could not read it.</summary>
    public bool NumberIsMissing => Measures is not null && Limit is null;
}

/// <summary>One edition of a body of rules, in the order of its clauses.</summary>
/// <param name="Key">Our key: <c>common-practice</c>, <c>irc-cob</c>, <c>ground</c>.</param>
/// <param name="Edition">Edition; empty where there is none.</param>
/// <param name="Clauses">Gates first.</param>
public sealed record BodyOfRules(string Key, string Edition, Sequence<WrittenClause> Clauses)
{
    /// <summary><c>irc-cob@2021</c>, as a house file adopts it.</summary>
    public string Adopted => Edition.Length == 0 ? Key : $"{Key}@{Edition}";

    /// <summary>Its name in words.</summary>
    public Message Title => new($"rules.body.{Adopted}");
}
