using Clomwright.Analysis.Steps;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.Foundation;

/// <summary>The fall of the trench to its outlet.</summary>
internal static class Drains
{
    /// <summary>1/8 in a foot.</summary>
    public const double LeastFall = 1.0 / 96;

    /// <summary>1/4 in a foot.</summary>
    public const double UsualFall = 1.0 / 48;

    public static Known<DrainFall> Of(HouseGeometry geometry)
    {
        if (geometry.House.Site.Grade is not { } grade)
        {
            return new Message("analysis.foundation.no-grade");
        }

        if (geometry.House.Trench is not { Depth.Nanometres: > 0 } trench)
        {
            return new Message("analysis.foundation.no-trench");
        }

        if (trench.Outlet is not { } outlet)
        {
            return new Message("analysis.foundation.no-outlet");
        }

        if (DrainLine.Of(geometry) is not { } line)
        {
            return new Message("analysis.foundation.no-trench");
        }

        var mechanics = Sources.Get("mechanics");
        var practice = Sources.Get("drain-practice");
        var sheet = new Worksheet("drain-fall");
        var ring = Worksheet.Computed("L_s", "stem-ring", 2 * line.Half, Dimension.Length);
        var run = sheet.Step("drain-run", "L", "L_s/2", line.Half, Dimension.Length, mechanics, ring);
        var beyond = Worksheet.Given("L_o", "drain-beyond", Math.Max(0, trench.OutletRun?.Metres ?? 0), Dimension.Length);
        var there = sheet.Step(
            "drain-available", "f", "z_g - d_t - z_o", (grade - trench.Depth - outlet).Metres, Dimension.Length, mechanics,
            Worksheet.Given("z_g", "grade", grade.Metres, Dimension.Length), Worksheet.Given("d_t", "trench-depth", trench.Depth.Metres, Dimension.Length),
            Worksheet.Given("z_o", "outlet", outlet.Metres, Dimension.Length));
        var fall = trench.Fall is { } laid
            ? Worksheet.Given("i", "drain-laid", laid.RiseOverRun, Dimension.Slope)
            : new Symbol("i", new Message("analysis.symbol.drain-least"), new Amount(LeastFall, Dimension.Slope), Tag.Practice, practice);
        var needed = sheet.Step("drain-needed", "F", "i*(L + L_o)", fall.Value.Si * (line.Half + beyond.Value.Si), Dimension.Length, practice, fall, run, beyond);
        if (trench.Fall is null)
        {
            sheet.Step("drain-slope", "s", "f/(L + L_o)", line.Fall, Dimension.Slope, mechanics, there, run, beyond);
        }

        return new DrainFall(line, line.Half, trench.OutletRun?.Metres, there.Value.Si, needed.Value.Si, Slip(line.Fall), sheet.Done) { Points = line.Points(geometry) };
    }

    /// <summary>A fall for each ten feet that is one of practice for each foot. A hair either way for levels written in whole units of a tape.</summary>
    private static Message? Slip(double slope) => 10 * slope is >= 0.9 * LeastFall and <= 1.1 * UsualFall
        ? Message.Of("analysis.foundation.unit-slip", ("slope", new Amount(slope, Dimension.Slope)), ("least", new Amount(LeastFall, Dimension.Slope)), ("usual", new Amount(UsualFall, Dimension.Slope)))
        : null;
}
