using Clomwright.Analysis;
using Clomwright.Analysis.Comfort;
using Clomwright.Evidence;
using static Clomwright.Study.Figures;

namespace Clomwright.Study;

/// <summary>Warmth, damp and sun in the figures.</summary>
internal static class ComfortFigures
{
    public static Figure Of(ComfortResult comfort, Known<FixResults> fixes, Known<FirstWinter> first) => Tree(
        ("loss", Computed(comfort.Loss, Dimension.HeatLoss)),
        ("volume", Computed(comfort.Volume, Dimension.Volume)),
        ("airing", Computed(comfort.Airing, Dimension.Number)),
        ("losses", Row(comfort.Losses, l => Tree(("part", Name(Word(l.Kind))), ("loss", Computed(l.Loss, Dimension.HeatLoss))))),
        ("parts", Row(comfort.Parts, p => Tree(
            ("name", Name(p.Address)),
            ("kind", Name(Word(p.Kind))),
            ("area", Computed(p.Area, Dimension.Area)),
            ("resistance", Computed(p.Part.Resistance, Dimension.Resistance)),
            ("transmittance", Computed(p.Part.Transmittance, Dimension.Transmittance)),
            ("periodic", Computed(p.Day.Transmittance, Dimension.Transmittance)),
            ("decrement", Computed(p.Day.Decrement, Dimension.Fraction)),
            ("lag", Computed(p.Day.LagHours * 3600, Dimension.Time))))),
        ("windows", Row(comfort.Windows, w => Tree(
            ("name", Name(w.Opening)),
            ("area", Computed(w.Area, Dimension.Area)),
            ("glass", Computed(w.Glass, Dimension.Area)),
            ("transmittance", Computed(w.Transmittance, Dimension.Transmittance)),
            ("sun", Computed(w.Sun, Dimension.Fraction))))),
        ("floor", Tree(("dimension", Computed(comfort.Ground.Dimension, Dimension.Length)), ("transmittance", Computed(comfort.Ground.Transmittance, Dimension.Transmittance)))),
        ("edges", Row(comfort.Edges, e => Tree(
            ("name", Name(e.Key)), ("length", Computed(e.Length, Dimension.Length)), ("loss", Computed(e.Loss, Dimension.Conductivity)), ("lowest", Computed(e.Lowest, Dimension.Fraction))))),
        ("glassByWind", Row(comfort.GlassByWind, a => Computed(a, Dimension.Area))),
        ("year", Of(comfort.Year, Year)),
        ("damp", Of(comfort.Damp, d => Tree(
            ("later", Month(d.Later, d.Limit)), ("coldest", Month(d.Coldest, d.Limit)), ("unheated", Month(d.Unheated, d.Limit)),
            ("first", Of(first, f => Tree(("water", Computed(f.Water.Left, Dimension.Mass)), ("dampest", Month(f.Dampest, d.Limit)))))))),
        ("lined", Row(comfort.Lined, l => Tree(("name", Name(l.Name)), ("most", Computed(l.Most, Dimension.Number)), ("left", Computed(l.Left, Dimension.Number))))),
        ("fixes", Of(fixes, f => Row(f.Fixes, x => Tree(
            ("fix", Name(x.Key)),
            ("loss", Computed(x.Loss, Dimension.HeatLoss)),
            ("heat", Computed(x.Heat, Dimension.Energy)),
            ("wood", Computed(x.WoodMass, Dimension.Mass)),
            ("hotHours", Computed(x.HotHours, Dimension.Number)),
            ("mould", Computed(x.Mould, Dimension.Fraction)))))));

    private static Figure Year(YearResult year) => Tree(
        ("kept", Computed(year.Warm, Dimension.Temperature)),
        ("heat", Computed(year.Heated.Heat, Dimension.Energy)),
        ("heatSimple", Computed(year.Simple, Dimension.Energy)),
        ("peak", Computed(year.Heated.Peak, Dimension.Power)),
        ("wood", Computed(year.Wood.Mass, Dimension.Mass)),
        ("woodStacked", Computed(year.Wood.Stacked, Dimension.Volume)),
        ("coldHours", Computed(year.Free.ColdHours, Dimension.Number)),
        ("hotHours", Computed(year.Free.HotHours, Dimension.Number)),
        ("hottest", Computed(year.Free.Hottest.High, Dimension.Temperature)),
        ("coldest", Computed(year.Free.Coldest.Low, Dimension.Temperature)),
        ("months", Row(year.Heated.Months.Zip(year.Free.Months), m => Tree(
            ("heat", Computed(m.First.Heat, Dimension.Energy)),
            ("sun", Computed(m.First.Sun, Dimension.Energy)),
            ("outside", Computed(m.First.Outside, Dimension.Temperature)),
            ("heated", Computed(m.First.Felt, Dimension.Temperature)),
            ("free", Computed(m.Second.Felt, Dimension.Temperature))))),
        ("glass", Row(year.Glass, g => Tree(("name", Name(g.Opening)), ("gain", Computed(g.Gain, Dimension.Energy))))));

    private static Figure Month(DampMonth month, double limit) => Tree(
        ("month", Computed(month.Month, Dimension.Count)),
        ("air", Computed(month.Air, Dimension.Temperature)),
        ("outside", Computed(month.Outside, Dimension.Temperature)),
        ("dewPoint", Computed(month.DewPoint, Dimension.Temperature)),
        ("coldest", Computed(month.Temperatures.Min(), Dimension.Temperature)),
        ("mouldShare", Computed(month.Share(limit), Dimension.Fraction)));

    private static string Word(PartKind kind) => kind.ToString().ToLowerInvariant();

    private static Figure Of<T>(Known<T> known, Func<T, Figure> figure) where T : class =>
        known.Value is { } value ? figure(value) : new Figure.NotChecked(known.NotChecked!);
}
