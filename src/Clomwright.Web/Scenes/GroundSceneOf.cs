using System.Globalization;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Files;
using Clomwright.Geometry;
using Clomwright.Rules;
using Clomwright.Study;
using Clomwright.Web.Editing;
using Clomwright.Web.Forms;

namespace Clomwright.Web.Scenes;

/// <summary>The scene of the ground: plan, cut, rules and questions.</summary>
public static class GroundSceneOf
{
    /// <summary>The scene, in the words of a phrasebook, with the house's own units first.</summary>
    public static GroundScene Scene(HouseStudy study, Phrasebook words)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        var (house, geometry) = (study.House, study.Geometry);
        var places = HousePlaces.Of(house);
        return new GroundScene
        {
            Plan = PlanKeys.Of(geometry),
            Points = house.Plan is Plan.Path path ? [.. path.Points.Select((point, i) => new GroundPoint(Pen.Point(point.East.Metres, point.North.Metres), pen.Say("web.ground.point-said",
                ("n", (i + 1).ToString(CultureInfo.InvariantCulture)), ("east", LengthText.Written(point.East, house.Units)), ("north", LengthText.Written(point.North, house.Units)))))] : [],
            Peg = Pen.Point(geometry.Curve.Centre.East, geometry.Curve.Centre.North),
            Figures =
            [
                new(pen.Say("web.figure.ring"), pen.Say(Amount.Metres(geometry.Curve.Length))),
                new(pen.Say("web.figure.area"), pen.Say(new Area(geometry.Measures.InsideArea))),
                new(pen.Say("web.figure.area-outside"), pen.Say(new Area(geometry.Measures.OutsideArea))),
            ],
            Section = GroundCut.Of(geometry, pen),
            Bodies = [.. RuleBook.Bodies.Where(Adoptable).Select(body => Body(body, house, pen))],
            Questions = [.. Questions(study, places, pen)],
            Limits = [.. Limits(house, places, pen)],
            House = FindingLines.Totals(study, pen).Line,
            Diagnostics = [.. study.Diagnostics.Select(d => new DiagnosticLine(d.Path, pen.Say(d.What), d.Severity == Severity.Error))],
        };
    }

    /// <summary>The ground checklist and the engineering checks are asked of every house.</summary>
    private static bool Adoptable(BodyOfRules body) => body.Key is not ("ground" or "engineering" or "seismic-category") && body.Adopted != RuleBook.WallModel;

    private static BodyLine Body(BodyOfRules body, House house, Pen pen)
    {
        var name = pen.Say(body.Title);
        var adopted = house.Rules.Adopted.Contains(body.Adopted);
        return new BodyLine(name, new FormBlank($"{EditOfPlaces.Prefix}adopt.{body.Adopted}", name, adopted ? "yes" : "no", [new("yes", pen.Say("web.ground.adopted")), new("no", pen.Say("web.ground.not-adopted"))], [], null));
    }

    /// <summary>Every question that this house is asked, each once: those that nobody answered first.</summary>
    private static IEnumerable<QuestionLine> Questions(HouseStudy study, HousePlaces places, Pen pen)
    {
        var answers = study.House.Rules.Answers;
        return study.Findings.Where(finding => finding.Clause.Status == ClauseStatus.Judgement && finding.Verdict is not Verdict.NotApplicable).DistinctBy(finding => finding.Rule.Key)
            .Select(finding =>
            {
                var (question, at) = (finding.Rule.Key, answers.ToList().FindIndex(answer => answer.Question == finding.Rule.Key));
                var ask = RuleBook.Clauses.First(clause => clause.Rule.Key == question && clause.Clause.Status == ClauseStatus.Judgement);
                return new QuestionLine(question, ask.Says is { } says ? pen.Say(says) : pen.Say(finding.Rule.Title), at < 0 ? null : $"rules.answers[{at}]",
                    Blanks("answer", ["holds", "by", "on", "note"], at < 0 ? null : $"rules.answers[{at}]", places, pen));
            }).OrderBy(line => line.Answer is null ? 0 : 1);
    }

    /// <summary>Of every adopted body the clauses without a number, and those that have one from somebody here.</summary>
    private static IEnumerable<LimitLine> Limits(House house, HousePlaces places, Pen pen) =>
        from body in RuleBook.Bodies
        where house.Rules.Adopted.Contains(body.Adopted)
        from clause in body.Clauses
        where clause.Measures is not null
        let at = house.Rules.Entered.ToList().FindIndex(limit => limit.Body == body.Adopted && limit.Rule == clause.Rule.Key)
        where clause.NumberIsMissing || at >= 0
        select new LimitLine(body.Adopted, clause.Rule.Key, pen.Say("web.ground.clause", ("body", body.Title), ("number", clause.Clause.Number), ("title", clause.Rule.Title)), at < 0 ? null : $"rules.entered[{at}]",
            Blanks("entered-limit", ["limit", "by", "on"], at < 0 ? null : $"rules.entered[{at}]", places, pen));

    private static IReadOnlyList<FormBlank> Blanks(string thing, IReadOnlyList<string> keys, string? path, HousePlaces places, Pen pen) =>
    [
        .. HousePlaces.Asked(thing).Where(place => keys.Contains(place.Key)).Select(place => new FormBlank(
            path is null ? place.Key : $"{EditOfPlaces.Prefix}{path}.{place.Key}", pen.Say(new Message($"files.key.{thing}.{place.Key}")), path is null ? "" : places.At($"{path}.{place.Key}")!.Text,
            place.Words.Count == 0 ? [] : [.. path is null ? (KnobChoice[])[new("", pen.Say("web.form.unsaid"))] : [], .. place.Words.Select(word => new KnobChoice(word, pen.NameOf($"web.word.{word}", word)))], [], null)),
    ];
}
