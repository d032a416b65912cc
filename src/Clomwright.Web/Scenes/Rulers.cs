using Clomwright.Evidence;

namespace Clomwright.Web.Scenes;

/// <summary>Rulers in the builder's units: every foot, or every 250 mm.</summary>
internal static class Rulers
{
    /// <summary>Heights from the finished floor, with the floor itself named.</summary>
    public static IReadOnlyList<Tick> Heights(double bottom, double top, Pen pen)
    {
        var step = Step(pen);
        var first = (int)Math.Ceiling(bottom / step);
        var last = (int)Math.Floor(top / step);
        return [.. Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(i => new Tick(Pen.Round(i * step), i == 0 ? pen.Say("web.drawing.floor") : Label(i, pen), Major(i, pen) || i == 0))];
    }

    /// <summary>Along a face from its zero mark.</summary>
    /// <param name="length">Length of the face, m.</param>
    /// <param name="place">Where a distance from the zero mark is found on the view.</param>
    /// <param name="pen">Whose units.</param>
    public static IReadOnlyList<Tick> Along(double length, Func<double, double> place, Pen pen)
    {
        var step = Step(pen);
        var count = (int)Math.Floor(length / step + 1e-9);
        return [.. Enumerable.Range(0, count + 1).Select(i => new Tick(Pen.Round(place(i * step)), i % 2 == 0 || pen.Units == UnitSystem.Metric ? Label(i, pen) : null, Major(i, pen)))];
    }

    private static double Step(Pen pen) => pen.Units == UnitSystem.Imperial ? 0.3048 : 0.25;

    private static bool Major(int i, Pen pen) => pen.Units == UnitSystem.Imperial || i % 2 == 0;

    private static string? Label(int i, Pen pen) => i == 0 ? pen.Say("web.drawing.zero") : pen.Units == UnitSystem.Imperial
        ? LengthText.Written(Length.FromFeet(i), UnitSystem.Imperial)
        : i % 4 == 0 ? LengthText.Written(Length.FromMillimetres(i * 250L), UnitSystem.Metric) : null;
}
