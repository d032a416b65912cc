using Clomwright.Analysis.Weather;
using Clomwright.Analysis.Weather.Seasons;
using Clomwright.Numerics;
using Clomwright.Testing;

namespace Clomwright.Analysis.Tests.Weather;

/// <summary>The drawn weather against the numbers it is drawn from.</summary>
public sealed class SeasonTests
{
    private static readonly int Years = Counts.Of(500, 8000);

    public static TheoryData<string> Climates => [.. Climate.All.Select(c => c.Key)];

    private static SeasonWeather Of(string key, ulong seed = 2) =>
        new(DailyTable.Of(Climate.Find(key)!), Climate.Find(key)!.Latitude * Math.PI / 180, new Philox(seed));

    private static SeasonDay[] Year(SeasonWeather weather, int year)
    {
        var days = new SeasonDay[365];
        weather.Fill(year, new DateOnly(2025, 1, 1), days);
        return days;
    }

    /// <summary>
    /// Property of the table: over 500 years each month's share of wet days and its rain lie within three standard errors of it, seen between years, and the year's rain within 3 %.
    /// Of 120 comparisons at three standard errors one in three runs misses one by chance: the seed is fixed; 8000 years (--long) must lie within three of their smaller errors too.
    /// </summary>
    [Theory]
    [MemberData(nameof(Climates))]
    public void Months_have_the_table_s_wet_days_and_rain(string key)
    {
        var weather = Of(key);
        var years = Enumerable.Range(0, Years).Select(y => Year(weather, y)).ToArray();
        var climate = Climate.Find(key)!;
        var total = years.Average(days => days.Sum(d => d.Rain));
        Assert.InRange(total, 0.97 * climate.Months.Sum(m => m.Rain), 1.03 * climate.Months.Sum(m => m.Rain));
        foreach (var month in weather.Table.Months)
        {
            var of = years.Select(days => days.Where((_, d) => new DateOnly(2025, 1, 1).AddDays(d).Month == month.Number).ToArray()).ToArray();
            AssertMean(month.WetShare, [.. of.Select(days => days.Average(d => d.IsWet ? 1.0 : 0))], $"{key} wet in month {month.Number}");
            AssertMean(month.WetShare * month.MeanRain, [.. of.Select(days => days.Average(d => d.Rain))], $"{key} rain in month {month.Number}");
        }
    }

    /// <summary>Published: the correlations that Richardson 1981 measured, as his matrices leave them (0.634, 0.186, -0.193 worked from the matrices; 0.633, 0.186, -0.193 in his paper, from memory). 0.02: 180 000 days.</summary>
    [Fact]
    public void Residuals_are_correlated_as_published()
    {
        var draws = new Philox(7);
        var x = default(Residuals);
        var seen = new List<Residuals>();
        for (ulong d = 0; d < 180_000; d++)
        {
            x = x.Next(draws.Normal(1, d), draws.Normal(2, d), draws.Normal(3, d));
            seen.Add(x);
        }

        double Of(Func<Residuals, double> a, Func<Residuals, double> b) => seen.Average(r => a(r) * b(r)) / Math.Sqrt(seen.Average(r => a(r) * a(r)) * seen.Average(r => b(r) * b(r)));
        Assert.Equal(0.634, Of(r => r.High, r => r.Low), 0.02);
        Assert.Equal(0.186, Of(r => r.High, r => r.Sun), 0.02);
        Assert.Equal(-0.193, Of(r => r.Low, r => r.Sun), 0.02);
        Assert.Equal(1, seen.Average(r => r.High * r.High), 0.03);
    }

    /// <summary>Published, worked from Rothamsted's table: how likely five dry days follow a dry one, (1 - P(W|D))^5. 0.03: three errors of some 6 000 dry days whose spells overlap.</summary>
    [Theory]
    [InlineData(1, 0.046)]
    [InlineData(5, 0.202)]
    [InlineData(7, 0.257)]
    [InlineData(10, 0.154)]
    [InlineData(11, 0.037)]
    public void Dry_spells_last_as_the_chain_says(int month, double expected)
    {
        var weather = Of("rothamsted-gb");
        var (dry, long5) = (0, 0);
        for (var y = 0; y < Years; y++)
        {
            var days = Year(weather, y);
            for (var d = 0; d + 5 < days.Length; d++)
            {
                if (Enumerable.Range(d, 6).All(e => new DateOnly(2025, 1, 1).AddDays(e).Month == month) && !days[d].IsWet)
                {
                    dry++;
                    long5 += Enumerable.Range(d + 1, 5).All(e => !days[e].IsWet) ? 1 : 0;
                }
            }
        }

        Assert.Equal(expected, (double)long5 / dry, 0.03);
    }

    /// <summary>Property: temperatures and sun keep the months' means. 0.35 K and 6 %: crossed temperatures are swapped and sun is bounded.</summary>
    [Theory]
    [MemberData(nameof(Climates))]
    public void Months_keep_their_means(string key)
    {
        var weather = Of(key);
        var years = Enumerable.Range(0, Years).Select(y => Year(weather, y)).ToArray();
        foreach (var month in Climate.Find(key)!.Months)
        {
            var days = years.SelectMany(year => year.Where((_, d) => new DateOnly(2025, 1, 1).AddDays(d).Month == month.Number)).ToArray();
            Assert.Equal(month.Mean, days.Average(d => d.Mean), 0.35);
            Assert.InRange(days.Average(d => d.Sun), 0.94 * month.Sun, 1.06 * month.Sun + 0.2);
            Assert.InRange(days.Average(d => d.DewPoint), month.DewPoint - 1, month.DewPoint + 0.2);
            Assert.Equal(month.Wind, days.Average(d => d.Wind), 0.05 * month.Wind);
            Assert.All(days, d => Assert.True(d.Low <= d.High && d.DewPoint <= d.Mean && d.Sun >= 0 && d.Rain >= 0));
        }
    }

    /// <summary>Property: a day is the same whatever was asked before it, and a forecast takes its place and no other's.</summary>
    [Fact]
    public void A_forecast_takes_its_day_and_the_rest_stays()
    {
        var weather = Of("portland-or");
        SeasonDay[] plain = new SeasonDay[120], told = new SeasonDay[120], again = new SeasonDay[120];
        var first = new DateOnly(2027, 5, 1);
        weather.Fill(3, first, plain);
        weather.Fill(4, first, told);
        weather.Fill(3, first, again);
        Assert.Equal(plain, again);
        weather.Fill(3, first, told, [new ForecastDay(first.AddDays(2), 12, 15, 8)]);
        Assert.Equal((12, 15, 8), (told[2].Rain, told[2].High, told[2].Low));
        Assert.Equal(plain[..2], told[..2]);
        Assert.Equal(plain[60..], told[60..]);
    }

    private static void AssertMean(double expected, double[] years, string what)
    {
        var mean = years.Average();
        var error = Math.Sqrt(years.Average(y => (y - mean) * (y - mean)) / years.Length);
        Assert.True(Math.Abs(mean - expected) <= 3 * error, $"{what}: {mean:F4}, table {expected:F4}, standard error {error:F4}");
    }
}
