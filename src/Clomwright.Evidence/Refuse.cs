namespace Clomwright.Evidence;

/// <summary>What the records of evidence never hold: an empty key, nothing where something is due.</summary>
internal static class Refuse
{
    internal static string Empty(string text)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text);
        return text;
    }

    internal static T Null<T>(T value) where T : class
    {
        ArgumentNullException.ThrowIfNull(value);
        return value;
    }

    internal static Sequence<T> None<T>(Sequence<T> items) =>
        items.Count > 0 ? items : throw new ArgumentException("At least one is needed.", nameof(items));
}
