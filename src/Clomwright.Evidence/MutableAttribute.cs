namespace Clomwright.Evidence;

/// <summary>Marks one of the few public types of a pure room whose state changes, and says why. A test knows how many there are.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Struct)]
public sealed class MutableAttribute(string why) : Attribute
{
    /// <summary>The reason.</summary>
    public string Why { get; } = why;
}
