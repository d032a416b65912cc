using System.Text;
using Clomwright.Evidence;
using Clomwright.Files.Forms;

namespace Clomwright.Files.Typing;

/// <summary>Lays pieces out as people write them: what fits stands on one line, lists of objects take a line each, and longer objects are filled line by line.</summary>
/// <param name="newline">How a line ends.</param>
internal sealed class Layout(string newline)
{
    /// <summary>The longest line, in characters.</summary>
    public const int Width = 140;

    private const int Indent = 2;

    /// <summary>How a line ends.</summary>
    public string Newline => newline;

    /// <summary>A whole file: the first object with one key a line.</summary>
    public string File(Piece.Members house)
    {
        var text = new StringBuilder("{");
        for (var i = 0; i < house.List.Count; i++)
        {
            var (name, value) = house.List[i];
            text.Append(i == 0 ? newline : "," + newline).Append(' ', Indent).Append(Named(name, value, Indent));
        }

        return text.Append(newline).Append('}').Append(newline).ToString();
    }

    /// <summary>A key with its value, beginning at a column (from 0).</summary>
    public string Named(string name, Piece value, int column)
    {
        var key = Piece.Quoted(name) + ": ";
        return key + Of(value, column + key.Length, column);
    }

    /// <summary>A value beginning at a column (from 0), on a line indented by some spaces.</summary>
    public string Of(Piece piece, int column, int indent) => piece switch
    {
        Piece.Items { List.Count: > 0 } items when items.List[0] is Piece.Members => Block(items.List, indent),
        _ when column + OneLine(piece).Length <= Width && !HasBlock(piece) => OneLine(piece),
        Piece.Members members => "{ " + Filled(members.List.Select(m => Element.Of(m)), column + 2) + " }",
        Piece.Items items => "[" + Filled(items.List.Select(i => Element.Of(i)), column + 1) + "]",
        _ => OneLine(piece),
    };

    private static string OneLine(Piece piece) => piece switch
    {
        Piece.Token token => token.Text,
        Piece.Items items => "[" + string.Join(", ", items.List.Select(OneLine)) + "]",
        Piece.Members { List.Count: 0 } => "{}",
        Piece.Members members => "{ " + string.Join(", ", members.List.Select(m => $"{Piece.Quoted(m.Name)}: {OneLine(m.Value)}")) + " }",
        _ => throw new ArgumentOutOfRangeException(nameof(piece)),
    };

    /// <summary>Whether a list of objects lies inside: those are read line by line.</summary>
    private static bool HasBlock(Piece piece) => piece is Piece.Members members
        && members.List.Any(m => m.Value is Piece.Items { List: [Piece.Members, ..] } || HasBlock(m.Value));

    private string Block(Sequence<Piece> items, int indent)
    {
        var text = new StringBuilder("[");
        for (var i = 0; i < items.Count; i++)
        {
            text.Append(i == 0 ? newline : "," + newline).Append(' ', indent + Indent).Append(Of(items[i], indent + Indent, indent + Indent));
        }

        return text.Append(newline).Append(' ', indent).Append(']').ToString();
    }

    private readonly record struct Element(string Key, Piece Value)
    {
        public static Element Of((string Name, Piece Value) member) => new(Piece.Quoted(member.Name) + ": ", member.Value);

        public static Element Of(Piece item) => new("", item);

        public int Length => Key.Length + OneLine(Value).Length;
    }

    private string Filled(IEnumerable<Element> elements, int column)
    {
        var text = new StringBuilder();
        var at = column;
        var broken = false;
        foreach (var element in elements)
        {
            var block = HasBlock(new Piece.Members([("", element.Value)]));
            if (text.Length > 0)
            {
                var breaks = broken || block || at + 2 + element.Length + 2 > Width;
                text.Append(breaks ? "," + newline + new string(' ', column) : ", ");
                at = breaks ? column : at + 2;
            }

            var written = element.Key + Of(element.Value, at + element.Key.Length, column);
            text.Append(written);
            at += written.Length;
            broken = block;
        }

        return text.ToString();
    }
}
