using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Bodies of rules adopted, numbers entered from a code and questions answered.</summary>
public sealed record RuleChoices
{
    /// <summary><c>common-practice</c>, <c>irc-cob@2021</c>.</summary>
    public Sequence<string> Adopted { get; init; }

    /// <summary>Numbers that the user typed in from the code their office adopted.</summary>
    public Sequence<EnteredLimit> Entered { get; init; }

    /// <summary>Questions of judgement that a person answered, the Ground checklist among them.</summary>
    public Sequence<Answer> Answers { get; init; }
}

/// <summary>A limit typed in from an adopted code.</summary>
/// <param name="Body">Body and edition: <c>irc-cob@2021</c>.</param>
/// <param name="Rule">Our rule key.</param>
/// <param name="Limit">As written, with its unit; a plain number for a ratio.</param>
/// <param name="By">Who read it.</param>
/// <param name="On">When.</param>
public sealed record EnteredLimit(string Body, string Rule, string Limit, string By, DateOnly On);

/// <summary>A person's answer to a question of judgement.</summary>
/// <param name="Question">Our rule key: <c>ground-services</c>.</param>
/// <param name="Holds">Yes or no.</param>
/// <param name="By">Who answered.</param>
/// <param name="On">When.</param>
/// <param name="Note">Remarks.</param>
public sealed record Answer(string Question, bool Holds, string By, DateOnly On, string? Note = null);
