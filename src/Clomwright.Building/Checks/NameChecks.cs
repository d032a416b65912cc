using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Names: present, short enough to print, each its own, and free of the marks that addresses are made with.</summary>
internal static class NameChecks
{
    private const string AddressMarks = "|/#";

    public static void Of(House house, Checks checks)
    {
        if (house.Id.Length == 0 || house.Id.Length > Checks.NameLengthMax || house.Id.Any(c => !char.IsAsciiLetterLower(c) && !char.IsAsciiDigit(c) && c != '-'))
        {
            checks.Error("id", "building.id", ("id", house.Id.Length <= Checks.NameLengthMax ? house.Id : house.Id[..Checks.NameLengthMax] + "…"), ("most", Checks.NameLengthMax));
        }

        checks.Word("name", house.Name);
        if (house.Notes is { Length: > 4000 } notes)
        {
            checks.Error("notes", "building.text-long", ("length", notes.Length), ("most", 4000));
        }

        checks.Count("openings", house.Openings.Count, 0, Limits.Items);
        checks.Count("niches", house.Niches.Count, 0, Limits.Items);
        checks.Count("embeds", house.Embeds.Count, 0, Limits.Items);

        var taken = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < house.Openings.Count; i++)
        {
            Own($"openings[{i}]", house.Openings[i].Name, taken, checks);
        }

        for (var i = 0; i < house.Niches.Count; i++)
        {
            Own($"niches[{i}]", house.Niches[i].Name, taken, checks);
        }

        for (var i = 0; i < house.Embeds.Count; i++)
        {
            Own($"embeds[{i}]", house.Embeds[i].Name, taken, checks);
        }
    }

    private static void Own(string item, string name, Dictionary<string, string> taken, Checks checks)
    {
        var path = $"{item}.name";
        if (!checks.Word(path, name))
        {
            return;
        }

        if (name.Any(AddressMarks.Contains))
        {
            checks.Error(path, "building.name-marks", ("name", name));
        }
        else if (name.Trim() != name)
        {
            checks.Error(path, "building.name-spaces", ("name", name.Trim()));
        }
        else if (!taken.TryAdd(name, item))
        {
            checks.Error(path, "building.name-taken", ("name", name), ("other", taken[name]));
        }
    }
}
