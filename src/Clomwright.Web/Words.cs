using Clomwright.Evidence;

namespace Clomwright.Web;

/// <summary>The words of this room, in the one language that this process speaks at a time.</summary>
internal static class Words
{
    private const string Room = "web.";

    /// <summary>The language of every page: set before the workbench starts, and again where a reader chooses another.</summary>
    public static Phrasebook Book { get; private set; } = Phrasebook.English;

    /// <summary>The words that the page speaks, by key, and under <c>lang</c> the language; their places stay open as <c>{name}</c>.</summary>
    public static IReadOnlyDictionary<string, string> OfPage { get; private set; } = Of(Phrasebook.English);

    /// <summary>Takes a language until the next is taken.</summary>
    public static void Speak(Phrasebook book) => (Book, OfPage) = (book, Of(book));

    /// <summary>One sentence of this room.</summary>
    public static string Say(string key, params ReadOnlySpan<(string Name, Argument Value)> arguments) => Book.Say(Message.Of(key, arguments), UnitSystem.Metric);

    private static Dictionary<string, string> Of(Phrasebook book) => Phrasebook.English.Keys.Where(key => key.StartsWith(Room, StringComparison.Ordinal))
        .Select(key => KeyValuePair.Create(key, book.Say(new Message(key), UnitSystem.Metric))).Append(new("lang", book.Language)).ToDictionary();
}
