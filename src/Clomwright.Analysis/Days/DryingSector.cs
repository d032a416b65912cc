using Clomwright.Analysis.Drying;

namespace Clomwright.Analysis.Days;

/// <summary>How one sector of the wall dries in one season.</summary>
internal interface IDryingSector
{
    /// <summary>Days since the topmost lift was laid until it may take the next; null while it may not.</summary>
    double? FirmAfter { get; }

    /// <summary>Whether the topmost lift may take the next.</summary>
    bool IsFirm => FirmAfter is not null;

    /// <summary>Whether every lift carries wall and roof.</summary>
    bool CarriesRoof { get; }

    /// <summary>Lays the next lift.</summary>
    void Lay();

    /// <summary>One day of weather.</summary>
    void Advance(in BayDay day);
}

/// <summary>A sector by the small model of drying.</summary>
/// <param name="model">Of the sector.</param>
/// <param name="rate">How many times as fast as the model it dries, by the lift.</param>
internal sealed class BaySector(BayModel model, Func<int, double> rate) : IDryingSector
{
    private readonly BayWall wall = model.Start(rate);

    public double? FirmAfter => wall.FirmAfter;

    public bool CarriesRoof => wall.RoofShare >= 1;

    public void Lay() => wall.Lay();

    public void Advance(in BayDay day) => wall.Advance(day);
}
