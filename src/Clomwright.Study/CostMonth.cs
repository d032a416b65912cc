using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Study;

/// <summary>What is to be paid in a month: orders by the day on which they have to be on site if no work day is lost. A forecast: lost days move it later.</summary>
/// <param name="Month">First day of the month; null for what no day is forecast of.</param>
/// <param name="Lines">Priced lines, in the order of the days.</param>
/// <param name="Unpriced">Lines that fall in the month too and have no price: what they come to is not in the sums.</param>
public sealed record CostMonth(DateOnly? Month, Sequence<CostLine> Lines, int Unpriced)
{
    /// <summary>The least it comes to, in the house's currency.</summary>
    public double Low => Lines.Sum(l => l.Low ?? 0);

    /// <summary>The most it comes to.</summary>
    public double High => Lines.Sum(l => l.High ?? 0);

    /// <summary>Months in order, what no day is forecast of last; every line of the costs is in one of them.</summary>
    /// <param name="costs">What the house costs.</param>
    /// <param name="host">By when each order is on site.</param>
    public static Sequence<CostMonth> Of(Costs costs, HostList host)
    {
        ArgumentNullException.ThrowIfNull(costs);
        ArgumentNullException.ThrowIfNull(host);
        DateOnly? Day(CostLine line) => line.Line is { } order ? host.Lines.FirstOrDefault(h => h.Line == order)?.By : null;
        return costs.Lines.Select(l => (Line: l, Day: Day(l))).GroupBy(l => l.Day is { } day ? new DateOnly(day.Year, day.Month, 1) : (DateOnly?)null)
            .OrderBy(g => g.Key ?? DateOnly.MaxValue)
            .Select(g => new CostMonth(g.Key, g.Where(l => l.Line.Low is not null).OrderBy(l => l.Day).Select(l => l.Line).ToSequence(), g.Count(l => l.Line.Low is null))).ToSequence();
    }
}
