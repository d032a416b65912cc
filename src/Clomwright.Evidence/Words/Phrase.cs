namespace Clomwright.Evidence;

/// <summary>The words of one message in one language, with places for its arguments.</summary>
/// <remarks>
/// <c>{name}</c> is the argument of that name. <c>{n|one batch|{n} batches}</c> is the first form when the argument is 1 and the
/// second otherwise. <c>{=2 in|50 mm}</c> is one measure in both systems, the one that comes first before the other in brackets.
/// Braces and, within them, bars have no other use.
/// </remarks>
internal sealed record Phrase(Sequence<Phrase.Piece> Pieces)
{
    internal abstract record Piece
    {
        internal sealed record Words(string Text) : Piece;

        internal sealed record Place(string Name) : Piece;

        internal sealed record Measure(Phrase Imperial, Phrase Metric) : Piece;

        internal sealed record Choice(string Name, Phrase One, Phrase Other) : Piece;
    }

    /// <summary>The names of the arguments that the words use, each once.</summary>
    internal IEnumerable<string> Names => Pieces.SelectMany(piece => piece switch
    {
        Piece.Place place => [place.Name],
        Piece.Choice choice => [choice.Name, .. choice.One.Names, .. choice.Other.Names],
        _ => Enumerable.Empty<string>(),
    }).Distinct();

    /// <summary>Reads a phrase.</summary>
    /// <exception cref="FormatException">Braces or bars do not fit together.</exception>
    internal static Phrase Parse(string text)
    {
        var at = 0;
        var phrase = Read(text, ref at, inside: false);
        return at == text.Length ? phrase : throw Wrong(text, at);
    }

    private static Phrase Read(string text, ref int at, bool inside)
    {
        var pieces = new List<Piece>();
        while (at < text.Length && text[at] != '}' && !(inside && text[at] == '|'))
        {
            if (text[at] == '{')
            {
                pieces.Add(ReadPlace(text, ref at));
                continue;
            }

            var start = at;
            while (at < text.Length && text[at] is not ('{' or '}') && !(inside && text[at] == '|'))
            {
                at++;
            }

            pieces.Add(new Piece.Words(text[start..at]));
        }

        return new Phrase(pieces.ToSequence());
    }

    private static Piece ReadPlace(string text, ref int at)
    {
        ++at;
        if (Takes(text, ref at, '='))
        {
            var imperial = Read(text, ref at, inside: true);
            Expect(text, ref at, '|');
            var metric = Read(text, ref at, inside: true);
            Expect(text, ref at, '}');
            return new Piece.Measure(imperial, metric);
        }

        var start = at;
        while (at < text.Length && (char.IsAsciiLetterOrDigit(text[at]) || text[at] == '-'))
        {
            at++;
        }

        var name = text[start..at];
        if (name.Length == 0)
        {
            throw Wrong(text, at);
        }

        if (Takes(text, ref at, '}'))
        {
            return new Piece.Place(name);
        }

        Expect(text, ref at, '|');
        var one = Read(text, ref at, inside: true);
        Expect(text, ref at, '|');
        var other = Read(text, ref at, inside: true);
        Expect(text, ref at, '}');
        return new Piece.Choice(name, one, other);
    }

    private static bool Takes(string text, ref int at, char mark)
    {
        var there = at < text.Length && text[at] == mark;
        at += there ? 1 : 0;
        return there;
    }

    private static void Expect(string text, ref int at, char mark)
    {
        if (!Takes(text, ref at, mark))
        {
            throw Wrong(text, at);
        }
    }

    private static FormatException Wrong(string text, int at) => new($"The phrase \"{text}\" goes wrong at character {at + 1}.");
}
