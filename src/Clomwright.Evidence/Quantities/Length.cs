namespace Clomwright.Evidence;

/// <summary>A length that somebody wrote down, exact: a whole number of nanometres.</summary>
/// <remarks>
/// 1/64 in is 396,875 nm and 1 mm is 1,000,000 nm, so inches to the 64th and millimetres are both exact; sums, equality and
/// comparison with a limit never round. Range about +-9.2 million kilometres. Engines take <see cref="Metres"/>.
/// </remarks>
public readonly record struct Length(long Nanometres) : IComparable<Length>, IQuantity
{
    /// <summary>Nanometres in one inch (exact by the 1959 international yard and pound agreement).</summary>
    public const long PerInch = 25_400_000;

    /// <summary>Nanometres in one millimetre.</summary>
    public const long PerMillimetre = 1_000_000;

    /// <summary>No length.</summary>
    public static Length Zero => default;

    /// <summary>The length in metres, for engines.</summary>
    public double Metres => Nanometres / 1e9;

    /// <summary>The length in inches, for printing.</summary>
    public double Inches => (double)Nanometres / PerInch;

    /// <inheritdoc/>
    public Amount Amount => Amount.Metres(Metres);

    /// <summary>A whole number of millimetres.</summary>
    public static Length FromMillimetres(long millimetres) => new(checked(millimetres * PerMillimetre));

    /// <summary>A whole number of inches.</summary>
    public static Length FromInches(long inches) => new(checked(inches * PerInch));

    /// <summary>Feet and inches, both whole.</summary>
    public static Length FromFeet(long feet, long inches = 0) => FromInches(checked(feet * 12 + inches));

    /// <summary>The whole-nanometre length nearest to a computed value in metres. Not for written lengths.</summary>
    public static Length Nearest(double metres) => new(checked((long)Math.Round(metres * 1e9)));

    /// <summary>The nearest multiple of a step, such as 1/4 in or 5 mm.</summary>
    public Length RoundedTo(Length step)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(step.Nanometres, 0);
        Int128 half = step.Nanometres / 2;
        var n = (Nanometres >= 0 ? Nanometres + half : Nanometres - half) / step.Nanometres;
        return new Length(checked((long)(n * step.Nanometres)));
    }

    /// <summary>This length over another as a plain ratio. Both are whole nanometres, so a ratio standing exactly at a whole limit compares as equal to it.</summary>
    public Amount Over(Length other) => Amount.Number((double)Nanometres / other.Nanometres);

    /// <summary>Shorter, equal or longer.</summary>
    public int CompareTo(Length other) => Nanometres.CompareTo(other.Nanometres);

    /// <summary>Sum.</summary>
    public static Length operator +(Length a, Length b) => new(checked(a.Nanometres + b.Nanometres));

    /// <summary>Difference.</summary>
    public static Length operator -(Length a, Length b) => new(checked(a.Nanometres - b.Nanometres));

    /// <summary>Opposite.</summary>
    public static Length operator -(Length a) => new(checked(-a.Nanometres));

    /// <summary>A whole multiple.</summary>
    public static Length operator *(Length a, long n) => new(checked(a.Nanometres * n));

    /// <summary>A whole multiple.</summary>
    public static Length operator *(long n, Length a) => a * n;

    /// <summary>Shorter than.</summary>
    public static bool operator <(Length a, Length b) => a.Nanometres < b.Nanometres;

    /// <summary>Longer than.</summary>
    public static bool operator >(Length a, Length b) => a.Nanometres > b.Nanometres;

    /// <summary>At most.</summary>
    public static bool operator <=(Length a, Length b) => a.Nanometres <= b.Nanometres;

    /// <summary>At least.</summary>
    public static bool operator >=(Length a, Length b) => a.Nanometres >= b.Nanometres;

    /// <summary>The longer of two.</summary>
    public static Length Max(Length a, Length b) => a >= b ? a : b;

    /// <summary>The shorter of two.</summary>
    public static Length Min(Length a, Length b) => a <= b ? a : b;

    /// <summary>For debugging; people read its written form.</summary>
    public override string ToString() => $"{Nanometres} nm";
}
