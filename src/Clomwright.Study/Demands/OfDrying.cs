using Clomwright.Analysis;
using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Finishes;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Rules;

namespace Clomwright.Study.Demands;

/// <summary>Lifts on the day they are laid, young cob against frost, and the days planned for roof and plaster, as the rules read them.</summary>
/// <remarks>Bands: met where the hard end is met, short where even the kind end is not; between the two a person answers.</remarks>
internal static class OfDrying
{
    public static IEnumerable<CheckedDemand> Demands(House house, Known<FreshCob> fresh, Known<DryingMilestones> milestones, FinishesResult finishes) =>
        [.. Lifts(fresh), Frost(milestones), .. Roof(house, milestones), .. house.Finishes.SelectMany(f => Plaster(f, house.Crew?.Begins ?? WorkBegins.Wall, milestones, finishes))];

    private static IEnumerable<CheckedDemand> Lifts(Known<FreshCob> known)
    {
        if (known.Value is not { } fresh)
        {
            yield return CheckedDemand.Unknown("fresh-height", "lifts", known.NotChecked!);
            yield return CheckedDemand.Unknown("lift-bulge", "lifts", known.NotChecked!);
            yield break;
        }

        var (low, high) = (Amount.Metres(fresh.Stands.Low!.Value), Amount.Metres(fresh.Stands.High!.Value));
        Sequence<Message> notes = fresh.Assumptions.Count == 0 ? []
            : [Message.Of("study.demand.leans-on", ("what", new Argument.List(fresh.Assumptions.Select(a => (Argument)a.What).ToSequence())))];
        foreach (var lift in fresh.Lifts)
        {
            var subject = lift.First == lift.Last ? $"lift {lift.First}" : $"lifts {lift.First}-{lift.Last}";
            var height = Amount.Metres(lift.Height);
            yield return (lift.Height > high.Si ? CheckedDemand.Against("fresh-height", subject, height, high)
                : CheckedDemand.Against("fresh-height", subject, height, low) with { Question = Message.Of("study.ask.fresh-height", ("height", height), ("low", low), ("high", high)) }) with { Notes = notes };
            yield return CheckedDemand.Against("lift-bulge", subject, new Amount(lift.Strength, Dimension.Stress), new Amount(fresh.BulgesUnder * lift.Weight, Dimension.Stress)) with
            {
                Question = Message.Of("study.ask.lift-bulge", ("over", Amount.Number(lift.OverWeight)), ("limit", Amount.Number(fresh.BulgesUnder))), Notes = notes,
            };
        }
    }

    private static CheckedDemand Frost(Known<DryingMilestones> known)
    {
        if (known.Value is not { } m)
        {
            return CheckedDemand.Unknown("frost-young", "lifts", known.NotChecked!);
        }

        var (fast, slow) = (Amount.Number(m.Fast.FrostNights), Amount.Number(m.Slow.FrostNights));
        var (kind, hard) = fast.Si <= slow.Si ? (fast, slow) : (slow, fast);
        return CheckedDemand.Measured("frost-young", "lifts", hard) with
        {
            Question = Message.Of("study.ask.frost-young", ("kind", kind), ("hard", hard)), Notes = [Message.Of("study.demand.frost-nights", ("source", Sources.Get("geng-1986")))],
        };
    }

    private static IEnumerable<CheckedDemand> Roof(House house, Known<DryingMilestones> known) => house.Roof is null ? []
        : [Planned("roof-landing", "roof", house.Crew?.RoofOn, house.Crew?.Begins ?? WorkBegins.Wall, known, m => (m.Fast.Roof, m.Slow.Roof), new Message("study.demand.no-roof-day"), "study.ask.roof-early")];

    private static IEnumerable<CheckedDemand> Plaster(Finish finish, WorkBegins begins, Known<DryingMilestones> known, FinishesResult finishes)
    {
        var subject = $"{finish.Face.ToString().ToLowerInvariant()} face";
        var notSaid = new Message("study.demand.no-plaster-day");
        yield return Planned("plaster-dry", subject, finish.Start, begins, known, m => (m.Fast.Plaster, m.Slow.Plaster), notSaid, "study.ask.plaster-early");
        yield return finish.Start is not { } start ? CheckedDemand.Unknown("plaster-season", subject, notSaid)
            : finishes.Of(finish.Face).Season is not { Value: { } season } unknown ? CheckedDemand.Unknown("plaster-season", subject, finishes.Of(finish.Face).Season.NotChecked!)
            : CheckedDemand.Measured("plaster-season", subject, Amount.Count(season.Months.Contains(start.Month) ? 0 : 1)) with { Notes = [Message.Of("study.demand.plaster-day", ("date", start))] };
    }

    /// <summary>Days that the forecast asks against days that are planned.</summary>
    private static CheckedDemand Planned(
        string rule, string subject, DateOnly? day, WorkBegins begins, Known<DryingMilestones> known, Func<DryingMilestones, (double? Fast, double? Slow)> asked, Message notSaid, string question)
    {
        if (day is not { } planned)
        {
            return CheckedDemand.Unknown(rule, subject, notSaid);
        }

        if (known.Value is not { } m)
        {
            return CheckedDemand.Unknown(rule, subject, known.NotChecked!);
        }

        var (fast, slow) = asked(m);
        Amount Days(double? days) => new(days ?? m.Looked, Dimension.Days);
        var given = new Amount(planned.DayNumber - m.Start.DayNumber, Dimension.Days);
        if (slow is null && given.Si >= m.Looked)
        {
            return CheckedDemand.Unknown(rule, subject, Message.Of("study.demand.not-reached-in", ("days", Days(null))));
        }

        Sequence<Message> notes =
        [
            slow is null ? Message.Of("study.demand.forecast-open", ("fast", Days(fast)), ("looked", Days(null))) : Message.Of("study.demand.forecast-band", ("fast", Days(fast)), ("slow", Days(slow))),
            Message.Of("study.demand.planned-day", ("date", planned), ("days", given)),
            .. begins == WorkBegins.Wall ? (Message[])[] : [Message.Of("study.demand.first-lift", ("date", m.Start))],
        ];
        return (Days(fast).Si > given.Si ? CheckedDemand.Against(rule, subject, given, Days(fast))
            : CheckedDemand.Against(rule, subject, given, Days(slow)) with { Question = Message.Of(question, ("date", planned), ("days", given), ("fast", Days(fast)), ("slow", Days(slow))) }) with { Notes = notes };
    }
}
