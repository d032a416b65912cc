namespace Clomwright.Papers.Sheets;

/// <summary>Shares of a table that are over the whole.</summary>
/// <param name="Count">How many.</param>
/// <param name="Of">Of how many.</param>
/// <param name="Most">The most that is a number; 0 where none is.</param>
internal readonly record struct SharesOver(int Count, int Of, double Most)
{
    /// <summary>Counts them.</summary>
    public static SharesOver In(IEnumerable<double> shares)
    {
        double[] all = [.. shares];
        double[] over = [.. all.Where(s => s > 1 + 1e-12)];
        return new(over.Length, all.Length, over.Where(double.IsFinite).DefaultIfEmpty(0).Max());
    }
}
