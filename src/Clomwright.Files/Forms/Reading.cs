using Clomwright.Evidence;
using Clomwright.Files.Json;

namespace Clomwright.Files.Forms;

/// <summary>A place in the house file, spelled out only when something is wrong there.</summary>
internal sealed record KeyPath(KeyPath? Inside, string? Key, int Index)
{
    public static KeyPath Root { get; } = new(null, null, 0);

    public KeyPath this[string key] => new(this, key, 0);

    public KeyPath this[int index] => new(this, null, index);

    /// <summary><c>openings[2].width</c>; empty for the whole file.</summary>
    public override string ToString() =>
        Inside is null ? "" : Key is null ? $"{Inside}[{Index}]" : Inside.Inside is null ? OneLine.Of(Key) : $"{Inside}.{OneLine.Of(Key)}";
}

/// <summary>One reading of a house file: gathers what is wrong, and which items of lists were left out because of it.</summary>
internal sealed class Reading(string text)
{
    private const int QuoteMost = 40;
    private const int ProblemsMost = 200;

    private readonly List<Diagnostic> diagnostics = [];
    private readonly HashSet<Node> dropped = [];

    public Sequence<Diagnostic> Diagnostics => diagnostics.ToSequence();

    /// <summary>Items of lists that could not be read and were left out.</summary>
    public IReadOnlySet<Node> Dropped => dropped;

    public void Drop(Node item) => dropped.Add(item);

    /// <summary>Whether so much is wrong that nobody would read more: reading stops.</summary>
    public bool Full => diagnostics.Count >= ProblemsMost;

    public void Problem(KeyPath path, Message what)
    {
        if (!Full)
        {
            diagnostics.Add(new Diagnostic(path.ToString(), what));
        }
    }

    /// <summary>Something else stands where a kind of value should.</summary>
    /// <param name="path">Where.</param>
    /// <param name="node">What stands there.</param>
    /// <param name="expected">Key of the words for what should: what it is called and how it is written.</param>
    /// <param name="arguments">Arguments of those words.</param>
    public bool NotOfKind(KeyPath path, Node node, string expected, params ReadOnlySpan<(string Name, Argument Value)> arguments)
    {
        Problem(path, node is NullNode
            ? Message.Of("files.null", ("expected", Message.Of(expected, arguments)))
            : Message.Of("files.wrong-kind", ("found", Quote(node)), ("expected", Message.Of(expected, arguments))));
        return false;
    }

    /// <summary>The author's own text of a node, cut short if it is long.</summary>
    public string Quote(Node node)
    {
        switch (node)
        {
            case ObjectNode:
                return "{ … }";
            case ArrayNode:
                return "[ … ]";
            default:
                var (start, end) = node.Span;
                if (end - start <= QuoteMost)
                {
                    return text[start..end];
                }

                return text[start..(start + QuoteMost - (char.IsHighSurrogate(text[start + QuoteMost - 1]) ? 1 : 0))] + "…";
        }
    }
}
