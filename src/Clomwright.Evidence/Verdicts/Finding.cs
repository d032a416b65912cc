namespace Clomwright.Evidence;

/// <summary>A rule of our own naming: what is asked, whatever a body of rules calls the clause.</summary>
/// <param name="Key">Permanent, kebab case: <c>pier-width</c>.</param>
/// <param name="Title">What it is about, in words.</param>
public sealed record Rule(string Key, Message Title)
{
    /// <summary>Permanent key; never empty.</summary>
    public string Key { get; init => field = Refuse.Empty(value); } = Refuse.Empty(Key);
}

/// <summary>How far a clause is handled here.</summary>
public enum ClauseStatus
{
    /// <summary>Computed from the description.</summary>
    Computed,

    /// <summary>A person has to judge; we ask the question.</summary>
    Judgement,

    /// <summary>Paperwork; nothing to measure.</summary>
    Administrative,

    /// <summary>Could be computed and is not yet.</summary>
    NotYet,

    /// <summary>Not about the houses this program is for.</summary>
    OutOfScope,
}

/// <summary>One clause of one edition of a body of rules.</summary>
/// <param name="Body">Key of the body of rules, <c>irc-cob</c>.</param>
/// <param name="Edition">Edition, <c>2021</c>; empty where the body has none.</param>
/// <param name="Number">The clause number of that edition; empty for common practice.</param>
/// <param name="Status">How far it is handled here.</param>
/// <param name="Measure">What is measured: which face or arc, thickness at base, mean or top, narrowest section.</param>
/// <param name="Source">Where the limit comes from and how sure we are.</param>
public sealed record Clause(string Body, string Edition, string Number, ClauseStatus Status, Message Measure, Source Source)
{
    /// <summary>Key of the body of rules; never empty.</summary>
    public string Body { get; init => field = Refuse.Empty(value); } = Refuse.Empty(Body);

    /// <summary>Where the limit comes from; never null.</summary>
    public Source Source { get; init => field = Refuse.Null(value); } = Refuse.Null(Source);

    /// <summary><c>irc-cob@2021</c> or <c>common-practice</c>, as the house file adopts it.</summary>
    public string Adopted => Edition.Length == 0 ? Body : $"{Body}@{Edition}";
}

/// <summary>Where on the unrolled wall a finding points. Stations along the inside face at the wall base from the zero mark, clockwise, metres; heights from the finished floor, metres.</summary>
public sealed record Place(double FromStation, double ToStation, double FromHeight, double ToHeight);

/// <summary>What a rule says about the design of one thing. It cannot exist without its rule and clause.</summary>
/// <param name="Rule">Our rule.</param>
/// <param name="Clause">The clause it is stamped with.</param>
/// <param name="Subject">The address of the thing, from the author's names: <c>pier door|south-window</c>.</param>
/// <param name="Verdict">What the rule says.</param>
/// <param name="Places">Where to point on the drawing; may be empty.</param>
/// <param name="Notes">Remarks: rivals of the rule, reasons, what would mend it.</param>
public sealed record Finding(Rule Rule, Clause Clause, string Subject, Verdict Verdict, Sequence<Place> Places, Sequence<Message> Notes)
{
    /// <summary>Our rule; never null.</summary>
    public Rule Rule { get; init => field = Refuse.Null(value); } = Refuse.Null(Rule);

    /// <summary>The clause it is stamped with; never null.</summary>
    public Clause Clause { get; init => field = Refuse.Null(value); } = Refuse.Null(Clause);

    /// <summary>The address of the thing; never empty.</summary>
    public string Subject { get; init => field = Refuse.Empty(value); } = Refuse.Empty(Subject);

    /// <summary>What the rule says; never null.</summary>
    public Verdict Verdict { get; init => field = Refuse.Null(value); } = Refuse.Null(Verdict);
}

/// <summary>How bad a diagnostic is.</summary>
public enum Severity
{
    /// <summary>The description is wrong; the rest is still computed, and <c>clom</c> answers 2.</summary>
    Error,

    /// <summary>The description is odd; look at it.</summary>
    Warning,
}

/// <summary>Something about the description itself: where, what is wrong and what would be right, in one sentence.</summary>
/// <param name="Path">The place in the house file: <c>openings[2].width</c>; empty for the file as a whole.</param>
/// <param name="What">What is wrong and what would be right.</param>
/// <param name="Severity">Error or warning.</param>
public sealed record Diagnostic(string Path, Message What, Severity Severity = Severity.Error);
