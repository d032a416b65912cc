using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Globalization;
using System.Text.Json;

namespace Clomwright.Evidence;

/// <summary>Turns messages into the words of one language. Quantities come in both unit systems.</summary>
/// <remarks>
/// The words are in <c>data/words/&lt;language&gt;/&lt;room&gt;.json</c>, a flat object from key to text; <c>language.json</c> has
/// the date, the months and the joints of a list. In a text, <c>{name}</c> is an argument and <c>{n|one batch|{n} batches}</c>
/// chooses by whether <c>n</c> is 1. A key without words in a language falls back to the English ones between <c>⟨</c> and <c>⟩</c>;
/// one that English lacks too shows as <c>[key]</c>, an argument that was not given as <c>{name}</c>. <c>language.decimal</c> is
/// the mark between whole and parts, <c>language.thousands</c> that between thousands, in what is printed for people; nothing printed is meant to be read back.
/// </remarks>
public sealed partial class Phrasebook
{
    private const string Folder = "words/";
    private const string OfEnglish = "en";

    private static readonly ConcurrentDictionary<string, Phrasebook> Read = new(StringComparer.Ordinal);

    private readonly FrozenDictionary<string, Phrase> phrases;
    private readonly Phrasebook? otherwise;

    private Phrasebook(string language, IEnumerable<KeyValuePair<string, string>> texts, Phrasebook? otherwise)
    {
        Language = language;
        this.otherwise = otherwise;
        phrases = texts.ToFrozenDictionary(t => t.Key, t => Parsed(t.Key, t.Value), StringComparer.Ordinal);
        decimalMark = phrases.ContainsKey("language.decimal") ? Plain("language.decimal") : ".";
        thousandsMark = phrases.ContainsKey("language.thousands") ? Plain("language.thousands") : "";
    }

    /// <summary>English.</summary>
    public static Phrasebook English { get; } = In(OfEnglish);

    /// <summary>The language, as in BCP 47.</summary>
    public string Language { get; }

    /// <summary>What English has words for and this language has not: said in English, and marked.</summary>
    public Sequence<string> Missing => otherwise is null ? [] : otherwise.phrases.Keys.Where(key => !phrases.ContainsKey(key)).Order(StringComparer.Ordinal).ToSequence();

    /// <summary>The languages there are words for.</summary>
    public static Sequence<string> Languages => Resources().Select(name => name.Split('/')[1]).Distinct().Order(StringComparer.Ordinal).ToSequence();

    /// <summary>Every key that has words.</summary>
    public Sequence<string> Keys => phrases.Keys.Order(StringComparer.Ordinal).ToSequence();

    /// <summary>The phrasebook of a language, read once.</summary>
    /// <param name="language">One of <see cref="Languages"/>.</param>
    public static Phrasebook In(string language) => Read.GetOrAdd(language, static wanted =>
    {
        var files = Resources().Where(name => name.StartsWith($"{Folder}{wanted}/", StringComparison.Ordinal)).ToArray();
        return files.Length > 0 ? new(wanted, files.SelectMany(Texts), wanted == OfEnglish ? null : English)
            : throw new ArgumentOutOfRangeException(nameof(language), wanted, "There are no words for this language.");
    });

    /// <summary>A phrasebook of given texts; each key once.</summary>
    /// <param name="texts">The words by their keys.</param>
    /// <param name="otherwise">Where words are taken from, and marked, that these lack.</param>
    public static Phrasebook Of(IEnumerable<KeyValuePair<string, string>> texts, Phrasebook? otherwise = null) => new("und", texts, otherwise);

    /// <summary>The names of the arguments that the words of a key use; none for a key without words.</summary>
    public Sequence<string> Arguments(string key) => phrases.TryGetValue(key, out var phrase) ? phrase.Names.ToSequence() : [];

    /// <summary>A message in words.</summary>
    public string Say(Message message, UnitSystem first) =>
        phrases.TryGetValue(message.Key, out var phrase) ? Filled(phrase, message.Arguments, first)
        : otherwise is not null && otherwise.phrases.TryGetValue(message.Key, out var english) ? $"⟨{Filled(english, message.Arguments, first)}⟩"
        : $"[{message.Key}]";

