using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Sheets;

/// <summary>How long the ends of a header rest on cob: described, asked by practice, and asked by the load at each end.</summary>
internal static class HeaderBearing
{
    /// <summary>The lengths in a row with a note; nothing without a header.</summary>
    public static IEnumerable<Block> Of(Scene scene, OpeningPlace place)
    {
        if (place.Opening.Header is not { } made || place.Header is null)
        {
            return [];
        }

        var say = scene.Say;
        var practice = Practice(scene, place);
        var ends = scene.Set.WallTop?.HeaderEnds.Where(e => e.Opening == place.Opening.Name).ToList() ?? [];
        List<Fact> facts =
        [
            scene.Fact("opening.bearing", made.Bearing, Tag.Given),
            .. practice is var (limit, _) ? (Fact[])[new Fact(say.Say("opening.bearing-practice"), say.One(limit), say.Other(limit))] : [],
            .. ends.Count == 0 ? (Fact[])[new Fact(say.Say("opening.bearing-load"), say.Say("not-checked"), say.Say("opening.bearing-unknown"))] : ends.Select(e => End(scene, e)),
        ];
        return
        [
            new Facts(facts, Styles.BodyStrong) { Above = 3 },
            new Paragraph(practice is var (_, source) ? say.Say("opening.bearing-note-practice", ("source", source)) : say.Say("opening.bearing-note"), Styles.Small) { Above = 1 },
        ];
    }

    private static Fact End(Scene scene, HeaderEnd end)
    {
        var say = scene.Say;
        var label = say.Say(end.Left ? "opening.bearing-left" : "opening.bearing-right");
        return end.Needed is not { } needed ? new Fact(label, say.Say("opening.bearing-none"), say.Say("opening.bearing-too-hard"))
            : new Fact(label, say.One(Amount.Metres(needed)), Wording.Dotted(say.Other(Amount.Metres(needed)), end.NeededArched is { } arched
                ? say.Say("opening.bearing-arched", ("length", Amount.Metres(arched)))
                : ""));
    }

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
        return comparison is { } c ? (c.Limit, scene.Say.Say(finding!.Clause.Source)) : null;
    }
}
