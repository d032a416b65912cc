using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Weather;

/// <summary>The weather of a site.</summary>
public static class FromSite
{
    private const double Degree = Math.PI / 180;

    /// <summary>The mean days of the site's climate; or why they are not known. Nothing stands in for a climate that nobody named.</summary>
    public static Known<WeatherResult> Of(Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        return site.Climate is null ? new Message("analysis.weather.no-climate")
            : Climate.Find(site.Climate) is not { } climate
                ? Message.Of("analysis.weather.unknown-climate", ("climate", site.Climate), ("known", new Argument.List(Climate.All.Select(c => (Argument)c.Key).ToSequence())))
            : Of(climate, site.Latitude ?? climate.Latitude, site.Elevation?.Metres ?? climate.Elevation);
    }

    /// <summary>The mean days of a climate at a place.</summary>
    /// <param name="climate">Twelve months.</param>
    /// <param name="latitude">Degrees north.</param>
    /// <param name="elevation">m.</param>
    public static WeatherResult Of(Climate climate, double latitude, double elevation)
    {
        ArgumentNullException.ThrowIfNull(climate);
        return new()
        {
            Climate = climate,
            Hours = climate.Months.SelectMany(m => MeanDay.Of(m, latitude * Degree, elevation)).ToSequence(),
            Reference = climate.Months.Select(m => ReferenceEvaporation.Of(m, latitude * Degree, elevation)).ToSequence(),
            Assumptions = [new Assumption("climate", Message.Of("analysis.assumed.climate", ("place", climate.Place)), climate.Key, climate.Source)],
        };
    }
}
