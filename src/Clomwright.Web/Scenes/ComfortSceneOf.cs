using Clomwright.Analysis.Comfort;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Study;

namespace Clomwright.Web.Scenes;

/// <summary>Warmth, damp and sun of a house as the page draws them.</summary>
public static class ComfortSceneOf
{
    private const int FirstHour = 5, LastHour = 19;
    private const double Head = 1.6, Clear = 0.15;
    private static readonly int[] SeasonMonths = [12, 3, 6];
    private static readonly string[] Winds = ["n", "ne", "e", "se", "s", "sw", "w", "nw"];

    /// <summary>The scene.</summary>
    public static ComfortScene Scene(HouseStudy study, Phrasebook words)
    {
        ArgumentNullException.ThrowIfNull(study);
        var (pen, comfort) = (new Pen(words, study.House.Units), study.Comfort);
        var longest = Math.Max(1e-9, comfort.Losses.Max(l => Math.Abs(l.Loss)));
        var (length, top) = (study.Geometry.Curve.Length, study.Geometry.Wall.Top.Metres);
        return new ComfortScene
        {
            Figures = [.. Figures(comfort, pen)],
            NotChecked = comfort.Year.NotChecked is { } why ? pen.Say(why) : null,
            Bars = [.. comfort.Losses.Select(l => new ComfortBar(Word(l.Kind), pen.Say($"papers.comfort.part.{Word(l.Kind)}"), pen.Short(new Amount(l.Loss, Dimension.HeatLoss)), Math.Round(l.Loss / longest, 4)))],
            Walls = comfort.Damp.Value is { } damp ? [Wall("coldest", damp, damp.Coldest, study.Geometry, pen), Wall("damp", damp, damp.Later, study.Geometry, pen), Wall("unheated", damp, damp.Unheated, study.Geometry, pen)] : [],
            WallSize = [Pen.Round(length), Pen.Round(top)],
            Holes = [.. study.Geometry.Openings.SelectMany(o => Holes(study.Geometry, o))],
            Winds = comfort.Damp.Value is { } stand ? [.. stand.Winds.Select((c, w) => new ColdMark(Pen.Round(stand.Stations[c]), 0, pen.Say($"web.water.wind.{Winds[w]}")))] : [],
            Plan = PlanKeys.Of(study.Geometry),
            Seasons = comfort.Sun.Value is { } sun ? [.. SeasonMonths.Select(m => Season(sun, m, pen))] : [],
            NoSun = comfort.Sun.NotChecked is { } none ? pen.Say(none) : null,
            Parts =
            [
                .. comfort.Parts.Select(p => (IReadOnlyList<string>)
                [
                    string.Join(" + ", p.Linings.Prepend(pen.Say("papers.comfort.name." + p.Key))), pen.Short(new Amount(p.Part.Resistance, Dimension.Resistance)), pen.Short(new Amount(p.Part.Transmittance, Dimension.Transmittance)),
                    pen.Short(new Amount(p.Day.LagHours * 3600, Dimension.Time)), pen.Short(Amount.Fraction(p.Day.Decrement)),
                ]),
            ],
        };
    }

