using Clomwright.Building;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;
using static Clomwright.Files.Forms.Quantities;

namespace Clomwright.Files.Shape;

/// <summary>How the place and the ground stand in the file.</summary>
internal static class SiteShape
{

    public static Thing<Site> Site { get; } = MakeSite();

    public static Thing<Layer> Layer { get; } = MakeLayer();

    public static Thing<Trench> Trench { get; } = MakeTrench();

    private static Thing<Site> MakeSite()
    {
        var latitude = Keys<Site>.Maybe("latitude", Number, s => s.Latitude, leavesOut: true);
        var longitude = Keys<Site>.Maybe("longitude", Number, s => s.Longitude, leavesOut: true);
        var elevation = Keys<Site>.Maybe("elevation", Lengths, s => s.Elevation, leavesOut: true);
        var climate = Keys<Site>.MaybeThing("climate", Text, s => s.Climate, leavesOut: true);
        var months = Keys<Site>.List("months", MakeMonth(), s => s.Months, leavesOut: true);
        var forecast = Keys<Site>.List("forecast", MakeDay(), s => s.Forecast, leavesOut: true);
        var horizon = Keys<Site>.List("horizon", MakeHorizonPoint(), s => s.Horizon, leavesOut: true);
        var grade = Keys<Site>.Maybe("grade", Lengths, s => s.Grade, leavesOut: true);
        var loads = Keys<Site>.MaybeThing("loads", Text, s => s.Loads, leavesOut: true);
        var groundSnow = Keys<Site>.Maybe("groundSnow", Stresses, s => s.GroundSnow, leavesOut: true);
        var windSpeed = Keys<Site>.Maybe("windSpeed", Speeds, s => s.WindSpeed, leavesOut: true);
        var exposure = Keys<Site>.MaybeThing("exposure", Text, s => s.Exposure, leavesOut: true);
        var sds = Keys<Site>.Maybe("seismicSds", Number, s => s.SeismicSds, leavesOut: true);
        var sd1 = Keys<Site>.Maybe("seismicSd1", Number, s => s.SeismicSd1, leavesOut: true);
        var s1 = Keys<Site>.Maybe("seismicS1", Number, s => s.SeismicS1, leavesOut: true);
        var siteClass = Keys<Site>.MaybeThing("siteClass", Text, s => s.SiteClass, leavesOut: true);
        var risk = Keys<Site>.MaybeThing("riskCategory", Text, s => s.RiskCategory, leavesOut: true);
        var flood = Keys<Site>.MaybeThing("floodZone", Text, s => s.FloodZone, leavesOut: true);
        var termites = Keys<Site>.MaybeThing("termites", Text, s => s.Termites, leavesOut: true);
        var weathering = Keys<Site>.MaybeThing("weathering", Text, s => s.Weathering, leavesOut: true);
        var energyZone = Keys<Site>.MaybeThing("energyZone", Text, s => s.EnergyZone, leavesOut: true);
        var iceBarrier = Keys<Site>.MaybeThing("iceBarrier", Text, s => s.IceBarrier, leavesOut: true);
        var frost = Keys<Site>.Maybe("frostDepth", Lengths, s => s.FrostDepth, leavesOut: true);
        var bearing = Keys<Site>.Maybe("soilBearing", Stresses, s => s.SoilBearing, leavesOut: true);
        var soil = Keys<Site>.MaybeThing("soil", MakeSoil(), s => s.Soil, leavesOut: true);
        var freezing = Keys<Site>.MaybeThing("freezing", MakeFreezing(), s => s.Freezing, leavesOut: true);
        var groundFall = Keys<Site>.Maybe("groundFall", Slopes, s => s.GroundFall, leavesOut: true);
        var emergency = Keys<Site>.MaybeThing("emergency", CareShape.Emergency, s => s.Emergency, leavesOut: true);
        var plot = Keys<Site>.MaybeThing("plot", PlotShape.Plot, s => s.Plot, leavesOut: true);
        return new Thing<Site>(
            "site",
            [latitude, longitude, elevation, climate, months, forecast, horizon, grade, loads, groundSnow, windSpeed, exposure, sds, sd1, s1, siteClass, risk, flood, termites, weathering, energyZone, iceBarrier, frost, bearing, soil, freezing, groundFall, emergency, plot],
            v => new Site
            {
                Latitude = v.Of(latitude), Longitude = v.Of(longitude), Elevation = v.Of(elevation), Climate = v.Of(climate), Months = v.Of(months), Forecast = v.Of(forecast), Horizon = v.Of(horizon), Grade = v.Of(grade),
                Loads = v.Of(loads), GroundSnow = v.Of(groundSnow), WindSpeed = v.Of(windSpeed), Exposure = v.Of(exposure), SeismicSds = v.Of(sds),
                SeismicSd1 = v.Of(sd1), SeismicS1 = v.Of(s1), SiteClass = v.Of(siteClass), RiskCategory = v.Of(risk),
                FloodZone = v.Of(flood), Termites = v.Of(termites), Weathering = v.Of(weathering), EnergyZone = v.Of(energyZone), IceBarrier = v.Of(iceBarrier), FrostDepth = v.Of(frost),
                SoilBearing = v.Of(bearing), Soil = v.Of(soil), Freezing = v.Of(freezing), GroundFall = v.Of(groundFall), Emergency = v.Of(emergency), Plot = v.Of(plot),
            });
    }

