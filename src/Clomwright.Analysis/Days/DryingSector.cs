using Clomwright.Analysis.Drying;

namespace Clomwright.Analysis.Days;

/// <summary>How one sector of the wall dries in one season.</summary>
internal interface IDryingSector
{
    /// <summary>Whether the topmost lift may take the next.</summary>
    bool IsFirm { get; }

    /// <summary>Whether every lift carries wall and roof.</summary>
    bool CarriesRoof { get; }

    /// <summary>Lays the next lift.</summary>
    void Lay();

    /// <summary>One day of weather.</summary>
    void Advance(in BayDay day);
}

/// <summary>A sector by the small model of drying.</summary>
internal sealed class BaySector(BayModel model) : IDryingSector
{
    private readonly BayWall wall = model.Start();

    public bool IsFirm => wall.FirmAfter is not null;

    public bool CarriesRoof => wall.RoofShare >= 1;

    public void Lay() => wall.Lay();

    public void Advance(in BayDay day) => wall.Advance(day);
}
