namespace Clomwright.Evidence;

public sealed partial class Phrasebook
{
    private readonly string decimalMark;

    /// <summary>A quantity in one unit system, with the language's mark between whole and parts.</summary>
    public string One(Amount value, UnitSystem system) => Marked(AmountText.In(value, system));

    /// <summary>A volume that is poured, in gallons or litres.</summary>
    public string Poured(Volume value, UnitSystem system) => Marked(AmountText.Poured(value, system));

    /// <summary>A number written with a point, with the language's own mark instead. Only a point between two digits is one.</summary>
    public string Marked(string number)
    {
        ArgumentNullException.ThrowIfNull(number);
        return decimalMark == "." || !number.Contains('.', StringComparison.Ordinal) ? number
            : string.Concat(number.Select((letter, at) =>
                letter == '.' && at > 0 && at + 1 < number.Length && char.IsAsciiDigit(number[at - 1]) && char.IsAsciiDigit(number[at + 1]) ? decimalMark : letter.ToString()));
    }
}
