using Clomwright.Evidence;

namespace Clomwright.Web;

/// <summary>The words of this room.</summary>
internal static class Words
{
    private const string Room = "web.";

    /// <summary>The words that the page speaks, by key; their places stay open as <c>{name}</c>.</summary>
    public static IReadOnlyDictionary<string, string> OfPage { get; } =
        Phrasebook.English.Keys.Where(key => key.StartsWith(Room, StringComparison.Ordinal)).ToDictionary(key => key, key => Say(key));

    /// <summary>One sentence of this room.</summary>
    public static string Say(string key, params ReadOnlySpan<(string Name, Argument Value)> arguments) =>
        Phrasebook.English.Say(Message.Of(key, arguments), UnitSystem.Metric);
}
