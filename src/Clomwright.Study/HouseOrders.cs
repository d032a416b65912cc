using Clomwright.Analysis.Finishes;
using Clomwright.Analysis.Roof;
using Clomwright.Analysis.WallTop;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Study;

/// <summary>The one list of what is ordered: of the wall, its bond beam by the pieces it is cut into, bolts of bond beam and tees, roof, plasters and floor.</summary>
internal static class HouseOrders
{
    /// <summary>Quantities of the wall with the orders of everything else.</summary>
    public static HouseQuantities Of(House house, HouseQuantities wall, int tees, Sequence<BeamPiece> beam, RoofResult roof, FinishesResult finishes)
    {
        var bolts = BeamOrders.Of(house, beam, tees);
        return wall with
        {
            Orders = [.. wall.Orders.Select(line => line.Key == "bond-beam" && beam.Count > 0 ? InPieces(line, beam) : line), .. bolts.Lines, .. roof.Skin?.Orders ?? [], .. finishes.Orders],
            Assumptions = [.. wall.Assumptions, .. bolts.Assumptions],
        };
    }

    private static OrderLine InPieces(OrderLine beam, Sequence<BeamPiece> pieces)
    {
        var length = pieces.Sum(p => p.CutTo);
        return beam with { Net = Amount.Metres(length), Order = Amount.Metres(length * (1 + beam.Waste)), Basis = Message.Of("study.basis.bond-beam", ("pieces", pieces.Count)) };
    }
}
