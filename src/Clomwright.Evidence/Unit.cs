namespace Clomwright.Evidence;

/// <summary>A unit that people write: <c>Si = number * Factor + Offset</c>.</summary>
/// <param name="Symbol">As it is printed: <c>ft</c>, <c>kPa</c>.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="System">Which system it belongs to.</param>
/// <param name="Factor">One of it in the SI unit of the dimension.</param>
/// <param name="Others">Other spellings that are understood.</param>
/// <param name="Offset">The SI value of zero of it; only temperatures have one.</param>
public sealed record Unit(string Symbol, Dimension Dimension, UnitSystem System, double Factor, Sequence<string> Others, double Offset = 0)
{
    /// <summary>Whether a spelling means this unit. Capitals count, because m and M differ.</summary>
    public bool Spells(string name) => name == Symbol || Others.Contains(name);

    /// <summary>A number of this unit in SI.</summary>
    public double ToSi(double number) => number * Factor + Offset;

    /// <summary>An SI value in this unit.</summary>
    public double FromSi(double si) => (si - Offset) / Factor;
}
