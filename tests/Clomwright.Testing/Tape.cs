using Clomwright.Evidence;
using CsCheck;

namespace Clomwright.Testing;

/// <summary>Random sizes that a tape of one unit system can read: quarter inches or 5 mm.</summary>
internal sealed record Tape(UnitSystem Units)
{
    public Length Step => Units == UnitSystem.Imperial ? new Length(Length.PerInch / 4) : Length.FromMillimetres(5);

    /// <summary>The smallest reading at or above a number of inches.</summary>
    public Length AtLeast(double inches) => Step * (long)Math.Ceiling(inches * Length.PerInch / Step.Nanometres);

    /// <summary>A reading between two numbers of inches; the lower one where they cross.</summary>
    public Gen<Length> Between(double low, double high)
    {
        var from = AtLeast(low).Nanometres / Step.Nanometres;
        var to = Math.Max(from, (long)Math.Floor(high * Length.PerInch / Step.Nanometres));
        return Gen.Long[from, to].Select(n => Step * n);
    }

    /// <summary>The reading at a share of the way between two numbers of inches.</summary>
    public Length At(double share, double low, double high) => AtLeast(low + share * Math.Max(0, high - low));
}

/// <summary>A value or nothing.</summary>
internal static class Perhaps
{
    public static Gen<T?> OrNull<T>(this Gen<T> gen) where T : struct =>
        Gen.Select(Gen.Int[0, 3], gen, (n, value) => n == 0 ? (T?)null : value);

    public static Gen<T?> OrNothing<T>(this Gen<T> gen) where T : class =>
        Gen.Select(Gen.Int[0, 3], gen, (n, value) => n == 0 ? null : value);
}
