using Clomwright.Analysis;
using Clomwright.Analysis.Days;
using Clomwright.Evidence;
using static Clomwright.Study.Figures;

namespace Clomwright.Study;

/// <summary>The part of the figures that tells when the job would be done: bands of days after the first, never a date alone.</summary>
internal static class DaysFigures
{
    public static Figure Of(Known<DaysResult> days) => days.Value is { } d ? Of(d) : new Figure.NotChecked(days.NotChecked!);

    private static Figure Of(DaysResult d) => Tree(
        ("seasons", Computed(d.Seasons, Dimension.Count)),
        ("finish", Band(d.Finish)),
        ("milestones", Row(d.Milestones, m => Tree(("key", Name(m.Key)), ("days", Band(m.Days))))),
        ("lifts", Row(d.Lifts, l => Tree(
            ("closed", Band(l.Closed)), ("worked", Computed(l.Worked, Dimension.Days)), ("waited", Computed(l.Waited, Dimension.Days)), ("byDrying", Computed(l.ByDrying, Dimension.Fraction))))),
        ("weatherDays", Computed(d.WeatherDays, Dimension.Days)),
        ("frostRisk", Computed(d.FrostRisk, Dimension.Fraction)),
        ("tasks", Row(d.Tasks, t => Tree(("key", Name(t.Key)), ("hours", Computed(t.Hours * 3600, Dimension.Time))))),
        ("cobHours", Computed(d.CobHours * 3600, Dimension.Time)),
        ("learned", d.Learned is { } learned ? Of(learned) : new Figure.NotChecked(new Message("study.days.nothing-written"))));

    private static Figure Of(Learned l) => Tree(
        ("days", Computed(l.Days, Dimension.Count)),
        ("from", Name(l.From.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture))),
        ("height", Computed(l.Height, Dimension.Number)),
        ("cobLaid", Computed(l.CobLaid, Dimension.Fraction)),
        ("pace", Factor(l.Pace)),
        ("paceAbove", Factor(l.PaceAbove)),
        ("daySpread", Computed(l.DaySpread, Dimension.Number)),
        ("drying", Factor(l.Drying)),
        ("tasks", Factor(l.Tasks)));

    private static Figure Factor(LearnedFactor f) => Tree(
        ("low", Computed(f.Low, Dimension.Number)), ("middle", Computed(f.Middle, Dimension.Number)), ("high", Computed(f.High, Dimension.Number)),
        ("lowBefore", Computed(f.LowBefore, Dimension.Number)), ("highBefore", Computed(f.HighBefore, Dimension.Number)), ("readings", Computed(f.Readings, Dimension.Count)));

    private static Figure Band(DayBand b) => Tree(("p10", Days(b.P10)), ("p50", Days(b.P50)), ("p90", Days(b.P90)));

    private static Figure Days(int? days) => Computed(days, Dimension.Days, new Message("study.days-not-reached"));
}
