namespace Clomwright.Evidence;

/// <summary>A unit that people write. In SI it is <c>(number - ZeroAt) * Factor / Divisor</c>; the divisor keeps 4 % exactly the double 0.04.</summary>
/// <param name="Symbol">As it is written: <c>ft</c>, <c>kPa</c>.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="System">Which system it belongs to.</param>
/// <param name="Factor">How many SI units <paramref name="Divisor"/> of it are.</param>
/// <param name="Divisor">See <paramref name="Factor"/>.</param>
/// <param name="ZeroAt">Its reading at zero SI; only a temperature has one.</param>
/// <param name="Others">Other spellings that are understood.</param>
public sealed record Unit(string Symbol, Dimension Dimension, UnitSystem System, double Factor, double Divisor, double ZeroAt, Sequence<string> Others)
{
    /// <summary>Whether a spelling means this unit. Capitals count, because m and M differ.</summary>
    public bool Spells(string name) => name == Symbol || Others.Contains(name);

    /// <summary>A number of this unit in SI.</summary>
    public double ToSi(double number) => (number - ZeroAt) * Factor / Divisor;

    /// <summary>An SI value in this unit.</summary>
    public double FromSi(double si) => si * Divisor / Factor + ZeroAt;
}
