using Clomwright.Building;
using Clomwright.Files.Forms;
using Clomwright.Files.Shape;
using Clomwright.Files.Typing;

namespace Clomwright.Files;

/// <summary>Writes a house as a fresh house file.</summary>
public static class HouseWriter
{
    /// <summary>The text of a house file, one key a line, lists one thing a line, lengths in the house's own units where they are exact. Reads back as an equal house.</summary>
    public static string Write(House house) => new Layout("\n").File(PieceOf(house));

    internal static Piece.Members PieceOf(House house) => HouseShape.House.Write(house, house.Units, []);
}
