using Clomwright.Analysis.Roof;
using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry;

namespace Clomwright.Analysis.WallTop;

/// <summary>Order lines for the bolts of bond beam and tees. How long a bolt is follows from the timber that it crosses.</summary>
public static class BeamOrders
{
    private const string Supplier = "roof";

    /// <summary>Bolts of the laps and of the tees, and what was assumed of them.</summary>
    /// <param name="house">As described.</param>
    /// <param name="pieces">Of the bond beam: the ring has as many laps.</param>
    /// <param name="tees">How many stand in the wall.</param>
    public static (Sequence<OrderLine> Lines, Sequence<Assumption> Assumptions) Of(House house, Sequence<BeamPiece> pieces, int tees)
    {
        ArgumentNullException.ThrowIfNull(house);
        OrderLine[] lines = [.. OfLaps(house.BondBeam, pieces.Count), .. OfTees(house, tees)];
        return (lines.ToSequence(), lines.Any(l => l.Order is not null) ? [new Assumption("pin-past", new Message("analysis.assumed.pin-past"), Amount.Metres(RoofOrders.PinPast), Sources.Get("common-practice"))] : []);
    }

    private static IEnumerable<OrderLine> OfLaps(BondBeam? beam, int laps)
    {
        if (beam is null || laps == 0)
        {
            yield break;
        }

        yield return beam is not { Lap: not null, Bolt: { } bolt, Bolts: > 0 }
            ? OrderLine.Unknown("beam-bolts", new Message("analysis.order.beam-bolts-any"), Supplier, new Message("analysis.order.no-lap-bolts"))
            : OrderLine.Of("beam-bolts", Message.Of("analysis.order.beam-bolts", ("diameter", bolt)), Supplier, Amount.Count(laps * beam.Bolts), 0,
                Message.Of("analysis.order.beam-bolts-basis", ("count", beam.Bolts), ("laps", laps), ("length", Amount.Metres(beam.Depth.Metres + RoofOrders.PinPast))));
    }

    /// <summary>One through bond beam and leg, one through leg and bar, which lie side by side.</summary>
    private static IEnumerable<OrderLine> OfTees(House house, int tees)
    {
        if (house.Tees is not { } made || tees == 0)
        {
            yield break;
        }

        if (made is not { Bolt: { } bolt, Timber: { } side })
        {
            yield return OrderLine.Unknown("tee-bolts", new Message("analysis.order.tee-bolts-any"), Supplier, new Message("analysis.order.no-tee-bolts"));
            yield break;
        }

        var foot = Amount.Metres(2 * side.Metres + RoofOrders.PinPast);
        var what = Message.Of("analysis.order.tee-bolts", ("diameter", bolt));
        yield return house.BondBeam is { } beam
            ? OrderLine.Of("tee-bolts", what, Supplier, Amount.Count(2 * tees), 0, Message.Of("analysis.order.tee-bolts-basis", ("tees", tees), ("top", Amount.Metres(beam.Width.Metres + RoofOrders.PinPast)), ("foot", foot)))
            : OrderLine.Of("tee-bolts", what, Supplier, Amount.Count(tees), 0, Message.Of("analysis.order.tee-foot-bolts", ("tees", tees), ("foot", foot)));
    }
}
