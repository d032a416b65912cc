using Clomwright.Evidence;

namespace Clomwright.Building;

/// <summary>Nails, straps, seats, post, ring, flue and battens of a roof by themselves.</summary>
internal static class RoofFixingChecks
{
    private const int MostNails = 40;

    public static void Of(Roof roof, Checks checks)
    {
        if (roof.DeckNails is { } nails)
        {
            checks.Size("roof.deckNails.diameter", nails.Diameter, Limits.Thick);
            checks.Size("roof.deckNails.length", nails.Length, Limits.Thick);
            checks.Count("roof.deckNails.count", nails.Count, 1, MostNails);
            checks.Size("roof.deckNails.board", nails.Board, Limits.Thick);
        }

        if (roof.Braces is { } braces)
        {
            checks.Size("roof.braces.width", braces.Width, Limits.Thick);
            checks.Size("roof.braces.thickness", braces.Thickness, Limits.Thick);
            checks.Count("roof.braces.nails", braces.Nails, 1, MostNails);
            checks.Size("roof.braces.diameter", braces.Diameter, Limits.Thick);
            checks.Size("roof.braces.length", braces.Length, Limits.Thick);
        }

        checks.Size("roof.seat.flat", roof.Seat?.Flat, Limits.Thick);
        checks.Size("roof.seat.bolt", roof.Seat?.Bolt, Limits.Thick);
        checks.Size("roof.seat.washer", roof.Seat?.Washer, Limits.Thick);
        checks.Size("roof.seat.lag", roof.Seat?.Lag, Limits.Thick);
        checks.Size("roof.secondaries.bolt", roof.Secondaries?.Bolt, Limits.Thick);
        if (roof is Roof.Radial radial)
        {
            checks.Size("roof.post.diameter", radial.Post?.Diameter, Limits.Thick);
            checks.Size("roof.post.footing", radial.Post?.Footing, Limits.Plan);
            checks.Size("roof.ring.width", radial.Ring?.Width, Limits.Thick);
            checks.Size("roof.ring.depth", radial.Ring?.Depth, Limits.Thick);
            checks.Word("roof.ring.material", radial.Ring?.Material);
        }

        if (roof.Flue is { } flue)
        {
            checks.Size("roof.flue.diameter", flue.Diameter, Limits.Thick);
            checks.Bearing("roof.flue.bearing", flue.Bearing);
            _ = checks.NotNegative("roof.flue.distance", flue.Distance) && checks.NotAbove("roof.flue.distance", flue.Distance, Limits.Plan);
            checks.Size("roof.flue.clear", flue.Clear, Limits.Thick);
        }

        checks.Size("roof.drip.out", roof.Drip?.Out, Limits.Thick);
        checks.Size("roof.drip.down", roof.Drip?.Down, Limits.Thick);
        checks.Size("roof.battens.spacing", roof.Battens?.Spacing, Limits.Plan);
        checks.Size("roof.battens.height", roof.Battens?.Height, Limits.Thick);
        checks.Size("roof.sheetRoll", roof.SheetRoll, Limits.Plan);
        if (checks.Size("roof.overflow", roof.Overflow, Limits.Thick) && roof is { Overflow: { } overflow, EdgeBoard: { } board } && overflow > board)
        {
            checks.Error("roof.overflow", "building.overflow", ("overflow", new Argument.Exact(overflow)), ("board", new Argument.Exact(board)));
        }
    }
}
