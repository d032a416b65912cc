using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.Weather;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Comfort;

/// <summary>Warmth, damp and sun of a placed house under its roof.</summary>
public static class FromRoof
{
    /// <summary>All of it. Total: what is missing is said in the result.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">What holds the roof.</param>
    /// <param name="weather">The site's mean days.</param>
    /// <param name="dryDensity">Of the cob, kg/m3.</param>
    public static ComfortResult Of(HouseGeometry geometry, RoofResult roof, Known<WeatherResult> weather, double dryDensity)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var house = geometry.House;
        var numbers = ComfortNumbers.Of(house.Assumed);
        var parts = new ShellParts(geometry, roof, numbers, dryDensity);
        var solved = new SolvedSections();
        var shell = new Shell(geometry, parts, numbers, solved);
        var sun = SunOf(geometry, parts, weather);
        Known<YearResult> year = weather.NotChecked ?? new Message("analysis.comfort.no-latitude");
        Known<DampResult> damp = year.NotChecked!;
        if (weather.Value is { } known && sun.Value is { } rays)
        {
            var drawn = YearWeather.Drawn(known);
            var lived = new HouseYear(shell, rays).Run(drawn);
            year = lived;
            damp = new DampWall(geometry, shell, numbers, rays, drawn).Of(lived);
        }

