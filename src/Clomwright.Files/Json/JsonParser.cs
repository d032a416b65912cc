using System.Globalization;
using System.Text;
using Clomwright.Evidence;

namespace Clomwright.Files.Json;

/// <summary>What stops a text from being JSON, and where.</summary>
internal sealed class JsonSyntaxException(int at, string key, params (string Name, Argument Value)[] arguments) : Exception
{
    public int At { get; } = at;

    public string Key { get; } = key;

    public IReadOnlyList<(string Name, Argument Value)> Arguments { get; } = arguments;
}

/// <summary>Reads JSON (RFC 8259, strictly) into nodes that keep their places. One use reads one text.</summary>
internal sealed class JsonParser(string text)
{
    /// <summary>A house file is at most six deep; anything far deeper is not one, and must not exhaust the stack.</summary>
    public const int DepthMost = 32;

    private int at;

    /// <exception cref="JsonSyntaxException">The text is not JSON.</exception>
    public Node Parse()
    {
        SkipSpace();
        if (at == text.Length)
        {
            throw Wrong(at, "files.empty");
        }

        var root = Value(0);
        SkipSpace();
        return at == text.Length ? root : throw Wrong(at, "files.syntax-after-end", ("found", Found(at)));
    }

    private Node Value(int depth)
    {
        if (depth > DepthMost)
        {
            throw Wrong(at, "files.too-deep", ("most", DepthMost));
        }

        return Peek() switch
        {
            '{' => Object(depth),
            '[' => Array(depth),
            '"' => Text(),
            '-' or (>= '0' and <= '9') => Number(),
            '\0' when at == text.Length => throw Wrong(at, "files.syntax-ends"),
            _ => Word(),
        };
    }

    private ObjectNode Object(int depth)
    {
        var start = at++;
        var members = new List<Member>();
        for (var first = true; !Closes('}', start, first); first = false)
        {
            if (Peek() != '"')
            {
                throw Wrong(at, "files.syntax-key", ("found", Found(at)));
            }

            var name = Text();
            SkipSpace();
            if (Peek() != ':')
            {
                throw Wrong(at, "files.syntax-colon", ("key", name.Value), ("found", Found(at)));
            }

            at++;
            SkipSpace();
            members.Add(new Member(name.Value, name.Span, Value(depth + 1)));
        }

        return new ObjectNode(new TextSpan(start, at), members);
    }

    private ArrayNode Array(int depth)
    {
        var start = at++;
        var items = new List<Node>();
        for (var first = true; !Closes(']', start, first); first = false)
        {
            items.Add(Value(depth + 1));
        }

        return new ArrayNode(new TextSpan(start, at), items);
    }

    /// <summary>Passes a closing bracket, or the comma before the next element.</summary>
    private bool Closes(char bracket, int start, bool first)
    {
        SkipSpace();
        if (Peek() == bracket)
        {
            at++;
            return true;
        }

        if (at == text.Length)
        {
            throw Wrong(at, "files.syntax-unclosed", ("bracket", bracket.ToString()), ("open", text[start].ToString()), ("from", text.AsSpan(0, start).Count('\n') + 1));
        }

        if (first)
        {
            return false;
        }

        if (Peek() != ',')
        {
            throw Wrong(at, Peek() is '}' or ']' ? "files.syntax-bracket" : "files.syntax-comma", ("found", Found(at)), ("bracket", bracket.ToString()));
        }

        var comma = at++;
        SkipSpace();
        return Peek() is '}' or ']' ? throw Wrong(comma, "files.syntax-trailing-comma", ("bracket", Peek().ToString())) : false;
    }

    private TextNode Text()
    {
        var start = at++;
        var value = new StringBuilder();
        while (true)
        {
            var c = at == text.Length ? '\n' : text[at];
            switch (c)
            {
                case '"':
                    at++;
                    return new TextNode(new TextSpan(start, at), Whole(start, value.ToString()));
                case '\n' or '\r':
                    throw Wrong(start, "files.syntax-quote");
                case < ' ':
                    throw Wrong(at, "files.syntax-control", ("code", $"\\u{(int)c:x4}"));
                case '\\':
                    value.Append(Escaped());
                    break;
                default:
                    value.Append(c);
                    at++;
                    break;
            }
        }
    }

