using Clomwright.Evidence;

namespace Clomwright.Analysis;

/// <summary>A result, or why there is none. What is not known is never taken as nothing.</summary>
/// <param name="Value">The result; default when it is not known.</param>
/// <param name="NotChecked">Why it is not known; null when it is.</param>
public readonly record struct Known<T>(T? Value, Message? NotChecked) where T : class
{
    /// <summary>Whether there is a result.</summary>
    public bool Is => NotChecked is null;

    /// <summary>A result.</summary>
    public static implicit operator Known<T>(T value) => new(value, null);

    /// <summary>A reason.</summary>
    public static implicit operator Known<T>(Message because) => new(null, because);
}
