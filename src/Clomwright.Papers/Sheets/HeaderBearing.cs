using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>Rows of an opening card on how long the ends of its header rest on cob: described, asked by practice, and asked by the load at each end.</summary>
internal static class HeaderBearing
{
    public static IEnumerable<Row> Rows(Scene scene, OpeningPlace place)
    {
        var say = scene.Say;
        yield return OpeningCard.Size(scene, "opening.bearing", place.Opening.Header!.Bearing, Tag.Given);
        if (Practice(scene, place) is var (limit, source))
        {
            yield return OpeningCard.Size(scene, "opening.bearing-practice", say.One(limit), Wording.Dotted(say.Other(limit), source));
        }

        var ends = scene.Set.WallTop?.HeaderEnds.Where(e => e.Opening == place.Opening.Name).ToList() ?? [];
        if (ends.Count == 0)
        {
            yield return new Row(say.Say("opening.bearing-load"), new Cell(say.Say("not-checked")) { Lettering = Styles.BodyStrong }, new Cell(say.Say("opening.bearing-unknown")) { Lettering = Styles.Small });
        }

        foreach (var end in ends)
        {
            var key = end.Left ? "opening.bearing-left" : "opening.bearing-right";
            yield return end.Needed is { } needed
                ? OpeningCard.Size(scene, key, say.One(Amount.Metres(needed)), Wording.Dotted(say.Other(Amount.Metres(needed)), Arched(scene, end)))
                : new Row(say.Say(key), new Cell("–") { Lettering = Styles.BodyStrong }, new Cell(say.Say("opening.bearing-none")) { Lettering = Styles.Small });
        }
    }

    private static string Arched(Scene scene, HeaderEnd end) => end.NeededArched is { } arched
        ? scene.Say.Say("opening.bearing-arched", ("length", Amount.Metres(arched)))
        : scene.Say.Say(Tag.Computed);

    /// <summary>What common practice asks of it, as the finding says.</summary>
    private static (Amount Limit, string Source)? Practice(Scene scene, OpeningPlace place)
    {
        var subject = $"{place.Opening.Name}/header";
        var finding = scene.Set.Findings.FirstOrDefault(f => f.Clause.Body == "common-practice" && f.Rule.Key is "header-bearing" or "header-bearing-on-pad" && f.Subject == subject);
        var comparison = finding?.Verdict switch
        {
            Verdict.Met { Comparisons: [var met, ..] } => met,
            Verdict.FallsShort { Comparisons: [var asked, ..] } => asked,
            _ => null,
        };
        return comparison is { } c ? (c.Limit, finding!.Clause.Source.Title) : null;
    }
}
