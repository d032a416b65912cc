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

    /// <summary>Whether tarps on frames stand over the wall.</summary>
    public bool Tarps { get; init; }

    /// <summary>Days of which somebody has a forecast.</summary>
    public Sequence<ForecastDay> Known { get; init; }

    /// <summary>How many seasons.</summary>
    public int Seasons { get; init; } = 1000;

    /// <summary>Of the random numbers.</summary>
    public ulong Seed { get; init; } = 1;

    /// <summary>Threads to use; the result does not depend on it.</summary>
    public int Threads { get; init; } = 2;
}