    /// <summary>An argument in words.</summary>
    public string Say(Argument argument, UnitSystem first) => argument switch
    {
        Argument.Text text => OneLine.Of(text.Value),
        Argument.Subject subject => Subject(subject.Value),
        Argument.Material material => Material(material.Value),
        Argument.Work work => Title(work.Value),
        Argument.Quantity quantity => Say(quantity.Value, first),
        Argument.Exact exact => Marked(AmountText.Exact(exact.Value, first)),
        Argument.Date date => Say(date.Value),
        Argument.Nested nested => Say(nested.Value, first),
        Argument.List list => Joined([.. list.Items.Select(item => Say(item, first))]),
        _ => throw new ArgumentOutOfRangeException(nameof(argument)),
    };

    /// <summary>A quantity in both systems, rounded to what a tape or a scale can read.</summary>
    public string Say(Amount value, UnitSystem first) => value.Dimension == Dimension.Days
        ? Say(Message.Of("language.days", ("n", Amount.Number(double.Round(value.Si, value.Si < 10 ? 1 : 0)))), first)
        : Marked(AmountText.Both(value, first));

    /// <summary>A date: <c>12 June 2027</c>.</summary>
    public string Say(DateOnly date) => Say(
        Message.Of(
            "language.date",
            ("day", date.Day.ToString(CultureInfo.InvariantCulture)),
            ("month", new Message($"language.month-{date.Month}")),
            ("year", date.Year.ToString(CultureInfo.InvariantCulture))),
        UnitSystem.Metric);

    private string Joined(string[] items) => items switch
    {
        [] => Plain("language.list-empty"),
        [var only] => only,
        [.. var rest, var last] => string.Join(Plain("language.list-between"), rest) + Plain("language.list-last") + last,
    };

    private string Plain(string key) => Say(new Message(key), UnitSystem.Metric);

    private string Filled(Phrase phrase, Sequence<NamedArgument> arguments, UnitSystem first) => string.Concat(phrase.Pieces.Select(piece => piece switch
    {
        Phrase.Piece.Words words => words.Text,
        Phrase.Piece.Place place => Find(arguments, place.Name) is { } argument ? Say(argument, first) : $"{{{place.Name}}}",
        Phrase.Piece.Measure both => first == UnitSystem.Imperial ? Both(both.Imperial, both.Metric, arguments, first) : Both(both.Metric, both.Imperial, arguments, first),
        Phrase.Piece.Choice choice => Filled(IsOne(Find(arguments, choice.Name)) ? choice.One : choice.Other, arguments, first),
        _ => throw new ArgumentOutOfRangeException(nameof(phrase)),
    }));

    private string Both(Phrase one, Phrase other, Sequence<NamedArgument> arguments, UnitSystem first) => $"{Filled(one, arguments, first)} ({Filled(other, arguments, first)})";

    private static Argument? Find(Sequence<NamedArgument> arguments, string name) => arguments.FirstOrDefault(a => a.Name == name)?.Value;

    private static bool IsOne(Argument? argument) => argument is Argument.Quantity { Value.Si: 1 };

    private static Phrase Parsed(string key, string text)
    {
        try
        {
            return Phrase.Parse(text);
        }
        catch (FormatException wrong)
        {
            throw new FormatException($"{key}: {wrong.Message}", wrong);
        }
    }

    private static IEnumerable<string> Resources() =>
        typeof(Phrasebook).Assembly.GetManifestResourceNames().Where(name => name.StartsWith(Folder, StringComparison.Ordinal));

    private static IEnumerable<KeyValuePair<string, string>> Texts(string resource)
    {
        using var stream = typeof(Phrasebook).Assembly.GetManifestResourceStream(resource)!;
        using var document = JsonDocument.Parse(stream);
        return [.. document.RootElement.EnumerateObject().Select(p => KeyValuePair.Create(p.Name, p.Value.GetString() ?? ""))];
    }
}
