namespace Clomwright.Geometry.Curves;

/// <summary>The parameter of a loop as a function of arc length, panel by panel, as a Chebyshev series.</summary>
/// <remarks>
/// The coefficients come from the parameter at the Chebyshev points of the panel, each found by Newton's method on the arc length; the
/// panels are short enough that the series ends at rounding.
/// </remarks>
internal sealed class StationTable
{
    private const int Terms = 14;
    private readonly Panel[] panels;
    private readonly double[] starts;
    private readonly double[] coefficients;

    public StationTable(ParametricLoop loop, Panel[] panels)
    {
        this.panels = panels;
        starts = [.. panels.Select(p => p.Start)];
        coefficients = new double[panels.Length * Terms];
        Span<double> values = stackalloc double[Terms];
        for (var i = 0; i < panels.Length; i++)
        {
            for (var k = 0; k < Terms; k++)
            {
                values[k] = panels[i].ParameterAt(loop, panels[i].Start + panels[i].Length / 2 * (1 + Math.Cos(Math.PI * (k + 0.5) / Terms)));
            }

            for (var j = 0; j < Terms; j++)
            {
                var sum = 0.0;
                for (var k = 0; k < Terms; k++)
                {
                    sum += values[k] * Math.Cos(Math.PI * j * (k + 0.5) / Terms);
                }

                coefficients[i * Terms + j] = sum * (j == 0 ? 1 : 2) / Terms;
            }
        }
    }

    public double Length => panels[^1].Start + panels[^1].Length;

    public ReadOnlySpan<Panel> Panels => panels;

    /// <summary>The panel that holds an arc length, and the parameter there.</summary>
    public ref readonly Panel At(double arc, out double parameter)
    {
        var index = Array.BinarySearch(starts, arc);
        index = Math.Max(0, index >= 0 ? index : ~index - 1);
        ref readonly var panel = ref panels[index];
        var x = 2 * (arc - panel.Start) / panel.Length - 1;
        double last = 0, before = 0;
        for (var j = Terms - 1; j > 0; j--)
        {
            (last, before) = (coefficients[index * Terms + j] + 2 * x * last - before, last);
        }

        parameter = Math.Clamp(coefficients[index * Terms] + x * last - before, panel.From, panel.To);
        return ref panel;
    }
}
