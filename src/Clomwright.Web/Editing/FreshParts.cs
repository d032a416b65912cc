using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;

namespace Clomwright.Web.Editing;

/// <summary>
/// What stands in the blanks of a part when it is added, in the house's own units: usual first sizes to be changed (common practice, no source). What somebody has to
/// know or to have measured is never filled in; a part that needs such a thing is added with it.
/// </summary>
internal static class FreshParts
{
    private static readonly Dictionary<string, (string Imperial, string Metric)> Usual = new(StringComparer.Ordinal)
    {
        ["openings"] = ("width=24 in|height=24 in|sill=36 in|shape=rectangular", "width=600 mm|height=600 mm|sill=900 mm|shape=rectangular"),
        ["openings.door"] = ("width=36 in|height=80 in|sill=0 in", "width=900 mm|height=2000 mm|sill=0 mm"),
        ["openings.glass"] = ("width=12 in|height=12 in|sill=60 in|shape=round", "width=300 mm|height=300 mm|sill=1500 mm|shape=round"),
        ["openings.header"] = ("pieces=3|width=4 in|depth=6 in|bearing=12 in", "pieces=3|width=100 mm|depth=150 mm|bearing=300 mm"),
        ["openings.leaf"] = ("swing=in|bottom=1 in", "swing=in|bottom=25 mm"),
        ["niches"] = ("width=12 in|height=12 in|depth=5 in|sill=48 in|head=arch", "width=300 mm|height=300 mm|depth=125 mm|sill=1200 mm|head=arch"),
        ["embeds"] = ("height=48 in", "height=1200 mm"),
        ["embeds.peg"] = ("height=66 in|depth=8 in", "height=1700 mm|depth=200 mm"),
        ["embeds.shelf"] = ("height=48 in|width=30 in|size=3 in|depth=10 in", "height=1200 mm|width=750 mm|size=75 mm|depth=250 mm"),
        ["embeds.bottle"] = ("height=66 in|width=3 in|through=yes", "height=1700 mm|width=75 mm|through=yes"),
        ["embeds.sleeve"] = ("height=12 in|width=4 in|through=yes", "height=300 mm|width=100 mm|through=yes"),
        ["embeds.box"] = ("height=48 in|width=3 in|size=4 in|depth=2 in", "height=1200 mm|width=80 mm|size=80 mm|depth=50 mm"),
        ["embeds.nailer"] = ("height=36 in|width=24 in|size=4 in|depth=2 in", "height=900 mm|width=600 mm|size=100 mm|depth=50 mm"),
        ["embeds.deadman"] = ("height=36 in|depth=9 in", "height=900 mm|depth=225 mm"),
        ["embeds.strap"] = ("height=72 in|width=2 in", "height=1800 mm|width=50 mm"),
        ["embeds.anchor"] = ("depth=24 in|bar=18 in", "depth=600 mm|bar=450 mm"),
        ["floor.layers"] = ("name=layer|depth=2 in", "name=layer|depth=50 mm"),
        ["floor.oil"] = ("material=linseed|coats=4", "material=linseed|coats=4"),
        ["trench"] = ("width=24 in|depth=24 in", "width=600 mm|depth=600 mm"),
        ["trench.gradeBeam"] = ("width=18 in|depth=8 in", "width=450 mm|depth=200 mm"),
        ["stem.keys"] = ("spacing=36 in|height=4 in|width=6 in", "spacing=900 mm|height=100 mm|width=150 mm"),
        ["bondBeam"] = ("width=10 in|depth=6 in", "width=250 mm|depth=150 mm"),
        ["tees"] = ("spacing=48 in|depth=24 in|bar=18 in", "spacing=1200 mm|depth=600 mm|bar=450 mm"),
        ["roof.pin"] = ("diameter=5/8 in", "diameter=16 mm"),
        ["roof.ifOneFails.strap"] = ("width=2 in|thickness=1/8 in", "width=50 mm|thickness=3 mm"),
        ["roof.ifOneFails.doubled"] = ("", ""),
        ["roof.ifOneFails.post"] = ("diameter=6 in|footing=24 in", "diameter=150 mm|footing=600 mm"),
        ["roof.post"] = ("diameter=8 in|footing=30 in", "diameter=200 mm|footing=750 mm"),
        ["roof.ring"] = ("width=4 in|depth=8 in|material=douglas-fir-no2", "width=100 mm|depth=200 mm|material=c24"),
        ["roof.secondaries"] = ("perBay=1|diameter=4 in", "perBay=1|diameter=100 mm"),
        ["roof.deckNails"] = ("diameter=0.162 in|length=3 1/2 in", "diameter=4 mm|length=90 mm"),
        ["roof.braces"] = ("width=2 in|thickness=1/16 in|nails=12|diameter=0.162 in|length=3 1/2 in", "width=50 mm|thickness=2 mm|nails=12|diameter=4 mm|length=90 mm"),
        ["roof.layers"] = ("name=layer|depth=2 in", "name=layer|depth=50 mm"),
        ["roof.drip"] = ("out=1 in|down=1 in", "out=25 mm|down=25 mm"),
        ["roof.battens"] = ("spacing=16 in|height=2 in", "spacing=400 mm|height=50 mm"),
        ["roof.flue"] = ("diameter=8 in|bearing=0 deg|distance=36 in", "diameter=200 mm|bearing=0 deg|distance=900 mm"),
        ["finishes"] = ("face=inside|material=earth-plaster", "face=inside|material=earth-plaster"),
        ["finishes.coats"] = ("role=finish|depth=1/4 in", "role=finish|depth=5 mm"),
        ["finishes.lath"] = ("material=reed mat|lap=3 in", "material=reed mat|lap=75 mm"),
        ["comfort.linings"] = ("face=outside|material=light-earth|depth=6 in", "face=outside|material=light-earth|depth=150 mm"),
        ["comfort.floorEdge"] = ("material=foam-glass|thickness=4 in|depth=24 in", "material=foam-glass|thickness=100 mm|depth=600 mm"),
        ["site.horizon"] = ("bearing=0 deg|angle=0 deg", "bearing=0 deg|angle=0 deg"),
        ["crew.members"] = ("", ""),
        ["mix.batch"] = ("", ""),
    };

