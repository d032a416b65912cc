namespace Clomwright.Analysis.Drying;

/// <summary>Whether something that falls from year to year, ever more slowly, cannot come down to nothing within the days looked at.</summary>
/// <remarks>Under weather that repeats each year what is left to dry falls in a year by no more than it did in the year before; where even that pace does not suffice, nobody need look.</remarks>
internal sealed class OutOfReach(double most)
{
    private const double Year = 364;
    private readonly List<(double Day, double Least)> years = [];
    private double from = double.NaN, least = double.PositiveInfinity;

    /// <summary>Takes the next look.</summary>
    /// <param name="day">Rising.</param>
    /// <param name="excess">What is left; nothing or less is reached.</param>
    public bool Is(double day, double excess)
    {
        from = double.IsNaN(from) ? day : from;
        least = Math.Min(least, excess);
        if (day - from < Year)
        {
            return false;
        }

        years.Add((day, least));
        (from, least) = (day, double.PositiveInfinity);
        return years is [.., var before, var now] && now.Least > 0 && now.Least - (before.Least - now.Least) * Math.Ceiling((most - day) / Year) > 0;
    }
}
