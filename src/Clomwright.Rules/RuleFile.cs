using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;
using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>One file of <c>data/rules</c> as it is written.</summary>
/// <remarks>What may be left out is settable, because generated reading overwrites the defaults of what is only initialised.</remarks>
internal sealed record RuleFile
{
    public required string Body { get; init; }

    public string Edition { get; set; } = "";

    /// <summary>The edition whose clauses are taken over, under other numbers and never surer than second-hand.</summary>
    public string? Follows { get; set; }

    /// <summary>The letters that clause numbers begin with in the edition followed.</summary>
    public string? Letters { get; set; }

    /// <summary>The letters that they begin with here.</summary>
    public string? NewLetters { get; set; }

    /// <summary>The source of what is taken over.</summary>
    public string? Source { get; set; }

    /// <summary>Remarks of whoever read the source.</summary>
    public string? Notes { get; set; }

    public IReadOnlyList<ClauseLine> Clauses { get; set; } = [];

    public string Adopted => Edition.Length == 0 ? Body : $"{Body}@{Edition}";

    public static RuleFile Read(string name)
    {
        using var text = Assembly.GetExecutingAssembly().GetManifestResourceStream($"rules/{name}.json")
            ?? throw new InvalidOperationException($"data/rules/{name}.json is not embedded.");
        return JsonSerializer.Deserialize(text, RuleFileJson.Default.RuleFile)!;
    }
}

/// <summary>One clause as it is written.</summary>
internal sealed record ClauseLine
{
    /// <summary>Our key; clauses nobody could read share <c>unread</c>.</summary>
    public required string Rule { get; init; }

    /// <summary>The clause's numbers in this edition.</summary>
    public IReadOnlyList<string> Numbers { get; set; } = [];

    public required ClauseStatus Status { get; init; }

    public bool Gate { get; set; }

    public ComparisonWord? Word { get; set; }

    public Dimension? Measures { get; set; }

    public string? Limit { get; set; }

    public string? Measure { get; set; }

    /// <summary>Why nothing is computed, as a key of the words.</summary>
    public string? Because { get; set; }

    public required string Source { get; init; }

    public required Surety Surety { get; init; }

    public IReadOnlyList<RivalLine> Rivals { get; set; } = [];
}

/// <summary>One rival as it is written.</summary>
internal sealed record RivalLine
{
    /// <summary>What it asks, as a key of the words; without it the rule's own word and the limit say it.</summary>
    public string? What { get; set; }

    public string? Limit { get; set; }

    public required string Source { get; init; }

    public required Surety Surety { get; init; }
}

/// <summary>The thresholds of the seismic design categories as they are written.</summary>
internal sealed record SeismicFile
{
    public required string Source { get; init; }

    public required Surety Surety { get; init; }

    public string? Notes { get; set; }

    public required IReadOnlyList<SeismicLine> RiskCategories { get; init; }

    public static SeismicFile Read()
    {
        using var text = Assembly.GetExecutingAssembly().GetManifestResourceStream("rules/seismic-category.json")
            ?? throw new InvalidOperationException("data/rules/seismic-category.json is not embedded.");
        return JsonSerializer.Deserialize(text, RuleFileJson.Default.SeismicFile)!;
    }
}

/// <summary>The thresholds of one risk category: a category reaches up to its number, exclusive.</summary>
internal sealed record SeismicLine
{
    public required string Name { get; init; }

    public required IReadOnlyDictionary<string, double> SdsBelow { get; init; }

    public required IReadOnlyDictionary<string, double> Sd1Below { get; init; }

    public required string Beyond { get; init; }

    public required double S1From { get; init; }

    public required string S1Category { get; init; }
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.KebabCaseLower,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    AllowDuplicateProperties = false,
    Converters = [typeof(Kebab<ClauseStatus>), typeof(Kebab<ComparisonWord>), typeof(Kebab<Dimension>), typeof(Kebab<Surety>)])]
[JsonSerializable(typeof(RuleFile))]
[JsonSerializable(typeof(SeismicFile))]
internal sealed partial class RuleFileJson : JsonSerializerContext;

/// <summary>Enumerations by their names in kebab case, and never by number.</summary>
internal sealed class Kebab<T>() : JsonStringEnumConverter<T>(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false)
    where T : struct, Enum;