    private static Thing<SiteMonth> MakeMonth()
    {
        var high = Keys<SiteMonth>.Needed("high", Temperatures, m => m.High);
        var low = Keys<SiteMonth>.Needed("low", Temperatures, m => m.Low);
        var dew = Keys<SiteMonth>.Needed("dewPoint", Temperatures, m => m.DewPoint);
        var wind = Keys<SiteMonth>.Needed("wind", Speeds, m => m.Wind);
        var sun = Keys<SiteMonth>.Needed("sun", Number, m => m.Sun);
        var rain = Keys<SiteMonth>.Needed("rain", Lengths, m => m.Rain);
        var wet = Keys<SiteMonth>.Needed("wetDays", Number, m => m.WetDays);
        return new Thing<SiteMonth>(
            "site-month", [high, low, dew, wind, sun, rain, wet], v => new SiteMonth(v.Of(high), v.Of(low), v.Of(dew), v.Of(wind), v.Of(sun), v.Of(rain), v.Of(wet)));
    }

    private static Thing<SiteDay> MakeDay()
    {
        var date = Keys<SiteDay>.Needed("date", Date, d => d.Date);
        var high = Keys<SiteDay>.Needed("high", Temperatures, d => d.High);
        var low = Keys<SiteDay>.Needed("low", Temperatures, d => d.Low);
        var rain = Keys<SiteDay>.Needed("rain", Lengths, d => d.Rain);
        var wind = Keys<SiteDay>.Maybe("wind", Speeds, d => d.Wind);
        var sun = Keys<SiteDay>.Maybe("sun", Number, d => d.Sun);
        return new Thing<SiteDay>(
            "site-day", [date, high, low, rain, wind, sun], v => new SiteDay(v.Of(date), v.Of(high), v.Of(low), v.Of(rain)) { Wind = v.Of(wind), Sun = v.Of(sun) });
    }

    private static Thing<HorizonPoint> MakeHorizonPoint()
    {
        var bearing = Keys<HorizonPoint>.Needed("bearing", Angles, p => p.Bearing);
        var angle = Keys<HorizonPoint>.Needed("angle", Angles, p => p.Angle);
        return new Thing<HorizonPoint>("horizon-point", [bearing, angle], v => new HorizonPoint(v.Of(bearing), v.Of(angle)));
    }

    private static Thing<Soil> MakeSoil()
    {
        var kind = Keys<Soil>.MaybeThing("class", Text, s => s.Class);
        var friction = Keys<Soil>.Maybe("friction", Angles, s => s.Friction);
        var cohesion = Keys<Soil>.Maybe("cohesion", Stresses, s => s.Cohesion);
        var density = Keys<Soil>.Maybe("density", Densities, s => s.Density);
        return new Thing<Soil>("soil", [kind, friction, cohesion, density],
            v => new Soil { Class = v.Of(kind), Friction = v.Of(friction), Cohesion = v.Of(cohesion), Density = v.Of(density) });
    }

    private static Thing<Freezing> MakeFreezing()
    {
        var index = Keys<Freezing>.Needed("degreeDays", Number, f => f.DegreeDays);
        var days = Keys<Freezing>.Needed("days", Number, f => f.Days);
        var mean = Keys<Freezing>.Needed("meanTemperature", Temperatures, f => f.MeanTemperature);
        var ground = Keys<Freezing>.Or("ground", Text, f => f.Ground, "silt");
        var surface = Keys<Freezing>.Or("surface", Text, f => f.Surface, "bare");
        return new Thing<Freezing>("freezing", [index, days, mean, ground, surface], v => new Freezing(v.Of(index), v.Of(days), v.Of(mean), v.Of(ground), v.Of(surface)));
    }

    private static Thing<Layer> MakeLayer()
    {
        var name = Keys<Layer>.Needed("name", Text, l => l.Name);
        var depth = Keys<Layer>.Needed("depth", Lengths, l => l.Depth);
        var material = Keys<Layer>.MaybeThing("material", Text, l => l.Material);
        return new Thing<Layer>("layer", [name, depth, material], v => new Layer(v.Of(name), v.Of(depth), v.Of(material)));
    }

    private static Thing<Trench> MakeTrench()
    {
        var width = Keys<Trench>.Needed("width", Lengths, t => t.Width);
        var depth = Keys<Trench>.Needed("depth", Lengths, t => t.Depth);
        var outlet = Keys<Trench>.Maybe("outlet", Lengths, t => t.Outlet);
        var fall = Keys<Trench>.Maybe("fall", Slopes, t => t.Fall);
        var bearing = Keys<Trench>.Maybe("outletBearing", Angles, t => t.OutletBearing);
        var run = Keys<Trench>.Maybe("outletRun", Lengths, t => t.OutletRun);
        var beam = Keys<Trench>.MaybeThing("gradeBeam", MakeGradeBeam(), t => t.GradeBeam);
        return new Thing<Trench>("trench", [width, depth, outlet, fall, bearing, run, beam], v => new Trench(v.Of(width), v.Of(depth), v.Of(outlet))
        {
            Fall = v.Of(fall), OutletBearing = v.Of(bearing), OutletRun = v.Of(run), GradeBeam = v.Of(beam),
        });
    }

    private static Thing<GradeBeam> MakeGradeBeam()
    {
        var width = Keys<GradeBeam>.Needed("width", Lengths, b => b.Width);
        var depth = Keys<GradeBeam>.Needed("depth", Lengths, b => b.Depth);
        return new Thing<GradeBeam>("grade-beam", [width, depth], v => new GradeBeam(v.Of(width), v.Of(depth)));
    }
}
