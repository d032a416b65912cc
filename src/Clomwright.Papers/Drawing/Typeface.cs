using System.Buffers.Binary;
using System.Collections.Frozen;
using System.Reflection;
using System.Text;

namespace Clomwright.Papers.Drawing;

/// <summary>The shipped typeface (Source Sans 3, SIL Open Font License), measured from its own file so that widths are the same on screen and on paper.</summary>
/// <remarks>Reads the tables head, hhea, hmtx and cmap (format 12) of OpenType. No kerning and no ligatures, on purpose.</remarks>
public sealed class Typeface
{
    private static readonly Lazy<Typeface> Regular = new(() => Load("SourceSans3-Regular"));
    private static readonly Lazy<Typeface> Semibold = new(() => Load("SourceSans3-Semibold"));

    /// <summary>Characters below this are looked up in an array; nearly all text is.</summary>
    private const int Common = 0x2800;

    private readonly FrozenDictionary<int, double> advances;
    private readonly double[] common;

    private Typeface(ReadOnlyMemory<byte> file)
    {
        Bytes = file;
        advances = ReadAdvances(file.Span);
        common = [.. Enumerable.Range(0, Common).Select(c => advances.GetValueOrDefault(c, 1))];
    }

    /// <summary>The font file.</summary>
    public ReadOnlyMemory<byte> Bytes { get; }

    /// <summary>The typeface in one cut.</summary>
    public static Typeface Of(Cut cut) => (cut == Cut.Semibold ? Semibold : Regular).Value;

    /// <summary>Whether it has a sign for a character.</summary>
    public bool Has(Rune character) => advances.ContainsKey(character.Value);

    /// <summary>Words as they can be printed: a space for a control character, a question mark for a character without a sign.</summary>
    public static string Printable(string words)
    {
        ArgumentNullException.ThrowIfNull(words);
        var typeface = Of(Cut.Regular);
        if (words.All(c => c < Common && c >= ' ' && typeface.advances.ContainsKey(c)))
        {
            return words;
        }

        var text = new StringBuilder(words.Length);
        foreach (var rune in words.EnumerateRunes())
        {
            text.Append(Rune.IsControl(rune) ? " " : typeface.Has(rune) ? rune.ToString() : "?");
        }

        return text.ToString();
    }

    /// <summary>Width of words at size 1. A character without a sign counts as one em.</summary>
    /// <param name="words">What is set.</param>
    /// <param name="before">Width of what stands before them on the line.</param>
    public double Advance(ReadOnlySpan<char> words, double before = 0)
    {
        var sum = before;
        foreach (var rune in words.EnumerateRunes())
        {
            sum += rune.Value < Common ? common[rune.Value] : advances.GetValueOrDefault(rune.Value, 1);
        }

        return sum;
    }

    private static Typeface Load(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"fonts/{name}.ttf")
            ?? throw new InvalidOperationException($"The typeface {name} is not built in.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return new Typeface(bytes);
    }

    private static FrozenDictionary<int, double> ReadAdvances(ReadOnlySpan<byte> file)
    {
        var unitsPerEm = U16(file, Table(file, "head"u8) + 18);
        var metrics = U16(file, Table(file, "hhea"u8) + 34);
        var hmtx = Table(file, "hmtx"u8);
        Dictionary<int, double> advances = [];
        var map = UnicodeMap(file);
        var groups = U32(file, map + 12);
        for (var g = 0; g < groups; g++)
        {
            var at = map + 16 + 12 * g;
            var (first, last, glyph) = (U32(file, at), U32(file, at + 4), U32(file, at + 8));
            for (var c = first; c <= last; c++)
            {
                var index = Math.Min(glyph + c - first, metrics - 1);
                advances[c] = (double)U16(file, hmtx + 4 * index) / unitsPerEm;
            }
        }

        return advances.ToFrozenDictionary();
    }

    private static int UnicodeMap(ReadOnlySpan<byte> file)
    {
        var cmap = Table(file, "cmap"u8);
        for (var i = 0; i < U16(file, cmap + 2); i++)
        {
            var offset = cmap + U32(file, cmap + 8 + 8 * i);
            if (U16(file, offset) == 12)
            {
                return offset;
            }
        }

        throw new InvalidOperationException("The typeface has no character map of format 12.");
    }

    private static int Table(ReadOnlySpan<byte> file, ReadOnlySpan<byte> tag)
    {
        for (var i = 0; i < U16(file, 4); i++)
        {
            var at = 12 + 16 * i;
            if (file.Slice(at, 4).SequenceEqual(tag))
            {
                return U32(file, at + 8);
            }
        }

        throw new InvalidOperationException("The typeface lacks a table.");
    }

    private static int U16(ReadOnlySpan<byte> file, int at) => BinaryPrimitives.ReadUInt16BigEndian(file[at..]);

    private static int U32(ReadOnlySpan<byte> file, int at) => checked((int)BinaryPrimitives.ReadUInt32BigEndian(file[at..]));
}
