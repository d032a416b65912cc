using System.Text.Json;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Weather;

/// <summary>What is known of the days of a climate beyond monthly means. Each list has twelve months, January first.</summary>
/// <param name="WetAfterDry">How likely a wet day follows a dry one, 0 to 1.</param>
/// <param name="Alpha">Shape of a wet day's rain (gamma distribution); null where it is not known.</param>
/// <param name="High">Highest temperatures; null where only their means are known.</param>
/// <param name="LowDeviation">Standard deviation of the lowest temperature, K; null where it is not known.</param>
public sealed record ClimateDays(Sequence<double> WetAfterDry, Sequence<double>? Alpha, ClimateHighs? High, Sequence<double>? LowDeviation)
{
    internal static ClimateDays? Read(JsonElement root)
    {
        Sequence<double>? Row(string name) => root.TryGetProperty(name, out var row) ? row.EnumerateArray().Select(v => v.GetDouble()).ToSequence() : null;
        return Row("wetAfterDry") is not { } afterDry ? null : new(
            afterDry, Row("rainShape"),
            Row("highDryC") is { } dry ? new(dry, Row("highDryDeviation")!.Value, Row("highWetC")!.Value, Row("highWetDeviation")!.Value) : null, Row("lowDeviation"));
    }
}

/// <summary>Highest temperatures of dry and wet days, C, and their standard deviations, K.</summary>
public sealed record ClimateHighs(Sequence<double> Dry, Sequence<double> DryDeviation, Sequence<double> Wet, Sequence<double> WetDeviation);
