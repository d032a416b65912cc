using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Weather;
using Clomwright.Analysis.Weather.Seasons;
using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>All that a forecast of days depends on.</summary>
public sealed record DaysQuestion
{
    /// <summary>Who works, and when.</summary>
    public required Crew Crew { get; init; }

    /// <summary>What there is to do.</summary>
    public required JobAmounts Amounts { get; init; }

    /// <summary>How fast people work.</summary>
    public required WorkNumbers Numbers { get; init; }

    /// <summary>The weather of the site.</summary>
    public required WeatherResult Weather { get; init; }

    /// <summary>Degrees north.</summary>
    public required double Latitude { get; init; }

    /// <summary>m above the sea.</summary>
    public required double Elevation { get; init; }

    /// <summary>One small model of drying for each sector.</summary>
    public required Sequence<BayModel> Sectors { get; init; }

    /// <summary>Days from the last lift until plaster may go on, fast and slow; null where that is not known.</summary>
    public Band? Plaster { get; init; }

    /// <summary>Day from which plaster is planned; null where nobody has said.</summary>
    public DateOnly? PlasterOn { get; init; }

    /// <summary>Whether tarps on frames stand over the wall.</summary>
    public bool Tarps { get; init; }

    /// <summary>Days of which somebody has a forecast.</summary>
    public Sequence<ForecastDay> Known { get; init; }

    /// <summary>What was done already, counted from the crew's first day; null before anything is written. Another first day asks for another log.</summary>
    public JobLog? Log { get; init; }

    /// <summary>Stands in for the small model of drying, for factors on how fast it dries, by quarter and lift; null for the model itself.</summary>
    internal Func<Func<int, int, double>, IDryingSector[]>? Stand { get; init; }

    /// <summary>How many seasons.</summary>
    public int Seasons { get; init; } = 1000;

    /// <summary>Of the random numbers.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Threads to use; the result does not depend on it.</summary>
    public int Threads { get; init; } = 2;

    /// <summary>The quarters of the ring with nothing laid on them, drying so many times as fast as by their model, by quarter and lift.</summary>
    internal IDryingSector[] Quarters(Func<int, int, double> rate) => Stand?.Invoke(rate) ?? [.. Sectors.Select((model, quarter) => new BaySector(model, lift => rate(quarter, lift)))];
}