        return new ComfortResult
        {
            Solved = solved, Parts = Described(shell), Windows = shell.Windows, Edges = shell.Edges, Ground = shell.Ground, Losses = Losses(shell), Volume = shell.Volume, Airing = shell.Airing,
            GlassByWind = ByWind(shell), Sun = sun, Year = year, Damp = damp, Lined = LinedThrough(shell, year.Value, numbers),
            Assumptions = [.. year.Is ? weather.Value!.Assumptions : [], .. parts.Assumptions, .. Leaned(numbers, house)], Calculations = Worked(shell, numbers),
        };
    }

    /// <summary>The sun in the room alone, at once; or why it is not known.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">What holds the roof: its eave shades.</param>
    /// <param name="weather">The site's mean days, that know its latitude where nobody wrote it.</param>
    public static Known<SunInRoom> SunOf(HouseGeometry geometry, RoofResult roof, Known<WeatherResult> weather)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        return SunOf(geometry, new ShellParts(geometry, roof, ComfortNumbers.Of(geometry.House.Assumed), 1), weather);
    }

    private static Known<SunInRoom> SunOf(HouseGeometry geometry, ShellParts parts, Known<WeatherResult> weather) =>
        (geometry.House.Site.Latitude ?? weather.Value?.Climate.Latitude) is { } north ? new SunInRoom(geometry, north, parts.Eave) : new Message("analysis.comfort.no-latitude");

    /// <summary>The year alone, ready to run: for measuring how long it takes.</summary>
    internal static Func<YearResult> YearOf(HouseGeometry geometry, RoofResult roof, WeatherResult weather, double dryDensity)
    {
        var numbers = ComfortNumbers.Of(geometry.House.Assumed);
        var parts = new ShellParts(geometry, roof, numbers, dryDensity);
        var (shell, sun, drawn) = (new Shell(geometry, parts, numbers, new()), new SunInRoom(geometry, geometry.House.Site.Latitude ?? weather.Climate.Latitude, parts.Eave), YearWeather.Drawn(weather));
        return () => new HouseYear(shell, sun).Run(drawn);
    }

    /// <summary>What each fix would bring, each tried in the same drawn year; or why it is not known. Takes as long as a year for each.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">What holds the roof.</param>
    /// <param name="weather">The site's mean days.</param>
    /// <param name="dryDensity">Of the cob, kg/m3.</param>
    /// <param name="lived">The house as described through its year, where that is known: it is not run again.</param>
    public static Known<FixResults> FixesOf(HouseGeometry geometry, RoofResult roof, Known<WeatherResult> weather, double dryDensity, ComfortResult? lived = null)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        if (weather.Value is not { } known)
        {
            return weather.NotChecked!;
        }

        var numbers = ComfortNumbers.Of(geometry.House.Assumed);
        var latitude = geometry.House.Site.Latitude ?? known.Climate.Latitude;
        var (drawn, sections) = (YearWeather.Drawn(known), lived?.Solved ?? new());
        var results = Fixes.Of(geometry.House, numbers).ToArray().EachBesideOthers(fix =>
        {
            var changed = geometry with { House = fix.House };
            var parts = new ShellParts(changed, roof, numbers, dryDensity);
            var (shell, sun) = (new Shell(changed, parts, numbers, sections), new SunInRoom(changed, latitude, parts.Eave));
            var isAsDescribed = ReferenceEquals(fix.House, geometry.House);
            var year = (isAsDescribed ? lived?.Year.Value : null) ?? new HouseYear(shell, sun).Run(drawn);
            var damp = (isAsDescribed ? lived?.Damp.Value : null) ?? new DampWall(changed, shell, numbers, sun, drawn).Of(year);
            return new FixResult(fix.Key, fix.What, shell.Loss, year.Heated.Heat, year.Wood.Mass, year.Free.HotHours, damp.Later.Share(damp.Limit));
        }).ToSequence();
        return new FixResults(results[0].Heat, results[0].HotHours, results);
    }

    /// <summary>The wall in the first winter; or why it is not known.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">What holds the roof.</param>
    /// <param name="weather">The site's mean days.</param>
    /// <param name="dryDensity">Of the cob, kg/m3.</param>
    /// <param name="lived">The house through its year.</param>
    /// <param name="drying">The forecast of drying.</param>
    public static Known<FirstWinter> FirstWinterOf(HouseGeometry geometry, RoofResult roof, Known<WeatherResult> weather, double dryDensity, ComfortResult lived, Known<DryingResult> drying)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        ArgumentNullException.ThrowIfNull(lived);
        var water = BuildingWater.Of(geometry, drying, dryDensity);
        if (lived.Year.Value is not { } year || lived.Sun.Value is not { } sun || weather.Value is not { } known)
        {
            return lived.Year.NotChecked ?? lived.Sun.NotChecked!;
        }

        if (water.Value is not { } still)
        {
            return water.NotChecked!;
        }

        var numbers = ComfortNumbers.Of(geometry.House.Assumed);
        var shell = new Shell(geometry, new ShellParts(geometry, roof, numbers, dryDensity), numbers, lived.Solved);
        return new FirstWinter(new DampWall(geometry, shell, numbers, sun, YearWeather.Drawn(known)).Worst(year.Heated, still.IntoRoom), still);
    }

    private static Sequence<PartHeat> Described(Shell shell)
    {
        var pieces = shell.Parts.WallPieces();
        var all = new List<PartHeat>();
        PartHeat Part(string name, PartKind kind, double area, BuildUp part) => new(name, kind, area, part, DailyHeat.Of(part));
        foreach (var group in pieces.GroupBy(p => (p.Inside, p.Outside)).OrderBy(g => g.Key is (null, null) ? 0 : 1))
        {
            var area = group.Sum(p => p.Area);
            var part = Part("wall", PartKind.Wall, area, shell.Parts.Wall(group.Sum(p => p.Area * p.Thickness) / area, group.Key.Inside, group.Key.Outside));
            all.Add(part with { Linings = new[] { group.Key.Inside?.Name, group.Key.Outside?.Name }.OfType<string>().ToSequence() });
        }

        if (pieces.Count > 0)
        {
            // Damp cob: 3 % of its dry mass above rest, what a first winter may leave.
            all.Add(Part("wall-damp", PartKind.Wall, 0, shell.Parts.Wall(pieces.Sum(p => p.Area * p.Thickness) / pieces.Sum(p => p.Area), water: 0.03)));
        }

        foreach (var stem in shell.Elements.Where(e => e.Key == PartKind.Stem).GroupBy(e => e.Part.Layers.Count))
        {
            all.Add(Part(stem.Key == 1 ? "stem" : "stem-lined", PartKind.Stem, stem.Sum(e => e.Area), stem.First().Part));
        }

        if (shell.Parts.Roof(wet: false) is { } dry && shell.Elements.FirstOrDefault(e => e.Name == "roof") is { } roof)
        {
            all.Add(Part("roof-soaked", PartKind.Roof, roof.Area, roof.Part));
            all.Add(Part("roof-dry", PartKind.Roof, 0, dry));
        }

        return all.ToSequence();
    }

    private static Sequence<KindLoss> Losses(Shell shell) => Enum.GetValues<PartKind>().Select(kind => new KindLoss(kind, kind switch
    {
        PartKind.Edges => shell.EdgeLoss,
        PartKind.Air => shell.AirLoss,
        _ => shell.Elements.Where(e => e.Key == kind).Sum(e => e.Area * e.Transmittance),
    })).ToSequence();

    private static Sequence<double> ByWind(Shell shell)
    {
        var winds = new double[8];
        for (var i = 0; i < shell.Windows.Count; i++)
        {
            winds[((int)Math.Round(shell.Facing(i) / (Math.PI / 4)) + 8) % 8] += shell.Windows[i].Glass;
        }

        return winds.ToSequence();
    }

    /// <summary>ISO 13788: months in turn from the first in which water gathers.</summary>
    private static Sequence<LinedDamp> LinedThrough(Shell shell, YearResult? year, ComfortNumbers numbers) => year is null ? [] : shell.Elements
        .Where(e => e.Key == PartKind.Wall && e.Part.Layers.Count > 0 && e.Name.Contains('+', StringComparison.Ordinal)).DistinctBy(e => e.Name[e.Name.IndexOf('+', StringComparison.Ordinal)..])
        .Select(e => Through(e.Name[(e.Name.IndexOf('+', StringComparison.Ordinal) + 2)..], e.Part, shell, year, numbers)).ToSequence();

    private static LinedDamp Through(string name, BuildUp part, Shell shell, YearResult year, ComfortNumbers numbers)
    {
        const double month = 30.4 * 86400;
        var given = (shell.People * numbers["comfort-vapour-each"] + numbers["comfort-other-vapour"]) / 3600 / (shell.Airing * shell.Volume / 3600);
        var (water, most, wettest) = (0.0, 0.0, 0);
        for (var k = 0; k < 24; k++)
        {
            var m = year.Heated.Months[(k + 8) % 12];
            var inside = Math.Min(m.Vapour + given * Psychrometrics.VapourGas * (m.Air + 273.15), Condensation.Saturation(m.Air));
            var steady = Condensation.Of(part, m.Air, inside, m.Outside, Math.Min(m.Vapour, Condensation.Saturation(m.Outside)), cut: 0.05);
            var gathers = steady.Planes.Sum(p => p.Rate);
            if (gathers <= 0 && water > 0)
            {
                gathers = -Drying(part, m, inside);
            }

            water = Math.Max(0, water + gathers * month);
            if (water > most)
            {
                (most, wettest) = (water, m.Number);
            }
        }

        return new(name, most, water, wettest);
    }

    /// <summary>What water lying at the colder face of the lining would dry by, both ways, kg/(m2 s).</summary>
    private static double Drying(BuildUp part, MonthComfort m, double inside)
    {
        var through = part.Inside + part.Layers[0].Resistance;
        var wet = Condensation.Saturation(m.Air - through / part.Resistance * (m.Air - m.Outside));
        var (first, rest) = (part.Layers[0].Vapour * part.Layers[0].Depth, part.Layers.Skip(1).Sum(l => l.Vapour * l.Depth));
        return Math.Max(0, 2e-10 * ((wet - inside) / Math.Max(0.01, first) + (wet - m.Vapour) / Math.Max(0.01, rest)));
    }

    private static Sequence<Assumption> Leaned(ComfortNumbers numbers, House house)
    {
        var comfort = house.Comfort;
        bool Said(string key) => key switch
        {
            "comfort-people" => comfort.People is not null,
            "comfort-airing" => comfort.Airing is not null,
            "comfort-warm" => comfort.Warm is not null,
            "comfort-stove" => comfort.Stove is not null,
            "comfort-ground" => ThermalMaterial.Ground(house.Site.Soil?.Class) is not null,
            _ => false,
        };
        return numbers.Assumed(ComfortNumbers.Keys.Where(k => k != ComfortNumbers.Cob && !Said(k)));
    }

    private static Sequence<Calculation> Worked(Shell shell, ComfortNumbers numbers)
    {
        var sheets = new List<Calculation>();
        var seen = new HashSet<string>();
        foreach (var part in Described(shell))
        {
            if (seen.Add(part.Address))
            {
                sheets.Add(part.Part.Worked(numbers, part.Address, part.Kind == PartKind.Roof ? "comfort-film-up" : "comfort-film-wall", "comfort-film-outside"));
            }
        }

        sheets.Add(shell.Ground.Worked());
        sheets.AddRange(shell.Windows.Select(w => w.How).OfType<Calculation>());
        return sheets.ToSequence();
    }
}
