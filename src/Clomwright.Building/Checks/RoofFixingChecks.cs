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
    }
}
