using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Web.Scenes;

namespace Clomwright.Web.Editing;

/// <summary>The houses of the one folder, and those of them that are open.</summary>
internal sealed class OpenHouses(HouseFolder folder)
{
    private readonly Dictionary<string, OpenHouse> open = new(StringComparer.Ordinal);
    private readonly Lock gate = new();

    /// <summary>What is rehearsed on a house that a page has opened; null where nothing is.</summary>
    public Rehearsal? Rehearsal { get; set; }

    /// <summary>The folder.</summary>
    public string Folder => folder.Path;

    /// <summary>The open house of a key, opened now if need be; null with one sentence where that cannot be.</summary>
    public OpenHouse? Find(string key, out string? trouble)
    {
        trouble = null;
        lock (gate)
        {
            if (open.TryGetValue(key, out var found))
            {
                return found;
            }

            var name = folder.List().FirstOrDefault(name => HouseKey.Of(name) == key);
            if (name is null)
            {
                trouble = Words.Say("web.no-house", ("key", Shortened(key)));
                return null;
            }

            var (file, reading) = folder.Read(name);
            if (file is null || reading.House is null)
            {
                trouble = Words.Book.Say(reading.Diagnostics[0].What, UnitSystem.Metric);
                return null;
            }

            return open[key] = new OpenHouse(folder, name, file, reading);
        }
    }

    /// <summary>Another language is spoken: what was put into words is put into words again.</summary>
    public void Reword()
    {
        lock (gate)
        {
            foreach (var house in open.Values)
            {
                house.Reword();
            }
        }
    }

    /// <summary>The program ends: what is changed and not saved is kept for the next time.</summary>
    public void Close()
    {
        lock (gate)
        {
            foreach (var house in open.Values)
            {
                house.Dispose();
            }
        }
    }

    /// <summary>Writes a new house, never over another.</summary>
    /// <returns>Null, or why it could not be.</returns>
    public Message? Create(Building.House house)
    {
        lock (gate)
        {
            return folder.List().Any(name => string.Equals(HouseKey.Of(name), house.Id, StringComparison.OrdinalIgnoreCase))
                ? Message.Of("web.new.taken", ("name", house.Name), ("file", HouseKey.FileName(house.Id)))
                : folder.Create(HouseKey.FileName(house.Id), house).Problem?.What;
        }
    }

    /// <summary>Every house of the folder, by file name.</summary>
    public IReadOnlyList<HouseCard> Cards() => [.. folder.List().Select(Card)];

    private HouseCard Card(string name)
    {
        var key = HouseKey.Of(name);
        if (Find(key, out var trouble) is not { } house)
        {
            return new HouseCard(key, name, name, null, null, trouble, null);
        }

        var (study, _) = house.Now;
        var pen = new Pen(Words.Book, study.House.Units);
        return new HouseCard(key, study.House.Name, name, study.House.Notes, FindingLines.Totals(study, pen).Line, null, PlanKeys.Of(study.Geometry));
    }

    private static string Shortened(string key) => key.Length <= 80 ? key : key[..80] + "…";
}

/// <summary>A house on the first page.</summary>
internal sealed record HouseCard(string Key, string Name, string File, string? Notes, string? Line, string? Trouble, PlanKey? Plan);
