namespace Clomwright.Papers.Drawing;

/// <summary>The two cuts of the one typeface.</summary>
public enum Cut
{
    /// <summary>For reading.</summary>
    Regular,

    /// <summary>For headings and for the numbers that matter.</summary>
    Semibold,
}

/// <summary>How text is set.</summary>
/// <param name="Cut">Regular or semibold.</param>
/// <param name="Size">Size of the em square, mm. A capital or digit stands 0.66 of it tall.</param>
public readonly record struct Lettering(Cut Cut, double Size)
{
    /// <summary>Height of capitals and digits over the size, from the typeface's own table.</summary>
    public const double CapHeight = 0.66;

    /// <summary>Depth below the baseline that is kept free, over the size.</summary>
    public const double Descent = 0.24;

    /// <summary>Height above the baseline that is kept free, over the size; accents of capitals reach it.</summary>
    public const double Ascent = 0.76;

    /// <summary>Regular, by the height of its digits, mm.</summary>
    public static Lettering Tall(double digits) => new(Cut.Regular, digits / CapHeight);

    /// <summary>Semibold, by the height of its digits, mm.</summary>
    public static Lettering Strong(double digits) => new(Cut.Semibold, digits / CapHeight);

    /// <summary>Height of capitals and digits, mm.</summary>
    public double Digits => Size * CapHeight;

    /// <summary>From one baseline to the next, mm.</summary>
    public double Leading => Size * 1.22;

    /// <summary>Width of words set on one line, mm, without kerning.</summary>
    public double WidthOf(ReadOnlySpan<char> words) => Typeface.Of(Cut).Advance(words) * Size;
}
