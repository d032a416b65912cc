using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Clomwright.Papers.Writers;

/// <summary>Puts marks that follow from the content in place of the random ones that PDFsharp writes: the same sheets give the same bytes.</summary>
/// <remarks>Font tags, the two identifiers of the metadata and the two of the trailer; each replaced by text of the same length, so every offset in the file still holds.</remarks>
internal static partial class Repeatable
{
    /// <summary>Changes the bytes in place.</summary>
    public static void Make(byte[] file)
    {
        // Latin 1 maps every byte to one character and back.
        var text = Encoding.Latin1.GetString(file);
        var tags = FontTag().Matches(text).Select(m => m.Groups[1]).ToArray();
        foreach (var (tag, i) in tags.Select(t => t.Value).Distinct().Select((t, i) => (t, i)))
        {
            foreach (var place in tags.Where(t => t.Value == tag))
            {
                Put(file, place.Index, $"CLOMA{(char)('A' + i)}");
            }
        }

        var ids = Uuid().Matches(text).Select(m => m.Groups[1]).Concat(Trailer().Matches(text).SelectMany(m => new[] { m.Groups[1], m.Groups[2] })).ToArray();
        foreach (var id in ids)
        {
            Put(file, id.Index, new string('0', id.Length));
        }

        var hash = Convert.ToHexString(SHA256.HashData(file));
        foreach (var id in ids)
        {
            Put(file, id.Index, id.Length == 32 ? hash[..32] : Grouped(hash));
        }
    }

    private static string Grouped(string hash) => $"{hash[..8]}-{hash[8..12]}-{hash[12..16]}-{hash[16..20]}-{hash[20..32]}".ToLowerInvariant();

    private static void Put(byte[] file, int at, string text) => Encoding.Latin1.GetBytes(text, file.AsSpan(at));

    [GeneratedRegex(@"/(?:FontName|BaseFont)/([A-Z]{6})\+")]
    private static partial Regex FontTag();

    [GeneratedRegex("uuid:([0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12})")]
    private static partial Regex Uuid();

    [GeneratedRegex(@"/ID\s?\[<([0-9A-F]{32})><([0-9A-F]{32})>\]")]
    private static partial Regex Trailer();
}
