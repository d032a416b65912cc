using Clomwright.Analysis.Mix;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Rules;

/// <summary>Puts one clause to one house and stamps the rulings: the only place where findings are made.</summary>
internal static class Findings
{
    /// <summary>Key of the reason "its number is missing".</summary>
    public const string NumberMissing = "rules.because.number-missing";

    /// <summary>The findings of one clause; at least one.</summary>
    public static IEnumerable<Finding> Answer(WrittenClause clause, HouseGeometry house, Sequence<CheckedDemand> demands = default, MixResult? mix = null)
    {
        var entered = house.House.Rules.Entered.LastOrDefault(e => e.Body == clause.Clause.Adopted && e.Rule == clause.Rule.Key);
        if (entered is not null && clause.Measures is { } measures && LimitText.TryRead(entered.Limit, measures, out var limit, out _))
        {
            clause = ClauseRegister.Entered(clause, limit!);
        }

        return Rulings(clause, house, demands, mix).Select(ruling => Stamped(clause, ruling, entered));
    }

    private static Ruling[] Rulings(WrittenClause clause, HouseGeometry house, Sequence<CheckedDemand> demands, MixResult? mix) => clause.Clause.Status switch
    {
        ClauseStatus.Computed when clause.Limit is { } limit => WithRivals(clause, house, ClauseRegister.Method(clause, demands, mix), limit),
        ClauseStatus.Computed => [new Ruling(Whole(clause), new Verdict.NotChecked(Message.Of(NumberMissing, ("rule", clause.Rule.Key), ("body", clause.Clause.Adopted))))],
        ClauseStatus.Judgement => [Judged(clause, house)],
        ClauseStatus.NotYet when clause.Clause.Body == Engineering.Body => [.. Engineering.NotYet(clause, house, demands)],
        ClauseStatus.NotYet => [new Ruling(Whole(clause), new Verdict.NotChecked(clause.Says!))],
        _ => [new Ruling(Whole(clause), new Verdict.NotApplicable(clause.Says!))],
    };

    /// <summary>The same rule held against each rival's number, noted beside the finding on the same thing.</summary>
    private static Ruling[] WithRivals(WrittenClause clause, HouseGeometry house, RuleMethod method, Limit asked)
    {
        Ruling[] rulings = [.. method(house, asked.Value)];
        foreach (var rival in clause.Rivals)
        {
            var answers = rival.Limit is { } limit ? method(house, limit.Value) : default(Sequence<Ruling>?);
            for (var i = 0; i < rulings.Length; i++)
            {
                if (rulings[i].Verdict is Verdict.Met or Verdict.FallsShort)
                {
                    rulings[i] = rulings[i].Noting(Sentences.Of(rival, answers?[i].Verdict));
                }
            }
        }

        return rulings;
    }

    private static Ruling Judged(WrittenClause clause, HouseGeometry house)
    {
        if (Questions.DoNotArise(clause.Rule.Key, house) is { } because)
        {
            return new Ruling(Whole(clause), new Verdict.NotApplicable(because));
        }

        var answer = house.House.Rules.Answers.LastOrDefault(a => a.Question == clause.Rule.Key);
        if (answer is null)
        {
            return new Ruling(Whole(clause), clause.Clause.Body == "ground" ? new Verdict.NotChecked(clause.Says!) : new Verdict.NeedsJudgement(clause.Says!));
        }

        var said = Sentences.Of(answer, clause.Says!);
        return new Ruling(Whole(clause), answer.Holds ? new Verdict.Met(said) : new Verdict.FallsShort(said));
    }

    private static Finding Stamped(WrittenClause clause, Ruling ruling, EnteredLimit? entered)
    {
        var notes = ruling.Notes;
        if (ruling.Verdict is Verdict.Met or Verdict.FallsShort && Sentences.Of(clause.Clause.Source.Surety, entered) is { } sure)
        {
            notes = notes.Plus(sure);
        }

        return new Finding(clause.Rule, clause.Clause, ruling.Subject, ruling.Verdict, ruling.Places, notes);
    }

    /// <summary>The subject of a clause that is about the house as a whole.</summary>
    private static string Whole(WrittenClause clause) => clause.Clause.Body == "ground" ? "site" : "house";
}
