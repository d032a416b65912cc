namespace Clomwright.Numerics;

/// <summary>Marks one of the few public types here whose state changes, and says why. A test counts them by this name, as it does elsewhere.</summary>
[AttributeUsage(AttributeTargets.Class)]
internal sealed class MutableAttribute(string why) : Attribute
{
    /// <summary>The reason.</summary>
    public string Why { get; } = why;
}
