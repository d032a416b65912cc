namespace Clomwright.Analysis.Mix;

/// <summary>Lines of the plasticity chart. Limits and indices are shares of one, water by dry mass.</summary>
public static class Plasticity
{
    /// <summary>A-line: PI = 0.73 (LL - 20 %).</summary>
    public static double ALine(double liquidLimit) => 0.73 * (liquidLimit - 0.20);

    /// <summary>U-line, above which no soil was found: PI = 0.9 (LL - 8 %).</summary>
    public static double ULine(double liquidLimit) => 0.9 * (liquidLimit - 0.08);

    /// <summary>The liquid limit of a soil half-way between both lines that has a plasticity index.</summary>
    public static double LiquidLimit(double index) => (2 * index + 0.73 * 0.20 + 0.9 * 0.08) / (0.73 + 0.9);

    /// <summary>Letters of the chart: <c>CL</c>, <c>ML</c>, <c>CH</c>, <c>MH</c> or <c>CL-ML</c>.</summary>
    public static string Class(double liquidLimit, double index)
    {
        var clay = index >= ALine(liquidLimit);
        return liquidLimit >= 0.50 ? clay ? "CH" : "MH"
            : clay && index is >= 0.04 and <= 0.07 ? "CL-ML"
            : clay && index > 0.07 ? "CL" : "ML";
    }
}
