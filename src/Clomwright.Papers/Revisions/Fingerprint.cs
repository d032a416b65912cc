using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Writers;

namespace Clomwright.Papers.Revisions;

/// <summary>Tells whether two sheets show the same: a hash of what is drawn, to 0.01 mm.</summary>
internal static class Fingerprint
{
    /// <summary>Hexadecimal digits: 64 of the 256 bits, so that a change goes unseen by chance once in 10^19.</summary>
    private const int Digits = 16;

    /// <summary>Of what stands within the frame of a sheet, with what the frame says of it; without date, number and letter.</summary>
    /// <param name="head">Title, clock and scale, or whatever else the frame says.</param>
    /// <param name="paper">The whole paper.</param>
    /// <param name="marks">What stands within the frame.</param>
    public static string Of(string head, PaperBox paper, IEnumerable<Mark> marks)
    {
        var text = SvgWriter.Write(marks, paper, head);
        return Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..Digits].ToLower(CultureInfo.InvariantCulture);
    }
}