    /// <summary>Which of the words of a kind a list offers to add; empty where there is one way.</summary>
    public static IReadOnlyList<string> WaysToAdd(string path) => Bare(path) switch
    {
        "openings" => [.. Enum.GetNames<OpeningKind>().Select(name => name.ToLowerInvariant())],
        "embeds" => [.. Enum.GetNames<EmbedKind>().Select(name => name.ToLowerInvariant())],
        "roof" => [.. RoofShaping.Kinds.Skip(1)],
        "roof.ifOneFails" => ["strap", "doubled", "post"],
        _ => [],
    };

    /// <summary>What a part begins with; what the page wrote stands before it.</summary>
    /// <param name="path">Which part or list.</param>
    /// <param name="way">The word of a kind; empty where there is one way.</param>
    /// <param name="house">The house it is added to.</param>
    /// <param name="station">Along the inside face, m: where there is most room for it.</param>
    public static Dictionary<string, string> Of(string path, string way, House house, double station)
    {
        var bare = Bare(path);
        var usual = Usual.GetValueOrDefault($"{bare}.{way}", Usual.GetValueOrDefault(bare));
        var texts = ((house.Units == UnitSystem.Imperial ? usual.Imperial : usual.Metric) ?? "").Split('|', StringSplitOptions.RemoveEmptyEntries)
            .Select(pair => pair.Split('=', 2)).ToDictionary(pair => pair[0], pair => pair[1], StringComparer.Ordinal);
        if (bare is "openings" or "niches" or "embeds")
        {
            var grid = house.Units == UnitSystem.Imperial ? Length.FromInches(1) : Length.FromMillimetres(10);
            texts["station"] = LengthText.Written(Length.Nearest(station).RoundedTo(grid), house.Units);
            texts["name"] = NewName(house, bare == "niches" ? "niche" : way.Length > 0 && way is not ("fixed" or "opening") ? way : "window");
        }

        switch (bare)
        {
            case "openings" or "embeds":
                texts["kind"] = way;
                break;
            case "openings.frame" when Index(path) is { } at && at < house.Openings.Count:
                var (opening, room) = (house.Openings[at], house.Units == UnitSystem.Imperial ? Length.FromInches(1) : Length.FromMillimetres(20));
                texts["width"] = LengthText.Written(opening.Width - room, house.Units);
                texts["height"] = LengthText.Written(opening.Height - 2 * room, house.Units);
                (texts["depth"], texts["stock"]) = house.Units == UnitSystem.Imperial ? ("6 in", "1 1/2 in") : ("150 mm", "40 mm");
                break;
            case "floor.layers.parts" or "finishes.coats.parts" or "testPanels.parts":
                var material = HousePlaces.Of(house).At($"{path[..path.LastIndexOf('[')]}{(bare == "finishes.coats.parts" ? "" : path[path.LastIndexOf('[')..^".parts".Length])}.material")?.Text ?? "";
                (texts[material.Contains("lime", StringComparison.Ordinal) ? "lime" : "clay"], texts["sand"]) = ("1", "3");
                break;
            case "roof.ifOneFails":
                texts["way"] = way;
                break;
            case "comfort.linings":
                texts["name"] = $"lining {house.Comfort.Linings.Count + 1}";
                break;
            case "crew.members":
                texts["name"] = $"person {(house.Crew?.Members.Count ?? 0) + 1}";
                break;
        }

        return texts;
    }

    /// <summary>Whether a part may be added as it is; others are added with what somebody writes.</summary>
    public static bool Known(string path) => Usual.ContainsKey(Bare(path)) || Bare(path) is "openings.frame" or "floor.layers.parts" or "finishes.coats.parts" or "testPanels.parts" or "roof" or "roof.ifOneFails" or "crew.members";

    private static string NewName(House house, string word)
    {
        var taken = house.Openings.Select(o => o.Name).Concat(house.Niches.Select(n => n.Name)).Concat(house.Embeds.Select(e => e.Name)).ToHashSet(StringComparer.Ordinal);
        return Enumerable.Range(1, taken.Count + 1).Select(n => n == 1 ? word : $"{word} {n.ToString(CultureInfo.InvariantCulture)}").First(name => !taken.Contains(name));
    }

    /// <summary>A path without the places in its lists.</summary>
    private static string Bare(string path) => System.Text.RegularExpressions.Regex.Replace(path, @"\[\d+\]", "");

    private static int? Index(string path) => path.IndexOf('[', StringComparison.Ordinal) is var open and > 0 && int.TryParse(path[(open + 1)..path.IndexOf(']', StringComparison.Ordinal)], NumberStyles.None, CultureInfo.InvariantCulture, out var index) ? index : null;
}
