using System.Globalization;
using Clomwright.Evidence;
using Clomwright.Files.Json;

namespace Clomwright.Files.Forms;

internal sealed class TextForm : Form<string>
{
    public override Kind Kind { get; } = new Kind.Text();

    public override bool TryRead(Node node, KeyPath path, Reading reading, out string value)
    {
        value = (node as TextNode)?.Value ?? "";
        return node is TextNode || reading.NotOfKind(path, node, "files.kind.text");
    }

    public override Piece Write(string value, UnitSystem units) => Piece.Of(value);
}

internal sealed class NumberForm : Form<double>
{
    public override Kind Kind { get; } = new Kind.Number();

    public override bool TryRead(Node node, KeyPath path, Reading reading, out double value)
    {
        value = (node as NumberNode)?.Value ?? 0;
        return node is NumberNode || reading.NotOfKind(path, node, "files.kind.number");
    }

    public override Piece Write(double value, UnitSystem units) => Piece.Of(value);
}

internal sealed class WholeForm : Form<int>
{
    public override Kind Kind { get; } = new Kind.Whole();

    public override bool TryRead(Node node, KeyPath path, Reading reading, out int value)
    {
        value = 0;
        if (node is not NumberNode number || number.Value != Math.Truncate(number.Value))
        {
            return reading.NotOfKind(path, node, "files.kind.whole");
        }

        if (Math.Abs(number.Value) > int.MaxValue)
        {
            reading.Problem(path, Message.Of("files.whole-huge", ("found", reading.Quote(node))));
            return false;
        }

        value = (int)number.Value;
        return true;
    }

    public override Piece Write(int value, UnitSystem units) => Piece.Of(value);
}

internal sealed class TruthForm : Form<bool>
{
    public override Kind Kind { get; } = new Kind.Truth();

    public override bool TryRead(Node node, KeyPath path, Reading reading, out bool value)
    {
        value = (node as TruthNode)?.Value ?? false;
        return node is TruthNode || reading.NotOfKind(path, node, "files.kind.truth");
    }

    public override Piece Write(bool value, UnitSystem units) => Piece.Of(value);
}

internal sealed class DateForm : Form<DateOnly>
{
    private const string Pattern = "yyyy-MM-dd";

    public override Kind Kind { get; } = new Kind.Date();

    public override bool TryRead(Node node, KeyPath path, Reading reading, out DateOnly value)
    {
        value = default;
        return (node is TextNode text && DateOnly.TryParseExact(text.Value, Pattern, CultureInfo.InvariantCulture, DateTimeStyles.None, out value))
            || reading.NotOfKind(path, node, "files.kind.date");
    }

    public override Piece Write(DateOnly value, UnitSystem units) => Piece.Of(value.ToString(Pattern, CultureInfo.InvariantCulture));
}

/// <summary>One of the words of an enumeration, in small letters.</summary>
internal sealed class WordForm<T> : Form<T> where T : struct, Enum
{
    private static readonly T[] Values = Enum.GetValues<T>();
    private static readonly Sequence<string> Words = AmongWords.Of(typeof(T));

    public override Kind Kind { get; } = new Kind.Word(Words);

    public override bool TryRead(Node node, KeyPath path, Reading reading, out T value)
    {
        value = default;
        if (!AmongWords.TryRead(node, Words, path, reading, out var index))
        {
            return false;
        }

        value = Values[index];
        return true;
    }

    public override Piece Write(T value, UnitSystem units) => Piece.Of(value.ToString().ToLowerInvariant());
}

/// <summary>Reads one of some words, or names the nearest one.</summary>
internal static class AmongWords
{
    /// <summary>The words of an enumeration. Asked by its type, for what is generic over an enumeration waits for the compiler once for each.</summary>
    public static Sequence<string> Of(Type enumeration) => Enum.GetNames(enumeration).Select(name => name.ToLowerInvariant()).ToSequence();

    public static bool TryRead(Node node, Sequence<string> words, KeyPath path, Reading reading, out int index)
    {
        var list = new Argument.List(words.Select(w => (Argument)w).ToSequence());
        index = -1;
        if (node is not TextNode text)
        {
            return reading.NotOfKind(path, node, "files.kind.word", ("words", list));
        }

        index = words.AsSpan().IndexOf(text.Value);
        if (index < 0)
        {
            reading.Problem(path, Message.Of("files.word-unknown", ("found", reading.Quote(node)), ("nearest", Nearest.To(text.Value, words)), ("words", list)));
        }

        return index >= 0;
    }
}
