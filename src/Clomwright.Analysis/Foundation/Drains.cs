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

    public static Known<DrainFall> Of(HouseGeometry geometry, double line)
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

        var mechanics = Sources.Get("mechanics");
        var practice = Sources.Get("drain-practice");
        var sheet = new Worksheet("drain-fall");
        var ring = Worksheet.Computed("L_s", "stem-ring", geometry.Curve.OffsetLength(line), Dimension.Length);
        var run = sheet.Step("drain-run", "L", "L_s/2", ring.Value.Si / 2, Dimension.Length, mechanics, ring);
        var least = sheet.Step("drain-needed", "F", "i*L", LeastFall * run.Value.Si, Dimension.Length, practice, Worksheet.Code("i", "drain-least", LeastFall, Dimension.Slope, practice), run);
        var there = sheet.Step(
            "drain-available", "f", "z_g - d_t - z_o", (grade - trench.Depth - outlet).Metres, Dimension.Length, mechanics,
            Worksheet.Given("z_g", "grade", grade.Metres, Dimension.Length), Worksheet.Given("d_t", "trench-depth", trench.Depth.Metres, Dimension.Length),
            Worksheet.Given("z_o", "outlet", outlet.Metres, Dimension.Length));
        var slope = there.Value.Si / run.Value.Si;
        sheet.Step("drain-slope", "s", "f/L", slope, Dimension.Slope, mechanics, there, run);
        return new DrainFall(run.Value.Si, there.Value.Si, slope, least.Value.Si, Slip(slope), sheet.Done);
    }

    /// <summary>A fall for each ten feet that is one of practice for each foot. A hair either way for levels written in whole units of a tape.</summary>
    private static Message? Slip(double slope) => 10 * slope is >= 0.9 * LeastFall and <= 1.1 * UsualFall
        ? Message.Of("analysis.foundation.unit-slip", ("slope", new Amount(slope, Dimension.Slope)), ("least", new Amount(LeastFall, Dimension.Slope)), ("usual", new Amount(UsualFall, Dimension.Slope)))
        : null;
}
