using Clomwright.Evidence;

namespace Clomwright.Analysis.Days;

/// <summary>How much there is to do.</summary>
public sealed record JobAmounts
{
    /// <summary>Cob to lay, m3, for each lift from the bottom, in each sector of the ring.</summary>
    public required Sequence<Sequence<double>> Cob { get; init; }

    /// <summary>Hours of one person for what is set into each lift, in each sector: frames, headers, embeds, tees.</summary>
    public required Sequence<Sequence<double>> SetIn { get; init; }

    /// <summary>Height of the middle of each lift above the finished floor, m.</summary>
    public required Sequence<double> Heights { get; init; }

    /// <summary>Height of each lift, m.</summary>
    public Sequence<double> Rises { get; init; }

    /// <summary>Of the rest: amounts by the key of their task (<see cref="WorkList"/>), m3, m2, m or pieces.</summary>
    public required Sequence<JobAmount> Rest { get; init; }

    /// <summary>People that lift one pole.</summary>
    public int PeopleForPole { get; init; } = 4;

    /// <summary>Coats of plaster laid on both faces, m2 altogether; the first of them waits for a dry wall.</summary>
    public double Coats { get; init; }
}

/// <summary>How much of one task there is.</summary>
/// <param name="Key">Of the task.</param>
/// <param name="Amount">m3, m2, m or pieces, as the task counts.</param>
public readonly record struct JobAmount(string Key, double Amount);
