using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;
using Clomwright.Rules;

namespace Clomwright.Papers.Sheets;

/// <summary>Local design criteria, each given or NOT GIVEN, and the list of what makes the house fit to live in.</summary>
internal static class CriteriaSheet
{
    private const string Dwelling = "irc-dwelling@2021";

    public static IEnumerable<Draft> Of(Scene scene)
    {
        var say = scene.Say;
        Block[] blocks =
        [
            new Beside(
                new Stack([new Heading(say.Say("criteria.local")), new Paragraph(say.Say("criteria.note"), Styles.Small) { Above = 1 }, Local(scene) with { Above = 1.5 }]),
                new Stack([new Heading(say.Say("criteria.habitability")), new Paragraph(Adopted(scene), Styles.Small) { Above = 1 }, Habitability(scene) with { Above = 1.5 }, new Paragraph(say.Say("criteria.clear"), Styles.Small) { Above = 2 }]),
                0.36),
        ];
        return Draft.Flow(new SheetHead("criteria", say.Say("criteria.title")), scene.Set.Options.Paper.OfficeList(), blocks, say);
    }

    private static Table Local(Scene scene)
    {
        var (say, site) = (scene.Say, scene.House.Site);
        return new Table(
            [new(say.Say("criteria.what")) { Grows = 1 }, new(say.Say("criteria.value"), Anchor.End)],
            [
                Line("loads", site.Loads is { } edition ? say.NameOf("papers.criteria.edition." + edition, edition) : null), Line("risk", site.RiskCategory),
                Of("snow", site.GroundSnow is { } snow ? new Amount(snow.Pascals, Dimension.AreaLoad) : null), Of("wind", site.WindSpeed), Line("exposure", site.Exposure),
                Of("sds", site.SeismicSds is { } a ? Amount.Number(a) : null), Of("sd1", site.SeismicSd1 is { } b ? Amount.Number(b) : null), Of("s1", site.SeismicS1 is { } c ? Amount.Number(c) : null),
                Line("site-class", site.SiteClass), Line("category", SeismicCategory.Of(site)),
                Of("frost", site.FrostDepth), Of("bearing", site.SoilBearing is { } bearing ? new Amount(bearing.Pascals, Dimension.Stress) : null), Line("soil", site.Soil?.Class is { } soil ? say.Book.Material(soil) : null),
                Of("grade", site.Grade), Of("ground-fall", site.GroundFall), Of("elevation", site.Elevation),
                Line("place", site is { Latitude: { } north, Longitude: { } east } ? say.Book.Marked(FormattableString.Invariant($"{north:0.###}°, {east:0.###}°")) : null),
                Line("climate", scene.Set.Weather is { Value.Climate.Place: { } near } && site.Climate is not null ? say.Say(near) : site.Climate ?? (site.Months.Count > 0 ? say.Say("criteria.own-months") : null)),
                Line("freezing", site.Freezing is { } winter ? say.Book.Marked(FormattableString.Invariant($"{winter.DegreeDays:0} K d")) : null),
                Line("flood", site.FloodZone), Line("termite", site.Termites), Line("weathering", site.Weathering), Line("energy-zone", site.EnergyZone), Line("ice-barrier", site.IceBarrier),
            ]) { Pad = 0.6 };

        Row Of(string key, Amount? amount) => new(new Cell(say.Say("criteria." + key)), amount is { } known ? scene.Cell(known) with { Lettering = Styles.BodyStrong } : NotGiven());
        Row Line(string key, string? words) => new(new Cell(say.Say("criteria." + key)), words is { Length: > 0 } known ? new Cell(known) { Lettering = Styles.BodyStrong } : NotGiven());
        Cell NotGiven() => new(say.Say("criteria.not-given")) { Lettering = Styles.BodyStrong };
    }

    private static bool Asked(Scene scene) => scene.House.Rules.Adopted.Contains(Dwelling);

    private static string Adopted(Scene scene) => scene.Say.Say(Asked(scene) ? "criteria.adopted" : "criteria.not-adopted", ("body", OfficeFindings.Body(scene.Say, Dwelling)));

    /// <summary>Clause by clause; of a house that has not adopted them what they would ask, and that it is not checked.</summary>
    private static Table Habitability(Scene scene)
    {
        var say = scene.Say;
        return new Table(
            [
                new(say.Say("rule-table.clause")), new(say.Say("rule-table.rule")) { Grows = 1 }, new(say.Say("rule-table.of")), new(say.Say("rule-table.required")), new(say.Say("rule-table.provided")) { Grows = 2 },
                new(say.Say("rule-table.verdict")), new(say.Say("rule-table.source")) { Grows = 1 },
            ],
            [
                .. Asked(scene)
                    ? OfficeFindings.Alike(say, scene.Set.Findings.Where(f => f.Clause.Adopted == Dwelling)).Select(a => Line(a[0].Clause, a[0].Rule, OfficeFindings.Subject(say, a), OfficeFindings.Numbers(say, a[0]), OfficeFindings.Word(say, a[0].Verdict), a[0].Verdict is Verdict.Met or Verdict.NotApplicable))
                    : RuleBook.Clauses.Where(c => c.Clause.Adopted == Dwelling).Select(c => Line(c.Clause, c.Rule, "", (OfficeFindings.Asked(say, Dwelling, c.Rule.Key), ""), say.Say("not-checked"), false)),
            ]) { Pad = 0.6, Lettering = Styles.Small };

        Row Line(Clause clause, Rule rule, string subject, (string Required, string Provided) numbers, string verdict, bool quiet) => new(
            new Cell(clause.Number), new Cell(say.Say(rule.Title)) { Lettering = Styles.SmallStrong }, new Cell(subject), new Cell(numbers.Required), new Cell(numbers.Provided),
            new Cell(verdict) { Lettering = quiet ? Styles.Small : Styles.SmallStrong }, OfficeFindings.Source(say, clause.Source));
    }
}
