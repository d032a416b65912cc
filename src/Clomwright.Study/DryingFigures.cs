using Clomwright.Analysis;
using Clomwright.Analysis.Drying;
using Clomwright.Evidence;
using static Clomwright.Study.Figures;

namespace Clomwright.Study;

/// <summary>The part of the figures that tells how the wall dries: bands, never dates.</summary>
internal static class DryingFigures
{
    public static Figure Of(Known<DryingResult> drying) => drying.Value is { } d ? Of(d) : new Figure.NotChecked(drying.NotChecked!);

    public static Figure Of(Known<StartYear> year) => year.Value is { } y ? Of(y) : new Figure.NotChecked(year.NotChecked!);

    public static Figure Of(Known<WallCover> cover) => cover.Value is { } c ? Of(c) : new Figure.NotChecked(cover.NotChecked!);

    public static Figure Of(Known<FreshCob> fresh) => fresh.Value is { } f ? Of(f) : new Figure.NotChecked(fresh.NotChecked!);

    public static Figure Of(Known<DryingMilestones> milestones) => milestones.Value is { } m ? Tree(("fast", Of(m.Fast)), ("slow", Of(m.Slow))) : new Figure.NotChecked(milestones.NotChecked!);

    private static Figure Of(FreshCob f) => Tree(
        ("stands", Range(f.Stands, Dimension.Length)),
        ("bulgesUnder", Computed(f.BulgesUnder, Dimension.Number)),
        ("lifts", Row(f.Lifts, l => Tree(
            ("first", Computed(l.First, Dimension.Count)), ("last", Computed(l.Last, Dimension.Count)), ("height", Computed(l.Height, Dimension.Length)), ("overWeight", Computed(l.OverWeight, Dimension.Number))))));

    private static Figure Of(WallMilestones m) => Tree(
        ("walls", Number(m.All ? m.Laid[^1] : null, Dimension.Days)),
        ("roof", Number(m.Roof, Dimension.Days)),
        ("plaster", Number(m.Plaster, Dimension.Days)),
        ("frostNights", Computed(m.FrostNights, Dimension.Number)));

    private static Figure Of(StartYear y) => Tree(
        ("sunny", Name(y.Sunny.Address)),
        ("shaded", Name(y.Shaded.Address)),
        ("months", Row(y.Months, m => Tree(
            ("nextSunny", Cases(m.NextSunny)), ("nextShaded", Cases(m.NextShaded)), ("walls", Cases(m.Walls)), ("roof", Cases(m.Roof)), ("plaster", Cases(m.Plaster)), ("frost", new Figure.Flag(m.Frost))))));

    private static Figure Of(WallCover c) => Tree(
        ("run", Computed(c.Run, Dimension.Length)),
        ("ridge", Computed(c.Ridge, Dimension.Length)),
        ("outerEdge", Computed(c.OuterEdge, Dimension.Length)),
        ("tieSpacing", Computed(c.TieSpacing, Dimension.Length)),
        ("tiesEachEdge", Computed(c.TiesEachEdge, Dimension.Count)),
        ("pull", Computed(c.Pull, Dimension.Force)),
        ("lifts", Row(c.Lifts, l => Tree(("width", Computed(l.Width, Dimension.Length)), ("area", Computed(l.Area, Dimension.Area))))));

    private static Figure Cases(Forecast f) => Tree(("fast", Number(f.Fast, Dimension.Days)), ("middle", Number(f.Middle, Dimension.Days)), ("slow", Number(f.Slow, Dimension.Days)));

    private static Figure Of(DryingResult d) => Tree(
        ("heightToday", Range(d.HeightToday, Dimension.Length)),
        ("practiceCap", Computed(d.PracticeCap, Dimension.Length)),
        ("diffusivity", Tree(
            ("measured", new Figure.Flag(d.Known.Any(k => k is { Key: "drying-diffusivity", Tag: Tag.Measured }))), ("fast", Number(d.Diffusivity.Fast, Dimension.Number)), ("middle", Number(d.Diffusivity.Middle, Dimension.Number)), ("slow", Number(d.Diffusivity.Slow, Dimension.Number)))),
        ("roofAfter", Range(d.RoofAfter, Dimension.Days)),
        ("plasterAfter", Range(d.PlasterAfter, Dimension.Days)),
        ("known", Row(d.Known, known => Tree(
            ("key", Name(known.Key)),
            ("low", Known(known, Math.Min(known.Fast, known.Slow))),
            ("middle", Known(known, known.Middle)),
            ("high", Known(known, Math.Max(known.Fast, known.Slow)))))),
        ("lifts", Row(d.Lifts, lift => Tree(
            ("daysToNext", Range(lift.DaysToNext, Dimension.Days)),
            ("keysFor", Range(lift.KeysFor, Dimension.Days)),
            ("settles", Range(lift.Settles, Dimension.Length)),
            ("frost", new Figure.Flag(lift.FrostFrom)),
            ("laidAfter", Number(lift.Number <= d.Middle.Lifts.Count ? d.Middle.Lifts[lift.Number - 1].LaidDay : null, Dimension.Days))))),
        ("bays", Row(d.Bays.Select((bay, index) => (bay, index)), b => Tree(
            ("address", Name(b.bay.Address)),
            ("faces", Computed(b.bay.Normal, Dimension.Angle)),
            ("lifts", Row(d.Middle.Lifts, lift => Tree(
                ("firmAfter", Number(lift.Bays[b.index].FirmAfter, Dimension.Days)),
                ("keysUntil", Number(lift.Bays[b.index].KeysUntil, Dimension.Days)),
                ("jointDried", new Figure.Flag(lift.Bays[b.index].JointDried)))))))),
        ("gaps", Row(d.Gaps, gap => Tree(("opening", Name(gap.Opening)), ("gap", Range(gap.Gap, Dimension.Length)), ("bridgeAfter", Range(gap.BridgeAfter, Dimension.Days))))),
        ("joints", Row(d.Joints, j => Tree(
            ("lift", Computed(j.Lift, Dimension.Count)), ("height", Computed(j.Height, Dimension.Length)), ("bay", Name(j.Bay.Address)),
            ("fast", new Figure.Flag(j.Fast)), ("middle", new Figure.Flag(j.Middle)), ("slow", new Figure.Flag(j.Slow))))));

    /// <summary>What this house's own tests, recipe and roof told, with its own tag.</summary>
    private static Figure.Number Known(KnownNumber known, double value) =>
        new(new Amount(value, DryingNumbers.DimensionOf(known.Key)), known.Tag, known.Assumption?.Source.Title ?? FromDescription);

    private static Figure Range(Band band, Dimension dimension) => Tree(("low", Number(band.Low, dimension)), ("high", Number(band.High, dimension)));

    private static Figure Number(double? value, Dimension dimension) => Computed(value, dimension, new Message("study.drying-not-reached"));
}
