using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>The tasks of a whole job beside the cob, in the order in which a crew would take them up.</summary>
public static class WorkList
{
    private const double Hour = 3600;
    private const int MortarSets = 3, LeakTest = 2, CoatDries = 3;

    /// <summary>The task before which no cob is laid.</summary>
    public const string Stem = "stem";

    /// <summary>The task before which the wall alone stands in the weather.</summary>
    public const string Raise = "raise";

    /// <summary>The first task after the cob.</summary>
    public const string Beam = "beam";

    /// <summary>The last task: coats on a wall that is dry enough.</summary>
    public const string Plaster = "plaster";

    /// <summary>Every task there can be, in order.</summary>
    public static Sequence<string> Keys { get; } = ["trench", "rubble", Stem, "poles", Beam, Raise, "deck", "membrane", "soil", "floor", Plaster];

    /// <summary>The tasks with anything to do.</summary>
    /// <param name="amounts">How much there is.</param>
    /// <param name="numbers">How fast people work.</param>
    /// <param name="begins">What is there when the crew comes.</param>
    public static Sequence<WorkTask> Of(JobAmounts amounts, WorkNumbers numbers, WorkBegins begins)
    {
        ArgumentNullException.ThrowIfNull(amounts);
        ArgumentNullException.ThrowIfNull(numbers);
        double Amount(string key) => amounts.Rest.FirstOrDefault(a => a.Key == key).Amount;
        double Hours(string key, string number) => Amount(key) * numbers[number] / Hour;
        WorkTask[] all =
        [
            new("trench", Hours("trench", "work-trench"), 6, 1, DayNeeds.Dry, WaitsFor.Nothing, []),
            new("rubble", Hours("rubble", "work-gravel"), 8, 1, DayNeeds.Nothing, WaitsFor.Nothing, ["trench"]),
            new(Stem, Hours(Stem, "work-stem"), 6, 1, DayNeeds.Dry | DayNeeds.Mild, WaitsFor.Nothing, ["rubble"], MortarSets),
            new(Beam, Hours(Beam, "work-beam"), 6, 2, DayNeeds.Dry, WaitsFor.FirmTop, [Stem]),
            new(Raise, Hours("poles", "work-pole-raise"), 2 * amounts.PeopleForPole, amounts.PeopleForPole, DayNeeds.Dry, WaitsFor.StrongWall, [Beam, "poles"]),
            new("deck", Hours("deck", "work-deck"), 6, 2, DayNeeds.Dry, WaitsFor.Nothing, [Raise]),
            new("membrane", Hours("membrane", "work-membrane"), 6, 2, DayNeeds.Dry, WaitsFor.Nothing, ["deck"], LeakTest),
            new("soil", Hours("soil", "work-roof-soil"), 12, 2, DayNeeds.Nothing, WaitsFor.Nothing, ["membrane"]),
            new("floor", Hours("floor", "work-floor"), 6, 1, DayNeeds.Mild, WaitsFor.Nothing, ["membrane"], CoatDries),
            new(Plaster, amounts.Coats * numbers["work-plaster"] / Hour, 10, 1, DayNeeds.Mild, WaitsFor.DryWall, ["membrane"], CoatDries),
            // What is done while a wall dries: it waits for nothing.
            new("poles", Hours("poles", "work-pole-prepare"), 4, 1, DayNeeds.Nothing, WaitsFor.Nothing, []) { IsAside = true },
        ];
        var ready = begins switch { WorkBegins.Trench => 0, WorkBegins.Stem => 2, _ => 3 };
        return all.Select((task, i) => i < ready ? task with { Hours = 0, RestDays = 0 } : task).ToSequence();
    }
}
