using Clomwright.Building;
using Clomwright.Evidence;
using Clomwright.Geometry.Joinery;

namespace Clomwright.Geometry.TakeOff;

/// <summary>Timber of openings besides headers: frames by their stock, pads under headers, battens that brace frames. Lengths are those of the opening cards.</summary>
internal static class OpeningOrders
{
    public static IEnumerable<OrderLine> Of(HouseGeometry geometry)
    {
        var pieces = geometry.Openings.SelectMany(o => OpeningPieces.Of(o)).ToList();
        foreach (var stock in pieces.Where(p => p.Kind is PieceKind.Jamb or PieceKind.Head or PieceKind.Sill).GroupBy(p => (p.Thickness, p.Width)))
        {
            yield return OrderLines.Line(
                "frame-timber", Message.Of("geometry.order.frame-timber", ("thickness", Amount.Metres(stock.Key.Thickness!.Value)), ("width", Amount.Metres(stock.Key.Width!.Value))), "timber",
                Long(stock), Message.Of("geometry.basis.frames", ("pieces", stock.Sum(p => p.Count))));
        }

        var unframed = geometry.Openings.Where(o => o.Opening is { Frame: null, Kind: not OpeningKind.Glass }).Select(o => o.Opening.Name).ToList();
        if (unframed.Count > 0)
        {
            yield return OrderLines.Unknown("frame-timber", Message.Of("geometry.order.frame-unknown", ("names", string.Join(", ", unframed))), "timber", new Message("geometry.basis.no-frame"));
        }

        foreach (var pad in pieces.Where(p => p.Kind == PieceKind.CrossPad).GroupBy(p => p.Width))
        {
            yield return OrderLines.Line(
                "cross-pads", Message.Of("geometry.order.cross-pads", ("width", Amount.Metres(pad.Key!.Value))), "timber",
                Long(pad), Message.Of("geometry.basis.cross-pads", ("pieces", pad.Sum(p => p.Count))));
        }

        var braces = pieces.Where(p => p.Kind is PieceKind.Spreader or PieceKind.Diagonal).ToList();
        if (braces.Count > 0)
        {
            yield return OrderLines.Line("brace-battens", new Message("geometry.order.brace-battens"), "timber", Long(braces), Message.Of("geometry.basis.brace-battens", ("pieces", braces.Sum(p => p.Count))));
        }
    }

    private static Amount Long(IEnumerable<OpeningPiece> pieces) => Amount.Metres(pieces.Sum(p => p.Count * p.CutLength));
}
