namespace Clomwright.Evidence;

/// <summary>What the words of evidence are called on paper.</summary>
public static class Names
{
    /// <summary>The tag that a printed number carries.</summary>
    public static Message Of(Tag tag) => tag switch
    {
        Tag.Measured => new Message("evidence.tag-measured"),
        Tag.Assumed => new Message("evidence.tag-assumed"),
        Tag.Practice => new Message("evidence.tag-practice"),
        Tag.Code => new Message("evidence.tag-code"),
        Tag.Computed => new Message("evidence.tag-computed"),
        Tag.Given => new Message("evidence.tag-given"),
        _ => throw new ArgumentOutOfRangeException(nameof(tag)),
    };

    /// <summary>The tag of a number beside its source: what comes from a work that is no code is published, or practice.</summary>
    public static Message Of(Tag tag, Source? source) => tag != Tag.Code || source is null or { IsCode: true } ? Of(tag)
        : source.Surety == Surety.Practice ? Of(Tag.Practice) : new Message("evidence.tag-published");

    /// <summary>How sure we are of a source.</summary>
    public static Message Of(Surety surety) => surety switch
    {
        Surety.Seen => new Message("evidence.surety-seen"),
        Surety.SecondHand => new Message("evidence.surety-second-hand"),
        Surety.Memory => new Message("evidence.surety-memory"),
        Surety.Practice => new Message("evidence.surety-practice"),
        Surety.Derived => new Message("evidence.surety-derived"),
        Surety.Entered => new Message("evidence.surety-entered"),
        Surety.Missing => new Message("evidence.surety-missing"),
        _ => throw new ArgumentOutOfRangeException(nameof(surety)),
    };

    /// <summary>How a rule compares.</summary>
    public static Message Of(ComparisonWord word) => word switch
    {
        ComparisonWord.AtMost => new Message("evidence.at-most"),
        ComparisonWord.LessThan => new Message("evidence.less-than"),
        ComparisonWord.AtLeast => new Message("evidence.at-least"),
        ComparisonWord.MoreThan => new Message("evidence.more-than"),
        _ => throw new ArgumentOutOfRangeException(nameof(word)),
    };

    /// <summary>What a rule says, in a word or two.</summary>
    public static Message Of(Verdict verdict) => verdict switch
    {
        Verdict.Met => new Message("evidence.met"),
        Verdict.FallsShort => new Message("evidence.falls-short"),
        Verdict.NotApplicable => new Message("evidence.not-applicable"),
        Verdict.NeedsJudgement => new Message("evidence.needs-judgement"),
        Verdict.NotChecked => new Message("evidence.not-checked"),
        _ => throw new ArgumentOutOfRangeException(nameof(verdict)),
    };

    /// <summary>How far a clause is handled.</summary>
    public static Message Of(ClauseStatus status) => status switch
    {
        ClauseStatus.Computed => new Message("evidence.status-computed"),
        ClauseStatus.Judgement => new Message("evidence.status-judgement"),
        ClauseStatus.Administrative => new Message("evidence.status-administrative"),
        ClauseStatus.NotYet => new Message("evidence.status-not-yet"),
        ClauseStatus.OutOfScope => new Message("evidence.status-out-of-scope"),
        _ => throw new ArgumentOutOfRangeException(nameof(status)),
    };
}
