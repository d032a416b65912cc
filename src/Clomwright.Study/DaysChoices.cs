using Clomwright.Analysis;
using Clomwright.Analysis.Days;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study;

/// <summary>Another way to go about a job, and when it would be done.</summary>
/// <param name="What">The way, in words.</param>
/// <param name="Top">Days until the top of the cob.</param>
/// <param name="Roof">Days until the poles are raised.</param>
public sealed record DaysChoice(Message What, DayBand Top, DayBand Roof);

/// <summary>A week to start in.</summary>
/// <param name="Start">Its first day of work.</param>
/// <param name="Roof">Days from then until the poles are raised.</param>
/// <param name="FrostRisk">Share of seasons, 0 to 1, with a night of frost within a week of fresh cob.</param>
public sealed record StartWeek(DateOnly Start, DayBand Roof, double FrostRisk);

/// <summary>What other ways and other weeks would bring, in the same drawn weather.</summary>
public sealed record DaysChoices
{
    /// <summary>Seasons drawn for each way; half of them for each week.</summary>
    public required int Seasons { get; init; }

    /// <summary>As planned, then one more person, tarps on frames, lower lifts.</summary>
    public required Sequence<DaysChoice> Ways { get; init; }

    /// <summary>Every second week of the year after the planned start.</summary>
    public required Sequence<StartWeek> Weeks { get; init; }

    /// <summary>The week with the shortest job that nine seasons in ten keep to, frost kept out of nine in ten; null where no week does.</summary>
    public StartWeek? Best => Weeks.Where(w => w.Roof.P90 is not null && w.FrostRisk <= FrostAllowed).MinBy(w => w.Roof.P90);

    /// <summary>The last week before frost comes too often, counting on from the planned start; null where the planned one is too late already.</summary>
    public StartWeek? LastSafe => Weeks.TakeWhile(w => w.FrostRisk <= FrostAllowed).LastOrDefault();

    /// <summary>Share of seasons in which a night of frost on young cob is put up with.</summary>
    public const double FrostAllowed = 0.1;
}

/// <summary>Tries them.</summary>
internal static class DaysChoicesOf
{
    private const int Seasons = 200, SeasonsOfWeek = 100, WeeksApart = 2, Starts = 26;

    /// <summary>The choices of a house; or why they cannot be told.</summary>
    /// <param name="study">Of the house.</param>
    /// <param name="watch">Is told how far it is and may give up.</param>
    public static Known<DaysChoices> Of(HouseStudy study, Watch watch)
    {
        if (study.DaysAsked.Value is not { } asked)
        {
            return study.DaysAsked.NotChecked!;
        }

        // What the wall allows is asked, not what a day kept to leaves of it.
        asked = asked with { Seasons = Seasons, Crew = asked.Crew with { RoofOn = null }, PlasterOn = null };
        var (done, all) = (0, 4 + Starts);
        DaysResult Run(DaysQuestion other)
        {
            watch.Cancelled.ThrowIfCancellationRequested();
            var result = FromDrying.Of(other, watch with { Tell = null });
            watch.Tell?.Invoke((double)++done / all);
            return result;
        }

        DaysChoice Way(string key, DaysQuestion other)
        {
            var result = Run(other);
            return new(new Message(key), result.Mark(DaysResult.WallTop)?.Days ?? default, result.Mark(WorkList.Raise)?.Days ?? default);
        }

        var lower = study.House with { Lifts = Lower(study) };
        DaysChoice[] ways =
        [
            Way("study.days.as-planned", asked),
            Way("study.days.one-more", asked with { Crew = asked.Crew with { People = asked.Crew.People + 1 } }),
            Way("study.days.tarps", asked with { Tarps = true }),
            .. HouseStudy.Of(lower, study.Options).DaysAsked.Value is { } low ? new[] { Way("study.days.lower-lifts", asked with { Amounts = low.Amounts, Sectors = low.Sectors, Plaster = low.Plaster, Log = low.Log }) } : [],
        ];
        var weeks = Enumerable.Range(0, Starts).Select(i =>
        {
            var start = asked.Crew.Start.AddDays(7 * WeeksApart * i);
            var result = Run(asked with { Crew = asked.Crew with { Start = start }, Plaster = null, Log = null, Seasons = SeasonsOfWeek });
            return new StartWeek(start, result.Mark(WorkList.Raise)?.Days ?? result.Finish, result.FrostRisk);
        });
        return new DaysChoices { Seasons = Seasons, Ways = ways.ToSequence(), Weeks = weeks.ToSequence() };
    }

    /// <summary>Lifts three quarters as high.</summary>
    private static LiftPlan Lower(HouseStudy study)
    {
        var lifts = study.Geometry.Lifts;
        var rise = lifts[^1].Top - lifts[0].Bottom;
        return new() { Method = study.House.Lifts.Method, Height = new Length(rise.Nanometres / lifts.Count / 4 * 3) };
    }
}