    private char Escaped()
    {
        var start = at++;
        var c = Peek();
        at++;
        switch (c)
        {
            case '"' or '\\' or '/':
                return c;
            case 'b':
                return '\b';
            case 'f':
                return '\f';
            case 'n':
                return '\n';
            case 'r':
                return '\r';
            case 't':
                return '\t';
            case 'u' when at + 4 <= text.Length && ushort.TryParse(text.AsSpan(at, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var code):
                at += 4;
                return (char)code;
            default:
                throw Wrong(start, "files.syntax-escape", ("found", Shorten(text[start..Math.Min(start + (c == 'u' ? 6 : 2), text.Length)])));
        }
    }

    /// <summary>Refuses half a character (a lone surrogate), which no encoding can keep.</summary>
    private static string Whole(int start, string value)
    {
        for (var i = 0; i < value.Length; i++)
        {
            if (char.IsHighSurrogate(value[i]) && i + 1 < value.Length && char.IsLowSurrogate(value[i + 1]))
            {
                i++;
            }
            else if (char.IsSurrogate(value[i]))
            {
                throw Wrong(start, "files.syntax-half-character");
            }
        }

        return value;
    }

    private NumberNode Number()
    {
        var start = at;
        while (Peek() is '-' or '+' or '.' or 'e' or 'E' or (>= '0' and <= '9'))
        {
            at++;
        }

        var token = text[start..at];
        var digits = token[0] == '-' ? token.AsSpan(1) : token;
        var written = digits.Length > 0 && char.IsAsciiDigit(digits[0]) && (digits.Length == 1 || digits[0] != '0' || !char.IsAsciiDigit(digits[1]))
            && !token.Contains(".e", StringComparison.OrdinalIgnoreCase) && !token.EndsWith('.')
            && double.TryParse(token, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            ? value
            : double.NaN;
        if (double.IsNaN(written) || char.IsLetter(Peek()))
        {
            at = start;
            throw Wrong(start, "files.syntax-number", ("found", Found(start)));
        }

        return double.IsFinite(written) ? new NumberNode(new TextSpan(start, at), written) : throw Wrong(start, "files.number-huge", ("found", Shorten(token)));
    }

    private Node Word()
    {
        var start = at;
        var word = Found(at);
        at += word.Length;
        var span = new TextSpan(start, at);
        return word switch
        {
            "true" => new TruthNode(span, true),
            "false" => new TruthNode(span, false),
            "null" => new NullNode(span),
            "NaN" or "Infinity" or "nan" or "inf" => throw Wrong(start, "files.syntax-nan", ("found", word)),
            _ when word[0] == '\'' => throw Wrong(start, "files.syntax-single-quote"),
            _ when char.IsLetter(word[0]) => throw Wrong(start, "files.syntax-word", ("found", word)),
            _ => throw Wrong(start, "files.syntax-value", ("found", word)),
        };
    }

    private void SkipSpace()
    {
        while (Peek() is ' ' or '\t' or '\n' or '\r' && at < text.Length)
        {
            at++;
        }

        if (Peek() is '#' || (Peek() == '/' && at + 1 < text.Length && text[at + 1] is '/' or '*'))
        {
            throw Wrong(at, "files.syntax-comment");
        }
    }

    private char Peek() => at < text.Length ? text[at] : '\0';

    /// <summary>The word or mark that stands at a place, short enough to be quoted.</summary>
    private string Found(int start)
    {
        if (start >= text.Length)
        {
            return "";
        }

        var end = start;
        while (end < text.Length && (char.IsLetterOrDigit(text[end]) || text[end] is '.' or '-' or '+' or '_'))
        {
            end++;
        }

        end = Math.Max(end, Math.Min(start + (char.IsHighSurrogate(text[start]) ? 2 : 1), text.Length));
        return Shorten(text[start..end]);
    }

    private static string Shorten(string found) => found.Length <= 24 ? found : found[..(char.IsHighSurrogate(found[23]) ? 23 : 24)];

    private static JsonSyntaxException Wrong(int place, string key, params (string Name, Argument Value)[] arguments) => new(place, key, arguments);
}
