using System.Collections.Frozen;
using System.Text.Json;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Weather;

/// <summary>The mean of one month.</summary>
/// <param name="Number">1 to 12.</param>
/// <param name="High">Mean of the days' highest temperature, C.</param>
/// <param name="Low">Mean of the days' lowest temperature, C.</param>
/// <param name="DewPoint">Mean dew point, C.</param>
/// <param name="Wind">Mean wind 10 m above open ground, m/s.</param>
/// <param name="Sun">Mean of a day's sun on a level square metre, MJ.</param>
/// <param name="Rain">Of the whole month, mm.</param>
/// <param name="WetDays">Days with rain.</param>
public sealed record ClimateMonth(int Number, double High, double Low, double DewPoint, double Wind, double Sun, double Rain, double WetDays)
{
    /// <summary>Mean temperature, C.</summary>
    public double Mean => (High + Low) / 2;

    /// <summary>The middle day, as a day of the year.</summary>
    public double MiddleDay => 30.42 * Number - 15;

    /// <summary>How many days it has.</summary>
    public int Days => Number is 2 ? 28 : Number is 4 or 6 or 9 or 11 ? 30 : 31;
}

/// <summary>Twelve months of a place.</summary>
/// <param name="Key">As a house file names it.</param>
/// <param name="Latitude">Degrees north.</param>
/// <param name="Elevation">m above the sea.</param>
/// <param name="Months">January first.</param>
/// <param name="Source">Of the numbers.</param>
public sealed record Climate(string Key, double Latitude, double Elevation, Sequence<ClimateMonth> Months, Source Source)
{
    /// <summary>The station or place in words.</summary>
    public Message Place => new($"analysis.place.{Key}");

    /// <summary>What is known of single days; null where only monthly means are.</summary>
    public ClimateDays? Daily { get; init; }

    private static readonly FrozenDictionary<string, Climate> Known = Load();

    /// <summary>Every known climate, by key.</summary>
    public static Sequence<Climate> All => Known.Values.OrderBy(c => c.Key, StringComparer.Ordinal).ToSequence();

    /// <summary>The climate of a key; null when it is not known.</summary>
    public static Climate? Find(string? key) => key is not null && Known.TryGetValue(key, out var climate) ? climate : null;

    private static FrozenDictionary<string, Climate> Load()
    {
        var assembly = typeof(Climate).Assembly;
        return assembly.GetManifestResourceNames().Where(name => name.StartsWith("climates/", StringComparison.Ordinal)).Select(name =>
        {
            using var document = JsonDocument.Parse(assembly.GetManifestResourceStream(name)!);
            return Read(document.RootElement);
        }).ToFrozenDictionary(c => c.Key, StringComparer.Ordinal);
    }

    private static Climate Read(JsonElement root)
    {
        double[] Row(string name) => [.. root.GetProperty(name).EnumerateArray().Select(v => v.GetDouble())];
        var (high, low, dew, wind, sun, rain, wet) = (Row("highC"), Row("lowC"), Row("dewPointC"), Row("windMs"), Row("sunMJ"), Row("rainMm"), Row("wetDays"));
        return new(
            root.GetProperty("key").GetString()!, root.GetProperty("latitude").GetDouble(), root.GetProperty("elevationM").GetDouble(),
            Enumerable.Range(0, 12).Select(i => new ClimateMonth(i + 1, high[i], low[i], dew[i], wind[i], sun[i], rain[i], wet[i])).ToSequence(),
            Sources.Get(root.GetProperty("source").GetString()!)) { Daily = ClimateDays.Read(root) };
    }
}
