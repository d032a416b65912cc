using Clomwright.Analysis.Mix;
using Clomwright.Evidence;

namespace Clomwright.Rules;

/// <summary>Every clause of every body of rules, read once from <c>data/rules</c>. Only it knows clauses; rules know houses.</summary>
internal static class ClauseRegister
{
    private static readonly string[] Files = ["ground", "engineering", "wall-model", "common-practice", "irc-cob@2021", "irc-cob@2024", "irc-dwelling@2021"];

    /// <summary>The bodies of rules in the order in which they are printed.</summary>
    public static Sequence<BodyOfRules> Bodies { get; } = Read();

    /// <summary>Whether a rule of a body is answered from what was computed of a house or read from its tests, and not from where everything stands alone.</summary>
    public static bool ReadsResults(Clause clause, Rule rule) => Engineering.Reads(clause, rule) || (clause.Body == "irc-cob" && IrcCob.TestMethods.ContainsKey(rule.Key));

    /// <summary>The method of a computed rule of a body.</summary>
    public static RuleMethod Method(WrittenClause clause, Sequence<CheckedDemand> demands, MixResult? mix) => clause.Clause.Body switch
    {
        _ when Engineering.Reads(clause.Clause, clause.Rule) => (house, limit) => Engineering.Of(clause, house, demands, limit),
        "irc-cob" when IrcCob.TestMethods.ContainsKey(clause.Rule.Key) => (house, limit) => IrcCob.OfTests(clause.Rule.Key, house.House.Mix, mix, limit),
        "irc-cob" => IrcCob.Methods[clause.Rule.Key],
        Dwelling.Body => Dwelling.Methods[clause.Rule.Key],
        _ => CommonPractice.Methods[clause.Rule.Key],
    };

    /// <summary>A clause with the number that a user read in the code that their office adopted. The number it replaces becomes a rival.</summary>
    public static WrittenClause Entered(WrittenClause clause, Limit limit) => clause with
    {
        Limit = limit,
        Rivals = clause is { Limit: { } shipped, Word: { } word } ? [new Rival(Asked(word, shipped), shipped, clause.Clause.Source), .. clause.Rivals] : clause.Rivals,
        Clause = clause.Clause with { Source = clause.Clause.Source with { Surety = Surety.Entered } },
    };

    private static Sequence<BodyOfRules> Read()
    {
        var bodies = new List<BodyOfRules>();
        foreach (var file in Files.Select(RuleFile.Read))
        {
            var own = file.Clauses.Select(line => Written(file, line)).ToList();
            if (bodies.Find(b => b.Adopted == file.Follows) is { } followed)
            {
                own = [.. followed.Clauses.Select(c => own.Find(o => o.Rule.Key == c.Rule.Key && o.Rule.Key != Unread) ?? CarriedOver(file, c))];
            }

            bodies.Add(new BodyOfRules(file.Body, file.Edition, own.OrderByDescending(c => c.Gate).ToSequence()));
        }

        return bodies.ToSequence();
    }

    private const string Unread = "unread";

    private static WrittenClause Written(RuleFile file, ClauseLine line)
    {
        var limit = line.Limit is null ? null : Number(file, line.Rule, line.Limit, line.Measures);
        return new WrittenClause
        {
            Rule = new Rule(line.Rule, new Message($"rules.title.{line.Rule}")),
            Clause = new Clause(
                file.Body, file.Edition, string.Join(", ", line.Numbers), line.Status,
                new Message(line.Measure is null ? "rules.measure.none" : $"rules.measure.{line.Measure}"),
                Sources.Get(line.Source) with { Surety = line.Surety }),
            Word = line.Word,
            Limit = limit,
            Measures = line.Measures,
            Gate = line.Gate,
            Says = line.Status switch
            {
                ClauseStatus.Computed => null,
                ClauseStatus.Judgement => new Message($"rules.ask.{line.Rule}"),
                _ => new Message($"rules.because.{line.Because}"),
            },
            Rivals = line.Rivals.Select(rival => Written(file, line, rival)).ToSequence(),
        };
    }

    private static Rival Written(RuleFile file, ClauseLine line, RivalLine rival)
    {
        var limit = rival.Limit is null ? null : Number(file, line.Rule, rival.Limit, line.Measures);
        var what = limit is null
            ? new Message($"rules.rival.{rival.What}")
            : rival.What is null ? Asked(line.Word!.Value, limit)
            : Message.Of($"rules.rival.{rival.What}", ("limit", Words.Of(limit)));
        return new Rival(what, limit, Sources.Get(rival.Source) with { Surety = rival.Surety });
    }

    private static Message Asked(ComparisonWord word, Limit limit) => Message.Of($"rules.rival.{Words.Of(word)}", ("limit", Words.Of(limit)));

    private static Limit Number(RuleFile file, string rule, string written, Dimension? measures) =>
        measures is { } m && LimitText.TryRead(written, m, out var limit, out _) ? limit!
            : throw new InvalidOperationException($"data/rules/{file.Adopted}.json: “{written}” of {rule} cannot be read as {measures}.");

    /// <summary>The same clause in a later edition that nobody here has read.</summary>
    private static WrittenClause CarriedOver(RuleFile file, WrittenClause clause) => clause with
    {
        Clause = clause.Clause with
        {
            Edition = file.Edition,
            Number = clause.Clause.Number.Replace(file.Letters!, file.NewLetters!, StringComparison.Ordinal),
            Source = Sources.Get(file.Source!) with
            {
                Surety = clause.Clause.Source.Surety == Surety.Seen ? Surety.SecondHand : clause.Clause.Source.Surety,
            },
        },
    };
}
