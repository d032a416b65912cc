using Clomwright.Papers.Drawing;
using Clomwright.Papers.Layout;

namespace Clomwright.Papers.Setting;

/// <summary>A piece of a formula: how much room it takes about its baseline, mm, and how it is drawn with its left end there.</summary>
internal sealed record Piece(double Width, double Up, double Down, Action<Board, double, double> Draw)
{
    /// <summary>From top to bottom, mm.</summary>
    public double Height => Up + Down;

    /// <summary>Nothing, of a width.</summary>
    public static Piece Space(double width) => new(width, 0, 0, (_, _, _) => { });

    /// <summary>Letters on the baseline.</summary>
    public static Piece Run(string words, Lettering lettering) =>
        new(lettering.WidthOf(words), lettering.Ascent(), lettering.Descent(), (board, x, y) => board.Say(words, x, y, lettering));

    /// <summary>Pieces one after the other on one baseline.</summary>
    public static Piece Row(params IReadOnlyList<Piece> pieces) => new(
        pieces.Sum(p => p.Width),
        pieces.Max(p => p.Up),
        pieces.Max(p => p.Down),
        (board, x, y) =>
        {
            foreach (var piece in pieces)
            {
                piece.Draw(board, x, y);
                x += piece.Width;
            }
        });

    /// <summary>The same piece with its baseline moved, down positive, mm.</summary>
    public Piece Lowered(double by) => new(Width, Up - by, Down + by, (board, x, y) => Draw(board, x, y + by));
}
