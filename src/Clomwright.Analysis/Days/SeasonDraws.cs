using Clomwright.Evidence;
using Clomwright.Numerics;

namespace Clomwright.Analysis.Days;

/// <summary>Draws from what is believed what each season is like beside its weather. Numbers come by place: the same season is the same for two plans, and on any number of threads.</summary>
/// <param name="asked">The job.</param>
/// <param name="believed">What is believed of crew and wall.</param>
internal sealed class SeasonDraws(DaysQuestion asked, Beliefs believed)
{
    /// <summary>Of the wall's drying, what decides the days until plaster: the rest of their spread is of its own. Our choice.</summary>
    private const double PlasterByDrying = 0.7;

    /// <summary>Nine seasons of ten between fast and slow are 1.645 deviations to each side.</summary>
    private const double NineOfTen = 1.645;

    private const ulong CrewStreams = 1UL << 40, LevelPlace = 0, PlasterPlace = 1, TaskPlaces = 2, DayPlaces = 1000, AbovePlace = 3000, DryingPlace = 3001, SharedPlace = 3002, WanderPlaces = 4000, VariancePlaces = 6000, TaskVariancePlaces = 8000, DryingVariancePlaces = 8500, LiftPlaces = 9000;
    private const int LiftsApart = 64;
    private readonly Philox draws = new(asked.Seed);
    private readonly int today = asked.Log?.Today ?? 0;

    /// <summary>What is believed of crew and wall.</summary>
    public Beliefs Believed => believed;

    /// <summary>Factors of a season, each lognormal, and how many times as fast as by its model each lift dries in it, by quarter and lift: as the whole wall does, and a little of its own.</summary>
    /// <param name="season">Which, from 0.</param>
    public (SeasonDraw Draw, Func<int, int, double> Rate) Of(int season)
    {
        var stream = CrewStreams + (ulong)season;
        double Normal(ulong place) => draws.Normal(stream, place);
        var pace = believed.Pace;
        var scale = pace.DayVariance > 0 ? Scale(stream, VariancePlaces, pace.Worth) : 1;
        var (days, unit) = (Math.Sqrt(pace.DayVariance) * scale, Math.Sqrt(pace.Unit) * scale);
        // Level and what is above the shoulder hang together: the second is drawn beside the first.
        var (first, second) = (Normal(LevelPlace), Normal(AbovePlace));
        var level = Math.Sqrt(pace.LevelVariance);
        var beside = level > 0 ? pace.Covariance / level : 0;
        var above = pace.Above + unit * (beside * first + Math.Sqrt(Math.Max(0, pace.AboveVariance - beside * beside)) * second);
        var (wander, at, upTo) = (unit * Math.Sqrt(pace.Wander), 0.0, today);
        double OfDay(int day)
        {
            for (; upTo < day; upTo++)
            {
                at += wander * Normal(WanderPlaces + (ulong)upTo);
            }

            return Math.Exp(at + days * Normal(DayPlaces + (ulong)day));
        }

        var dry = Normal(DryingPlace);
        var shared = believed.Tasks.Log + believed.Tasks.Spread * Normal(SharedPlace);
        // Every spread is a guess, those of tasks and of drying too.
        var worth = asked.Numbers["work-spread-worth"];
        var own = Beliefs.OwnTaskSpread(asked.Numbers) * Scale(stream, TaskVariancePlaces, worth);
        var wider = Scale(stream, DryingVariancePlaces, worth);
        var rate = Math.Exp(believed.Drying.Log + believed.Drying.Spread * wider * dry);
        var draw = new SeasonDraw(Math.Exp(pace.Level + unit * level * first), task => Math.Exp(shared + own * Normal(TaskPlaces + (ulong)task)), OfDay, Plaster(rate, Normal(PlasterPlace))) { Above = Math.Exp(above) };
        var misfit = asked.Numbers["work-drying-misfit"] * wider;
        return (draw, (quarter, lift) => rate * Math.Exp(misfit * Normal(LiftPlaces + (ulong)(LiftsApart * lift + quarter))));
    }

    /// <summary>By how much a deviation is more than thought: the inverse of a variance is gamma-distributed, drawn by as many squares of normal numbers as its degrees of freedom.</summary>
    private double Scale(ulong stream, ulong places, double worth)
    {
        var freedom = Math.Max(1, (int)Math.Round(worth));
        var squares = 0.0;
        for (var i = 0; i < freedom; i++)
        {
            var z = draws.Normal(stream, places + (ulong)i);
            squares += z * z;
        }

        return Math.Sqrt(freedom / squares);
    }

    /// <summary>Days from the last lift until plaster may go on: lognormal between the fast and the slow milestone, the faster the faster the wall dries.</summary>
    private int? Plaster(double rate, double own)
    {
        if (asked.Plaster is not { Low: { } low, High: { } high })
        {
            return null;
        }

        var before = asked.Numbers["work-drying-spread"];
        var z = before > 0 ? -PlasterByDrying * Math.Log(rate) / before + Math.Sqrt(1 - PlasterByDrying * PlasterByDrying) * own : own;
        return (int)Math.Ceiling(Math.Exp((Math.Log(low) + Math.Log(high)) / 2 + (Math.Log(high) - Math.Log(low)) / (2 * NineOfTen) * z));
    }
}
