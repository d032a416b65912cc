using Clomwright.Numerics;

namespace Clomwright.Geometry.Curves;

/// <summary>Cuts a parametric loop into panels.</summary>
internal static class Panels
{
    private const int DepthMax = 12;

    public static Panel[] Of(ParametricLoop loop)
    {
        var panels = new List<Panel>();
        var seams = loop.Seams;
        var rough = 0.0;
        for (var piece = 0; piece + 1 < seams.Length; piece++)
        {
            rough += Arc(loop, piece, seams[piece], seams[piece + 1]);
        }

        for (var piece = 0; piece + 1 < seams.Length; piece++)
        {
            Cut(loop, panels, piece, seams[piece], seams[piece + 1], 1e-14 * rough, 0);
        }

        return [.. panels];
    }

    /// <summary>The largest curvatures inward and outward over closely spaced places.</summary>
    public static (double Concavity, double Convexity) CurvatureRange(ParametricLoop loop, ReadOnlySpan<Panel> panels)
    {
        double lowest = double.PositiveInfinity, highest = double.NegativeInfinity;
        foreach (var panel in panels)
        {
            const int Steps = 8;
            for (var i = 0; i <= Steps; i++)
            {
                var curvature = Curvature(loop, panel.Piece, panel.From + i * (panel.To - panel.From) / Steps);
                lowest = Math.Min(lowest, curvature);
                highest = Math.Max(highest, curvature);
            }
        }

        return (Math.Max(0, -lowest), Math.Max(0, highest));
    }

    private static void Cut(ParametricLoop loop, List<Panel> panels, int piece, double from, double to, double tolerance, int depth)
    {
        var middle = (from + to) / 2;
        var whole = Arc(loop, piece, from, to);
        var halves = Arc(loop, piece, from, middle) + Arc(loop, piece, middle, to);
        var bend = Math.Abs(Turned(loop, piece, from, middle)) + Math.Abs(Turned(loop, piece, middle, to));
        if (depth < DepthMax && (Math.Abs(whole - halves) > tolerance || bend > 0.5))
        {
            Cut(loop, panels, piece, from, middle, tolerance, depth + 1);
            Cut(loop, panels, piece, middle, to, tolerance, depth + 1);
            return;
        }

        var (_, first, _) = loop.At(piece, from);
        var start = panels.Count == 0 ? 0 : panels[^1].Start + panels[^1].Length;
        var heading = panels.Count == 0 ? 0 : panels[^1].Heading + Turned(loop, panels[^1].Piece, panels[^1].From, panels[^1].To);
        panels.Add(new Panel(piece, from, to, start, halves, first.Norm, loop.Speed(piece, to), 1 / first.Norm * first, heading));
    }

    private static double Arc(ParametricLoop loop, int piece, double from, double to) => GaussRule.Eight.Integrate(t => loop.Speed(piece, t), from, to);

    private static double Turned(ParametricLoop loop, int piece, double from, double to)
    {
        var a = loop.At(piece, from).First;
        var b = loop.At(piece, to).First;
        return Math.Atan2(b.Cross(a), b.Dot(a));
    }

    private static double Curvature(ParametricLoop loop, int piece, double parameter)
    {
        var (_, first, second) = loop.At(piece, parameter);
        var speed = first.Norm;
        return second.Cross(first) / (speed * speed * speed);
    }
}
