using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Rules;

namespace Clomwright.Study.Mends;

/// <summary>Tries what might mend a finding, each by making a new study of the changed house.</summary>
public static class MendsOf
{
    private const int Most = 3;

    /// <summary>At most three changes after which the rule falls short of fewer things, no other rule of more, none is left without an answer, and the description is no worse; where there is none, why each that was tried is not.</summary>
    public static Attempts Finding(HouseStudy study, Finding finding)
    {
        var (mends, inVain) = (new List<Mend>(), new List<Message>());
        foreach (var edit in finding.Verdict is Verdict.FallsShort ? Candidates.For(study, finding) : [])
        {
            if (mends.Count == Most)
            {
                break;
            }

            var changed = edit.Apply(study.House);
            if (changed == study.House)
            {
                continue;
            }

            var after = HouseStudy.Of(changed, study.Options, study);
            if (Against(study, after, finding, edit) is { } why)
            {
                inVain.Add(why);
            }
            else
            {
                mends.Add(new Mend(edit, Gain(study, edit, finding, after), IsOfWall(finding) ? after.FullTally : after.Tally));
            }
        }

        return new(mends.ToSequence(), mends.Count > 0 ? [] : inVain.Distinct().ToSequence());
    }

    /// <summary>What keeps a change from being a mend; null where nothing does.</summary>
    private static Message? Against(HouseStudy before, HouseStudy after, Finding finding, Edit edit)
    {
        var what = Differences.Of(edit, before.House, after.House);
        if (Wrong(before, after) is { } wrong)
        {
            return Message.Of("study.mend.wrong", ("edit", what), ("wrong", wrong));
        }

        if (!Helps(before, after, finding, edit))
        {
            return Message.Of("study.mend.still", ("edit", what));
        }

        var (was, now) = (Short(before, finding), Short(after, finding));
        return now.Where(rule => rule.Count() > was[rule.Key].Count()).Select(rule => rule.First()).ToList() is { Count: > 0 } others ? Message.Of("study.mend.others", ("edit", what), ("rules", Titles(others)))
            : Silenced(before, after, finding) is { Count: > 0 } silent ? Message.Of("study.mend.silent", ("edit", what), ("rules", Titles(silent)))
            : null;
    }

    private static Argument.List Titles(IEnumerable<Finding> findings) => new Argument.List(findings.Select(f => (Argument)f.Rule.Title).Distinct().Take(Most).ToSequence());

    /// <summary>Turning the ring of poles gives each landing a new place, so what counts there is how many stand badly; elsewhere it is the thing itself.</summary>
    private static bool Helps(HouseStudy before, HouseStudy after, Finding finding, Edit edit)
    {
        var (was, now) = (Short(before, finding), Short(after, finding));
        return now[RuleOf(finding)].Count() < was[RuleOf(finding)].Count()
            && (edit is Edit.TurnRoof || now[RuleOf(finding)].All(f => f.Subject != finding.Subject));
    }

    /// <summary>A change for the sake of the wall's model is tried with it; any other is not kept waiting for it.</summary>
    private static Sequence<Finding> Read(HouseStudy study, Finding finding) => IsOfWall(finding) ? study.AllFindings : study.Findings;

    private static bool IsOfWall(Finding finding) => finding.Clause.Body == RuleBook.WallModel;

    private static ILookup<(string, string), Finding> Short(HouseStudy study, Finding finding) => Read(study, finding).Where(f => f.Verdict is Verdict.FallsShort).ToLookup(RuleOf);

    private static Message? Wrong(HouseStudy before, HouseStudy after)
    {
        var errors = after.Diagnostics.Where(d => d.Severity == Severity.Error).ToList();
        return errors.Count > before.Diagnostics.Count(d => d.Severity == Severity.Error) ? (errors.Find(d => !before.Diagnostics.Contains(d)) ?? errors[^1]).What : null;
    }

    /// <summary>A change after which a rule that had an answer has none is no mend: a frame that cannot stand falls short of nothing.</summary>
    private static List<Finding> Silenced(HouseStudy before, HouseStudy after, Finding finding)
    {
        HashSet<(string, string)> still = [.. Answered(after, finding), .. Read(after, finding).Where(HasNumbers).Select(RuleOf)];
        var answered = Answered(before, finding);
        return [.. Read(after, finding).Where(f => f.Verdict is Verdict.NotChecked && answered.Contains(RuleOf(f)) && !still.Contains(RuleOf(f))).DistinctBy(RuleOf)];
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
