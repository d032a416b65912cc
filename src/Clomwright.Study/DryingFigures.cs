using Clomwright.Analysis;
using Clomwright.Analysis.Drying;
using Clomwright.Evidence;
using static Clomwright.Study.Figures;

namespace Clomwright.Study;

/// <summary>The part of the figures that tells how the wall dries: bands, never dates.</summary>
internal static class DryingFigures
{
    public static Figure Of(Known<DryingResult> drying) => drying.Value is { } d ? Of(d) : new Figure.NotChecked(drying.NotChecked!);

    private static Figure Of(DryingResult d) => Tree(
        ("heightToday", Range(d.HeightToday, Dimension.Length)),
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
        ("gaps", Row(d.Gaps, gap => Tree(("opening", Name(gap.Opening)), ("gap", Range(gap.Gap, Dimension.Length)), ("bridgeAfter", Range(gap.BridgeAfter, Dimension.Days))))));

    /// <summary>What this house's own tests, recipe and roof told, with its own tag.</summary>
    private static Figure.Number Known(KnownNumber known, double value) =>
        new(new Amount(value, DryingNumbers.DimensionOf(known.Key)), known.Tag, known.Assumption?.Source.Title ?? FromDescription);

    private static Figure Range(Band band, Dimension dimension) => Tree(("low", Number(band.Low, dimension)), ("high", Number(band.High, dimension)));

    private static Figure Number(double? value, Dimension dimension) => Computed(value, dimension, new Message("study.drying-not-reached"));
}
