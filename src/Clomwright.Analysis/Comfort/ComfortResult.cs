using Clomwright.Evidence;

namespace Clomwright.Analysis.Comfort;

/// <summary>How warm, dry and light the house will be. Facts without a verdict: no rule here stands behind them.</summary>
public sealed record ComfortResult
{
    /// <summary>Sections that are solved already, for whoever asks on: no part of the answer.</summary>
    internal SolvedSections Solved { get; init; } = new();

    /// <summary>Every part by itself.</summary>
    public required Sequence<PartHeat> Parts { get; init; }

    /// <summary>Windows and doors.</summary>
    public required Sequence<WindowHeat> Windows { get; init; }

    /// <summary>Edges where parts meet.</summary>
    public required Sequence<HeatEdge> Edges { get; init; }

    /// <summary>The floor on the ground.</summary>
    public required GroundHeat Ground { get; init; }

    /// <summary>Loss by kind of part, W/K; in the order of <see cref="PartKind"/>.</summary>
    public required Sequence<KindLoss> Losses { get; init; }

    /// <summary>Air in the room, m3.</summary>
    public required double Volume { get; init; }

    /// <summary>Changes of air in an hour.</summary>
    public required double Airing { get; init; }

    /// <summary>Glass by eight winds from north, clockwise, m2.</summary>
    public required Sequence<double> GlassByWind { get; init; }

    /// <summary>Vapour through each build-up that is lined, in the coldest month; empty where nothing is lined or the climate is not known.</summary>
    public required Sequence<LinedDamp> Lined { get; init; }

    /// <summary>Where the sun falls; or why it is not known.</summary>
    public required Known<SunInRoom> Sun { get; init; }

    /// <summary>The year; or why it is not known.</summary>
    public required Known<YearResult> Year { get; init; }

    /// <summary>Damp of the wall's inside; or why it is not known.</summary>
    public required Known<DampResult> Damp { get; init; }

    /// <summary>What nobody gave.</summary>
    public required Sequence<Assumption> Assumptions { get; init; }

    /// <summary>How the numbers were made.</summary>
    public required Sequence<Calculation> Calculations { get; init; }

    /// <summary>All loss, W/K.</summary>
    public double Loss => Losses.Sum(l => l.Loss);

    /// <summary>Floor inside, m2.</summary>
    public double FloorArea => Ground.Area;
}

/// <summary>A part by itself.</summary>
/// <param name="Key">wall, wall-damp, stem, stem-lined, roof-soaked, roof-dry.</param>
/// <param name="Kind">What it is counted with.</param>
/// <param name="Area">m2; 0 of one that only shows another state.</param>
/// <param name="Part">Its layers.</param>
/// <param name="Day">How it passes a day's swing on.</param>
public sealed record PartHeat(string Key, PartKind Kind, double Area, BuildUp Part, DailyHeat Day)
{
    /// <summary>The author's names of what lines it.</summary>
    public Sequence<string> Linings { get; init; }

    /// <summary>Key and linings.</summary>
    public string Address => string.Join(" + ", Linings.Prepend(Key));
}

/// <summary>What a kind of part loses.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Loss">W/K.</param>
public sealed record KindLoss(PartKind Kind, double Loss);

/// <summary>Vapour in a lined wall through the months (Glaser): what gathers and what dries.</summary>
/// <param name="Name">Of the lining.</param>
/// <param name="Most">Water that lies in the wall at its wettest, kg/m2.</param>
/// <param name="Left">What is left of it after the drying months, kg/m2.</param>
/// <param name="Month">The month in which it is wettest; 0 where none gathers.</param>
public sealed record LinedDamp(string Name, double Most, double Left, int Month);
