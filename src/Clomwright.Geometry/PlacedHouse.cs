using Clomwright.Building;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>A placed house with what was cut for it, so that the next house, in an equal wall, cuts anew only what has changed.</summary>
/// <remarks>Where something came from leaves no trace: the geometry is that of a house placed from nothing, to the last bit (a test holds both together).</remarks>
public sealed class PlacedHouse
{
    internal PlacedHouse(HouseGeometry geometry, WallFrame frame, Remarks ofWall, IReadOnlyList<PlacedOpening> openings, IReadOnlyCollection<HeaderPlaces.Placed> headers, IReadOnlyList<NichePlaces.Placed> niches) =>
        (Geometry, Frame, OfWall, Openings, Headers, Niches) = (geometry, frame, ofWall, openings, headers, niches);

    /// <summary>Where everything is.</summary>
    public HouseGeometry Geometry { get; }

    /// <summary>The same for a house that differs in nothing that is placed.</summary>
    public PlacedHouse Of(House house) => new(Geometry with { House = house }, Frame with { House = house }, OfWall, Openings, Headers, Niches);

    internal WallFrame Frame { get; }

    /// <summary>What is to be said of the wall itself.</summary>
    internal Remarks OfWall { get; }

    internal IReadOnlyList<PlacedOpening> Openings { get; }

    internal IReadOnlyCollection<HeaderPlaces.Placed> Headers { get; }

    internal IReadOnlyList<NichePlaces.Placed> Niches { get; }
}
