using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>The place, the floor and the trench.</summary>
internal static class SiteChecks
{
    /// <summary>No day had more rain than 2 m.</summary>
    private static readonly Length DayRainMost = Length.FromMillimetres(2000);

    public static void Of(House house, Checks checks)
    {
        var site = house.Site;
        checks.Within("site.latitude", Number(site.Latitude), -90, 90);
        checks.Within("site.longitude", Number(site.Longitude), -180, 180);
        if (site.Elevation is { } elevation)
        {
            _ = checks.NotBelow("site.elevation", elevation, Length.FromMillimetres(-450_000)) && checks.NotAbove("site.elevation", elevation, Length.FromMillimetres(9_000_000));
        }

        checks.Word("site.climate", site.Climate);
        Months(site, checks);
        Forecast(site, checks);
        checks.Height("site.grade", site.Grade);
        checks.Word("site.loads", site.Loads);
        checks.Within("site.groundSnow", site.GroundSnow, 0, 50_000);
        checks.Positive("site.windSpeed", site.WindSpeed, 120);
        checks.Word("site.exposure", site.Exposure);
        checks.Within("site.seismicSds", Number(site.SeismicSds), 0, 10);
        checks.Within("site.seismicSd1", Number(site.SeismicSd1), 0, 10);
        checks.Within("site.seismicS1", Number(site.SeismicS1), 0, 10);
        checks.Word("site.siteClass", site.SiteClass);
        checks.Word("site.riskCategory", site.RiskCategory);
        checks.Word("site.floodZone", site.FloodZone);
        checks.Word("site.termites", site.Termites);
        checks.Word("site.weathering", site.Weathering);
        checks.Word("site.energyZone", site.EnergyZone);
        checks.Word("site.iceBarrier", site.IceBarrier);
        if (site.FrostDepth is { } frost)
        {
            _ = checks.NotNegative("site.frostDepth", frost) && checks.NotAbove("site.frostDepth", frost, Limits.Height);
        }

        checks.Positive("site.soilBearing", site.SoilBearing, 10e6);
        checks.Within("site.groundFall", site.GroundFall, -1, 1);
        if (site.Soil is { } soil)
        {
            checks.Word("site.soil.class", soil.Class);
            checks.Within("site.soil.friction", soil.Friction, 0, Math.PI / 4);
            checks.Within("site.soil.cohesion", soil.Cohesion, 0, 10e6);
            checks.Within("site.soil.density", soil.Density, 500, 4000);
        }

        if (site.Freezing is { } freezing)
        {
            checks.Within("site.freezing.degreeDays", Number(freezing.DegreeDays), 0, 10_000);
            checks.Within("site.freezing.days", Number(freezing.Days), 1, 366);
            checks.Within("site.freezing.meanTemperature", freezing.MeanTemperature, -40, 40);
            checks.Word("site.freezing.ground", freezing.Ground);
            checks.Word("site.freezing.surface", freezing.Surface);
        }

        if (house.Trench is { } trench)
        {
            checks.Size("trench.width", trench.Width, 2 * Limits.Thick);
            checks.Size("trench.depth", trench.Depth, Limits.Height);
            if (trench.Outlet is { } outlet)
            {
                _ = checks.NotBelow("trench.outlet", outlet, -10 * Limits.Height) && checks.NotAbove("trench.outlet", outlet, Limits.Height);
            }

            checks.Within("trench.fall", trench.Fall, 0, 1);
            if (trench.OutletRun is { } run)
            {
                _ = checks.NotNegative("trench.outletRun", run) && checks.NotAbove("trench.outletRun", run, 100 * Limits.Height);
            }

            if (trench.GradeBeam is { } beam)
            {
                checks.Size("trench.gradeBeam.width", beam.Width, 2 * Limits.Thick);
                checks.Size("trench.gradeBeam.depth", beam.Depth, Limits.Height);
            }
        }
    }

    /// <summary>Twelve of them, none beyond what was ever measured, none that contradicts itself.</summary>
    public static void Months(Site site, Checks checks)
    {
        if (site.Months.Count == 0)
        {
            return;
        }

        if (site.Climate is not null)
        {
            checks.Error("site.months", "building.climate-both");
        }

        if (site.Months.Count != 12)
        {
            checks.Error("site.months", "building.months-count", ("count", site.Months.Count));
        }

        if (site.Latitude is null)
        {
            checks.Error("site.months", "building.months-latitude");
        }

        for (var i = 0; i < site.Months.Count; i++)
        {
            var (month, path) = (site.Months[i], $"site.months[{i}]");
            var warm = checks.Within($"{path}.high", month.High, -70, 60) & checks.Within($"{path}.low", month.Low, -80, 50) & checks.Within($"{path}.dewPoint", month.DewPoint, -90, 35);
            checks.Within($"{path}.wind", month.Wind, 0, 40);
            checks.Within($"{path}.sun", Amount.Number(month.Sun), 0, 45);
            var wet = checks.NotNegative($"{path}.rain", month.Rain) && checks.NotAbove($"{path}.rain", month.Rain, Limits.Height);
            var days = checks.Within($"{path}.wetDays", Amount.Number(month.WetDays), 0, i == 1 ? 29 : i is 3 or 5 or 8 or 10 ? 30 : 31);
            if (warm && month.Low.Celsius > month.High.Celsius)
            {
                checks.Error($"{path}.low", "building.month-low", ("low", month.Low.Amount), ("high", month.High.Amount));
            }
            else if (warm && month.DewPoint.Celsius > month.High.Celsius)
            {
                checks.Error($"{path}.dewPoint", "building.month-dew", ("dew", month.DewPoint.Amount), ("high", month.High.Amount));
            }

            if (wet && days && month.WetDays == 0 && month.Rain > Length.Zero)
            {
                checks.Error($"{path}.wetDays", "building.month-rain", ("rain", new Argument.Exact(month.Rain)));
            }
        }
    }

    /// <summary>Each day once, none colder by day than by night, none beyond what was ever measured.</summary>
    private static void Forecast(Site site, Checks checks)
    {
        checks.Count("site.forecast", site.Forecast.Count, 0, Limits.Items);
        var days = new HashSet<DateOnly>();
        for (var i = 0; i < site.Forecast.Count; i++)
        {
            var (day, path) = (site.Forecast[i], $"site.forecast[{i}]");
            if (!days.Add(day.Date))
            {
                checks.Error($"{path}.date", "building.forecast-twice", ("date", day.Date));
            }

            if (checks.Within($"{path}.high", day.High, -70, 60) & checks.Within($"{path}.low", day.Low, -80, 50) && day.Low.Celsius > day.High.Celsius)
            {
                checks.Error($"{path}.low", "building.day-low", ("low", day.Low.Amount), ("high", day.High.Amount));
            }

            _ = checks.NotNegative($"{path}.rain", day.Rain) && checks.NotAbove($"{path}.rain", day.Rain, DayRainMost);
            checks.Within($"{path}.wind", day.Wind, 0, 60);
            checks.Within($"{path}.sun", Number(day.Sun), 0, 45);
        }
    }

    public static void Layers(string path, Sequence<Layer> layers, Checks checks)
    {
        checks.Count(path, layers.Count, 0, Limits.Items);
        for (var i = 0; i < layers.Count; i++)
        {
            checks.Word($"{path}[{i}].name", layers[i].Name);
            checks.Size($"{path}[{i}].depth", layers[i].Depth, Limits.Thick);
            checks.Word($"{path}[{i}].material", layers[i].Material);
        }
    }

    private static Amount? Number(double? value) => value is { } number ? Amount.Number(number) : null;
}
