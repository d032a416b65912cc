using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Loads;

/// <summary>What snow does on a roof, Pa on plan, as a characteristic load of its edition.</summary>
public sealed record SnowLoad
{
    /// <summary>Whose numbers these are.</summary>
    public required LoadEdition Edition { get; init; }

    /// <summary>p_f: on a flat roof; what goes with an earthquake is a share of it.</summary>
    public required double Flat { get; init; }

    /// <summary>p_s: on the whole roof evenly.</summary>
    public required double Balanced { get; init; }

    /// <summary>On one half of the roof while the other is bare.</summary>
    public required double OneSided { get; init; }

    /// <summary>Drift in a sector: at its inner edge, the ring or crown.</summary>
    public required double DriftAtCrown { get; init; }

    /// <summary>Drift in a sector: at the eave.</summary>
    public required double DriftAtEave { get; init; }

    /// <summary>Multiplies these to the level of everyday (allowable-stress) combinations: 1, or 0.7 where the edition's map is at strength level.</summary>
    public required double ServiceFactor { get; init; }

    /// <summary>How.</summary>
    public required Calculation How { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }
}

/// <summary>Numbers about the site and house that snow depends on and a house file does not hold.</summary>
/// <param name="Exposure">C_e.</param>
/// <param name="Thermal">C_t.</param>
/// <param name="Importance">I_s; not used by ASCE 7-22 and EN 1991-1-3.</param>
/// <param name="Retained">Whether an edge board or snow guard stops snow from sliding off.</param>
public sealed record SnowFactors(Cited<double> Exposure, Cited<double> Thermal, Cited<double> Importance, bool Retained)
{
    /// <summary>C_e = C_t = I_s = 1, as in published examples.</summary>
    public static SnowFactors Ones(bool retained) => new(One, One, One, retained);

    private static Cited<double> One => new(1, Sources.Get("asce7-16-snow"), Tag.Assumed);

    /// <summary>For a house of which nothing more is known: C_e 1.0, C_t 1.2 (taken as unheated, the heavier case), I_s by risk category.</summary>
    public static (SnowFactors Factors, Sequence<Assumption> Assumptions) For(LoadEdition edition, string? riskCategory, bool retained)
    {
        var american = edition != LoadEdition.En1990;
        var source = Sources.Get(american ? "asce7-16-memory" : "en-1991-1-3");
        var thermal = american ? 1.2 : 1.0;
        var importance = riskCategory switch { "I" => 0.8, "III" => 1.1, "IV" => 1.2, _ => 1.0 };
        var assumptions = new List<Assumption>
        {
            new("snow-exposure", new Message("analysis.assumed.snow-exposure"), Amount.Number(1), source),
            new("snow-thermal", american ? new Message("analysis.assumed.snow-thermal") : new Message("analysis.assumed.snow-thermal-en"), Amount.Number(thermal), source),
        };
        if (edition == LoadEdition.Asce716 && riskCategory is not ("I" or "II" or "III" or "IV"))
        {
            assumptions.Add(new("risk-category", new Message("analysis.assumed.risk-category"), "II", source));
        }

        return (new(new(1, source, Tag.Assumed), new(thermal, source, Tag.Assumed), new(importance, source, Tag.Code), retained), assumptions.ToSequence());
    }
}

/// <summary>Snow on roofs.</summary>
public static class SnowOnRoof
{
    /// <summary>Snow on a planted or otherwise rough roof.</summary>
    /// <param name="ground">Ground snow with its edition.</param>
    /// <param name="slope">Mean slope from eave to ring or ridge, radians.</param>
    /// <param name="factors">Factors of the place.</param>
    public static SnowLoad Of(GroundSnow ground, double slope, SnowFactors factors) =>
        ground.Edition == LoadEdition.En1990 ? SnowEn.Of(ground, slope, factors) : SnowAsce.Of(ground, slope, factors);

    /// <summary>Snow for a house of which only the house file is known.</summary>
    public static SnowLoad Of(GroundSnow ground, double slope, string? riskCategory, bool retained)
    {
        var (factors, assumptions) = SnowFactors.For(ground.Edition, riskCategory, retained);
        var load = Of(ground, slope, factors);
        return load with { Assumptions = [.. load.Assumptions, .. assumptions] };
    }
}
