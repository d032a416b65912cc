using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>The parts of which sentences about rules are made.</summary>
internal static class Words
{
    /// <summary>The word of a comparison as the words files key it.</summary>
    public static string Of(ComparisonWord word) => word switch
    {
        ComparisonWord.AtMost => "at-most",
        ComparisonWord.LessThan => "less-than",
        ComparisonWord.AtLeast => "at-least",
        _ => "more-than",
    };

    /// <summary>A limit as it is read: in both unit systems, or the letter of a category.</summary>
    public static Argument Of(Limit limit) => limit.Written is [>= 'A' and <= 'F'] ? limit.Written : limit.Value;

    /// <summary>A source as it is printed inside a sentence, with how sure we are where we are not.</summary>
    public static Message Of(Source source) => source.Surety switch
    {
        Surety.Memory => Message.Of("rules.source.memory", ("source", source)),
        Surety.SecondHand => Message.Of("rules.source.second-hand", ("source", source)),
        _ => Message.Of("rules.source.plain", ("source", source)),
    };
}
