using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Study.Mends;

/// <summary>Tries what might mend a finding, each by making a new study of the changed house.</summary>
public static class MendsOf
{
    private const int Most = 3;

    /// <summary>At most three changes after which the finding no longer falls short, no other rule falls short that did not before, and the description is no worse.</summary>
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
        return StillShort(after, finding) || NewlyShort(study, after) || Worse(study, after)
            ? null
            : new Mend(edit, Gain(edit, finding, after), after.Tally);
    }

    private static bool StillShort(HouseStudy after, Finding finding) => after.Findings.Any(f => f.Verdict is Verdict.FallsShort && Same(f, finding));

    private static bool NewlyShort(HouseStudy before, HouseStudy after)
    {
        var known = before.Findings.Where(f => f.Verdict is Verdict.FallsShort).Select(Name).ToHashSet();
        return after.Findings.Any(f => f.Verdict is Verdict.FallsShort && !known.Contains(Name(f)));
    }

    private static bool Worse(HouseStudy before, HouseStudy after) =>
        after.Diagnostics.Count(d => d.Severity == Severity.Error) > before.Diagnostics.Count(d => d.Severity == Severity.Error);

    private static Message Gain(Edit edit, Finding finding, HouseStudy after)
    {
        var reached = after.Findings.FirstOrDefault(f => Same(f, finding));
        return (finding.Verdict, reached?.Verdict) switch
        {
            (Verdict.FallsShort { Comparisons: [var was, ..] }, Verdict.Met { Comparisons: [var now, ..] }) =>
                Message.Of("study.mend.from-to", ("edit", edit.What), ("was", was.Provided), ("now", now.Provided)),
            _ => Message.Of("study.mend.done", ("edit", edit.What)),
        };
    }

    private static bool Same(Finding a, Finding b) => Name(a) == Name(b);

    private static (string, string, string) Name(Finding finding) => (finding.Clause.Adopted, finding.Rule.Key, finding.Subject);
}
