using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Where a thing stands along the wall: exactly one of the two is given.</summary>
/// <param name="Bearing">From the plan centre.</param>
/// <param name="Station">Along the inside face at the wall base from the zero mark, clockwise seen from above.</param>
public readonly record struct Along(Angle? Bearing, Length? Station)
{
    /// <summary>By bearing from the centre.</summary>
    public static Along At(Angle bearing) => new(bearing, null);

    /// <summary>By station from the zero mark.</summary>
    public static Along At(Length station) => new(null, station);
}
