using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Weather;

/// <summary>The weather of a site.</summary>
public static class FromSite
{
    private const double Degree = Math.PI / 180;
    private static readonly Source Months = new("site-months", "Months of the site, as its author wrote them", Surety.Entered);

    /// <summary>The mean days of the site's climate; or why they are not known. Nothing stands in for a climate that nobody named.</summary>
    public static Known<WeatherResult> Of(Site site)
    {
        ArgumentNullException.ThrowIfNull(site);
        return site.Months.Count > 0 ? Given(site) : site.Climate is null ? new Message("analysis.weather.no-climate")
            : Climate.Find(site.Climate) is not { } climate
                ? Message.Of("analysis.weather.unknown-climate", ("climate", site.Climate), ("known", new Argument.List(Climate.All.Select(c => (Argument)c.Key).ToSequence())))
            : Of(climate, site.Latitude ?? climate.Latitude, site.Elevation?.Metres ?? climate.Elevation);
    }

    /// <summary>Of months that the author wrote: nothing about them is assumed but a height above the sea that is not said.</summary>
    private static Known<WeatherResult> Given(Site site)
    {
        if (HouseDiagnostics.OfMonths(site).Count > 0)
        {
            return new Message("analysis.weather.bad-months");
        }

        var elevation = Settle.Or(site.Elevation, Length.Zero, "elevation", new Message("analysis.assumed.elevation"), Sources.Get("drying-judgement"));
        var months = site.Months.Select((m, i) => new ClimateMonth(
            i + 1, m.High.Celsius, m.Low.Celsius, m.DewPoint.Celsius, m.Wind.MetresPerSecond, m.Sun, m.Rain.Metres * 1000, m.WetDays)).ToSequence();
        var climate = new Climate("given", site.Latitude!.Value, elevation.Value.Metres, months, Months);
        return Of(climate, climate.Latitude, climate.Elevation) with { Tag = Tag.Given, Assumptions = elevation.Assumptions };
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
            Reference = climate.Months.Select(m => ReferenceEvaporation.Of(m, latitude * Degree, elevation, climate.Months[(m.Number + 10) % 12].Mean, climate.Months[m.Number % 12].Mean)).ToSequence(),
            Assumptions = [new Assumption("climate", new Message("analysis.assumed.climate"), climate.Place, climate.Source)],
        };
    }
}
