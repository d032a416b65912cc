using System.Text.RegularExpressions;

namespace Clomwright.Evidence;

public sealed partial class Phrasebook
{
    private readonly string decimalMark;
    private readonly string thousandsMark;

    /// <summary>A quantity in one unit system, with the language's marks between whole and parts and between thousands.</summary>
    public string One(Amount value, UnitSystem system) => Marked(AmountText.In(value, system));

    /// <summary>A volume that is poured, in gallons or litres.</summary>
    public string Poured(Volume value, UnitSystem system) => Marked(AmountText.Poured(value, system));

    /// <summary>A number written with a point, with the language's own marks instead. Only a point between two digits is one; whole numbers of five digits and more are parted into thousands.</summary>
    public string Marked(string number)
    {
        ArgumentNullException.ThrowIfNull(number);
        var marked = decimalMark == "." || !number.Contains('.', StringComparison.Ordinal) ? number
            : string.Concat(number.Select((letter, at) =>
                letter == '.' && at > 0 && at + 1 < number.Length && char.IsAsciiDigit(number[at - 1]) && char.IsAsciiDigit(number[at + 1]) ? decimalMark : letter.ToString()));
        return thousandsMark.Length == 0 ? marked : Long().Replace(marked, match => Parted(match.Value));
    }

    private string Parted(string digits)
    {
        var head = (digits.Length - 1) % 3 + 1;
        return string.Join(thousandsMark, [digits[..head], .. digits[head..].Chunk(3).Select(three => new string(three))]);
    }

    /// <summary>Five digits or more that are no decimal places.</summary>
    [GeneratedRegex("(?<![0-9.,])[0-9]{5,}")]
    private static partial Regex Long();
}
