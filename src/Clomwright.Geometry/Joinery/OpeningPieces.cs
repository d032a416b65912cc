using Clomwright.Building;
using Clomwright.Evidence;

namespace Clomwright.Geometry.Joinery;

/// <summary>What a piece of timber at an opening is.</summary>
public enum PieceKind
{
    /// <summary>Upright of the frame, the frame's whole height.</summary>
    Jamb,

    /// <summary>Top of the frame, between the jambs.</summary>
    Head,

    /// <summary>Bottom of the frame, between the jambs.</summary>
    Sill,

    /// <summary>One timber of the header.</summary>
    Header,

    /// <summary>Pad across the wall under an end of the header.</summary>
    CrossPad,

    /// <summary>Temporary, between the jambs.</summary>
    Spreader,

    /// <summary>Temporary, corner to corner inside the frame.</summary>
    Diagonal,
}

/// <summary>Pieces to cut, all alike. Lengths in m.</summary>
/// <param name="Kind">What they are.</param>
/// <param name="Count">How many.</param>
/// <param name="Thickness">The smaller side; null where any sound batten serves.</param>
/// <param name="Width">The larger side; null where any sound batten serves.</param>
/// <param name="CutLength">Length to cut.</param>
/// <param name="Tag">Given sizes are as written; others follow from them.</param>
public sealed record OpeningPiece(PieceKind Kind, int Count, double? Thickness, double? Width, double CutLength, Tag Tag);

/// <summary>Takes the timber of an opening apart into pieces to cut.</summary>
public static class OpeningPieces
{
    private const int Spreaders = 3;

    /// <summary>The frame's pieces, header and pads, and the temporary bracing. Nothing of a frame whose size is not given.</summary>
    public static Sequence<OpeningPiece> Of(OpeningPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        List<OpeningPiece> pieces = [];
        if (place.Opening.Frame is { } frame)
        {
            var (stock, depth) = (frame.Stock.Metres, frame.Depth.Metres);
            var clear = frame.Width.Metres - 2 * stock;
            var (thin, wide) = (Math.Min(stock, depth), Math.Max(stock, depth));
            pieces.Add(new(PieceKind.Jamb, 2, thin, wide, frame.Height.Metres, Tag.Computed));
            if (clear > 0)
            {
                pieces.Add(new(PieceKind.Head, 1, thin, wide, clear, Tag.Computed));
                pieces.Add(new(PieceKind.Sill, 1, thin, wide, clear, Tag.Computed));
                var inside = frame.Height.Metres - 2 * stock;
                pieces.Add(new(PieceKind.Spreader, Spreaders, null, null, clear, Tag.Computed));
                pieces.Add(new(PieceKind.Diagonal, 2, null, null, Math.Sqrt(clear * clear + inside * inside), Tag.Computed));
            }
        }

        if (place is { Header: { } placed, Opening.Header: { } header })
        {
            pieces.Add(new(PieceKind.Header, header.Pieces, header.Width.Metres, header.Depth.Metres, placed.Length, Tag.Computed));
            if (header.CrossPad)
            {
                pieces.Add(new(PieceKind.CrossPad, 2, null, header.Bearing.Metres, placed.WallThickness, Tag.Computed));
            }
        }

        return pieces.ToSequence();
    }

    /// <summary>Heights above the finished floor at which deadmen are buried beside the frame, bottom, middle and top, m.</summary>
    /// <remarks>Common practice, no source: 8 in from sill and head, or a fifth of the height where the opening is low.</remarks>
    public static Sequence<double> DeadmanHeights(OpeningPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        var end = Math.Min(8 * 0.0254, (place.Head - place.Sill) / 5);
        return [place.Sill + end, (place.Sill + place.Head) / 2, place.Head - end];
    }
}
