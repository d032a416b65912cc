namespace Clomwright.Building;

/// <summary>A number of the program that the author knows better: it stands in place of the assumption of that key.</summary>
/// <param name="Key">Key of the assumption, as papers print it.</param>
/// <param name="Value">In SI units; shares of 1, not per cent.</param>
public sealed record AssumedNumber(string Key, double Value)
{
    /// <summary>Why, and who says so.</summary>
    public string? Note { get; init; }
}
