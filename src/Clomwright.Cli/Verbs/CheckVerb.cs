using System.CommandLine;
using Clomwright.Evidence;
using Clomwright.Rules;
using Clomwright.Study;

namespace Clomwright.Cli.Verbs;

/// <summary><c>clom check FILE</c>: what falls short, by how much, where, by whose rule, and what would mend it.</summary>
internal static class CheckVerb
{
    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = terminal.Word("cli.file") };
        var deep = new Option<bool>("--deep") { Description = terminal.Word("cli.check.deep") };
        var command = new Command("check", terminal.Word("cli.check")) { file, deep };
        command.SetAction(async (parsed, stop) =>
        {
            if (HouseInput.Study(parsed.GetValue(file)!, new StudyOptions(parsed.GetValue(deep)), terminal) is not { } study)
            {
                return ExitCode.WrongInput;
            }

            await Patience.Search(study, terminal, stop);
            return await Patience.For(() => Report(study, terminal), stop);
        });
        return command;
    }

    private static int Report(HouseStudy study, Terminal terminal)
    {
        var units = study.House.Units;
        var findings = study.Options.Deep ? study.AllFindings : study.Findings;
        var tally = Tally.Of(findings);
        Section("cli.check.short", findings.Where(f => f.Verdict is Verdict.FallsShort));
        Section("cli.check.not-checked", findings.Where(f => f.Verdict is Verdict.NotChecked));
        Section("cli.check.judgement", findings.Where(f => f.Verdict is Verdict.NeedsJudgement));
        foreach (var warning in study.Diagnostics)
        {
            terminal.Say(Message.Of("cli.warning", ("path", warning.Path), ("what", warning.What)), units);
        }

        terminal.Say(tally.Summary, units);
        terminal.Say(new Message("cli.no-substitute"), units);
        return tally switch
        {
            { Short: > 0 } => ExitCode.Short,
            { NotChecked: > 0 } or { NeedsJudgement: > 0 } => ExitCode.NotChecked,
            _ => ExitCode.Met,
        };

        void Section(string title, IEnumerable<Finding> findings)
        {
            var list = findings.ToList();
            if (list.Count == 0)
            {
                return;
            }

            terminal.Say(Message.Of(title, ("n", list.Count)), units);
            foreach (var finding in list)
            {
                terminal.Say(Message.Of("cli.check.line", ("finding", Sentences.Of(finding))), units);
                foreach (var note in finding.Notes)
                {
                    terminal.Say(Message.Of("cli.check.note", ("note", note)), units);
                }

                var tried = study.TriedFor(finding);
                foreach (var mend in tried.Mends)
                {
                    terminal.Say(Message.Of("cli.check.mend", ("mend", mend.What)), units);
                }

                foreach (var why in tried.InVain)
                {
                    terminal.Say(Message.Of("cli.check.in-vain", ("why", why)), units);
                }
            }

            terminal.Results.WriteLine();
        }
    }
}
