using System.Text;
using Clomwright.Evidence;

namespace Clomwright.Files.Typing;

/// <summary>The bytes of a house file as text: UTF-8, with or without a byte order mark.</summary>
internal static class FileText
{
    /// <summary>The largest house file, in bytes. The fullest house is a twentieth of it.</summary>
    public const int SizeMost = 1 << 19;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text, or what is wrong with the file as a whole.</summary>
    public static (string? Text, bool HasMark, Message? Problem) Decode(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > SizeMost)
        {
            return (null, false, TooLarge(bytes.Length));
        }

        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF])
            || (bytes.Length >= 2 && (bytes[0] == 0 || bytes[1] == 0)))
        {
            return (null, false, new Message("files.utf16"));
        }

        var hasMark = bytes.StartsWith(Encoding.UTF8.Preamble);
        try
        {
            return (Strict.GetString(hasMark ? bytes[Encoding.UTF8.Preamble.Length..] : bytes), hasMark, null);
        }
        catch (DecoderFallbackException bad)
        {
            return (null, hasMark, Message.Of("files.not-utf8", ("line", bytes[..Math.Clamp(bad.Index, 0, bytes.Length)].Count((byte)'\n') + 1)));
        }
    }

    /// <summary>The text as bytes.</summary>
    public static byte[] Encode(string text, bool hasMark) => hasMark ? [.. Encoding.UTF8.Preamble, .. Strict.GetBytes(text)] : Strict.GetBytes(text);

    /// <summary>What is said of a file that is too large to be a house.</summary>
    public static Message TooLarge(long size) =>
        Message.Of("files.too-large", ("size", Amount.Count((size + 1023) / 1024)), ("most", Amount.Count(SizeMost / 1024)));
}
