using System.Buffers.Binary;
using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace Clomwright.Papers.Writers;

/// <summary>Ends compressed streams as RFC 1950 asks. PDFsharp leaves the checksum of four bytes away at their end: readers forgive it, checkers warn of it.</summary>
internal static class WholeStreams
{
    private const int ChecksumBytes = 4;
    private const uint Modulus = 65521;

    /// <summary>Bytes after which the sums are reduced: the most that cannot run over 32 bits.</summary>
    private const int Run = 5552;

    /// <summary>How PDFsharp's compressed streams begin; those that this program compresses begin otherwise and are whole.</summary>
    private static ReadOnlySpan<byte> Theirs => [0x78, 0xDA];

    /// <summary>Text as a compressed stream.</summary>
    public static byte[] Compressed(byte[] plain)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
        {
            zlib.Write(plain);
        }

        return packed.ToArray();
    }

    /// <summary>The same file with every stream whole, and its table of places and end as they then are.</summary>
    /// <param name="file">As PDFsharp writes it: a table of places at its end, one object after another before that.</param>
    public static byte[] Of(byte[] file)
    {
        var table = Place(file);
        var places = Places(file, table, out var after);
        using var whole = new MemoryStream(file.Length + 4096);
        var order = Enumerable.Range(0, places.Length).Where(i => places[i] > 0).OrderBy(i => places[i]).ToArray();
        whole.Write(file.AsSpan(0, places[order[0]]));
        for (var i = 0; i < order.Length; i++)
        {
            var (from, to) = (places[order[i]], i + 1 < order.Length ? places[order[i + 1]] : table);
            places[order[i]] = (int)whole.Length;
            Object(file.AsSpan(from, to - from), whole);
        }

        var start = whole.Length;
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"xref\n0 {places.Length}\n0000000000 65535 f \n");
        foreach (var place in places.Skip(1))
        {
            text.Append(CultureInfo.InvariantCulture, $"{place:0000000000} 00000 n \n");
        }

        var trailer = Encoding.Latin1.GetString(file.AsSpan(after));
        text.Append(trailer[..trailer.LastIndexOf("startxref", StringComparison.Ordinal)]).Append(CultureInfo.InvariantCulture, $"startxref\n{start}\n%%EOF\n");
        whole.Write(Encoding.Latin1.GetBytes(text.ToString()));
        return whole.ToArray();
    }

    /// <summary>One object, its stream made whole where it is not.</summary>
    private static void Object(ReadOnlySpan<byte> written, MemoryStream to)
    {
        var stream = written.IndexOf("\nstream\n"u8);
        var length = stream < 0 ? -1 : written[..stream].IndexOf("/Length "u8);
        if (length < 0 || !written[(stream + 8)..].StartsWith(Theirs))
        {
            to.Write(written);
            return;
        }

        length += 8;
        var digits = written[length..].IndexOfAnyExceptInRange((byte)'0', (byte)'9');
        var bytes = int.Parse(written.Slice(length, digits), NumberStyles.None, CultureInfo.InvariantCulture);
        var packed = written.Slice(stream + 8, bytes);
        to.Write(written[..length]);
        to.Write(Encoding.ASCII.GetBytes((bytes + ChecksumBytes).ToString(CultureInfo.InvariantCulture)));
        to.Write(written[(length + digits)..(stream + 8)]);
        to.Write(packed);
        Span<byte> sum = stackalloc byte[ChecksumBytes];
        BinaryPrimitives.WriteUInt32BigEndian(sum, Checksum(packed[2..]));
        to.Write(sum);
        to.Write(written[(stream + 8 + bytes)..]);
    }

    /// <summary>Adler-32 of what a stream holds, RFC 1950 section 9.</summary>
    private static uint Checksum(ReadOnlySpan<byte> deflated)
    {
        using var packed = new MemoryStream(deflated.ToArray());
        using var plain = new DeflateStream(packed, CompressionMode.Decompress);
        var (a, b) = (1u, 0u);
        Span<byte> buffer = stackalloc byte[Run];
        for (var read = plain.Read(buffer); read > 0; read = plain.Read(buffer))
        {
            foreach (var octet in buffer[..read])
            {
                a += octet;
                b += a;
            }

            (a, b) = (a % Modulus, b % Modulus);
        }

        return (b << 16) | a;
    }

    private static int Place(ReadOnlySpan<byte> file)
    {
        var at = file.LastIndexOf("startxref"u8) + 9;
        while (file[at] is (byte)'\r' or (byte)'\n')
        {
            at++;
        }

        return int.Parse(file.Slice(at, file[at..].IndexOfAnyExceptInRange((byte)'0', (byte)'9')), NumberStyles.None, CultureInfo.InvariantCulture);
    }

    /// <summary>Places of the objects by number; 0 for one that is free.</summary>
    private static int[] Places(byte[] file, int table, out int after)
    {
        var lines = Encoding.Latin1.GetString(file.AsSpan(table));
        var trailer = lines.IndexOf("trailer", StringComparison.Ordinal);
        after = table + trailer;
        var entries = lines[..trailer].Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)[2..];
        return [.. entries.Select(e => e.EndsWith('n') ? int.Parse(e.AsSpan(0, 10), NumberStyles.None, CultureInfo.InvariantCulture) : 0)];
    }
}
