using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Web.Scenes;

/// <summary>An opening of the description where it is or should be; one that could not be placed is still drawn, so that it can be moved.</summary>
/// <param name="Opening">Its description.</param>
/// <param name="Station">Of its middle, m.</param>
/// <param name="Place">Its place; null where it could not be placed.</param>
internal sealed record StandingOpening(Opening Opening, double Station, OpeningPlace? Place)
{
    /// <summary>Its rough size as if the wall were straight there, for one that has no place.</summary>
    public Sequence<WallPoint> Rough
    {
        get
        {
            var (half, bottom, top) = (Opening.Width.Metres / 2, Opening.Sill.Metres, (Opening.Sill + Opening.Height).Metres);
            return [new(Station - half, bottom), new(Station + half, bottom), new(Station + half, top), new(Station - half, top)];
        }
    }

    /// <summary>Every opening that has a station, in the order of the house file.</summary>
    public static IReadOnlyList<StandingOpening> All(HouseGeometry geometry) =>
    [
        .. geometry.House.Openings.Select((opening, index) =>
        {
            var place = geometry.Openings.FirstOrDefault(p => p.Index == index);
            return (Opening: opening, Place: place, Station: place?.Station ?? Written(opening.Along, geometry.Curve));
        })
        .Where(o => o.Station is not null)
        .Select(o => new StandingOpening(o.Opening, o.Station!.Value, o.Place)),
    ];

    private static double? Written(Along along, PlanCurve curve) => along switch
    {
        { Station: { } station } => curve.Wrap(station.Metres),
        { Bearing: { } bearing } => curve.StationsAt(bearing.Radians) is [var only] ? only : null,
        _ => null,
    };
}
