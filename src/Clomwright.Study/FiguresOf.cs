using Clomwright.Evidence;
using Clomwright.Geometry;
using Clomwright.Rules;
using static Clomwright.Study.Figures;

namespace Clomwright.Study;

/// <summary>Writes a study down as figures.</summary>
public static class FiguresOf
{
    /// <summary>The whole tree; SI units, angles in radians.</summary>
    public static Figure House(HouseStudy study) => Tree(
        ("house", Tree(("id", Name(study.House.Id)), ("name", Name(study.House.Name)))),
        ("geometry", Geometry(study.Geometry)),
        ("quantities", Quantities(study.Quantities)),
        ("mix", MixFigures.Of(study.Mix)),
        ("roof", RoofFigures.Of(study.Roof)),
        ("wallTop", RoofFigures.Of(study.WallTop)),
        ("wallByHand", WallByHandFigures.Of(study.WallByHand)),
        ("foundation", FoundationFigures.Of(study.Foundation)),
        ("structure", StructureFigures.Of(study.Structure, study.Geometry)),
        ("collapse", CollapseFigures.Of(study.Collapse)),
        ("wallTrials", WallTrialsFigures.Of(study.Trials)),
        ("finishes", FinishesFigures.Of(study.FinishesDried)),
        ("drying", DryingFigures.Of(study.Drying)),
        ("days", DaysFigures.Of(study.Days)),
        ("comfort", ComfortFigures.Of(study.Comfort, study.ComfortFixes, study.FirstWinter)),
        ("freshCob", DryingFigures.Of(study.Fresh)),
        ("milestones", DryingFigures.Of(study.Milestones)),
        ("startMonths", DryingFigures.Of(study.StartMonths)),
        ("cover", DryingFigures.Of(study.Cover)),
        ("findings", Findings(study)));

    private static Figure Geometry(HouseGeometry g) => Tree(
        ("wall", Tree(
            ("grossVolume", Computed(g.Measures.GrossVolume, Dimension.Volume)),
            ("netVolume", Computed(g.Measures.NetVolume, Dimension.Volume)),
            ("openingVolume", Computed(g.Measures.OpeningVolume, Dimension.Volume)),
            ("headerVolume", Computed(g.Measures.HeaderVolume, Dimension.Volume)),
            ("nicheVolume", Computed(g.Measures.NicheVolume, Dimension.Volume)),
            ("embedVolume", Computed(g.Measures.EmbedVolume, Dimension.Volume)),
            ("insideLength", Computed(g.Curve.Length, Dimension.Length)),
            ("thicknessAtBase", Computed(g.Wall.ThicknessAt(g.Wall.Base.Metres), Dimension.Length)),
            ("thicknessAtTop", Computed(g.Wall.ThicknessAtTop)))),
        ("area", Tree(
            ("inside", Computed(g.Measures.InsideArea, Dimension.Area)),
            ("outside", Computed(g.Measures.OutsideArea, Dimension.Area)))),
        ("faceArea", Tree(
            ("inside", Computed(g.Measures.InsideFaceArea, Dimension.Area)),
            ("outside", Computed(g.Measures.OutsideFaceArea, Dimension.Area)))),
        ("lifts", Row(g.Lifts, lift => Tree(
            ("bottom", Computed(lift.Bottom)),
            ("top", Computed(lift.Top)),
            ("grossVolume", Computed(lift.GrossVolume, Dimension.Volume)),
            ("volume", Computed(lift.NetVolume, Dimension.Volume)),
            ("laidVolume", Computed(lift.LaidVolume, Dimension.Volume))))),
        ("openings", Row(g.Openings, opening => Tree(
            ("name", Name(opening.Opening.Name)),
            ("station", Computed(opening.Station, Dimension.Length)),
            ("bearing", Computed(opening.Bearing, Dimension.Angle)),
            ("sill", Computed(opening.Sill, Dimension.Length)),
            ("head", Computed(opening.Head, Dimension.Length)),
            ("volume", Computed(opening.Volume, Dimension.Volume)),
            ("bowInside", Computed(opening.BowInside, Dimension.Length)),
            ("bowOutside", Computed(opening.BowOutside, Dimension.Length))))),
        ("piers", Row(g.Piers, pier => Tree(
            ("address", Name(pier.Address)),
            ("between", Row([pier.Before, pier.After], Name)),
            ("width", Tree(
                ("inside", Computed(pier.WidthInside, Dimension.Length)),
                ("middle", Computed(pier.WidthMiddle, Dimension.Length)),
                ("outside", Computed(pier.WidthOutside, Dimension.Length)),
                ("narrowest", Computed(pier.Narrowest, Dimension.Length)))),
            ("narrowestAt", Computed(pier.NarrowestAt, Dimension.Length))))),
        ("niches", Row(g.Niches, niche => Tree(
            ("name", Name(niche.Niche.Name)),
            ("station", Computed(niche.Station, Dimension.Length)),
            ("volume", Computed(niche.Volume, Dimension.Volume)),
            ("leftBehind", Computed(niche.LeftBehind, Dimension.Length))))),
        ("landings", Row(g.Landings, landing => Tree(
            ("name", Name(landing.Name)),
            ("bearing", Computed(landing.Bearing, Dimension.Angle)),
            ("station", Computed(landing.Station, Dimension.Length)),
            ("arcToNext", Computed(landing.ArcToNext, Dimension.Length)),
            ("chordToNext", Computed(landing.ChordToNext, Dimension.Length))))));

