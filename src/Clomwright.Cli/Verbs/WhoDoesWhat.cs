using System.Globalization;
using Clomwright.Analysis.Days;
using Clomwright.Evidence;
using Clomwright.Study;

namespace Clomwright.Cli.Verbs;

/// <summary>Who does what today, in a terminal 80 wide: the next planned work day, each person's two halves of it.</summary>
internal static class WhoDoesWhat
{
    private const int Name = 22, Half = 28, Wide = 80;

    public static void Say(HouseStudy study, Terminal terminal)
    {
        var units = study.House.Units;
        string Words(string key, params ReadOnlySpan<(string, Argument)> arguments) => terminal.Words.Say(Message.Of(key, arguments), units);
        string Role(string role) => Words($"analysis.role.{role}");
        if (study.BoardBy(Rota.FromDays.Of).Value is not { Days.Count: > 0 } board)
        {
            return;
        }

        var today = board.Days.FirstOrDefault(d => d.Day.Date >= terminal.Today) ?? board.Days[^1];
        var works = today.Day.Works.Select(w => w.Task == PlannedWork.Cob && today.Day.Lift is { } lift ? Words("cli.days.lift", ("n", lift + 1)) : Role(w.Task)).ToList();
        Wrapped(terminal, Words("cli.days.today", ("date", today.Day.Date), ("work", works.Count == 0 ? Words("cli.days.nothing") : string.Join(", ", works))), "");
        if (board.Rota.Value is not { } rota || today.Shift is not { } shift)
        {
            foreach (var post in today.Posts)
            {
                terminal.Results.WriteLine($"  {Cut(Role(post.Role), Name),-Name}{post.People.ToString(CultureInfo.InvariantCulture)}");
            }

            Wrapped(terminal, Words("cli.days.unnamed"), "");
            return;
        }

        string At(int person, int n) => rota.Places.FirstOrDefault(p => p.Shift == n && p.Person == person) is { } place ? place.IsLead ? Words("cli.days.leads", ("role", Role(place.Role))) : Role(place.Role) : Role("spare");
        terminal.Results.WriteLine($"  {"",-Name}{Words("cli.days.before-meal"),-Half}{Words("cli.days.after-meal")}");
        for (var p = 0; p < rota.Asked.Members.Count; p++)
        {
            var member = rota.Asked.Members[p];
            terminal.Results.WriteLine(member.Away.Contains(today.Day.Date) ? $"  {Cut(member.Name, Name),-Name}{Words("cli.days.away")}" : $"  {Cut(member.Name, Name),-Name}{At(p, shift),-Half}{At(p, shift + 1)}");
        }

        foreach (var clash in rota.Asked.Clashes.Where(c => c.Date == today.Day.Date))
        {
            Wrapped(terminal, terminal.Words.Say(clash.Why, units), "  ! ");
        }

        Wrapped(terminal, Words(rota.IsSearched ? "cli.days.searched" : "cli.days.plain"), "");
    }

    private static string Cut(string text, int most) => text.Length < most ? text : text[..(most - 2)] + "…";

    /// <summary>Words on as many lines as they need, each begun alike.</summary>
    private static void Wrapped(Terminal terminal, string words, string before)
    {
        var line = before;
        foreach (var word in words.Split(' '))
        {
            if (line.Length > before.Length && line.Length + 1 + word.Length > Wide)
            {
                terminal.Results.WriteLine(line);
                line = before.Length == 0 ? "" : new string(' ', before.Length);
            }

            line = line.Trim().Length == 0 || line == before ? line + word : line + " " + word;
        }

        terminal.Results.WriteLine(line);
    }
}
