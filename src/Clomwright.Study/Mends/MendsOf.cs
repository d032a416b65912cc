using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Rules;

namespace Clomwright.Study.Mends;

/// <summary>Tries what might mend a finding, each by making a new study of the changed house.</summary>
public static class MendsOf
{
    private const int Most = 3;

    /// <summary>At most three changes after which the rule falls short of fewer things, no other rule of more, none is left without an answer, and the description is no worse.</summary>
    public static Sequence<Mend> Finding(HouseStudy study, Finding finding) => finding.Verdict is Verdict.FallsShort
        ? Candidates.For(study, finding).Select(edit => Tried(study, finding, edit)).OfType<Mend>().Take(Most).ToSequence()
        : [];

    private static Mend? Tried(HouseStudy study, Finding finding, Edit edit)
    {
        var changed = edit.Apply(study.House);
        if (changed == study.House)
        {
            return null;
        }

        var after = HouseStudy.Of(changed, study.Options, study);
        return Helps(study, after, finding, edit) && !Worse(study, after) && !Silences(study, after, finding) ? new Mend(edit, Gain(study, edit, finding, after), IsOfWall(finding) ? after.FullTally : after.Tally) : null;
    }

    /// <summary>Turning the ring of poles gives each landing a new place, so what counts there is how many stand badly; elsewhere it is the thing itself.</summary>
    private static bool Helps(HouseStudy before, HouseStudy after, Finding finding, Edit edit)
    {
        var (was, now) = (Short(before, finding), Short(after, finding));
        return now[RuleOf(finding)].Count() < was[RuleOf(finding)].Count()
            && now.All(rule => rule.Count() <= was[rule.Key].Count())
            && (edit is Edit.TurnRoof || now[RuleOf(finding)].All(f => f.Subject != finding.Subject));
    }

    /// <summary>A change for the sake of the wall's model is tried with it; any other is not kept waiting for it.</summary>
    private static Sequence<Finding> Read(HouseStudy study, Finding finding) => IsOfWall(finding) ? study.AllFindings : study.Findings;

    private static bool IsOfWall(Finding finding) => finding.Clause.Body == RuleBook.WallModel;

    private static ILookup<(string, string), Finding> Short(HouseStudy study, Finding finding) => Read(study, finding).Where(f => f.Verdict is Verdict.FallsShort).ToLookup(RuleOf);

    private static bool Worse(HouseStudy before, HouseStudy after) =>
        after.Diagnostics.Count(d => d.Severity == Severity.Error) > before.Diagnostics.Count(d => d.Severity == Severity.Error);

    /// <summary>A change after which a rule that had an answer has none is no mend: a frame that cannot stand falls short of nothing.</summary>
    private static bool Silences(HouseStudy before, HouseStudy after, Finding finding)
    {
        HashSet<(string, string)> still = [.. Answered(after, finding), .. Read(after, finding).Where(HasNumbers).Select(RuleOf)];
        var unanswered = Read(after, finding).Where(f => f.Verdict is Verdict.NotChecked).Select(RuleOf).Where(rule => !still.Contains(rule)).ToHashSet();
        return Answered(before, finding).Overlaps(unanswered);
    }

    /// <summary>Not checked only because a load is not known: what is known is met, and says so.</summary>
    private static bool HasNumbers(Finding finding) => finding.Notes.Any(n => n.Key == "rules.note.known-loads");

    private static HashSet<(string, string)> Answered(HouseStudy study, Finding finding) =>
        [.. Read(study, finding).Where(f => f.Verdict is Verdict.Met or Verdict.FallsShort or Verdict.NeedsJudgement).Select(RuleOf)];

    private static Message Gain(HouseStudy before, Edit edit, Finding finding, HouseStudy after)
    {
        if (edit is Edit.TurnRoof)
        {
            return Message.Of("study.mend.turned", ("edit", edit.What), ("was", Short(before, finding)[RuleOf(finding)].Count()), ("now", Short(after, finding)[RuleOf(finding)].Count()),
                ("away", Amount.Metres(Turning.Distance(after.Geometry, 0))));
        }

        var what = Differences.Of(edit, before.House, after.House);
        var reached = Read(after, finding).FirstOrDefault(f => RuleOf(f) == RuleOf(finding) && f.Subject == finding.Subject);
        return (finding.Verdict, reached?.Verdict) switch
        {
            (Verdict.FallsShort { Comparisons: [{ Limit.Si: > 0 } was, ..] }, Verdict.Met { Comparisons: [{ Limit.Si: > 0 } now, ..] }) when now.Limit != was.Limit && was.Provided.Dimension != Dimension.Days =>
                Message.Of("study.mend.used", ("edit", what), ("was", Share(was)), ("now", Share(now))),
            (Verdict.FallsShort { Comparisons: [var was, ..] }, Verdict.Met { Comparisons: [var now, ..] }) =>
                Message.Of("study.mend.from-to", ("edit", what), ("was", was.Provided), ("now", now.Provided)),
            _ => Message.Of("study.mend.done", ("edit", what)),
        };
    }

    /// <summary>Where the limit moves with the change, as a capacity does, the demand alone would say nothing.</summary>
    private static Amount Share(Comparison comparison) => Amount.Fraction(comparison.Provided.Si / comparison.Limit.Si);

    private static (string, string) RuleOf(Finding finding) => (finding.Clause.Adopted, finding.Rule.Key);
}
