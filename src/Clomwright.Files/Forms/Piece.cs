using System.Globalization;
using System.Text;
using Clomwright.Evidence;

namespace Clomwright.Files.Forms;

/// <summary>A value to be written, without layout. Equal values are equal pieces.</summary>
internal abstract record Piece
{
    /// <summary>One token, as it stands in the file.</summary>
    public sealed record Token(string Text) : Piece;

    /// <summary>A list.</summary>
    public sealed record Items(Sequence<Piece> List) : Piece;

    /// <summary>An object.</summary>
    public sealed record Members(Sequence<(string Name, Piece Value)> List) : Piece
    {
        /// <summary>The value of a key, or null.</summary>
        public Piece? Find(string name) => List.FirstOrDefault(m => m.Name == name).Value;
    }

    public static Piece Of(string text) => new Token(Quoted(text));

    public static Piece Of(bool truth) => new Token(truth ? "true" : "false");

    public static Piece Of(int whole) => new Token(whole.ToString(CultureInfo.InvariantCulture));

    /// <summary>A number that reads back the same. What is no number becomes a text, which is refused when it is read and never breaks the file.</summary>
    public static Piece Of(double number) =>
        double.IsFinite(number) ? new Token(number.ToString("R", CultureInfo.InvariantCulture)) : Of(number.ToString(CultureInfo.InvariantCulture));

    public static string Quoted(string text)
    {
        var quoted = new StringBuilder(text.Length + 2).Append('"');
        foreach (var c in text)
        {
            _ = c switch
            {
                '"' => quoted.Append("\\\""),
                '\\' => quoted.Append("\\\\"),
                '\n' => quoted.Append("\\n"),
                '\r' => quoted.Append("\\r"),
                '\t' => quoted.Append("\\t"),
                < ' ' or '\u007f' or '\u2028' or '\u2029' => quoted.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:x4}"),
                _ => quoted.Append(c),
            };
        }

        return quoted.Append('"').ToString();
    }
}
