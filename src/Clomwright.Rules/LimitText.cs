using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>Reads the limits that data files and users write.</summary>
internal static class LimitText
{
    /// <summary>Reads a limit: a quantity with its unit, or the letter of a seismic design category, which counts from A = 1.</summary>
    /// <param name="written">As written.</param>
    /// <param name="measures">What it has to measure.</param>
    /// <param name="limit">The limit; null when there is a problem.</param>
    /// <param name="problem">What is wrong and what would be right; null when it was read.</param>
    public static bool TryRead(string written, Dimension measures, out Limit? limit, out Message? problem)
    {
        var text = written.Trim();
        if (measures == Dimension.Count && text is [>= 'A' and <= 'F'])
        {
            (limit, problem) = (new Limit(text, Amount.Count(text[0] - 'A' + 1)), null);
            return true;
        }

        QuantityText.TryParse(text, measures, out var value, out problem);
        problem ??= value.Si < 0 ? Message.Of("rules.because.limit-negative", ("limit", text)) : null;
        limit = problem is null ? new Limit(text, value) : null;
        return problem is null;
    }
}
