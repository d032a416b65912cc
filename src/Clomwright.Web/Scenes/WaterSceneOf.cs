using Clomwright.Analysis;
using Clomwright.Analysis.Drying;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Study;

namespace Clomwright.Web.Scenes;

/// <summary>The water of a wall as the page draws it, from the middle case; what comes next is said as a band over all three.</summary>
public static class WaterSceneOf
{
    /// <summary>Days sent at most; a wall that is not ready by then is said to be so.</summary>
    public const int DaysMost = 400;

    private const int Bands = 6;
    private const int Hundredths = 70;
    private static readonly string[] Winds = ["n", "ne", "e", "se", "s", "sw", "w", "nw"];

    /// <summary>The scene.</summary>
    /// <param name="study">The house.</param>
    /// <param name="known">How it dries, or why that is not known.</param>
    /// <param name="face">Where the wall is seen from.</param>
    /// <param name="words">The language.</param>
    public static WaterScene Scene(HouseStudy study, Known<DryingResult> known, Face face, Phrasebook words)
    {
        ArgumentNullException.ThrowIfNull(study);
        var pen = new Pen(words, study.House.Units);
        var drying = known.Value;
        var view = new FaceViewOf(study.Geometry, face, pen);
        WaterLift[] lifts = drying is null ? [] : [.. study.Geometry.Lifts.Select(lift => Lift(drying, lift.Index, lift.Bottom.Metres, lift.Top.Metres, pen))];
        var days = drying is null ? 0 : Math.Min(DaysMost, lifts.SelectMany(lift => lift.Cells).Select(cell => cell.From + cell.Water.Length).DefaultIfEmpty(1).Max());
        var (driest, width) = Steps(lifts);
        return new WaterScene
        {
            NotChecked = known.NotChecked is { } why ? pen.Say(why) : null,
            Face = face == Face.Inside ? "inside" : "outside",
            Days = [.. Enumerable.Range(0, days).Select(day => pen.Say("web.water.day", ("n", day), ("date", drying!.Start.AddDays(day))))],
            Says = [.. Enumerable.Range(0, days).Select(day => Says(drying!, lifts, day, pen))],
            Lifts = lifts,
            Bays = drying is null ? [] : [.. drying.Bays.Select(bay => Bay(bay, view, pen))],
            Values = [.. Enumerable.Range(0, Hundredths).Select(n => new WaterValue(pen.Short(Amount.Fraction(n / 100.0)), Math.Clamp((n - driest) / width, 0, Bands - 1)))],
            Bands = [.. Enumerable.Range(0, Bands).Select(band => Band(band, driest, width, pen))],
            Figures = drying is null ? [] :
            [
                new(pen.Say("web.water.height-today"), Range(drying.HeightToday, Dimension.Length, pen)),
                new(pen.Say("web.water.roof-after"), Range(drying.RoofAfter, Dimension.Days, pen)),
                new(pen.Say("web.water.plaster-after"), Range(drying.PlasterAfter, Dimension.Days, pen)),
                .. drying.Gaps.Select(gap => new Figure(pen.Say("web.water.gap", ("opening", gap.Opening)), Range(gap.Gap, Dimension.Length, pen))),
            ],
            Warnings = drying is null ? [] : [.. drying.Warnings.Select(pen.Say)],
        };
    }

    private static WaterLift Lift(DryingResult drying, int index, double bottom, double top, Pen pen)
    {
        var laid = index < drying.Middle.Lifts.Count ? drying.Middle.Lifts[index] : null;
        var band = drying.Lifts[index];
        return new WaterLift(
            pen.Short(Amount.Count(band.Number)), bottom, top,
            laid is null ? null : (int)laid.LaidDay,
            laid is null ? pen.Say("web.water.not-reached") : pen.Say("web.water.laid", ("day", (int)laid.LaidDay), ("date", drying.Start.AddDays((int)laid.LaidDay))),
            Range(band.DaysToNext, Dimension.Days, pen), Range(band.KeysFor, Dimension.Days, pen), Range(band.Settles, Dimension.Length, pen),
            laid is null ? [] : [.. laid.Bays.Select(bay => Cell(laid, bay))]);
    }

