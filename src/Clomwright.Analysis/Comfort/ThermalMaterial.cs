using System.Collections.Frozen;
using System.Text.Json;
using Clomwright.Analysis.Loads;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Comfort;

/// <summary>How a material holds and lets through heat and vapour, from <c>data/materials/thermal.json</c>.</summary>
/// <param name="Key">As a house file names it.</param>
/// <param name="Conductivity">As it stands in a dry house, W/(m K).</param>
/// <param name="Wet">Soaked in a wet season, W/(m K); the same where it does not soak.</param>
/// <param name="Density">kg/m3.</param>
/// <param name="Capacity">J/(kg K).</param>
/// <param name="Vapour">Resistance to vapour, times that of air.</param>
public sealed record ThermalMaterial(string Key, Cited<double> Conductivity, Cited<double> Wet, double Density, double Capacity, double Vapour)
{
    /// <summary>Heat capacity of earth, J/(kg K): of minerals, with a little for straw.</summary>
    internal const double EarthCapacity = 1000;

    /// <summary>Heat capacity of water, J/(kg K).</summary>
    internal const double WaterCapacity = 4180;

    private static readonly FrozenDictionary<string, ThermalMaterial> Register;
    private static readonly FrozenDictionary<string, Cited<double>> Grounds;
    private static readonly FrozenDictionary<string, Glazing> Glazings;
    private static readonly FrozenDictionary<string, Cited<double>> Woods;
    private static readonly (double Density, Cited<double> Conductivity)[] Earth;

    static ThermalMaterial()
    {
        using var document = MaterialFiles.Open("thermal.json");
        var root = document.RootElement;
        JsonElement.ArrayEnumerator Rows(string name) => root.GetProperty(name).EnumerateArray();
        Register = Rows("materials").Select(Read).ToFrozenDictionary(m => m.Key, StringComparer.Ordinal);
        Grounds = Rows("ground").ToFrozenDictionary(e => e.GetProperty("key").GetString()!, e => MaterialFiles.Cited(e, "conductivity"), StringComparer.Ordinal);
        Glazings = Rows("glazing").Select(e => new Glazing(e.GetProperty("key").GetString()!, MaterialFiles.Cited(e, "transmittance"), MaterialFiles.Cited(e, "sun"))).ToFrozenDictionary(g => g.Key, StringComparer.Ordinal);
        Woods = Rows("wood").ToFrozenDictionary(e => e.GetProperty("key").GetString()!, e => MaterialFiles.Cited(e, "density"), StringComparer.Ordinal);
        Earth = [.. Rows("earth").Select(e => (e.GetProperty("density").GetDouble(), MaterialFiles.Cited(e, "conductivity")))];
    }

    /// <summary>Every known material.</summary>
    public static Sequence<string> Keys => Register.Keys.Order(StringComparer.Ordinal).ToSequence();

    /// <summary>Every known glazing.</summary>
    public static Sequence<string> GlazingKeys => Glazings.Keys.Order(StringComparer.Ordinal).ToSequence();

    /// <summary>Every known firewood.</summary>
    public static Sequence<string> WoodKeys => Woods.Keys.Order(StringComparer.Ordinal).ToSequence();

    /// <summary>The material of a key; null when it is not known.</summary>
    public static ThermalMaterial? Find(string? key) => key is not null && Register.TryGetValue(key, out var known) ? known : null;

    /// <summary>The glazing of a key; null when it is not known.</summary>
    public static Glazing? Glass(string? key) => key is not null && Glazings.TryGetValue(key, out var known) ? known : null;

    /// <summary>Conductivity of the ground of a class, W/(m K); null when it is not known.</summary>
    public static Cited<double>? Ground(string? key) => key is not null && Grounds.TryGetValue(key, out var known) ? known : null;

    /// <summary>Density of a firewood, oven-dry mass over green volume, kg/m3; null when it is not known.</summary>
    public static Cited<double>? Wood(string? key) => key is not null && Woods.TryGetValue(key, out var known) ? known : null;

    /// <summary>Conductivity of earth of a dry density, W/(m K), straight between the densities of the table and held at its ends.</summary>
    /// <param name="density">kg/m3.</param>
    public static Cited<double> OfEarth(double density)
    {
        var at = Array.FindIndex(Earth, e => e.Density >= density);
        if (at <= 0)
        {
            return at == 0 ? Earth[0].Conductivity : Earth[^1].Conductivity;
        }

        var (low, high) = (Earth[at - 1], Earth[at]);
        var share = (density - low.Density) / (high.Density - low.Density);
        return low.Conductivity with { Value = low.Conductivity.Value + share * (high.Conductivity.Value - low.Conductivity.Value) };
    }

    private static ThermalMaterial Read(JsonElement e)
    {
        var dry = MaterialFiles.Cited(e, "conductivity");
        return new(
            e.GetProperty("key").GetString()!, dry, e.TryGetProperty("wet", out _) ? MaterialFiles.Cited(e, "wet") : dry,
            e.GetProperty("density").GetDouble(), e.GetProperty("capacity").GetDouble(), e.GetProperty("vapour").GetDouble());
    }
}

/// <summary>A glazing.</summary>
/// <param name="Key">As a house file names it.</param>
/// <param name="Transmittance">Middle of the pane, W/(m2 K).</param>
/// <param name="Sun">Share of the sun that comes in through it, square on.</param>
public sealed record Glazing(string Key, Cited<double> Transmittance, Cited<double> Sun);
