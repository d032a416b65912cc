using Clomwright.Evidence;
using Clomwright.Files.Forms;
using Clomwright.Files.Json;

namespace Clomwright.Files.Typing;

/// <summary>Finds the changes of text that turn one house into another and leave everything else as its author typed it.</summary>
/// <param name="text">The author's text.</param>
/// <param name="leftOut">Items of lists that the old house does not have because they could not be read: they stay.</param>
internal sealed class Patch(string text, IReadOnlySet<Node> leftOut)
{
    private readonly string text = text;
    private readonly List<TextChange> changes = [];
    private readonly Layout layout = new(text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n");

    /// <summary>The text of the new house.</summary>
    /// <param name="root">The author's text, as nodes.</param>
    /// <param name="old">The house that the text was read as.</param>
    /// <param name="now">The house it should be.</param>
    public string Of(Node root, Piece old, Piece now)
    {
        Change(root, old, now);
        return TextChange.Apply(text, changes);
    }

    private void Change(Node node, Piece old, Piece now)
    {
        if (old.Equals(now))
        {
            return;
        }

        switch (node, old, now)
        {
            case (ObjectNode { Members.Count: > 0 } read, Piece.Members before, Piece.Members after):
                Members(read, before, after);
                break;
            case (ArrayNode { Items.Count: > 0 } read, Piece.Items before, Piece.Items after) when read.Items.Count(i => !leftOut.Contains(i)) == before.List.Count:
                Items(read, before.List, after.List);
                break;
            default:
                Replace(node, now);
                break;
        }
    }

    private void Replace(Node node, Piece now) =>
        changes.Add(new TextChange(node.Span.Start, node.Span.End, layout.Of(now, Column(node.Span.Start), IndentOfLine(node.Span.Start))));

    private void Members(ObjectNode read, Piece.Members before, Piece.Members after)
    {
        var kept = read.Members.Select(_ => true).ToArray();
        var places = new Dictionary<string, int>();
        for (var i = 0; i < kept.Length; i++)
        {
            var member = read.Members[i];
            if (places.TryAdd(member.Name, i) && before.Find(member.Name) is { } old && after.Find(member.Name) is null)
            {
                kept[i] = member.Value is ArrayNode array && array.Items.Any(leftOut.Contains);
                if (kept[i])
                {
                    Change(member.Value, old, new Piece.Items([]));
                }
            }
        }

        var elements = new Elements(this, read.Span, read.Members.Select(m => m.Span).ToArray(), kept);
        var last = -1;
        foreach (var (name, now) in after.List)
        {
            if (!places.TryGetValue(name, out var at))
            {
                elements.Insert(last, column => layout.Named(name, now, column), ownLine: false);
                continue;
            }

            last = Math.Max(last, at);
            if (before.Find(name) is { } old)
            {
                Change(read.Members[at].Value, old, now);
            }
            else if (now is not Piece.Items list || read.Members[at].Value is not ArrayNode)
            {
                Replace(read.Members[at].Value, now);
            }
            else
            {
                Change(read.Members[at].Value, new Piece.Items([]), list);
            }
        }

        elements.Settle();
    }

    private void Items(ArrayNode read, Sequence<Piece> before, Sequence<Piece> after)
    {
        var places = Enumerable.Range(0, read.Items.Count).Where(i => !leftOut.Contains(read.Items[i])).ToArray();
        var kept = read.Items.Select(_ => true).ToArray();
        var steps = Alignment.Of(before, after);
        foreach (var step in steps.Where(s => s.New < 0))
        {
            kept[places[step.Old]] = false;
        }

        var elements = new Elements(this, read.Span, read.Items.Select(i => i.Span).ToArray(), kept);
        var last = -1;
        foreach (var (old, now) in steps)
        {
            if (old < 0)
            {
                var piece = after[now];
                elements.Insert(last, column => layout.Of(piece, column, column), ownLine: piece is Piece.Members);
                continue;
            }

            last = places[old];
            if (now >= 0)
            {
                Change(read.Items[places[old]], before[old], after[now]);
            }
        }

        elements.Settle();
    }

    private int Column(int at) => at - LineStart(at);

    private int LineStart(int at) => at == 0 ? 0 : text.LastIndexOf('\n', at - 1) + 1;

    private int IndentOfLine(int at)
    {
        var start = LineStart(at);
        var end = start;
        while (end < at && text[end] is ' ' or '\t')
        {
            end++;
        }

        return end - start;
    }

    /// <summary>The members of an object or the items of a list, with commas and line breaks kept right as some go and others come.</summary>
    private sealed class Elements(Patch patch, TextSpan container, TextSpan[] spans, bool[] kept)
    {
        private readonly Dictionary<int, List<(Func<int, string> Text, bool OwnLine)>> inserted = [];

        /// <summary>Puts an element after another, or first (-1).</summary>
        public void Insert(int after, Func<int, string> element, bool ownLine)
        {
            while (after >= 0 && !kept[after])
            {
                after--;
            }

            if (!inserted.TryGetValue(after, out var list))
            {
                inserted[after] = list = [];
            }

            list.Add((element, ownLine));
        }

        /// <summary>Adds the changes of text.</summary>
        public void Settle()
        {
            if (!kept.Contains(true))
            {
                Refill();
                return;
            }

            for (var i = 0; i < spans.Length; i++)
            {
                if (!kept[i])
                {
                    var next = Array.IndexOf(kept, true, i);
                    patch.changes.Add(Removal(i, next < 0 ? spans.Length : next));
                    i = next < 0 ? spans.Length : next;
                }
            }

            foreach (var (after, list) in inserted)
            {
                if (after < 0)
                {
                    var first = Array.IndexOf(kept, true);
                    var gap = Gap(first, list[0].OwnLine);
                    patch.changes.Add(new TextChange(spans[first].Start, spans[first].Start, string.Concat(list.Select(e => e.Text(ColumnAfter(gap, first)) + "," + gap))));
                }
                else
                {
                    var gap = after == spans.Length - 1 ? Gap(after, list[0].OwnLine) : Gap(after + 1, ownLine: false);
                    patch.changes.Add(new TextChange(spans[after].End, spans[after].End, string.Concat(list.Select(e => "," + gap + e.Text(ColumnAfter(gap, after))))));
                }
            }
        }

        /// <summary>Takes out a run of elements with the comma and the gap on one side: the one after it where that leaves the line before it alone.</summary>
        private TextChange Removal(int first, int next)
        {
            var forward = first == 0 || (next < spans.Length && HasLineBreak(first) && !HasLineBreak(next));
            return forward
                ? new TextChange(spans[first].Start, spans[next].Start, "")
                : new TextChange(spans[first - 1].End, spans[next - 1].End, "");
        }

        private bool HasLineBreak(int element) =>
            patch.text.AsSpan((element == 0 ? container.Start + 1 : spans[element - 1].End)..spans[element].Start).Contains('\n');

        /// <summary>Nothing of the old is left: what comes takes the place between the brackets.</summary>
        private void Refill()
        {
            if (!inserted.TryGetValue(-1, out var list))
            {
                patch.changes.Add(new TextChange(container.Start + 1, container.End - 1, ""));
                return;
            }

            var gap = Gap(0, list[0].OwnLine);
            var column = ColumnAfter(gap, 0);
            patch.changes.Add(new TextChange(spans[0].Start, spans[^1].End, string.Join("," + gap, list.Select(e => e.Text(column)))));
        }

        /// <summary>What stands between an element and its neighbour, apart from the comma: a line break with its indent, or a space.</summary>
        private string Gap(int element, bool ownLine)
        {
            var from = element == 0 ? container.Start + 1 : spans[element - 1].End;
            var between = patch.text[from..spans[element].Start].Replace(",", "", StringComparison.Ordinal);
            var lineBreak = between.LastIndexOf('\n');
            return lineBreak >= 0 ? patch.layout.Newline + between[(lineBreak + 1)..]
                : ownLine ? patch.layout.Newline + new string(' ', patch.Column(spans[element].Start))
                : " ";
        }

        private int ColumnAfter(string gap, int element) =>
            gap == " " ? patch.Column(spans[element].End) + 2 : gap.Length - patch.layout.Newline.Length;
    }
}
