using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>For the front pocket: whom to call, how to be found, what to do first. What the house file does not say is left to write in.</summary>
internal static class EmergencyCard
{
    public static IEnumerable<Draft> Of(Scene scene) => Of(scene.Say, scene.Set.Options.Paper, scene.House.Site, "emergency-card");

    /// <summary>The same with nothing filled in, for people who have no file yet.</summary>
    public static IEnumerable<Draft> Blank(Wording say, PaperSize paper) => Of(say, paper, new Site(), "emergency-card-blank");

    private static IEnumerable<Draft> Of(Wording say, PaperSize paper, Site site, string key)
    {
        var e = site.Emergency ?? new Emergency();
        Fact Written(string what, string? value, string note = "") => new(say.Say("emergency." + what), value ?? "", value is null ? "" : note);
        List<Block> blocks =
        [
            new Facts([Written("number", e.Number)], Styles.Large) { Across = 1 },
            new Facts([Written("address", e.Address)], Styles.Reading) { Across = 1, Above = 2 },
            new Facts([Written("place", Place(say, site), say.Say("emergency.place-note")), Written("meet", e.Meet)], Styles.Reading) { Across = 1, Above = 2 },
            new Facts([Written("way", e.Way)], Styles.Reading) { Across = 1, Above = 2 },
            new Facts([Written("hospital", e.Hospital)], Styles.Reading) { Across = 1, Above = 2 },
            new Heading(say.Say("emergency.say")) { Above = 4 },
            new Paragraph(say.Say("emergency.say-what"), Styles.Heading) { Above = 1 },
            new Heading(say.Say("emergency.first")) { Above = 4 },
            new Table([new("") { Grows = 1 }], [.. ((string[])["emergency.first-more", "emergency.first-buried", "emergency.first-eye", "emergency.first-shock", "emergency.first-burn", "emergency.first-heat", "emergency.first-hard"]).Select(k => new Row(new Cell(say.Say(k)) { Lettering = Lettering.Tall(2.5) }))]) { Above = 0.8, Pad = 0.4 },
            new Paragraph(say.Say("emergency.not-training"), Styles.Small) { Above = 1 },
            Contacts(say, e),
            new Facts([.. ((string[])["emergency.kit", "emergency.extinguisher", "emergency.power-off", "emergency.aider"]).Select(k => new Fact(say.Say(k), ""))], Styles.Body) { Above = 3 },
        ];
        return Draft.Flow(new SheetHead(key, say.Say("emergency.title")), paper.Portrait(), blocks, say);
    }

    private static string? Place(Wording say, Site site) => site is { Latitude: { } north, Longitude: { } east }
        ? say.Book.Marked(string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(north):0.######}° {(north < 0 ? "S" : "N")},  {Math.Abs(east):0.######}° {(east < 0 ? "W" : "E")}"))
        : null;

    /// <summary>Those of the house file, then room for those whom every site needs, so many letters long.</summary>
    public static Table Contacts(Wording say, Emergency e, int name = 40, int telephone = 34)
    {
        string[] usual = ["lead", "second", "engineer", "inspector"];
        return new Table(
            [new(say.Say("emergency.who")), new(say.Say("emergency.name")) { Grows = 1 }, new(say.Say("emergency.phone")) { Grows = 1 }],
            [
                .. e.Contacts.Select(c => new Row(new Cell(c.Role), new Cell(c.Name), new Cell(c.Phone) { Lettering = Styles.Reading })),
                .. usual.Select(k => (Key: k, Word: say.Say("emergency.role-" + k))).Where(k => !e.Contacts.Any(c => string.Equals(c.Role, k.Word, StringComparison.OrdinalIgnoreCase)))
                    .Take(Math.Max(0, 6 - e.Contacts.Count)).Select(k => new Row(new Cell(k.Word), Dots.Cell(name), Dots.Cell(telephone))),
            ]) { Above = 3, Pad = 1 };
    }
}

/// <summary>Room to write by hand.</summary>
internal static class Dots
{
    /// <summary>A dotted line about as long as so many letters.</summary>
    public static Cell Cell(int letters) => new(new string('.', letters));
}
