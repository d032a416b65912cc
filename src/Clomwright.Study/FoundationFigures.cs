using Clomwright.Analysis;
using Clomwright.Analysis.Foundation;
using Clomwright.Evidence;
using static Clomwright.Study.Figures;

namespace Clomwright.Study;

/// <summary>The foundation's part of the figures.</summary>
internal static class FoundationFigures
{
    public static Figure Of(FoundationResult foundation) => Tree(
        ("stages", Row(foundation.Stages, Stage)),
        ("stem", Check(foundation.Stem)),
        ("ground", Check(foundation.Ground)),
        ("joints", Row(foundation.Joints, j => Tree(("joint", Name(j.Joint)), ("offCentre", Of(j.Check, c => new Figure.Number(c.Demand, Tag.Computed, FromDescription))), ("under", Of(j.Check, c => Name(c.Subject)))))),
        ("dryStem", Computed(foundation.DryStem, Dimension.Number, new Message("rules.because.stem-with-mortar"))),
        ("capacities", Tree(
            ("given", foundation.Capacities.Given is { } given ? new Figure.Number(new Amount(given, Dimension.Stress), Tag.Given, "site.soilBearing") : new Figure.NotChecked(new Message("analysis.foundation.no-bearing"))),
            ("presumptive", Of(foundation.Capacities.Presumptive, p => new Figure.Number(new Amount(p.Pressure.Value, Dimension.Stress), p.Pressure.Tag, p.Pressure.Source.Title))),
            ("computed", Tree(
                ("meyerhof", Of(foundation.Capacities.Computed, c => Computed(c.Meyerhof, Dimension.Stress))),
                ("hansen", Of(foundation.Capacities.Computed, c => Computed(c.Hansen, Dimension.Stress))),
                ("vesic", Of(foundation.Capacities.Computed, c => Computed(c.Vesic, Dimension.Stress))),
                ("terzaghi", Of(foundation.Capacities.Computed, c => Computed(c.Terzaghi, Dimension.Stress))))))),
        ("frost", Tree(
            ("belowFrost", Of(foundation.Frost, f => Computed(f.Capacity.Si - f.Demand.Si, Dimension.Length))),
            ("stefan", Of(foundation.FrostEstimate, f => Computed(f.Stefan, Dimension.Length))),
            ("berggren", Of(foundation.FrostEstimate, f => Computed(f.Berggren, Dimension.Length))))),
        ("drain", Drain(foundation.Drain)));

    private static Figure Stage(FoundationStage stage) => Tree(
        ("stage", Name(stage.Key)),
        ("combination", Name(stage.Combination)),
        ("known", new Figure.Flag(stage.Strips.Is)),
        ("strips", Row(stage.Strips.Value?.Strips ?? [], s => Tree(
            ("subject", Name(s.Subject)),
            ("length", Computed(s.Length, Dimension.Length)),
            ("onStem", Computed(s.OnStem, Dimension.LineLoad)),
            ("stemOffCentre", Computed(s.StemShare, Dimension.Fraction)),
            ("stemPressure", Of(s.StemPressure, p => Computed(p.Value, Dimension.Stress))),
            ("groundPressure", Of(s.GroundPressure, p => Computed(p.Value, Dimension.Stress)))))));

    private static Figure Check(Known<FoundationCheck> known) => Tree(
        ("under", Of(known, c => Name(c.Subject))),
        ("stage", Of(known, c => Name(c.Stage))),
        ("combination", Of(known, c => Name(c.Combination))),
        ("pressure", Of(known, c => new Figure.Number(c.Demand, Tag.Computed, FromDescription))),
        ("allowed", Of(known, c => new Figure.Number(c.Capacity, c.From is null ? Tag.Given : Tag.Code, c.From?.Title ?? FromDescription))),
        ("use", Of(known, c => Computed(c.Use, Dimension.Number))));

    private static Figure Drain(Known<DrainFall> known) => Tree(
        ("fall", Of(known, d => Computed(d.Slope, Dimension.Slope))),
        ("run", Of(known, d => Computed(d.Run, Dimension.Length))),
        ("beyond", Of(known, d => Computed(d.Beyond, Dimension.Length, new Message("study.demand.no-outlet-run")))),
        ("available", Of(known, d => Computed(d.Available, Dimension.Length))),
        ("needed", Of(known, d => Computed(d.Needed, Dimension.Length))),
        ("points", Row(known.Value?.Points ?? [], p => Tree(
            ("name", Name(p.Name)),
            ("station", Computed(p.Station, Dimension.Length)),
            ("toPipe", Computed(p.ToPipe, Dimension.Length)),
            ("bottom", Computed(p.Height, Dimension.Length))))));

    private static Figure Of<T>(Known<T> known, Func<T, Figure> figure) where T : class =>
        known.Value is { } value ? figure(value) : new Figure.NotChecked(known.NotChecked!);
}
