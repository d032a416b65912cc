using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Curves;
using Clomwright.Geometry.Cuts;

namespace Clomwright.Geometry;

/// <summary>Places a house: from what it is to where everything is.</summary>
public static class FromBuilding
{
    /// <summary>The geometry of a house. Total: whatever cannot be placed is named in the diagnostics and the rest is computed.</summary>
    /// <remarks>
    /// A plan that cannot be built gives an error and a circle of like extent in its stead. Its diagnostics add to
    /// <see cref="HouseDiagnostics"/> and do not repeat them: what is wrong by itself (a width below nothing) is said there and left out here.
    /// </remarks>
    public static HouseGeometry Of(House house) => Place(house).Geometry;

    /// <summary>The same, with what may be taken over when the house changes.</summary>
    /// <param name="house">The description.</param>
    /// <param name="earlier">A house placed before: what stands alike in an equal wall is not cut again.</param>
    public static PlacedHouse Place(House house, PlacedHouse? earlier = null)
    {
        ArgumentNullException.ThrowIfNull(house);
        var before = earlier is not null && IsSameWall(earlier.Frame.House, house) ? earlier : null;
        var (frame, ofWall) = before is null ? Wall(house) : (before.Frame with { House = house }, before.OfWall);
        var (curve, wall) = (frame.Curve, frame.Wall);
        var remarks = new Remarks();
        remarks.Take(ofWall);

        var openings = OpeningPlaces.Of(frame, before?.Openings ?? [], remarks);
        var headers = HeaderPlaces.Of(frame, openings, before?.Headers ?? [], remarks);
        var pairs = Piers.Pairs(openings, curve);
        var niches = NichePlaces.Of(frame, openings, headers.Values.Select(h => h.Place), before?.Niches ?? [], station => PierAt(station, pairs, curve), remarks);
        var embeds = EmbedPlaces.Of(frame, openings, niches, [.. headers.Values.Select(h => h.Box)], remarks);

        var told = openings.Select(o => OpeningPlaces.Told(frame, o, headers.TryGetValue(o.Index, out var header) ? header.Place : null)).ToSequence();
        var landings = Landings.Of(frame, remarks);

        var cuts = new Cutting(frame, openings, [.. headers.Values], niches, embeds);
        var geometry = new HouseGeometry
        {
            House = house,
            Curve = curve,
            Wall = wall,
            Measures = cuts.Measures(),
            Lifts = cuts.Lifts(),
            Openings = told,
            Piers = pairs.Select(p => Piers.Told(frame, p.Before, p.After, niches)).ToSequence(),
            Niches = niches.Select(n => n.Place).ToSequence(),
            Embeds = embeds.Select(e => e.Place).ToSequence(),
            Landings = landings,
            Tees = TeePlaces.Of(frame, told, niches.Select(n => n.Place), embeds.Select(e => e.Place), landings, remarks),
            Diagnostics = remarks.BesidesThoseOf(house),
        };
        return new PlacedHouse(geometry, frame, ofWall, openings, headers.Values, niches);
    }

    /// <summary>The wall itself, with what is to be said of it.</summary>
    private static (WallFrame Frame, Remarks OfWall) Wall(House house)
    {
        var remarks = new Remarks();
        var wall = WallSolids.Of(house, remarks);
        var curve = PlanCurves.Of(house.Plan, remarks);
        WallSolids.CheckFolds(curve, wall, remarks);
        return (new WallFrame(house, curve, wall, LiftHeights.Of(house.Lifts, wall, remarks)), remarks);
    }

    /// <summary>Whether the wall itself is equal: its plan, faces, foot and lifts.</summary>
    private static bool IsSameWall(House one, House other) => one.Plan == other.Plan && one.Wall == other.Wall && one.Stem == other.Stem && one.Lifts == other.Lifts;

    private static string? PierAt(double station, List<(PlacedOpening Before, PlacedOpening After)> pairs, PlanCurve curve)
    {
        foreach (var (before, after) in pairs)
        {
            var span = Piers.Between(before, after, curve);
            if (curve.Wrap(station - span.From) <= span.Width)
            {
                return Piers.Address(before, after);
            }
        }

        return null;
    }
}
