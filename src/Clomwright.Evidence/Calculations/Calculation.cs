namespace Clomwright.Evidence;

/// <summary>A symbol of an equation with the value it has in this house.</summary>
/// <param name="Name">As the source spells it: <c>t</c>, <c>r_t</c>.</param>
/// <param name="What">What it stands for.</param>
/// <param name="Value">Its value.</param>
/// <param name="Tag">Measured, assumed, practice, code, given or computed.</param>
/// <param name="Source">Where it comes from; null for what the author gave or an earlier step computed.</param>
public sealed record Symbol(string Name, Message What, Amount Value, Tag Tag, Source? Source = null);

/// <summary>One step: an equation that a test re-evaluates from its own symbols.</summary>
/// <param name="Key">Permanent key of the step, kebab case.</param>
/// <param name="Equation">Right-hand side in plain arithmetic over the symbols: <c>W*x/s</c>. Operators + - * / ^, functions sqrt sin cos tan asin acos atan exp ln abs min max, constant pi; see <see cref="Evidence.Equation"/>.</param>
/// <param name="Symbols">Every symbol the equation uses.</param>
/// <param name="Result">The symbol computed.</param>
/// <param name="Source">Whose equation it is.</param>
public sealed record Step(string Key, string Equation, Sequence<Symbol> Symbols, Symbol Result, Source Source)
{
    /// <summary>Permanent key of the step; never empty.</summary>
    public string Key { get; init => field = Refuse.Empty(value); } = Refuse.Empty(Key);

    /// <summary>Right-hand side; never empty.</summary>
    public string Equation { get; init => field = Refuse.Empty(value); } = Refuse.Empty(Equation);

    /// <summary>Whose equation it is; never null.</summary>
    public Source Source { get; init => field = Refuse.Null(value); } = Refuse.Null(Source);
}

/// <summary>Ordered steps returned by the same method that computes the number. Papers print them and never re-derive a formula.</summary>
/// <param name="Key">Permanent key, kebab case.</param>
/// <param name="Title">What is computed, in words.</param>
/// <param name="Steps">At least one.</param>
public sealed record Calculation(string Key, Message Title, Sequence<Step> Steps)
{
    /// <summary>Permanent key; never empty.</summary>
    public string Key { get; init => field = Refuse.Empty(value); } = Refuse.Empty(Key);

    /// <summary>The steps, in order; at least one.</summary>
    public Sequence<Step> Steps { get; init => field = Refuse.None(value); } = Refuse.None(Steps);

    /// <summary>What of the house it is worked out for, by the author's name: <c>door/header</c>; null where there is one only.</summary>
    public string? Place { get; init; }

    /// <summary>The value of the last step.</summary>
    public Amount Result => Steps[^1].Result.Value;
}

/// <summary>A value with the calculation that made it.</summary>
public sealed record Calculated<T>(T Value, Calculation How);
