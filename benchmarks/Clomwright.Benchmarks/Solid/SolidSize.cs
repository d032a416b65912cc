namespace Clomwright.Benchmarks.Solid;

/// <summary>A size of grid: cells around, up and through.</summary>
internal readonly record struct SolidSize(string Name, int Around, int Up, int Through)
{
    public static readonly SolidSize[] All = [new("20k", 132, 16, 2), new("60k", 192, 24, 3), new("200k", 320, 40, 4)];

    public static SolidSize Of(string name) => All.First(size => size.Name == name);

    /// <summary>Degrees of freedom with those in voids.</summary>
    public int Dofs => 3 * Around * (Up + 1) * (Through + 1);
}
