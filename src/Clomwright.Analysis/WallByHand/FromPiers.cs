using Clomwright.Analysis.Drying;
using Clomwright.Analysis.Foundation;
using Clomwright.Analysis.Mix;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.WallTop;
using Clomwright.Evidence;
using Clomwright.Geometry;
using WallTopOf = Clomwright.Analysis.WallTop.FromRoof;

namespace Clomwright.Analysis.WallByHand;

/// <summary>The wall worked by hand, from its piers.</summary>
public static class FromPiers
{
    /// <summary>What the hand leans on of the wall's numbers.</summary>
    private static readonly string[] Leant =
    [
        "wall-stiffness", "wall-held-height", "wall-free-height", "wall-joint-friction", "wall-tension-share", "wall-gust-safety", "wall-gust-middle", "wall-gust-fresh", "wall-gust-firm", "wall-air-density",
        "wall-lee-height", "wall-drop-height", "wall-drop-share", "wall-drop-safety", "wall-wet-height", "wall-wet-safety",
    ];

    /// <summary>Piers as columns, what tips and slides them. Total: what is missing is said in the result.</summary>
    /// <param name="geometry">The placed house.</param>
    /// <param name="roof">What the roof does.</param>
    /// <param name="seats">Where poles press on the wall top, as the wall top has them; none takes the bond beam's line.</param>
    /// <param name="cob">What the cob may be loaded with.</param>
    /// <param name="drying">What is known and assumed of the earth while it dries; null takes what is assumed.</param>
    public static WallByHandResult Of(HouseGeometry geometry, RoofResult roof, Sequence<PoleSeat> seats, CobStrength cob, DryingNumbers? drying = null)
    {
        ArgumentNullException.ThrowIfNull(geometry);
        var house = geometry.House;
        var numbers = WallNumbers.Of(house.Assumed);
        var allowed = new Cited<double>(cob.Allowable, cob.Assumption?.Source ?? Sources.Get("en-1990-d"), cob.Tag);
        var loads = new PierLoads(geometry, seats, UnderRoof.Raised(geometry, roof.Plain.Value));
        var stretches = Stretch.Of(geometry);
        var lightest = WallStates.Lightest(roof, house.Site);
        var together = WallStates.LightestTogether(roof, house.Site);
        var missing = Sideways.Missing(roof);
        var sideways = new Sideways(geometry, roof);
        var pressing = WallStates.Pressing(roof, house.Site);
        var piers = new PierChecks(geometry, loads, pressing, numbers, allowed);
        var earth = drying ?? DryingNumbers.Of(house.Assumed);
        var square = new OutOfPlane(geometry, roof, loads, lightest, WallTopOf.DryCob, allowed);
        var whole = new WholeWall(geometry, sideways, numbers, WallTopOf.DryCob);
        var along = missing is { } why
            ? stretches.Select(s => (Check: new Members.CheckedMember("wall-in-plane", s.Address, why), Along: (PierAlong?)null)).ToArray()
            : [.. new InPlane(geometry, sideways, loads, numbers, cob, WallTopOf.DryCob).Of(stretches, together)];
        return new WallByHandResult
        {
            Piers = stretches.Select(piers.Of).ToSequence(),
            OutOfPlane = stretches.SelectMany(s => square.Of(s, missing)).ToSequence(),
            InPlane = along.Select(a => a.Check).ToSequence(),
            Along = along.Select((a, i) => a.Along is { } told ? told with { Address = stretches[i].Address } : null).OfType<PierAlong>().ToSequence(),
            Joints = whole.Joints(together, missing).ToSequence(),
            Overturning = whole.Overturning(together, missing),
            Soil = SoilPush.Of(geometry, numbers, WallTopOf.DryCob, allowed).ToSequence(),
            Green = new GreenWalls(geometry, roof, numbers, earth).Build(),
            Wet = new WetFeet(geometry, piers, pressing, numbers, earth, cob).Of(stretches),
            Assumptions = numbers.Assumed(Leant),
        };
    }
}
