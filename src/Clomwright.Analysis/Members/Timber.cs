using System.Collections.Frozen;
using System.Text.Json;
using Clomwright.Analysis.Loads;
using Clomwright.Analysis.Steps;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Members;

/// <summary>Which table of strengths a piece of timber is read from.</summary>
public enum TimberForm
{
    /// <summary>Sawn, 2 to 4 in thick (NDS).</summary>
    Dimension,

    /// <summary>Sawn, 5 in and thicker, deeper than wide by more than 2 in (NDS beams and stringers).</summary>
    Beam,

    /// <summary>Sawn, 5 in and thicker, nearly square (NDS posts and timbers).</summary>
    Post,

    /// <summary>Round.</summary>
    Pole,

    /// <summary>Any sawn section of an EN 338 class.</summary>
    Sawn,
}

/// <summary>How a timber's values are adjusted: American reference values, or characteristic values of EN 338.</summary>
public enum TimberSystem
{
    /// <summary>NDS reference design values for allowable stress: normal duration, dry.</summary>
    Nds,

    /// <summary>EN 338 characteristic values, for EN 1995-1-1.</summary>
    En,
}

/// <summary>One row of <c>data/materials/timber.json</c>, in SI: Pa and N/m3.</summary>
public sealed record Timber
{
    private static readonly FrozenDictionary<(string, TimberForm), Timber> Rows = Load();

    /// <summary>As a house file names it: <c>douglas-fir-no2</c>, <c>douglas-fir-pole</c>, <c>c24</c>.</summary>
    public required string Key { get; init; }

    /// <summary>Which table.</summary>
    public required TimberForm Form { get; init; }

    /// <summary>Which system of adjustment.</summary>
    public required TimberSystem System { get; init; }

    /// <summary>F_b or f_m,k.</summary>
    public required Cited<double> Bending { get; init; }

    /// <summary>F_t or f_t,0,k; null where the table has none.</summary>
    public required Cited<double>? Tension { get; init; }

    /// <summary>F_v or f_v,k.</summary>
    public required Cited<double> Shear { get; init; }

    /// <summary>F_c across the grain or f_c,90,k.</summary>
    public required Cited<double> AcrossGrain { get; init; }

    /// <summary>F_c along the grain or f_c,0,k.</summary>
    public required Cited<double> Compression { get; init; }

    /// <summary>E or E_0,mean.</summary>
    public required Cited<double> Modulus { get; init; }

    /// <summary>E_min or E_0,05: for buckling.</summary>
    public required Cited<double> LeastModulus { get; init; }

    /// <summary>Weight when dry, N/m3.</summary>
    public required Cited<double> Weight { get; init; }

    /// <summary>G: weight over that of water, both oven-dry, for bolts (NDS); null for a class of EN 338.</summary>
    public required Cited<double>? SpecificGravity { get; init; }

    /// <summary>Every row.</summary>
    public static Sequence<Timber> All => Rows.Values.OrderBy(t => t.Key, StringComparer.Ordinal).ThenBy(t => t.Form).ToSequence();

    /// <summary>A pole by key; null when it is not known.</summary>
    public static Timber? Pole(string key) => Rows.GetValueOrDefault((key, TimberForm.Pole));

    /// <summary>A sawn piece by key, from the table for its section; null when it is not known.</summary>
    /// <param name="key">Key of the timber.</param>
    /// <param name="width">Thickness of one piece, m.</param>
    /// <param name="depth">Its other side, m.</param>
    public static Timber? Piece(string key, double width, double depth)
    {
        if (Rows.TryGetValue((key, TimberForm.Sawn), out var european))
        {
            return european;
        }

        var (thin, wide) = (Math.Min(width, depth), Math.Max(width, depth));
        var form = thin < 4.5 * Inch ? TimberForm.Dimension : wide - thin > 2.01 * Inch ? TimberForm.Beam : TimberForm.Post;
        return Rows.GetValueOrDefault((key, form));
    }

    private const double Inch = 0.0254;

    private static FrozenDictionary<(string, TimberForm), Timber> Load()
    {
        using var document = MaterialFiles.Open("timber.json");
        return document.RootElement.GetProperty("timbers").EnumerateArray().Select(Read).ToFrozenDictionary(t => (t.Key, t.Form));
    }

    private static Timber Read(JsonElement entry)
    {
        var psi = entry.GetProperty("unit").GetString() == "psi";
        var unit = psi ? UsUnits.Psi : 1e6;
        var weight = psi
            ? Scaled("weightPcf", UsUnits.PoundForce / Math.Pow(UsUnits.Foot, 3))
            : Scaled("densityMean", UsUnits.Gravity);
        return new Timber
        {
            Key = entry.GetProperty("key").GetString()!, Form = Enum.Parse<TimberForm>(entry.GetProperty("form").GetString()!, ignoreCase: true),
            System = psi ? TimberSystem.Nds : TimberSystem.En,
            Bending = Scaled("bending", unit), Tension = entry.TryGetProperty("tension", out _) ? Scaled("tension", unit) : null, Shear = Scaled("shear", unit),
            AcrossGrain = Scaled("acrossGrain", unit), Compression = Scaled("compression", unit), Modulus = Scaled("modulus", unit),
            LeastModulus = Scaled("leastModulus", unit), Weight = weight,
            SpecificGravity = psi ? MaterialFiles.Cited(entry, "specificGravity") : null,
        };

        Cited<double> Scaled(string name, double by)
        {
            var cited = MaterialFiles.Cited(entry, name);
            return cited with { Value = cited.Value * by };
        }
    }
}