    private static Figure Quantities(HouseQuantities q)
    {
        var uncalibrated = new Message("study.batch-not-calibrated");
        return Tree(
            ("volumePerBatch", Computed(q.VolumePerBatch, Dimension.Volume, uncalibrated)),
            ("batches", Computed(q.Batches, Dimension.Number, uncalibrated)),
            ("lifts", Row(q.Lifts, lift => Tree(
                ("batches", Computed(lift.Batches, Dimension.Number, uncalibrated)),
                ("risePerBatch", Computed(lift.RisePerBatch, Dimension.Length, uncalibrated)),
                ("batchesPerRun", Computed(lift.BatchesPerRun, Dimension.Number, uncalibrated))))),
            ("orders", Row(q.Orders, order => Tree(
                ("key", Name(order.Key)),
                ("supplier", Name(order.Supplier)),
                ("net", Ordered(order.Net, order)),
                ("order", Ordered(order.Order, order)),
                ("waste", Computed(order.Waste, Dimension.Fraction))))));
    }

    private static Figure Ordered(Amount? amount, OrderLine line) =>
        amount is { } known ? new Figure.Number(known, line.Tag, FromDescription) : new Figure.NotChecked(line.Basis);

    private static Figure Findings(HouseStudy study) => Tree(
        ("met", Computed(study.FullTally.Met, Dimension.Count)),
        ("short", Computed(study.FullTally.Short, Dimension.Count)),
        ("notChecked", Computed(study.FullTally.NotChecked, Dimension.Count)),
        ("needsJudgement", Computed(study.FullTally.NeedsJudgement, Dimension.Count)),
        ("notApplicable", Computed(study.FullTally.NotApplicable, Dimension.Count)),
        ("list", Row(study.AllFindings, Finding)));

    private static Figure Finding(Finding finding) => Tree(
        ("rule", Name(finding.Rule.Key)),
        ("by", Name(finding.Clause.Adopted)),
        ("clause", Name(finding.Clause.Number)),
        ("subject", Name(finding.Subject)),
        ("verdict", Name(Word(finding.Verdict))),
        ("comparisons", Row(ComparisonsOf(finding.Verdict), comparison => Tree(
            ("provided", new Figure.Number(comparison.Provided, Tag.Computed, FromDescription)),
            ("word", Name(Word(comparison.Word))),
            ("limit", new Figure.Number(comparison.Limit, TagOf(finding.Clause), finding.Clause.Source.Title))))));

    private static Sequence<Comparison> ComparisonsOf(Verdict verdict) => verdict switch
    {
        Verdict.Met met => met.Comparisons,
        Verdict.FallsShort shortOf => shortOf.Comparisons,
        _ => [],
    };

    private static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Met => "met",
        Verdict.FallsShort => "short",
        Verdict.NotApplicable => "not-applicable",
        Verdict.NeedsJudgement => "needs-judgement",
        _ => "not-checked",
    };

    private static string Word(ComparisonWord word) => word switch
    {
        ComparisonWord.AtMost => "at-most",
        ComparisonWord.LessThan => "less-than",
        ComparisonWord.AtLeast => "at-least",
        _ => "more-than",
    };

    private static Tag TagOf(Clause clause) => clause.Number.Length == 0 ? Tag.Practice : Tag.Code;
}