    /// <summary>What each fix would bring; takes as long as a year for each.</summary>
    public static ComfortFixes Fixes(HouseStudy study, Phrasebook words)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        return study.ComfortFixes.Value is not { } fixes ? new(pen.Say(study.ComfortFixes.NotChecked!), [])
            : new(null, [.. fixes.Fixes.Select(f => (IReadOnlyList<string>)
            [
                pen.Say(f.What), pen.Short(new Amount(f.Loss, Dimension.HeatLoss)), pen.Short(new Amount(f.Heat, Dimension.Energy)), pen.Short(new Amount(f.WoodMass, Dimension.Mass)),
                f.Key == "nothing" || !(fixes.Base > 0) ? "–" : pen.Short(Amount.Fraction(Math.Round(1 - f.Heat / fixes.Base, 2))), pen.Short(Amount.Fraction(Math.Round(f.Mould, 2))),
            ])]);
    }

    private static IEnumerable<Figure> Figures(ComfortResult comfort, Pen pen)
    {
        yield return new(pen.Say("papers.energy.loss"), pen.Short(new Amount(comfort.Loss, Dimension.HeatLoss)));
        if (comfort.Year.Value is { } year)
        {
            yield return new(pen.Say("papers.energy.heat"), pen.Short(new Amount(year.Heated.Heat, Dimension.Energy)));
            yield return new(pen.Say("papers.warmth.wood"), pen.Say("web.comfort.wood", ("mass", pen.Short(new Amount(year.Wood.Mass, Dimension.Mass))), ("stacked", pen.Short(new Amount(year.Wood.Stacked, Dimension.Volume)))));
            yield return new(pen.Say("papers.warmth.hottest"), pen.Short(new Amount(year.Free.Hottest.High, Dimension.Temperature)));
            yield return new(pen.Say("papers.warmth.coldest"), pen.Short(new Amount(year.Free.Coldest.Low, Dimension.Temperature)));
        }
    }

    private static ColdWall Wall(string key, DampResult damp, DampMonth month, HouseGeometry geometry, Pen pen)
    {
        var rows = damp.Heights.Count;
        int Row(double height) => Enumerable.Range(0, rows).MinBy(r => Math.Abs(damp.Heights[r] - height));
        int Column(int wind) => damp.Winds[wind];
        string Text(int column, int row) => pen.Short(new Amount(month.Temperatures[column * rows + row], Dimension.Temperature));
        (int Wind, int Foot, int Head)[] places = [.. Enumerable.Range(0, 8).Select(w => (w, Row(0), Row(Head)))];
        return new(
            key, pen.Say($"web.comfort.wall.{key}", ("month", new Message($"papers.month-short.{month.Month}"))),
            pen.Say("web.comfort.wall.says", ("air", new Amount(month.Air, Dimension.Temperature)), ("outside", new Amount(month.Outside, Dimension.Temperature)), ("dew", new Amount(month.DewPoint, Dimension.Temperature)),
                ("share", Amount.Fraction(Math.Round(month.Share(damp.Limit), 2)))),
            damp.Stations.Count, rows, string.Concat(month.Humidities.Select(h => h >= 1 ? '2' : h >= damp.Limit ? '1' : '0')),
            [.. places.SelectMany(p => new[] { p.Foot, p.Head }.Where(r => !InOpening(geometry, damp.Stations[Column(p.Wind)], damp.Heights[r])).Select(r => new ColdMark(Pen.Round(damp.Stations[Column(p.Wind)]), Pen.Round(damp.Heights[r]), Text(Column(p.Wind), r))))],
            [.. places.Select(p => (IReadOnlyList<string>)[pen.Say($"web.water.wind.{Winds[p.Wind]}"), Text(Column(p.Wind), p.Foot), Text(Column(p.Wind), p.Head)])]);
    }

    /// <summary>Words stand on the wall, not on a hole in it or half over its jamb.</summary>
    private static bool InOpening(HouseGeometry geometry, double station, double height) => geometry.Openings.Any(o =>
        height > o.Sill - Clear && height < o.Head + Clear && (Inside(o.Inside, station) || Inside(o.Inside, station + geometry.Curve.Length)));

    private static bool Inside(Span span, double station) => station > span.From - Clear && station < span.To + Clear;

    private static IEnumerable<double[][]> Holes(HouseGeometry geometry, OpeningPlace place)
    {
        var outline = Unrolled.Outline(geometry, place, Face.Inside);
        var ring = geometry.Curve.Length;
        yield return [.. outline.Select(p => Pen.Point(p.Along, p.Up))];
        if (outline.Any(p => p.Along > ring))
        {
            yield return [.. outline.Select(p => Pen.Point(p.Along - ring, p.Up))];
        }
    }

    private static SunSeason Season(SunInRoom sun, int month, Pen pen) => new(
        pen.Say($"web.comfort.season.{month}"),
        [.. Enumerable.Range(FirstHour, LastHour - FirstHour + 1).Where(h => sun.Place(month, h).Elevation > 0).Select(h => At(sun, month, h, pen))]);

    private static SunHour At(SunInRoom sun, int month, int hour, Pen pen)
    {
        var patches = sun.At(month, hour);
        var area = patches.Sum(p => p.FloorArea);
        return new(
            pen.Say("web.comfort.hour", ("hour", hour)),
            patches.Count == 0 ? pen.Say("web.comfort.no-sun-now") : pen.Say("web.comfort.sun-now", ("area", new Amount(area, Dimension.Area)), ("openings", new Argument.List(patches.Select(p => (Argument)p.Opening).ToSequence()))),
            [.. patches.Where(p => p.Floor.Count > 2).Select(p => p.Floor.Select(q => Pen.Point(q.East, q.North)).ToArray())],
            [.. patches.Where(p => p.Wall.Count > 2).Select(p => p.Wall.Select(q => Pen.Point(q.Along, q.Up)).ToArray())]);
    }

    private static string Word(PartKind kind) => kind.ToString().ToLowerInvariant();
}
