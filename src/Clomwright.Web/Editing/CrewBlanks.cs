using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Web.Editing;

/// <summary>The blanks of a crew: how many, how practised, from when, how long, and what is there when they come.</summary>
internal static class CrewBlanks
{
    /// <summary>What their addresses begin with.</summary>
    public const string Prefix = "crew.";

    /// <summary>Every blank; none where the house names no crew.</summary>
    public static IReadOnlyList<EarthBlank> Of(House house)
    {
        if (house.Crew is not { } crew)
        {
            return [];
        }

        return [.. Fields(house.Units).Select(field => new EarthBlank(Prefix + field.Name, field.Name, field.Text(crew), field.Choices, text =>
        {
            var (changed, problem) = field.Write(crew, text);
            return problem is null ? (new Edit.ChangeCrew(changed), null) : (null, problem);
        }))];
    }

    private static IEnumerable<EarthField<Crew>> Fields(UnitSystem units) =>
    [
        Whole("people", c => c.People, (c, n) => c with { People = n }),
        Word("skill", Enum.GetValues<Skill>(), c => c.Skill, (c, v) => c with { Skill = v }),
        EarthFields<Crew>.Date("work-start", c => c.Start, (c, day) => day is { } on ? c with { Start = on } : c),
        Whole("days-per-week", c => c.DaysPerWeek, (c, n) => c with { DaysPerWeek = n }),
        new EarthFields<Crew>(units).Quantity("hours-per-day", Dimension.Number, c => c.HoursPerDay, (c, v) => c with { HoursPerDay = v!.Value }, needed: true),
        Word("begins", Enum.GetValues<WorkBegins>(), c => c.Begins, (c, v) => c with { Begins = v }),
        EarthFields<Crew>.Date("roof-on", c => c.RoofOn, (c, day) => c with { RoofOn = day }),
    ];

    private static EarthField<Crew> Whole(string name, Func<Crew, int> of, Func<Crew, int, Crew> with) => new(
        name, crew => of(crew).ToString(CultureInfo.InvariantCulture),
        (crew, text) => int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? (with(crew, n), null) : (crew, Message.Of("web.days.not-whole", ("text", Cut(text)))));

    private static EarthField<Crew> Word<T>(string name, T[] values, Func<Crew, T> of, Func<Crew, T, Crew> with) where T : struct, Enum => new(
        name, crew => of(crew).ToString().ToLowerInvariant(),
        (crew, text) => Enum.TryParse<T>(text, ignoreCase: true, out var value) && values.Contains(value) ? (with(crew, value), null) : (crew, Message.Of("web.earth.not-choice", ("text", Cut(text)))))
    {
        Choices = [.. values.Select(v => v.ToString().ToLowerInvariant())],
    };

    private static string Cut(string text) => text.Length <= 40 ? text : text[..40] + "…";
}
