using System.Globalization;
using System.Text;

namespace Clomwright.Papers.Writers.Dxf;

/// <summary>Pairs of group code and value, one a line, and handles that follow one another.</summary>
internal sealed class DxfText
{
    private readonly StringBuilder text = new();
    private int handle = 0x10;

    /// <summary>The next handle, hexadecimal.</summary>
    public string Handle() => (++handle).ToString("X", CultureInfo.InvariantCulture);

    /// <summary>What the next handle will be.</summary>
    public string Seed => (handle + 1).ToString("X", CultureInfo.InvariantCulture);

    /// <summary>A pair of words.</summary>
    public DxfText Put(int code, string value)
    {
        text.Append(CultureInfo.InvariantCulture, $"{code,3}\n").Append(value).Append('\n');
        return this;
    }

    /// <summary>A pair with a whole number.</summary>
    public DxfText Put(int code, int value) => Put(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>A pair with a number, to a millionth.</summary>
    public DxfText Put(int code, double value)
    {
        var rounded = Math.Round(value, 6, MidpointRounding.AwayFromZero);
        return Put(code, (rounded == 0 ? 0 : rounded).ToString("0.0#####", CultureInfo.InvariantCulture));
    }

    /// <summary>A point: its x under the code, y ten further, z twenty further.</summary>
    public DxfText Point(int code, double x, double y, double? z = 0)
    {
        Put(code, x).Put(code + 10, y);
        return z is { } up ? Put(code + 20, up) : this;
    }

    /// <summary>Words on one line.</summary>
    public static string OneLine(string words) => string.Concat(words.Select(c => char.IsControl(c) ? ' ' : c)).Replace("%%", "% %", StringComparison.Ordinal).Replace('^', '\u02c6');

    /// <summary>All of it.</summary>
    public override string ToString() => text.ToString();
}
