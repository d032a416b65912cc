using QRCoder;

namespace Clomwright.Web.Sharing;

/// <summary>A text as a QR code (ISO/IEC 18004), of the level of correction that a quarter of dirt does not harm.</summary>
internal static class QrSquares
{
    /// <summary>Its squares row by row, 1 for a dark one, without the light border of four squares that the standard asks round it.</summary>
    public static IReadOnlyList<string> Of(string text)
    {
        using var data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.Q);
        const int border = 4;
        var size = data.ModuleMatrix.Count - 2 * border;
        return [.. data.ModuleMatrix.Skip(border).Take(size).Select(row => new string([.. row.Cast<bool>().Skip(border).Take(size).Select(dark => dark ? '1' : '0')]))];
    }
}
