namespace Clomwright.Files.Json;

/// <summary>A stretch of the text, from a first character to before an end.</summary>
internal readonly record struct TextSpan(int Start, int End);

/// <summary>A value of a JSON text with the place where it stands, so that it can be changed without touching its neighbours.</summary>
internal abstract class Node(TextSpan span)
{
    public TextSpan Span { get; } = span;
}

/// <summary>A key of an object with its value.</summary>
internal sealed record Member(string Name, TextSpan NameSpan, Node Value)
{
    public TextSpan Span => new(NameSpan.Start, Value.Span.End);
}

/// <summary><c>{ … }</c>. A key written twice stands twice.</summary>
internal sealed class ObjectNode(TextSpan span, IReadOnlyList<Member> members) : Node(span)
{
    public IReadOnlyList<Member> Members { get; } = members;

    /// <summary>The first member of a name, or null.</summary>
    public Member? Find(string name) => Members.FirstOrDefault(m => m.Name == name);
}

/// <summary><c>[ … ]</c>.</summary>
internal sealed class ArrayNode(TextSpan span, IReadOnlyList<Node> items) : Node(span)
{
    public IReadOnlyList<Node> Items { get; } = items;
}

/// <summary>A text in quotes, escapes resolved.</summary>
internal sealed class TextNode(TextSpan span, string value) : Node(span)
{
    public string Value { get; } = value;
}

/// <summary>A number; always finite.</summary>
internal sealed class NumberNode(TextSpan span, double value) : Node(span)
{
    public double Value { get; } = value;
}

/// <summary><c>true</c> or <c>false</c>.</summary>
internal sealed class TruthNode(TextSpan span, bool value) : Node(span)
{
    public bool Value { get; } = value;
}

/// <summary><c>null</c>.</summary>
internal sealed class NullNode(TextSpan span) : Node(span);
