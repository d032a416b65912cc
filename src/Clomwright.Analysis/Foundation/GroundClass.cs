using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Foundation;

/// <summary>Presumptive bearing of one class of ground, from <c>data/materials/ground.json</c>. To compare with; never in place of what the office or a test says of this ground.</summary>
/// <param name="Key"><c>bedrock</c>, <c>foliated-rock</c>, <c>gravel</c>, <c>sand</c>, <c>clay</c>.</param>
/// <param name="Pressure">Allowable bearing pressure, Pa.</param>
public sealed record GroundClass(string Key, Cited<double> Pressure)
{
    /// <summary>Every class, strongest first.</summary>
    public static Sequence<GroundClass> All { get; } = Load();

    private static Sequence<GroundClass> Load()
    {
        using var document = MaterialFiles.Open("ground.json");
        return document.RootElement.GetProperty("ground").EnumerateArray()
            .Select(e => (Key: e.GetProperty("key").GetString()!, Psf: MaterialFiles.Cited(e, "pressurePsf")))
            .Select(e => new GroundClass(e.Key, e.Psf with { Value = e.Psf.Value * UsUnits.Psf }))
            .ToSequence();
    }
}
