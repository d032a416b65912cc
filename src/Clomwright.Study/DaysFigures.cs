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
        ("cobHours", Computed(d.CobHours * 3600, Dimension.Time)));

    private static Figure Band(DayBand b) => Tree(("p10", Days(b.P10)), ("p50", Days(b.P50)), ("p90", Days(b.P90)));

    private static Figure Days(int? days) => Computed(days, Dimension.Days, new Message("study.days-not-reached"));
}
