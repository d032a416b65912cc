using Clomwright.Analysis.Weather;
using Clomwright.Building;
using static Clomwright.Analysis.Weather.ReferenceEvaporation;

namespace Clomwright.Analysis.Tests.Weather;

/// <summary>Sun and grass evaporation against published places and worked examples; mean days against their months.</summary>
public sealed class SunAndEvaporationTests
{
    private const double Degree = Math.PI / 180;

    // Rank published: NREL solar position algorithm (Reda and Andreas), 2003-10-17 12:30:30 at UTC-7, elevation without refraction; and a second place without it. 0.02 degree: the short series is good to 0.01.
    [Theory]
    [InlineData(2003, 10, 17, 19.508333333, 39.742476, -105.1786, 39.872046, 194.340241)]
    [InlineData(2012, 12, 22, 12, -41, 0, 72.4342, 359.08592)]
    [InlineData(2012, 12, 22, 12, -3, 0, 69.5715, 180.790356)]
    public void Sun_StandsWherePublished(int year, int month, int day, double hour, double latitude, double longitude, double elevation, double azimuth)
    {
        var place = Sun.At(Sun.JulianDay(year, month, day, hour), latitude * Degree, longitude * Degree);
        Assert.Equal(elevation, place.Elevation / Degree, 0.02);
        Assert.Equal(azimuth, place.Azimuth / Degree, 0.04);
    }

    // Rank published: the same paper's Julian day.
    [Fact]
    public void JulianDay_IsThePublished() => Assert.Equal(2452930.312847, Sun.JulianDay(2003, 10, 17, 19 + 30.5 / 60), 1e-6);

    // Rank published: FAO-56 examples 2, 3, 8, 9, 10, 14 and 17 (Bangkok, April), to the digits printed there (2 of the last digit where the example rounds between).
    [Fact]
    public void GrassEvaporation_IsTheWorkedExamples()
    {
        Near.Printed(81.8, Pressure(1800), .1);
        Near.Printed(.054, Psychrometric(Pressure(1800)), .001);
        Near.Printed(2.39, (Saturation(24.5) + Saturation(15)) / 2, .01);
        Near.Printed(32.2, Extraterrestrial(-20 * Degree, 246), .1);
        Near.Printed(11.7, DaylightHours(-20 * Degree, 246), .1);
        Near.Printed(14.45, SunOfHours(7.1, 10.9, 25.1), .02);
        Near.Printed(2.4, WindAtTwoMetres(3.2, 10), .1);
        var outside = Extraterrestrial(13.73 * Degree, 105);
        Near.Printed(38.06, outside, .02);
        Near.Printed(12.31, DaylightHours(13.73 * Degree, 105), .02);
        var sun = SunOfHours(8.5, DaylightHours(13.73 * Degree, 105), outside);
        Near.Printed(22.65, sun, .02);
        Near.Printed(28.54, ClearSky(2, outside), .02);
        var longWave = NetLongWave(34.8, 25.6, 2.85, sun / ClearSky(2, outside));
        Near.Printed(3.11, longWave, .02);
        var net = .77 * sun - longWave;
        Near.Printed(14.33, net, .02);
        Near.Printed(5.72, PenmanMonteith(net, .14, 30.2, 2, (Saturation(34.8) + Saturation(25.6)) / 2, 2.85, Pressure(2)), .01);
    }

    public static TheoryData<string> Places => [.. Climate.All.Select(c => c.Key)];

    // Rank property: the hours of a mean day give back the month they were made of. 4 % for the sun: shares of whole hours against a smooth day.
    [Theory, MemberData(nameof(Places))]
    public void MeanDays_GiveTheirMonthBack(string key)
    {
        var climate = Climate.Find(key)!;
        var weather = FromSite.Of(climate, climate.Latitude, climate.Elevation);
        Assert.Equal(288, weather.Hours.Count);
        foreach (var month in climate.Months)
        {
            var day = weather.Day(month.Number).ToArray();
            Assert.Equal(month.Mean, day.Average(h => h.Temperature), 1e-9);
            Near.Relative(month.Rain, day.Sum(h => h.Rain) * month.Days, 1e-9);
            Near.Relative(month.Sun, day.Sum(h => h.Level) * 3600 / 1e6, .04);
            Assert.All(day, h => Assert.InRange(h.Humidity, 0, 0.9801));
            Assert.All(day, h => Assert.True(h.DiffuseLevel >= 0 && h.BeamLevel >= 0 && (h.Level == 0 || h.Place.Elevation > 0)));
            Assert.InRange(weather.Reference[month.Number - 1], 0, 12);
        }
    }

    // Rank property: in northern noon the south face has more sun than the north face, and the north face has no beam in winter.
    [Fact]
    public void FacesTowardsTheSun_HaveMoreOfIt()
    {
        var day = FromSite.Of(Climate.Find("portland-or")!, 45.5, 60).Day(1);
        double Sum(ReadOnlySpan<WeatherHour> hours, double bearing)
        {
            var sum = 0.0;
            foreach (var hour in hours)
            {
                sum += hour.Upright(bearing * Degree);
            }

            return sum;
        }

        Assert.True(Sum(day, 180) > 1.5 * Sum(day, 0));
        Assert.Equal(Sum(day, 90), Sum(day, 270), 1e-6 * Sum(day, 90));
    }

    // Rank property: nothing stands in for a climate that nobody named, or that is not known.
    [Fact]
    public void WithoutAClimate_ThereIsNoWeather()
    {
        Assert.Equal("analysis.weather.no-climate", FromSite.Of(new Site()).NotChecked!.Key);
        Assert.Equal("analysis.weather.unknown-climate", FromSite.Of(new Site { Climate = "atlantis" }).NotChecked!.Key);
        Assert.True(FromSite.Of(new Site { Climate = "portland-or" }).Is);
    }
}
