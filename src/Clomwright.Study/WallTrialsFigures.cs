using Clomwright.Analysis;
using Clomwright.Analysis.WallTrials;
using Clomwright.Evidence;
using static Clomwright.Study.Figures;

namespace Clomwright.Study;

/// <summary>The part of the figures that the trials of the wall's model give.</summary>
internal static class WallTrialsFigures
{
    public static Figure Of(Known<WallTrialsResult> known) => known.Value is { } trials ? Tree(
        ("forecast", new Figure.Flag(trials.Dryness.Forecast)),
        ("lifts", Row(trials.Lifts, l => Tree(
            ("height", Computed(l.Height, Dimension.Length)),
            ("day", l.Day is { } day ? Computed(day, Dimension.Days) : new Figure.NotChecked(new Message("study.figure.no-forecast"))),
            ("base", Place(l.Base)),
            ("worst", Place(l.Worst)),
            ("use", Computed(l.Use, Dimension.Number))))),
        ("openings", Row(trials.Sags, o => Tree(
            ("name", Name(o.Opening)),
            ("sill", Computed(o.Sill, Dimension.Length)),
            ("head", Computed(o.Head, Dimension.Length)),
            ("bends", Computed(o.Bends, Dimension.Length)),
            ("closes", Computed(o.Closes, Dimension.Length))))),
        ("roofDay", trials.Roof.Value is { } young ? Tree(
            ("day", Computed(young.Day, Dimension.Days)),
            ("planned", new Figure.Flag(young.Planned)),
            ("worst", Place(young.Worst)),
            ("weakest", Computed(young.Weakest, Dimension.Fraction)),
            ("use", Computed(young.Use, Dimension.Number))) : new Figure.NotChecked(trials.Roof.NotChecked!)),
        ("wetFoot", trials.Wet.Value is { } wet ? Tree(
            ("height", Computed(wet.Height, Dimension.Length)),
            ("plastic", Computed(wet.Plastic, Dimension.Fraction)),
            ("waterSafe", Water(wet.WaterAt(wet.Safety))),
            ("waterGone", Water(wet.WaterAt(1))),
            ("part", Name(wet.PartAddress)),
            ("partWaterSafe", Water(wet.PartWaterAt(wet.Safety))),
            ("partWaterGone", Water(wet.PartWaterAt(1))),
            ("round", Row(wet.Round, Soaked)),
            ("over", Row(wet.Part, Soaked)),
            ("skins", Row(wet.Skins, s => Tree(
                ("faces", Name(s.Faces)),
                ("depth", Computed(s.Depth, Dimension.Length)),
                ("worst", Place(s.Worst)),
                ("standing", new Figure.Flag(s.Standing)))))) : new Figure.NotChecked(trials.Wet.NotChecked!)),
        ("settled", trials.Settled.Value is { } settled ? Tree(
            ("depth", Computed(settled.Depth, Dimension.Length)),
            ("arc", Computed(settled.Arc, Dimension.Length)),
            ("station", Computed(settled.Station, Dimension.Length)),
            ("edge", Computed(settled.Edge, Dimension.Stress)),
            ("before", Computed(settled.EdgeBefore, Dimension.Stress)),
            ("tension", Computed(settled.Tension, Dimension.Stress)),
            ("letsGo", Computed(settled.Lifted, Dimension.Fraction)),
            ("standing", new Figure.Flag(settled.Standing))) : new Figure.NotChecked(trials.Settled.NotChecked!)),
        ("pushed", trials.Pushed.Value is { } pushed ? Tree(
            ("slipping", new Figure.Flag(pushed.Slipping)),
            ("outward", Computed(pushed.Outward, Dimension.Force)),
            ("round", Computed(pushed.Round, Dimension.Force)),
            ("edge", Computed(pushed.Edge, Dimension.Stress)),
            ("before", Computed(pushed.EdgeBefore, Dimension.Stress)),
            ("tension", Computed(pushed.Tension, Dimension.Stress)),
            ("letsGo", Computed(pushed.Lifted, Dimension.Fraction)),
            ("standing", new Figure.Flag(pushed.Standing)),
            ("handTurns", Computed(pushed.Turns, Dimension.Moment)),
            ("handHolds", Computed(pushed.Hand.Value, Dimension.Moment))) : new Figure.NotChecked(trials.Pushed.NotChecked!)),
        ("sensitivity", Row(trials.Sensitivity, Variant)),
        ("refinement", Row(trials.Refinement, Variant))) : new Figure.NotChecked(known.NotChecked!);

    private static Figure Water(double? content) => content is { } w ? Computed(w, Dimension.Fraction) : new Figure.NotChecked(new Message("study.demand.wet-none"));

    private static Figure Soaked(SoakedState state) => Tree(
        ("water", Computed(state.Water, Dimension.Fraction)),
        ("strength", Computed(state.Strength, Dimension.Stress)),
        ("soaked", Place(state.Soaked)),
        ("dry", Place(state.Dry)));

    private static Figure Place(PressedPlace place) => Tree(
        ("station", Computed(place.Station, Dimension.Length)),
        ("height", Computed(place.Height, Dimension.Length)),
        ("pressure", Computed(place.Pressure, Dimension.Stress)),
        ("strength", Computed(place.Strength, Dimension.Stress)));

    private static Figure Variant(WallVariant variant) => Tree(
        ("key", Name(variant.Key)),
        ("unknowns", Computed(variant.Unknowns, Dimension.Count)),
        ("mean", Computed(variant.Mean, Dimension.Number)),
        ("edge", Computed(variant.Edge, Dimension.Number)),
        ("edgePier", Name(variant.EdgePier)),
        ("pole", Computed(variant.Pole, Dimension.Number)),
        ("header", Computed(variant.Header, Dimension.Number)),
        ("tension", Computed(variant.Tension, Dimension.Stress)));
}
