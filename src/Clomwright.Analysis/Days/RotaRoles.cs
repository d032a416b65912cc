using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>What each kind of work asks of people and teaches them, and how many a day's work asks for.</summary>
public static class RotaRoles
{
    /// <summary>The parts of laying cob.</summary>
    public const string Mixing = "mixing", Carrying = "carrying", Placing = "placing", Trimming = "trimming";

    /// <summary>Laying cob in a crew too small to share it out.</summary>
    public const string Together = "together";

    /// <summary>Every role of laying cob.</summary>
    public static Sequence<string> OfCob { get; } = [Together, Mixing, Carrying, Placing, Trimming];

    private const int WithTrimmers = 6;

    /// <summary>The posts of a day for a crew.</summary>
    /// <param name="day">What is planned.</param>
    /// <param name="there">How many of the crew are there.</param>
    /// <param name="poleTakes">People that one pole takes.</param>
    /// <param name="high">Whether cob is laid above the shoulder.</param>
    /// <param name="numbers">How a crew is shared out.</param>
    public static Sequence<RotaPost> Of(PlannedDay day, int there, int poleTakes, bool high, RotaNumbers numbers)
    {
        ArgumentNullException.ThrowIfNull(day);
        ArgumentNullException.ThrowIfNull(numbers);
        var whole = day.People * day.Hours;
        var works = day.Works.Where(w => w.Hours > 0 && whole > 0).ToList();
        var least = works.Select(w => w.Task == WorkList.Raise ? poleTakes : 1).ToArray();
        var people = works.Select((w, i) => Math.Max(least[i], (int)Math.Round(w.Hours / whole * there, MidpointRounding.AwayFromZero))).ToArray();
        while (people.Sum() > there && Enumerable.Range(0, people.Length).Where(i => people[i] > least[i]).OrderByDescending(i => people[i]).Select(i => (int?)i).FirstOrDefault() is { } most)
        {
            people[most]--;
        }

        // More kinds of work than people: the last wait, but nobody raises a pole with too few.
        for (var i = people.Length - 1; i > 0 && people.Sum() > there; i--)
        {
            people[i] = 0;
        }

        return works.SelectMany((w, i) => people[i] == 0 ? [] : w.Task == PlannedWork.Cob ? Cob(people[i], high, numbers) : [Task(w.Task, people[i])]).ToSequence();
    }

    private static IEnumerable<RotaPost> Cob(int people, bool high, RotaNumbers numbers)
    {
        if (people <= (int)numbers["rota-together"])
        {
            return [new(Together, people, 1, CrewSkill.Mixing, [CrewSkill.Mixing, CrewSkill.Placing, CrewSkill.Trimming], true, high)];
        }

        var trimming = people >= WithTrimmers ? Math.Max(1, (int)Math.Round(numbers["rota-trimming-share"] * people)) : 0;
        var placing = Math.Max(1, (int)Math.Round(numbers["rota-placing-share"] * people));
        var mixing = Math.Clamp((int)Math.Round(numbers["rota-mixing-share"] * people), 1, people - placing - trimming - 1);
        var floors = (int)Math.Ceiling(mixing / Math.Max(1, numbers["rota-floor"]) - 1e-9);
        RotaPost[] posts =
        [
            new(Mixing, mixing, floors, CrewSkill.Mixing, [CrewSkill.Mixing], false, false),
            new(Carrying, people - mixing - placing - trimming, 0, null, [], true, false),
            new(Placing, placing, 0, null, trimming == 0 ? [CrewSkill.Placing, CrewSkill.Trimming] : [CrewSkill.Placing], false, high),
            new(Trimming, trimming, 0, null, [CrewSkill.Trimming], false, high),
        ];
        return posts.Where(p => p.People > 0);
    }

    private static RotaPost Task(string task, int people) => task switch
    {
        WorkList.Stem => new(task, people, 0, null, [CrewSkill.Stonework], true, false),
        WorkList.Beam => new(task, people, 0, null, [CrewSkill.Carpentry], true, true),
        WorkList.Raise => new(task, people, 1, CrewSkill.Raising, [CrewSkill.Raising], true, true),
        "deck" => new(task, people, 0, null, [CrewSkill.Carpentry], true, true),
        "membrane" => new(task, people, 0, null, [CrewSkill.Roofing], false, true),
        "soil" => new(task, people, 0, null, [CrewSkill.Roofing], true, true),
        "poles" => new(task, people, 0, null, [CrewSkill.Carpentry], true, false),
        "floor" or "plaster" => new(task, people, 0, null, [CrewSkill.Plastering], false, false),
        _ => new(task, people, 0, null, [], true, false),
    };
}
