using Clomwright.Building;
using Clomwright.Evidence;
using CsCheck;

namespace Clomwright.Testing;

/// <summary>A random plan with what a generator needs to know of it without geometry.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="LeastRadius">From the centre to the nearest wall, inches, a little low.</param>
/// <param name="Length">Of the inside face, inches, a little low.</param>
internal sealed record PlanDraw(Plan Plan, double LeastRadius, double Length);

/// <summary>Random plans: 10 to 20 ft across, convex or nearly so.</summary>
internal static class PlanDraws
{
    public static Gen<PlanDraw> Any(Tape tape) => Gen.OneOf(Round(tape), Oval(tape), RoundedRectangle(tape), Path(tape));

    public static Gen<PlanDraw> Round(Tape tape) =>
        from diameter in tape.Between(120, 240)
        from turned in Turned
        select turned(new PlanDraw(new Plan.Round(diameter), diameter.Inches / 2, Math.PI * diameter.Inches));

    public static Gen<PlanDraw> Oval(Tape tape) =>
        from width in tape.Between(120, 192)
        from longer in Gen.Double[1.02, 1.5]
        from turned in Turned
        let length = tape.AtLeast(width.Inches * longer)
        select turned(new PlanDraw(new Plan.Oval(length, width), width.Inches / 2, Math.PI * (length + width).Inches / 2));

    public static Gen<PlanDraw> RoundedRectangle(Tape tape) =>
        from width in tape.Between(120, 192)
        from longer in Gen.Double[1, 1.5]
        from radius in tape.Between(30, 54)
        from turned in Turned
        let length = tape.AtLeast(width.Inches * longer)
        let ring = 2 * (length + width).Inches - (8 - 2 * Math.PI) * radius.Inches
        select turned(new PlanDraw(new Plan.RoundedRectangle(length, width, radius), width.Inches / 2, ring));

    /// <summary>Points round the origin at nearly equal bearings, clockwise, their distances following an ellipse within 5 per cent.</summary>
    public static Gen<PlanDraw> Path(Tape tape) =>
        from radius in Gen.Double[66, 108]
        from longer in Gen.Double[1, 1.3]
        from wobbles in Gen.Double[0.95, 1.05].Array[8, 12]
        from turned in Turned
        select turned(Through(tape, radius, longer, wobbles));

    private static Gen<Func<PlanDraw, PlanDraw>> Turned { get; } =
        from bearing in Gen.Int[0, 719]
        from zero in Gen.Int[0, 719]
        select new Func<PlanDraw, PlanDraw>(draw => draw with
        {
            Plan = draw.Plan with { Bearing = new Angle(bearing / 2.0), ZeroBearing = new Angle(zero / 2.0) },
        });

    private static PlanDraw Through(Tape tape, double radius, double longer, double[] wobbles)
    {
        var points = new PlanPosition[wobbles.Length];
        for (var i = 0; i < points.Length; i++)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * i / points.Length);
            points[i] = new PlanPosition(Reading(radius * longer * wobbles[i] * sin), Reading(radius * wobbles[i] * cos));
        }

        var ring = 0.0;
        for (var i = 0; i < points.Length; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Length]);
            ring += Math.Sqrt(Math.Pow((b.East - a.East).Inches, 2) + Math.Pow((b.North - a.North).Inches, 2));
        }

        return new PlanDraw(new Plan.Path(points.ToSequence()), 0.88 * radius, ring);

        Length Reading(double inches) => tape.Step * (long)Math.Round(inches * Evidence.Length.PerInch / tape.Step.Nanometres);
    }
}
