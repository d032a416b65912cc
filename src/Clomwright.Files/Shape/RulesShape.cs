using Clomwright.Building;
using Clomwright.Files.Forms;
using static Clomwright.Files.Forms.Plain;

namespace Clomwright.Files.Shape;

/// <summary>How adopted rules, entered limits and answers stand in the file.</summary>
internal static class RulesShape
{
    public static Thing<RuleChoices> Rules { get; } = MakeRules();

    private static Thing<RuleChoices> MakeRules()
    {
        var adopted = Keys<RuleChoices>.List("adopted", Text, r => r.Adopted, leavesOut: true);
        var entered = Keys<RuleChoices>.List("entered", MakeEntered(), r => r.Entered, leavesOut: true);
        var answers = Keys<RuleChoices>.List("answers", MakeAnswer(), r => r.Answers, leavesOut: true);
        return new Thing<RuleChoices>("rules", [adopted, entered, answers],
            v => new RuleChoices { Adopted = v.Of(adopted), Entered = v.Of(entered), Answers = v.Of(answers) });
    }

    private static Thing<EnteredLimit> MakeEntered()
    {
        var body = Keys<EnteredLimit>.Needed("body", Text, e => e.Body);
        var rule = Keys<EnteredLimit>.Needed("rule", Text, e => e.Rule);
        var limit = Keys<EnteredLimit>.Needed("limit", Text, e => e.Limit);
        var by = Keys<EnteredLimit>.Needed("by", Text, e => e.By);
        var day = Keys<EnteredLimit>.Needed("on", Date, e => e.On);
        return new Thing<EnteredLimit>("entered-limit", [body, rule, limit, by, day],
            v => new EnteredLimit(v.Of(body), v.Of(rule), v.Of(limit), v.Of(by), v.Of(day)));
    }

    private static Thing<Answer> MakeAnswer()
    {
        var question = Keys<Answer>.Needed("question", Text, a => a.Question);
        var holds = Keys<Answer>.Needed("holds", Truth, a => a.Holds);
        var by = Keys<Answer>.Needed("by", Text, a => a.By);
        var day = Keys<Answer>.Needed("on", Date, a => a.On);
        var note = Keys<Answer>.MaybeThing("note", Text, a => a.Note);
        return new Thing<Answer>("answer", [question, holds, by, day, note],
            v => new Answer(v.Of(question), v.Of(holds), v.Of(by), v.Of(day), v.Of(note)));
    }
}
