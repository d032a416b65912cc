using System.CommandLine;
using System.Globalization;
using Clomwright.Analysis.Days;
using Clomwright.Evidence;
using Clomwright.Study;

namespace Clomwright.Cli.Verbs;

/// <summary><c>clom days FILE</c>: when the job would be done, as a table that a terminal 80 wide can show.</summary>
internal static class DaysVerb
{
    private const int Name = 22, Date = 14;

    public static Command Command(Terminal terminal)
    {
        var file = new Argument<string>("FILE") { Description = terminal.Word("cli.file") };
        var choices = new Option<bool>("--choices") { Description = terminal.Word("cli.days.choices") };
        var today = new Option<DateOnly?>("--today") { Description = terminal.Word("cli.days.on") };
        var command = new Command("days", terminal.Word("cli.days")) { file, choices, today };
        command.SetAction(async (parsed, stop) =>
        {
            if (RecordInput.Study(parsed.GetValue(file)!, parsed.GetValue(today), terminal) is not { } study)
            {
                return ExitCode.WrongInput;
            }

            var days = await Patience.Watching("cli.drawing", study.DaysFor, terminal, stop);
            if (days.Value is not { } forecast)
            {
                terminal.Say(Message.Of("cli.days.not", ("why", days.NotChecked!)), study.House.Units);
                return ExitCode.NotChecked;
            }

            var found = parsed.GetValue(choices) ? await Patience.Watching("cli.drawing", study.DaysChoicesFor, terminal, stop) : default;
            Report(study, forecast, found.Value, terminal);
            return ExitCode.Met;
        });
        return command;
    }

    private static void Report(HouseStudy study, DaysResult forecast, DaysChoices? choices, Terminal terminal)
    {
        var units = study.House.Units;

        string Say(Message message) => terminal.Words.Say(message, units);
        var crew = study.House.Crew!;
        terminal.Say(Message.Of("cli.days.head", ("name", study.House.Name), ("people", crew.People), ("hours", Amount.Number(crew.HoursPerDay)), ("days", crew.DaysPerWeek), ("start", crew.Start)), units);
        if (forecast.Learned is { } learned)
        {
            terminal.Say(Message.Of("cli.days.learned", ("n", learned.Days), ("last", learned.LastDay), ("share", new Amount(Math.Round(learned.CobLaid, 2), Dimension.Fraction))), units);
            terminal.Say(Message.Of("cli.days.learned-seasons", ("from", learned.From), ("seasons", forecast.Seasons)), units);
            terminal.Results.WriteLine();
            Row(Say(new Message("cli.days.learned-head")), Say(new Message("cli.days.learned-now")), Say(new Message("cli.days.learned-likely")), Say(new Message("cli.days.learned-before")), Say(new Message("cli.days.learned-from")));
            Factor("cli.days.learned-pace", learned.Pace, "cli.days.from-days");
            Factor("cli.days.learned-drying", learned.Drying, "cli.days.from-lifts");
            Factor("cli.days.learned-tasks", learned.Tasks, "cli.days.from-tasks");
        }
        else
        {
            terminal.Say(Message.Of("cli.days.seasons", ("n", forecast.Seasons)), units);
        }

        terminal.Results.WriteLine();
        Row("", Say(new Message("cli.days.p10")), Say(new Message("cli.days.p50")), Say(new Message("cli.days.p90")), Say(new Message("cli.days.waits")));
        var stem = forecast.Milestones.TakeWhile(m => m.Key != DaysResult.WallTop).ToList();
        stem.ForEach(Mark);
        foreach (var lift in forecast.Lifts)
        {
            Band(Say(Message.Of("cli.days.lift", ("n", lift.Lift + 1))), lift.Closed, Say(Message.Of("cli.days.share", ("share", new Amount(Math.Round(lift.ByDrying, 2), Dimension.Fraction)))));
        }

        forecast.Milestones.Skip(stem.Count).ToList().ForEach(Mark);
        terminal.Results.WriteLine();
        foreach (var roof in RoofDay.Of(study.House))
        {
            terminal.Say(roof, units);
        }

        terminal.Say(Message.Of("cli.days.weather", ("days", Amount.Number(Math.Round(forecast.WeatherDays, 1)))), units);
        terminal.Say(Message.Of("cli.days.frost", ("share", new Amount(forecast.FrostRisk, Dimension.Fraction))), units);
        if (forecast.Mark("plaster") is null)
        {
            terminal.Say(new Message("cli.days.no-plaster"), units);
        }

        if (choices is { } found)
        {
            terminal.Results.WriteLine();
            Row(Say(Message.Of("cli.days.ways", ("n", found.Seasons))), Say(new Message("cli.days.top-p50")), Say(new Message("cli.days.poles-p50")), Say(new Message("cli.days.poles-p90")), "");
            foreach (var way in found.Ways)
            {
                Row(Say(way.What), On(way.Top.P50), On(way.Roof.P50), On(way.Roof.P90), "");
            }

            terminal.Results.WriteLine();
            Week(found.Best, "cli.days.best", "cli.days.best-none");
            Week(found.LastSafe, "cli.days.last-safe", "cli.days.last-safe-none");
        }

        terminal.Results.WriteLine();
        WhoDoesWhat.Say(study, terminal);
        terminal.Say(new Message("cli.days.not-law"), units);
        terminal.Say(new Message("cli.no-substitute"), units);

        void Week(StartWeek? week, string key, string none) => terminal.Say(week is null ? new Message(none) : Message.Of(
            key, ("start", week.Start), ("days", week.Roof.P90 is { } after ? new Amount(after, Dimension.Days) : new Message("cli.days.later")), ("share", new Amount(week.FrostRisk, Dimension.Fraction))), units);

        void Factor(string name, LearnedFactor factor, string from) => Row(
            Say(new Message(name)), Of(factor.Middle), $"{Of(factor.Low)}-{Of(factor.High)}", $"{Of(factor.LowBefore)}-{Of(factor.HighBefore)}", Say(Message.Of(from, ("n", factor.Readings))));

        void Mark(Milestone mark) => Band(Say(new Message($"analysis.task.{mark.Key}")), mark.Days, "");

        void Band(string name, DayBand band, string note) => Row(name, On(band.P10), On(band.P50), On(band.P90), note);

        static string Of(double factor) => factor.ToString("0.00", CultureInfo.InvariantCulture);

        string On(int? day) => day is { } d ? forecast.Start.AddDays(d).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : Say(new Message("cli.days.later"));

        void Row(string name, string early, string middle, string late, string note) =>
            terminal.Results.WriteLine($"{name,-Name}{early,-Date}{middle,-Date}{late,-Date}{note}".TrimEnd());
    }
}
