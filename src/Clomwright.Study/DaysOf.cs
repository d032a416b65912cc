using Clomwright.Analysis;
using Clomwright.Analysis.Days;
using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather.Seasons;
using Clomwright.Evidence;

namespace Clomwright.Study;

/// <summary>Asks for the days of a job what the rest of the house tells.</summary>
internal static class DaysOf
{
    private static readonly (string Task, string Order)[] Ordered =
    [
        ("trench", "trench-gravel"), ("rubble", "trench-gravel"), (WorkList.Stem, "stem-stone"), (WorkList.Beam, "bond-beam"), ("poles", "roof-poles"), ("deck", "roof-deck"),
        ("membrane", "roof-membrane"), ("soil", "roof-soil"), ("soil", "roof-stone"),
    ];

    /// <summary>The question but for how the wall dries, which asks when its first lift is laid; or why it cannot be asked.</summary>
    /// <param name="study">Of the house.</param>
    public static Known<DaysQuestion> Outline(HouseStudy study)
    {
        if (study.House.Crew is not { } crew)
        {
            return new Message("analysis.days.no-crew");
        }

        if (study.Weather.Value is not { } weather)
        {
            return study.Weather.NotChecked!;
        }

        var numbers = WorkNumbers.Of(study.House.Assumed);
        var (record, amounts) = (study.Options.Record, Amounts(study, numbers));
        crew = crew with { Start = JobLog.StartOf(record, crew) };
        return new DaysQuestion
        {
            Crew = crew, PlasterOn = study.House.Finishes.Min(f => f.Start), Amounts = amounts, Log = JobLog.Of(record, crew, amounts, study.Options.Today ?? DateOnly.MinValue), Numbers = numbers, Weather = weather, Sectors = [],
            Known = study.House.Site.Forecast.Select(d => new ForecastDay(d.Date, 1000 * d.Rain.Metres, d.High.Celsius, d.Low.Celsius) { Wind = d.Wind?.MetresPerSecond, Sun = d.Sun }).ToSequence(),
            Latitude = study.House.Site.Latitude ?? weather.Climate.Latitude, Elevation = study.House.Site.Elevation?.Metres ?? weather.Climate.Elevation,
        };
    }

    /// <summary>The question; or why it cannot be asked.</summary>
    /// <param name="study">Of the house.</param>
    public static Known<DaysQuestion> Question(HouseStudy study)
    {
        if (study.DaysOutline.Value is not { } outline)
        {
            return study.DaysOutline.NotChecked!;
        }

        var known = KnownToDrying.Of(study.Geometry, study.Roof, study.Mix);
        var sectors = FromWeather.Reduced(study.Rising, outline.Weather, known, Sectors.Of(study.Geometry));
        if (sectors.Value is not { } models)
        {
            return sectors.NotChecked!;
        }

        var plaster = FromWeather.Question(study.Rising, known, DryingGoal.Plaster) is { Value: { } asked } ? After(FromWeather.MilestonesOf(asked, outline.Weather)) : null;
        return outline with { Sectors = models.All, Plaster = plaster };
    }

    /// <summary>Days from the last lift until plaster may go on.</summary>
    private static Band? After(Known<DryingMilestones> milestones)
    {
        static double? Days(WallMilestones m) => m is { All: true, Plaster: { } day } ? Math.Max(1, day - m.Laid[^1]) : null;
        return milestones.Value is { } m && Days(m.Fast) is { } fast && Days(m.Slow) is { } slow ? new Band(fast, slow) : null;
    }

    private static JobAmounts Amounts(HouseStudy study, WorkNumbers numbers)
    {
        var geometry = study.Geometry;
        double Net(string order) => study.Quantities.Orders.Where(o => o.Key == order).Sum(o => o.Net?.Si ?? 0);
        return new()
        {
            Cob = Sectors.Cob(geometry),
            SetIn = SetIns.Hours(geometry, numbers),
            Heights = geometry.Lifts.Select(l => (l.Bottom.Metres + l.Top.Metres) / 2).ToSequence(),
            Rises = geometry.Lifts.Select(l => l.Top.Metres - l.Bottom.Metres).ToSequence(),
            Rest = Ordered.Select(o => new JobAmount(o.Task, Net(o.Order))).Append(new JobAmount("floor", study.Finishes.Floor.Value?.Area ?? 0))
                .GroupBy(a => a.Key, StringComparer.Ordinal).Select(g => new JobAmount(g.Key, g.Sum(a => a.Amount))).ToSequence(),
            PeopleForPole = study.Roof.Reciprocal.Value?.Poles.Max(pole => pole.People) ?? study.Roof.Plain.Value?.Rafters.Max(rafter => rafter.People) ?? 4,
            Coats = study.Finishes.Faces.Sum(f => f.Area * f.Coats.Count),
        };
    }
}