    private static WaterCell Cell(LiftDrying laid, BayLift bay)
    {
        var from = (int)laid.LaidDay;
        int? Day(double? after) => after is { } days ? Evening(laid.LaidDay + days) : null;
        var unkeyed = Day(bay.KeysUntil);
        return new WaterCell(
            from, string.Concat(bay.Water.DefaultIfEmpty(laid.LaidWater).Take(Math.Max(1, DaysMost - from)).Select(w => (char)('0' + Math.Clamp((int)Math.Round(100 * w), 0, Hundredths - 1)))),
            Day(bay.FirmAfter), Day(bay.DryAfter), unkeyed is { } until && (laid.NextDay is not { } next || next > until) ? until : null);
    }

    /// <summary>The day on whose evening something that happens at a time can first be seen. A day's evening is its end; times count from the morning of the first.</summary>
    private static int Evening(double time) => Math.Max(0, (int)Math.Ceiling(time - 1e-9) - 1);

    private static string Says(DryingResult drying, WaterLift[] lifts, int day, Pen pen)
    {
        var standing = lifts.Count(lift => lift.Shown <= day);
        var top = lifts.Length == 0 || standing == 0 ? null : lifts[standing - 1];
        return top is null ? ""
            : standing < lifts.Length
                ? pen.Say("web.water.says", ("standing", standing), ("of", lifts.Length), ("lift", top.Number), ("firm", top.Cells.Count(cell => cell.Firm <= day)), ("bays", top.Cells.Count), ("next", top.Next))
                : pen.Say("web.water.says-all", ("of", lifts.Length), ("roof", Range(drying.RoofAfter, Dimension.Days, pen)));
    }

    private static WaterBay Bay(DryingBay bay, FaceViewOf view, Pen pen)
    {
        var faces = pen.Say($"web.water.wind.{Winds[bay.Wind]}");
        return new WaterBay(pen.Say("web.water.bay", ("bay", new Argument.Subject(bay.Address)), ("faces", faces)), faces, view.Across(bay.From, bay.To));
    }

    /// <summary>The driest whole hundredth of the picture and how many hundredths a hatch spans, so that the hatches spread over what is there.</summary>
    private static (int Driest, int Width) Steps(WaterLift[] lifts)
    {
        var seen = lifts.SelectMany(lift => lift.Cells).SelectMany(cell => cell.Water).Select(c => c - '0').DefaultIfEmpty(0).ToList();
        return (seen.Min(), (seen.Max() - seen.Min() + Bands) / Bands);
    }

    /// <summary>Values are whole hundredths, so a hatch is named by its first and last.</summary>
    private static string Band(int band, int driest, int width, Pen pen)
    {
        var (from, to) = (Amount.Fraction((driest + band * width) / 100.0), Amount.Fraction((driest + (band + 1) * width - 1) / 100.0));
        return width == 1 ? pen.Short(from) : pen.Say("web.water.band", ("from", pen.Short(from)), ("to", pen.Short(to)));
    }

    private static string Range(Band band, Dimension dimension, Pen pen) => (Text(band.Low, dimension, pen), Text(band.High, dimension, pen)) switch
    {
        ({ } low, { } high) when low == high => low,
        ({ } low, { } high) => pen.Say(dimension == Dimension.Days ? "web.water.range-days" : "web.water.range", ("low", low), ("high", high)),
        ({ } low, null) => pen.Say(dimension == Dimension.Days ? "web.water.range-days-open" : "web.water.range-open", ("low", low)),
        _ => pen.Say("web.water.not-reached"),
    };

    private static string? Text(double? value, Dimension dimension, Pen pen) => value is not { } known ? null
        : pen.Short(dimension == Dimension.Days ? Amount.Number(Math.Round(known, known < 10 ? 1 : 0)) : new Amount(known, dimension));
}
